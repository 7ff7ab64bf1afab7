package ink

import (
	"fmt"
	"strconv"
	"strings"
	"testing"

	"frontlay/assets"
	"frontlay/layout/lettering"
	"frontlay/layout/plan"
	"frontlay/layout/projecttest"
	"frontlay/layout/sheet"
	"frontlay/model"
	"frontlay/model/length"
	"frontlay/model/message"

	"pgregory.net/rapid"
)

// box is an area of the page in millimetres.
type box struct{ lo, hi Point }

func (b box) overlaps(o box) bool {
	return b.lo.X < o.hi.X && o.lo.X < b.hi.X && b.lo.Y < o.hi.Y && o.lo.Y < b.hi.Y
}

func (b box) pad(d float64) box {
	return box{Point{b.lo.X - d, b.lo.Y - d}, Point{b.hi.X + d, b.hi.Y + d}}
}

// letters is a canvas that keeps the texts of a page with their places.
type letters struct{ texts []placedText }

type placedText struct {
	box    box
	turned bool
	text   string
}

func (*letters) Line(Pen, Point, Point)               {}
func (*letters) Rect(*Pen, *Colour, Point, Point)     {}
func (*letters) Circle(Pen, Point, float64)           {}
func (*letters) Triangle(Colour, Point, Point, Point) {}
func (*letters) Clip(Point, Point)                    {}
func (*letters) Unclip()                              {}
func (l *letters) Text(at Point, size length.Length, bold, turned bool, _ Colour, s string) {
	wide := lettering.Width(s, size, bold).MM()
	b := box{at, Point{at.X + wide, at.Y + size.MM()}}
	if turned {
		b = box{Point{at.X - size.MM(), at.Y}, Point{at.X, at.Y + wide}}
	}
	l.texts = append(l.texts, placedText{b, turned, s})
}

// On no page does a text lie over another, or reach out of the margins: for
// random runs with long names, in every unit, on several papers.
func TestNoTextOverText(t *testing.T) {
	rapid.Check(t, func(t *rapid.T) {
		p := plan.Make(randomRun(t))
		papers := append(sheet.Papers(), sheet.Paper{Name: "roll", Width: length.MM(610)}, sheet.Paper{Name: "least", Width: length.MM(200), Height: length.MM(200)})
		o := sheet.Options{
			Paper: papers[rapid.IntRange(0, len(papers)-1).Draw(t, "paper")],
			Say:   randomLanguage(t),
			Parts: sheet.Parts(), Date: "2026-11-25", Correction: randomCorrection(t),
		}
		d := sheet.Make(p, nil, o)
		for i := range d.Pages {
			if fault := overlaps(&d.Pages[i], o.Paper, d.Say); fault != "" {
				t.Fatalf("page %d, %s, of %v: %s", i+1, d.Pages[i].Kind, o.Paper.Name, fault)
			}
		}
	})
}

// randomCorrection draws none, or one for a printer whose name may be long.
func randomCorrection(t *rapid.T) sheet.Correction {
	if rapid.Bool().Draw(t, "true printer") {
		return sheet.Correction{}
	}
	return sheet.Correction{
		Printer: strings.Repeat("Office ", rapid.IntRange(1, 30).Draw(t, "printer")), Paper: "210 x 297 mm",
		Across: 1.0050251256, Up: rapid.Float64Range(0.98, 1).Draw(t, "up"),
	}
}

// randomLanguage draws a unit, and English or a language that ships; German
// words are long.
func randomLanguage(t *rapid.T) message.Language {
	say := message.Language{Unit: length.Unit(rapid.IntRange(0, 3).Draw(t, "unit"))}
	codes := append([]string{""}, assets.Languages()...)
	data, ok := assets.Translation(codes[rapid.IntRange(0, len(codes)-1).Draw(t, "language")])
	if !ok {
		return say
	}
	catalogue, err := message.ReadCatalogue(data)
	if err != nil {
		t.Fatal(err)
	}
	say.Catalogue, say.Comma = catalogue, message.DecimalComma(catalogue)
	return say
}

// overlaps tells of the first two texts of a page that lie over one another, or
// of one that reaches into a margin.
func overlaps(p *sheet.Page, paper sheet.Paper, say message.Language) string {
	var l letters
	Draw(&l, p.Drawings(), p.LetterArea(), say)
	side, end := 9.99, 12.99 // of the paper, which the page may lie turned on
	if p.Width != paper.Width {
		side, end = end, side
	}
	const touch = 0.05 // mm
	for i, a := range l.texts {
		if a.box.lo.X < side || a.box.hi.X > p.Width.MM()-side || a.box.lo.Y < end || a.box.hi.Y > p.Height.MM()-end {
			return fmt.Sprintf("%q at %v reaches into the margin", a.text, a.box)
		}
		for _, b := range l.texts[:i] {
			if a.box.pad(-touch).overlaps(b.box.pad(-touch)) {
				return fmt.Sprintf("%q at %v lies over %q at %v", a.text, a.box, b.text, b.box)
			}
		}
	}
	return ""
}

// randomRun draws a project whose stacks add up, of fronts that are not lower than a hand
// is broad: on the sheets of others fronts lie over one another, as the check tells.
func randomRun(t *rapid.T) *model.Project {
	p := projecttest.Random(t)
	for !sound(plan.Make(p)) {
		for i := range p.Cabinets {
			c := &p.Cabinets[i]
			c.Height += length.MM(400)
			for _, b := range c.Bays {
				for k := range b.Fronts {
					f := &b.Fronts[k]
					f.Height, f.Clear, f.Least, f.Greatest, f.LineUp, f.Span = 0, false, 0, 0, nil, 0
				}
			}
		}
	}
	return p
}

func sound(p *plan.Plan) bool {
	for i := range p.Problems {
		if k := p.Problems[i].Kind; k == plan.StackSum || k == plan.LineUpNoRoom || k == plan.SpanNoPlace {
			return false
		}
	}
	for i := range p.Fronts {
		if p.Fronts[i].Face.Height() < length.MM(70) {
			return false
		}
	}
	return true
}

// On sheets for the bench nothing but the line at the foot is lower than 2.5 mm.
func TestSheetsForTheBenchAreReadable(t *testing.T) {
	rapid.Check(t, func(t *rapid.T) {
		d := sheet.Make(plan.Make(randomRun(t)), nil, sheet.Options{Say: randomLanguage(t), Parts: []sheet.Part{sheet.ShopSheets, sheet.JigSettings}})
		for i := range d.Pages {
			p := &d.Pages[i]
			var l letters
			Draw(&l, p.Drawings(), p.LetterArea(), d.Say)
			for _, a := range l.texts {
				foot := a.box.lo.Y < p.LetterArea().Min.Y.MM()+5
				_, err := strconv.Atoi(a.text) // of a front that is lower than its number
				if high := a.box.hi.Y - a.box.lo.Y; high < 2.49 && !foot && err != nil {
					t.Fatalf("page %d: %q is %.2f mm high", i+1, a.text, high)
				}
			}
		}
	})
}
