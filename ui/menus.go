package ui

import (
	"fyne.io/fyne/v2"
	"fyne.io/fyne/v2/driver/desktop"
	"fyne.io/fyne/v2/widget"

	"frontlay/layout/drawing"
)

// mainMenu makes the menus of the commands.
func (w *window) mainMenu() *fyne.MainMenu {
	w.menus = make([]*fyne.MenuItem, len(w.commands))
	main := fyne.NewMainMenu()
	for _, name := range menuNames {
		m := fyne.NewMenu(w.text(name))
		for i := range w.commands {
			c := &w.commands[i]
			if c.menu != name {
				continue
			}
			if c.after {
				m.Items = append(m.Items, fyne.NewMenuItemSeparator())
			}
			item := fyne.NewMenuItem(w.text(c.label), func() { w.run(c) })
			item.Shortcut = w.menuKey(c)
			item.IsQuit = c.name == "quit"
			w.menus[i] = item
			m.Items = append(m.Items, item)
			if c.name == "large" {
				speak := fyne.NewMenuItem(w.text("Language"), nil)
				speak.ChildMenu = w.languageItems()
				m.Items = append(m.Items, speak)
			}
			if c.name == "open" {
				w.recentMenu = fyne.NewMenuItem(w.text("Open again"), nil)
				w.recentMenu.ChildMenu = w.recentItems()
				m.Items = append(m.Items, w.recentMenu)
			}
		}
		main.Items = append(main.Items, m)
	}
	return main
}

// otherKeys are second shortcuts, for hands that are used to them. They work
// where no field has the focus.
func (w *window) otherKeys() {
	for _, k := range []struct {
		key  fyne.KeyName
		mod  fyne.KeyModifier
		name string
	}{{fyne.KeyZ, ctrl | shift, "redo"}, {fyne.KeyW, ctrl, "quit"}} {
		w.win.Canvas().AddShortcut(&desktop.CustomShortcut{KeyName: k.key, Modifier: k.mod}, func(fyne.Shortcut) { w.do(k.name) })
	}
}

// updateMenus greys what makes no sense now and names what undo would undo.
func (w *window) updateMenus() {
	changed := false
	for i := range w.commands {
		c, item := &w.commands[i], w.menus[i]
		off := c.can != nil && !c.can()
		label := w.text(c.label)
		if c.named != nil {
			label = shorter(w.say().Say(c.named()), 60)
		}
		on := c.checked != nil && c.checked()
		if item.Disabled != off || item.Label != label || item.Checked != on {
			item.Disabled, item.Label, item.Checked, changed = off, label, on, true
		}
	}
	if changed && !w.session.InGesture() {
		w.win.MainMenu().Refresh()
	}
}

func shorter(s string, letters int) string {
	if r := []rune(s); len(r) > letters {
		return string(r[:letters-1]) + "…"
	}
	return s
}

// contextMenu shows the commands for what is selected.
func (w *window) contextMenu(at fyne.Position) {
	var names []string
	switch {
	case w.selected(drawing.FrontThing):
		names = []string{"type", "divide", "", "up", "down", "", "equal", "graduate", "lock", "level", "", "template", "", "cut", "copy", "paste", "remove", "", "bay", "cabinet"}
	case w.selected(drawing.DivisionThing):
		names = []string{"type", "equal", "", "remove"}
	case w.selected(drawing.PartitionThing), w.selected(drawing.BayThing):
		names = []string{"type", "equal", "graduate", "copystack", "copyrun", "", "duplicate", "remove", "", "sheets", "cabinet"}
	case w.selected(drawing.CabinetThing):
		names = []string{"type", "", "cut", "copy", "paste", "duplicate", "remove", "", "moveleft", "moveright", "", "sheets"}
	default:
		names = []string{"drawdivision", "drawpartition", "drawcabinet", "", "fit", "through"}
	}
	menu := fyne.NewMenu("")
	for _, n := range names {
		if n == "" {
			menu.Items = append(menu.Items, fyne.NewMenuItemSeparator())
			continue
		}
		for i := range w.commands {
			if c := &w.commands[i]; c.name == n {
				item := fyne.NewMenuItem(w.menus[i].Label, func() { w.run(c) })
				item.Disabled = c.can != nil && !c.can()
				menu.Items = append(menu.Items, item)
			}
		}
	}
	widget.ShowPopUpMenuAtPosition(menu, w.win.Canvas(), at)
}
