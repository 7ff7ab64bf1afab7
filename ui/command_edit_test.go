package ui

import (
	"testing"

	"fyne.io/fyne/v2"

	"frontlay/ui/session"
)

// A cabinet moves in the run, what is selected of it stays selected, and at the
// end of the run there is nowhere to go.
func TestACabinetMovesInTheRun(t *testing.T) {
	w, _, _ := newWindow(t, "")
	names := func() (all []string) {
		for _, c := range w.session.Project().Cabinets {
			all = append(all, c.Name)
		}
		return all
	}
	before := names()
	if w.table.Command("moveright").Possible() {
		t.Error("with nothing selected there is nothing to move")
	}
	w.session.Select(w.face(1), w.face(2))
	w.do("moveright")
	if after := names(); after[0] != before[1] || after[1] != before[0] {
		t.Errorf("the cabinets were %q and are %q", before, after)
	}
	if sel := w.session.Selection(); len(sel) != 2 || sel[0].Place.Cabinet != 1 {
		t.Errorf("selected is %v", sel)
	}
	for range before {
		w.do("moveright")
	}
	if after := names(); after[len(after)-1] != before[0] || w.table.Command("moveright").Possible() || !w.table.Command("moveleft").Possible() {
		t.Errorf("at the right end: %q", after)
	}
	w.session.Select(session.Cabinet(session.PlaceOfCabinet(len(before) - 1)))
	w.do("moveleft")
	if w.says() != "Move a cabinet in the run" || w.session.Selection()[0].Place.Cabinet != len(before)-2 {
		t.Errorf("the line says %q, selected is %v", w.says(), w.session.Selection())
	}
	for range len(before) {
		w.do("undo")
	}
	if w.session.Unsaved() {
		t.Error("undo does not lead back")
	}
}

// The arrow keys with Ctrl go from word to word in a field.
func TestCtrlArrowsBelongToAField(t *testing.T) {
	w, _, _ := newWindow(t, "")
	w.session.Select(session.Cabinet(session.PlaceOfCabinet(0)))
	name := w.desk.Inspector.Fields()["Name"]
	layOut(w)
	w.desk.Inspector.Rename()
	name.SetText("two words")
	name.CursorColumn = 9
	w.do("moveright")
	w.do("moveleft")
	if w.session.Unsaved() || name.CursorColumn != 4 {
		t.Errorf("the project changed: %v; the cursor is at %d", w.session.Unsaved(), name.CursorColumn)
	}
}

// The notes of the project can be written in the panel, in lines, and undone.
func TestNotesAreWritten(t *testing.T) {
	w, _, _ := newWindow(t, "")
	w.session.Select()
	was := w.session.Project().Notes
	notes := w.desk.Inspector.Fields()["Notes"]
	if notes == nil || notes.Text != was {
		t.Fatal("the panel does not show the notes")
	}
	w.win.Canvas().Focus(notes)
	notes.SetText("Seal the edges\nbefore hanging")
	notes.TypedKey(&fyne.KeyEvent{Name: fyne.KeyEscape})
	if notes.Text != was {
		t.Errorf("after Esc the notes are %q", notes.Text)
	}
	notes.SetText("Seal the edges\nbefore hanging")
	w.do("fit") // a command takes what is typed
	if got := w.session.Project().Notes; got != "Seal the edges\nbefore hanging" {
		t.Errorf("the notes are %q", got)
	}
	w.do("undo")
	if w.session.Project().Notes != was || w.desk.Inspector.Fields()["Notes"].Text != was {
		t.Error("undo does not give back the notes")
	}
}
