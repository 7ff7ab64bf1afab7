package ui

import (
	"fmt"
	"regexp"
	"slices"
	"strings"

	"fyne.io/fyne/v2"
	fynecanvas "fyne.io/fyne/v2/canvas"
	"fyne.io/fyne/v2/container"
	"fyne.io/fyne/v2/test"

	"frontlay/assets/language"
)

// area is a rectangle of a canvas.
type area struct{ x1, y1, x2, y2 float32 }

func (a area) cap(b area) area {
	return area{max(a.x1, b.x1), max(a.y1, b.y1), min(a.x2, b.x2), min(a.y2, b.y2)}
}

func (a area) empty() bool { return a.x1 >= a.x2 || a.y1 >= a.y2 }

// piece is a text that is shown, with its box and what is seen of that.
type piece struct {
	text  string
	box   area
	seen  area
	moved bool   // a scroll can bring the rest into sight
	in    string // the widget that shows it
	rank  int    // in the order in which all is painted
}

// ground is what is painted under a text so that it can be read.
type ground struct {
	box  area
	rank int
}

// pieces lists the texts of an object, and the grounds that were painted.
func pieces(top fyne.CanvasObject, room area) ([]piece, []ground) {
	var all []piece
	var grounds []ground
	rank := 0
	var walk func(o fyne.CanvasObject, at fyne.Position, clip area, moved bool, in string)
	walk = func(o fyne.CanvasObject, at fyne.Position, clip area, moved bool, in string) {
		if !o.Visible() {
			return
		}
		at = at.Add(o.Position())
		rank++
		switch v := o.(type) {
		case *fynecanvas.Rectangle:
			if _, _, _, alpha := v.FillColor.RGBA(); alpha == 0xffff {
				s := v.Size()
				grounds = append(grounds, ground{area{at.X, at.Y, at.X + s.Width, at.Y + s.Height}, rank})
			}
		case *fynecanvas.Text:
			if v.Text == "" {
				return
			}
			size := fyne.MeasureText(v.Text, v.TextSize, v.TextStyle)
			x := at.X
			switch v.Alignment {
			case fyne.TextAlignCenter:
				x += (v.Size().Width - size.Width) / 2
			case fyne.TextAlignTrailing:
				x += v.Size().Width - size.Width
			}
			box := area{x, at.Y, x + size.Width, at.Y + size.Height}
			all = append(all, piece{v.Text, box, box.cap(clip), moved, in, rank})
		case *fyne.Container:
			for _, c := range v.Objects {
				walk(c, at, clip, moved, in)
			}
		case fyne.Widget:
			s := v.Size()
			switch v.(type) {
			case *container.Scroll, *container.Clip:
				_, scrolls := v.(*container.Scroll)
				moved = moved || scrolls
				clip = clip.cap(area{at.X, at.Y, at.X + s.Width, at.Y + s.Height})
			}
			for _, c := range test.WidgetRenderer(v).Objects() {
				walk(c, at, clip, moved, fmt.Sprintf("%T", v))
			}
		}
	}
	walk(top, fyne.Position{}, room, false, "")
	return all, grounds
}

// faultsOfLettering tells which texts of a canvas are cut, and which lie over
// others. What a scroll keeps out of sight is not cut.
func faultsOfLettering(c fyne.Canvas) []string {
	tops := []fyne.CanvasObject{c.Content()}
	tops = append(tops, c.Overlays().List()...)
	room := area{0, 0, c.Size().Width, c.Size().Height}
	meant := endings()
	var faults []string
	for _, top := range tops {
		all, grounds := pieces(top, room)
		for i, p := range all {
			if p.seen.empty() {
				if !p.moved {
					faults = append(faults, fmt.Sprintf("%q in %s is out of sight at %.0f, %.0f", p.text, p.in, p.box.x1, p.box.y1))
				}
				continue
			}
			if p.box.x1 < p.seen.x1-1 || p.box.x2 > p.seen.x2+1 {
				faults = append(faults, fmt.Sprintf("%q in %s is cut: it lies from %.0f to %.0f, seen is %.0f to %.0f", p.text, p.in, p.box.x1, p.box.x2, p.seen.x1, p.seen.x2))
			}
			if high := (p.box.y2 - p.box.y1) * leading; !p.moved && (p.box.y1+high < p.seen.y1 || p.box.y2-high > p.seen.y2) {
				faults = append(faults, fmt.Sprintf("%q in %s is cut: it stands from %.0f to %.0f, seen is %.0f to %.0f", p.text, p.in, p.box.y1, p.box.y2, p.seen.y1, p.seen.y2))
			}
			// The name of a front may be cut: its number stands before it.
			name := strings.Contains(p.in, "container.Clip") && !strings.ContainsAny(p.text, "0123456789")
			if strings.HasSuffix(p.text, "…") && !meant(p) && !name {
				faults = append(faults, fmt.Sprintf("%q in %s is shortened", p.text, p.in))
			}
			for _, q := range all[:i] {
				if overlap(p.seen, q.seen) && !parted(p, q, grounds) {
					faults = append(faults, fmt.Sprintf("%q in %s lies over %q in %s at %.0f, %.0f", p.text, p.in, q.text, q.in, p.seen.x1, p.seen.y1))
				}
			}
		}
	}
	return faults
}

// parted tells that a ground lies between two texts: the later covers the other.
func parted(over, under piece, grounds []ground) bool {
	for _, g := range grounds {
		inside := g.box.x1 <= over.box.x1 && over.box.x2 <= g.box.x2
		if under.rank < g.rank && g.rank < over.rank && inside {
			return true
		}
	}
	return false
}

// shortNames are names in the drawing of narrow fronts: their number and a few
// letters are enough to know them by.
var shortNames = regexp.MustCompile(`^[0-9]+  \pL.+…$`)

// endings tells which texts may end with an ellipsis: those of the program that
// do so by themselves, such as commands that ask for more, or the last line of
// one, and shortened names.
func endings() func(piece) bool {
	var all []string
	for _, code := range language.Codes() {
		l, err := language.Read(code)
		if err != nil {
			panic(err)
		}
		for k, v := range l.Catalogue {
			all = append(all, k, v)
		}
	}
	return func(p piece) bool {
		if shortNames.MatchString(p.text) && !strings.ContainsAny(p.text, ",") {
			return true
		}
		return slices.ContainsFunc(all, func(s string) bool { return s == p.text || strings.HasSuffix(s, " "+p.text) })
	}
}

// leading is the part of a text's height that is free above the letters, and
// below them.
const leading = 0.18

// overlap tells that two texts touch; the free space above and below the
// letters may meet.
func overlap(a, b area) bool {
	inset := func(a area) area {
		h := (a.y2 - a.y1) * leading
		return area{a.x1 + 0.5, a.y1 + h, a.x2 - 0.5, a.y2 - h}
	}
	return !inset(a).cap(inset(b)).empty()
}
