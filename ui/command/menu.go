package command

import "fyne.io/fyne/v2"

// MainMenu makes the menus of the window. run is told which command is chosen.
func (t *Table) MainMenu(run func(*Command)) *fyne.MainMenu {
	main := fyne.NewMainMenu()
	for _, name := range Menus {
		m := fyne.NewMenu(t.text(name))
		for i := range t.Rows {
			c := &t.Rows[i]
			if c.Menu != name {
				continue
			}
			if c.After {
				m.Items = append(m.Items, fyne.NewMenuItemSeparator())
			}
			item := fyne.NewMenuItem(t.text(c.Words), func() { run(c) })
			item.Shortcut, item.IsQuit = t.shortcut(c), c.Quits
			if c.Sub != nil {
				item.Action, item.ChildMenu = nil, c.Sub()
			}
			t.menu[i] = item
			m.Items = append(m.Items, item)
		}
		main.Items = append(main.Items, m)
	}
	return main
}

// Item is what stands for a command in the menus.
func (t *Table) Item(c *Command) *fyne.MenuItem {
	for i := range t.Rows {
		if &t.Rows[i] == c {
			return t.menu[i]
		}
	}
	return nil
}

// Renew makes the menu in the place of a command anew.
func (t *Table) Renew(name string) {
	c := t.Command(name)
	t.Item(c).ChildMenu = c.Sub()
}

// Update greys in the menus what makes no sense now, ticks what is chosen, and
// names what undo would undo. It is true where something has changed.
func (t *Table) Update() bool {
	changed := false
	for i := range t.Rows {
		c, item := &t.Rows[i], t.menu[i]
		off, on, label := c.Sub == nil && !c.Possible(), c.Checked != nil && c.Checked(), t.Name(c)
		if item.Disabled != off || item.Label != label || item.Checked != on {
			item.Disabled, item.Label, item.Checked, changed = off, label, on, true
		}
	}
	return changed
}

// Name is what a command is called now.
func (t *Table) Name(c *Command) string {
	if c.Named != nil {
		return shorter(t.say().Say(c.Named()), 60)
	}
	return t.text(c.Words)
}

func shorter(s string, letters int) string {
	if r := []rune(s); len(r) > letters {
		return string(r[:letters-1]) + "…"
	}
	return s
}

// around are the menus from which the menu of the drawing has its commands, in
// their order there: what is nearest to what is pointed at comes first.
var around = []string{"Draw", "Stack", "Hardware", "View", "Edit"}

// Context makes the menu of the drawing for what is selected. It has only what can be
// done now, so that the longest fits a screen in large letters too.
func (t *Table) Context(on Things, run func(*Command)) *fyne.Menu {
	menu := fyne.NewMenu("")
	for _, name := range around {
		apart := true // from what stands before
		for i := range t.Rows {
			c := &t.Rows[i]
			if c.Menu != name {
				continue
			}
			apart = apart || c.After
			if c.On&on == 0 || !c.Possible() {
				continue
			}
			if apart && len(menu.Items) > 0 {
				menu.Items = append(menu.Items, fyne.NewMenuItemSeparator())
			}
			apart = false
			menu.Items = append(menu.Items, fyne.NewMenuItem(t.menu[i].Label, func() { run(c) }))
		}
	}
	return menu
}
