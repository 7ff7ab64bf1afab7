package sheet

import (
	"slices"
	"strings"

	"frontlay/layout/drawing"
	"frontlay/layout/lettering"
	"frontlay/layout/plan"
	"frontlay/layout/plane"
	"frontlay/layout/view"
	"frontlay/model"
	"frontlay/model/length"
	"frontlay/model/message"
)

// Heights of what stands on the client sheet under the picture.
const (
	approvalHeight = 16 * length.Millimetre // to write on by hand
	aroundPicture  = 16 * length.Millimetre // for the overall sizes
)

// ClientSheet is the sheet for who is to say yes to the job, as a document of its
// own: for a picture of it.
func ClientSheet(p *plan.Plan, o Options) Document {
	o.Parts = []Part{Client}
	return Make(p, nil, o)
}

// clientPage shows the run as it will stand there, with its overall sizes and a line
// to sign.
func clientPage(p *plan.Plan, o Options) Page {
	w, h := o.Paper.Width, o.Paper.Height
	if o.Paper.Roll() {
		h = w * 14142 / 10000
	}
	if e := p.Extent; e.Width() > e.Height() == (w < h) {
		w, h = h, w
	}
	v := view.Picture(p)
	d := newDraft(Client, v.Title, w, h, o)
	d.box(drawing.Frame, d.area)
	area := d.titleBlock(v.Title, message.New("not to scale"), o)
	area = plane.R(area.Min.X+mm(4), area.Min.Y, area.Max.X-mm(4), area.Max.Y-mm(4))
	y := d.paragraph(area.Min.X, area.Max.Y, area.Width(), lettering.Huge, true, said(title(p))) - mm(1)
	for _, m := range clientFacts(p) {
		y = d.paragraph(area.Min.X, y, area.Width(), lettering.Medium, false, m)
	}
	low := area.Min.Y
	note := message.New("Colours and grain in this picture are not those of the material: choose by a sample of it.")
	low += d.heightOf(area.Width(), lettering.Small, false, note)
	d.paragraph(area.Min.X, low, area.Width(), lettering.Small, false, note)
	d.approval(plane.R(area.Min.X, low, area.Max.X, low+approvalHeight))
	low += approvalHeight
	picture := plane.R(area.Min.X+aroundPicture, low+aroundPicture, area.Max.X, y-mm(4))
	if !picture.Empty() && !p.Extent.Empty() {
		placed := asLarge(v, picture)
		d.place(placed)
	}
	return d.finish()
}

// clientFacts are sentences about the job for who pays it.
func clientFacts(p *plan.Plan) []message.Message {
	if p.Project == nil {
		return nil
	}
	all := []message.Message{message.New("Width %v, height %v, depth with fronts %v", p.Extent.Width(), p.Extent.Height(), overallDepth(p))}
	var materials []string
	for i := range p.Fronts {
		if m := p.Fronts[i].Made.Material; m != "" && p.Fronts[i].Kind != model.OpenNiche && !slices.Contains(materials, m) {
			materials = append(materials, m)
		}
	}
	if len(materials) > 0 {
		all = append(all, message.New("Fronts: %v", clipped(strings.Join(materials, ", "), 80)))
	}
	return all
}

// overallDepth is the depth of the deepest cabinet with its back and, where they lie
// over its edges, its fronts.
func overallDepth(p *plan.Plan) length.Length {
	deepest := length.Length(0)
	for i := range p.Cabinets {
		depth := p.Project.Cabinets[i].Depth
		if p.Cabinets[i].Mount == model.Overlay && len(p.Fronts) > 0 {
			depth += p.Cabinets[i].Fronts
		}
		deepest = max(deepest, depth)
	}
	return deepest
}

// approval draws the lines on which a client signs.
func (d *draft) approval(r plane.Rect) {
	base := r.Min.Y + mm(3)
	from := r.Min.X
	for _, f := range []struct {
		head  message.Message
		share int64 // of the width, in hundredths
	}{{message.New("Approved"), 65}, {message.New("Approved on"), 35}} {
		end := from + r.Width()*length.Length(f.share)/100
		s := d.say.Say(f.head)
		d.text(plane.Point{X: from, Y: base}, drawing.Anchor{}, lettering.Medium, false, s)
		start := from + lettering.Width(s, lettering.Medium, false) + mm(2)
		d.line(drawing.Frame, start, base-mm(1), end-mm(4), base-mm(1))
		from = end
	}
}
