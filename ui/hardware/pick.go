package hardware

import (
	"frontlay/model"
	"frontlay/model/length"
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

// Blank is a sheet to begin with. Its figures are none of a maker's: they only
// make a sketch that can be read, and a sheet without fault.
func Blank(u length.Unit) *model.HardwareSheet {
	mm := length.MM
	return &model.HardwareSheet{
		Name: "New sheet", Unit: u,
		Note:          "Figures to begin with, from no maker: replace every one by that on your maker's document before you cut or drill.",
		SideClearance: mm(12),
		Runner: model.RunnerFigures{
			ClearanceBehind: mm(10), ClearanceAbove: mm(8), Setback: mm(3),
			Lengths: []model.RunnerLength{{Length: mm(400)}},
		},
		Connector: model.ConnectorFigures{Inset: mm(20), Diameter: mm(10), Depth: mm(10)},
		Drawers:   []model.DrawerHeight{{Name: "low", SideTop: mm(90), Holes: []length.Length{mm(48), mm(80)}}},
		Bottom:    model.BottomFigures{Underside: mm(12), Thickness: mm(16), DeductWidth: mm(60), DeductLength: mm(18)},
		Back:      model.BackFigures{DeductWidth: mm(70), Thickness: mm(16)},
	}
}
