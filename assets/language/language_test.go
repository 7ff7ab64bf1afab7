package language_test

import (
	"os"
	"path/filepath"
	"slices"
	"strings"
	"testing"

	"frontlay/assets/language"
	"frontlay/model/message"
)

// Every language that ships can be read and names itself; the first is English.
func TestLanguagesThatShip(t *testing.T) {
	codes := language.Codes()
	if codes[0] != language.English || !slices.Contains(codes, "de") {
		t.Fatalf("there are %v", codes)
	}
	for _, code := range codes {
		if _, err := language.Read(code); err != nil {
			t.Errorf("%s: %v", code, err)
		}
	}
	if en, de := language.OwnName("en"), language.OwnName("de"); en != "English" || de != "Deutsch" {
		t.Errorf("they call themselves %q and %q", en, de)
	}
	l, err := language.Read("de")
	if err != nil || !l.Comma {
		t.Errorf("German has no decimal comma: %v", err)
	}
}

// A file is a language too; one with a fault is told with its line, and a code
// that is none with those that are.
func TestLanguagesInFiles(t *testing.T) {
	path := filepath.Join(t.TempDir(), "own.json")
	write := func(text string) {
		t.Helper()
		if err := os.WriteFile(path, []byte(text), 0o600); err != nil {
			t.Fatal(err)
		}
	}
	write(`{"Save": "Keep"}`)
	l, err := language.Read(path)
	if got := l.Say(message.New("Save")); err != nil || got != "Keep" {
		t.Errorf("the file says %q, %v", got, err)
	}
	write("{\n\"Save\": 3}")
	if _, err := language.Read(path); err == nil || !strings.Contains(err.Error(), path+": line 2") {
		t.Errorf("the fault is told as %v", err)
	}
	if _, err := language.Read("xx"); err == nil || !strings.Contains(err.Error(), "en, de") {
		t.Errorf("a language that is none is told as %v", err)
	}
}
