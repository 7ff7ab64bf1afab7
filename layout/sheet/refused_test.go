package sheet

import (
	"strings"
	"testing"

	"frontlay/layout/check"
	"frontlay/layout/drawing"
	"frontlay/layout/plan"
	"frontlay/model"
)

// ownTexts are what a page says beside its placed drawings.
func ownTexts(p Page) []*drawing.Text {
	var all []*drawing.Text
	for _, m := range p.Placed[len(p.Placed)-1].Drawing.Marks {
		if t, ok := m.(*drawing.Text); ok {
			all = append(all, t)
		}
	}
	return all
}

// plain is a text with ordinary spaces between figures and units.
func plain(t *drawing.Text) string { return strings.ReplaceAll(t.Say.String(), "\u00a0", " ") }

func says(p Page, text string) bool {
	for _, t := range ownTexts(p) {
		if strings.Contains(plain(t), text) {
			return true
		}
	}
	return false
}

// A paper that is torn from the others must itself say that it is wrong; an
// error about something else, or one that is accepted, forbids no drilling.
func TestTemplatesOfFrontsInErrorSaySo(t *testing.T) {
	twin := lopsided()
	twin.Number, twin.Place = 2, model.Place{Front: 1}
	for _, c := range []struct {
		name   string
		fronts []plan.Front
		f      check.Finding
		want   string
	}{
		{"holes", []plan.Front{lopsided()}, check.Finding{Rule: "whatever", Forbids: check.Drilling, Front: 1}, "DO NOT DRILL: error"},
		{"one of two", []plan.Front{lopsided(), twin}, check.Finding{Forbids: check.Drilling, Front: 2}, "DO NOT DRILL front 2: error"},
		{"accepted", []plan.Front{lopsided()}, check.Finding{Forbids: check.Drilling, Front: 1, Accepted: "tried on scrap"}, ""},
		{"a warning", []plan.Front{lopsided()}, check.Finding{Forbids: check.Drilling, Front: 1, Severity: check.Warning}, ""},
		{"something else", []plan.Front{lopsided()}, check.Finding{Forbids: check.Nothing, Front: 1}, ""},
		{"another front", []plan.Front{lopsided()}, check.Finding{Rule: "whatever", Forbids: check.Drilling, Front: 9}, ""},
	} {
		t.Run(c.name, func(t *testing.T) {
			d := Make(planOf(c.fronts...), []check.Finding{c.f}, Options{Paper: Paper{"wide", mm(300), mm(400)}, Parts: []Part{RearFaces, CornerTemplates, WholeTemplates}})
			for i, p := range d.Pages {
				joined := ""
				for _, text := range ownTexts(p) {
					joined += text.Say.String() + " "
				}
				if got := strings.Contains(joined, "DO NOT"); got != (c.want != "") || !strings.Contains(joined, c.want) {
					t.Errorf("page %d, %s, says %q; want %q", i+1, p.Kind, joined, c.want)
				}
			}
		})
	}
}

// A hole past the top edge is an error; its template still names the line that
// it shows.
func TestTheTopEdgeIsNamedWhereAHoleReachesOverIt(t *testing.T) {
	over := lopsided()
	over.Holes = append(over.Holes, hole(plan.Left, mm(36), over.Face.Height()+mm(2), mm(10)))
	named := false
	for _, p := range Make(planOf(over), nil, Options{Paper: Papers()[1], Parts: []Part{CornerTemplates}}).Pages {
		named = named || says(p, "TOP EDGE")
	}
	if !named {
		t.Error("no template names the top edge")
	}
	for _, p := range Make(planOf(lopsided()), nil, Options{Parts: []Part{CornerTemplates}}).Pages {
		if says(p, "TOP EDGE") {
			t.Error("the top edge is named where it is not shown")
		}
	}
}

// The name of the bar between two templates keeps clear of what they say: run
// together, “100 mm” and “36.5 mm” read as a figure.
func TestTheCheckBarsNameRunsIntoNoFigure(t *testing.T) {
	o := Options{}.with()
	for _, p := range Make(planOf(lopsided()), nil, Options{Parts: []Part{CornerTemplates}}).Pages {
		texts := ownTexts(p)
		for _, bar := range texts {
			if plain(bar) != "100 mm" {
				continue
			}
			area := drawing.TextArea(bar.At, bar.Anchor, bar.Size, bar.Bold, "100 mm").Grow(mm(2))
			for _, other := range texts {
				if other != bar && area.Overlaps(drawing.TextArea(other.At, other.Anchor, other.Size, other.Bold, o.Say.Say(other.Say))) {
					t.Errorf("the bar's name at %v meets %q", bar.At, other.Say)
				}
			}
		}
	}
}
