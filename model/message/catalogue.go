package message

import (
	"bytes"
	"encoding/json"
	"errors"
	"io"
	"strconv"
	"strings"
	"unicode/utf8"
)

// Two texts that a catalogue translates although no message says them: they
// tell about the language itself.
const (
	// OwnName is the text whose translation is the language's name in the
	// language itself, such as “Deutsch”.
	OwnName = "English"
	// DecimalSample is the figure whose translation shows the decimal sign of
	// the language: “0,5” for a comma. Without it the sign is a point.
	DecimalSample = "0.5"
)

// greatestCatalogue is the size in bytes of the largest catalogue that is read;
// German is about a tenth of it.
const greatestCatalogue = 1 << 20

// ReadCatalogue reads translations from JSON: one object whose names are the
// English texts and whose values are the texts of the other language. A value
// takes the same arguments as its text, each at least once; %[n]v changes their
// order. A text whose value is empty stays English. Errors are Messages that
// name the line and the text; nothing is read from a catalogue with an error.
func ReadCatalogue(data []byte) (map[string]string, error) {
	if len(data) > greatestCatalogue {
		return nil, New("the translations are larger than %v bytes; check that it is the right file", greatestCatalogue)
	}
	data = bytes.TrimPrefix(data, []byte("\ufeff"))
	if at := notText(data); at >= 0 {
		return nil, New("line %v: this is not UTF-8; save the file in that encoding", lineAt(data, at))
	}
	r := catalogueReader{data: data, Decoder: json.NewDecoder(bytes.NewReader(data))}
	if t, err := r.Token(); err != nil {
		return nil, r.broken(err)
	} else if t != json.Delim('{') {
		return nil, New("line %v: translations are one object, {\"English text\": \"other text\", …}", r.line())
	}
	all := map[string]string{}
	for r.More() {
		text, translation, err := r.pair()
		if err != nil {
			return nil, err
		}
		if _, twice := all[text]; twice {
			return nil, New("line %v: “%v” is translated twice; remove one of the two", r.line(), text)
		}
		if why := disagreement(text, translation); !why.Empty() {
			return nil, New("line %v: “%v”: %v", r.line(), text, why)
		}
		all[text] = translation
	}
	if _, err := r.Token(); err != nil {
		return nil, r.broken(err)
	}
	if _, err := r.Token(); err != io.EOF {
		return nil, New("line %v: nothing may follow the last }", r.line())
	}
	for text, translation := range all {
		if translation == "" {
			delete(all, text)
		}
	}
	return all, nil
}

// DecimalComma tells whether the language of a catalogue writes a comma before
// the tenths.
func DecimalComma(catalogue map[string]string) bool { return catalogue[DecimalSample] == "0,5" }

type catalogueReader struct {
	*json.Decoder
	data []byte
}

// pair reads one text and its translation.
func (r *catalogueReader) pair() (text, translation string, err error) {
	t, err := r.Token()
	if err != nil {
		return "", "", r.broken(err)
	}
	text, _ = t.(string) // an object's names are strings, or Token gives an error
	if t, err = r.Token(); err != nil {
		return "", "", r.broken(err)
	}
	translation, ok := t.(string)
	if !ok {
		return "", "", New("line %v: the translation of “%v” is not a text in quotation marks", r.line(), text)
	}
	return text, translation, nil
}

func (r *catalogueReader) line() int { return lineAt(r.data, int(r.InputOffset())) }

// broken says in which line the JSON breaks off, in our own words for what
// happens most.
func (r *catalogueReader) broken(err error) error {
	var syntax *json.SyntaxError
	switch {
	case err == io.EOF || err == io.ErrUnexpectedEOF:
		return New("line %v: the translations end before their last }", lineAt(r.data, len(r.data)))
	case errors.As(err, &syntax):
		return New("line %v: this is not JSON; look for a missing comma or quotation mark here or in the line above (%v)",
			lineAt(r.data, int(syntax.Offset)), err.Error())
	}
	return New("line %v: this is not JSON (%v)", r.line(), err.Error())
}

// notText finds the first byte that is not UTF-8, or -1.
func notText(data []byte) int {
	for at := 0; at < len(data); {
		r, size := utf8.DecodeRune(data[at:])
		if r == utf8.RuneError && size == 1 {
			return at
		}
		at += size
	}
	return -1
}

func lineAt(data []byte, at int) int {
	return 1 + strings.Count(string(data[:min(max(at, 0), len(data))]), "\n")
}

// disagreement says why a translation can't stand for a text, or nothing. An
// empty translation agrees with every text.
func disagreement(text, translation string) Message {
	if translation == "" {
		return Message{}
	}
	if text == DecimalSample && translation != "0,5" && translation != DecimalSample {
		return New("the decimal sign is a point or a comma, so write 0.5 or 0,5")
	}
	wanted, _ := arguments(text)
	used, stray := arguments(translation)
	if wanted == nil {
		// A text without arguments is never formatted: only a verb is wrong.
		if used != nil {
			return New("the translation has a %v, but the text has nothing to put there", "%v")
		}
		return Message{}
	}
	if stray >= 0 {
		return New("the translation has a percent sign that is neither %v nor %v; write %v for the sign itself", "%v", "%[1]v", "%%")
	}
	for n := range wanted {
		if !used[n] {
			return New("the translation leaves out argument %v of %v", n, len(wanted))
		}
	}
	for n := range used {
		if !wanted[n] {
			return New("the translation asks for argument %v, but there are %v", n, len(wanted))
		}
	}
	return Message{}
}

// arguments lists the numbers, from 1, of the arguments that a format asks for,
// counting as package fmt does: %[n]v takes the n-th, %v the one after the last
// taken. It also gives the place of the first percent sign that is part of no
// verb and no %%, or -1. The set is nil where nothing is asked for.
func arguments(format string) (asked map[int]bool, stray int) {
	stray = -1
	next := 1
	for i := 0; i < len(format); i++ {
		if format[i] != '%' {
			continue
		}
		number, size := verbAt(format[i:])
		switch {
		case size == 0 && stray < 0:
			stray = i
		case size == 2 && format[i+1] == '%':
			i++
		case size > 0:
			if number > 0 {
				next = number
			}
			if asked == nil {
				asked = map[int]bool{}
			}
			asked[next] = true
			next++
			i += size - 1
		}
	}
	return asked, stray
}

// verbAt reads the %v, %[n]v or %% at the start of s: the number in it, or 0,
// and its length in bytes, 0 where it is none of them.
func verbAt(s string) (number, size int) {
	switch {
	case len(s) >= 2 && (s[1] == 'v' || s[1] == '%'):
		return 0, 2
	case len(s) < 5 || s[1] != '[':
		return 0, 0
	}
	end := 2
	for end < len(s) && end < 5 && s[end] >= '0' && s[end] <= '9' {
		end++
	}
	number, err := strconv.Atoi(s[2:end])
	if err != nil || number < 1 || end+1 >= len(s) || s[end] != ']' || s[end+1] != 'v' {
		return 0, 0
	}
	return number, end + 2
}
