package message_test

import (
	"io"
	"testing"

	"frontlay/model/length"
	"frontlay/model/message"
)

func TestSay(t *testing.T) {
	width := 864 * length.Millimetre
	half := 12*length.Millimetre + length.Millimetre/2
	german := message.Language{Comma: true, Catalogue: map[string]string{
		"%v is %v wide":   "%v ist %v breit",
		"%v before %v":    "%[2]v nach %[1]v",
		"the cabinet %v":  "der Schrank %v",
		"never said here": "kommt nicht vor",
	}}
	inches := message.Language{Unit: length.UnitInch}
	cases := map[string]struct {
		language message.Language
		message  message.Message
		want     string
	}{
		"nothing":                    {message.Language{}, message.Message{}, ""},
		"plain":                      {message.Language{}, message.New("saved"), "saved"},
		"a percent sign, no figures": {message.Language{}, message.New("100 % at most"), "100 % at most"},
		"a length":                   {message.Language{}, message.New("%v is %v wide", "Clay", width), "Clay is 864 mm wide"},
		"in inches":                  {inches, message.New("%v wide", 48*length.Inch64th), "3/4 in wide"},
		"in inches, not exact":       {inches, message.New("%v wide", 600*length.Millimetre), "≈ 23 5/8 in wide"},
		"translated":                 {german, message.New("%v is %v wide", "Clay", half), "Clay ist 12,5 mm breit"},
		"not translated":             {german, message.New("%v deep", half), "12,5 mm deep"},
		"turned round":               {german, message.New("%v before %v", "a", "b"), "b nach a"},
		"a message inside":           {german, message.New("%v is %v wide", message.New("the cabinet %v", "Clay"), half), "der Schrank Clay ist 12,5 mm breit"},
		"a number":                   {german, message.New("%v kg", 1.25), "1,25 kg"},
		"a long number":              {message.Language{}, message.New("%v", 1.0/3), "0.3333"},
		"a whole number":             {german, message.New("%v fronts", 12), "12 fronts"},
		"a text with points":         {german, message.New("%v", "v1.2"), "v1.2"},
	}
	for name, c := range cases {
		t.Run(name, func(t *testing.T) {
			if got := c.language.Say(c.message); got != c.want {
				t.Errorf("said %q, want %q", got, c.want)
			}
		})
	}
}

func TestAMessageIsAnErrorInEnglishMillimetres(t *testing.T) {
	var err error = message.New("%v is too wide", 18*length.Millimetre)
	if err.Error() != "18 mm is too wide" {
		t.Errorf("%v", err)
	}
	if !(message.Message{}).Empty() || message.New("x").Empty() {
		t.Error("Empty is wrong")
	}
}

type damage struct{}

func (damage) Error() string { return "broken" }

func (damage) Say(l message.Language) string { return l.Say(message.New("broken")) }

func TestErrorsAreSaidInTheLanguage(t *testing.T) {
	german := message.Language{Catalogue: map[string]string{
		"broken":             "kaputt",
		"%v is read-only":    "%v ist schreibgeschützt",
		"width: %v":          "Breite: %v",
		"%v is not a number": "%v ist keine Zahl",
		"no size is given":   "es ist kein Maß angegeben",
		"unexpected EOF":     "nie gesagt",
		"%v wrapped in %v":   "%[2]v um %[1]v",
	}}
	_, noNumber := length.Parse("wide", length.UnitMM)
	_, nothing := length.Parse(" ", length.UnitMM)
	cases := map[string]struct {
		message message.Message
		want    string
	}{
		"none":                 {message.Of(nil), ""},
		"a message":            {message.Of(message.New("%v is read-only", "a.yaml")), "a.yaml ist schreibgeschützt"},
		"a mistake":            {message.Of(noNumber), `"wide" ist keine Zahl`},
		"a mistake, no figure": {message.Of(nothing), "es ist kein Maß angegeben"},
		"a mistake inside":     {message.New("width: %v", noNumber), `Breite: "wide" ist keine Zahl`},
		"one that says itself": {message.Of(damage{}), "kaputt"},
		"one of the library's": {message.Of(io.ErrUnexpectedEOF), "unexpected EOF"},
		"one inside another":   {message.New("%v wrapped in %v", damage{}, noNumber), `"wide" ist keine Zahl um kaputt`},
	}
	for name, c := range cases {
		t.Run(name, func(t *testing.T) {
			if got := german.Say(c.message); got != c.want {
				t.Errorf("said %q, want %q", got, c.want)
			}
		})
	}
}

func TestFigureLeavesTheUnitOut(t *testing.T) {
	l := message.Language{Comma: true}
	if got := l.Figure(25*length.Millimetre + length.Millimetre/4); got != "25,25" {
		t.Errorf("the figure is %q", got)
	}
}
