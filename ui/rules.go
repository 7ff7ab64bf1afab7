package ui

import (
	"strings"

	"fyne.io/fyne/v2"
	"fyne.io/fyne/v2/container"
	"fyne.io/fyne/v2/widget"

	"frontlay/layout/check"
	"frontlay/model"
	"frontlay/model/edit"
	"frontlay/model/length"
	"frontlay/model/message"
	"frontlay/ui/field"
	"frontlay/ui/tool"
)

// showRules lists the rules of the check: how bad their findings are in this
// project, and the figures that they compare with.
func (w *window) showRules() {
	intro := field.NewLabel(w.text("Grey figures are the usual ones. Empty a field to go back to them."))
	intro.Wrapping = fyne.TextWrapWord
	o := []fyne.CanvasObject{intro}
	for _, r := range check.Rules() {
		title := field.NewLabel(w.say().Say(r.Title))
		title.Wrapping, title.TextStyle.Bold = fyne.TextWrapWord, true
		o = append(o, widget.NewSeparator(),
			container.NewBorder(nil, nil, nil, container.New(field.AtLeast(190), w.severityChoice(r)), title))
		for _, l := range r.Limits {
			o = append(o, w.limitRow(l).Object)
		}
	}
	w.read("Rules of the check", field.Column(o...))
}

// severityChoice chooses how bad the findings of a rule are.
func (w *window) severityChoice(r check.Rule) fyne.CanvasObject {
	values := []string{"", check.Error.String(), check.Warning.String(), check.Advice.String(), check.SeverityOff}
	usual := w.say().Say(message.New("usual: %v", r.Severity.Word()))
	options := []string{usual, w.text("error"), w.text("warning"), w.text("advice"), w.text("off")}
	return field.NewChoice(options, func() int {
		for i, v := range values {
			if v == w.session.Project().Checks.Severity[r.Name] {
				return i
			}
		}
		return 0
	}, func(i int) { w.Do(edit.SetSeverity{Rule: r.Name, Severity: values[i]}) })
}

// limitRow is the field of a figure that a rule compares with.
func (w *window) limitRow(l model.Limit) *field.Row {
	unit := func() length.Unit { return w.session.Project().Unit }
	now := func() (length.Length, bool) {
		v, set := w.session.Project().Checks.Limits[l.Key]
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
				return field.Value{Text: w.say().Figure(v)}
			case !l.Unset.Empty():
				return field.Value{Grey: w.say().Say(l.Unset)}
			default:
				return field.Value{Grey: w.say().Figure(l.Usual)}
			}
		},
		Put: func(text string) error {
			e, err := parse(text)
			if err == nil {
				err = w.session.Do(e)
			}
			return err
		},
		Check: func(text string) error {
			e, err := parse(text)
			if err == nil {
				_, err = e.Apply(w.session.Committed())
			}
			return err
		},
	}
	if l.Unset.Empty() {
		s.Step = func(n int) error {
			v := l.In(w.session.Project()) + length.Length(n)*tool.Step(unit(), false)
			return w.session.Do(edit.SetCheckLimit{Limit: l, Value: &v})
		}
	}
	return field.NewRow(w.say().Say(l.Title), unit().Symbol(), s, func(m message.Message) string { return w.say().Say(m) })
}
