package start

import (
	"reflect"
	"slices"
	"strings"
	"testing"

	"fyne.io/fyne/v2"
	"fyne.io/fyne/v2/test"
	"fyne.io/fyne/v2/widget"

	"frontlay/model"
	"frontlay/model/edit"
	"frontlay/model/length"
	"frontlay/ui/field"
	"frontlay/ui/page/pagetest"
	"frontlay/ui/replay"
)

// What the check finds in a new cabinet is said under its picture, in the colour
// of its severity; the marks in the picture alone say too little.
func TestANewCabinetTellsWhatIsFound(t *testing.T) {
	b := New(pagetest.New(t), nil, nil)
	first := b.found.Text
	if !strings.Contains(first, "invented") {
		t.Errorf("at first it says %q", b.found.Text)
	}
	b.Do(edit.SetCabinet(model.Place{}, "width", length.MM(1200)))
	all := b.Session.Result().Findings
	if len(all) < 2 {
		t.Fatalf("a cabinet of 1200 mm has %d findings", len(all))
	}
	for _, want := range []string{b.say().Say(all[0].What), "Further findings: "} {
		if !strings.Contains(b.found.Text, want) {
			t.Errorf("%q does not say %q", b.found.Text, want)
		}
	}
	if b.found.Importance != widget.WarningImportance {
		t.Errorf("a warning is said with importance %v", b.found.Importance)
	}
	b.Session.Undo()
	if b.found.Text != first {
		t.Errorf("when it is mended it says %q", b.found.Text)
	}
}

// What begins is in sight, and under the form, however low the window is.
func TestTheBeginningIsInSight(t *testing.T) {
	h := pagetest.New(t)
	b := New(h, nil, nil)
	for _, high := range []float32{250, 400, 800} {
		w := test.NewTempWindow(t, b.Object)
		w.SetPadded(false)
		w.Resize(fyne.NewSize(1200, high))
		for _, one := range replay.All[*field.Button](b.Object) {
			if one.Text != "Begin with this cabinet" {
				continue
			}
			at := fyne.CurrentApp().Driver().AbsolutePositionForObject(one)
			if low := at.Y + one.Size().Height; low > high || high > 700 && low > 600 {
				t.Errorf("in a window %v high it ends at %v", high, low)
			}
		}
	}
}

// The choices of the page for a new cabinet follow what is done in its drawing,
// and undo there.
func TestChoicesOfANewCabinetFollow(t *testing.T) {
	b := New(pagetest.New(t), nil, nil)
	b.Do(edit.SetUnit{Unit: length.UnitInch})
	b.Do(edit.AddFront{At: model.Place{Front: 1}, Front: model.Front{Share: 1, Drawer: model.DrawerAuto}})
	var shown []string
	for _, c := range b.choices {
		shown = append(shown, c.Selected)
	}
	if !slices.Contains(shown, "4") || !slices.Contains(shown, "inches, fractions") {
		t.Errorf("the choices show %q", shown)
	}
}

// A cabinet that is begun as the page proposes it is the project that the command
// new writes.
func TestTheProposedCabinetIsTheOneThatNewWrites(t *testing.T) {
	h := pagetest.New(t)
	New(h, nil, nil).Begin()
	if want := Project(); !reflect.DeepEqual(h.Begun, want) {
		t.Errorf("the page begins\n%+v\nnew writes\n%+v", h.Begun, want)
	}
}

// A project has the title that was typed, and the proposed one where none was.
func TestAProjectBeginsWithATitle(t *testing.T) {
	h := pagetest.New(t)
	b := New(h, nil, nil)
	b.title.SetText("  Glaze bench ")
	b.Begin()
	if h.Begun.Title != "Glaze bench" {
		t.Errorf("the project is called %q", h.Begun.Title)
	}
	b.title.SetText(" ")
	b.Begin()
	if h.Begun.Title != "New cabinet" {
		t.Errorf("without a title it is called %q", h.Begun.Title)
	}
}

// Enter goes from the title to the width, takes what is typed there, and begins once
// nothing is being typed.
func TestEnterBegins(t *testing.T) {
	w := pagetest.New(t)
	begun := 0
	b := New(beginner{w, &begun}, nil, nil)
	w.Win.SetContent(b.Object)
	w.LayOut()
	c := w.Win.Canvas()
	enter := func() { c.Focused().TypedKey(&fyne.KeyEvent{Name: fyne.KeyReturn}) }
	c.Focus(b.title)
	enter()
	width := b.rows[0].Entry
	if c.Focused() != fyne.Focusable(width) {
		t.Fatalf("Enter in the title leads to %v", c.Focused())
	}
	test.Type(width, "850")
	enter()
	if got := b.Session.Project().Cabinets[0].Width; got != length.MM(850) || begun != 0 {
		t.Errorf("the cabinet is %v wide, begun %d times", got, begun)
	}
	enter()
	if begun != 1 {
		t.Errorf("a second Enter began %d times", begun)
	}
}

// beginner counts how often a project is begun.
type beginner struct {
	*pagetest.Host
	begun *int
}

func (b beginner) Begin(*model.Project) { *b.begun++ }
