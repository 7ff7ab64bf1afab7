package layout_test

import (
	"path/filepath"
	"slices"
	"strings"
	"testing"

	"frontlay/assets"
	"frontlay/layout"
	"frontlay/layout/projecttest"
	"frontlay/model"
	"frontlay/model/edit"
	"frontlay/model/length"
	"frontlay/model/message"
)

// offers are the labels of what is offered for the first finding of a rule.
func offers(t *testing.T, p *model.Project, rule string) []string {
	t.Helper()
	r := layout.Solve(p)
	for _, f := range r.Findings {
		if f.Rule != rule {
			continue
		}
		var labels []string
		for _, e := range layout.Offered(p, r, f) {
			labels = append(labels, e.Label().String())
		}
		return labels
	}
	t.Fatalf("nothing is found by %s", rule)
	return nil
}

// A rule whose project has an obvious mend offers it. Those that are missing ask
// for other material or hardware than the project has.
func TestObviousMendsAreOffered(t *testing.T) {
	for rule, want := range map[string]string{
		"sums":         "Front height 237 mm",
		"line-up":      "No longer lined up",
		"span":         "Bays spanned: 1",
		"no-front":     "Bays spanned: 1",
		"hardware":     "Longest runner that fits",
		"cover-below":  "Drop 0.1 mm",
		"cover-beside": "Set the gap at the left to 12 mm in the whole project",
		"overlay":      "Set the gap at the left to 17 mm in the whole project",
		"room-above":   "Middle 225 mm high, Upper 243.9 mm high",
		"runner-depth": "Runner 450 mm",
		"runner-low":   "Drop 18 mm",
		"hole-edge":    "Set the gaps at the left and right to 1.4 mm and 1.4 mm",
		"hole-gap":     "Move the handle up by 0.1 mm",
		"hole-lipping": "Front height 98 mm",
		"beside-path":  "Filler of 11.5 mm at the left",
		"hole-rows":    "Drop worked out",
		"reveal":       "Set the gap between fronts to 6 mm in the whole project",
		"nearly-level": "Lower 238 mm high, Upper 477 mm high",
	} {
		t.Run(rule, func(t *testing.T) {
			p := projecttest.Read(t, filepath.Join("..", "testdata", "rules", rule, "flagged.yaml"))
			if got := offers(t, p, rule); !slices.Contains(got, want) {
				t.Errorf("offered is %q, not %q", got, want)
			}
		})
	}
}

// A front that was made too low is mended by its neighbour, wherever it stands:
// under the carcass top by the one below.
func TestAFrontThatIsTooLowIsOfferedHeight(t *testing.T) {
	for name, front := range map[string]int{"bottom": 0, "middle": 1, "top": 2} {
		t.Run(name, func(t *testing.T) {
			p := projecttest.Demo(t)
			at := model.Place{Front: front}
			p, err := edit.SetHeight{At: at, Height: 60 * mm}.Apply(p)
			if err != nil {
				t.Fatal(err)
			}
			p.FrontAt(at).Drawer = model.DrawerAuto
			got := offers(t, p, "room-above")
			if !slices.ContainsFunc(got, func(s string) bool { return strings.Count(s, " high") == 2 }) {
				t.Errorf("offered is %q", got)
			}
			if len(got) > 4 || len(slices.Compact(slices.Sorted(slices.Values(got)))) != len(got) {
				t.Errorf("offered is %q", got)
			}
		})
	}
}

// Where the neighbours have nothing to give, a front further away has.
func TestAFarFrontGivesHeight(t *testing.T) {
	p := projecttest.Read(t, filepath.Join("..", "testdata", "rules", "room-above", "flagged.yaml"))
	b := &p.Cabinets[0].Bays[0]
	low := func(name string, h length.Length) model.Front {
		return model.Front{Name: name, Height: h, Drawer: "low"}
	}
	// 718 mm of stack, three gaps of 3 mm.
	b.Fronts = []model.Front{low("A", 90*mm), low("B", 80*mm), low("C", 100*mm), low("D", 439*mm)}
	got := offers(t, p, "room-above")
	if !slices.ContainsFunc(got, func(s string) bool { return strings.Contains(s, ", D ") }) {
		t.Errorf("offered is %q", got)
	}
}

// German bends names behind prepositions.
func TestFindingsAreGoodGerman(t *testing.T) {
	data, _ := assets.Translation("de")
	catalogue, err := message.ReadCatalogue(data)
	if err != nil {
		t.Fatal(err)
	}
	p := projecttest.Demo(t)
	top := model.Place{Front: len(p.Cabinets[0].Bays[0].Fronts) - 1}
	p, err = edit.SetHeight{At: top, Height: 60 * mm}.Apply(p)
	if err != nil {
		t.Fatal(err)
	}
	for _, f := range layout.Solve(p).Findings {
		if f.Rule != "room-above" || f.Place != top {
			continue
		}
		said := message.Language{Comma: true, Catalogue: catalogue}.Sentence(f.What)
		if !strings.HasPrefix(said, "Die Schublade ragt ") || !strings.Contains(said, " in den Oberboden; nötig sind ") {
			t.Error(said)
		}
		return
	}
	t.Error("nothing is found")
}
