package findings

import (
	"slices"

	"fyne.io/fyne/v2"
	"fyne.io/fyne/v2/container"
	"fyne.io/fyne/v2/widget"

	"frontlay/layout"
	"frontlay/layout/check"
	"frontlay/model"
	"frontlay/model/edit"
	"frontlay/model/message"
	"frontlay/ui/field"
	"frontlay/ui/session"
)

// showDetail tells about the chosen finding: what is wrong, what to change, the
// changes that the program can make, and a way to accept it.
func (p *Panel) showDetail() {
	defer p.scroll.ScrollToTop()
	defer p.keepFocus(p.answers)()
	p.answers = nil
	if p.chosen >= 0 && p.chosen < len(p.rows) {
		p.tellOf(&p.rows[p.chosen])
	}
	text := func(m message.Message) string { return p.say().Say(m) }
	if p.chosen < 0 || p.chosen >= len(p.rows) {
		hint := message.New("Choose a finding to see where it is and what to change.")
		if len(p.rows) == 0 {
			hint = message.New("Every front covers what it should, and every hole lies inside its board, by the rules that are switched on.")
		}
		p.detail.Objects = []fyne.CanvasObject{paragraph(text(hint), widget.LowImportance)}
		p.detail.Refresh()
		return
	}
	f := p.rows[p.chosen]
	_, word, _ := Sign(&f)
	head := field.NewLabel(text(message.New("%v: %v", word, f.Where)))
	head.TextStyle.Bold = true
	head.Wrapping = fyne.TextWrapWord
	column := field.Column(head)
	var buttons []fyne.CanvasObject
	for i, e := range layout.Offered(p.session.Committed(), p.session.CommittedResult(), f) {
		b := field.NewButton(text(message.New("Mend it: %v", p.named(e))), func() { p.do(e) })
		if i == 0 {
			b.Importance = widget.HighImportance
		}
		buttons = append(buttons, b)
		p.answers = append(p.answers, b)
	}
	if len(buttons) > 0 {
		column.Add(container.NewPadded(container.NewVBox(buttons...)))
	}
	column.Add(paragraph(p.say().Sentence(f.What), widget.MediumImportance))
	if !f.Change.Empty() {
		column.Add(paragraph(p.say().Sentence(f.Change), widget.MediumImportance))
	}
	p.addAccept(column, f)
	p.detail.Objects = []fyne.CanvasObject{column}
	p.detail.Refresh()
}

// named is the label of a change, with the front's name where it is another one
// than the finding speaks of.
func (p *Panel) named(e edit.Edit) message.Message {
	placed, ok := e.(edit.Placed)
	if !ok || p.chosen < 0 || p.chosen >= len(p.rows) || placed.Place() == p.rows[p.chosen].Place {
		return e.Label()
	}
	f := session.FrontOf(p.session.CommittedResult().Plan, placed.Place())
	if f == nil {
		return e.Label()
	}
	return message.New("%v: %v", f.Name, e.Label())
}

// addAccept adds the reason for which a finding is accepted, or a field for it.
func (p *Panel) addAccept(column *fyne.Container, f check.Finding) {
	text := func(s string, args ...any) string { return p.say().Say(message.New(s, args...)) }
	accepted := acceptedOf(p.session.Committed(), f)
	if f.Accepted != "" {
		column.Add(paragraph(text("Accepted: %v", f.Accepted), widget.MediumImportance))
		b := field.NewButton(text("No longer accept it"), func() {
			p.do(edit.AcceptFinding{Finding: accepted, Revoke: true})
		})
		p.answers = append(p.answers, b)
		column.Add(container.NewPadded(b))
		return
	}
	p.reason.SetPlaceHolder(text("reason to accept it, kept and printed"))
	accept := func() {
		accepted.Reason = p.reason.Text
		p.do(edit.AcceptFinding{Finding: accepted})
	}
	p.reason.OnSubmitted = func(string) { accept() }
	b := field.NewButton(text("Accept"), accept)
	p.answers = append(p.answers, p.reason, b)
	column.Add(container.NewPadded(container.NewBorder(nil, nil, nil, b, p.reason)))
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
		p.reason.SetText("")
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
		if c.Focused() == fyne.Focusable(p.reason) && p.told == was && slices.Contains(p.answers, c.Focused()) {
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

func paragraph(s string, i widget.Importance) *field.Label {
	l := field.NewLabel(s)
	l.Wrapping = fyne.TextWrapWord
	l.Importance = i
	return l
}
