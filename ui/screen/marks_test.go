package screen

import (
	"testing"

	"frontlay/layout/drawing"
	"frontlay/layout/view"
	"frontlay/model"
)

// eachElevation shows the elevations of scenes and hands on what is written in
// them.
func eachElevation(t *testing.T, see func(name string, p *painter)) {
	st := newStage(t)
	for _, sc := range scenes(t) {
		for _, m := range manners(t)[:3] {
			st.show(sc, m)
			for _, through := range []bool{false, true} {
				for zoom, factor := range map[string]float64{"fit": 1, "half": 0.5} {
					c := st.screen
					c.SetSeeThrough(through)
					c.Fit()
					c.Zoom(factor)
					p := c.painter()
					p.paint(c.shown())
					name := sc.name + " " + m.name + " " + zoom
					if through {
						name += " see-through"
					}
					see(name, p)
				}
			}
		}
	}
}

func namesOf(p *painter) map[model.Place]*taken {
	names := map[model.Place]*taken{}
	for i := range p.taken {
		if w := &p.taken[i]; w.bold && !w.tagged && w.of.Of.Kind == drawing.FrontThing {
			names[w.of.Of.Place] = w
		}
	}
	return names
}

// A front whose height is written has its number too, which says more.
func TestNumbersComeBeforeHeights(t *testing.T) {
	eachElevation(t, func(name string, p *painter) {
		names := namesOf(p)
		for _, f := range p.figures {
			if f.of.Kind != drawing.FrontHeight || names[f.of.Place] != nil {
				continue
			}
			face := p.Rect(p.faces[f.of.Place])
			if face.Within(p.window()) && face.Y2-face.Y1 > 1.4*p.text && face.X2-face.X1 > 3*p.text {
				t.Errorf("%s: the front at %v has its height, but no number", name, f.of.Place)
			}
		}
	})
}

// Only the chosen finding has a flag, with the sign and on the colour of its
// severity, and it covers neither its place nor another text.
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
			p := st.screen.painter()
			p.paint(st.screen.shown())
			flags := 0
			for k := range p.taken {
				w := &p.taken[k]
				if !w.flag {
					continue
				}
				flags++
				sign, _ := p.Palette.Severity(view.Severity(f))
				if w.say != sign+" "+p.say.Say(f.Flag) || w.colour != p.Palette.OnSign {
					t.Errorf("%s: the flag of %s is %q in %v", sc.name, f.Rule, w.say, w.colour)
				}
				around := w.ink().Grown(flagPadX, flagPadY)
				if !around.Within(boxOf(0, 0, p.Size.Width, p.Size.Height)) {
					t.Errorf("%s: the flag %q stands at %v, out of sight", sc.name, w.say, around)
				}
				for n := range p.taken {
					if other := &p.taken[n]; n != k && !other.hidden && other.ink().Overlaps(around) {
						t.Errorf("%s: the flag %q lies over %q", sc.name, w.say, other.say)
					}
				}
			}
			if len(p.chosen) > 0 && flags != 1 {
				t.Errorf("%s: %d flags of %s", sc.name, flags, f.Rule)
			}
		}
		st.screen.session.ChooseFinding(-1)
		p := st.screen.painter()
		p.paint(st.screen.shown())
		for k := range p.taken {
			if p.taken[k].flag {
				t.Errorf("%s: a flag without a chosen finding: %q", sc.name, p.taken[k].say)
			}
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
		p := st.screen.painter()
		p.paint(st.screen.shown())
		told := map[model.Place]string{}
		for _, w := range p.taken {
			if w.of.Meaning == drawing.Note {
				told[w.of.Of.Place] = w.say
			}
		}
		if len(told) != 1 || told[model.Place{Front: 1}] != "locked" {
			t.Errorf("see-through %v: %v", through, told)
		}
	}
}
