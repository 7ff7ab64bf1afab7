package figure

import (
	"frontlay/model"
	"frontlay/model/length"
	"frontlay/model/message"
)

// Process are the rows of how exactly things are made.
func Process(p *model.Process) []Row {
	rows := []Row{choice("drilling", "Fronts drilled by", "By what the fronts are drilled; its figure counts.", &p.Drilling, "jig", "template", "machine")}
	named := map[string]struct{ name, doc message.Message }{
		"within":    {message.New("Gaps wanted within"), message.New("How far a gap may be from its planned size, at both its ends.")},
		"cutting":   {message.New("Cutting"), message.New("What a cut size is off.")},
		"jig":       {message.New("Holes by jig"), message.New("How far from its place a hole comes out that is drilled by the jig.")},
		"template":  {message.New("Holes by template"), message.New("How far from its place a hole comes out that is drilled by a template laid on by hand.")},
		"machine":   {message.New("Holes by machine"), message.New("How far from its place a hole comes out that is drilled by a machine.")},
		"print":     {message.New("Print, over 100 mm"), message.New("What a check bar of 100 mm on a template is off.")},
		"paper":     {message.New("Paper, over 100 mm"), message.New("What 100 mm of paper move in damp or dry air.")},
		"runner":    {message.New("Height of runners"), message.New("How far from its height a runner sits in the carcass.")},
		"connector": {message.New("Play of connectors"), message.New("How far from its place a front sits in a connector, up or down and to the side.")},
	}
	for _, f := range model.ProcessFigures() {
		row := sizeOrNil(f.Key, "", "", f.At(p), 0, 100*length.Millimetre)
		row.Name, row.Doc = named[f.Key].name, message.New("%v %v where it is left out (from memory).", named[f.Key].doc, f.Usual)
		rows = append(rows, row)
	}
	return rows
}
