package sheet

import (
	"slices"

	"frontlay/layout/check"
	"frontlay/layout/list"
	"frontlay/layout/plan"
	"frontlay/layout/view"
	"frontlay/model/length"
	"frontlay/model/message"
)

// Part is one kind of page that can be chosen.
type Part string

// The parts of a job's paper, in the order they are printed.
const (
	DrillList       Part = "drill"     // every hole, from the edges
	CutList         Part = "cut"       // boards to cut
	HardwareList    Part = "hardware"  // what to order
	Cautions        Part = "cautions"  // before you cut, drill and hang
	JigSettings     Part = "jig"       // jig settings, fewest resets first
	Elevation       Part = "elevation" // the run to scale with dimensions
	Findings        Part = "findings"  // what the check found
	CornerTemplates Part = "corner"    // templates 1:1 of the holes near each side edge
	WholeTemplates  Part = "whole"     // templates 1:1 of whole fronts, tiled
	RunnerTemplates Part = "runners"   // templates 1:1 of runner screws, laid on pencil lines
	SideTemplates   Part = "sides"     // templates 1:1 of whole carcass sides with their runner screws
	HandleTemplates Part = "handles"   // templates 1:1 of handle holes, on the face
)

// CalibrationPage is the kind of the page that measures a printer; it is not a
// part of a job.
const CalibrationPage Part = "calibration"

// Parts lists every part in the order they are printed.
func Parts() []Part {
	return []Part{JigSettings, Elevation, Findings, CornerTemplates, WholeTemplates, RunnerTemplates, SideTemplates, HandleTemplates}
}

// Title is the part's name for a person.
func (p Part) Title() message.Message {
	switch p {
	case JigSettings:
		return message.New("Jig settings")
	case Elevation:
		return message.New("Elevation")
	case Findings:
		return message.New("Findings")
	case CornerTemplates:
		return message.New("Corner templates")
	case WholeTemplates:
		return message.New("Whole-front templates")
	case RunnerTemplates:
		return message.New("Runner templates")
	case SideTemplates:
		return message.New("Carcass side templates")
	case HandleTemplates:
		return message.New("Handle templates")
	}
	return message.New("%v", string(p))
}

// Options choose what is printed and on what. The zero value is everything but
// whole-front templates, on A4 with the default margins, in English and
// millimetres.
type Options struct {
	Paper   Paper            // zero: A4
	Margins Margins          // zero: DefaultMargins
	Parts   []Part           // empty: all but WholeTemplates
	Fronts  []int            // numbers of the fronts that get templates; empty: all
	Overlap length.Length    // of tiles; zero: 10 mm; at most 30 mm
	Say     message.Language // language, and the unit of the figures
	// Correction undoes a fault of the printer’s scale.
	Correction Correction
	Date       string // for title blocks, as it shall be printed; may be empty
}

// with fills in what was left open.
func (o Options) with() Options {
	if o.Paper.Width == 0 {
		o.Paper = Papers()[0]
	}
	if o.Margins == (Margins{}) {
		o.Margins = DefaultMargins
	}
	o.Margins.Side = max(o.Margins.Side, LeastMargin)
	o.Margins.End = max(o.Margins.End, LeastMargin)
	if len(o.Parts) == 0 {
		o.Parts = []Part{JigSettings, Elevation, Findings, CornerTemplates}
	}
	if o.Overlap <= 0 {
		o.Overlap = mm(10)
	}
	o.Overlap = min(o.Overlap, mm(30))
	return o
}

func (o Options) wants(p Part) bool { return slices.Contains(o.Parts, p) }

func (o Options) wantsFront(number int) bool {
	return len(o.Fronts) == 0 || slices.Contains(o.Fronts, number)
}

// Make decides every page of the parts that are asked for. It never fails: a
// project without fronts gives pages that say so. The same arguments give the
// same document.
func Make(p *plan.Plan, findings []check.Finding, o Options) Document {
	o = o.with()
	d := Document{Title: said(title(p)), Say: o.Say, Correction: o.Correction}
	job := said(title(p))
	for _, part := range Parts() {
		if !o.wants(part) {
			continue
		}
		first := len(d.Pages) + 1
		switch part {
		case JigSettings:
			d.add(tablePages(part, list.JigSettings(p, o.Say), job, o))
		case Elevation:
			d.add([]Page{drawingPage(part, view.Elevation(p, view.ElevationOptions{}), job, o)})
		case Findings:
			d.add(tablePages(part, list.Findings(findings, o.Say), job, o))
		case CornerTemplates:
			d.add(cornerPages(p, o, first))
			d.add(middlePages(p, o, len(d.Pages)+1))
		case WholeTemplates:
			d.add(wholePages(p, o, first))
		case RunnerTemplates:
			d.add(runnerPages(p, o, first))
		case SideTemplates:
			d.add(sidePages(p, o, first))
		case HandleTemplates:
			d.add(handlePages(p, o, first))
		}
	}
	number(d.Pages, o)
	return d
}

func (d *Document) add(pages []Page) { d.Pages = append(d.Pages, pages...) }

// title is the project's, or the program's name where it has none.
func title(p *plan.Plan) string {
	if p.Project != nil && p.Project.Title != "" {
		return p.Project.Title
	}
	return "frontlay"
}
