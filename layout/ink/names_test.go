package ink

import (
	"fmt"
	"strings"
	"testing"

	"frontlay/layout/drawing"
	"frontlay/layout/lettering"
	"frontlay/layout/plan"
	"frontlay/layout/plane"
	"frontlay/layout/sheet"
	"frontlay/model/length"
	"frontlay/model/message"

	"pgregory.net/rapid"
)

// written is a canvas that keeps bold texts, as names are, with their sizes, and
// lines.
type written struct {
	letters
	any   bool // texts that are not bold too
	sizes []length.Length
	lines []box
}

func (c *written) Line(_ Pen, a, b Point) {
	c.lines = append(c.lines, box{Point{min(a.X, b.X), min(a.Y, b.Y)}, Point{max(a.X, b.X), max(a.Y, b.Y)}})
}

func (c *written) Rect(edge *Pen, _ *Colour, lo, hi Point) {
	if edge == nil {
		return
	}
	for _, q := range [][2]Point{{lo, {hi.X, lo.Y}}, {lo, {lo.X, hi.Y}}, {{lo.X, hi.Y}, hi}, {{hi.X, lo.Y}, hi}} {
		c.Line(*edge, q[0], q[1])
	}
}

func (c *written) Text(at Point, size length.Length, bold, turned bool, ink Colour, s string) {
	if bold || c.any {
		c.letters.Text(at, size, bold, turned, ink, s)
		c.sizes = append(c.sizes, size)
	}
}

// struck tells of the first text that a line runs through, the tails of its
// letters included.
func (c *written) struck() string {
	for i, t := range c.texts {
		b := t.box
		above, below := lettering.Reach(t.text, c.sizes[i])
		b.lo.Y, b.hi.Y = b.lo.Y-below.MM(), b.hi.Y+above.MM()
		for _, l := range c.lines {
			if l.lo.X < b.hi.X && l.hi.X > b.lo.X && l.lo.Y < b.hi.Y && l.hi.Y > b.lo.Y {
				return fmt.Sprintf("the line %v runs through %q at %v", l, t.text, b)
			}
		}
	}
	return ""
}

// stackOf is a picture of fronts above one another, of heights in millimetres on
// paper.
func stackOf(wide int64, names []string, heights ...int64) *drawing.Drawing {
	d := &drawing.Drawing{}
	y := int64(0)
	for i, h := range heights {
		face := plane.R(0, length.MM(y), length.MM(wide), length.MM(y+h))
		of := drawing.Subject{Kind: drawing.FrontThing, Index: i}
		d.Add(
			&drawing.Rectangle{Tag: drawing.Tag{Meaning: drawing.Face, Of: of}, Rect: face},
			&drawing.Caption{
				Tag: drawing.Tag{Meaning: drawing.Label, Of: of}, Face: face, Size: lettering.Medium,
				Number: i + 1, Name: message.New("%v", names[i]),
			},
		)
		y += h
	}
	return d
}

// All names of a drawing have one size, and those without room are cut; on a front that is lower than letters there is nothing.
func TestNamesOfADrawingHaveOneSize(t *testing.T) {
	long := strings.Repeat("Celadon ", 9)
	for _, c := range []struct {
		name    string
		wide    int64
		names   []string
		heights []int64
		want    string
		size    length.Length
	}{
		{"room for all", 60, []string{"Jars", "Cones"}, []int64{20, 20}, "1|Jars|2|Cones", lettering.Medium},
		{"one front low", 60, []string{"Jars", "Cones"}, []int64{20, 4}, "1|Jars|2|Cones", lettering.Small},
		{"one front too low for any letters", 60, []string{"Jars", "Cones"}, []int64{20, 2}, "1|Jars", lettering.Medium},
		{"one name too long", 60, []string{"Jars", long, "Cones"}, []int64{20, 20, 20}, "1|Jars|2|Celadon Celado…|3|Cones", lettering.Medium},
		{"room for a stump alone", 16, []string{"Jars", "Notebooks"}, []int64{20, 6}, "1|Jars|2", lettering.Small},
		{"narrow, and so below the number", 26, []string{"Jars", "Large tiles"}, []int64{20, 20}, "1|Jars|2|Large tiles", lettering.Small},
	} {
		t.Run(c.name, func(t *testing.T) {
			l := &written{}
			Draw(l, []drawing.Placed{{Drawing: stackOf(c.wide, c.names, c.heights...), ScaleNum: 1, ScaleDen: 1}}, plane.R(0, 0, length.MM(200), length.MM(200)), message.Language{})
			var got []string
			for i, s := range l.texts {
				got = append(got, s.text)
				if l.sizes[i] != c.size {
					t.Errorf("%q is %v high, not %v", s.text, l.sizes[i], c.size)
				}
			}
			if s := strings.Join(got, "|"); s != c.want {
				t.Errorf("written is %q, not %q", s, c.want)
			}
			if fault := l.struck(); fault != "" {
				t.Error(fault)
			}
		})
	}
}

// No line runs through a name on the cover and on the elevation, whatever the run
// and the paper. A handle, or the edge of a grip, can lie under the ground of one on a
// small front.
func TestNoLineThroughNames(t *testing.T) {
	rapid.Check(t, func(t *rapid.T) {
		run := randomRun(t)
		run.Handle, run.Board = nil, ""
		for i := range run.Cabinets {
			c := &run.Cabinets[i]
			c.Handle, c.Board = nil, ""
			for _, b := range c.Bays {
				for k := range b.Fronts {
					b.Fronts[k].Handle, b.Fronts[k].Board = nil, ""
				}
			}
		}
		p := plan.Make(run)
		papers := append(sheet.Papers(), sheet.Paper{Name: "least", Width: length.MM(200), Height: length.MM(200)})
		o := sheet.Options{Paper: papers[rapid.IntRange(0, len(papers)-1).Draw(t, "paper")], Say: randomLanguage(t), Parts: []sheet.Part{sheet.Cover, sheet.Elevation}}
		for _, page := range sheet.Make(p, nil, o).Pages {
			l := &written{}
			names := page
			names.Placed = page.Placed[:1] // the picture, without the words around it
			Draw(l, names.Drawings(), names.LetterArea(), o.Say)
			if fault := l.struck(); fault != "" {
				t.Fatalf("%s of %v: %s", page.Kind, o.Paper.Name, fault)
			}
		}
	})
}

// A figure is whole or not there: "clear 2…" would be another height.
func TestFiguresAreNotCut(t *testing.T) {
	height := 216 * length.Millimetre
	for wide, want := range map[int64]string{40: "clear 216 mm", 14: "(216 mm)", 10: ""} {
		d := &drawing.Drawing{}
		room := plane.R(0, 0, length.MM(wide), length.MM(20))
		d.Add(&drawing.Text{At: room.Centre(), Anchor: drawing.Anchor{X: 0.5, Y: 0.5}, Size: lettering.Small, Say: message.New("clear %v", height), Short: message.New("(%v)", height), Within: room})
		l := &written{any: true}
		Draw(l, []drawing.Placed{{Drawing: d, ScaleNum: 1, ScaleDen: 1}}, plane.R(0, 0, length.MM(200), length.MM(200)), message.Language{})
		got := ""
		for _, s := range l.texts {
			got += s.text
		}
		if got != want {
			t.Errorf("in %d mm stands %q, not %q", wide, got, want)
		}
	}
}
