package command

import (
	"runtime"
	"strings"

	"fyne.io/fyne/v2"
	"fyne.io/fyne/v2/driver/desktop"
)

// keyText names the keys of a command.
func (c *Command) keyText() string {
	var s []string
	if c.Mod&Ctrl != 0 {
		s = append(s, "Ctrl")
	}
	if c.Mod&Shift != 0 {
		s = append(s, "Shift")
	}
	switch c.Key {
	case "":
	case fyne.KeyPageDown:
		s = append(s, "Page Down")
	case fyne.KeyPageUp:
		s = append(s, "Page Up")
	default:
		s = append(s, string(c.Key))
	}
	text := strings.Join(s, "+")
	if c.Bare != "" {
		if text != "" {
			text += ", "
		}
		text += c.Bare
	}
	return text
}

// keyNames are the keys that a keyboard of another language names otherwise.
var keyNames = []string{"Ctrl", "Shift", "Enter", "Del", "Page Up", "Page Down", "Up", "Down", "Left", "Right"}

// Keys names the keys of a command as the language's keyboards do; empty: it has
// none.
func (t *Table) Keys(c *Command) string {
	keys := c.keyText()
	for _, name := range keyNames {
		keys = strings.ReplaceAll(keys, name, t.text(name))
	}
	return keys
}

// spoken is a shortcut that a menu shows by the names that the language's
// keyboards have for its keys. Fyne 2.7.4 looks for a shortcut by its name, and
// writes its modifiers, here none, and its key beside the item.
type spoken struct {
	name string // empty: the menu shows the key, and something else takes it
	text string
}

func (s spoken) ShortcutName() string  { return s.name }
func (s spoken) Key() fyne.KeyName     { return fyne.KeyName(s.text) }
func (s spoken) Mod() fyne.KeyModifier { return 0 }

// shortcut is what a menu shows and takes of a command's keys, nil for none. The
// menus of macOS are the system's own, which needs to know the keys themselves.
func (t *Table) shortcut(c *Command) fyne.Shortcut {
	switch {
	case runtime.GOOS == "darwin" && c.Key == "":
		return nil
	case runtime.GOOS == "darwin":
		return c.Shortcut()
	case c.keyText() == "":
		return nil
	case c.Key == "":
		return spoken{text: t.Keys(c)}
	}
	return spoken{name: c.Shortcut().ShortcutName(), text: t.Keys(c)}
}

// Shortcut is the shortcut of a command. Fyne has names of its own for the keys
// that fields know too, and a menu must use those to get them.
func (c *Command) Shortcut() fyne.Shortcut {
	if c.Mod == Ctrl {
		switch c.Key {
		case fyne.KeyZ:
			return &fyne.ShortcutUndo{}
		case fyne.KeyY:
			return &fyne.ShortcutRedo{}
		case fyne.KeyA:
			return &fyne.ShortcutSelectAll{}
		case fyne.KeyX:
			return &fyne.ShortcutCut{Clipboard: fyne.CurrentApp().Clipboard()}
		case fyne.KeyC:
			return &fyne.ShortcutCopy{Clipboard: fyne.CurrentApp().Clipboard()}
		case fyne.KeyV:
			return &fyne.ShortcutPaste{Clipboard: fyne.CurrentApp().Clipboard()}
		}
	}
	return &desktop.CustomShortcut{KeyName: c.Key, Modifier: c.Mod}
}

// AddOthers gives a canvas the second keys of commands. They work where no field
// has the focus.
func (t *Table) AddOthers(canvas fyne.Canvas, run func(*Command)) {
	for i := range t.Rows {
		c := &t.Rows[i]
		if c.Also.Key != "" {
			canvas.AddShortcut(&desktop.CustomShortcut{KeyName: c.Also.Key, Modifier: c.Also.Mod}, func(fyne.Shortcut) { run(c) })
		}
	}
}
