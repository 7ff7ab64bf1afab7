package main

import (
	"fmt"
	"regexp"
	"slices"
	"strings"
)

// completionScript is for bash; what it can offer is filled in.
const completionScript = `# What bash completes behind frontlay. Made by: frontlay help bash
_frontlay() {
	local typed=${COMP_WORDS[COMP_CWORD]} before=${COMP_WORDS[COMP_CWORD-1]} command='' offered='' done=''
	if ((COMP_CWORD > 1)); then
		case ${COMP_WORDS[1]} in
		%s) command=${COMP_WORDS[1]} ;;
		esac
	fi
	case "$command $before" in
%s	esac
	if [[ $offered && $typed == *,* ]]; then # a list: its last word
		done=${typed%%,*},
		typed=${typed##*,}
	elif [[ ! $offered && $typed == -* ]]; then
		case $command in
%s		esac
	elif [[ ! $offered ]]; then
		case $command in
%s		esac
		mapfile -t COMPREPLY < <(
			((COMP_CWORD == 1)) && compgen -W '%s' -- "$typed"
			[[ $offered ]] || compgen -f -X '!*.y*ml' -- "$typed"
			[[ $offered ]] || compgen -d -- "$typed"
		)
	fi
	[[ ! $offered ]] || mapfile -t COMPREPLY < <(compgen -P "$done" -W "$offered" -- "$typed")
}
complete -o filenames -F _frontlay frontlay
`

// choices are words to choose from in what is written behind a command's name.
var choices = regexp.MustCompile(`^\[([a-z]+(?:\|[a-z]+)+)\]$`)

// bashCompletion is a script that tells bash what can be typed behind frontlay: commands,
// their flags, the words of flags that have some, else projects and folders.
func bashCompletion() string {
	var names []string
	var values, flags, args strings.Builder
	line := func(b *strings.Builder, indent, pattern, words string) {
		fmt.Fprintf(b, "%s'%s') offered='%s' ;;\n", indent, pattern, words)
	}
	for _, c := range commands() {
		names = append(names, c.name)
		var dashes, open []string
		for _, f := range c.flags() {
			dashes = append(dashes, dashed(f))
			if w, ok := f.Value.(*word); ok {
				line(&values, "\t", c.name+" "+dashed(f), strings.Join(w.words, " "))
			} else if written(f) != dashed(f) {
				open = append(open, "'"+c.name+" "+dashed(f)+"'")
			}
		}
		if len(open) > 0 {
			fmt.Fprintf(&values, "\t%s) mapfile -t COMPREPLY < <(compgen -f -- \"$typed\"); return ;;\n", strings.Join(open, "|"))
		}
		line(&flags, "\t\t", c.name, strings.Join(dashes, " "))
		if of := choices.FindStringSubmatch(c.args); of != nil {
			line(&args, "\t\t", c.name, strings.ReplaceAll(of[1], "|", " "))
		}
	}
	names = slices.DeleteFunc(names, func(n string) bool { return n == "" })
	return fmt.Sprintf(completionScript, strings.Join(names, "|"), values.String(), flags.String(), args.String(), strings.Join(names, " "))
}
