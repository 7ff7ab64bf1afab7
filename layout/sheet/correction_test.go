package sheet

import (
	"math"
	"strings"
	"testing"

	"frontlay/layout/drawing"
	"frontlay/model/length"
	"frontlay/model/message"

	"pgregory.net/rapid"
)

func TestMeasuredVerdicts(t *testing.T) {
	hundredths := func(v int64) length.Length { return length.Length(v) * 10 * length.Micrometre }
	for _, c := range []struct {
		name       string
		across, up length.Length // read from bars of 200 and 250 mm
		want       Verdict
		say        string
	}{
		{"true", hundredths(20000), hundredths(25000), True, "true to a thousandth"},
		{"under a thousandth", hundredths(20015), hundredths(24980), True, "half a millimetre off"},
		{"half a hundredth short", hundredths(19900), hundredths(25000), Apply, "1.005 across and 1 up"},
		{"long both ways", hundredths(20200), hundredths(25100), Apply, "corrected"},
		{"two and a half hundredths", hundredths(20500), hundredths(25000), Ask, "measure again"},
		{"beyond three hundredths", hundredths(20800), hundredths(25000), Refuse, "Across: 208 mm instead of 200 mm, 4 % too long. Up: 250 mm, as it should be. No printer is off by so much"},
		{"far too short", hundredths(10000), hundredths(25000), Refuse, "Across: 100 mm instead of 200 mm, 50 % too short."},
		{"far too long", hundredths(20000), hundredths(50000), Refuse, "Up: 500 mm instead of 250 mm, 100 % too long."},
		{"short by a third", hundredths(20000), hundredths(16625), Refuse, "Up: 166.25 mm instead of 250 mm, 34 % too short."},
		{"enlarged", hundredths(21000), hundredths(26250), Refuse, "5 % too long. That is no fault of the printer"},
		{"a little short", hundredths(19900), hundredths(25100), Apply, "Across: 199 mm instead of 200 mm, 0.5 % too short. Up: 251 mm instead of 250 mm, 0.4 % too long."},
		{"fitted to the page", hundredths(19180), hundredths(23975), Refuse, "fitted to the paper"}, // 0.959, as CUPS fits A4 on A4
		{"fitted, little", hundredths(19600), hundredths(24500), Refuse, "fitted to the paper"},
		{"no reading", 0, hundredths(25000), Refuse, "above zero"},
	} {
		t.Run(c.name, func(t *testing.T) {
			got, verdict, say := Measured("shop printer", "A4", mm(200), mm(250), c.across, c.up)
			if verdict != c.want || !strings.Contains(say.String(), c.say) {
				t.Fatalf("verdict %v, %q; want %v with %q", verdict, say, c.want, c.say)
			}
			if verdict == Apply {
				for _, v := range []struct{ factor, read, nominal float64 }{{got.Across, c.across.MM(), 200}, {got.Up, c.up.MM(), 250}} {
					if math.Abs(v.factor*v.read-v.nominal) > 0.25 {
						t.Errorf("a bar read as %v comes to %v; want %v", v.read, v.factor*v.read, v.nominal)
					}
				}
			}
			if (verdict == True || verdict == Refuse) && !got.None() {
				t.Errorf("a correction of %v for the verdict %v", got, verdict)
			}
		})
	}
}

// Whatever the correction, what it moves stays inside the margins, which belong
// to the paper's sides as the correction does.
func TestCorrectedPagesKeepTheirMargins(t *testing.T) {
	rapid.Check(t, func(t *rapid.T) {
		c := Correction{Across: rapid.Float64Range(0.97, 1.03).Draw(t, "across"), Up: rapid.Float64Range(0.97, 1.03).Draw(t, "up")}
		o := Options{Paper: randomPaper(t), Correction: c, Parts: []Part{CornerTemplates, WholeTemplates}}.with()
		for _, page := range Make(planOf(randomFront(t, 1)), nil, o).Pages {
			c, m := c, o.Margins
			if page.Width != o.Paper.Width {
				c.Across, c.Up = c.Up, c.Across
				m.Side, m.End = m.End, m.Side
			}
			for _, placed := range page.Drawings() {
				for _, mark := range placed.Drawing.Marks {
					r := onPage(mark, placed, o)
					if r.Empty() && r.Width() < 0 {
						continue // outside its clip
					}
					left := corrected(r.Min.X, page.Width, c.Across)
					right := corrected(r.Max.X, page.Width, c.Across)
					if left < m.Side.MM()-0.01 || right > (page.Width-m.Side).MM()+0.01 {
						t.Fatalf("%T from %v to %v on a page %v wide", mark, left, right, page.Width)
					}
					bottom := corrected(r.Min.Y, page.Height, c.Up)
					top := corrected(r.Max.Y, page.Height, c.Up)
					if bottom < m.End.MM()-0.01 || top > (page.Height-m.End).MM()+0.01 {
						t.Fatalf("%T from %v up to %v on a page %v high", mark, bottom, top, page.Height)
					}
				}
			}
		}
	})
}

