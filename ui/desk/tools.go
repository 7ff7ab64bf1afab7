package desk

import (
	"fyne.io/fyne/v2"
	fynecanvas "fyne.io/fyne/v2/canvas"
	"fyne.io/fyne/v2/container"

	"frontlay/model/message"
	"frontlay/ui/bar"
	"frontlay/ui/command"
	"frontlay/ui/look"
	"frontlay/ui/tip"
)

// tools are the bar over the sheet: what the hand does, steps back and forth, what
// is looked at and how; at the right the file and what leaves the program.
type tools struct {
	object *fyne.Container
	of     map[*command.Command]*bar.Button
	views  *bar.Choice
	file   *fynecanvas.Text // and its state
	marks  []*fynecanvas.Rectangle

	from        map[*bar.Button]int // the form from which on a button has no words
	name, state string
	form        int // how much is left out to make room
}

// kinds are how the buttons of each group look.
var kinds = map[command.Group]bar.Kind{
	command.Hand: bar.Tool, command.Steps: bar.Plain, command.Pictures: bar.Segment, command.Sight: bar.Edged,
	command.Size: bar.Plain, command.File: bar.Plain, command.Out: bar.Filled, command.Beside: bar.Plain,
}

func newTools(h Host, t *command.Table, run func(*command.Command)) *tools {
	b := &tools{of: map[*command.Command]*bar.Button{}, from: map[*bar.Button]int{}, file: fynecanvas.NewText("", nil)}
	var groups [command.Beside + 1][]*bar.Button
	for i := range t.Rows {
		c := &t.Rows[i]
		if c.Button.Icon == "" {
			continue
		}
		words := ""
		if c.Button.Words != "" {
			words = h.Say().Say(message.New(c.Button.Words))
		}
		one := bar.NewButton(kinds[c.Button.Group], c.Button.Icon, words, func() { run(c) })
		one.Tip = func() tip.Text { return tip.Text{Name: t.Name(c), Keys: t.Keys(c)} }
		b.of[c] = one
		groups[c.Button.Group] = append(groups[c.Button.Group], one)
	}
	for group, from := range map[command.Group]int{command.Hand: noWordsHand, command.Sight: noWordsSight, command.Out: noWordsOut, command.Pictures: noWordsViews} {
		for _, one := range groups[group] {
			b.from[one] = from
		}
	}
	b.views = bar.NewChoice(groups[command.Pictures]...)
	b.object = container.New(&toolsLayout{b})
	add := func(buttons ...[]*bar.Button) {
		for _, group := range buttons {
			for _, one := range group {
				b.object.Add(one)
			}
		}
	}
	line := func() {
		r := fynecanvas.NewRectangle(nil)
		b.marks = append(b.marks, r)
		b.object.Add(r)
	}
	add(groups[command.Hand])
	line()
	add(groups[command.Steps])
	line()
	b.object.Add(b.views)
	add(groups[command.Sight], groups[command.Size])
	b.object.Add(b.file)
	add(groups[command.File], groups[command.Out], groups[command.Beside])
	b.colour()
	return b
}

// update shows which tool is in the hand, what is looked at, what can be done, and
// the state of the file.
func (b *tools) update(name, state string) {
	for c, one := range b.of {
		one.Choose(c.Checked != nil && c.Checked())
		one.Able(c.Possible())
	}
	if b.name != name || b.state != state {
		b.name, b.state = name, state
		b.object.Refresh()
	}
}

// colour takes the colours of the moment.
func (b *tools) colour() {
	p := look.Current()
	for _, r := range b.marks {
		r.FillColor = p.Line
	}
	b.file.Color, b.file.TextSize = p.Soft, look.Secondary()
	b.object.Refresh()
	for _, one := range b.of {
		one.Refresh()
	}
	b.views.Refresh()
}

// Forms of the bar, each with less in it than the one before, for narrower windows:
// never a second row.
const (
	whole        = iota
	noFile       // its state alone is told
	noWordsHand  // the tools have their icons alone
	noWordsSight // and so has what is looked through
	noState
	noWordsOut
	noWordsViews
	narrowest = noWordsViews
)

// leaves tells that a form leaves out the words of a button.
func (b *tools) leaves(form int, one *bar.Button) bool {
	from, can := b.from[one]
	return can && form >= from
}

// take leaves out what a form leaves out.
func (b *tools) take(form int) {
	if b.form == form {
		return
	}
	b.form = form
	for one := range b.from {
		one.Short(b.leaves(form, one))
	}
	b.views.Refresh()
}

// told is what stands in a form before the button that saves.
func (b *tools) told(form int) string {
	switch {
	case form >= noState:
		return ""
	case form >= noFile || b.name == "":
		return b.state
	default:
		return b.name + " · " + b.state
	}
}

// toolsLayout puts the bar's parts into one row: what is after the file's name
// stands at the right.
type toolsLayout struct{ tools *tools }

// Rooms in the bar, in units of the screen.
const (
	barPad    = 8 // at its ends
	barGap    = 4 // between buttons
	groupGap  = 8 // beside the lines between groups, and around the control of views
	lineHigh  = 22
	barAround = 6 // above and below the buttons
)

// toolsHeight is how high the bar of tools is.
func toolsHeight() float32 { return bar.Height() + 2*barAround }

// Layout takes the fullest form that fits.
func (l *toolsLayout) Layout(o []fyne.CanvasObject, s fyne.Size) {
	b := l.tools
	form := whole
	left, right := l.widths(o, form)
	for form < narrowest && left+right > s.Width {
		form++
		left, right = l.widths(o, form)
	}
	b.take(form)
	b.file.Text = b.told(form)
	b.file.Refresh()
	x := float32(barPad)
	for _, one := range o {
		if one == fyne.CanvasObject(b.file) {
			x = s.Width - right
		}
		before, size, after := l.room(one, form)
		x += before
		one.Resize(size)
		one.Move(fyne.NewPos(x, (s.Height-size.Height)/2))
		x += size.Width + after
	}
}

// room is what a part takes in a form, and leaves free before and after it. It tries
// nothing out: what changes while a size is asked for is painted again, and then the
// size is asked for again, without end.
func (l *toolsLayout) room(o fyne.CanvasObject, form int) (before float32, size fyne.Size, after float32) {
	switch v := o.(type) {
	case *fynecanvas.Rectangle:
		return groupGap - barGap, fyne.NewSize(1, lineHigh), groupGap
	case *bar.Choice:
		return 0, fyne.NewSize(v.Width(form >= noWordsViews), bar.Height()), groupGap
	case *bar.Button:
		return 0, fyne.NewSize(v.Width(l.tools.leaves(form, v)), bar.Height()), barGap
	default:
		return groupGap, fyne.MeasureText(l.tools.told(form), look.Secondary(), fyne.TextStyle{}), groupGap
	}
}

// widths are those of what stands at the left and at the right in a form.
func (l *toolsLayout) widths(o []fyne.CanvasObject, form int) (left, right float32) {
	sum := &left
	for _, one := range o {
		if one == fyne.CanvasObject(l.tools.file) {
			sum = &right
		}
		before, size, after := l.room(one, form)
		*sum += before + size.Width + after
	}
	return left + barPad, right + barPad - barGap
}

// MinSize is that of the narrowest form.
func (l *toolsLayout) MinSize(o []fyne.CanvasObject) fyne.Size {
	left, right := l.widths(o, narrowest)
	return fyne.NewSize(left+right, toolsHeight())
}
