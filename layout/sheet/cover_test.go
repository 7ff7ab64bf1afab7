package sheet

import (
	"strings"
	"testing"

	"frontlay/layout/check"
	"frontlay/layout/drawing"
	"frontlay/layout/sheet/lettering"
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
