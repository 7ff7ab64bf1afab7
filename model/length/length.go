// Package length holds exact lengths. It is the lowest package of frontlay and
// imports nothing of it.
package length

// Length is a distance as a whole count of nanometres, so that millimetres,
// tenths of them and 1/64 inch are all exact and reveals plus fronts add up to
// an opening to the last unit. 1/128 inch is not exact. The range of an int64
// is ±9.2 million metres; a product of two lengths overflows above
// 3.037 m × 3.037 m, so areas are float64 (see AreaM2).
type Length int64

// Units of length. 1 in = 25.4 mm exactly (international yard and pound
// agreement of 1959; NIST SP 811 Appendix B), so 1/64 in = 396,875 nm.
const (
	Nanometre  Length = 1
	Micrometre Length = 1000
	Millimetre Length = 1000 * Micrometre
	Centimetre Length = 10 * Millimetre
	Metre      Length = 1000 * Millimetre
	Inch       Length = 25_400_000
	Inch64th   Length = 396_875
)

// MM gives a whole number of millimetres.
func MM(whole int64) Length { return Length(whole) * Millimetre }

// FromMM gives the length nearest to a float count of millimetres, half away
// from zero. It is for values that are floats already (pointer positions,
// shares); NaN, infinities and values beyond ±1000 km give 0.
func FromMM(mm float64) Length {
	if !(mm > -1e9 && mm < 1e9) {
		return 0
	}
	nm := mm * 1e6
	if nm < 0 {
		return Length(nm - 0.5)
	}
	return Length(nm + 0.5)
}

// MM is the length in millimetres as a float, for renderers and statistics.
func (l Length) MM() float64 { return float64(l) / 1e6 }

// Abs is the length without its sign.
func (l Length) Abs() Length {
	if l < 0 {
		return -l
	}
	return l
}

// RoundTo gives the multiple of step nearest to l, half away from zero. A step
// of zero or less gives l itself.
func (l Length) RoundTo(step Length) Length {
	if step <= 0 {
		return l
	}
	if l < 0 {
		return -(-l).RoundTo(step)
	}
	return (l + step/2) / step * step
}

// FloorTo gives the greatest multiple of step that is not above l. A step of
// zero or less gives l itself.
func (l Length) FloorTo(step Length) Length {
	if step <= 0 {
		return l
	}
	q := l / step
	if l%step < 0 {
		q--
	}
	return q * step
}

// CeilTo gives the least multiple of step that is not below l. A step of zero
// or less gives l itself.
func (l Length) CeilTo(step Length) Length { return -(-l).FloorTo(step) }

// AreaM2 is the area of a rectangle in square metres, as a float.
func AreaM2(a, b Length) float64 { return a.MM() * b.MM() / 1e6 }

// VolumeM3 is the volume of a board in m³.
func VolumeM3(a, b, thick Length) float64 { return AreaM2(a, b) * thick.MM() / 1000 }
