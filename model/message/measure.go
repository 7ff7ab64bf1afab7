package message

import (
	"math"
	"strconv"

	"frontlay/model/length"
)

// Bare is a length that is said without its unit, as the figures of dimensions are.
type Bare length.Length

// Say writes the length without its unit.
func (b Bare) Say(l Language) string { return l.Figure(length.Length(b)) }

// What a pound and a square foot are: exact by definition (NIST Special Publication
// 811, appendix B.8: 1 lb = 0.453 592 37 kg, 1 ft = 0.3048 m).
const (
	kgPerPound     = 0.45359237
	m2PerSquare    = 0.3048 * 0.3048
	newtonPerPound = 4.4482216152605 // force; of a foot-pound, 0.3048 m of it
)

// Newtons is a force in N. It is said in lbf where lengths are said in inches.
type Newtons float64

// Say writes the force with its unit, to a hundredth of it that counts: nobody measures
// closer what holds a screw.
func (n Newtons) Say(l Language) string {
	if l.Unit.Inches() {
		return l.coarse(float64(n)/newtonPerPound) + " lbf"
	}
	return l.coarse(float64(n)) + " N"
}

// NewtonMetres is a moment in N·m. It is said in lbf·ft where lengths are said in inches.
type NewtonMetres float64

// Say writes the moment with its unit.
func (n NewtonMetres) Say(l Language) string { return n.Figure(l) + " " + l.MomentUnit() }

// Figure writes it without.
func (n NewtonMetres) Figure(l Language) string {
	v := float64(n)
	if l.Unit.Inches() {
		v /= newtonPerPound * 0.3048
	}
	return l.decimal(strconv.FormatFloat(v, 'f', 1, 64))
}

// MomentUnit is the unit of moments.
func (l Language) MomentUnit() string {
	if l.Unit.Inches() {
		return "lbf·ft"
	}
	return "N·m"
}

// coarse writes a figure rounded up to two digits that count.
func (l Language) coarse(v float64) string {
	step := 1.0
	for v >= 100*step {
		step *= 10
	}
	return l.Number(math.Ceil(v/step-1e-9) * step)
}

// Kilograms is a weight in kg. It is said in lb where lengths are said in inches.
type Kilograms float64

// Say writes the weight with its unit, to four digits that count.
func (k Kilograms) Say(l Language) string {
	v, unit := k.in(l)
	return l.Number(v) + " " + unit
}

// Rounded is the weight to a tenth of its unit, as one lifts it.
func (k Kilograms) Rounded(l Language) string {
	v, unit := k.in(l)
	return l.Number(math.Round(v*10)/10) + " " + unit
}

// RoundedUp is the weight to a tenth of its unit, no less than it is.
func (k Kilograms) RoundedUp(l Language) string {
	v, unit := k.in(l)
	return l.Number(math.Ceil(v*10-1e-6)/10) + " " + unit
}

// RoundedDown says the weight with its unit in tenths of it, rounded down.
func (k Kilograms) RoundedDown(l Language) string {
	v, unit := k.in(l)
	return l.Number(math.Floor(v*10+1e-6)/10) + " " + unit
}

// Figure writes the weight without its unit, to so many decimals.
func (k Kilograms) Figure(l Language, decimals int) string {
	v, _ := k.in(l)
	return l.decimal(strconv.FormatFloat(v, 'f', decimals, 64))
}

// WeightUnit is the unit of weights: kg, or lb where lengths are said in inches.
func (l Language) WeightUnit() string {
	_, unit := Kilograms(0).in(l)
	return unit
}

func (k Kilograms) in(l Language) (v float64, unit string) {
	if l.Unit.Inches() {
		return float64(k) / kgPerPound, "lb"
	}
	return float64(k), "kg"
}

// SquareMetres is an area in m². It is said in ft² where lengths are said in inches.
type SquareMetres float64

// Figure writes the area without its unit, to so many decimals.
func (a SquareMetres) Figure(l Language, decimals int) string {
	v, _ := a.in(l)
	return l.decimal(strconv.FormatFloat(v, 'f', decimals, 64))
}

// AreaUnit is the unit of areas: m², or ft² where lengths are said in inches.
func (l Language) AreaUnit() string {
	_, unit := SquareMetres(0).in(l)
	return unit
}

func (a SquareMetres) in(l Language) (v float64, unit string) {
	if l.Unit.Inches() {
		return float64(a) / m2PerSquare, "ft²"
	}
	return float64(a), "m²"
}
