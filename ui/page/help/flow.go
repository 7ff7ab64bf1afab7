package help

import (
	"math"
	"strings"

	"fyne.io/fyne/v2"
	fynecanvas "fyne.io/fyne/v2/canvas"
	"fyne.io/fyne/v2/driver/desktop"
	"fyne.io/fyne/v2/widget"

	"frontlay/assets/manual"
	"frontlay/ui/field"
	"frontlay/ui/look"
)

// flow is a layout that breaks a text of several kinds into lines as wide as its
// place. Fyne's own widget for such texts does not break links, and sets a space
// before whatever follows another kind. It makes the objects of its container anew
// for every width; a container keeps them, which a renderer does not.
type flow struct {
	box    *fyne.Container
	text   []manual.Span
	size   float32
	bold   bool
	follow func(to string) // what a link does; nil: links are plain
	width  float32         // of the lines that are there
	height float32
}

// newFlow makes a text of a size of letters.
func newFlow(text []manual.Span, size float32, bold bool, follow func(to string)) *fyne.Container {
	f := &flow{text: text, size: size, bold: bold, follow: follow, height: lineHeight(size)}
	f.box = &fyne.Container{Layout: f}
	return f.box
}

// lineHeight is from line to line, with a little more than letters need.
func lineHeight(size float32) float32 {
	return whole(fyne.MeasureText("M", size, fyne.TextStyle{}).Height + size/4)
}

// whole is a length on whole units: letters between two lose a row of their pixels.
func whole(length float32) float32 { return float32(math.Round(float64(length))) }

// word is what is not broken: parts of different kinds without a space between them.
type word struct {
	space string // before it
	parts []manual.Span
}

// wordsOf takes a text apart at its spaces.
func wordsOf(text []manual.Span) []word {
	all := []word{{}}
	for _, s := range text {
		for s.Text != "" {
			last := &all[len(all)-1]
			end := strings.IndexByte(s.Text, ' ')
			switch {
			case end < 0:
				last.parts = append(last.parts, s)
				s.Text = ""
			case end > 0:
				part := s
				part.Text = s.Text[:end]
				last.parts = append(last.parts, part)
				s.Text = s.Text[end:]
			default:
				rest := strings.TrimLeft(s.Text, " ")
				space := s.Text[:len(s.Text)-len(rest)]
				if len(last.parts) > 0 || last.space != "" {
					all = append(all, word{space: space})
				} else {
					last.space = space
				}
				s.Text = rest
			}
		}
	}
	return all
}

func (f *flow) style(s manual.Span) fyne.TextStyle {
	return fyne.TextStyle{Bold: f.bold || s.Bold, Italic: s.Italic, Monospace: s.Code}
}

func (f *flow) wide(s manual.Span) float32 {
	return fyne.MeasureText(s.Text, f.size, f.style(s)).Width
}

// wideWord is the width of a word without the space before it.
func (f *flow) wideWord(w word) float32 {
	sum := float32(0)
	for _, p := range w.parts {
		sum += f.wide(p)
	}
	return sum
}

// natural is the width of the text in one line, and that of its longest word.
func (f *flow) natural() (line, longest float32) {
	for i, w := range wordsOf(f.text) {
		wide := f.wideWord(w)
		longest = max(longest, wide)
		if i > 0 {
			wide += f.wide(manual.Span{Text: w.space})
		}
		line += wide
	}
	return line + 1, longest + 1
}

// Layout breaks the text anew where the width is another one.
func (f *flow) Layout(_ []fyne.CanvasObject, s fyne.Size) {
	if s.Width == f.width || s.Width <= 1 { // it has no place yet
		return
	}
	f.width = s.Width
	f.box.Objects = nil
	y, high := float32(0), lineHeight(f.size)
	for _, line := range f.lines() {
		x := float32(0)
		for _, run := range line {
			o := f.object(run)
			wide := f.wide(run)
			o.Move(fyne.NewPos(x, y))
			o.Resize(fyne.NewSize(wide, high))
			f.box.Objects = append(f.box.Objects, o)
			x += wide
		}
		y += high
	}
	f.height = max(y, high)
}

// MinSize is as high as the lines are.
func (f *flow) MinSize([]fyne.CanvasObject) fyne.Size { return fyne.NewSize(0, f.height) }

