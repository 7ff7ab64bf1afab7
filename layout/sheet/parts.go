package sheet

import (
	"path/filepath"
	"slices"
	"strings"

	"frontlay/model/message"
)

// Part is one kind of page that can be chosen.
type Part string

// The parts of a job's paper, in the order they are printed.
const (
	Cover           Part = "cover"     // picture and contents
	ShopSheets      Part = "shop"      // all that most jobs need, a page for each cabinet
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
	Openings        Part = "openings"  // measured openings, fronts and packing that follow from them
	Tipping         Part = "tipping"   // what holds cabinets that stand free, and what pulls them over
	Season          Part = "season"    // how solid wood moves through the year
	Spread          Part = "spread"    // how far gaps come from what is planned
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

// Preset is the paper for a place of work: the parts that are needed there.
type Preset string

// The presets.
const (
	Bench      Preset = "bench"      // to cut, drill and hang by
	Office     Preset = "office"     // to order and keep
	ForClient  Preset = "client"     // to say yes to
	Everything Preset = "everything" // all but what takes the place of other templates
)

// Presets lists them, the usual one first.
func Presets() []Preset { return []Preset{Bench, Office, ForClient, Everything} }

// Title is the preset's name for a person.
func (p Preset) Title() message.Message {
	switch p {
	case Bench:
		return message.New("For the bench")
	case Office:
		return message.New("For the office")
	case ForClient:
		return message.New("For the client")
	}
	return message.New("Everything")
}

// File is one of the files that a job's paper is written into: what is printed at
// actual size asks for other settings of the printer, and labels for other paper.
type File uint8

// The files, in the order in which they are written.
const (
	Drawings File = iota
	TemplateFile
	LabelFile
)

// Name names the file beside that of the drawings, whose name may have an extension.
func (f File) Name(drawings string) string {
	ext := filepath.Ext(drawings)
	return strings.TrimSuffix(drawings, ext) + [...]string{"", "-templates", "-labels"}[f] + ext
}

// Open offers a person to open the file.
func (f File) Open() message.Message {
	switch f {
	case TemplateFile:
		return message.New("Open the templates")
	case LabelFile:
		return message.New("Open the labels")
	}
	return message.New("Open the drawings")
}

// printed is a part with what is to be known of it: into which file it goes, and for
// which presets it is. Spared, it is for the bench only where something is in it that
// the shop sheets do not tell.
type printed struct {
	part    Part
	title   message.Message
	file    File
	spared  bool
	presets []Preset
}

// parts names every part in the order they are printed.
func parts() []printed {
	bench, office := []Preset{Bench, Everything}, []Preset{Office, Everything}
	return []printed{
		{Cover, message.New("Cover and contents"), Drawings, false, office},
		{ShopSheets, message.New("Shop sheets"), Drawings, false, bench},
		{Client, message.New("Client sheet"), Drawings, false, []Preset{ForClient, Everything}},
		{Elevation, message.New("Elevation"), Drawings, false, office},
		{Sections, message.New("Sections"), Drawings, false, office},
		{DrawerPlans, message.New("Plans of drawers"), Drawings, false, []Preset{Everything}},
		{RearFaces, message.New("Rear faces"), Drawings, false, []Preset{Everything}},
		{JigSettings, message.New("Jig settings"), Drawings, true, bench},
		{DrillList, message.New("Drill list"), Drawings, false, office},
		{CutList, message.New("Cut list"), Drawings, true, []Preset{Bench, Office, Everything}},
		{CuttingPlan, message.New("Cutting plan"), Drawings, false, office},
		{HardwareList, message.New("Hardware list"), Drawings, true, []Preset{Bench, Office, Everything}},
		{Figures, message.New("How the figures came about"), Drawings, false, []Preset{Everything}},
		{Findings, message.New("Findings"), Drawings, true, bench},
		{Hanging, message.New("Hanging and adjusting"), Drawings, false, office},
		{Openings, message.New("Measured openings"), Drawings, false, []Preset{Bench, Office, Everything}},
		{Tipping, message.New("Tipping"), Drawings, false, office},
		{Season, message.New("Solid wood through the year"), Drawings, false, office},
		{Spread, message.New("How exact the gaps come out"), Drawings, false, office},
		{Cautions, message.New("Cautions"), Drawings, true, bench},
		{CornerTemplates, message.New("Corner templates"), TemplateFile, false, bench},
		{WholeTemplates, message.New("Whole-front templates"), TemplateFile, false, nil},
		{RunnerTemplates, message.New("Runner templates"), TemplateFile, false, bench},
		{SideTemplates, message.New("Carcass side templates"), TemplateFile, false, nil},
		{HandleTemplates, message.New("Handle templates"), TemplateFile, false, bench},
		{Labels, message.New("Labels"), LabelFile, false, []Preset{Everything}},
	}
}

// listed are the parts that a row of the table is asked of.
func listed(which func(printed) bool) []Part {
	var all []Part
	for _, p := range parts() {
		if which(p) {
			all = append(all, p.part)
		}
	}
	return all
}

// Parts lists every part in the order they are printed.
func Parts() []Part { return listed(func(printed) bool { return true }) }

// Parts are those of the preset, in order.
func (p Preset) Parts() []Part {
	return listed(func(q printed) bool { return slices.Contains(q.presets, p) })
}

// row is the part's in the table; of a page that is no part it is empty.
func (p Part) row() printed {
	all := parts()
	if i := slices.IndexFunc(all, func(q printed) bool { return q.part == p }); i >= 0 {
		return all[i]
	}
	q := printed{part: p, title: message.New("%v", string(p))}
	if p == CalibrationPage {
		q.file = TemplateFile
	}
	return q
}

// Title is the part's name for a person.
func (p Part) Title() message.Message { return p.row().title }

// File is the file that the part goes into.
func (p Part) File() File { return p.row().file }

// Template tells that the part is printed at 1:1, with the printer's settings
// that this needs.
func (p Part) Template() bool { return p.File() != Drawings }

// Spared tells that the part is printed for the bench only where it is needed there.
func (p Part) Spared() bool { return p.row().spared }
