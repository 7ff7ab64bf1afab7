package model

import "frontlay/model/length"

// AsBuilt are the gaps measured around a front when it is hung, its connectors in the middle
// of their way: under and over it at its left and right end, beside it at the bottom and the
// top; nil where one was not measured. Below zero is how far the front reaches past what it is
// set against.
type AsBuilt struct {
	Left, Right, Below, Above GapEnds
}

// GapEnds are the sizes of one gap at its ends: at the bottom and the top of a gap beside a
// front, at the left and the right of one under or over it.
type GapEnds struct{ First, Second *length.Length }

func (a *AsBuilt) clone() *AsBuilt {
	if a == nil {
		return nil
	}
	c := *a
	for _, e := range []*GapEnds{&c.Left, &c.Right, &c.Below, &c.Above} {
		e.First, e.Second = copied(e.First), copied(e.Second)
	}
	return &c
}

// copied is a copy of a length that may be left out.
func copied(l *length.Length) *length.Length {
	if l == nil {
		return nil
	}
	v := *l
	return &v
}
