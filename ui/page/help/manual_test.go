package help_test

import (
	"testing"

	"fyne.io/fyne/v2"
	"fyne.io/fyne/v2/canvas"
	"fyne.io/fyne/v2/test"

	"frontlay/assets/manual"
	"frontlay/ui/field"
	"frontlay/ui/page/help"
	"frontlay/ui/page/pagetest"
)

// titled tells that the chapter of a title is what is read: it stands there in large
// letters.
func titled(h *pagetest.Host, title string) bool {
	for _, o := range test.LaidOutObjects(h.Win.Canvas().Overlays().Top()) {
		if t, ok := o.(*canvas.Text); ok && t.Text == title && t.TextSize > 20 {
			return true
		}
	}
	return false
}

// pressNamed presses what is called so, as Tab and Enter would.
func pressNamed(t *testing.T, h *pagetest.Host, name string) {
	t.Helper()
	for _, o := range test.LaidOutObjects(h.Win.Canvas().Overlays().Top()) {
		if n, ok := o.(interface {
			fyne.Focusable
			Named() string
		}); ok && n.Named() == name {
			n.TypedKey(&fyne.KeyEvent{Name: fyne.KeyReturn})
			return
		}
	}
	t.Fatalf("nothing is called %q", name)
}

// A link of a chapter leads to another, the way back leads back, the search leads to
// what it finds, and a link out of the manual is for another program.
func TestManualLeadsFromPlaceToPlace(t *testing.T) {
	h := pagetest.New(t)
	help.Manual(h.Ask(), "en", "no-such-chapter", h.OpenURL)
	contents, keys := manual.In("en").Chapter(manual.Contents).Title, manual.In("en").Chapter("reference-keys").Title
	if !titled(h, contents) {
		t.Fatal("it does not begin with its contents")
	}
	pressNamed(t, h, keys)
	if !titled(h, keys) || titled(h, contents) {
		t.Fatal("the link does not lead to the chapter")
	}
	pressNamed(t, h, "Go back")
	if !titled(h, contents) {
		t.Error("there is no way back")
	}
	for _, o := range test.LaidOutObjects(h.Win.Canvas().Overlays().Top()) {
		if e, ok := o.(*field.Text); ok {
			e.SetText("WHEEL pointer")
		}
	}
	found := manual.In("en").Search("wheel pointer")
	if len(found) == 0 {
		t.Fatal("nothing is found")
	}
	pressNamed(t, h, found[0].Text)
	if !titled(h, keys) {
		t.Error("what is found does not lead there")
	}
}
