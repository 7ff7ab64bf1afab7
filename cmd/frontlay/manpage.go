package main

import (
	"flag"
	"fmt"
	"strings"

	"frontlay/layout/list"
	"frontlay/model/message"
)

// manualPage is what man shows, in the macros of man(7).
func manualPage() string {
	var b strings.Builder
	what, _, _ := strings.Cut(summary, ":")
	fmt.Fprintf(&b, ".TH FRONTLAY 1 \"\" \"frontlay %s\" \"User Commands\"\n", release)
	fmt.Fprintf(&b, ".SH NAME\nfrontlay \\- %s\n", roff(strings.TrimPrefix(what, "frontlay ")))
	b.WriteString(".SH SYNOPSIS\n")
	for i, c := range commands() {
		if i > 0 {
			b.WriteString(".br\n")
		}
		fmt.Fprintf(&b, ".B %s\n%s\n", roff(called(c.name)), roff(c.args))
	}
	fmt.Fprintf(&b, ".SH DESCRIPTION\n%s\n", roff(summary))
	b.WriteString(".SH COMMANDS\n")
	for _, c := range commands() {
		fmt.Fprintf(&b, ".TP\n.B %s\n%s.\n", roff(strings.TrimSpace(called(c.name)+" "+c.args)), roff(c.about))
	}
	b.WriteString(".SH OPTIONS\n")
	for _, g := range flagGroups() {
		fmt.Fprintf(&b, ".SS %s\n", roff(g.title()))
		for _, f := range g.flags {
			value, _ := flag.UnquoteUsage(f)
			fmt.Fprintf(&b, ".TP\n.BI \"%s\" \" %s\"\n%s\n", roff(dashed(f)), roff(value), strings.ReplaceAll(roff(meaning(f)), "\n", "\n.br\n"))
		}
	}
	b.WriteString(".SH EXIT STATUS\n")
	for _, e := range exitCodes {
		fmt.Fprintf(&b, ".TP\n.B %d\n%s\n", e.code, roff(e.says))
	}
	fmt.Fprintf(&b, ".SH EXAMPLES\n.nf\n%s\n.fi\n", roff(examples))
	b.WriteString(".SH ENVIRONMENT\n.TP\n.B SOURCE_DATE_EPOCH\nseconds since 1970: the time that stands on paper in the place of now, so that the same project gives the same bytes again\n")
	b.WriteString(".SH FILES\n.TP\n.I $XDG_CONFIG_HOME/frontlay\njournals of unsaved work, the log, what is known of printers, and in the folder sheets your own hardware sheets; without the variable in .config\n")
	cautions := list.Cautions(message.Language{})
	fmt.Fprintf(&b, ".SH CAUTIONS\n%s:\n", roff(cautions.Title))
	for _, r := range cautions.Rows {
		fmt.Fprintf(&b, ".IP \\(bu 2\n%s\n", roff(r.Cells[1]))
	}
	return b.String()
}

// roff writes a text so that troff shows its signs as they are: no line is taken for a
// request, and a hyphen can be copied as one.
func roff(s string) string {
	s = strings.NewReplacer(`\`, `\e`, "-", `\-`, `"`, `\(dq`, "’", `\(cq`, "…", `.\|.\|.`, "×", `\(mu`).Replace(s)
	lines := strings.Split(s, "\n")
	for i, l := range lines {
		if strings.HasPrefix(l, ".") || strings.HasPrefix(l, "'") {
			lines[i] = `\&` + l
		}
	}
	return strings.Join(lines, "\n")
}
