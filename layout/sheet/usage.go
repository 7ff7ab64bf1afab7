package sheet

import (
	"frontlay/model/length"
	"frontlay/model/message"
)

// Use is how much paper one part of a document takes.
type Use struct {
	Part   Part
	Sheets int
	Roll   length.Length // length of roll that it takes; 0 where it is printed on sheets
}

// Usage tells how much paper each part of a document takes on the paper that it
// was made for, parts in their order.
func Usage(d Document, paper Paper) []Use {
	var all []Use
	for _, p := range d.Pages {
		if n := len(all); n == 0 || all[n-1].Part != Part(p.Kind) {
			all = append(all, Use{Part: Part(p.Kind)})
		}
		u := &all[len(all)-1]
		u.Sheets++
		if paper.Roll() && u.Part.Template() {
			u.Roll += alongRoll(p, paper)
		}
	}
	return all
}

// alongRoll is the length of roll that a page takes: the edge that does not lie
// across the roll.
func alongRoll(p Page, paper Paper) length.Length {
	if p.Width == paper.Width {
		return p.Height
	}
	return p.Width
}

// ofRoll is a length of paper to cut off, which nobody measures finer than
// centimetres or inches: it is written in whole ones, rounded up.
type ofRoll length.Length

// Say writes the length in the system of the project's unit.
func (l ofRoll) Say(say message.Language) string {
	unit := length.UnitCM
	if say.Unit == length.UnitInch || say.Unit == length.UnitInchDecimal {
		unit = length.UnitInch
	}
	return unit.WithSymbol(length.Length(l).CeilTo(unit.Size()))
}

// Say tells the use in words.
func (u Use) Say() message.Message {
	switch {
	case u.Roll > 0 && u.Sheets == 1:
		return message.New("%v: 1 piece, %v of the roll", u.Part.Title(), ofRoll(u.Roll))
	case u.Roll > 0:
		return message.New("%v: %v pieces, %v of the roll", u.Part.Title(), u.Sheets, ofRoll(u.Roll))
	case u.Sheets == 1:
		return message.New("%v: 1 sheet", u.Part.Title())
	}
	return message.New("%v: %v sheets", u.Part.Title(), u.Sheets)
}
