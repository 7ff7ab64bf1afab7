package inspector

import (
	"strconv"

	"fyne.io/fyne/v2"
	fynecanvas "fyne.io/fyne/v2/canvas"
	"fyne.io/fyne/v2/container"
	fynetheme "fyne.io/fyne/v2/theme"

	"frontlay/layout/check"
	"frontlay/layout/drawing"
	"frontlay/layout/view"
	"frontlay/model"
	"frontlay/model/edit"
	"frontlay/model/figure"
	"frontlay/model/message"
	"frontlay/ui/field"
	"frontlay/ui/look"
	"frontlay/ui/session"
)

// head tells what is selected: where it is, its number and name, and of which kind.
type head struct {
	path  []fyne.CanvasObject
	badge fyne.CanvasObject // number of a front in a ring; nil: none
	title *field.Title
	entry *field.Entry // for another name; nil: it can't have one
	kind  fyne.CanvasObject
}

// step is a part of the path to what is selected.
type step struct {
	words  message.Message
	things []drawing.Subject
}

// headForm is what stands above the sections.
type headForm struct{ *form }

// path tells where what is selected is; each part leads there.
func (f headForm) path(at model.Place) {
	var steps []step
	if p := f.session.Project(); at != model.Whole || len(f.session.SelectedFronts()) > 1 {
		title := message.New("Project")
		if p.Title != "" {
			title = message.New("%v", p.Title)
		}
		steps = append(steps, step{title, nil})
	}
	if c := f.session.Project().CabinetAt(at); c != nil && (at.Bay >= 0 || at.Front >= 0) {
		name := message.New("%v", c.Name)
		if c.Name == "" {
			name = message.New("Cabinet %v", at.Cabinet+1)
		}
		steps = append(steps, step{name, []drawing.Subject{session.Cabinet(at)}})
		if at.Front >= 0 {
			bay := model.Place{Cabinet: at.Cabinet, Bay: at.Bay, Front: -1}
			steps = append(steps, step{message.New("Bay %v", at.Bay+1), []drawing.Subject{{Kind: drawing.BayThing, Place: bay}}})
		}
	}
	for i, s := range steps {
		if i > 0 {
			f.head.path = append(f.head.path, newSmallWord("›"))
		}
		w, at := take(f.form, "path", strconv.Itoa(i), func(*field.Words) {}, func() *field.Words { return field.NewWords("", nil) })
		w.SetText(f.say().Say(s.words))
		w.OnTapped = func() { f.session.Select(s.things...) }
		f.head.path = append(f.head.path, w)
		f.focus = append(f.focus, labelled{at, w})
	}
}

// newSmallWord is a quiet sign between two words.
func newSmallWord(s string) fyne.CanvasObject {
	return fynecanvas.NewText(s, fynetheme.Color(fynetheme.ColorNamePlaceHolder))
}

// named is the head of what can have a name. shown says what it is called where it
// has none.
func (f headForm) named(at model.Place, key string, shown func() string, put func(string) edit.Edit) {
	label := f.value(at, key).Name
	s := field.Source{
		Get: func() field.Value {
			return field.Value{Text: *f.value(at, key).Value.(*figure.Text).At, Grey: shown()}
		},
		Put:     func(text string) error { return f.session.Do(put(text)) },
		Refused: f.tell,
		Check: func(text string) error {
			_, err := put(text).Apply(f.session.Committed())
			return err
		},
	}
	n, at2 := take(f.form, "name", label.Text, func(n *name) { n.use(s, shown) }, func() *name {
		e := field.NewEntry(s)
		n := &name{Entry: e, title: field.NewTitle("", e)}
		n.use(s, shown)
		return n
	})
	f.head.title, f.head.entry = n.title, n.Entry
	f.focus = append(f.focus, labelled{part{"title", label.Text, 0}, n.title}, labelled{at2, n.Entry})
	f.updates = append(f.updates, n.Update)
}

// name is a title with the field for another one.
type name struct {
	*field.Entry
	title *field.Title
	shown func() string
}

func (n *name) use(s field.Source, shown func() string) {
	n.shown = shown
	n.title.Use(s)
	n.Update()
}

// Update says what it is called now.
func (n *name) Update() {
	n.Entry.Update()
	text := n.shown()
	if n.Entry.Text != "" && !n.Entry.Dirty() {
		text = n.Entry.Text
	}
	n.title.SetText(text)
}