func corrected(v, size length.Length, factor float64) float64 {
	return size.MM()/2 + (v.MM()-size.MM()/2)*factor
}

func TestCalibrationBarsFit(t *testing.T) {
	rapid.Check(t, func(t *rapid.T) {
		o := Options{Paper: randomPaper(t)}
		across, up := CalibrationBars(o)
		if across < mm(100) || up < mm(100) {
			t.Fatalf("bars of %v and %v on %v", across, up, o.Paper.Name)
		}
		o = o.calibrating()
		area := printable(o.Paper.Width, o.Paper.Height, o)
		for _, m := range Calibration(o).Pages[0].Placed[0].Drawing.Marks {
			if r := (&drawing.Drawing{Marks: []drawing.Mark{m}}).OnPaper(1, o.Say); r.Min.X < area.Min.X || r.Max.X > area.Max.X+1 || r.Max.Y > area.Max.Y+1 {
				t.Fatalf("%T %+v reaches into the margin of %v", m, m, o.Paper.Name)
			}
		}
	})
}

// Bars are in inches where the project counts in inches and on American paper, whose
// sizes are of ASME Y14.1; 1 in is 25.4 mm (NIST SP 811): 4 in are 101.6 mm.
func TestBarsFollowProjectAndPaper(t *testing.T) {
	inches := message.Language{Unit: length.UnitInch}
	paper := func(name string) Paper {
		p, err := ParsePaper(name, length.UnitMM)
		if err != nil {
			t.Fatal(err)
		}
		return p
	}
	tenth := length.Millimetre / 10
	for _, c := range []struct {
		paper           string
		say             message.Language
		bar, across, up length.Length
		name            string
	}{
		{"A4", message.Language{}, mm(100), mm(170), mm(210), "100 mm"},
		{"A4", inches, 1016 * tenth, 6 * length.Inch, 8 * length.Inch, "4 in"},
		{"Letter", message.Language{}, 1016 * tenth, 7 * length.Inch, 7 * length.Inch, "4 in = 101.6 mm"},
		{"Letter", inches, 1016 * tenth, 7 * length.Inch, 7 * length.Inch, "4 in"},
		{"Legal", inches, 1016 * tenth, 7 * length.Inch, 10 * length.Inch, "4 in"},
		{"Tabloid", inches, 1016 * tenth, 9 * length.Inch, 13 * length.Inch, "4 in"},
		{"8.5x11 in", message.Language{Comma: true}, 1016 * tenth, 7 * length.Inch, 7 * length.Inch, "4 in = 101,6 mm"},
		{"roll 24 in", message.Language{}, 1016 * tenth, 22 * length.Inch, 20 * length.Inch, "4 in = 101.6 mm"},
		{"roll 610", message.Language{}, mm(100), mm(570), mm(520), "100 mm"},
	} {
		o := Options{Paper: paper(c.paper), Say: c.say}.with()
		across, up := CalibrationBars(o)
		if r := o.rule(); r.bar != c.bar || across != c.across || up != c.up || r.name(r.bar, c.say) != c.name {
			t.Errorf("%s: bars of %v, named %q, %v and %v long to calibrate", c.paper, r.bar, r.name(r.bar, c.say), across, up)
		}
		for _, m := range foot(t, o) {
			if l := m.To.Sub(m.From); m.Meaning == drawing.CheckBar && max(l.X, l.Y) > mm(10) && max(l.X, l.Y) != c.bar {
				t.Errorf("%s: a check bar is %v long", c.paper, max(l.X, l.Y))
			}
		}
	}
}

// foot draws both check bars of a page.
func foot(t *testing.T, o Options) (all []*drawing.Line) {
	t.Helper()
	d := newDraft(CornerTemplates, CornerTemplates.Title(), o.Paper.Width, mm(400), o)
	d.foot()
	d.uprightBar(0, 0)
	for _, m := range d.own.Marks {
		if l, ok := m.(*drawing.Line); ok {
			all = append(all, l)
		}
	}
	if len(all) != 6 {
		t.Fatalf("two bars of %d lines", len(all))
	}
	return all
}
