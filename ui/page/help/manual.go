package help

import (
	"net/url"
	"strings"

	"fyne.io/fyne/v2"
	fynecanvas "fyne.io/fyne/v2/canvas"
	"fyne.io/fyne/v2/container"
	fynelayout "fyne.io/fyne/v2/layout"
	fynetheme "fyne.io/fyne/v2/theme"
	"fyne.io/fyne/v2/widget"

	"frontlay/assets/manual"
	"frontlay/ui/ask"
	"frontlay/ui/field"
	"frontlay/ui/look"
)

// book is the manual over a window: contents and search at the left, the chapter at
// the right.
type book struct {
	ask     *ask.Asker
	openURL func(*url.URL) error
	book    *manual.Book

	at     *manual.Chapter
	text   *fyne.Container       // of the chapter
	mark   *fynecanvas.Rectangle // beside the place that a link or the search led to
	scroll *container.Scroll
	left   *fyne.Container // contents, or what a search has found
	index  *container.Scroll
	search *field.Text
	back   *field.Button
	been   []visit
	rest   func() // gives the keys to the text
}

// visit is where the reader was.
type visit struct {
	chapter *manual.Chapter
	offset  float32
}

// Manual shows the manual in a language, by its code, open at a chapter.
func Manual(a *ask.Asker, language, chapter string, openURL func(*url.URL) error) {
	b := &book{ask: a, openURL: openURL, book: manual.In(language), rest: func() {}}
	b.left = field.Column()
	var whole fyne.CanvasObject
	b.index, whole = field.Scrolled(b.left)
	b.scroll = container.NewVScroll(container.NewStack())
	b.search = field.NewText(a.Text("Search in the manual"))
	b.search.OnChanged = func(string) { b.list() }
	b.back = field.NewButton(a.Text("Go back"), b.goBack)
	b.back.Disable()
	wide := float32(250)
	if look.Large() {
		wide *= 1.3
	}
	head := container.NewBorder(nil, nil, nil, b.back, b.search)
	side := container.New(field.AtLeast(wide), container.NewBorder(head, nil, nil, nil, whole))
	ground := fynecanvas.NewRectangle(look.Current().Sheet)
	ground.CornerRadius = 5
	right := container.NewStack(ground, container.New(inset(12), b.scroll))
	body := container.NewBorder(nil, nil, container.NewBorder(nil, nil, nil, field.Spacer(1), side), nil, right)
	c := a.Win.Canvas()
	d := a.Notice(a.Text("Manual"), a.Text("Close"), body, b.scroll, nil)
	close := c.Focused()
	b.rest = func() { c.Focus(close) }
	s := c.Size()
	d.Resize(fyne.NewSize(min(s.Width-32, 1240), s.Height-24))
	if b.book.Chapter(chapter) == nil {
		chapter = manual.Contents
	}
	b.show(manual.Place{Chapter: chapter})
}

// show shows a place in the manual.
func (b *book) show(to manual.Place) {
	c := b.book.Chapter(to.Chapter)
	if c != b.at {
		b.at, b.text = c, chapterOf(c, b.follow)
		b.text.Resize(fyne.NewSize(b.scroll.Size().Width-besideText-besideBar, 1)) // its height follows from its width
		b.mark = fynecanvas.NewRectangle(look.Current().Accent)
		b.scroll.Content = container.New(fynelayout.NewCustomPaddedLayout(0, 0, besideText, besideBar), container.NewStack(container.NewWithoutLayout(b.mark), b.text))
		b.scroll.Refresh()
		b.list()
	}
	y := float32(0)
	b.mark.Hide()
	if to.Block > 0 && to.Block < len(b.text.Objects) {
		o := b.text.Objects[to.Block]
		y = o.Position().Y
		high := o.Size().Height
		if t, ok := o.(*fyne.Container).Layout.(*table); ok && to.Row < len(t.tops) {
			y, high = y+t.tops[to.Row], t.bottom(to.Row)-t.tops[to.Row]
		}
		b.mark.Move(fyne.NewPos(-besideText, y))
		b.mark.Resize(fyne.NewSize(3, high))
		b.mark.Show()
		y -= reading() * 2
	}
	most := b.scroll.Content.MinSize().Height - b.scroll.Size().Height
	b.scroll.ScrollToOffset(fyne.NewPos(0, max(min(y, most), 0)))
}

// besideText is the room for the mark at the left of the text, besideBar that for the
// scroll bar.
const besideText, besideBar = 10, 14

// goTo goes to a place, from which one can come back.
func (b *book) goTo(to manual.Place) {
	b.been = append(b.been, visit{b.at, b.scroll.Offset.Y})
	b.back.Enable()
	b.show(to)
	b.rest()
}

// goBack shows what was shown before.
func (b *book) goBack() {
	if len(b.been) == 0 {
		return
	}
	last := b.been[len(b.been)-1]
	b.been = b.been[:len(b.been)-1]
	b.back.Able(len(b.been) > 0)
	b.show(manual.Place{Chapter: last.chapter.Name})
	b.scroll.ScrollToOffset(fyne.NewPos(0, last.offset))
	b.rest()
}

