package help

import (
	"net/url"
	"path/filepath"

	"fyne.io/fyne/v2"
	"fyne.io/fyne/v2/container"

	"frontlay/assets"
	"frontlay/model/message"
	"frontlay/ui/ask"
	"frontlay/ui/field"
)

// Facts are what is to be told of the running program.
type Facts struct {
	Version string
	Logs    string // the folder of the log and of reports; empty: there is none
	// OpenURL opens what another program shows.
	OpenURL func(*url.URL) error
}

// About tells the version, where the logs are, and the licence of every part.
func About(a *ask.Asker, f Facts) {
	line := func(m message.Message) *field.Label {
		l := field.NewLabel(a.Say().Say(m))
		l.Wrapping = fyne.TextWrapWord
		return l
	}
	o := field.Column(line(message.New("Version: %v", f.Version)),
		line(message.New("frontlay plans drawer cabinets, checks them, and prints drilling templates at 1:1. It is free to use, change and pass on under the MIT licence, without any warranty.")))
	if f.Logs != "" {
		o.Add(line(message.New("Log and reports, without names of files and persons: %v", f.Logs)))
		o.Add(container.NewHBox(field.NewButton(a.Text("Show in folder"), func() {
			if err := f.OpenURL(&url.URL{Scheme: "file", Path: filepath.ToSlash(f.Logs)}); err != nil {
				a.Complain(err)
			}
		})))
	}
	text := line(message.Message{})
	view := field.NewView(text)
	view.Scroll.SetMinSize(fyne.NewSize(620, 220))
	all, at := assets.Licences(), 0
	var parts []string
	for _, l := range all {
		parts = append(parts, l.Part)
	}
	show := func(i int) {
		at = i
		text.SetText(all[i].Wording)
		view.Scroll.ScrollToTop()
	}
	choice := field.NewChoice(parts, func() int { return at }, show)
	show(0)
	o.Add(field.Heading(a.Text("Parts and their licences")))
	o.Add(field.Labelled(a.Text("Part"), choice))
	o.Add(view)
	a.Notice(a.Text("About frontlay"), a.Text("Close"), o, view.Scroll, nil)
}
