package ui

import (
	"fyne.io/fyne/v2"

	"frontlay/layout/drawing"
	"frontlay/model/message"
	"frontlay/ui/tool"
)

func (w *window) drawCommands() []command {
	return []command{
		{name: "point", menu: "Draw", label: "Point and drag", key: fyne.Key1, mod: ctrl, bare: "Esc",
			do: func() { w.take(tool.Idle{}, message.New("Click to select, drag divisions and edges, wheel to zoom.")) }},
		{name: "drawdivision", menu: "Draw", label: "Draw divisions", key: fyne.Key2, mod: ctrl,
			do: func() {
				w.take(tool.DrawDivision{}, message.New("Click a front where its division is to be. Shift frees it, Esc ends drawing."))
			}},
		{name: "drawpartition", menu: "Draw", label: "Draw partitions", key: fyne.Key3, mod: ctrl,
			do: func() {
				w.take(tool.DrawPartition{}, message.New("Click into a bay where the partition is to be. Shift frees it, Esc ends drawing."))
			}},
		{name: "drawcabinet", menu: "Draw", label: "Draw a cabinet", key: fyne.Key4, mod: ctrl,
			do: func() {
				w.take(tool.DrawCabinet{}, message.New("Click at the right of the run where the new cabinet's upper right corner is to be."))
			}},
		{name: "type", menu: "Draw", label: "Type the size of what is selected", bare: "Enter", after: true,
			can: func() bool { return len(w.session.Selection()) > 0 },
			do:  func() { w.screen.TypedKey(&fyne.KeyEvent{Name: fyne.KeyReturn}) }},
		{name: "addcabinet", menu: "Draw", label: "Add a cabinet like the last", do: func() {
			n := len(w.session.Project().Cabinets)
			w.session.Select(drawing.Subject{Kind: drawing.CabinetThing, Place: placeOfCabinet(n - 1)})
			w.duplicate()
		}},
	}
}
