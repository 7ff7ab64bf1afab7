package model

import "frontlay/model/length"

// Process is how exactly the pieces come out of the workshop. Each size is a ±: of twenty
// pieces nineteen are off by no more. Nil sizes are not given; Usual fills them.
type Process struct {
	Drilling Drilling
	Within   *length.Length // how far a gap may be from its planned size, at both its ends

	Cutting   *length.Length // a cut size
	Jig       *length.Length // where a hole drilled by the jig comes out
	Template  *length.Length // where one drilled by a template laid on by hand comes out, on a true print
	Machine   *length.Length // where one drilled by a machine comes out
	Print     *length.Length // what 100 mm on a template are off, as the printer prints them
	Paper     *length.Length // what 100 mm of paper move in damp or dry air
	Runner    *length.Length // height of a runner in the carcass
	Connector *length.Length // where a front sits in its connectors
}

// Drilling tells by what fronts are drilled.
type Drilling uint8

// The ways to drill fronts.
const (
	ByJig Drilling = iota
	ByTemplate
	ByMachine
)

// ProcessFigure is one of the sizes of a process: its key in a file, and what holds where
// none is given (from memory).
type ProcessFigure struct {
	Key   string
	At    func(*Process) **length.Length
	Usual length.Length
}

// ProcessFigures are all sizes of a process.
func ProcessFigures() []ProcessFigure {
	tenth := length.Millimetre / 10
	return []ProcessFigure{
		{"within", func(p *Process) **length.Length { return &p.Within }, 10 * tenth},
		{"cutting", func(p *Process) **length.Length { return &p.Cutting }, 3 * tenth},
		{"jig", func(p *Process) **length.Length { return &p.Jig }, 3 * tenth},
		{"template", func(p *Process) **length.Length { return &p.Template }, 6 * tenth},
		{"machine", func(p *Process) **length.Length { return &p.Machine }, 1 * tenth},
		{"print", func(p *Process) **length.Length { return &p.Print }, 2 * tenth},
		{"paper", func(p *Process) **length.Length { return &p.Paper }, 1 * tenth},
		{"runner", func(p *Process) **length.Length { return &p.Runner }, 5 * tenth},
		{"connector", func(p *Process) **length.Length { return &p.Connector }, 2 * tenth},
	}
}

// Filled gives a process with the usual figures where it has none; nil is one without any.
func (p *Process) Filled() *Process {
	f := p.clone()
	if f == nil {
		f = new(Process)
	}
	for _, row := range ProcessFigures() {
		if at := row.At(f); *at == nil {
			v := row.Usual
			*at = &v
		}
	}
	return f
}

// clone is a copy, nil of nil.
func (p *Process) clone() *Process {
	if p == nil {
		return nil
	}
	c := *p
	for _, row := range ProcessFigures() {
		if at := row.At(&c); *at != nil {
			v := **at
			*at = &v
		}
	}
	return &c
}

// Counts tells whether a figure of a process counts with a way to drill.
func (d Drilling) Counts(key string) bool {
	switch key {
	case "jig":
		return d == ByJig
	case "machine":
		return d == ByMachine
	case "template", "print", "paper":
		return d == ByTemplate
	}
	return true
}
