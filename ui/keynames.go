package ui

import (
	"runtime"
	"strings"

	"fyne.io/fyne/v2"
	"fyne.io/fyne/v2/driver/desktop"
)

// keyText names the keys of a command.
func (c *command) keyText() string {
	var s []string
	if c.mod&ctrl != 0 {
		s = append(s, "Ctrl")
	}
	if c.mod&shift != 0 {
		s = append(s, "Shift")
	}
	if c.key != "" {
		s = append(s, string(c.key))
	}
	text := strings.Join(s, "+")
	if c.bare != "" {
		if text != "" {
			text += ", "
		}
		text += c.bare
	}
	return text
}

// keyNames are the keys that a keyboard of another language names otherwise.
var keyNames = []string{"Ctrl", "Shift", "Enter", "Del", "Up", "Down", "Left", "Right"}

// keysOf names the keys of a command as the language's keyboards do.
func (w *window) keysOf(c *command) string {
	keys := c.keyText()
	for _, name := range keyNames {
		keys = strings.ReplaceAll(keys, name, w.text(name))
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

// menuKey is what a menu shows and takes of a command's keys, nil for none. The
// menus of macOS are the system's own, which needs to know the keys themselves.
func (w *window) menuKey(c *command) fyne.Shortcut {
	switch {
	case runtime.GOOS == "darwin" && c.key == "":
		return nil
	case runtime.GOOS == "darwin":
		return shortcutOf(c)
	case c.keyText() == "":
		return nil
	case c.key == "":
		return spoken{text: w.keysOf(c)}
	}
	return spoken{name: shortcutOf(c).ShortcutName(), text: w.keysOf(c)}
}

// shortcutOf is the shortcut of a command. Fyne has names of its own for the
// keys that fields know too, and a menu must use those to get them.
func shortcutOf(c *command) fyne.Shortcut {
	if c.mod == ctrl {
		switch c.key {
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
	return &desktop.CustomShortcut{KeyName: c.key, Modifier: c.mod}
}
