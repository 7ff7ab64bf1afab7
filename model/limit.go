package model

import (
	"frontlay/model/length"
	"frontlay/model/message"
)

// Limit is a length that a rule of the check compares with and that a project
// can set, from Least to Greatest. Usual holds where the project sets none; where
// that is not one figure, Unset says it in words.
type Limit struct {
	Key      string          // its name in a project file
	Title    message.Message // what it bounds, to be read after a colon
	Usual    length.Length
	Unset    message.Message
	Least    length.Length
	Greatest length.Length
	NotAbove string // key of a limit that this one must not be above, where a project sets both
	NotBelow string // key of one that it must not be below
}

// In is what holds in a project.
func (l Limit) In(p *Project) length.Length {
	if v, set := p.Checks.Limits[l.Key]; set {
		return v
	}
	return l.Usual
}
