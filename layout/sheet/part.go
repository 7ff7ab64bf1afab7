package sheet

import "frontlay/model/message"

// Part is one kind of page that can be chosen.
type Part string

// The parts of a job's paper, in the order they are printed.
const (
	Cover           Part = "cover"     // picture and contents
	Elevation       Part = "elevation" // the run to scale with dimensions
	Sections        Part = "sections"  // upright sections through each bay
	DrawerPlans     Part = "drawers"   // drawers from above
	RearFaces       Part = "rear"      // rear faces with their holes
	JigSettings     Part = "jig"       // jig settings, fewest resets first
	DrillList       Part = "drill"     // every hole, from the edges
	CutList         Part = "cut"       // boards to cut
	HardwareList    Part = "hardware"  // what to order
	Figures         Part = "figures"   // how every figure came about
	Findings        Part = "findings"  // what the check found
	Cautions        Part = "cautions"  // before you cut, drill and hang
	CornerTemplates Part = "corner"    // templates 1:1 of the holes near each side edge
	WholeTemplates  Part = "whole"     // templates 1:1 of whole fronts, tiled
	RunnerTemplates Part = "runners"   // templates 1:1 of runner screws, laid on pencil lines
	SideTemplates   Part = "sides"     // templates 1:1 of whole carcass sides with their runner screws
	HandleTemplates Part = "handles"   // templates 1:1 of handle holes, on the face
)

// CalibrationPage is the kind of the page that measures a printer; it is not a
// part of a job.
const CalibrationPage Part = "calibration"

// parts names every part in the order they are printed.
func parts() []struct {
	part     Part
	title    message.Message
	template bool
} {
	return []struct {
		part     Part
		title    message.Message
		template bool
	}{
		{Cover, message.New("Cover and contents"), false},
		{Elevation, message.New("Elevation"), false},
		{Sections, message.New("Sections"), false},
		{DrawerPlans, message.New("Plans of drawers"), false},
		{RearFaces, message.New("Rear faces"), false},
		{JigSettings, message.New("Jig settings"), false},
		{DrillList, message.New("Drill list"), false},
		{CutList, message.New("Cut list"), false},
		{HardwareList, message.New("Hardware list"), false},
		{Figures, message.New("How the figures came about"), false},
		{Findings, message.New("Findings"), false},
		{Cautions, message.New("Cautions"), false},
		{CornerTemplates, message.New("Corner templates"), true},
		{WholeTemplates, message.New("Whole-front templates"), true},
		{RunnerTemplates, message.New("Runner templates"), true},
		{SideTemplates, message.New("Carcass side templates"), true},
		{HandleTemplates, message.New("Handle templates"), true},
	}
}

// Parts lists every part in the order they are printed.
func Parts() []Part {
	var all []Part
	for _, p := range parts() {
		all = append(all, p.part)
	}
	return all
}

// BookletParts are the drawings and lists, in order: everything but templates.
func BookletParts() []Part {
	var all []Part
	for _, p := range parts() {
		if !p.template {
			all = append(all, p.part)
		}
	}
	return all
}

// Title is the part's name for a person.
func (p Part) Title() message.Message {
	for _, q := range parts() {
		if q.part == p {
			return q.title
		}
	}
	return message.New("%v", string(p))
}

// Template tells that the part is printed at 1:1, with the printer's settings
// that this needs.
func (p Part) Template() bool {
	for _, q := range parts() {
		if q.part == p {
			return q.template
		}
	}
	return p == CalibrationPage
}
