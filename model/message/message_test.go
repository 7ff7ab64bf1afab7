package message_test

import (
	"io"
	"math"
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

func TestNumber(t *testing.T) {
	comma := message.Language{Comma: true}
	for want, v := range map[string]float64{
		"0": 0, "1": 1, "-1,5": -1.5, "0,3333": 1.0 / 3, "33,33": 100.0 / 3, "1,618": 1.6180339, "12,5": 12.5, "100": 99.9999, "999,9": 999.94,
		"1000": 1000, "12346": 12345.6, "700000000": 7e8, "0,00012": 0.00012, "0,000000001": 1e-9, "NaN": math.NaN(), "+Inf": math.Inf(1),
	} {
		if got := comma.Number(v); got != want {
			t.Errorf("%v is written %q, want %q", v, got, want)
		}
	}
	if got := comma.Number(-1e-12); got != "0" {
		t.Errorf("nothing is written %q", got)
	}
	if got := (message.Language{}).Number(0.5); got != "0.5" {
		t.Errorf("a half is written %q", got)
	}
}

// The comma stands for the decimal point only: fractions, the sign for about,
// and unit symbols stay as they are.
func TestACommaInEveryUnit(t *testing.T) {
	cases := map[string]struct {
		unit   length.Unit
		length length.Length
		want   string
	}{
		"whole millimetres":         {length.UnitMM, 864 * length.Millimetre, "864 mm"},
		"half a millimetre":         {length.UnitMM, 12*length.Millimetre + length.Millimetre/2, "12,5 mm"},
		"below nought":              {length.UnitMM, -length.Millimetre / 4, "-0,25 mm"},
		"a nanometre":               {length.UnitMM, 1, "0,000001 mm"},
		"more than a metre":         {length.UnitMM, 1234567 * length.Micrometre, "1234,567 mm"},
		"centimetres":               {length.UnitCM, 125 * length.Millimetre, "12,5 cm"},
		"a fraction of an inch":     {length.UnitInch, 48 * length.Inch64th, "3/4 in"},
		"a mixed fraction":          {length.UnitInch, length.Inch + length.Inch/2, "1 1/2 in"},
		"a fraction, nearly":        {length.UnitInch, 12*length.Millimetre + length.Millimetre/2, "≈ 31/64 in"},
		"decimal inches":            {length.UnitInchDecimal, length.Inch + length.Inch/2, "1,5 in"},
		"decimal inches, not exact": {length.UnitInchDecimal, 12*length.Millimetre + length.Millimetre/2, "≈ 0,4921 in"},
	}
	for name, c := range cases {
		t.Run(name, func(t *testing.T) {
			l := message.Language{Unit: c.unit, Comma: true}
			if got := l.Length(c.length); got != c.want {
				t.Errorf("written %q, want %q", got, c.want)
			}
			// What is shown can be typed again. An inch's nearest 1/64 is not exact.
			back, err := length.Parse(l.Length(c.length), c.unit)
			if err != nil || (back-c.length).Abs() > length.Inch64th/2 {
				t.Errorf("%q is read as %v, %v", l.Length(c.length), back, err)
			}
		})
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
		"no size is given: type one, such as 320 or 12 5/8 in": "es ist kein Maß angegeben",
		"unexpected EOF":   "nie gesagt",
		"%v wrapped in %v": "%[2]v um %[1]v",
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

func TestTypedKeepsMillimetresAmongInches(t *testing.T) {
	for _, c := range []struct {
		unit length.Unit
		l    length.Length
		want string
	}{
		{length.UnitInch, 5 * length.Millimetre, "5 mm"},
		{length.UnitInch, 125 * length.Millimetre / 10, "12,5 mm"},
		{length.UnitInch, 3 * length.Inch / 16, "3/16"},
		{length.UnitInch, length.Inch / 3, "≈ 21/64"}, // a size that was worked out
		{length.UnitInchDecimal, 5 * length.Millimetre, "5 mm"},
		{length.UnitCM, 5 * length.Millimetre, "0,5"},
		{length.UnitMM, 5 * length.Millimetre, "5"},
	} {
		if got := (message.Language{Unit: c.unit, Comma: true}).Typed(c.l); got != c.want {
			t.Errorf("%v in %v is typed %q, want %q", c.l, c.unit, got, c.want)
		}
	}
}

func TestASentenceStandsAlone(t *testing.T) {
	german := map[string]string{"the drawer has %v of room": "über der Schublade sind %v Luft"}
	for _, c := range []struct {
		name  string
		l     message.Language
		m     message.Message
		wants string
	}{
		{"nothing", message.Language{}, message.Message{}, ""},
		{"a text", message.Language{}, message.New("raise the runner by %v", 5*length.Millimetre), "Raise the runner by 5 mm."},
		{"a message first", message.Language{}, message.New("%v is too wide", message.New("the bay")), "The bay is too wide."},
		{"a figure first", message.Language{}, message.New("%v is too wide", length.Metre), "1000 mm is too wide."},
		{"a sentence already", message.Language{}, message.New("Choose one."), "Choose one."},
		{"a question", message.Language{}, message.New("is it?"), "Is it?"},
		{"it goes on", message.Language{}, message.New("a, b …"), "A, b …"},
		{"a letter of two bytes", message.Language{Catalogue: german}, message.New("the drawer has %v of room", length.Millimetre), "Über der Schublade sind 1 mm Luft."},
	} {
		t.Run(c.name, func(t *testing.T) {
			if got := c.l.Sentence(c.m); got != c.wants {
				t.Errorf("%q, want %q", got, c.wants)
			}
		})
	}
}
