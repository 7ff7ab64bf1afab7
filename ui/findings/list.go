package findings

import (
	"slices"

	"fyne.io/fyne/v2"
	fynecanvas "fyne.io/fyne/v2/canvas"
	"fyne.io/fyne/v2/container"
	fynetheme "fyne.io/fyne/v2/theme"
	"fyne.io/fyne/v2/widget"

	"frontlay/model/edit"
	"frontlay/model/message"
	"frontlay/ui/field"
	"frontlay/ui/look"
)

// list is Fyne's list with rows as high as their texts are, grouped by rule below a
// head of their own, and keys: up and down choose, Enter goes on to what can be done
// about the chosen one. A ring shows that it has the focus.
type list struct {
	widget.List
	field.Ring
	panel   *Panel
	entries []entry
	order   []int              // findings as they are listed
	sample  *field.Label       // measures texts
	heights map[string]float32 // of the rows of texts, in the width of the moment
	width   float32
	size    float32 // of letters, for which heights hold
	tops    []float32
}

// entry is a row of the list: the head of a group, or a finding.
type entry struct {
	group *group
	found int // index in the findings; -1: the head
}

func newList(p *Panel) *list {
	l := &list{panel: p, sample: field.NewLabel("")}
	l.ExtendBaseWidget(l)
	l.sample.Wrapping = fyne.TextWrapWord
	l.Length = func() int { return len(l.entries) }
	l.CreateItem, l.UpdateItem = newRow, l.fill
	l.HideSeparators = true
	l.OnSelected = func(at int) {
		if p.quiet || at < 0 || at >= len(l.entries) {
			return
		}
		if e := l.entries[at]; e.found >= 0 {
			p.choose(e.found)
		} else {
			p.choose(e.group.found[0])
		}
	}
	return l
}

// take lists other findings.
func (l *list) take(groups []group) {
	l.entries, l.order = l.entries[:0], l.order[:0]
	for k := range groups {
		l.entries = append(l.entries, entry{&groups[k], -1})
		for _, i := range groups[k].found {
			l.entries = append(l.entries, entry{&groups[k], i})
			l.order = append(l.order, i)
		}
	}
}

// rowOf is where a finding is listed; -1: it is not.
func (l *list) rowOf(found int) int {
	if found < 0 {
		return -1
	}
	return slices.IndexFunc(l.entries, func(e entry) bool { return e.found == found })
}

// Resize gives the rows the heights that their texts have in the new width.
func (l *list) Resize(s fyne.Size) {
	l.List.Resize(s)
	if s.Width != l.width {
		l.measure()
	}
}

// measure gives every row the height of its text.
func (l *list) measure() {
	size := fynetheme.Size(fynetheme.SizeNameText)
	if l.width != l.Size().Width || l.size != size {
		l.width, l.size, l.heights = l.Size().Width, size, map[string]float32{}
	}
	if l.width == 0 {
		return
	}
	l.tops = append(l.tops[:0], 0)
	for i := range l.entries {
		h := l.heightOf(l.text(l.entries[i]), l.panel.mendable(l.entries[i]))
		l.SetItemHeight(i, h)
		l.tops = append(l.tops, l.tops[i]+h+fynetheme.Size(fynetheme.SizeNamePadding))
	}
}

// mendable tells that an entry leaves room for what mends it.
func (p *Panel) mendable(e entry) bool { return e.found >= 0 && p.rows[e.found].Accepted == "" }

func (l *list) heightOf(text string, mendable bool) float32 {
	h, known := l.heights[text]
	if !known {
		l.sample.SetText(text)
		l.sample.Resize(fyne.NewSize(textWidth(l.width, mendable), 0))
		h = l.sample.MinSize().Height
		l.heights[text] = h
	}
	return h
}

// text is what an entry says: the rule with its severity and the count, or what is
// wrong where.
func (l *list) text(e entry) string {
	say := l.panel.say()
	if e.found < 0 {
		if e.group.rule == acceptedChip {
			return say.Say(message.New("Accepted: %v", len(e.group.found)))
		}
		_, word, _ := Sign(&l.panel.rows[e.group.found[0]])
		return say.Say(message.New("%v (%v): %v", e.group.title, word, len(e.group.found)))
	}
	f := &l.panel.rows[e.found]
	return say.Say(f.Where) + ": " + say.Say(f.What)
}

// show scrolls so far that a row is seen whole.
func (l *list) show(i int) {
	if i < 0 || i+1 >= len(l.tops) {
		return
	}
	y, high := l.GetScrollOffset(), l.Size().Height
	y = max(y, l.tops[i+1]-high)
	l.ScrollToOffset(min(y, l.tops[i]))
}

// FocusGained shows the ring.
func (l *list) FocusGained() { l.Gain(l, nil) }

// FocusLost takes the ring away.
func (l *list) FocusLost() { l.Lose(l, nil) }

