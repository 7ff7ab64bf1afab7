// Package rules is the page of the rules of the check.
package rules

import (
	"strings"

	"fyne.io/fyne/v2"
	"fyne.io/fyne/v2/container"
	"fyne.io/fyne/v2/widget"

	"frontlay/layout/check"
	"frontlay/layout/drawing"
	"frontlay/model"
	"frontlay/model/edit"
	"frontlay/model/length"
	"frontlay/model/message"
	"frontlay/ui/ask"
	"frontlay/ui/field"
	"frontlay/ui/session"
	"frontlay/ui/tool"
)

// Host is what the page needs of the window around it.
type Host interface {
	Session() *session.Session
	// Do makes an edit and tells where it can't be made.
	Do(e edit.Edit, made ...drawing.Subject) bool
	Ask() *ask.Asker
}

// page is what the page is made of.
type page struct {
	Host
	ask *ask.Asker
}

// Show lists the rules of the check: how bad their findings are in this
// project, and the figures that they compare with.
func Show(h Host) {
	p := page{h, h.Ask()}
	intro := field.NewLabel(p.ask.Text("Grey figures are the usual ones. Empty a field to go back to them."))
	intro.Wrapping = fyne.TextWrapWord
	o := []fyne.CanvasObject{intro}
	for _, r := range check.Rules() {
		title := field.NewLabel(p.ask.Say().Say(r.Title))
		title.Wrapping, title.TextStyle.Bold = fyne.TextWrapWord, true
		o = append(o, widget.NewSeparator(),
			container.NewBorder(nil, nil, nil, container.New(field.AtLeast(190), p.severityChoice(r)), title))
		for _, l := range r.Limits {
			o = append(o, p.limitRow(l).Object)
		}
	}
	p.ask.Read(p.ask.Text("Rules of the check"), field.Column(o...))
}

// severityChoice chooses how bad the findings of a rule are.
func (p page) severityChoice(r check.Rule) fyne.CanvasObject {
	values := []string{"", check.Error.String(), check.Warning.String(), check.Advice.String(), check.SeverityOff}
	usual := p.ask.Say().Say(message.New("usual: %v", r.Severity.Word()))
	options := []string{usual, p.ask.Text("error"), p.ask.Text("warning"), p.ask.Text("advice"), p.ask.Text("off")}
	return field.NewChoice(options, func() int {
		for i, v := range values {
			if v == p.Session().Project().Checks.Severity[r.Name] {
				return i
			}
		}
		return 0
	}, func(i int) { p.Do(edit.SetSeverity{Rule: r.Name, Severity: values[i]}) })
}

// limitRow is the field of a figure that a rule compares with.
func (p page) limitRow(l model.Limit) *field.Row {
	unit := func() length.Unit { return p.Session().Project().Unit }
	now := func() (length.Length, bool) {
		v, set := p.Session().Project().Checks.Limits[l.Key]
		return v, set
	}
	parse := func(text string) (edit.SetCheckLimit, error) {
		e := edit.SetCheckLimit{Limit: l}
		if strings.TrimSpace(text) == "" {
			return e, nil
		}
		v, err := field.ParseSize(text, unit())
		e.Value = &v
		return e, err
	}
	s := field.Source{
		Figure: true,
		Get: func() field.Value {
			v, set := now()
			switch {
			case set:
				return field.Value{Text: p.ask.Say().Figure(v)}
			case !l.Unset.Empty():
				return field.Value{Grey: p.ask.Say().Say(l.Unset)}
			default:
				return field.Value{Grey: p.ask.Say().Figure(l.Usual)}
			}
		},
		Put: func(text string) error {
			e, err := parse(text)
			if err == nil {
				err = p.Session().Do(e)
			}
			return err
		},
		Check: func(text string) error {
			e, err := parse(text)
			if err == nil {
				_, err = e.Apply(p.Session().Committed())
			}
			return err
		},
	}
	if l.Unset.Empty() {
		s.Step = func(n int) error {
			v := l.In(p.Session().Project()) + length.Length(n)*tool.Step(unit(), false)
			return p.Session().More(l, edit.SetCheckLimit{Limit: l, Value: &v})
		}
	}
	return field.NewRow(p.ask.Say().Say(l.Title), unit().Symbol(), s, func(m message.Message) string { return p.ask.Say().Say(m) })
}
