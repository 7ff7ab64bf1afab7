package assets_test

import (
	"slices"
	"testing"

	"frontlay/assets"
	"frontlay/model/length"
	"frontlay/model/message"
)

func TestTranslationsAreFoundByCodeOnly(t *testing.T) {
	if got := assets.Languages(); !slices.Equal(got, []string{"de"}) {
		t.Errorf("languages: %v", got)
	}
	for _, code := range []string{"", ".", "..", "en", "de.json", "../sheets/sample-a", "translations/de"} {
		if data, ok := assets.Translation(code); ok {
			t.Errorf("%q gives translations of %d bytes", code, len(data))
		}
	}
}

func TestEveryLanguageNamesItselfAndItsDecimalSign(t *testing.T) {
	for _, code := range assets.Languages() {
		all := catalogue(t, code)
		if all[message.OwnName] == "" || all[message.DecimalSample] == "" {
			t.Errorf("%s has no translation of %q or %q", code, message.OwnName, message.DecimalSample)
		}
	}
}

func TestGermanWritesLengthsWithAComma(t *testing.T) {
	all := catalogue(t, "de")
	half := 12*length.Millimetre + length.Millimetre/2
	for unit, want := range map[length.Unit]string{
		length.UnitMM:          "12,5 mm",
		length.UnitCM:          "1,25 cm",
		length.UnitInch:        "≈ 31/64 in",
		length.UnitInchDecimal: "≈ 0,4921 in",
	} {
		german := message.Language{Unit: unit, Comma: message.DecimalComma(all), Catalogue: all}
		if got := german.Length(half); got != want {
			t.Errorf("12.5 mm is %q in German, want %q", got, want)
		}
	}
}

func catalogue(t *testing.T, code string) map[string]string {
	t.Helper()
	data, ok := assets.Translation(code)
	if !ok {
		t.Fatalf("%s is listed but not there", code)
	}
	all, err := message.ReadCatalogue(data)
	if err != nil {
		t.Fatalf("%s: %v", code, err)
	}
	return all
}
