package field

import "fyne.io/fyne/v2/driver/desktop"

// Hover is what widgets have in common that show that the pointer is over them.
type Hover struct {
	Changed func() // paints the widget anew
	over    bool
}

// Hovered tells that the pointer is over the widget.
func (h *Hover) Hovered() bool { return h.over }

// MouseIn shows that the widget can be pressed.
func (h *Hover) MouseIn(*desktop.MouseEvent) { h.hover(true) }

// MouseMoved is of no interest.
func (h *Hover) MouseMoved(*desktop.MouseEvent) {}

// MouseOut ends what MouseIn began.
func (h *Hover) MouseOut() { h.hover(false) }

func (h *Hover) hover(on bool) {
	h.over = on
	h.Changed()
}
