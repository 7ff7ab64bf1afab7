package field

import (
	"fyne.io/fyne/v2"
	fynetheme "fyne.io/fyne/v2/theme"
	"fyne.io/fyne/v2/widget"
)

// Offer is a field for a text with a list of usual ones; the down key opens the
// list.
type Offer struct {
	widget.SelectEntry
	Ring
	open func()
}

// NewOffer makes a field with a list.
func NewOffer(usual []string) *Offer {
	o := &Offer{}
	o.ExtendBaseWidget(o)
	o.SetOptions(usual)
	open := o.ActionItem.(*widget.Button).OnTapped
	o.open = func() {
		if CanvasOf(o) != nil {
			open()
		}
	}
	arrow := NewButton("", o.open) // one whose focus is seen
	arrow.SetIcon(fynetheme.Icon(fynetheme.IconNameArrowDropDown))
	arrow.Importance = widget.LowImportance
	o.ActionItem = arrow
	return o
}

// Need is the width that shows the text whole.
func (o *Offer) Need() float32 {
	return entryNeed(o.Text, o.PlaceHolder) + o.ActionItem.MinSize().Width
}

// FocusGained scrolls to where the field can be seen.
func (o *Offer) FocusGained() { o.Gain(o, &o.SelectEntry) }

// FocusLost takes the line around the field away.
func (o *Offer) FocusLost() { o.Lose(o, &o.SelectEntry) }

// CreateRenderer draws the field with a line around it while it has the focus.
func (o *Offer) CreateRenderer() fyne.WidgetRenderer {
	return o.Line(o.SelectEntry.CreateRenderer())
}

// TappedSecondary opens the menu of the clipboard, as in every Input.
func (o *Offer) TappedSecondary(e *fyne.PointEvent) {
	if CanvasOf(o) != nil {
		o.SelectEntry.TappedSecondary(e)
	}
}

// TypedKey opens the list, and hands Esc on.
func (o *Offer) TypedKey(e *fyne.KeyEvent) {
	switch e.Name {
	case fyne.KeyDown:
		o.open()
	case fyne.KeyEscape:
		Leave(o, e)
	default:
		if !HandOn(o, e) {
			o.SelectEntry.TypedKey(e)
		}
	}
}
