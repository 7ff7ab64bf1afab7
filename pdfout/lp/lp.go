// Package lp prints a PDF at actual size on a system that has the lp command
// (CUPS): PrintScaling in the file is only a hint, so the job itself says
// print-scaling=none.
package lp

import (
	"bytes"
	"context"
	"errors"
	"fmt"
	"os"
	"os/exec"
	"strconv"
	"strings"

	"frontlay/layout/sheet"
	"frontlay/model/length"
	"frontlay/model/message"
)

// System runs a program with a standard input and gives its standard output; an
// error holds what the program said. Programs are called with LC_ALL=C.
type System func(ctx context.Context, input []byte, program string, args ...string) (string, error)

// Local runs programs on this computer.
func Local(ctx context.Context, input []byte, program string, args ...string) (string, error) {
	cmd := exec.CommandContext(ctx, program, args...)
	cmd.Env = append(os.Environ(), "LC_ALL=C")
	cmd.Stdin = bytes.NewReader(input)
	var out, fault bytes.Buffer
	cmd.Stdout, cmd.Stderr = &out, &fault
	if err := cmd.Run(); err != nil {
		if s := strings.TrimSpace(fault.String()); s != "" {
			return "", errors.New(s)
		}
		return "", err
	}
	return out.String(), nil
}

// Available tells that this computer has the commands lp and lpstat. Where it
// has not, open the PDF in a viewer and say to print at actual size.
func Available() bool {
	for _, program := range []string{"lp", "lpstat"} {
		if _, err := exec.LookPath(program); err != nil {
			return false
		}
	}
	return true
}

// Printers lists the printers by name, and the default one; none where nothing
// is set up.
func Printers(ctx context.Context, run System) (names []string, standard string, err error) {
	out, err := run(ctx, nil, "lpstat", "-e")
	if err != nil {
		return nil, "", message.New("the printers of this computer can’t be listed: %v", err)
	}
	names = strings.Fields(out)
	// Without a default lpstat fails or says “no system default destination”.
	if out, err = run(ctx, nil, "lpstat", "-d"); err == nil {
		if _, after, ok := strings.Cut(out, ": "); ok {
			standard = strings.TrimSpace(after)
		}
	}
	return names, standard, nil
}

// Job is what is printed and how.
type Job struct {
	Printer string // empty: the default
	Title   string
	Copies  int // 0: one
	Paper   sheet.Paper
	PDF     []byte
}

// maxCopies keeps a slip of the keyboard from using up the paper.
const maxCopies = 99

// Print hands a job to the printing system and gives the name it has there. The
// error is a message for the user.
func Print(ctx context.Context, run System, j Job) (string, error) {
	if len(j.PDF) == 0 {
		return "", message.New("there is nothing to print")
	}
	if j.Copies < 0 || j.Copies > maxCopies {
		return "", message.New("%v copies can’t be printed: choose from 1 to %v", j.Copies, maxCopies)
	}
	if strings.HasPrefix(j.Printer, "-") || strings.ContainsAny(j.Printer, "/#\n\x00") {
		return "", message.New("“%v” is not the name of a printer", j.Printer)
	}
	out, err := run(ctx, j.PDF, "lp", j.arguments()...)
	if err != nil {
		return "", message.New("the printing system refused the job: %v", err)
	}
	// “request id is shop-12 (0 file(s))”
	_, id, _ := strings.Cut(out, "request id is ")
	id, _, _ = strings.Cut(id, " ")
	return strings.TrimSpace(id), nil
}

func (j Job) arguments() []string {
	args := []string{"-n", strconv.Itoa(max(j.Copies, 1))}
	if j.Printer != "" {
		args = append(args, "-d", j.Printer)
	}
	if j.Title != "" {
		args = append(args, "-t", j.Title)
	}
	args = append(args, "-o", "print-scaling=none")
	if m := media(j.Paper); m != "" {
		args = append(args, "-o", "media="+m)
	}
	return append(args, "--", "-")
}

// media names a paper to CUPS; a roll is left to the printer's own settings.
func media(p sheet.Paper) string {
	if p.Width == 0 || p.Roll() {
		return ""
	}
	for _, known := range sheet.Papers() {
		if known == p {
			return p.Name
		}
	}
	mm := func(l length.Length) string { return length.UnitMM.Format(l.RoundTo(10 * length.Micrometre)) }
	return fmt.Sprintf("Custom.%sx%smm", mm(p.Width), mm(p.Height))
}
