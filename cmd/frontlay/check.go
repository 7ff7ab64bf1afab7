package main

import (
	"flag"
	"fmt"
	"io"

	"frontlay/layout"
	"frontlay/layout/check"
	"frontlay/model/message"
)

// checking prints the findings of a project.
func checking(fs *flag.FlagSet) task {
	stamp := fs.String("stamp", "", "tell whether paper with the stamp `XXXXXXXX` still fits the project, and which fronts have changed since it was printed")
	project := addProjectFlags(fs)
	return func(rest []string, c console) int {
		path, ok := oneFile("check", rest, c)
		if !ok {
			return exitFailed
		}
		f, say, ok := project.open("check", path, c)
		if !ok {
			return exitFailed
		}
		r := layout.Solve(f.Project)
		if *stamp != "" {
			return checkStamp(*stamp, r.Plan, say, c)
		}
		printFindings(c.out, say, r)
		for _, m := range layout.Told(r.Plan) {
			fmt.Fprintln(c.out, say.Sentence(m))
		}
		if openErrors(r.Findings) > 0 {
			return exitFindings
		}
		return exitFine
	}
}

// printFindings writes one finding after the other, then a line that counts
// them.
func printFindings(w io.Writer, say message.Language, r layout.Result) {
	counts := map[check.Severity]int{}
	accepted := 0
	for i := range r.Findings {
		f := &r.Findings[i]
		state := f.Severity.Word()
		if f.Accepted != "" {
			state = message.New("accepted")
			accepted++
		} else {
			counts[f.Severity]++
		}
		fmt.Fprintln(w, say.Say(message.New("%v: %v: %v. To do: %v. [%v]", f.Where, state, f.What, f.Change, f.Rule)))
		if f.Accepted != "" {
			fmt.Fprintln(w, "    "+say.Say(message.New("accepted because: %v", f.Accepted)))
		}
	}
	fmt.Fprintln(w, say.Say(message.New("Fronts checked: %v. Errors: %v, warnings: %v, advice: %v, accepted: %v.", len(r.Plan.Fronts), counts[check.Error], counts[check.Warning], counts[check.Advice], accepted)))
}

func counted(n int, what string) string {
	if n == 1 {
		return "1 " + what
	}
	return fmt.Sprintf("%d %ss", n, what)
}

// openErrors counts the errors that nobody has accepted.
func openErrors(found []check.Finding) int {
	n := 0
	for i := range found {
		if found[i].Open() {
			n++
		}
	}
	return n
}
