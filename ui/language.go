package ui

import (
	"strings"

	"fyne.io/fyne/v2"
	"fyne.io/fyne/v2/lang"

	"frontlay/assets/language"
	"frontlay/model"
	"frontlay/model/message"
	"frontlay/ui/page/start"
)

// speech is what the window speaks: English where there is no catalogue.
type speech struct {
	code     string // of ISO 639-1, or the path of a catalogue
	language message.Language
}

// prefLanguage keeps the language that was chosen; empty: the desktop's.
const prefLanguage = "language"

// firstSpeech is the language that was chosen last, or the desktop's where the
// program has it.
func firstSpeech(a fyne.App) speech {
	code := a.Preferences().String(prefLanguage)
	if code == "" {
		code, _, _ = strings.Cut(string(lang.SystemLocale()), "-")
	}
	l, err := language.Read(code)
	if err != nil {
		return speech{code: language.English}
	}
	return speech{code, l}
}

// languageItems are the menu of languages.
func (w *window) languageItems() *fyne.Menu {
	m := fyne.NewMenu("")
	for _, code := range language.Codes() {
		item := fyne.NewMenuItem(language.OwnName(code), func() { w.speak(code) })
		item.Checked = code == w.speech.code
		m.Items = append(m.Items, item)
	}
	m.Items = append(m.Items, fyne.NewMenuItemSeparator(), fyne.NewMenuItem(w.text("From a file…"), w.languageFile))
	return m
}

// languageFile asks for a catalogue.
func (w *window) languageFile() {
	w.ask.File([]string{".json"}, w.speak)
}

// speak changes the language of every window at once.
func (w *window) speak(code string) {
	l, err := language.Read(code)
	if err != nil {
		w.ask.Complain(err)
		return
	}
	w.app.Preferences().SetString(prefLanguage, code)
	for _, one := range w.group.windows {
		one.desk.KeepShares()
		one.speech = speech{code, l}
		one.rebuild()
	}
}

// rebuild makes every widget anew, for another language or size of letters. A
// page over the drawing that can't be made anew goes back to the drawing.
func (w *window) rebuild() {
	w.desk.Inspector.Take()
	var figures *model.Project // of a new cabinet
	if b, ok := w.page.(*start.Page); ok {
		b.Take()
		figures = b.Session.Committed()
	}
	picture, through, over := w.desk.Screen.Picture(), w.desk.Screen.SeeThrough(), w.page != nil
	sheets := w.sheets()
	w.session.Forget()
	w.build()
	w.desk.Inspector.Begin()
	w.watch()
	w.desk.Screen.ShowPicture(picture)
	w.desk.Screen.SetSeeThrough(through)
	switch {
	case sheets != nil:
		sheets.again()
	case figures != nil, over && !w.opened:
		w.startFrom(figures)
	default:
		w.page = nil
		w.front.Hide()
		w.desk.Object.Show()
	}
	w.Update()
}
