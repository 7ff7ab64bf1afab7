package help_test

import (
	"strings"
	"testing"

	"frontlay/layout/list"
	"frontlay/ui/page/help"
	"frontlay/ui/page/pagetest"
)

// The window's cautions are those of the printed page, each of them and no others.
func TestCautionsAreThoseThatArePrinted(t *testing.T) {
	h := pagetest.New(t)
	help.Cautions(h.Ask())
	shown := pagetest.Texts(h.Win.Canvas().Overlays().Top())
	rows := list.Cautions(h.Say()).Rows
	for _, r := range rows {
		if !strings.Contains(shown, "• "+r.Cells[1]) {
			t.Errorf("the window does not show the caution %q", r.Cells[1])
		}
	}
	if n := strings.Count(shown, "• "); n != len(rows) {
		t.Errorf("the window shows %d cautions, the printed page %d", n, len(rows))
	}
}
