package sheet

import (
	"frontlay/layout/drawing"
	"frontlay/layout/lettering"
	"frontlay/layout/list"
	"frontlay/layout/opening"
	"frontlay/layout/plan"
	"frontlay/layout/plane"
	"frontlay/layout/view"
	"frontlay/model"
	"frontlay/model/length"
	"frontlay/model/message"
)

// A study's pages are a drawing, and below it the table of how its figures came about. The
// drawing takes at most the first of these shares of a page, or less where that saves one: a page
// with a few lines is turned over for nothing.
var studyShares = [...]length.Length{45, 36, 28}

const studyOf = 100

// picture draws a study's drawing below y, as high as a share of the page at most, and gives the
// y below it. A run is as large as it can be, at any scale: its gaps are not to be measured there.
func (d *draft) picture(v *drawing.Drawing, share, y length.Length, o Options) length.Length {
	if len(v.Marks) == 0 {
		return y
	}
	high := d.area.Height() * share / studyOf
	if k := Part(d.page.Kind); k == Season || k == Spread {
		pad := mm(6) // for ranges that reach past the run's edges
		placed := asLarge(v, plane.R(d.area.Min.X+pad, y-high, d.area.Max.X-pad, y))
		scaled := func(v length.Length) length.Length {
			return v / length.Length(placed.ScaleDen) * length.Length(placed.ScaleNum)
		}
		r := v.Bounds()
		placed.At.Y = y - scaled(r.Max.Y)
		d.place(placed)
		return d.paragraph(d.area.Min.X, y-scaled(r.Height())-mm(2), d.area.Width(), lettering.Small, false, v.Title) - mm(3)
	}
	placed, den := fit(v, plane.R(d.area.Min.X, y-high, d.area.Max.X, y), o.Say)
	taken := v.OnPaper(den, o.Say) // what is left of its height is the table's
	placed.At.Y = y - taken.Max.Y
	d.place(placed)
	y -= taken.Height()
	return d.paragraph(d.area.Min.X, y-mm(2), d.area.Width(), lettering.Small, false, message.New("%v · %v", scaleText(den, o.Say.Unit), v.Title)) - mm(3)
}

// openingPages are those of measured openings, each with the packing list of its drawers, and
// of the niche.
func openingPages(p *plan.Plan, o Options) []Page {
	var pages []Page
	for _, s := range opening.Bays(p) {
		pages = append(pages, drawnTable(Openings, view.Opening(p, s.Bay.Place), list.Opening(s, o.Say), o)...)
		if len(s.Packing) > 0 {
			pages = append(pages, tablePages(Openings, list.PackingList(s, o.Say), o)...)
		}
	}
	if n := opening.OfNiche(p); n != nil {
		pages = append(pages, drawnTable(Openings, view.Niche(n), list.Niche(n, o.Say), o)...)
	}
	return pages
}

// tippingPages are those of cabinets that stand free.
func tippingPages(p *plan.Plan, o Options) []Page {
	var pages []Page
	for i := range p.Cabinets {
		if p.Project.Cabinets[i].Standing() == model.StandsFree {
			pages = append(pages, drawnTable(Tipping, view.Tipping(p, i), list.Tipping(p, i, o.Say), o)...)
		}
	}
	return pages
}

// seasonPages tell how solid wood moves, where there is any and the climate is given.
func seasonPages(p *plan.Plan, o Options) []Page {
	t := list.Season(p, o.Say)
	if len(t.Rows) == 0 {
		return nil
	}
	return drawnTable(Season, view.Year(p), t, o)
}

// spreadPages tell how exact the gaps come out, where the project says how exactly things
// are made.
func spreadPages(p *plan.Plan, o Options) []Page {
	if p.Project.Process == nil || len(p.Gaps()) == 0 {
		return nil
	}
	return drawnTable(Spread, view.Spread(p), list.Spread(p, o.Say), o)
}
