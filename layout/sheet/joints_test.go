package sheet

import (
	"testing"

	"frontlay/layout/drawing"
	"frontlay/layout/plan"
	"frontlay/layout/plane"
	"frontlay/model"
	"frontlay/model/length"
	"frontlay/model/message"
)

// framed is the lopsided front as a frame with stiles of 60 and rails of 70.
func framed() plan.Front {
	f := lopsided()
	f.Thickness = mm(20)
	f.Made = model.FrontBoard{Name: "frames", Build: model.Build{Kind: model.Frame}}
	w, h := f.Face.Width(), f.Face.Height()
	for _, z := range []struct {
		part plan.Part
		rect plane.Rect
	}{
		{plan.LeftStile, plane.R(0, 0, mm(60), h)}, {plan.RightStile, plane.R(w-mm(60), 0, w, h)},
		{plan.BottomRail, plane.R(mm(60), 0, w-mm(60), mm(70))}, {plan.TopRail, plane.R(mm(60), h-mm(70), w-mm(60), h)},
		{plan.PanelPart, plane.R(mm(60), mm(70), w-mm(60), h-mm(70))},
	} {
		f.Zones = append(f.Zones, plan.Zone{Part: z.part, Rect: z.rect, Whole: z.rect, Thickness: mm(20)})
	}
	return f
}

// Templates show where stiles and rails meet and the panel begins, 60 from the side edge
// at both sides, and no line runs through letters.
func TestTemplatesShowTheJointsOfAFrame(t *testing.T) {
	p := planOf(framed())
	for _, part := range []Part{CornerTemplates, WholeTemplates} {
		upright := 0
		for _, page := range TemplateFile.Document(p, nil, Options{Parts: []Part{part}, Paper: Paper{"wide", mm(700), mm(420)}}).Pages {
			own := page.Placed[len(page.Placed)-1].Drawing
			var lines []*drawing.Line
			for _, m := range own.Marks {
				if l, ok := m.(*drawing.Line); ok && l.Meaning == drawing.Frame {
					lines = append(lines, l)
				}
			}
			for _, l := range lines {
				if l.From.X == l.To.X {
					upright++
				}
				on := plane.R(l.From.X, l.From.Y, l.To.X, l.To.Y)
				for _, m := range own.Marks {
					if w, ok := m.(*drawing.Text); ok {
						area := drawing.TextArea(w.At, w.Anchor, w.Size, w.Bold, message.Language{}.Say(w.Say))
						if r := area.Intersect(on); r.Min.X <= r.Max.X && r.Min.Y <= r.Max.Y {
							t.Errorf("%s: a line at %v runs through %q", part, on, w.Say)
						}
					}
				}
			}
		}
		if upright < 2 {
			t.Errorf("%s: %d upright lines, want those of two stiles", part, upright)
		}
	}
}

func TestALineIsBrokenWhereThingsLieOverIt(t *testing.T) {
	over := []plane.Rect{plane.R(mm(5), mm(20), mm(15), mm(30)), plane.R(mm(5), mm(31), mm(15), mm(40)), plane.R(mm(11), 0, mm(15), mm(100)), plane.R(0, mm(90), mm(20), mm(120))}
	got := unbroken(0, mm(100), mm(10), false, over, leastJoint)
	want := [][2]length.Length{{0, mm(20)}, {mm(40), mm(90)}}
	if len(got) != len(want) || got[0] != want[0] || got[1] != want[1] {
		t.Errorf("what is left is %v, want %v", got, want)
	}
}