// TypedKey chooses, and goes on to the chosen one.
func (l *list) TypedKey(e *fyne.KeyEvent) {
	if !l.Visible() {
		l.handBack(e)
		return
	}
	const somePage = 4 // about as many rows as are seen
	p, at := l.panel, slices.Index(l.order, l.panel.chosen)
	switch e.Name {
	case fyne.KeyDown:
		l.choose(at + 1)
	case fyne.KeyUp:
		l.choose(at - 1)
	case fyne.KeyPageDown:
		l.choose(at + somePage)
	case fyne.KeyPageUp:
		l.choose(at - somePage)
	case fyne.KeyHome:
		l.choose(0)
	case fyne.KeyEnd:
		l.choose(len(l.order))
	case fyne.KeyReturn, fyne.KeyEnter, fyne.KeySpace:
		p.enter()
	case fyne.KeyEscape:
		p.Close()
	default:
		field.HandOn(l, e)
	}
}

// choose chooses the nth of the findings, or the first or last one.
func (l *list) choose(nth int) {
	if len(l.order) > 0 {
		l.panel.choose(l.order[max(min(nth, len(l.order)-1), 0)])
	}
}

// handBack gives the keyboard, with a key, to the drawing: a list that was emptied
// behind a dialog has kept it.
func (l *list) handBack(e *fyne.KeyEvent) {
	c := field.CanvasOf(l)
	if c == nil {
		return
	}
	c.Unfocus()
	if take := c.OnTypedKey(); take != nil {
		take(e)
	}
}

// CreateRenderer draws the list with its ring.
func (l *list) CreateRenderer() fyne.WidgetRenderer {
	return l.Around(l.List.CreateRenderer())
}

// newRow makes a row: the sign of the severity before a head, what is wrong where,
// and what mends it.
func newRow() fyne.CanvasObject {
	sign := &fynecanvas.Image{FillMode: fynecanvas.ImageFillContain}
	text := field.NewLabel("")
	text.Wrapping = fyne.TextWrapWord
	return container.New(&rowLayout{}, sign, text, newMend())
}

// fill writes an entry into a row.
func (l *list) fill(at widget.ListItemID, o fyne.CanvasObject) {
	if at < 0 || at >= len(l.entries) {
		return
	}
	e, c := l.entries[at], o.(*fyne.Container)
	sign, text, fix := c.Objects[0].(*fynecanvas.Image), c.Objects[1].(*field.Label), c.Objects[2].(*mend)
	head := e.found < 0
	if sign.Hidden = !head; head {
		p := look.Current()
		_, ink := p.Severity(e.group.severity)
		look.SetIcon(sign, look.SeverityIcon(e.group.severity), ink, p.OnSign)
	}
	if t := l.text(e); text.Text != t || text.TextStyle.Bold != head {
		text.TextStyle.Bold = head
		text.SetText(t)
	}
	fix.Hidden = true
	mendable := l.panel.mendable(e)
	if mendable && l.panel.Open() && !l.panel.session.InGesture() {
		if all := l.panel.session.Offered(l.panel.rows[e.found]); len(all) > 0 {
			fix.Hidden = false
			fix.write(l.panel.mendWords(e.found, all[0], mendRoom(l.width)), func() { l.panel.do(all[0]) })
		}
	}
	c.Layout.(*rowLayout).mendable = mendable
	c.Layout.Layout(c.Objects, c.Size())
}

// mendWords says what mends a finding, as fully as there is room.
func (p *Panel) mendWords(found int, by edit.Edit, room float32) string {
	say := p.say()
	if words := say.Say(p.named(by, p.rows[found])); mendWidth(words) <= room {
		return words
	}
	return say.Say(message.New("Mend it"))
}

// markWidth is the room for the sign before a head.
func markWidth() float32 { return look.IconSize() + 2*fynetheme.Size(fynetheme.SizeNameInnerPadding) }

// mendRoom is the room for what mends a finding, in a list of a width.
func mendRoom(width float32) float32 { return width * 0.32 }

// textWidth is the width for a text in a list of a width.
func textWidth(width float32, mendable bool) float32 {
	if mendable {
		width -= mendRoom(width)
	}
	return width - markWidth()
}

// rowLayout puts the sign before the first line of the text, and what mends it after.
type rowLayout struct{ mendable bool }

// Layout lays a row out.
func (r *rowLayout) Layout(o []fyne.CanvasObject, s fyne.Size) {
	pad := fynetheme.Size(fynetheme.SizeNameInnerPadding)
	side := look.IconSize()
	o[0].Move(fyne.NewPos(pad, pad-1))
	o[0].Resize(fyne.NewSquareSize(side))
	o[1].Move(fyne.NewPos(markWidth(), 0))
	o[1].Resize(fyne.NewSize(textWidth(s.Width, r.mendable), s.Height))
	fix := o[2].MinSize()
	o[2].Move(fyne.NewPos(s.Width-fix.Width-pad, pad/2))
	o[2].Resize(fix)
}

// MinSize is that of a row with one line.
func (*rowLayout) MinSize([]fyne.CanvasObject) fyne.Size {
	size, pad := fynetheme.Size(fynetheme.SizeNameText), fynetheme.Size(fynetheme.SizeNameInnerPadding)
	return fyne.NewSize(12*size, 1.4*size+2*pad)
}