// called is the head of what has no name of its own.
func (f headForm) called(text string) {
	t, _ := take(f.form, "called", "", func(*field.Title) {}, func() *field.Title { return field.NewTitle("", nil) })
	t.SetText(text)
	f.head.title = t
	f.focus = append(f.focus, labelled{part{"called", "", 0}, t})
}

// kindly says of which kind a thing is that can be of no other.
func (f headForm) kindly(text string) { f.head.kind = newSmallWord(text) }

// badge is the number of a front in a ring, as in the drawing: filled with the colour
// of the worst that was found about it.
func badge(number int, worst *check.Finding) fyne.CanvasObject {
	p := look.Current()
	text := fynecanvas.NewText(strconv.Itoa(number), p.Ink)
	text.TextStyle.Bold, text.TextSize = true, look.Text()
	ring := fynecanvas.NewRectangle(p.Panel)
	ring.StrokeColor, ring.StrokeWidth = p.Ink, 1.3
	if worst != nil {
		_, c := p.Severity(view.Severity(worst))
		ring.FillColor, ring.StrokeColor, text.Color = c, c, p.OnSign
	}
	side := 1.75 * look.Text()
	wide := max(side, text.MinSize().Width+side/2)
	ring.CornerRadius = side / 2
	return container.New(fixed(fyne.NewSize(wide, side)), ring, container.NewCenter(text))
}

// fixed is a layout of one size for all its objects.
type fixed fyne.Size

func (s fixed) Layout(o []fyne.CanvasObject, _ fyne.Size) {
	for _, c := range o {
		c.Resize(fyne.Size(s))
	}
}

func (s fixed) MinSize([]fyne.CanvasObject) fyne.Size { return fyne.Size(s) }

// headline lays out ring, name, the field for another name, and kind: the kind below
// where there is no room beside the name.
type headline struct{ badge, title, entry, kind fyne.CanvasObject }

const headGap = 8

// headline is the line of the head.
func (h *head) headline() *fyne.Container {
	l := &headline{title: h.title, badge: h.badge, kind: h.kind}
	all := []fyne.CanvasObject{h.title}
	if h.badge != nil {
		all = append(all, h.badge)
	}
	if h.entry != nil {
		l.entry = h.entry
		all = append(all, h.entry)
	}
	if h.kind != nil {
		all = append(all, h.kind)
	}
	return container.New(l, all...)
}

// Layout lays the line out.
func (h *headline) Layout(_ []fyne.CanvasObject, s fyne.Size) { h.lay(s.Width) }

// MinSize is for the width of the last layout.
func (h *headline) MinSize(o []fyne.CanvasObject) fyne.Size {
	width := float32(0)
	for _, c := range o {
		width = max(width, c.Position().X+c.Size().Width)
	}
	if width == 0 {
		return fyne.NewSize(0, h.title.MinSize().Height)
	}
	return fyne.NewSize(0, h.lay(width))
}

// lay puts the objects in their places and gives the height that takes.
func (h *headline) lay(width float32) float32 {
	left, name, kind := float32(0), width, float32(0)
	if h.badge != nil {
		left = h.badge.MinSize().Width + headGap
		name -= left
	}
	below := false
	if h.kind != nil {
		kind = h.kind.MinSize().Width
		if n, ok := h.kind.(interface{ Need() float32 }); ok {
			kind = n.Need()
		}
		if below = h.title.(*field.Title).Need() > name-kind-headGap; !below {
			name -= kind + headGap
		}
	}
	line, under := float32(0), float32(0)
	type placed struct {
		o          fyne.CanvasObject
		x, w, high float32
	}
	var all []placed
	place := func(o fyne.CanvasObject, x, w float32) {
		high := field.HighAt(o, w)
		all = append(all, placed{o, x, w, high})
		line = max(line, high)
	}
	place(h.title, left-4, name+4)
	if h.badge != nil {
		place(h.badge, 0, left-headGap)
	}
	if h.entry != nil {
		place(h.entry, left, name)
	}
	switch {
	case h.kind != nil && below:
		high := field.HighAt(h.kind, kind)
		field.Put(h.kind, fyne.NewPos(width-kind, line+2), fyne.NewSize(kind, high))
		under = high + 2
	case h.kind != nil:
		place(h.kind, width-kind, kind)
	}
	for _, p := range all {
		field.Put(p.o, fyne.NewPos(p.x, (line-p.high)/2), fyne.NewSize(p.w, p.high))
	}
	return line + under
}
