package sheet

import (
	"slices"
	"testing"

	"frontlay/layout/plan"
	"frontlay/model"
)

// A project without anything gives pages that say so, for every part.
func TestEmptyProjects(t *testing.T) {
	for name, p := range map[string]*model.Project{
		"nothing":        {},
		"no bays":        {Cabinets: []model.Cabinet{{Name: "Glazes", Width: mm(600), Height: mm(700), Depth: mm(500)}}},
		"no fronts":      {Cabinets: []model.Cabinet{{Width: mm(600), Height: mm(700), Depth: mm(500), Bays: []model.Bay{{}}}}},
		"no size at all": {Cabinets: []model.Cabinet{{Bays: []model.Bay{{Fronts: []model.Front{{}, {Kind: model.OpenNiche}}}}}}},
		"no hardware":    {Cabinets: []model.Cabinet{{Width: mm(600), Height: mm(700), Depth: mm(500), Bays: []model.Bay{{Fronts: []model.Front{{}, {}}}}}}},
	} {
		t.Run(name, func(t *testing.T) {
			d := Make(plan.Make(p), nil, Options{Parts: Parts()})
			kinds := map[string]bool{}
			for _, page := range d.Pages {
				kinds[page.Kind] = true
			}
			for _, part := range []Part{Cover, Elevation, JigSettings, DrillList, CutList, HardwareList, Findings, Cautions} {
				if !kinds[string(part)] {
					t.Errorf("no page of the kind %s", part)
				}
			}
			for _, b := range d.Bookmarks {
				if b.Page < 0 || b.Page >= len(d.Pages) {
					t.Errorf("a bookmark points to page %d of %d", b.Page, len(d.Pages))
				}
			}
		})
	}
}

// The same arguments give the same pages.
func TestMakeIsDeterministic(t *testing.T) {
	p := planOf(lopsided(), front(2, mm(400), mm(200)))
	a, b := Make(p, nil, Options{Parts: []Part{JigSettings, CornerTemplates, WholeTemplates}}), Make(p, nil, Options{Parts: []Part{JigSettings, CornerTemplates, WholeTemplates}})
	if len(a.Pages) != len(b.Pages) {
		t.Fatalf("%d and %d pages", len(a.Pages), len(b.Pages))
	}
	for i := range a.Pages {
		for j := range a.Pages[i].Placed {
			for k, m := range a.Pages[i].Placed[j].Drawing.Marks {
				n := b.Pages[i].Placed[j].Drawing.Marks[k]
				if m.Bounds() != n.Bounds() {
					t.Fatalf("page %d differs", i+1)
				}
			}
		}
	}
}

// Every part can be chosen alone, and has a name of its own.
func TestPartsAreNamed(t *testing.T) {
	titles := map[string]bool{}
	for _, p := range Parts() {
		title := p.Title().String()
		if title == string(p) || titles[title] {
			t.Errorf("part %s has the title %q", p, title)
		}
		titles[title] = true
	}
	if Part("other").Title().String() != "other" || Part("other").Template() {
		t.Error("an unknown part has a name or is a template")
	}
}

func TestFrontsAreChosenByNumber(t *testing.T) {
	for _, c := range []struct {
		text string
		want []int
		bad  bool
	}{
		{"", nil, false}, {"2", []int{2}, false}, {"2, 3;5", []int{2, 3, 5}, false}, {"4-6 1", []int{4, 5, 6, 1}, false},
		{"0", nil, true}, {"14", nil, true}, {"x", nil, true}, {"5-3", nil, true}, {"2-", nil, true}, {"-2", nil, true},
	} {
		got, err := ParseFronts(c.text, 13)
		if (err != nil) != c.bad || !c.bad && !slices.Equal(got, c.want) {
			t.Errorf("%q: %v, %v", c.text, got, err)
		}
	}
}
