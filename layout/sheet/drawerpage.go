package sheet

import (
	"fmt"
	"slices"

	"frontlay/layout/drawing"
	"frontlay/layout/lettering"
	"frontlay/layout/plan"
	"frontlay/layout/plane"
	"frontlay/layout/view"
	"frontlay/model/length"
	"frontlay/model/message"
)

// drawerPages draws each kind of drawer from above once, up to four to a sheet,
// the paper upright or lengthwise by the larger scales.
func drawerPages(p *plan.Plan, o Options) []Page {
	all := drawerGroups(p, o)
	if len(all) == 0 {
		return nil
	}
	w, h := o.Paper.Width, o.Paper.Height
	if o.Paper.Roll() {
		h = w * 14142 / 10000
	}
	pages, scales := drawerSheets(p, all, w, h, o)
	if turned, s := drawerSheets(p, all, h, w, o); s < scales {
		return turned
	}
	return pages
}

// drawerSheets lays drawers out on sheets of one size and gives the sum of the
// scales' denominators.
func drawerSheets(p *plan.Plan, all []group, w, h length.Length, o Options) (pages []Page, scales int64) {
	cols, rows := drawerGrid(len(all), h >= w)
	for len(all) > 0 {
		n := min(cols*rows, len(all))
		title := message.New("Plans of drawers")
		d := newDraft(DrawerPlans, title, w, h, o)
		above := d.titleBlock(title, message.New("as noted"), o)
		d.box(drawing.Frame, d.area)
		wide, high := above.Width()/length.Length(cols), above.Height()/length.Length(rows)
		for i, g := range all[:n] {
			left := above.Min.X + length.Length(i%cols)*wide
			top := above.Max.Y - length.Length(i/cols)*high
			if i%cols > 0 {
				d.line(drawing.Frame, left, top, left, top-high)
			} else if i > 0 {
				d.line(drawing.Frame, above.Min.X, top, above.Max.X, top)
			}
			scales += d.drawerBlock(p, g, plane.R(left, top-high, left+wide, top).Grow(-mm(2)))
		}
		pages = append(pages, d.finish())
		all = all[n:]
	}
	return pages, scales
}

// drawerGrid is how many drawers stand beside and below each other.
func drawerGrid(count int, upright bool) (cols, rows int) {
	switch {
	case count == 1:
		return 1, 1
	case count == 2 && upright:
		return 1, 2
	case count == 2:
		return 2, 1
	}
	return 2, 2
}

// drawerBlock draws one drawer with its name above, and below it its scale and
// those sizes that its drawing has no room for: none is cut. It gives the
// scale's denominator.
func (d *draft) drawerBlock(p *plan.Plan, g group, r plane.Rect) int64 {
	top := d.paragraph(r.Min.X, r.Max.Y, r.Width(), lettering.Small, true, g.names())
	v := view.DrawerPlan(p, g.first())
	below := lettering.Pitch(lettering.Tiny)
	for _, m := range v.Marks {
		if t, ok := m.(*drawing.Text); ok {
			below += d.heightOf(r.Width(), lettering.Small, false, t.Say)
		}
	}
	picture := plane.R(r.Min.X, r.Min.Y+below+mm(1), r.Max.X, top-mm(1))
	placed, den := fit(v, picture, d.say)
	drawn, out := d.roomFor(v, den)
	placed.Drawing = drawn
	d.place(placed)
	y := r.Min.Y + below
	for _, m := range out {
		y = d.paragraph(r.Min.X, y, r.Width(), lettering.Small, false, m)
	}
	d.paragraph(r.Min.X, y, r.Width(), lettering.Tiny, false, scaleText(den, d.say.Unit))
	return den
}

// roomFor gives a drawing without the texts that do not fit their areas at a
// scale, and those texts.
func (d *draft) roomFor(v *drawing.Drawing, den int64) (*drawing.Drawing, []message.Message) {
	drawn := &drawing.Drawing{Title: v.Title}
	var out []message.Message
	for _, m := range v.Marks {
		if t, ok := m.(*drawing.Text); ok && !t.Within.Empty() {
			room := t.Within.Width()/length.Length(den) - mm(3)
			if lettering.Width(d.say.Say(t.Say), min(t.Size, lettering.Small), t.Bold) > room {
				out = append(out, t.Say)
				continue
			}
		}
		drawn.Add(m)
	}
	return drawn, out
}

// drawerGroups gathers the drawers that are asked for, inner ones too, by what their plan
// shows.
func drawerGroups(p *plan.Plan, o Options) []group {
	var all []group
	for _, equal := range gathered(slices.Collect(p.Drawers()), func(f **plan.Front) string {
		if !o.wantsFront((*f).Number) {
			return ""
		}
		return drawerKey(*f)
	}) {
		var g group
		for _, f := range equal {
			g.fronts = append(g.fronts, *f)
		}
		all = append(all, g)
	}
	return all
}

// drawerKey tells drawers apart by what their plan shows.
func drawerKey(f *plan.Front) string {
	key := ""
	if f.Nth > 0 || f.HasPacking() {
		key = fmt.Sprintln(f.Nth > 0, f.Packing)
	}
	return key + fmt.Sprintln(f.Sheet.Name, int64(f.Opening.Width()), int64(f.Runner.Length), int64(f.Face.Width()), int64(f.Overlay.Left), f.Inset,
		int64(f.Drawer.BackCut.Length), f.Place.Cabinet)
}
