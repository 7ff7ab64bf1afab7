package ui

import (
	"runtime"
	"strings"
	"testing"

	"fyne.io/fyne/v2"

	"frontlay/assets/language"
	"frontlay/ui/command"
)

// Desktops keep Ctrl and a function key, and Ctrl with Alt, for themselves.
func TestNoKeysOfTheDesktop(t *testing.T) {
	w, _, _ := newWindow(t, "")
	for i := range w.table.Rows {
		c := &w.table.Rows[i]
		for _, k := range []command.Chord{{Key: c.Key, Mod: c.Mod}, c.Also} {
			if command.FunctionKey(k.Key) || k.Mod&(fyne.KeyModifierAlt|fyne.KeyModifierSuper) != 0 {
				t.Errorf("%s has the keys %v of the desktop", c.Name, k)
			}
		}
	}
}

// The function keys work from the drawing, from a field, and on a page.
func TestFunctionKeysWorkEverywhere(t *testing.T) {
	w, _, _ := newWindow(t, "")
	for name, at := range map[string]func(){
		"drawing": w.stage.showDesk,
		"field": func() {
			w.stage.showDesk()
			w.session.Select(w.face(2))
			w.win.Canvas().Focus(w.desk.Inspector.Fields()["Drop"])
		},
		"page": func() { w.do("print") },
	} {
		at()
		press(w, fyne.KeyF7)
		if w.sheets() == nil {
			t.Errorf("F7 does nothing from the %s", name)
		}
	}
}

// A menu names keys as the page of keys does, in every language, and still takes
// them by the names that Fyne knows.
func TestMenusNameKeysAsThePageDoes(t *testing.T) {
	if runtime.GOOS == "darwin" {
		t.Skip("the menus of macOS are the system's own")
	}
	w, _, _ := newWindow(t, "")
	for _, code := range []string{language.English, "de"} {
		w.speak(code)
		shown := 0
		for i := range w.table.Rows {
			c := &w.table.Rows[i]
			s, _ := w.table.Item(&w.table.Rows[i]).Shortcut.(fyne.KeyboardShortcut)
			if w.table.Keys(c) == "" {
				if s != nil {
					t.Errorf("%s has no keys, its menu shows %q", c.Name, s.Key())
				}
				continue
			}
			shown++
			if s == nil || string(s.Key()) != w.table.Keys(c) || s.Mod() != 0 {
				t.Errorf("in %q the menu shows %v for %s, the page %q", code, s, c.Name, w.table.Keys(c))
				continue
			}
			if c.Key != "" && s.ShortcutName() != c.Shortcut().ShortcutName() {
				t.Errorf("the menu does not take the keys of %s", c.Name)
			}
			if code == "de" && (strings.Contains(w.table.Keys(c), "Ctrl") || strings.Contains(w.table.Keys(c), "Shift")) {
				t.Errorf("%s has English keys in German: %s", c.Name, w.table.Keys(c))
			}
		}
		if shown < 20 {
			t.Fatalf("only %d commands have keys", shown)
		}
	}
}
