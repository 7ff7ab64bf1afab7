package assets_test

import (
	"encoding/json"
	"flag"
	"maps"
	"os"
	"slices"
	"strings"
	"testing"
	"unicode"

	"frontlay/assets"
	"frontlay/model/message"
)

var missing = flag.String("missing", "", "write the texts that a language lacks to this file, as a catalogue to fill in")

// whole are the folders of all sources with texts for people.
var whole = []string{"model", "layout", "pdfout", "ui", "cmd", "assets"}

// Every text of a message, and of a mistake in a size, is translated into every language that
// the program ships, and nothing else is.
func TestEveryTextIsTranslated(t *testing.T) {
	f := newFinder(t, "..", whole...)
	f.sinks[sink{"model/message", "New", 0}] = true
	f.sinks[sink{"model/length", "wrong", 0}] = true
	f.stops["limitDoc"] = true // for the reference: limits can be left out, so no message tells to add one
	f.find()
	for _, place := range slices.Sorted(maps.Keys(f.lost)) {
		t.Errorf("%s: a text that can't be followed: %s; give message.New a literal, or a value that only literals reach", place, f.lost[place])
	}
	if len(f.texts) < 500 {
		t.Errorf("only %d texts are found", len(f.texts))
	}
	lacking := map[string]string{}
	for _, code := range assets.Languages() {
		all := catalogue(t, code)
		for _, text := range slices.Sorted(maps.Keys(f.texts)) {
			if all[text] == "" && hasWords(text) {
				t.Errorf("%s: no translation of %q (%s)", code, text, f.texts[text][0])
				lacking[text] = ""
			}
		}
		for _, text := range slices.Sorted(maps.Keys(all)) {
			if f.texts[text] == nil && text != message.OwnName && text != message.DecimalSample {
				t.Errorf("%s: %q is translated, but nothing says it", code, text)
			}
		}
	}
	if *missing != "" {
		data, err := json.MarshalIndent(lacking, "", " ")
		if err == nil {
			err = os.WriteFile(*missing, data, 0o644)
		}
		if err != nil {
			t.Error(err)
		}
	}
}

// hasWords tells whether a text has anything to translate.
func hasWords(text string) bool {
	return strings.ContainsFunc(strings.ReplaceAll(text, "%v", ""), unicode.IsLetter)
}

// shown are the places where texts reach a person without message.New: what
// arrives there must have been said by a Language before, or need no words.
var shown = []sink{
	{"fyne.io/fyne/v2", "NewMenu", 0},
	{"fyne.io/fyne/v2", "NewMenuItem", 0},
	{"fyne.io/fyne/v2/canvas", "NewText", 0},
	{"fyne.io/fyne/v2/dialog", "NewConfirm", 0},
	{"fyne.io/fyne/v2/dialog", "NewConfirm", 1},
	{"fyne.io/fyne/v2/dialog", "NewCustom", 0},
	{"fyne.io/fyne/v2/dialog", "NewCustom", 1},
	{"fyne.io/fyne/v2/dialog", "NewCustomWithoutButtons", 0},
	{"fyne.io/fyne/v2/dialog", "NewInformation", 0},
	{"fyne.io/fyne/v2/dialog", "NewInformation", 1},
	{"fyne.io/fyne/v2/widget", "NewButton", 0},
	{"fyne.io/fyne/v2/widget", "NewButtonWithIcon", 0},
	{"fyne.io/fyne/v2/widget", "NewCheck", 0},
	{"fyne.io/fyne/v2/widget", "NewLabel", 0},
	{"", "SetText", 0},
	{"", "SetTitle", 0},
	{"", "SetPlaceHolder", 0},
	{"", "PlaceHolder", -1},
	{"layout/sheet", "draft.text", 4},
	{"ui/field", "NewButton", 0},
	{"ui/field", "NewCheck", 0},
	{"ui/field", "NewLabel", 0},
	{"ui/field", "NewMark", 0},
	{"ui/field", "NewText", 0},
	{"ui/field", "newCaption", 0},
	{"", "Cells", -1},
	{"", "Head", -1},
	{"", "Notes", -1},
	{"", "Title", -1},
}

// untranslatable are the same in every language, or no texts for people: units,
// kinds of files, keys of a keyboard, and names that the user can change.
var untranslatable = []string{
	"English", "frontlay", "kg", "kg/m³", "m²", "mm", ".pdf", ".yaml",
	"Del", "Enter", "Esc", "F1", "F7", "F8", "F9", // named by command.Table where they are listed
	"New cabinet", "main", "new", "project",
}

// Nothing is shown in the window or written on paper that no catalogue can
// translate.
func TestNothingIsShownUntranslated(t *testing.T) {
	f := newFinder(t, "..", "layout", "ui")
	for _, s := range shown {
		f.sinks[s] = true
	}
	// What has been said is translated; names are the user's, paths those of files and figures.
	for _, name := range []string{"Say", "text", "head", "Name", "name", "path"} {
		f.stops[name] = true
	}
	f.find()
	if len(f.texts) == 0 {
		t.Error("not even a dash is found")
	}
	for _, text := range slices.Sorted(maps.Keys(f.texts)) {
		word := strings.Trim(text, " –•·,.:()*")
		if len([]rune(word)) > 1 && hasWords(text) && !slices.Contains(untranslatable, word) && !slices.Contains(untranslatable, text) {
			t.Errorf("%q is shown as it is (%s); say it with a Language", text, strings.Join(f.texts[text], ", "))
		}
	}
}
