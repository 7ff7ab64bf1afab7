package field

import (
	"image/color"

	"fyne.io/fyne/v2"
	fynecanvas "fyne.io/fyne/v2/canvas"
	fynetheme "fyne.io/fyne/v2/theme"
	"fyne.io/fyne/v2/widget"
)

// Fold is the head of a section of a form: a press folds what stands below it, and
// then the head tells what that says in short.
type Fold struct {
	widget.BaseWidget
	Ring
	Hover
	// OnFold is told after a press; nil: nobody asks.
	OnFold func(open bool)
	// Always tells the summary while the section is open, too.
	Always bool

	open  bool
	title *caption
	brief *caption // the summary
	line  fynecanvas.Rectangle
	arrow [2]fynecanvas.Line
	back  fynecanvas.Rectangle
}

// NewFold makes a head.
func NewFold(title string, open bool) *Fold {
	f := &Fold{open: open, title: newCaption(title, false), brief: newCaption("", true)}
	f.title.bold, f.title.tight = true, true
	f.brief.ink, f.brief.tight = fynetheme.ColorNamePlaceHolder, true
	f.Changed = f.Refresh
	f.ExtendBaseWidget(f)
	return f
}

// Named is the title.
func (f *Fold) Named() string { return f.title.full }

// Open tells whether what stands below is seen.
func (f *Fold) Open() bool { return f.open }

// SetOpen opens the section, or folds it, and tells nobody.
func (f *Fold) SetOpen(open bool) {
	if f.open != open {
		f.open = open
		f.Refresh()
	}
}

// Tell gives the summary.
func (f *Fold) Tell(brief string) {
	if f.brief.full != brief {
		f.brief.full = brief
		f.Refresh()
	}
}

// Tapped folds or opens.
func (f *Fold) Tapped(*fyne.PointEvent) {
	f.open = !f.open
	f.Refresh()
	if f.OnFold != nil {
		f.OnFold(f.open)
	}
}

// FocusGained shows the ring.
func (f *Fold) FocusGained() { f.Gain(f, nil) }

// FocusLost takes the ring away.
func (f *Fold) FocusLost() { f.Lose(f, nil) }

// TypedKey takes Enter, and the right and left keys as trees do.
func (f *Fold) TypedKey(e *fyne.KeyEvent) {
	if e.Name == fyne.KeyRight && !f.open || e.Name == fyne.KeyLeft && f.open {
		f.Tapped(nil)
		return
	}
	pressed(f, e, func() { f.Tapped(nil) })
}

// TypedRune takes the space bar.
func (f *Fold) TypedRune(r rune) {
	if r == ' ' {
		f.Tapped(nil)
	}
}

// Places in a head, in units of the screen.
const (
	foldOver  = 5 // above the line
	foldTop   = 6 // below it
	foldArrow = 18
)

// beside tells that the summary has room at the right of the title.
func (f *Fold) beside() bool {
	return f.title.Need()+f.brief.Need()+foldArrow+8 <= f.Size().Width
}

func (f *Fold) told() bool { return f.brief.full != "" && (f.Always || !f.open) }

// MinSize is for the width of the moment.
func (f *Fold) MinSize() fyne.Size {
	w := f.Size().Width
	high := f.title.heightAt(max(w-foldArrow, 40))
	if w == 0 {
		high = f.title.line()
	}
	if f.told() && w > 0 && !f.beside() {
		high += f.brief.heightAt(w - foldArrow)
	}
	return fyne.NewSize(80, foldOver+high+2*foldTop+2)
}

// CreateRenderer draws the head with its ring.
func (f *Fold) CreateRenderer() fyne.WidgetRenderer {
	r := &foldRenderer{f}
	r.colour()
	return f.Around(r)
}

type foldRenderer struct{ *Fold }

func (r *foldRenderer) Layout(s fyne.Size) {
	r.line.Move(fyne.NewPos(0, foldOver))
	r.line.Resize(fyne.NewSize(s.Width, 1))
	r.back.Move(fyne.NewPos(0, foldOver+2))
	r.back.Resize(fyne.NewSize(s.Width, s.Height-foldOver-3))
	y := float32(foldOver + foldTop + 1)
	title := s.Width - foldArrow
	if r.told() && r.beside() {
		title = r.title.Need() + 1
	}
	high := r.title.heightAt(title)
	r.title.Move(fyne.NewPos(foldArrow, y))
	r.title.Resize(fyne.NewSize(title, high))
	if r.told() && r.beside() {
		r.brief.Move(fyne.NewPos(foldArrow+title, y))
		r.brief.Resize(fyne.NewSize(s.Width-foldArrow-title, high))
	} else {
		r.brief.Move(fyne.NewPos(foldArrow, y+high))
		r.brief.Resize(fyne.NewSize(s.Width-foldArrow, r.brief.heightAt(s.Width-foldArrow)))
	}
	mid, half := y+r.title.line()/2, float32(4)
	a, b := fyne.NewPos(3, mid-half), fyne.NewPos(3+half, mid) // a corner that points right
	c := fyne.NewPos(3, mid+half)
	if r.open { // down
		a, b, c = fyne.NewPos(1, mid-half/2), fyne.NewPos(1+half, mid+half/2), fyne.NewPos(1+2*half, mid-half/2)
	}
	r.arrow[0].Position1, r.arrow[0].Position2 = a, b
	r.arrow[1].Position1, r.arrow[1].Position2 = b, c
}

func (r *foldRenderer) Refresh() {
	r.colour()
	r.Layout(r.Size())
	r.title.Refresh()
	r.brief.Refresh()
	fynecanvas.Refresh(r.Fold)
}

func (r *foldRenderer) colour() {
	r.line.FillColor = fynetheme.Color(fynetheme.ColorNameSeparator)
	r.back.FillColor, r.back.CornerRadius = color.Transparent, 4
	if r.Hovered() {
		r.back.FillColor = fynetheme.Color(fynetheme.ColorNameHover)
	}
	for i := range r.arrow {
		r.arrow[i].StrokeColor, r.arrow[i].StrokeWidth = fynetheme.Color(fynetheme.ColorNameForeground), 1.5
	}
	r.brief.Hidden = !r.told()
}

func (r *foldRenderer) Objects() []fyne.CanvasObject {
	return []fyne.CanvasObject{&r.back, &r.line, &r.arrow[0], &r.arrow[1], r.title, r.brief}
}

func (r *foldRenderer) Destroy() {}
