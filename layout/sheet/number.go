package sheet

import (
	"frontlay/layout/drawing"
	"frontlay/layout/lettering"
	"frontlay/layout/plane"
	"frontlay/model/message"
)

// number writes on every page which of how many it is: in its title block, or
// where it has none at the lower right corner inside its margins, and before that
// the correction that it is printed with, which title blocks have already.
func number(pages []Page, o Options) {
	for i := range pages {
		own := pages[i].Placed[len(pages[i].Placed)-1].Drawing
		d := &draft{own: own, say: o.Say, area: pages[i].Inside}
		if room := pages[i].number; !room.Empty() {
			d.field(room, o.Say.Say(message.New("%v of %v", i+1, len(pages))))
			continue
		}
		at := plane.Point{X: d.area.Max.X - mm(1), Y: d.area.Min.Y + mm(1)}
		foot := o.Say.Say(message.New("page %v of %v", i+1, len(pages)))
		if c := pages[i].Correction; !c.None() {
			room := d.area.Max.X - max(d.area.Min.X, pages[i].footFrom) - mm(3) - lettering.Width(foot, lettering.Tiny, false)
			foot = c.within(o.Say, room) + "  " + foot
		}
		d.text(at, drawing.BottomRight, lettering.Tiny, false, foot)
	}
}
