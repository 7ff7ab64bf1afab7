package ui

import (
	"slices"
	"strings"

	"fyne.io/fyne/v2"
	"fyne.io/fyne/v2/lang"

	"frontlay/assets/language"
	"frontlay/model/message"
	"frontlay/ui/arrange"
	"frontlay/ui/ask"
	"frontlay/ui/command"
	"frontlay/ui/look"
)

// group is the windows of one run of the program. They share what was cut or
// copied, the look, and the language.
type group struct {
	app     fyne.App
	theme   *look.Theme
	speech  speech
	copied  arrange.Copied
	windows []*window
}

// speech is what the windows speak: English where there is no catalogue.
type speech struct {
	code     string // of ISO 639-1, or the path of a catalogue
	language message.Language
}

// newGroup is one without a window, in the language that was chosen last, or the
// desktop's where the program has it.
func newGroup(a fyne.App, th *look.Theme) *group {
	code := a.Preferences().String(prefLanguage)
	if code == "" {
		code, _, _ = strings.Cut(string(lang.SystemLocale()), "-")
	}
	l, err := language.Read(code)
	if err != nil {
		code = language.English
	}
	return &group{app: a, theme: th, speech: speech{code, l}}
}

// left takes a window out of its group.
func (g *group) left(w *window) {
	g.windows = slices.DeleteFunc(g.windows, func(o *window) bool { return o == w })
}

// another opens another window like one, with its start page.
func (g *group) another(like Options) *window {
	like.Open, like.Example = "", ""
	next := openIn(g, like)
	next.show()
	next.ready()
	return next
}

// lookRows are the commands for the look and the language of every window. asker
// asks over the window that has them.
func (g *group) lookRows(asker *ask.Asker) []command.Command {
	mode := func(name, words string, m look.Mode) command.Command {
		return command.Command{Name: name, Menu: "Settings", Words: words, Scope: command.Anywhere, After: m == look.System,
			Do: func() { g.paint(m) }, Checked: func() bool { return g.theme.Mode == m }}
	}
	return []command.Command{
		mode("system", "Colours of the desktop", look.System),
		mode("light", "Light", look.LightMode),
		mode("dark", "Dark", look.DarkMode),
		mode("contrast", "High contrast", look.ContrastMode),
		mode("darkcontrast", "High contrast, dark", look.DarkContrastMode),
		{Name: "large", Menu: "Settings", Words: "Large text", Scope: command.Anywhere, After: true, Do: g.enlarge, Checked: func() bool { return g.theme.Large }},
		{Name: "language", Menu: "Settings", Words: "Language", Scope: command.Anywhere, Sub: func() *fyne.Menu { return g.languages(asker) }},
	}
}

// paint shows every window in other colours.
func (g *group) paint(m look.Mode) {
	g.theme.Mode = m
	g.app.Preferences().SetInt(prefLook, int(m))
	g.app.Settings().SetTheme(g.theme)
	for _, w := range g.windows {
		w.Update()
		w.desk.Restyle()
	}
}

// enlarge makes the text of every window large, or as usual again.
func (g *group) enlarge() {
	g.anew(func() {
		g.theme.Large = !g.theme.Large
		g.app.Preferences().SetBool(prefLarge, g.theme.Large)
		g.app.Settings().SetTheme(g.theme)
	})
}

// speak changes the language of every window at once; what is wrong with it asker
// tells.
func (g *group) speak(code string, asker *ask.Asker) {
	l, err := language.Read(code)
	if err != nil {
		asker.Complain(err)
		return
	}
	g.app.Preferences().SetString(prefLanguage, code)
	g.anew(func() { g.speech = speech{code, l} })
}

// anew makes every window anew after a change.
func (g *group) anew(change func()) {
	for _, w := range g.windows {
		w.desk.KeepShares()
	}
	change()
	for _, w := range g.windows {
		w.rebuild()
	}
}

// languages are the menu of languages.
func (g *group) languages(asker *ask.Asker) *fyne.Menu {
	m := fyne.NewMenu("")
	speak := func(code string) { g.speak(code, asker) }
	for _, code := range language.Codes() {
		item := fyne.NewMenuItem(language.OwnName(code), func() { speak(code) })
		item.Checked = code == g.speech.code
		m.Items = append(m.Items, item)
	}
	m.Items = append(m.Items, fyne.NewMenuItemSeparator(),
		fyne.NewMenuItem(asker.Text("From a file…"), func() { asker.File([]string{".json"}, speak) }))
	return m
}

// startSize is the size that the last window had when it was closed; at first
// one that fits a screen of 1366 × 768.
func startSize(p fyne.Preferences) fyne.Size {
	return fyne.NewSize(float32(p.FloatWithFallback(prefWidth, 1240)), float32(p.FloatWithFallback(prefHeight, 690)))
}
