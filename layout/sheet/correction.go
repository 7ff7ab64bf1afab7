package sheet

import (
	"math"

	"frontlay/layout/lettering"
	"frontlay/model/length"
	"frontlay/model/message"
)

// Correction undoes a printer's fault of scale: every coordinate of a page is
// multiplied by Across and Up about the page's middle. Both are 1 for a true
// printer; 0 counts as 1. Printer and Paper name what it was measured on. In
// Options, Across is along the paper's width as named, as the calibration page is
// measured; in a Page, along the page's own width.
type Correction struct {
	Printer string  `json:"printer"`
	Paper   string  `json:"paper"`
	Across  float64 `json:"across"`
	Up      float64 `json:"up"`
	turned  bool    // from the paper's sides to those of a page that lies turned
}

// Verdict is what to do with a measured correction.
type Verdict uint8

// The verdicts: the printer is true enough; correct it; ask the user whether the
// figures are right; refuse, because the viewer scales the page.
const (
	True Verdict = iota
	Apply
	Ask
	Refuse
)

// Limits of a correction, as parts of the whole: below a thousandth a rule does
// not tell; beyond three hundredths it is no printer's fault. Common practice,
// no source.
const (
	ignoreBelow = 0.001
	askAbove    = 0.02
	refuseAbove = 0.03
)

// Measured gives the correction for a calibration page whose bars should be
// nominal long, across and up, and were found with a rule to be measured long:
// nominal / measured, each way. The message tells what it means and how far a
// reading that is half a millimetre off goes.
func Measured(printer, paper string, nominalAcross, nominalUp, across, up length.Length) (Correction, Verdict, message.Message) {
	none := Correction{Printer: printer, Paper: paper, Across: 1, Up: 1}
	if across <= 0 || up <= 0 || nominalAcross <= 0 || nominalUp <= 0 {
		return none, Refuse, message.New("The lengths read from the rule must be above zero.")
	}
	c := none
	c.Across = float64(nominalAcross) / float64(across)
	c.Up = float64(nominalUp) / float64(up)
	offAcross, offUp := off(c.Across), off(c.Up)
	worst := max(offAcross, offUp)
	found := message.New("Across: %v. Up: %v.", found(nominalAcross, across), found(nominalUp, up))
	doubt := misread{min(nominalAcross, nominalUp)}
	switch {
	case worst < ignoreBelow:
		return none, True, message.New("The printer is true to a thousandth; nothing is corrected. %v", doubt)
	case scaledByViewer(c) || worst > refuseAbove && alike(c):
		return none, Refuse, message.New("%v That is no fault of the printer: the page was fitted to the paper. Print again at actual size (100 %%).", found)
	case worst > refuseAbove:
		return none, Refuse, message.New("%v No printer is off by so much: measure and type both bars again, or print again at actual size (100 %%).", found)
	case worst > askAbove:
		return c, Ask, message.New("%v That is much: measure again before you use it. %v", found, doubt)
	}
	if offAcross < ignoreBelow {
		c.Across = 1
	}
	if offUp < ignoreBelow {
		c.Up = 1
	}
	return c, Apply, message.New("%v Pages are corrected by %v across and %v up. %v", found, c.Across, c.Up, doubt)
}

// misread tells how far a reading goes that is a little off: half a millimetre, or
// 1/64 in.
type misread struct{ nominal length.Length }

// Say tells it in the system of the unit.
func (m misread) Say(l message.Language) string {
	if l.Unit.Inches() {
		per := round2(40 * float64(length.Inch64th) / float64(m.nominal) * 1000)
		return l.Say(message.New("A reading 1/64 in off is an error of %v thousandths of an inch on 40 in.", per))
	}
	return l.Say(message.New("A reading half a millimetre off is an error of %v mm on 1000 mm.", round2(500/m.nominal.MM())))
}

// found tells what a bar came to beside what it should be, in parts of that.
func found(nominal, measured length.Length) message.Message {
	by := percent(math.Abs(measured.MM()/nominal.MM() - 1))
	switch {
	case measured < nominal:
		return message.New("%v instead of %v, %v %% too short", measured, nominal, by)
	case measured > nominal:
		return message.New("%v instead of %v, %v %% too long", measured, nominal, by)
	}
	return message.New("%v, as it should be", measured)
}

// off is how far a print is off that a factor corrects, as a part of the length
// that it should have: as found tells it.
func off(factor float64) float64 { return math.Abs(1/factor - 1) }

// percent is a part in hundredths, as exactly as anybody cares.
func percent(part float64) float64 {
	if part >= 0.1 {
		return math.Round(part * 100)
	}
	return round2(part * 100)
}

func round2(v float64) float64 { return math.Round(v*100) / 100 }

// scaledByViewer tells that both ways shrank alike by what fitting a page to a
// printer's area does (0.91 to 0.98, measured).
func scaledByViewer(c Correction) bool {
	across := 1 / c.Across
	return alike(c) && across > 0.90 && across < 0.981
}

// alike tells that a print is as much off up as across, as a reading goes.
func alike(c Correction) bool { return math.Abs(1/c.Across-1/c.Up) < 0.003 }

// filled is the correction with 1 for what is not given.
func (c Correction) filled() Correction {
	if c.Across == 0 {
		c.Across = 1
	}
	if c.Up == 0 {
		c.Up = 1
	}
	return c
}

// None tells that nothing is corrected.
func (c Correction) None() bool { c = c.filled(); return c.Across == 1 && c.Up == 1 }

// Factors are the factors across and up, 1 where nothing is corrected.
func (c Correction) Factors() (across, up float64) {
	c = c.filled()
	return c.Across, c.Up
}

// say is what stands on every page that is printed with the correction.
func (c Correction) say() message.Message {
	c = c.filled()
	if c.turned {
		return message.New("Corrected for %v on %v, turned: %v across, %v up.", c.Printer, c.Paper, c.Across, c.Up)
	}
	return message.New("Corrected for %v on %v: %v across, %v up.", c.Printer, c.Paper, c.Across, c.Up)
}

// shortened is say in tiny letters, in a width; a long name of the printer is cut
// before the figures are.
func (c Correction) shortened(say message.Language, width length.Length) string {
	const size = lettering.Tiny
	whole := say.Say(c.say())
	tooWide := lettering.Width(whole, size, false) - width
	if tooWide <= 0 {
		return whole
	}
	if s := lettering.Shorten(c.Printer, size, false, lettering.Width(c.Printer, size, false)-tooWide); s != "" {
		c.Printer = s
		return say.Say(c.say())
	}
	return lettering.Shorten(whole, size, false, width)
}

// shrink is what is left of a page's printable width or height, so that after
// the correction nothing lies outside of it.
func shrink(lo, hi length.Length, factor float64) (length.Length, length.Length) {
	if factor <= 1 {
		return lo, hi
	}
	cut := length.Length(float64(hi-lo) * (1 - 1/factor) / 2)
	return lo + cut + 1, hi - cut - 1
}
