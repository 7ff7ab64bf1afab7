package hardware

import (
	"fyne.io/fyne/v2"

	"frontlay/ui/field"
)

// note is the field for several lines that tells where the figures come from.
// Leaving it takes what was typed.
type note struct {
	field.Input
	page *Page
	was  string
}

func newNote(p *Page) *note {
	n := &note{page: p}
	n.ExtendBaseWidget(n)
	n.MultiLine, n.Wrapping = true, fyne.TextWrapWord
	n.SetMinRowsVisible(3)
	return n
}

// update shows the sheet's note, unless another one is being typed.
func (n *note) update() {
	if n.Text == n.was && n.Text != n.page.sheet.Note {
		n.SetText(n.page.sheet.Note)
		n.was = n.page.sheet.Note
	}
}

func (n *note) take() bool {
	if text := n.Text; text != n.was {
		n.was = text
		n.page.change(func(k *picked) { k.sheet.Note = text })
	}
	return true
}

func (n *note) giveUp() {
	n.was = n.page.sheet.Note
	if n.Text != n.was {
		n.SetText(n.was)
	}
}

// AcceptsTab lets Tab leave the field, as it leaves every other.
func (n *note) AcceptsTab() bool { return false }

// FocusGained tells what belongs here.
func (n *note) FocusGained() {
	n.Input.FocusGained()
	n.page.look(n.page.newRow(spec{path: "note"}, -1))
}

// FocusLost takes what was typed.
func (n *note) FocusLost() {
	n.Input.FocusLost()
	n.take()
}

// TypedKey gives back what was on Esc.
func (n *note) TypedKey(k *fyne.KeyEvent) {
	switch k.Name {
	case fyne.KeyEscape:
		if n.Text == n.was {
			field.Leave(n, k)
		}
		n.giveUp()
	case fyne.KeyPageUp, fyne.KeyPageDown: // of its own lines
		n.Entry.TypedKey(k)
	default:
		if !field.HandOn(n, k) {
			n.Entry.TypedKey(k)
		}
	}
}

// Need is a width for sentences.
func (n *note) Need() float32 { return 400 }
