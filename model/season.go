package model

import (
	"slices"

	"frontlay/model/length"
	"frontlay/model/message"
)

// Species is a kind of wood. Radial and Tangential are its coefficients of change: by
// what part of itself a size across the grain changes for 1 % of moisture content, along
// the rays of the tree and along its year rings.
type Species struct {
	Name               string
	Radial, Tangential float64
}

// Handbook are the coefficients of the Wood Handbook, FPL-GTR-190, Table 13-5.
func Handbook() []Species {
	of := func(name message.Message, radial, tangential float64) Species {
		return Species{name.Text, radial, tangential}
	}
	return []Species{
		of(message.New("white oak"), 0.00180, 0.00365),
		of(message.New("red oak"), 0.00158, 0.00369),
		of(message.New("American beech"), 0.00190, 0.00431),
		of(message.New("sugar maple"), 0.00165, 0.00353),
		of(message.New("red maple"), 0.00137, 0.00289),
		of(message.New("white ash"), 0.00169, 0.00274),
		of(message.New("black cherry"), 0.00126, 0.00248),
		of(message.New("black walnut"), 0.00190, 0.00274),
		of(message.New("yellow birch"), 0.00256, 0.00338),
	}
}

// SpeciesSay names a species to people: those of the Handbook in their language, others as the
// project does.
func SpeciesSay(name string) message.Message {
	if slices.ContainsFunc(Handbook(), func(s Species) bool { return s.Name == name }) {
		return message.Message{Text: name}
	}
	return message.New("%v", name)
}

// Say names the species to people.
func (s *Species) Say() message.Message { return SpeciesSay(s.Name) }

// SpeciesNames are the names that a board's species can have: those of the project, then
// those of the Handbook.
func (p *Project) SpeciesNames() []string {
	var names []string
	own := map[string]bool{}
	for _, s := range p.Species {
		names, own[s.Name] = append(names, s.Name), true
	}
	for _, s := range Handbook() {
		if !own[s.Name] {
			names = append(names, s.Name)
		}
	}
	return names
}

// SpeciesOf gives the species of a board, the project's own before that of the Handbook;
// false where the board is not of solid wood, or of a species that neither has.
func (p *Project) SpeciesOf(b *Board) (Species, bool) {
	if b.Species == "" {
		return Species{}, false
	}
	for _, s := range append(p.Species[:len(p.Species):len(p.Species)], Handbook()...) {
		if s.Name == b.Species {
			return s, true
		}
	}
	return Species{}, false
}

// Sawn tells how boards were cut from the log, which decides how they move in their width.
type Sawn uint8

// The cuts: year rings along the width, which then moves by the tangential coefficient;
// or across it, by the radial one.
const (
	FlatSawn Sawn = iota
	QuarterSawn
)

// Across is the coefficient of a board's width.
func (s *Species) Across(cut Sawn) float64 {
	if cut == QuarterSawn {
		return s.Radial
	}
	return s.Tangential
}

// Climate is the air of the room in which the furniture will stand, in the driest and the
// dampest season, and where it is built. Zero airs are not given.
type Climate struct{ Driest, Dampest, Today Air }

// Air is what wood takes its moisture from: relative humidity in %, temperature in °C (0:
// UsualTemperature); or Moisture, the wood's moisture content in %, measured, which counts
// before them. 0: not given.
type Air struct{ Humidity, Temperature, Moisture float64 }

// Given tells that the air is known.
func (a Air) Given() bool { return a.Humidity > 0 || a.Moisture > 0 }

// UsualTemperature is that of a room where none is given, in °C (common practice, no source).
const UsualTemperature = 21

// UsualHandleScrew is the diameter of a handle's screws (common practice, no source).
const UsualHandleScrew = 4 * length.Millimetre
