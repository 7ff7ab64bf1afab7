package figure

import (
	"strings"

	"frontlay/model"
	"frontlay/model/message"
)

// speciesOf chooses the wood of a board.
func speciesOf(at *string) Row {
	known := (&model.Project{}).SpeciesNames()
	return Row{
		Key: "species", Name: message.New("Solid wood of"),
		Doc:   message.New("The species of a board of solid wood: the name of one of species, or %v (Wood Handbook, FPL-GTR-190, Table 13-5). Left out of boards that do not move, such as plywood. Grain that is not given runs from side to side.", strings.Join(known, ", ")),
		Value: &Text{Most: MostName, At: at},
	}
}

// Climate are the rows of the room's air through the year.
func Climate(c *model.Climate) []Row {
	return []Row{
		group("driest", "Driest", "The air when the wood is driest, such as in winter with the heating on.", Air(&c.Driest)),
		group("dampest", "Dampest", "The air when the wood is dampest, such as in late summer.", Air(&c.Dampest)),
		group("today", "Today", "The air in which the wood lies before it is cut; the middle between the two seasons where it is left out.", Air(&c.Today)),
	}
}

// Air are those of what wood takes its moisture from.
func Air(a *model.Air) []Row {
	return []Row{
		number("humidity", "Humidity", "%", "Relative humidity of the air in %.", &a.Humidity, 1, 99),
		number("temperature", "Temperature", "°C", "Temperature of the air in °C; 21 where it is left out.", &a.Temperature, 1, 60),
		number("moisture", "Wood moisture", "%", "Moisture content of the wood in %, as a meter shows it; it counts before the air.", &a.Moisture, 1, 30),
	}
}

// Species are those of a kind of wood.
func Species(s *model.Species) []Row {
	return []Row{
		line("name", "Name", "What species of a board chooses it by.", &s.Name).needed(),
		number("radial", "Change, quarter-sawn", "per 1 %", "By what part of its width a quarter-sawn board changes for 1 % of moisture content (radial), such as 0.0016.", &s.Radial, 0.00001, 0.02),
		number("tangential", "Change, flat-sawn", "per 1 %", "The same of a flat-sawn board (tangential), such as 0.0037.", &s.Tangential, 0.00001, 0.02),
	}
}