// lines are the runs of one kind in each line.
func (f *flow) lines() [][]manual.Span {
	lines, x := [][]manual.Span{nil}, float32(0)
	put := func(p manual.Span) {
		line := &lines[len(lines)-1]
		x += f.wide(p)
		if n := len(*line); n > 0 {
			last := &(*line)[n-1]
			if same := *last; f.style(same) == f.style(p) && same.To == p.To {
				last.Text += p.Text
				return
			}
		}
		*line = append(*line, p)
	}
	next := func() { lines, x = append(lines, nil), 0 }
	for i, w := range wordsOf(f.text) {
		if len(w.parts) == 0 {
			continue
		}
		space := manual.Span{Text: w.space}
		if first := w.parts[0]; i > 0 && len(lines[len(lines)-1]) > 0 {
			if line := lines[len(lines)-1]; line[len(line)-1].To == first.To && f.style(line[len(line)-1]) == f.style(first) {
				space = line[len(line)-1]
				space.Text = w.space
			}
		}
		if i == 0 && w.parts[0].Code {
			space.Code = true // of a line of code that is set in
		}
		if x > 0 && x+f.wide(space)+f.wideWord(w) > f.width {
			next()
		} else if w.space != "" {
			put(space)
		}
		for _, p := range w.parts {
			for x+f.wide(p) > f.width && len(w.parts) > 0 {
				fits := f.fitting(p, f.width-x)
				if fits == len(p.Text) {
					break
				}
				head := p
				head.Text, p.Text = p.Text[:fits], p.Text[fits:]
				put(head)
				next()
			}
			put(p)
		}
	}
	return lines
}

// fitting is how many bytes of a word fit into a width, at least its first letter.
func (f *flow) fitting(p manual.Span, width float32) int {
	fits := 0
	for i := range p.Text {
		if i == 0 {
			continue
		}
		part := p
		part.Text = p.Text[:i]
		if fits > 0 && f.wide(part) > width {
			return fits
		}
		fits = i
	}
	if fits == 0 || f.wide(p) <= width {
		return len(p.Text)
	}
	return fits
}

// object is a run in a line.
func (f *flow) object(run manual.Span) fyne.CanvasObject {
	if run.To != "" && f.follow != nil {
		return newLink(run.Text, f.size, f.style(run), func() { f.follow(run.To) })
	}
	t := fynecanvas.NewText(run.Text, look.Current().Ink)
	t.TextSize, t.TextStyle = f.size, f.style(run)
	return t
}

// link is a text that leads elsewhere: underlined, because colour alone does not tell
// everyone, and pressed by Enter and the space bar too.
type link struct {
	widget.BaseWidget
	field.Ring
	field.Hover
	text *fynecanvas.Text
	line *fynecanvas.Rectangle
	do   func()
}

func newLink(text string, size float32, style fyne.TextStyle, do func()) *link {
	accent := look.Current().Accent
	l := &link{text: fynecanvas.NewText(text, accent), line: fynecanvas.NewRectangle(accent), do: do}
	l.text.TextSize, l.text.TextStyle = size, style
	l.Changed = func() { l.Refresh() }
	l.ExtendBaseWidget(l)
	return l
}

// Named is what the link says.
func (l *link) Named() string { return l.text.Text }

// Tapped follows the link.
func (l *link) Tapped(*fyne.PointEvent) { l.do() }

// Cursor is a hand.
func (l *link) Cursor() desktop.Cursor { return desktop.PointerCursor }

// FocusGained shows the ring.
func (l *link) FocusGained() { l.Gain(l, nil) }

// FocusLost takes the ring away.
func (l *link) FocusLost() { l.Lose(l, nil) }

// TypedRune follows the link by the space bar.
func (l *link) TypedRune(r rune) {
	if r == ' ' {
		l.do()
	}
}

// TypedKey follows the link by Enter.
func (l *link) TypedKey(e *fyne.KeyEvent) { pressed(l, e, l.do) }

// pressed does what Enter means on something that can be pressed, and hands other keys
// on.
func pressed(o fyne.CanvasObject, e *fyne.KeyEvent, do func()) {
	switch e.Name {
	case fyne.KeyReturn, fyne.KeyEnter:
		do()
	case fyne.KeyEscape:
		field.Leave(o, e)
	default:
		field.HandOn(o, e)
	}
}

// CreateRenderer draws the text over its line.
func (l *link) CreateRenderer() fyne.WidgetRenderer {
	return l.Around(&linkRenderer{l})
}

type linkRenderer struct{ *link }

func (r *linkRenderer) Destroy() {}

func (r *linkRenderer) Layout(s fyne.Size) {
	r.text.Resize(s)
	under := whole(fyne.MeasureText("M", r.text.TextSize, r.text.TextStyle).Height * 0.92)
	r.line.Move(fyne.NewPos(0, under))
	r.line.Resize(fyne.NewSize(s.Width, 1))
}

func (r *linkRenderer) MinSize() fyne.Size {
	return fyne.NewSize(r.text.MinSize().Width, lineHeight(r.text.TextSize))
}

func (r *linkRenderer) Objects() []fyne.CanvasObject { return []fyne.CanvasObject{r.text, r.line} }

func (r *linkRenderer) Refresh() {
	high := float32(1)
	if r.Hovered() {
		high = 2
	}
	r.line.Resize(fyne.NewSize(r.line.Size().Width, high))
	r.line.Refresh()
}
