package printing

import (
	"strconv"
	"strings"

	"fyne.io/fyne/v2"

	"frontlay/layout/sheet"
	"frontlay/model/message"
	"frontlay/ui/field"
)

// prefLabels keeps the pack of stickers that the user has: columns and rows, margins,
// pitch.
const prefLabels = "format of labels"

// labels are the fields that tell how stickers lie on their sheets, as the pack tells,
// and with which a sheet that is begun goes on. The format is kept; where to go on is
// not.
type labels struct {
	object                      *fyne.Container // hidden where no labels are printed
	grid, margins, pitch, first *field.Text
	wrong                       []*field.Mistake // of each, in this order
}

// labelRows makes the fields.
func (p *Page) labelRows() fyne.CanvasObject {
	l := &p.labels
	l.object = field.Column(field.Heading(p.ask.Text("Labels")))
	row := func(name, example string) *field.Text {
		t := field.NewText(example)
		m := field.NewMistake(name, field.Labelled(name, t))
		l.wrong = append(l.wrong, m)
		l.object.Add(m.Object)
		return t
	}
	l.grid = row(p.ask.Text("Columns × rows"), sheet.DefaultLabels.Grid())
	l.margins = row(p.ask.Text("Margins, left × top"), p.ask.Text("none"))
	l.pitch = row(p.ask.Text("Pitch, across × down"), p.ask.Text("side by side"))
	l.first = row(p.ask.Text("Begin with label"), "1")
	format := []*field.Text{l.grid, l.margins, l.pitch}
	for i, text := range p.host.Preferences().StringList(prefLabels) {
		if i < len(format) {
			format[i].SetText(text)
		}
	}
	for _, t := range append(format, l.first) {
		t.OnChanged = func(string) {
			p.host.Preferences().SetStringList(prefLabels, []string{l.grid.Text, l.margins.Text, l.pitch.Text})
			p.make()
		}
	}
	p.wrong = append(p.wrong, l.wrong...)
	return l.object
}

// readLabels takes over what is typed, and tells under each field what is wrong with
// it. Where no labels are printed nobody sees it, and it does not matter.
func (p *Page) readLabels() {
	l := &p.labels
	var wrong [4]error
	if p.has(sheet.Labels) {
		l.object.Show()
		wrong = p.parseLabels()
	} else {
		l.object.Hide()
	}
	for i, m := range l.wrong {
		m.Tell(p.ask.Say(), wrong[i])
	}
}

func (p *Page) parseLabels() (wrong [4]error) {
	l, u := &p.labels, p.host.Session().Project().Unit
	standard := sheet.DefaultLabels.Grid()
	grid := strings.TrimSpace(l.grid.Text)
	if grid == "" {
		grid = standard
	}
	// Each is read alone, so that a mistake is told under its own field.
	_, wrong[0] = sheet.ParseLabels(grid, "", "", u)
	_, wrong[1] = sheet.ParseLabels(standard, l.margins.Text, "", u)
	_, wrong[2] = sheet.ParseLabels(standard, "", l.pitch.Text, u)
	first := 1
	if s := strings.TrimSpace(l.first.Text); s != "" {
		var err error
		if first, err = strconv.Atoi(s); err != nil || first < 1 {
			wrong[3] = message.New("“%v” is no label of a sheet: write a number such as 5, counted along the rows.", s)
		}
	}
	if wrong == [4]error{} {
		p.options.Labels, _ = sheet.ParseLabels(grid, l.margins.Text, l.pitch.Text, u)
		p.options.First = first
		wrong[0] = p.options.CheckLabels()
	}
	return wrong
}
