package field

import (
	"os"
	"os/exec"
	"testing"
	"time"

	"fyne.io/fyne/v2"
	"fyne.io/fyne/v2/test"
)

// A label that was hidden for so long that Fyne dropped its renderer breaks a new
// text in its width. How long that takes is set when a process begins, so this
// runs in one of its own, with a time of nearly nothing.
func TestALabelKeepsItsLines(t *testing.T) {
	if os.Getenv("FYNE_CACHE") == "" {
		exe, err := os.Executable()
		if err != nil {
			t.Fatal(err)
		}
		c := exec.Command(exe, "-test.run=^TestALabelKeepsItsLines$")
		c.Env = append(os.Environ(), "FYNE_CACHE=1ms")
		if out, err := c.CombinedOutput(); err != nil {
			t.Fatalf("%v\n%s", err, out)
		}
		return
	}
	a := test.NewTempApp(t)
	const long = "The drawer reaches 46 mm into the carcass top; needed is 8 mm of room."
	width := fyne.NewSize(200, 0)
	l := NewLabel("Short.")
	l.Wrapping = fyne.TextWrapWord
	l.Resize(width)
	l.MinSize()
	time.Sleep(5 * time.Millisecond)
	a.NewWindow("").Canvas().Capture() // Fyne forgets what is out of date when it paints
	l.SetText(long)
	l.Resize(width)
	fresh := NewLabel(long)
	fresh.Wrapping = fyne.TextWrapWord
	fresh.Resize(width)
	if got, want := l.MinSize().Height, fresh.MinSize().Height; got != want {
		t.Errorf("the text is %v high, a new label with it %v", got, want)
	}
}
