package ui

import (
	"strings"
	"testing"

	"fyne.io/fyne/v2/widget"

	"frontlay/model"
	"frontlay/model/edit"
	"frontlay/model/length"
)

// What the check finds in a new cabinet is said under its picture, in the colour
// of its severity; the marks in the picture alone say too little.
func TestANewCabinetTellsWhatIsFound(t *testing.T) {
	w, _, _ := newWindow(t, "")
	w.showStart()
	b := w.beginning()
	first := b.found.Text
	if !strings.Contains(first, "invented") {
		t.Errorf("at first it says %q", b.found.Text)
	}
	b.do(edit.SetCabinet(model.Place{}, "width", length.MM(1200)))
	all := b.session.Result().Findings
	if len(all) < 2 {
		t.Fatalf("a cabinet of 1200 mm has %d findings", len(all))
	}
	for _, want := range []string{"! warning: ", b.say().Say(all[0].What), "Further findings: "} {
		if !strings.Contains(b.found.Text, want) {
			t.Errorf("%q does not say %q", b.found.Text, want)
		}
	}
	if b.found.Importance != widget.WarningImportance {
		t.Errorf("a warning is said with importance %v", b.found.Importance)
	}
	b.session.Undo()
	if b.found.Text != first {
		t.Errorf("when it is mended it says %q", b.found.Text)
	}
}
