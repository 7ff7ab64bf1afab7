package ui

import (
	"path/filepath"
	"slices"
	"strings"
	"testing"

	"fyne.io/fyne/v2/test"

	"frontlay/layout/check"
	"frontlay/layout/drawing"
	"frontlay/model"
	"frontlay/model/message"
	"frontlay/ui/field"
	"frontlay/ui/page/printing"
	"frontlay/ui/replay"
)

// The demo becomes a bench of frame fronts with a finger-pull channel in one gap, as a
// joiner works: the build is chosen, what the check says is mended, the channel is typed
// where its gap is, and the papers are written. Worked by hand: with stiles of 81 the
// panels are 861 − 2·81 + 2·10 = 719 wide in the grooves; of Jars and Brushes, which
// shared 288 + 144, 30 − 3 go to the channel, two to one: 270 and 135, so that the panel
// of Jars is 270 − 2·60 + 2·10 = 170 high.
func TestTheDemoAsFrames(t *testing.T) {
	w, _, pages := newWindow(t, "")
	panel := w.desk.Inspector.Object
	for _, f := range replay.All[*field.Fold](panel) {
		if f.Named() == "Build of fronts" {
			test.Tap(f)
		}
	}
	for _, c := range replay.All[*field.Choice](panel) {
		if i := slices.Index(c.Options, "new: frames with a panel"); i >= 0 {
			c.SetSelectedIndex(i)
		}
	}
	if len(w.unaccepted()) == 0 {
		t.Fatal("nothing is found of screws in thin panels")
	}
	thin := slices.IndexFunc(w.session.Result().Findings, func(f check.Finding) bool { return f.Rule == "thin-field" })
	w.session.Select(drawing.Subject{Kind: drawing.FrontThing, Place: w.session.Result().Findings[thin].Place})
	w.session.ChooseFinding(thin)
	for _, b := range replay.All[*field.Words](panel) {
		if b.Named() == "Mend: Stiles 81 mm, rails kept" {
			test.Tap(b)
		}
	}
	if rest := w.unaccepted(); len(rest) != 0 {
		t.Errorf("still found: %v: %v", rest[0].Rule, rest[0].What)
	}
	w.session.Select(drawing.Subject{Kind: drawing.DivisionThing, Place: model.Place{Front: 1}})
	for _, f := range []struct{ label, text string }{{"Finger-pull channel", "30"}, {"Depth of the channel", "25"}} {
		e := w.desk.Inspector.Fields()[f.label]
		if e == nil {
			t.Fatalf("there is no field %q", f.label)
		}
		if e.SetText(f.text); !e.Take() {
			t.Fatalf("%q takes no %s", f.label, f.text)
		}
	}
	if rest := w.unaccepted(); len(rest) != 0 {
		t.Errorf("with the channel is found: %v: %v", rest[0].Rule, rest[0].What)
	}
	w.do("print")
	within10s(t, printing.New(w, w.system()).WriteTo(filepath.Join(t.TempDir(), "bench.pdf")))
	var said strings.Builder
	for _, p := range *pages {
		for i := range p.doc.Pages {
			for _, d := range p.doc.Pages[i].Drawings() {
				for _, m := range d.Drawing.Marks {
					if text, ok := m.(*drawing.Text); ok {
						said.WriteString(p.doc.Say.Say(text.Say) + "\n")
					}
				}
			}
		}
	}
	for _, want := range []string{"81 × 270", "719 × 170", message.Language{}.Say(message.New("joint, not an edge"))} {
		if !strings.Contains(said.String(), want) {
			t.Errorf("no page says %q", want)
		}
	}
}
