// Package season works out how solid wood moves through the year: the moisture that it
// takes from the air of the room, how much fronts and gaps change between the driest and
// the dampest season, and what fixings and panels need so that nothing splits.
//
// Sizes follow ΔD = D · C · ΔM (Wood Handbook, FPL-GTR-190, Ch. 13, Eq. 13-2): D across
// the grain, C of the species and the cut (model.Species), M the moisture content in %.
// Along the grain wood does not move that anybody could measure.
package season

import "frontlay/model"

// The moisture contents in % between which Eq. 13-2 holds.
const (
	LeastMoisture    = 6
	GreatestMoisture = 14
)

// Equilibrium is the moisture content in % that wood takes in air of a relative humidity
// in % and a temperature in °C (Wood Handbook, FPL-GTR-190, Ch. 4, equation for SI units,
// from memory). Its table rounds to 6.2, 9.2, 12.0 and 16.0 at 21.1 °C and 30, 50, 65 and
// 80 %.
func Equilibrium(humidity, celsius float64) float64 {
	t, h := celsius, humidity/100
	w := 349 + 1.29*t + 0.0135*t*t
	k := 0.805 + 0.000736*t - 0.00000273*t*t
	k1 := 6.27 - 0.00938*t - 0.000303*t*t
	k2 := 1.91 + 0.0407*t - 0.000293*t*t
	kh := k * h
	return 1800 / w * (kh/(1-kh) + (k1*kh+2*k1*k2*kh*kh)/(1+k1*kh+k1*k2*kh*kh))
}

// MoistureIn is the moisture content in % of wood in an air: as measured, or else the
// equilibrium.
func MoistureIn(a model.Air) float64 {
	if a.Moisture > 0 {
		return a.Moisture
	}
	t := a.Temperature
	if t == 0 {
		t = model.UsualTemperature
	}
	return Equilibrium(a.Humidity, t)
}

// Year is the moisture content of the wood in %, through the year and when it is cut.
// Middle tells that Today is not known and taken halfway.
type Year struct {
	Driest, Dampest, Today float64
	Middle                 bool
}

// YearOf gives the moisture of wood in a room; false where the air of one of the seasons
// is not given. Whichever is drier is the driest.
func YearOf(c model.Climate) (Year, bool) {
	if !c.Driest.Given() || !c.Dampest.Given() {
		return Year{}, false
	}
	a, b := MoistureIn(c.Driest), MoistureIn(c.Dampest)
	y := Year{Driest: min(a, b), Dampest: max(a, b)}
	if c.Today.Given() {
		y.Today = MoistureIn(c.Today)
	} else {
		y.Today, y.Middle = (a+b)/2, true
	}
	return y, true
}

// Change is how much the moisture changes from the driest to the dampest the wood gets, in
// %; it may be built drier or damper than the room will ever be.
func (y Year) Change() float64 { return y.Damper() + y.Drier() }

// Damper and Drier are how far the moisture rises and falls from today, in %.
func (y Year) Damper() float64 { return max(y.Dampest-y.Today, 0) }

// Drier is how far the moisture falls from today.
func (y Year) Drier() float64 { return max(y.Today-y.Driest, 0) }

// Outside tells that moistures lie where Eq. 13-2 does not hold: what comes out is then a
// rough figure.
func (y Year) Outside() bool {
	return min(y.Driest, y.Today) < LeastMoisture || max(y.Dampest, y.Today) > GreatestMoisture
}