// follow goes where a link of the chapter leads; what lies outside of the manual,
// another program shows.
func (b *book) follow(to string) {
	if at, ok := b.book.Follow(b.at.Name, to); ok {
		b.goTo(at)
		return
	}
	u, err := url.Parse(to)
	if err == nil && u.IsAbs() {
		err = b.openURL(u)
	}
	if err != nil {
		b.ask.Complain(err)
	}
}

// list fills the left side: with what the search finds, or else with the contents and
// the headings of the chapter that is read.
func (b *book) list() {
	b.left.Objects = nil
	if words := strings.TrimSpace(b.search.Text); words != "" {
		b.listFound(words)
	} else {
		b.listContents()
	}
	b.left.Refresh()
	b.index.ScrollToTop()
	for _, o := range b.left.Objects {
		if e, ok := o.(*entry); ok && e.chosen && e.Position().Y+e.Size().Height > b.index.Size().Height/2 {
			b.index.ScrollToOffset(fyne.NewPos(0, min(e.Position().Y, max(b.index.Content.MinSize().Height-b.index.Size().Height, 0))))
		}
	}
}

func (b *book) listFound(words string) {
	found := b.book.Search(words)
	if len(found) == 0 {
		l := field.NewLabel(b.ask.Text("Nothing in the manual has “%v”.", words))
		l.Wrapping = fyne.TextWrapWord
		b.left.Add(l)
	}
	for _, f := range found {
		b.left.Add(newEntry(0, func() { b.goTo(f.Place) }, newFlow([]manual.Span{{Text: f.Text}}, look.Text(), false, nil), newFlow([]manual.Span{{Text: f.Where}}, look.Caption(), false, nil)))
	}
}

func (b *book) listContents() {
	for _, c := range b.book.Chapters {
		e := newEntry(0, func() { b.goTo(manual.Place{Chapter: c.Name}) }, newFlow([]manual.Span{{Text: c.Title}}, look.Text(), c == b.at, nil))
		e.chosen = c == b.at
		b.left.Add(e)
		if c != b.at || c.Name == manual.Contents {
			continue
		}
		for i, block := range c.Blocks {
			if block.Kind == manual.Heading && block.Level == 2 {
				b.left.Add(newEntry(12, func() { b.goTo(manual.Place{Chapter: c.Name, Block: i}) }, newFlow([]manual.Span{{Text: manual.Plain(block.Text)}}, look.Secondary(), false, nil)))
			}
		}
	}
}

// entry is a line of the left side that leads somewhere.
type entry struct {
	widget.BaseWidget
	field.Ring
	field.Hover
	in     float32 // from the left
	texts  []fyne.CanvasObject
	tint   *fynecanvas.Rectangle
	chosen bool // it is the chapter that is read
	do     func()
}

func newEntry(in float32, do func(), texts ...fyne.CanvasObject) *entry {
	e := &entry{in: in, texts: texts, do: do, tint: fynecanvas.NewRectangle(fynetheme.Color(fynetheme.ColorNameHover))}
	e.tint.CornerRadius = 5
	e.Changed = e.Refresh
	e.ExtendBaseWidget(e)
	return e
}

// Named is the first text.
func (e *entry) Named() string {
	return manual.Plain(e.texts[0].(*fyne.Container).Layout.(*flow).text)
}

// Tapped goes there.
func (e *entry) Tapped(*fyne.PointEvent) { e.do() }

// FocusGained shows the ring.
func (e *entry) FocusGained() { e.Gain(e, nil) }

// FocusLost takes the ring away.
func (e *entry) FocusLost() { e.Lose(e, nil) }

// TypedRune goes there by the space bar.
func (e *entry) TypedRune(r rune) {
	if r == ' ' {
		e.do()
	}
}

// TypedKey goes there by Enter.
func (e *entry) TypedKey(k *fyne.KeyEvent) { pressed(e, k, e.do) }

// CreateRenderer draws the texts below each other.
func (e *entry) CreateRenderer() fyne.WidgetRenderer { return e.Around(&entryRenderer{e}) }

type entryRenderer struct{ *entry }

const entryPad = 4

func (r *entryRenderer) Destroy() {}

func (r *entryRenderer) Layout(s fyne.Size) {
	r.tint.Resize(s)
	y := float32(entryPad)
	for _, t := range r.texts {
		t.Move(fyne.NewPos(entryPad+r.in, y))
		t.Resize(fyne.NewSize(max(s.Width-2*entryPad-r.in, 1), t.MinSize().Height))
		y += t.MinSize().Height
	}
}

func (r *entryRenderer) MinSize() fyne.Size {
	high := float32(2 * entryPad)
	for _, t := range r.texts {
		high += t.MinSize().Height
	}
	return fyne.NewSize(0, high)
}

func (r *entryRenderer) Objects() []fyne.CanvasObject {
	return append([]fyne.CanvasObject{r.tint}, r.texts...)
}

func (r *entryRenderer) Refresh() {
	r.tint.Hidden = !r.Hovered()
	r.tint.Refresh()
}
