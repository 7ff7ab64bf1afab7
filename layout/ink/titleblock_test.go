package ink

import (
	"strconv"
	"strings"
	"testing"

	"frontlay/layout/drawing"
	"frontlay/layout/plan"
	"frontlay/layout/sheet"
	"frontlay/model/length"

	"pgregory.net/rapid"
)

// No text leaves its cell of a title block, whatever the title of the project,
// the language, the paper, and the printer that a correction is for; and the
// sheet's number stands in its own.
func TestTextsStayInTheirCells(t *testing.T) {
	rapid.Check(t, func(t *rapid.T) {
		run := randomRun(t)
		if rapid.Bool().Draw(t, "one long word") {
			run.Title = strings.Repeat("Glazebench", 8)
		}
		papers := append(sheet.Papers(), sheet.Paper{Name: "least", Width: length.MM(200), Height: length.MM(200)})
		o := sheet.Options{
			Paper: papers[rapid.IntRange(0, len(papers)-1).Draw(t, "paper")], Say: randomLanguage(t), Correction: randomCorrection(t),
			Parts: []sheet.Part{sheet.Elevation, sheet.Sections, sheet.DrawerPlans, sheet.RearFaces}, Date: "2026-11-25",
		}
		pages := sheet.Make(plan.Make(run), nil, o).Pages
		for i, page := range pages {
			own := page
			own.Placed = []drawing.Placed{{Drawing: withoutDimensions(page.Placed[len(page.Placed)-1].Drawing), ScaleNum: 1, ScaleDen: 1}}
			l := &written{any: true}
			Draw(l, own.Drawings(), own.LetterArea(), o.Say)
			if fault := l.struck(); fault != "" {
				t.Fatalf("page %d, %s, of %v: %s", i+1, page.Kind, o.Paper.Name, fault)
			}
			if !numbered(l, i+1, len(pages), page.Width.MM()*0.8) {
				t.Fatalf("page %d, %s: its number does not stand in the title block", i+1, page.Kind)
			}
		}
	})
}

func withoutDimensions(v *drawing.Drawing) *drawing.Drawing {
	d := &drawing.Drawing{}
	for _, m := range v.Marks {
		if _, ok := m.(*drawing.Dimension); !ok {
			d.Add(m)
		}
	}
	return d
}

// numbered tells that the number of a sheet is written right of a place.
func numbered(l *written, page, pages int, right float64) bool {
	for _, s := range l.texts {
		words := strings.Fields(s.text)
		if s.box.lo.X > right && len(words) == 3 && words[0] == strconv.Itoa(page) && words[2] == strconv.Itoa(pages) {
			return true
		}
	}
	return false
}
