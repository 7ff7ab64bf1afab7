package message

import "strconv"

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
