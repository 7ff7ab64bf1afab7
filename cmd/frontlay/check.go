package main

import (
	"flag"
	"fmt"
	"io"

	"frontlay/layout"
	"frontlay/layout/check"
	"frontlay/model/message"
)

// runCheck prints the findings of a project.
func runCheck(args []string, c console) int {
	fs := flag.NewFlagSet("check", flag.ContinueOnError)
	anywhere := fs.Bool("sheets-anywhere", false, "")
	lang := languageFlag(fs)
	rest, err := parse(fs, args, c)
	if err != nil {
		return failed(err, c)
	}
	path, ok := oneFile("check", rest, c)
	if !ok {
		return exitFailed
	}
	f, err := openProject(path, *anywhere)
	if err != nil {
		fmt.Fprintln(c.err, err)
		return exitFailed
	}
	say, err := language(*lang, f.Project.Unit)
	if err != nil {
		fmt.Fprintln(c.err, "frontlay check:", err)
		return exitFailed
	}
	r := layout.Solve(f.Project)
	printFindings(c.out, say, r)
	if openErrors(r.Findings) > 0 {
		return exitFindings
	}
	return exitFine
}

// printFindings writes one finding after the other, then a line that counts
// them.
func printFindings(w io.Writer, say message.Language, r layout.Result) {
	counts := map[check.Severity]int{}
	accepted := 0
	for i := range r.Findings {
		f := &r.Findings[i]
		state := f.Severity.String()
		if f.Accepted != "" {
			state = "accepted"
			accepted++
		} else {
			counts[f.Severity]++
		}
		fmt.Fprintf(w, "%s: %s: %s. To do: %s. [%s]\n", say.Say(f.Where), state, say.Say(f.What), say.Say(f.Change), f.Rule)
		if f.Accepted != "" {
			fmt.Fprintf(w, "    accepted because: %s\n", f.Accepted)
		}
	}
	fmt.Fprintf(w, "%s checked: %s, %s, %s", counted(len(r.Plan.Fronts), "front"), counted(counts[check.Error], "error"), counted(counts[check.Warning], "warning"), counted(counts[check.Advice], "piece of advice"))
	if accepted > 0 {
		fmt.Fprintf(w, ", %d accepted", accepted)
	}
	fmt.Fprintln(w, ".")
}

func counted(n int, what string) string {
	if n == 1 {
		return "1 " + what
	}
	if what == "piece of advice" {
		return fmt.Sprintf("%d pieces of advice", n)
	}
	return fmt.Sprintf("%d %ss", n, what)
}

// openErrors counts the errors that nobody has accepted.
func openErrors(found []check.Finding) int {
	n := 0
	for i := range found {
		if found[i].Severity == check.Error && found[i].Accepted == "" {
			n++
		}
	}
	return n
}
