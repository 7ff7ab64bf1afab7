package main

import (
	"cmp"
	"flag"
	"fmt"
	"slices"
	"strings"
	"unicode/utf8"

	"frontlay/layout/list"
	"frontlay/layout/sheet"
	"frontlay/model/message"
)

// help tells how to use the program, in the form that is asked for.
func help(*flag.FlagSet) task {
	return func(rest []string, c console) int {
		forms := map[string]func() string{"": helpText, "man": manualPage, "bash": bashCompletion}
		form := forms[strings.Join(rest, " ")]
		if form == nil {
			fmt.Fprintln(c.err, "frontlay help: write one of: frontlay help, frontlay help man, frontlay help bash")
			return exitFailed
		}
		fmt.Fprint(c.out, form())
		return exitFine
	}
}

// called is how a command is called.
func called(name string) string { return strings.TrimSpace("frontlay " + name) }

// summary says what the program is for, in one sentence.
const summary = "frontlay plans drawer cabinets: it divides the elevation, places every front, drawer, runner and hole, checks that each front hides its drawer bottom (and what else goes wrong), and prints drilling templates at 1:1."

// examples are command lines that work where bench.yaml is a project.
const examples = `frontlay bench.yaml
frontlay check bench.yaml
frontlay check bench.yaml --json
frontlay propose bench.yaml --fronts 3..5 --thing jars=210 --thing brushes=60
frontlay print bench.yaml -o bench.pdf --paper A3
frontlay print bench.yaml -o file.pdf --for office
frontlay print bench.yaml -o drill.pdf --only jig,corner --fronts 1-3
frontlay print bench.yaml -o labels.pdf --labels 3x8 --first 5
frontlay export bench.yaml -o machine --only dxf
frontlay pack bench.yaml
frontlay new bench.yaml`

// exitCodes are those of every command, each with what it says.
var exitCodes = []struct {
	code int
	says string
}{
	{exitFine, "fine"},
	{exitFindings, "the check found errors, or paper does not fit any more"},
	{exitFailed, "could not read or write, or not understand"},
}

func helpText() string {
	var b strings.Builder
	b.WriteString(paragraph("", summary))
	b.WriteString("\nUse:\n")
	for _, c := range commands() {
		b.WriteString(paragraph(fmt.Sprintf("  %-43s", called(c.name)+" "+c.args), c.about))
	}
	for _, g := range flagGroups() {
		fmt.Fprintf(&b, "\n%s:\n", g.title())
		for _, f := range g.flags {
			sign := fmt.Sprintf("  %-26s ", written(f))
			for _, line := range strings.Split(meaning(f), "\n") {
				b.WriteString(paragraph(sign, line))
				sign = strings.Repeat(" ", len(sign))
			}
		}
	}
	b.WriteString("\nExamples:\n")
	for _, line := range strings.Split(examples, "\n") {
		b.WriteString("  " + line + "\n")
	}
	b.WriteString("\nExit codes:\n")
	for _, e := range exitCodes {
		b.WriteString(paragraph(fmt.Sprintf("  %d  ", e.code), e.says))
	}
	cautions := list.Cautions(message.Language{})
	fmt.Fprintf(&b, "\n%s:\n", cautions.Title)
	for _, r := range cautions.Rows {
		b.WriteString(paragraph("  - ", r.Cells[1]))
	}
	return b.String()
}

// flagGroup is flags that the same commands have.
type flagGroup struct {
	commands []string
	flags    []*flag.Flag
}

func (g flagGroup) title() string {
	last := len(g.commands) - 1
	if last == 0 {
		return "Flags of " + cmp.Or(g.commands[0], "the window")
	}
	return "Flags of " + strings.Join(g.commands[:last], ", ") + " and " + g.commands[last]
}

// flagGroups are all flags, each once: a flag that means the same to several commands
// stands behind those that one command has.
func flagGroups() []flagGroup {
	type same struct{ name, usage string }
	var order []*flag.Flag
	of := map[same][]string{}
	for _, c := range commands() {
		for _, f := range c.flags() {
			k := same{f.Name, f.Usage}
			if of[k] == nil {
				order = append(order, f)
			}
			of[k] = append(of[k], c.name)
		}
	}
	var groups []flagGroup
	for _, f := range order {
		names := of[same{f.Name, f.Usage}]
		at := slices.IndexFunc(groups, func(g flagGroup) bool { return slices.Equal(g.commands, names) })
		if at < 0 {
			groups, at = append(groups, flagGroup{commands: names}), len(groups)
		}
		groups[at].flags = append(groups[at].flags, f)
	}
	slices.SortStableFunc(groups, func(a, b flagGroup) int {
		return cmp.Compare(min(len(a.commands), 2), min(len(b.commands), 2))
	})
	return groups
}

// flags are those of a command: where it writes first, then by the alphabet.
func (c command) flags() []*flag.Flag {
	fs := flag.NewFlagSet(c.name, flag.ContinueOnError)
	c.define(fs)
	var all []*flag.Flag
	fs.VisitAll(func(f *flag.Flag) { all = append(all, f) })
	slices.SortStableFunc(all, func(a, b *flag.Flag) int { return cmp.Compare(min(len(a.Name), 2), min(len(b.Name), 2)) })
	return all
}

// dashed is a flag's name as it is typed.
func dashed(f *flag.Flag) string {
	if len(f.Name) == 1 {
		return "-" + f.Name
	}
	return "--" + f.Name
}

// written is how a flag is written, with a name for its value.
func written(f *flag.Flag) string {
	value, _ := flag.UnquoteUsage(f)
	return strings.TrimSpace(dashed(f) + " " + value)
}

// meaning says what a flag does, and what it is where nobody says.
func meaning(f *flag.Flag) string {
	_, usage := flag.UnquoteUsage(f)
	if f.DefValue != "" && f.DefValue != "false" {
		usage += "; else " + f.DefValue
	}
	return usage
}

// forPlaces says what is printed for each place of work, a line each.
func forPlaces() string {
	var b strings.Builder
	for i, p := range sheet.Presets() {
		of := " "
		if i == 0 {
			of = " (where you do not say) "
		}
		var parts []string
		for _, part := range p.Parts() {
			name := string(part)
			if p == sheet.Bench && part.Spared() {
				name += "*"
			}
			parts = append(parts, name)
		}
		b.WriteString("\n" + string(p) + of + "prints " + strings.Join(parts, ", "))
	}
	return b.String() + "\n* only where the shop sheets do not tell it"
}

// helpWidth is how many signs a line of the help may have: what terminals show
// since there are terminals.
const helpWidth = 80

// paragraph breaks a text into lines, the first of them behind a sign and the
// others below its text.
func paragraph(sign, text string) string {
	lines := []string{sign}
	for _, word := range strings.Fields(text) {
		at := len(lines) - 1
		if utf8.RuneCountInString(lines[at])+utf8.RuneCountInString(word) >= helpWidth {
			lines, at = append(lines, strings.Repeat(" ", len(sign))), at+1
		}
		if len(lines[at]) > len(sign) {
			lines[at] += " "
		}
		lines[at] += word
	}
	return strings.Join(lines, "\n") + "\n"
}
