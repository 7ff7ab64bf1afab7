package main

import (
	"context"
	"flag"
	"fmt"
	"io"
	"os"
	"os/signal"
	"time"

	"frontlay/layout"
	"frontlay/layout/check"
	"frontlay/model/message"
)

// checking prints the findings of a project, once or whenever it changes.
func checking(fs *flag.FlagSet) task {
	stamp := fs.String("stamp", "", "tell whether paper with the stamp `XXXXXXXX` still fits the project, and which fronts have changed since it was printed")
	watching := fs.Bool("watch", false, "check again whenever the file or one of its hardware sheets changes, until Ctrl+C; the exit code is that of the last check")
	asJSON := addJSON(fs)
	project := addProjectFlags(fs)
	return func(rest []string, c console) int {
		path, ok := oneFile("check", rest, c)
		if !ok {
			return exitFailed
		}
		if *stamp != "" {
			if *watching || *asJSON {
				fmt.Fprintln(c.err, "frontlay check: --stamp tells of paper, once and in words: leave out --watch and --json")
				return exitFailed
			}
			f, say, ok := project.open("check", path, c)
			if !ok {
				return exitFailed
			}
			return checkStamp(*stamp, layout.Solve(f.Project).Plan, say, c)
		}
		once := func(from *seen) int { return project.check(path, *asJSON, from, c) }
		if !*watching {
			return once(nil)
		}
		ctx, stop := signal.NotifyContext(context.Background(), os.Interrupt)
		defer stop()
		tick := time.NewTicker(lookEvery)
		defer tick.Stop()
		return watch(ctx, tick.C, func(from *seen) int {
			if !*asJSON {
				fmt.Fprintf(c.out, "%s, %s:\n", path, c.now().Format(time.TimeOnly))
			}
			return once(from)
		})
	}
}

// check checks a project and tells of it.
func (p projectFlags) check(path string, asJSON bool, from *seen, c console) int {
	told := newTelling(path)
	f, say, err := p.read(path, from)
	code := exitFailed
	if err == nil {
		r := layout.Solve(f.Project)
		if code = exitFine; openErrors(r.Findings) > 0 {
			code = exitFindings
		}
		if !asJSON {
			printFindings(c.out, say, r)
			for _, m := range layout.Told(r.Plan) {
				fmt.Fprintln(c.out, say.Sentence(m))
			}
			return code
		}
		told.tell(f, r, say)
	} else {
		fmt.Fprintln(c.err, err)
		told.fail(err, say)
	}
	if asJSON {
		told.print(c)
	}
	return code
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
