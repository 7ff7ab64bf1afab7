package printing

import (
	"strings"
	"testing"

	"frontlay/layout/drawing"
	"frontlay/layout/sheet"
	"frontlay/model/length"
	"frontlay/ui/field"
	"frontlay/ui/page/pagetest"
)

// The format of labels is typed where labels are printed, kept for the next job, and
// what is wrong with it is told under its field; a sheet that is begun goes on.
func TestLabelsAreLaidOutAsTyped(t *testing.T) {
	h := pagetest.New(t)
	p := New(h, System{})
	for part, box := range p.boxes {
		box.SetChecked(part == sheet.Labels)
	}
	if !p.labels.object.Visible() || len(p.pages) == 0 {
		t.Fatal("labels are printed, and their format is not asked for")
	}
	l := &p.labels
	grid, margins, pitch, first := l.grid, l.margins, l.pitch, l.first
	for _, bad := range []struct {
		of   *field.Text
		text string
	}{{grid, "3"}, {margins, "wide"}, {pitch, "1x"}, {first, "x"}, {first, "100"}, {pitch, "1x1"}} {
		was := bad.of.Text
		bad.of.SetText(bad.text)
		if !p.write.Disabled() || len(field.Mistaken(p.wrong...)) != 1 {
			t.Errorf("%q is taken", bad.text)
		}
		bad.of.SetText(was)
	}
	grid.SetText("2x7")
	margins.SetText("4.65x15.15")
	pitch.SetText("101.6x38.1")
	first.SetText("14")
	want := sheet.LabelFormat{Columns: 2, Rows: 7, Left: 4650 * length.Micrometre, Top: 15150 * length.Micrometre, Across: 101600 * length.Micrometre, Down: 38100 * length.Micrometre}
	if p.options.Labels != want || p.options.First != 14 || p.write.Disabled() {
		t.Errorf("%+v from %d", p.options.Labels, p.options.First)
	}
	stickers := 0
	for _, m := range p.pages[0].Drawings()[0].Drawing.Marks {
		if text, ok := m.(*drawing.Text); ok && strings.Contains(p.ask.Say().Say(text.Say), "▲") {
			stickers++
		}
	}
	if stickers != 1 {
		t.Errorf("%d labels on the sheet that has one left", stickers)
	}
	again := New(h, System{})
	if again.labels.grid.Text != "2x7" || again.labels.first.Text != "" || again.options.First == 14 {
		t.Error("the next time the page does not begin with the same pack, on a whole sheet")
	}
	for _, box := range again.boxes {
		box.SetChecked(false)
	}
	if again.labels.object.Visible() {
		t.Error("the format of labels is asked for without labels")
	}
}
