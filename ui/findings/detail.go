package findings

import (
	"slices"

	"fyne.io/fyne/v2"
	"fyne.io/fyne/v2/container"
	"fyne.io/fyne/v2/widget"

	"frontlay/layout/check"
	"frontlay/model"
	"frontlay/model/edit"
	"frontlay/model/message"
	"frontlay/ui/field"
)

// detail is what tells about the chosen finding. Its widgets stay where they are
// when another is chosen: one that is pressed meanwhile is still there when it is
// let go.
type detail struct {
	column                       *fyne.Container
	hint                         *field.Label // while none is chosen
	head, what, change, accepted *field.Label
	mend                         []*field.Button
	reason                       *field.Text // for which the finding told of last shall be accepted
	accept, revoke               *field.Button
}

func newDetail() detail {
	d := detail{
		column: field.Column(), hint: paragraph(widget.LowImportance),
		head: paragraph(widget.MediumImportance), what: paragraph(widget.MediumImportance),
		change: paragraph(widget.MediumImportance), accepted: paragraph(widget.MediumImportance),
		reason: field.NewText(""), accept: field.NewButton("", nil), revoke: field.NewButton("", nil),
	}
	d.head.TextStyle.Bold = true
	return d
}

// showDetail tells about the chosen finding: what is wrong, what to change, the
// changes that the program can make, and a way to accept it.
func (p *Panel) showDetail() {
	defer p.scroll.ScrollToTop()
	defer p.keepFocus(p.answers)()
	d := &p.detail
	p.answers, d.column.Objects = nil, nil
	add := func(l *field.Label, text string) {
		l.SetText(text)
		d.column.Objects = append(d.column.Objects, l)
	}
	defer d.column.Refresh()
	text := func(m message.Message) string { return p.say().Say(m) }
	if p.chosen < 0 || p.chosen >= len(p.rows) {
		hint := message.New("Choose a finding to see where it is and what to change.")
		if len(p.rows) == 0 {
			hint = message.New("Every front covers what it should, and every hole lies inside its board, by the rules that are switched on.")
		}
		add(d.hint, text(hint))
		return
	}
	f := p.rows[p.chosen]
	p.tellOf(&f)
	_, word, _ := Sign(&f)
	add(d.head, text(message.New("%v: %v", word, f.Where)))
	if buttons := p.mends(); len(buttons) > 0 {
		d.column.Objects = append(d.column.Objects, container.NewPadded(container.NewVBox(buttons...)))
	}
	add(d.what, p.say().Sentence(f.What))
	if !f.Change.Empty() {
		add(d.change, p.say().Sentence(f.Change))
	}
	if f.Accepted != "" {
		add(d.accepted, text(message.New("Accepted: %v", f.Accepted)))
	}
	d.column.Objects = append(d.column.Objects, container.NewPadded(p.acceptance(f)))
}

// mends are buttons for the changes that mend a finding, the best first.
func (p *Panel) mends() []fyne.CanvasObject {
	var buttons []fyne.CanvasObject
	for i, e := range p.session.Offered(p.rows[p.chosen]) {
		if i == len(p.detail.mend) {
			p.detail.mend = append(p.detail.mend, field.NewButton("", nil))
		}
		b := p.detail.mend[i]
		b.OnTapped = func() { p.do(e) }
		b.Importance = widget.MediumImportance
		if i == 0 {
			b.Importance = widget.HighImportance
		}
		b.SetText(p.say().Say(message.New("Mend it: %v", p.named(e, p.rows[p.chosen]))))
		buttons = append(buttons, b)
		p.answers = append(p.answers, b)
	}
	return buttons
}

// named is the label of a change, with the front's name where it is another one
// than a finding speaks of.
func (p *Panel) named(e edit.Edit, of check.Finding) message.Message {
	placed, ok := e.(edit.Placed)
	if !ok || placed.Place() == of.Place {
		return e.Label()
	}
	f := p.session.CommittedResult().Plan.FrontAt(placed.Place())
	if f == nil {
		return e.Label()
	}
	return message.New("%v: %v", f.Name, e.Label())
}

// acceptance is a field for the reason for which a finding is accepted, or a
// button for one that is no longer.
func (p *Panel) acceptance(f check.Finding) fyne.CanvasObject {
	d := &p.detail
	text := func(s string) string { return p.say().Say(message.New(s)) }
	accepted := acceptedOf(p.session.Committed(), f)
	if f.Accepted != "" {
		d.revoke.OnTapped = func() { p.do(edit.AcceptFinding{Finding: accepted, Revoke: true}) }
		d.revoke.SetText(text("No longer accept it"))
		p.answers = append(p.answers, d.revoke)
		return d.revoke
	}
	d.reason.SetPlaceHolder(text("reason to accept it, kept and printed"))
	accept := func() {
		accepted.Reason = d.reason.Text
		p.do(edit.AcceptFinding{Finding: accepted})
	}
	d.reason.OnSubmitted = func(string) { accept() }
	d.accept.OnTapped = accept
	d.accept.SetText(text("Accept"))
	p.answers = append(p.answers, d.reason, d.accept)
	return container.NewBorder(nil, nil, nil, d.accept, d.reason)
}

// told is what names the finding that the detail told of last.
type told struct {
	rule     string
	place    model.Place
	accepted bool
}

// tellOf empties the field for a reason where the detail tells of another finding
// than before, nil for none; while it stays the same one, a reason that is being
// typed stays too, whatever else is changed.
func (p *Panel) tellOf(f *check.Finding) {
	var now told
	if f != nil {
		now = told{f.Rule, f.Place, f.Accepted != ""}
	}
	if now != p.told {
		p.told = now
		p.detail.reason.SetText("")
	}
}

// keepFocus brings the keyboard back from what was in the detail to the list once
// the detail is another; what is gone would take keys unseen. The field for a
// reason keeps it while it is about the same finding.
func (p *Panel) keepFocus(gone []fyne.Focusable) func() {
	c := field.CanvasOf(p.scroll)
	if c == nil || c.Focused() == nil || !slices.Contains(gone, c.Focused()) {
		return func() {}
	}
	was := p.told
	return func() {
		if c.Focused() == fyne.Focusable(p.detail.reason) && p.told == was && slices.Contains(p.answers, c.Focused()) {
			return
		}
		if len(p.rows) == 0 {
			c.Unfocus()
			return
		}
		c.Focus(p.list)
	}
}

// acceptedOf names a finding as a project stores it when it is accepted.
func acceptedOf(p *model.Project, f check.Finding) model.Accepted {
	return check.Acceptance(p, &f)
}

func paragraph(i widget.Importance) *field.Label {
	l := field.NewLabel("")
	l.Wrapping = fyne.TextWrapWord
	l.Importance = i
	return l
}
