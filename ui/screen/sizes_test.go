package screen

import (
	"strings"
	"testing"

	"fyne.io/fyne/v2"

	"frontlay/ui/session"
)

// In the plan of a drawer that has no room for the size of its bottom or back in
// one line, both are told all the same: that of the back nearer to the back, in
// letters not smaller than usual ones.
func TestSizesAreBrokenRatherThanLeftOut(t *testing.T) {
	st := newStage(t)
	st.window.Resize(fyne.NewSize(940, 356)) // what large text leaves of a small screen
	broken := 0
	for _, m := range manners(t) {
		if m.name == "inches" {
			m.name, m.large = "inches large", true
		}
		st.t = t
		st.show(scenes(t)[0], m)
		c := st.screen
		for i := range c.session.Result().Plan.Fronts {
			f := c.session.Result().Plan.Fronts[i]
			if f.Runner.Length <= 0 || f.Face.Width().MM() < 700 {
				continue
			}
			c.session.Select(session.Front(f.Place))
			c.ShowPicture(DrawerPlan)
			c.Fit()
			p := c.painter()
			p.paint(c.shown())
			back, bottom := p.placeOf(p.say.Figure(f.Drawer.BackCut.Width)), p.placeOf(p.say.Figure(f.Drawer.BottomCut.Width))
			switch {
			case back == nil || bottom == nil:
				t.Errorf("%s: the sizes of the back or the bottom of drawer %d are not told", m.name, f.Number)
				continue
			case back.at.Y >= bottom.at.Y:
				t.Errorf("%s: the size of the back of drawer %d stands at %v, that of its bottom at %v", m.name, f.Number, back.at, bottom.at)
			case back.letter < 11.5 || bottom.letter < 11.5: // nine tenths of 13
				t.Errorf("%s: the sizes of drawer %d are written in letters of %v and %v", m.name, f.Number, back.letter, bottom.letter)
			}
			if strings.HasSuffix(bottom.say, "×") {
				broken++
				if second := p.placeOf(p.say.Figure(f.Drawer.BottomCut.Length)); second == nil || second.at.Y <= bottom.at.Y {
					t.Errorf("%s: the second line of the size of bottom %d stands at %v", m.name, f.Number, second)
				}
			}
			report(t, m.name, faults(c.Objects(), c.Size(), false))
		}
		c.ShowPicture(Elevation)
	}
	if broken == 0 {
		t.Error("no size was broken")
	}
}

// placeOf finds the text that says a figure of a size.
func (p *painter) placeOf(figure string) *taken {
	for i := range p.taken {
		if t := &p.taken[i]; t.own == 0 && strings.Contains(t.say, figure) {
			return t
		}
	}
	return nil
}
