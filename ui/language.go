package ui

import (
	"os"
	"path/filepath"
	"strings"

	"fyne.io/fyne/v2"
	"fyne.io/fyne/v2/lang"

	"frontlay/assets"
	"frontlay/model"
	"frontlay/model/message"
	"frontlay/ui/page/start"
)

// language is what the window speaks: English where there is no catalogue.
type language struct {
	code      string // of ISO 639-1, or the path of a catalogue
	catalogue map[string]string
	comma     bool
}

// prefLanguage keeps the language that was chosen; empty: the desktop's.
const prefLanguage = "language"

// english is the code of the language that needs no catalogue.
const english = "en"

// startLanguage is the language that was chosen last, or the desktop's where the
// program has it.
func startLanguage(a fyne.App) language {
	code := a.Preferences().String(prefLanguage)
	if code == "" {
		code, _, _ = strings.Cut(string(lang.SystemLocale()), "-")
	}
	l, err := readLanguage(code)
	if err != nil {
		return language{code: english}
	}
	return l
}

// readLanguage reads the catalogue of a language that ships, or of a file.
func readLanguage(code string) (language, error) {
	if code == english {
		return language{code: english}, nil
	}
	data, ok := assets.Translation(code)
	if !ok {
		if !filepath.IsAbs(code) {
			return language{}, message.New("There is no language “%v” here.", code)
		}
		var err error
		if data, err = os.ReadFile(code); err != nil {
			return language{}, err
		}
	}
	catalogue, err := message.ReadCatalogue(data)
	if err != nil {
		return language{}, err
	}
	return language{code: code, catalogue: catalogue, comma: message.DecimalComma(catalogue)}, nil
}

// ownName is a language's name in itself.
func ownName(code string) string {
	if l, err := readLanguage(code); err == nil && l.catalogue[message.OwnName] != "" {
		return l.catalogue[message.OwnName]
	}
	return "English"
}

// languageItems are the menu of languages.
func (w *window) languageItems() *fyne.Menu {
	m := fyne.NewMenu("")
	for _, code := range append([]string{english}, assets.Languages()...) {
		item := fyne.NewMenuItem(ownName(code), func() { w.speak(code) })
		item.Checked = code == w.language.code
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
	l, err := readLanguage(code)
	if err != nil {
		w.ask.Complain(err)
		return
	}
	w.app.Preferences().SetString(prefLanguage, code)
	for _, one := range w.group.windows {
		one.desk.KeepShares()
		one.language = l
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
