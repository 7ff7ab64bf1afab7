package view

import (
	"frontlay/layout/check"
	"frontlay/layout/drawing"
	"frontlay/layout/plan"
	"frontlay/layout/plane"
	"frontlay/model/message"
)

// addFinding marks where a finding is. One that is about a front as a whole is
// outlined only, as hatching would hide everything else in it.
func addFinding(d *drawing.Drawing, p *plan.Plan, f *check.Finding) {
	if f.Area.Empty() {
		return
	}
	s := of(drawing.FrontThing, f.Place)
	if f.Place.Front < 0 {
		s = drawing.Subject{}
	}
	t := drawing.Tag{Meaning: drawing.FindingMark, Of: s, Severity: Severity(f)}
	label := &drawing.Text{Tag: t, At: plane.Point{X: f.Area.Centre().X, Y: f.Area.Max.Y}, Anchor: drawing.BottomCentre, Size: smallLetters, Bold: true, Say: f.Mark}
	if f.Front > 0 && f.Area == p.Fronts[f.Front-1].Face {
		label.At, label.Anchor = f.Area.Centre(), drawing.MiddleCentre
	} else {
		d.Add(&drawing.Hatch{Tag: drawing.Tag{Meaning: drawing.Shortfall, Of: s, Severity: t.Severity}, Rect: f.Area})
	}
	d.Add(&drawing.Rectangle{Tag: t, Rect: f.Area})
	if !f.Mark.Empty() {
		d.Add(label)
	}
}

// Severity is that of a finding's marks.
func Severity(f *check.Finding) drawing.Severity {
	switch {
	case f.Accepted != "":
		return drawing.OfAccepted
	case f.Severity == check.Warning:
		return drawing.OfWarning
	case f.Severity == check.Advice:
		return drawing.OfAdvice
	default:
		return drawing.OfError
	}
}

// addLock notes at a front's height that it is locked.
func addLock(d *drawing.Drawing, p *plan.Plan, f *plan.Front) {
	at := f.Place
	if !p.Project.Cabinets[at.Cabinet].Bays[at.Bay].Fronts[at.Front].Locked {
		return
	}
	d.Add(&drawing.Text{
		Tag: drawing.Tag{Meaning: drawing.Note, Of: of(drawing.FrontThing, at)},
		At:  plane.Point{X: heightLine(f), Y: f.Face.Centre().Y}, Size: smallLetters,
		Say: message.New("locked"), Short: message.New("lkd."), Within: f.Face,
	})
}
