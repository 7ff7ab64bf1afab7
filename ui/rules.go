package ui

import (
	"fyne.io/fyne/v2"
	"fyne.io/fyne/v2/container"
	"fyne.io/fyne/v2/widget"

	"frontlay/layout/check"
	"frontlay/model/edit"
	"frontlay/model/message"
	"frontlay/ui/field"
)

// showRules lists the rules of the check and how bad their findings are in this
// project.
func (w *window) showRules() {
	values := []string{"", check.Error.String(), check.Warning.String(), check.Advice.String(), check.SeverityOff}
	var o []fyne.CanvasObject
	for _, r := range check.Rules() {
		usual := w.say().Say(message.New("usual: %v", severityName(r.Severity)))
		options := []string{usual, w.text("error"), w.text("warning"), w.text("advice"), w.text("off")}
		choice := field.NewChoice(options, func() int {
			for i, v := range values {
				if v == w.session.Project().Checks.Severity[r.Name] {
					return i
				}
			}
			return 0
		}, func(i int) { w.apply(edit.SetSeverity{Rule: r.Name, Severity: values[i]}) })
		title := widget.NewLabel(w.say().Say(r.Title))
		title.Wrapping = fyne.TextWrapWord
		o = append(o, container.NewBorder(nil, nil, nil, container.New(minWidth{190}, choice), title))
	}
	w.page("Rules of the check", field.Column(o...))
}

// severityName names a severity.
func severityName(s check.Severity) message.Message {
	switch s {
	case check.Error:
		return message.New("error")
	case check.Warning:
		return message.New("warning")
	default:
		return message.New("advice")
	}
}
