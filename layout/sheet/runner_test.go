package sheet

import (
	"strings"
	"testing"

	"frontlay/model/length"
	"frontlay/model/message"
)

// A person measures up or down from the line, left or right of it, never minus
// something.
func TestPlacesAreSaidByArrows(t *testing.T) {
	for _, c := range []struct {
		want     string
		right    bool
		side, up length.Length
	}{
		{"→ 37  ↓ 7.5", true, mm(37), -length.FromMM(7.5)},
		{"→ 37  ↑ 0", true, mm(37), 0},
		{"← 37  ↑ 9", false, -mm(37), mm(9)},
	} {
		if got := strings.ReplaceAll(arrows(message.Language{}, c.right, c.side, c.up), "\u00a0", " "); got != c.want {
			t.Errorf("said %q; want %q", got, c.want)
		}
	}
}
