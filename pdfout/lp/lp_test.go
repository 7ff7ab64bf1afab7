package lp

import (
	"context"
	"errors"
	"slices"
	"strings"
	"testing"

	"frontlay/layout/sheet"
	"frontlay/model/length"
)

// recorded stands for the printing system: it keeps what it was called with.
type recorded struct {
	calls  [][]string
	input  []byte
	answer map[string]string // by the program and its first argument
	fail   error
}

func (r *recorded) run(_ context.Context, input []byte, program string, args ...string) (string, error) {
	r.calls = append(r.calls, append([]string{program}, args...))
	r.input = input
	return r.answer[program+" "+args[0]], r.fail
}

func TestPrintersAreListed(t *testing.T) {
	r := &recorded{answer: map[string]string{
		"lpstat -e": "shop\nplotter_610\n", "lpstat -d": "system default destination: shop\n",
	}}
	names, standard, err := Printers(t.Context(), r.run)
	if err != nil || !slices.Equal(names, []string{"shop", "plotter_610"}) || standard != "shop" {
		t.Errorf("%q, %q, %v", names, standard, err)
	}
	r = &recorded{answer: map[string]string{"lpstat -d": "no system default destination\n"}}
	if names, standard, err = Printers(t.Context(), r.run); err != nil || len(names) > 0 || standard != "" {
		t.Errorf("without printers: %q, %q, %v", names, standard, err)
	}
	r.fail = errors.New("lpstat: Scheduler is not running")
	if _, _, err = Printers(t.Context(), r.run); err == nil || !strings.Contains(err.Error(), "Scheduler is not running") {
		t.Errorf("a fault became %v", err)
	}
}

func TestJobsKeepTheirSize(t *testing.T) {
	a4 := sheet.Papers()[0]
	custom := sheet.Paper{Name: "custom", Width: length.FromMM(215.9), Height: length.MM(400)}
	for _, c := range []struct {
		name string
		job  Job
		want []string
	}{
		{"named printer", Job{Printer: "shop", Title: "Glaze bench", Copies: 2, Paper: a4, PDF: []byte("%PDF")},
			[]string{"lp", "-n", "2", "-d", "shop", "-t", "Glaze bench", "-o", "print-scaling=none", "-o", "media=A4", "--", "-"}},
		{"custom paper", Job{Paper: custom, PDF: []byte("%PDF")},
			[]string{"lp", "-n", "1", "-o", "print-scaling=none", "-o", "media=Custom.215.9x400mm", "--", "-"}},
		{"roll", Job{Paper: sheet.Paper{Name: "roll", Width: length.MM(610)}, PDF: []byte("%PDF")},
			[]string{"lp", "-n", "1", "-o", "print-scaling=none", "--", "-"}},
	} {
		t.Run(c.name, func(t *testing.T) {
			r := &recorded{answer: map[string]string{"lp -n": "request id is shop-12 (0 file(s))\n"}}
			id, err := Print(t.Context(), r.run, c.job)
			if err != nil || id != "shop-12" || !slices.Equal(r.calls[0], c.want) || string(r.input) != "%PDF" {
				t.Errorf("%q, %v\n%q; want\n%q", id, err, r.calls, c.want)
			}
		})
	}
}

func TestJobsThatAreRefused(t *testing.T) {
	for _, c := range []struct {
		job  Job
		fail error
		want string
	}{
		{Job{}, nil, "nothing to print"},
		{Job{PDF: []byte("%PDF"), Copies: 1000}, nil, "copies"},
		{Job{PDF: []byte("%PDF"), Printer: "-o x"}, nil, "not the name of a printer"},
		{Job{PDF: []byte("%PDF")}, errors.New("lp: The printer or class does not exist."), "does not exist"},
	} {
		r := &recorded{fail: c.fail}
		if _, err := Print(t.Context(), r.run, c.job); err == nil || !strings.Contains(err.Error(), c.want) {
			t.Errorf("%+v: %v; want an error with %q", c.job, err, c.want)
		}
		if c.fail == nil && len(r.calls) > 0 {
			t.Errorf("a job that is refused was handed on: %q", r.calls)
		}
	}
}
