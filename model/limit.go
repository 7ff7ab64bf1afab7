package model

import "frontlay/model/length"

// Limit names one of the figures that the check compares with.
type Limit uint8

// The limits, in the order of the fields of Limits.
const (
	LeastReveal Limit = iota
	GreatestReveal
	LeastOverlay
	Web
	DrillPoint
	HoleEdge
	HoleGap
	NearlyLevel
	WideFront
	BesideClear
	limitCount
)

// Known tells that there is such a limit.
func (l Limit) Known() bool { return l < limitCount }

// Of points to the field of a limit, which must be known.
func (l *Limits) Of(which Limit) **length.Length {
	return [limitCount]**length.Length{
		LeastReveal: &l.LeastReveal, GreatestReveal: &l.GreatestReveal, LeastOverlay: &l.LeastOverlay,
		Web: &l.Web, DrillPoint: &l.DrillPoint, HoleEdge: &l.HoleEdge, HoleGap: &l.HoleGap,
		NearlyLevel: &l.NearlyLevel, WideFront: &l.WideFront, BesideClear: &l.BesideClear,
	}[which]
}
