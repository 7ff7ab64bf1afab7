package letter_test

import (
	"reflect"
	"strings"
	"testing"

	"pgregory.net/rapid"

	"frontlay/layout/drawing"
	"frontlay/layout/letter"
	"frontlay/layout/lettering"
	"frontlay/layout/plane"
	"frontlay/layout/view"
	"frontlay/model"
	"frontlay/model/length"
	"frontlay/model/message"
)

// drawings are those of the demo.
func drawings(t *testing.T) []*drawing.Drawing {
	r := demo(t)
	f := &r.Plan.Fronts[3]
	return []*drawing.Drawing{
		view.Elevation(r.Plan, view.ElevationOptions{}), view.Elevation(r.Plan, view.ElevationOptions{SeeThrough: true}),
		view.Section(r.Plan, model.Place{Front: -1}), view.Rear(f), view.DrawerPlan(r.Plan, f),
		view.HardwareFront(f.Sheet, view.HardwareOptions{Drawer: 1, Runner: 1}), view.HardwareSide(f.Sheet, view.HardwareOptions{Drawer: 1, Runner: 1, Screw: 1}),
	}
}

// Whatever the size of the picture, the unit and the renderer: no text lies over
// another or leaves the area, no ring lies over a text of another front, what is
// cut is no figure, and what is not written says why.
func TestPlaces(t *testing.T) {
	all := drawings(t)
	rapid.Check(t, func(t *rapid.T) {
		d := rapid.SampledFrom(all).Draw(t, "drawing")
		on := rapid.SampledFrom(renderers()).Draw(t, "renderer")
		on.width *= rapid.Float64Range(0.4, 2).Draw(t, "width")
		on.height *= rapid.Float64Range(0.6, 2).Draw(t, "height")
		say := message.Language{Unit: length.Unit(rapid.IntRange(0, 3).Draw(t, "unit"))}
		w := on.picture(d, say).Write()
		for i := range w.Texts {
			a := &w.Texts[i]
			if b := a.Box; b.Lo.X < 0 || b.Lo.Y < 0 || b.Hi.X > on.width || b.Hi.Y > on.height {
				t.Errorf("%q leaves the area: %v", a.Lines[0].Text, b)
			}
			if a.Variant == letter.Cut && strings.ContainsAny(a.Lines[0].Text, "0123456789") && a.Of.Meaning == drawing.DimensionLine {
				t.Errorf("the figure %q is cut", a.Lines[0].Text)
			}
			for k := range i {
				if b := &w.Texts[k]; overlap(a.Box, b.Box) {
					t.Errorf("%q lies over %q", a.Lines[0].Text, b.Lines[0].Text)
				}
			}
			for _, r := range w.Rings {
				if r.Of.Of.Place != a.Of.Of.Place && overlap(r.Box, a.Box) {
					t.Errorf("%q lies in the ring of another front", a.Lines[0].Text)
				}
			}
		}
		for _, m := range w.Missing {
			if m.Text == "" || m.Why == "" {
				t.Errorf("%+v says nothing", m)
			}
		}
		if again := on.picture(d, say).Write(); !reflect.DeepEqual(again.Dump(), w.Dump()) {
			t.Error("the same picture is lettered in another way")
		}
	})
}

func overlap(a, b letter.Box) bool {
	return a.Lo.X < b.Hi.X && b.Lo.X < a.Hi.X && a.Lo.Y < b.Hi.Y && b.Lo.Y < a.Hi.Y
}

// What stands at a point is the text whose letters are there.
func TestAt(t *testing.T) {
	w := renderers()[0].picture(drawings(t)[0], message.Language{}).Write()
	for i := range w.Texts {
		b := w.Texts[i].Box
		if got := w.At(letter.Point{X: (b.Lo.X + b.Hi.X) / 2, Y: (b.Lo.Y + b.Hi.Y) / 2}, 0); got != i {
			t.Errorf("in the middle of %q stands text %d, not %d", w.Texts[i].Lines[0].Text, got, i)
		}
	}
	if got := w.At(letter.Point{X: -5, Y: -5}, 2); got >= 0 {
		t.Errorf("outside of the picture stands %q", w.Texts[got].Lines[0].Text)
	}
}

