package sheet

import (
	"frontlay/layout/sheet/lettering"
	"frontlay/model/length"
	"frontlay/model/message"
)

// Correction undoes a printer's fault of scale: every coordinate of a page is
// multiplied by Across and Up about the page's middle. Both are 1 for a true
// printer; 0 counts as 1. Printer and Paper name what it was measured on.
type Correction struct {
	Printer string  `json:"printer"`
	Paper   string  `json:"paper"`
	Across  float64 `json:"across"`
	Up      float64 `json:"up"`
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
	doubt := message.New("A reading half a millimetre off is an error of %v mm on 1000 mm.", round2(500/min(nominalAcross.MM(), nominalUp.MM())))
	switch {
	case worst < ignoreBelow:
		return none, True, message.New("The printer is true to a thousandth; nothing is corrected. %v", doubt)
	case worst > refuseAbove || scaledByViewer(c):
		return none, Refuse, message.New("The print is off by %v %% across and %v %% up. That is no fault of the printer: the viewer fits the page to the paper. Print again at actual size (100 %%).", round2(offAcross*100), round2(offUp*100))
	case worst > askAbove:
		return c, Ask, message.New("The print is off by %v %% across and %v %% up, which is much. Measure again before you use it. %v", round2(offAcross*100), round2(offUp*100), doubt)
	}
	if offAcross < ignoreBelow {
		c.Across = 1
	}
	if offUp < ignoreBelow {
		c.Up = 1
	}
	return c, Apply, message.New("Pages are corrected by %v across and %v up. %v", c.Across, c.Up, doubt)
}

func off(factor float64) float64 { return max(factor-1, 1/factor-1) }

func round2(v float64) float64 { return float64(int64(v*100+0.5)) / 100 }

// scaledByViewer tells that both ways shrank alike by what fitting a page to a
// printer's area does (0.91 to 0.98, measured).
func scaledByViewer(c Correction) bool {
	across, up := 1/c.Across, 1/c.Up
	near := across-up < 0.003 && up-across < 0.003
	return near && across > 0.90 && across < 0.981
}

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
	return message.New("Corrected for %v on %v: %v across, %v up.", c.Printer, c.Paper, c.Across, c.Up)
}

// within is say in tiny letters, in a width; a long name of the printer is cut
// before the figures are.
func (c Correction) within(say message.Language, width length.Length) string {
	const size = lettering.Tiny
	whole := say.Say(c.say())
	over := lettering.Width(whole, size, false) - width
	if over <= 0 {
		return whole
	}
	if s := lettering.Shorten(c.Printer, size, false, lettering.Width(c.Printer, size, false)-over); s != "" {
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
