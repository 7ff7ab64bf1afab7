package screen

import (
	"testing"

	"frontlay/layout/drawing"
	"frontlay/layout/view"
	"frontlay/model"
	"frontlay/ui/paint"
)

// placed is the painter of what is shown, with everything in its place.
func (c *Screen) placed() *painter {
	p := c.painter()
	p.reserved = c.reserved()
	p.place(c.strong)
	return p
}

// Only the chosen finding has a flag, with the sign of its severity, and it covers
// neither its place nor another text.
func TestOnlyTheChosenFindingHasAFlag(t *testing.T) {
	st := newStage(t)
	for _, sc := range scenes(t) {
		st.show(sc, manners(t)[0])
		for i := range st.screen.session.Result().Findings {
			if i == 12 {
				break
			}
			st.screen.session.ChooseFinding(i)
			f := &st.screen.session.Result().Findings[i]
			p := st.screen.placed()
			for _, w := range p.flags {
				if w.say != p.say.Say(f.Flag) || w.of.Severity != view.Severity(f) {
					t.Errorf("%s: the flag of %s is %q with the sign of %v", sc.name, f.Rule, w.say, w.of.Severity)
				}
				if !w.around.Within(boxOf(0, 0, p.Size.Width, p.Size.Height)) {
					t.Errorf("%s: the flag %q stands at %v, out of sight", sc.name, w.say, w.around)
				}
				for n := range p.all.Texts {
					if other := &p.all.Texts[n]; !p.hidden(other) && paint.OfBox(other.Box).Overlaps(w.around) {
						t.Errorf("%s: the flag %q lies over %q", sc.name, w.say, other.Lines[0].Text)
					}
				}
			}
			if len(p.chosenPlaces()) > 0 && len(p.flags) != 1 {
				t.Errorf("%s: %d flags of %s", sc.name, len(p.flags), f.Rule)
			}
		}
		st.screen.session.ChooseFinding(-1)
		if p := st.screen.placed(); len(p.flags) > 0 {
			t.Errorf("%s: a flag without a chosen finding: %q", sc.name, p.flags[0].say)
		}
	}
}

// A locked front says so, and only a locked one.
func TestLockedFrontsSaySo(t *testing.T) {
	st := newStage(t)
	sc := scenes(t)[0]
	fronts := sc.project.Cabinets[0].Bays[0].Fronts
	fronts[1].Locked = true
	st.show(sc, manners(t)[0])
	for _, through := range []bool{false, true} {
		st.screen.SetSeeThrough(through)
		told := map[model.Place]string{}
		for _, w := range st.screen.placed().all.Texts {
			if w.Of.Meaning == drawing.Note && w.Of.Of.Place.Front >= 0 {
				told[w.Of.Of.Place] = w.Lines[0].Text
			}
		}
		if len(told) != 1 || told[model.Place{Front: 1}] != "locked" {
			t.Errorf("see-through %v: %v", through, told)
		}
	}
}
