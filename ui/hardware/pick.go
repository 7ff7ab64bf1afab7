package hardware

import (
	"frontlay/model"
	"frontlay/model/length"
	"frontlay/model/message"
)

// picked are the items of a sheet that the form shows; nil where a list is empty.
type picked struct {
	sheet  *model.HardwareSheet
	runner *model.RunnerLength
	drawer *model.DrawerHeight
	more   *model.HolePattern
}

func (p *Page) pick(s *model.HardwareSheet) *picked {
	k := &picked{sheet: s}
	if i := p.chosen.runner; i < len(s.Runner.Lengths) {
		k.runner = &s.Runner.Lengths[i]
	}
	if i := p.chosen.drawer; i < len(s.Drawers) {
		k.drawer = &s.Drawers[i]
		if j := p.chosen.more; j < len(k.drawer.More) {
			k.more = &k.drawer.More[j]
		}
	}
	return k
}

// now are the items of the sheet as it is, only to be read.
func (p *Page) now() *picked { return p.pick(p.sheet) }

// keepChosen keeps the indexes inside the lists.
func (p *Page) keepChosen() {
	c := &p.chosen
	c.runner = max(min(c.runner, len(p.sheet.Runner.Lengths)-1), 0)
	c.drawer = max(min(c.drawer, len(p.sheet.Drawers)-1), 0)
	k := p.now()
	c.more, c.screw = max(c.more, 0), max(c.screw, 0)
	if k.drawer != nil {
		c.more = max(min(c.more, len(k.drawer.More)-1), 0)
	}
	if k.runner != nil {
		c.screw = max(min(c.screw, len(k.runner.Screws)-1), 0)
	}
}

// Blank is a sheet to begin with, in round figures of the language's unit. They
// are none of a maker's: they only make a sketch that can be read, and a sheet without fault.
func Blank(say message.Language) *model.HardwareSheet {
	u := say.Unit
	text := func(s string) string { return say.Say(message.New(s)) }
	round := func(mm, sixteenths int64) length.Length {
		if u == length.UnitInch || u == length.UnitInchDecimal {
			return length.Length(sixteenths) * 4 * length.Inch64th
		}
		return length.Length(mm) * length.Millimetre
	}
	return &model.HardwareSheet{
		Name: text("New sheet"), Unit: u,
		Note:          text("Figures to begin with, from no maker: replace every one by that on your maker's document before you cut or drill."),
		SideClearance: round(12, 8),
		Runner: model.RunnerFigures{
			ClearanceBehind: round(10, 6), ClearanceAbove: round(8, 5), Setback: round(3, 2),
			Lengths: []model.RunnerLength{{Length: round(400, 256)}},
		},
		Connector: model.ConnectorFigures{Inset: round(20, 12), Diameter: round(10, 6), Depth: round(10, 6)},
		Drawers:   []model.DrawerHeight{{Name: text("low"), SideTop: round(90, 56), Holes: []length.Length{round(48, 30), round(80, 50)}}},
		Bottom:    model.BottomFigures{Underside: round(12, 8), Thickness: round(16, 10), DeductWidth: round(60, 38), DeductLength: round(18, 12)},
		Back:      model.BackFigures{DeductWidth: round(70, 44), Thickness: round(16, 10)},
	}
}
