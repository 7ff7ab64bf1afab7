package inspector

import (
	"strings"

	"fyne.io/fyne/v2"
	fynetheme "fyne.io/fyne/v2/theme"
	"fyne.io/fyne/v2/widget"

	"frontlay/layout/drawing"
	"frontlay/model"
	"frontlay/model/message"
	"frontlay/ui/field"
	"frontlay/ui/look"
	"frontlay/ui/session"
)

// finder is the field that finds figures: of what is selected, by showing only those
// with the word that is typed, else by telling which other thing has them.
type finder struct {
	field.Text
	panel *Panel
	hint  *field.Words // where a figure is that what is selected has not
	to    []drawing.Subject
}

func newFinder(p *Panel) *finder {
	f := &finder{panel: p, hint: field.NewLink("", nil)}
	f.ExtendBaseWidget(f)
	f.OnChanged = func(string) { p.filter() }
	f.OnSubmitted = func(string) { f.enter() }
	f.hint.OnTapped = f.follow
	f.hint.Hide()
	return f
}

// restyle says in the language and look of the moment what it is for.
func (f *finder) restyle() {
	p := look.Current()
	f.Icon = look.Icon("search", p.Soft, p.Field)
	f.SetPlaceHolder(f.panel.text("Find a figure"))
	key := field.NewLabel("/")
	key.Importance = widget.LowImportance
	f.ActionItem = key
}

// TypedKey gives up what is looked for on Esc, and goes to what was found by the down
// key.
func (f *finder) TypedKey(e *fyne.KeyEvent) {
	switch {
	case e.Name == fyne.KeyEscape && f.Entry.Text != "":
		f.SetText("")
	case e.Name == fyne.KeyDown:
		f.enter()
	default:
		f.Text.TypedKey(e)
	}
}

// enter goes to the first figure that was found, or to the thing that has one.
func (f *finder) enter() {
	if strings.TrimSpace(f.Entry.Text) == "" {
		return
	}
	if t := f.panel.found; t != nil && t.of != nil {
		if c := field.CanvasOf(f); c != nil {
			c.Focus(t.of)
		}
		return
	}
	f.follow()
}

// follow selects the thing that has the figure; what is looked for stays.
func (f *finder) follow() {
	if f.hint.Visible() {
		f.panel.session.Select(f.to...)
		if c := field.CanvasOf(f); c != nil {
			c.Focus(f)
		}
	}
}

// elsewhere tells which other thing has a figure of a word, and selects what.
func (p *Panel) elsewhere(word string) (message.Message, []drawing.Subject, bool) {
	here := p.session.Here()
	here.Cabinet, here.Bay, here.Front = max(here.Cabinet, 0), max(here.Bay, 0), max(here.Front, 0)
	doc := p.session.Project()
	bay := model.Place{Cabinet: here.Cabinet, Bay: here.Bay, Front: -1}
	for _, k := range []struct {
		of     message.Message
		there  bool
		things []drawing.Subject
	}{
		{message.New("fronts"), doc.FrontAt(here) != nil, []drawing.Subject{session.Front(here)}},
		{message.New("bays"), doc.BayAt(bay) != nil, []drawing.Subject{{Kind: drawing.BayThing, Place: bay}}},
		{message.New("cabinets"), doc.CabinetAt(here) != nil, []drawing.Subject{session.Cabinet(here)}},
		{message.New("the project"), true, nil},
	} {
		if !k.there || kindOf(k.things) == kindOf(p.shown) {
			continue
		}
		f := p.newForm(nil)
		f.fill(k.things)
		for _, s := range f.sections {
			called := []string{p.say().Say(s.title)}
			for _, t := range s.things {
				called = append(called, t.called)
			}
			for _, c := range called {
				if has(c, word) {
					return message.New("“%v” is a figure of %v. Go there", c, k.of), k.things, true
				}
			}
		}
	}
	return message.Message{}, nil, false
}

// filter shows what is looked for, everything where nothing is.
func (p *Panel) filter() {
	word := strings.TrimSpace(p.finder.Entry.Text)
	hint := p.finder.hint
	p.found = nil
	hint.Hide()
	if word == "" {
		p.form.end()
	} else if p.found = p.form.search(word); p.found == nil {
		where, things, ok := p.elsewhere(word)
		if !ok {
			where = message.New("No figure is called “%v”.", word)
		}
		p.finder.to = things
		hint.SetText(p.say().Say(where))
		hint.Show()
	}
	p.cards.hide(word != "")
	p.place()
}

// Find brings the keys to the field that finds figures.
func (p *Panel) Find() {
	if c := field.CanvasOf(p.finder); c != nil {
		c.Focus(p.finder)
		p.finder.SelectAll()
	}
}

// Rename brings the keys to the field for another name of what is selected, where that
// can have one.
func (p *Panel) Rename() {
	if p.form.head.entry != nil {
		p.form.head.title.Rename()
	}
}

// iconSize is the size of signs beside words.
func iconSize() fyne.Size { return fyne.NewSquareSize(fynetheme.Size(fynetheme.SizeNameInlineIcon)) }
