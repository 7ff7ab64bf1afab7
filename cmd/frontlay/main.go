// Command frontlay plans the fronts of drawer cabinets: in a window, or one
// headless job a file. See its --help.
package main

import (
	"errors"
	"flag"
	"fmt"
	"io"
	"os"
	"strings"
	"time"

	_ "frontlay/cmd/frontlay/locale" // before Fyne is initialised
)

// Exit codes of every command.
const (
	exitFine     = 0
	exitFindings = 1 // the check found errors that nobody accepted
	exitFailed   = 2 // something could not be read, written or understood
)

// console is what a command needs from the world around it.
type console struct {
	out, err io.Writer
	terminal bool // err is a terminal, where a line can be written over
	now      func() time.Time
	getenv   func(string) string
}

func main() {
	c := console{out: os.Stdout, err: os.Stderr, now: time.Now, getenv: os.Getenv}
	if info, err := os.Stderr.Stat(); err == nil {
		c.terminal = info.Mode()&os.ModeCharDevice != 0
	}
	os.Exit(run(os.Args[1:], c))
}

// command is one thing that frontlay does without a window.
type command struct {
	name, use, about string
	run              func(args []string, c console) int
}

func commands() []command {
	return []command{
		{"check", "check FILE", "print the findings of a project", runCheck},
		{"propose", "propose FILE --thing jars=210", "print the best divisions of a bay, from what is to go into its drawers", runPropose},
		{"print", "print FILE -o OUT.pdf", "write drawings and lists, and drilling templates beside them, as PDF", runPrint},
		{"export", "export FILE -o FOLDER", "write drawings as SVG and DXF, lists as CSV, the plan as JSON", runExport},
		{"calibrate", "calibrate -o OUT.pdf", "write a page that measures a printer, and keep what the rule says", runCalibrate},
		{"schema", "schema [project|sheet|reference]", "print the JSON Schema for editors, or the reference of the file formats", runSchema},
		{"new", "new FILE", "write a project to begin with", runNew},
	}
}

// run does what the arguments ask for and gives the exit code.
func run(args []string, c console) int {
	if len(args) > 0 {
		switch args[0] {
		case "help", "-h", "-help", "--help":
			fmt.Fprint(c.out, helpText())
			return exitFine
		case "version", "--version":
			fmt.Fprintln(c.out, "frontlay", version())
			return exitFine
		}
		for _, cmd := range commands() {
			if cmd.name == args[0] {
				return cmd.run(args[1:], c)
			}
		}
	}
	return runWindow(args, c)
}

// parse reads flags that may stand before, between and behind the other
// arguments, and gives those others.
func parse(fs *flag.FlagSet, args []string, c console) ([]string, error) {
	fs.SetOutput(io.Discard)
	var rest []string
	for {
		if err := fs.Parse(args); err != nil {
			if !errors.Is(err, flag.ErrHelp) {
				fmt.Fprintf(c.err, "frontlay %s: %v. See frontlay --help.\n", fs.Name(), err)
			}
			return nil, err
		}
		if fs.NArg() == 0 {
			return rest, nil
		}
		rest = append(rest, fs.Arg(0))
		args = fs.Args()[1:]
	}
}

// oneFile is the only argument of a command that works on a file.
func oneFile(name string, rest []string, c console) (string, bool) {
	switch {
	case len(rest) == 0:
		fmt.Fprintf(c.err, "frontlay %s: no file is named. Write: frontlay %s FILE\n", name, name)
	case len(rest) > 1:
		fmt.Fprintf(c.err, "frontlay %s: one file at a time, but %s are named.\n", name, strings.Join(rest, ", "))
	default:
		return rest[0], true
	}
	return "", false
}

// failed ends a command whose flags could not be read; asking for help is fine.
func failed(err error, c console) int {
	if errors.Is(err, flag.ErrHelp) {
		fmt.Fprint(c.out, helpText())
		return exitFine
	}
	return exitFailed
}
