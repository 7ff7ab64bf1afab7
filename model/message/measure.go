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
	kgPerPound  = 0.45359237
	m2PerSquare = 0.3048 * 0.3048
)

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
