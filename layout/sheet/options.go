package sheet

import (
	"slices"
	"strconv"
	"strings"

	"frontlay/layout/list"
	"frontlay/model/length"
	"frontlay/model/message"
)

// Options choose what is printed and on what. The zero value is everything but
// whole-front templates, on A4 with the default margins, in English and
// millimetres.
type Options struct {
	Paper   Paper            // zero: A4
	Margins Margins          // zero: DefaultMargins
	Parts   []Part           // empty: all but WholeTemplates
	Fronts  []int            // numbers of the fronts that get templates; empty: all
	Spare   float64          // part added to small parts of the hardware list; zero: a tenth; below zero: none
	Overlap length.Length    // of tiles; zero: 10 mm; at most 30 mm
	Say     message.Language // language, and the unit of the figures
	Labels  LabelFormat      // how stickers lie on their sheets; zero: DefaultLabels
	First   int              // sticker of the first sheet to begin with, from 1, where others are used up; 0: 1
	// Correction undoes a fault of the printer’s scale.
	Correction Correction
	wraps      wraps
	warn       message.Message    // what stands on templates while the check has errors
	depth      message.Message    // how the depths of holes are meant
	stamp      stamp              // what tells the pages from others
	refused    map[forbidden]bool // what errors forbid that are not accepted
	Date       string             // and time of printing, as it shall be printed; may be empty
}

// with fills in what was left open.
func (o Options) with() Options {
	if o.Paper.Width == 0 {
		o.Paper = Papers()[0]
	}
	if o.Margins == (Margins{}) {
		o.Margins = DefaultMargins
	}
	o.Margins.Side = min(max(o.Margins.Side, LeastMargin), GreatestMargin)
	o.Margins.End = min(max(o.Margins.End, LeastMargin), GreatestMargin)
	if len(o.Parts) == 0 {
		o.Parts = []Part{JigSettings, Elevation, Findings, CornerTemplates}
	}
	if o.Labels == (LabelFormat{}) {
		o.Labels = DefaultLabels
	}
	if o.wraps == nil {
		o.wraps = wraps{}
	}
	if o.Spare == 0 {
		o.Spare = list.DefaultSpare
	}
	if o.Overlap <= 0 {
		o.Overlap = mm(10)
	}
	o.Overlap = min(o.Overlap, mm(30))
	return o
}

// on gives the margins and the correction of a page of the given size by its own
// sides. They belong to the paper's sides: where the page lies turned on the
// paper, they change places.
func (o Options) on(width, height length.Length) (Margins, Correction) {
	m, c := o.Margins, o.Correction
	if width == o.Paper.Width || height != o.Paper.Width {
		return m, c
	}
	c.Across, c.Up, c.turned = c.Up, c.Across, true
	return Margins{Side: m.End, End: m.Side}, c
}

func (o Options) wants(p Part) bool { return slices.Contains(o.Parts, p) }

// ParseFronts reads the numbers and ranges of fronts that get templates, such as
// 2, 5-7, of a project that has so many; empty text means all, which is nil. The
// error is a message for the user.
func ParseFronts(s string, have int) ([]int, error) {
	var all []int
	for _, part := range strings.FieldsFunc(s, func(r rune) bool { return r == ',' || r == ';' || r == ' ' }) {
		from, to, ranged := strings.Cut(part, "-")
		a, err := strconv.Atoi(from)
		b := a
		if err == nil && ranged {
			b, err = strconv.Atoi(to)
		}
		if err != nil || a < 1 || b > have || a > b {
			return nil, message.New("“%v” is no front of this project: it has fronts 1 to %v.", part, have)
		}
		for n := a; n <= b; n++ {
			all = append(all, n)
		}
	}
	return all, nil
}

func (o Options) wantsFront(number int) bool {
	return len(o.Fronts) == 0 || slices.Contains(o.Fronts, number)
}

// Part is one kind of page that can be chosen.
type Part string

// The parts of a job's paper, in the order they are printed.
const (
	Cover           Part = "cover"     // picture and contents
	Client          Part = "client"    // view from the room, for who is to say yes to it
	Elevation       Part = "elevation" // the run to scale with dimensions
	Sections        Part = "sections"  // upright sections through each bay
	DrawerPlans     Part = "drawers"   // drawers from above
	RearFaces       Part = "rear"      // rear faces with their holes
	JigSettings     Part = "jig"       // jig settings, fewest resets first
	DrillList       Part = "drill"     // every hole, from the edges
	CutList         Part = "cut"       // boards to cut
	CuttingPlan     Part = "cutting"   // parts on stock sheets, and the sheets to buy
	HardwareList    Part = "hardware"  // what to order
	Figures         Part = "figures"   // how every figure came about
	Findings        Part = "findings"  // what the check found
	Hanging         Part = "hanging"   // gaps to measure, room of adjustment, order of work
	Cautions        Part = "cautions"  // before you cut, drill and hang
	CornerTemplates Part = "corner"    // templates 1:1 of the holes near each side edge
	WholeTemplates  Part = "whole"     // templates 1:1 of whole fronts, tiled
	RunnerTemplates Part = "runners"   // templates 1:1 of runner screws, laid on pencil lines
	SideTemplates   Part = "sides"     // templates 1:1 of whole carcass sides with their runner screws
	HandleTemplates Part = "handles"   // templates 1:1 of handle holes, on the face
	Labels          Part = "labels"    // stickers for all boards
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
		{Client, message.New("Client sheet"), false},
		{Elevation, message.New("Elevation"), false},
		{Sections, message.New("Sections"), false},
		{DrawerPlans, message.New("Plans of drawers"), false},
		{RearFaces, message.New("Rear faces"), false},
		{JigSettings, message.New("Jig settings"), false},
		{DrillList, message.New("Drill list"), false},
		{CutList, message.New("Cut list"), false},
		{CuttingPlan, message.New("Cutting plan"), false},
		{HardwareList, message.New("Hardware list"), false},
		{Figures, message.New("How the figures came about"), false},
		{Findings, message.New("Findings"), false},
		{Hanging, message.New("Hanging and adjusting"), false},
		{Cautions, message.New("Cautions"), false},
		{CornerTemplates, message.New("Corner templates"), true},
		{WholeTemplates, message.New("Whole-front templates"), true},
		{RunnerTemplates, message.New("Runner templates"), true},
		{SideTemplates, message.New("Carcass side templates"), true},
		{HandleTemplates, message.New("Handle templates"), true},
		{Labels, message.New("Labels"), true},
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
