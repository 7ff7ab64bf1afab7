package length

import "fmt"

// Unit is what a bare number is counted in and how a length is written.
type Unit uint8

// The units a project can be written in. Inch is written as a fraction to the
// nearest 1/64; InchDecimal as a decimal number.
const (
	UnitMM Unit = iota
	UnitCM
	UnitInch
	UnitInchDecimal
)

var unitNames = [...]string{"mm", "cm", "in", "in decimal"}

// String is the unit's name in a project file.
func (u Unit) String() string {
	if int(u) < len(unitNames) {
		return unitNames[u]
	}
	return "mm"
}

// Symbol is what stands behind a figure: mm, cm or in.
func (u Unit) Symbol() string {
	switch u {
	case UnitCM:
		return "cm"
	case UnitInch, UnitInchDecimal:
		return "in"
	default:
		return "mm"
	}
}

// Inches tells that lengths are in inches, as fractions or decimals: then all else is
// in the units of that system too.
func (u Unit) Inches() bool { return u == UnitInch || u == UnitInchDecimal }

// Size is the length of one unit.
func (u Unit) Size() Length {
	switch u {
	case UnitCM:
		return Centimetre
	case UnitInch, UnitInchDecimal:
		return Inch
	default:
		return Millimetre
	}
}

// UnitNames lists the names ParseUnit takes, in order of the constants.
func UnitNames() []string { return append([]string(nil), unitNames[:]...) }

// ParseUnit reads a unit's name as String writes it.
func ParseUnit(s string) (Unit, error) {
	for i, n := range unitNames {
		if n == s {
			return Unit(i), nil
		}
	}
	return UnitMM, fmt.Errorf("%q is not a unit: write mm, cm, in or in decimal", s)
}
