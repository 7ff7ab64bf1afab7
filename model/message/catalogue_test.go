package message_test

import (
	"maps"
	"strings"
	"testing"

	"frontlay/model/length"
	"frontlay/model/message"
)

func TestReadCatalogue(t *testing.T) {
	cases := map[string]struct {
		json string
		want map[string]string
	}{
		"nothing translated":       {`{}`, map[string]string{}},
		"a text":                   {`{"saved": "gespeichert"}`, map[string]string{"saved": "gespeichert"}},
		"a byte order mark before": {"\ufeff" + `{"saved": "gespeichert"}`, map[string]string{"saved": "gespeichert"}},
		"letters outside ASCII":    {`{"size": "Maß"}`, map[string]string{"size": "Maß"}},
		"left empty":               {`{"saved": "", "%v wide": ""}`, map[string]string{}},
		"arguments in order":       {`{"%v is %v wide": "%v ist %v breit"}`, map[string]string{"%v is %v wide": "%v ist %v breit"}},
		"arguments turned":         {`{"%v before %v": "%[2]v nach %[1]v"}`, map[string]string{"%v before %v": "%[2]v nach %[1]v"}},
		"one argument twice":       {`{"%v before %v": "%[1]v vor %[2]v (%[1]v)"}`, map[string]string{"%v before %v": "%[1]v vor %[2]v (%[1]v)"}},
		"on from a number":         {`{"%v, %v, %v": "%[2]v, %v, %[1]v"}`, map[string]string{"%v, %v, %v": "%[2]v, %v, %[1]v"}},
		"a percent sign":           {`{"%v of %v": "%v zu 100 %% von %v"}`, map[string]string{"%v of %v": "%v zu 100 %% von %v"}},
		"a percent sign alone":     {`{"100 % at most": "höchstens 100 %"}`, map[string]string{"100 % at most": "höchstens 100 %"}},
		"the decimal sign":         {`{"0.5": "0,5"}`, map[string]string{"0.5": "0,5"}},
	}
	for name, c := range cases {
		t.Run(name, func(t *testing.T) {
			got, err := message.ReadCatalogue([]byte(c.json))
			if err != nil || !maps.Equal(got, c.want) {
				t.Errorf("read %v, %v; want %v", got, err, c.want)
			}
		})
	}
}

func TestReadCatalogueSaysWhatIsWrong(t *testing.T) {
	cases := map[string]struct{ json, want string }{
		"empty":                  {"", "line 1: the translations end before their last }"},
		"breaks off":             {"{\n\"a\": \"b\",\n", "line 3: the translations end before their last }"},
		"no object":              {`["a"]`, "line 1: translations are one object"},
		"a comma missing":        {"{\n\"a\": \"b\"\n\"c\": \"d\"}", "line 3: this is not JSON; look for a missing comma"},
		"a comma too many":       {"{\n\"a\": \"b\",\n}", "line 3: this is not JSON"},
		"something behind":       {"{}\n{}", "line 2: nothing may follow the last }"},
		"rubbish behind":         {"{}\n?", "line 2: nothing may follow the last }"},
		"no text":                {"{\n\"a\": 3}", "line 2: the translation of “a” is not a text in quotation marks"},
		"an object inside":       {`{"a": {"b": "c"}}`, "line 1: the translation of “a” is not a text"},
		"twice":                  {"{\"a\": \"b\",\n\"a\": \"c\"}", "line 2: “a” is translated twice"},
		"Latin-1":                {"{\n\"size\": \"Ma\xdf\"}", "line 2: this is not UTF-8"},
		"argument left out":      {`{"%v of %v": "%v"}`, "line 1: “%v of %v”: the translation leaves out argument 2 of 2"},
		"first left out":         {`{"%v of %v": "%[2]v"}`, "leaves out argument 1 of 2"},
		"one too many":           {`{"%v of": "%v %v"}`, "asks for argument 2, but there are 1"},
		"a number out of range":  {`{"%v of %v": "%v %v %[3]v"}`, "asks for argument 3, but there are 2"},
		"a huge number":          {`{"%v of %v": "%v %v %[99999999999]v"}`, "neither %v nor %[1]v"},
		"zero":                   {`{"%v": "%v %[0]v"}`, "neither %v nor %[1]v"},
		"another verb":           {`{"%v": "%d %v"}`, "neither %v nor %[1]v"},
		"a lonely percent sign":  {`{"%v": "%v %"}`, "neither %v nor %[1]v; write %% for the sign itself"},
		"a verb for nothing":     {`{"saved": "%v gespeichert"}`, "the translation has a %v, but the text has nothing to put there"},
		"a strange decimal sign": {`{"0.5": "0·5"}`, "the decimal sign is a point or a comma"},
		"too large":              {`{"a": "` + strings.Repeat("b", 1<<20) + `"}`, "larger than 1048576 bytes"},
	}
	for name, c := range cases {
		t.Run(name, func(t *testing.T) {
			got, err := message.ReadCatalogue([]byte(c.json))
			if err == nil || got != nil || !strings.Contains(err.Error(), c.want) {
				t.Errorf("read %v, %q; want %q", got, err, c.want)
			}
			if _, ok := err.(message.Message); !ok {
				t.Errorf("the error is a %T that can't be translated", err)
			}
		})
	}
}

func TestDecimalComma(t *testing.T) {
	for json, want := range map[string]bool{`{}`: false, `{"0.5": "0,5"}`: true, `{"0.5": "0.5"}`: false} {
		if all, err := message.ReadCatalogue([]byte(json)); err != nil || message.DecimalComma(all) != want {
			t.Errorf("%s: %v, %v", json, all, err)
		}
	}
}

// Whatever is read must be safe to say: package fmt marks every mistake in a
// format with %!.
func FuzzReadCatalogue(f *testing.F) {
	for _, seed := range []string{`{}`, `{"%v of %v": "%[2]v %[1]v %%"}`, `{"%v": "%[1]v%"}`, `{"a": "b", "a": "c"}`, "{\"%v%v\": \"%[2]v%[1]v%v\"}", "{\"a\": \"\xff\"}", `{"%[2]v": "%v"}`} {
		f.Add(seed)
	}
	f.Fuzz(func(t *testing.T, json string) {
		all, err := message.ReadCatalogue([]byte(json))
		if err != nil {
			return
		}
		for text, translation := range all {
			plain := strings.ReplaceAll(text, "%%", "")
			n := strings.Count(plain, "%v")
			if n == 0 || strings.Count(plain, "%") != n {
				continue // no text of ours: a percent sign that is no plain %v
			}
			args := make([]any, n)
			for i := range args {
				args[i] = length.Millimetre
			}
			if said := (message.Language{Catalogue: all}).Say(message.New(text, args...)); strings.Contains(said, "%!") {
				t.Errorf("%q as %q is said %q", text, translation, said)
			}
		}
	})
}
