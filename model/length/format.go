package length

import (
	"strconv"
	"strings"
)

// Format writes l in the unit, without the unit's symbol, with a decimal
// point. Millimetres, centimetres and decimal inches are the shortest exact
// decimal. Decimal inches that are not exact in 6 places are rounded to 4 of
// them, which is 0.0025 mm, with ≈ before; fractional inches are the nearest
// 1/64 with ≈ where that is not exact. Parse reads back every exact result as
// the same length.
func (u Unit) Format(l Length) string {
	switch u {
	case UnitCM:
		return decimal(l, 7)
	case UnitInch:
		return fraction(l)
	case UnitInchDecimal:
		return decimalInch(l)
	default:
		return decimal(l, 6)
	}
}

// Exact writes a length in the unit where that loses nothing, as Format does, else in
// mm with their symbol: it reads back in the unit as the same length, so that 5 mm
// typed among inches stay 5 mm.
func (u Unit) Exact(l Length) string {
	if s := u.Format(l); !strings.HasPrefix(s, "≈") {
		return s
	}
	return UnitMM.WithSymbol(l)
}

// WithSymbol is Format followed by a space and the unit's symbol.
func (u Unit) WithSymbol(l Length) string { return u.Format(l) + " " + u.Symbol() }

// String writes the length in millimetres with its unit, shortest-exact.
func (l Length) String() string { return UnitMM.WithSymbol(l) }

// decimal writes n / 10^places without trailing zeros.
func decimal(l Length, places int) string {
	neg := l < 0
	s := strconv.FormatUint(magnitude(l), 10)
	if len(s) <= places {
		s = strings.Repeat("0", places-len(s)+1) + s
	}
	whole, frac := s[:len(s)-places], strings.TrimRight(s[len(s)-places:], "0")
	if frac != "" {
		whole += "." + frac
	}
	if neg {
		return "-" + whole
	}
	return whole
}

func magnitude(l Length) uint64 {
	if l < 0 {
		return uint64(-(l + 1)) + 1 // the least int64 has no positive twin
	}
	return uint64(l)
}

func fraction(l Length) string {
	m := magnitude(l)
	unit := uint64(Inch64th)
	n := (m + unit/2) / unit
	var b strings.Builder
	if n*unit != m {
		b.WriteString("≈ ")
	}
	if l < 0 && n > 0 {
		b.WriteByte('-')
	}
	whole, num, den := n/64, n%64, uint64(64)
	for num > 0 && num%2 == 0 {
		num, den = num/2, den/2
	}
	if whole > 0 || num == 0 {
		b.WriteString(strconv.FormatUint(whole, 10))
	}
	if num > 0 {
		if whole > 0 {
			b.WriteByte(' ')
		}
		b.WriteString(strconv.FormatUint(num, 10) + "/" + strconv.FormatUint(den, 10))
	}
	return b.String()
}

func decimalInch(l Length) string {
	m := magnitude(l)
	const exact, rounded = 6, 4
	inch := uint64(Inch)
	round := func(scale uint64) (uint64, bool) {
		whole, rest := m/inch, m%inch
		part := (rest*scale + inch/2) / inch
		return whole*scale + part, part*inch == rest*scale
	}
	n, ok := round(1_000_000)
	places := exact
	if !ok {
		n, _ = round(10_000)
		places = rounded
	}
	s := decimal(Length(n), places)
	if l < 0 && s != "0" {
		s = "-" + s
	}
	if !ok {
		s = "≈ " + s
	}
	return s
}
