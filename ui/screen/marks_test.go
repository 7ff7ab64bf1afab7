package screen

import (
	"math"
	"strings"
	"testing"

	"frontlay/layout/drawing"
	"frontlay/model"
	"frontlay/ui/session"
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

// Labels of findings stand below the names of their fronts, or where there is no
// room, on one line with them.
func TestFindingsStandBelowNames(t *testing.T) {
	looked := 0
	eachElevation(t, func(name string, p *painter) {
		names := namesOf(p)
		for _, w := range p.taken {
			n := names[w.of.Of.Place]
			if !w.tagged || w.of.Of.Kind != drawing.FrontThing || n == nil {
				continue
			}
			looked++
			ascent := func(t taken) float64 { return float64(t.at.Y + 1.069*t.letter) }
			face, _ := p.faces[w.of.Of.Place]
			if size := p.Rect(face).Extent(); size.Height < 1.2*p.text || size.Width < 3*p.text { // its bay tells, or a strip
				continue
			}
			if w.ink().Y1 < n.ink().Y2 && math.Abs(ascent(w)-ascent(*n)) > 0.5 {
				t.Errorf("%s: %q stands at %v, the name %q at %v", name, w.say, w.ink(), n.say, n.ink())
			}
		}
	})
	if looked < 50 {
		t.Errorf("looked only at %d labels", looked)
	}
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

// Marks of findings have the sign and the colour of their severity.
func TestMarksTellTheSeverity(t *testing.T) {
	st := newStage(t)
	for rule, want := range map[string]struct {
		sign     string
		severity drawing.Severity
	}{
		"rules-wide-front-flagged":  {"! ", drawing.OfWarning},
		"rules-cover-below-flagged": {"× ", drawing.OfError},
	} {
		for _, sc := range scenes(t) {
			if sc.name != rule {
				continue
			}
			st.show(sc, manners(t)[0])
			p := st.screen.painter()
			p.paint(st.screen.shown())
			_, colour := p.Palette.Severity(want.severity)
			told := 0
			for _, w := range p.taken {
				if !w.tagged {
					continue
				}
				told++
				if !strings.HasPrefix(w.say, want.sign) || w.colour != colour {
					t.Errorf("%s: %q in %v", rule, w.say, w.colour)
				}
			}
			if told == 0 {
				t.Errorf("%s: nothing is told", rule)
			}
		}
	}
}

// Where fronts of different severities are told together, the worst counts.
func TestABayTellsItsWorst(t *testing.T) {
	at := func(front int, s drawing.Severity) found {
		place := model.Place{Front: front}
		return found{of: drawing.Tag{Meaning: drawing.FindingMark, Of: session.Front(place), Severity: s}, labels: []*drawing.Text{{}}}
	}
	bay := byBay([]found{at(0, drawing.OfAdvice), at(1, drawing.OfError), at(2, drawing.OfWarning)})
	if len(bay) != 1 || bay[0].of.Severity != drawing.OfError || len(bay[0].labels) != 3 {
		t.Errorf("the bay tells %+v", bay)
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