// A text that a line or a hole runs through asks for a ground, one beside it does
// not; and it would rather stand beside it.
func TestGrounds(t *testing.T) {
	on := renderers()[1]
	for name, c := range map[string]struct {
		mark   drawing.Mark
		width  int64
		ground bool
	}{
		"nothing there":            {nil, 60, false},
		"room beside an upright":   {&drawing.Line{From: point(30, 0), To: point(30, 20)}, 60, false},
		"no room beside it":        {&drawing.Line{From: point(12, 0), To: point(12, 20)}, 24, true},
		"a hole, and room":         {&drawing.Circle{Tag: drawing.Tag{Meaning: drawing.HoleEdge}, Centre: point(30, 10), Radius: 2 * length.Millimetre}, 60, false},
		"a line from corner to it": {&drawing.Line{From: point(0, 10), To: point(24, 10)}, 24, false},
	} {
		t.Run(name, func(t *testing.T) {
			d := &drawing.Drawing{}
			room := plane.R(0, 0, length.MM(c.width), length.MM(20))
			if c.mark != nil {
				d.Add(c.mark)
			}
			d.Add(&drawing.Text{At: room.Centre(), Anchor: drawing.Anchor{X: 0.5, Y: 0.5}, Size: lettering.Small, Say: message.New("drawer side"), Within: room})
			p := letter.New(on.metrics, on.style, message.Language{}, letter.Box{Hi: letter.Point{X: 100, Y: 100}})
			p.Add(d, letter.Placing{At: func(q plane.Point) letter.Point { return letter.Point{X: q.X.MM(), Y: q.Y.MM()} }})
			w := p.Write()
			if len(w.Texts) != 1 || w.Texts[0].Ground != c.ground || w.Texts[0].Variant != letter.Whole {
				t.Errorf("written is\n%s", w.Dump())
			}
		})
	}
}

func point(x, y int64) plane.Point { return plane.Point{X: length.MM(x), Y: length.MM(y)} }

// A front too low for a ring keeps the sign of what is found about it, and the sign
// holds the number alone.
func TestALowFrontKeepsItsSign(t *testing.T) {
	for _, of := range []struct {
		severity drawing.Severity
		signs    int
	}{{drawing.OfNothing, 0}, {drawing.OfError, 1}} {
		face := plane.Rect{Min: point(0, 0), Max: point(600, 24)}
		d := &drawing.Drawing{}
		d.Add(&drawing.Caption{
			Tag:  drawing.Tag{Meaning: drawing.Label, Of: drawing.Subject{Kind: drawing.FrontThing}, Severity: of.severity},
			Face: face, Size: 3500 * length.Micrometre, Number: 2, Name: message.New("Jars"), Height: length.MM(24),
		})
		p := letter.New(screenLetters{13}, renderers()[0].style, message.Language{}, letter.Box{Hi: letter.Point{X: 700, Y: 100}})
		p.Add(d, letter.Placing{At: func(q plane.Point) letter.Point {
			return letter.Point{X: float64(q.X) / float64(length.Millimetre), Y: float64(q.Y) / float64(length.Millimetre) * 0.7}
		}})
		w := p.Write()
		if len(w.Rings) != of.signs {
			t.Fatalf("severity %v: %d signs", of.severity, len(w.Rings))
		}
		for _, r := range w.Rings {
			for i := range w.Texts {
				if s := w.Texts[i].Lines[0].Text; overlap(r.Box, w.Texts[i].Box) != (s == "2") {
					t.Errorf("the sign of the number and %q", s)
				}
			}
		}
	}
}

// Of a caption with a least height of letters only the number is lower: a name and a
// height that have no room are left out, neither cut nor made smaller.
func TestWhatHasNoRoomIsLeftOutRatherThanLower(t *testing.T) {
	for _, of := range []struct {
		name  string
		face  plane.Rect
		texts string
	}{
		{"wide enough", plane.Rect{Max: point(40, 12)}, "1 Iron oxides 12"},
		{"too narrow for the name", plane.Rect{Max: point(20, 12)}, "1 12"},
		{"too low for such letters", plane.Rect{Max: point(40, 3)}, "1"},
	} {
		d := &drawing.Drawing{}
		d.Add(&drawing.Caption{
			Tag:  drawing.Tag{Meaning: drawing.Label, Of: drawing.Subject{Kind: drawing.FrontThing}},
			Face: of.face, Size: lettering.Medium, Least: lettering.Small, Number: 1, Name: message.New("Iron oxides"), Height: length.MM(12),
		})
		p := letter.New(lettering.OnPaper{}, renderers()[0].style, message.Language{}, letter.Box{Hi: letter.Point{X: 100, Y: 100}})
		p.Add(d, letter.Placing{At: func(q plane.Point) letter.Point { return letter.Point{X: q.X.MM(), Y: q.Y.MM()} }})
		w := p.Write()
		var texts []string
		for i := range w.Texts {
			for _, l := range w.Texts[i].Lines {
				texts = append(texts, l.Text)
			}
			if s := w.Texts[i]; s.Lines[0].Text != "1" && s.Size < lettering.Small.MM() {
				t.Errorf("%s: %q is %v mm high", of.name, s.Lines[0].Text, s.Size)
			}
		}
		if got := strings.Join(texts, " "); got != of.texts {
			t.Errorf("%s: %q, not %q", of.name, got, of.texts)
		}
	}
}
