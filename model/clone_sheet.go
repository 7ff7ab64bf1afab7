package model

import "slices"

// Clone is a deep copy, to be changed before it takes the place of s.
func (s *HardwareSheet) Clone() *HardwareSheet {
	c := *s
	c.Runner.Lengths = slices.Clone(s.Runner.Lengths)
	for i := range c.Runner.Lengths {
		c.Runner.Lengths[i] = c.Runner.Lengths[i].Clone()
	}
	c.Drawers = slices.Clone(s.Drawers)
	for i := range c.Drawers {
		c.Drawers[i] = c.Drawers[i].Clone()
	}
	c.Stabiliser.Holes = slices.Clone(s.Stabiliser.Holes)
	return &c
}

// Clone is a deep copy.
func (l RunnerLength) Clone() RunnerLength {
	l.Screws = slices.Clone(l.Screws)
	return l
}

// Clone is a deep copy.
func (d DrawerHeight) Clone() DrawerHeight {
	d.Holes = slices.Clone(d.Holes)
	d.RailHoles = slices.Clone(d.RailHoles)
	d.More = slices.Clone(d.More)
	return d
}
