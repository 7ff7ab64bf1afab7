package lettering

import (
	"strings"
	"testing"

	"frontlay/model/length"

	"pgregory.net/rapid"
)

func TestWrapKeepsWidthAndWords(t *testing.T) {
	rapid.Check(t, func(t *rapid.T) {
		words := rapid.SliceOf(rapid.StringMatching(`[a-zA-Z0-9äöü.,]{1,14}`)).Draw(t, "words")
		width := length.MM(rapid.Int64Range(12, 120).Draw(t, "width"))
		lines := Wrap(strings.Join(words, " "), Small, false, width)
		for _, l := range lines {
			if w := Width(l, Small, false); w > width {
				t.Fatalf("line %q is %v wide; the room is %v", l, w, width)
			}
		}
		squeeze := func(s string) string { return strings.NewReplacer(" ", "", "\u00a0", "").Replace(s) }
		if got, want := squeeze(strings.Join(lines, "")), squeeze(strings.Join(words, "")); got != want {
			t.Fatalf("letters were lost: %q became %q", want, got)
		}
	})
}

func TestWrapKeepsFigureAndUnitTogether(t *testing.T) {
	lines := Wrap("the front is 861 mm wide", Small, false, Width("the front is 861", Small, false)+length.Millimetre)
	if len(lines) != 2 || lines[0] != "the front is" {
		t.Errorf("got %q; want the figure on the line of its unit", lines)
	}
}

func TestWrapKeepsFiguresInBracketsTogether(t *testing.T) {
	const figure = "(≈ 1 25/64 in)"
	if lines := Wrap("10 mm "+figure, Small, false, Width(figure, Small, false)+length.Millimetre); len(lines) != 2 || lines[1] != "(≈\u00a01\u00a025/64\u00a0in)" {
		t.Errorf("got %q; want the figure in brackets on a line of its own", lines)
	}
}

// A figure of two that are too wide for a line is not cut inside its digits.
func TestWrapPartsFiguresBetweenThem(t *testing.T) {
	const across, up = "≈\u00a033.8976\u00a0×", "≈\u00a011.3386\u00a0in"
	for _, room := range []string{across, across + "\u00a0≈", across + "\u00a0≈\u00a011.33"} {
		lines := Wrap(across+"\u00a0"+up, Small, false, Width(room, Small, false)+length.Millimetre)
		if len(lines) != 2 || lines[0] != across || lines[1] != up {
			t.Errorf("got %q; want the second figure whole on the second line", lines)
		}
	}
	if lines := Wrap(up, Small, false, Width("≈\u00a011.3386", Small, false)+length.Millimetre/2); len(lines) != 2 || lines[1] != "in" {
		t.Errorf("got %q; want the digits on one line", lines)
	}
}

func TestWrapNeverIsEmpty(t *testing.T) {
	for _, s := range []string{"", " ", "\n"} {
		if len(Wrap(s, Small, false, length.Millimetre)) == 0 {
			t.Errorf("%q gives no line", s)
		}
	}
}

func TestShortenFits(t *testing.T) {
	rapid.Check(t, func(t *rapid.T) {
		s := rapid.StringMatching(`[a-zA-Z ]{0,40}`).Draw(t, "text")
		width := length.MM(rapid.Int64Range(0, 100).Draw(t, "width"))
		if got := Shorten(s, Medium, true, width); Width(got, Medium, true) > width {
			t.Fatalf("%q is wider than %v", got, width)
		}
	})
}

func TestWrapKeepsFractionsTogether(t *testing.T) {
	want := "≈\u00a08\u00a017/64\u00a0in"
	lines := Wrap("holes ≈ 8 17/64 in up", Small, false, Width("holes "+want, Small, false)-length.Millimetre)
	if len(lines) != 2 || lines[1] != want+" up" {
		t.Errorf("got %q; want the whole figure on the second line", lines)
	}
}
