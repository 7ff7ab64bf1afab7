package sheet

import (
	"strings"
	"testing"

	"frontlay/layout/check"
	"frontlay/layout/drawing"
	"frontlay/layout/lettering"
	"frontlay/layout/plan"
	"frontlay/model/length"
	"frontlay/model/message"
)

func TestTheCoverCountsFindings(t *testing.T) {
	open, accepted := check.Finding{Front: 1}, check.Finding{Front: 1, Accepted: "seen"}
	advice := check.Finding{Front: 1, Severity: check.Advice}
	for name, c := range map[string]struct {
		findings []check.Finding
		want     string
		large    bool
	}{
		"none":          {nil, "The check found nothing to mend.", false},
		"errors":        {[]check.Finding{open, open, accepted}, "Open findings: errors 2 Other findings: warnings 0, advice 0; accepted: 1", true},
		"advice":        {[]check.Finding{advice}, "Open findings: warnings 0, advice 1; accepted: 0", false},
		"accepted only": {[]check.Finding{accepted}, "Open findings: none; accepted: 1", false},
	} {
		t.Run(name, func(t *testing.T) {
			page := Make(planOf(lopsided()), c.findings, Options{Parts: []Part{Cover}}).Pages[0]
			if !strings.Contains(words(page), c.want) {
				t.Fatalf("the cover says %q", words(page))
			}
			for _, m := range page.Placed[len(page.Placed)-1].Drawing.Marks {
				if s, ok := m.(*drawing.Text); ok && strings.HasPrefix(s.Say.String(), "Open findings") {
					if large := s.Bold && s.Size == lettering.Large; large != c.large {
						t.Errorf("large and bold: %v; want %v", large, c.large)
					}
				}
			}
		})
	}
}

func TestTheTitleBlockNamesInchesInFull(t *testing.T) {
	inches := Options{Parts: []Part{Elevation}, Say: message.Language{Unit: length.UnitInch}}
	if s := words(Make(pedestal(), nil, inches).Pages[0]); !strings.Contains(s, "all sizes in inches") {
		t.Errorf("the elevation says %q", s)
	}
}

// What ≈ means stands on the pages that have one, and on no other: metric parts in
// inches are rounded, a front of whole inches is not.
func TestRoundingIsToldWhereThereIsSome(t *testing.T) {
	whole := front(1, 24*length.Inch, 12*length.Inch)
	whole.EdgeDistance = plan.Edges{Left: 2 * length.Inch, Right: 2 * length.Inch}
	for _, x := range []length.Length{2 * length.Inch, 22 * length.Inch} {
		side := plan.Left
		if x > whole.Face.Width()/2 {
			side = plan.Right
		}
		h := hole(side, x, 3*length.Inch, length.Inch/2)
		h.Depth = length.Inch / 2
		whole.Holes = append(whole.Holes, h)
	}
	for name, f := range map[string]plan.Front{"whole inches": whole, "metric": lopsided()} {
		say := message.Language{Unit: length.UnitInch}
		told, silent := 0, 0
		p := planOf(f)
		p.Project.Checks.Limits = map[string]length.Length{"drill_point": length.Inch / 16}
		for _, page := range Make(p, nil, Options{Parts: []Part{CornerTemplates, WholeTemplates}, Say: say}).Pages {
			note, rounded := 0, false
			for _, p := range page.Placed {
				for _, m := range p.Drawing.Marks {
					s := ""
					switch m := m.(type) {
					case *drawing.Text:
						s = say.Say(m.Say)
					case *drawing.Dimension:
						s = say.Figure(m.Value)
					}
					if strings.HasPrefix(s, "≈\u00a0figures") {
						note++
					} else if strings.Contains(s, "≈") {
						rounded = true
					}
				}
			}
			if rounded != (note > 0) {
				t.Errorf("%s, %s: figures are rounded: %v, told %d times", name, page.Title, rounded, note)
			}
			if rounded {
				told++
			} else {
				silent++
			}
		}
		if name == "metric" && told == 0 || name != "metric" && silent == 0 {
			t.Errorf("%s: %d pages with a rounded figure, %d without", name, told, silent)
		}
	}
}
