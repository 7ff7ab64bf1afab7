package help

import (
	"bytes"
	"image/color"
	"image/png"
	"strings"

	"fyne.io/fyne/v2"
	fynecanvas "fyne.io/fyne/v2/canvas"
	"fyne.io/fyne/v2/container"

	"frontlay/assets/manual"
	"frontlay/ui/look"
)

// measured is a line of as many letters as are read easily.
const measured = "Seventy or eighty letters, and no more than that, so that the eye finds the next line."

// reading is the size of letters that are read for a while.
func reading() float32 { return look.Text() * 14 / 13 }

// measure is the width of a line of text.
func measure() float32 { return fyne.MeasureText(measured, reading(), fyne.TextStyle{}).Width }

// chapterOf shows a chapter. follow is told where a link of it leads to.
func chapterOf(c *manual.Chapter, follow func(to string)) *fyne.Container {
	l := &chapterLayout{}
	box := &fyne.Container{Layout: l} // laid out once, when it has a width
	for i, b := range c.Blocks {
		o, wide := blockOf(b, follow)
		gap := reading() * 0.75
		switch {
		case i == 0:
			gap = 0
		case b.Kind == manual.Heading && b.Level > 2:
			gap = reading() * 1.2
		case b.Kind == manual.Heading:
			gap = reading() * 1.8
		case b.Kind == manual.Item && c.Blocks[i-1].Kind == manual.Item:
			gap = reading() * 0.25
		}
		l.gaps, l.wide = append(l.gaps, whole(gap)), append(l.wide, wide)
		box.Objects = append(box.Objects, o)
	}
	return box
}

// blockOf shows a block; wide is one that may be wider than a line of text.
func blockOf(b manual.Block, follow func(to string)) (o fyne.CanvasObject, wide bool) {
	switch b.Kind {
	case manual.Heading:
		size := reading()
		switch b.Level {
		case 1:
			size = look.Title()
		case 2:
			size = look.Title() * 18 / 21
		}
		return newFlow(b.Text, size, true, follow), false
	case manual.Item:
		mark := b.Mark
		if mark == "" {
			mark = "•"
		}
		sign := newFlow([]manual.Span{{Text: mark}}, reading(), false, nil)
		return &fyne.Container{Layout: hanging(b.Level), Objects: []fyne.CanvasObject{sign, newFlow(b.Text, reading(), false, follow)}}, false
	case manual.Table:
		return tableOf(b.Rows, follow), true
	case manual.Code:
		box := &fyne.Container{Layout: &chapterLayout{}}
		for _, line := range strings.Split(b.Lines, "\n") {
			box.Objects = append(box.Objects, newFlow([]manual.Span{{Text: line, Code: true}}, reading(), false, nil))
		}
		ground := fynecanvas.NewRectangle(look.Current().Field)
		ground.StrokeColor, ground.StrokeWidth, ground.CornerRadius = look.Current().Line, 1, 5
		return container.NewStack(ground, &fyne.Container{Layout: inset(8), Objects: []fyne.CanvasObject{box}}), true
	case manual.Image:
		return pictureOf(b), true
	}
	return newFlow(b.Text, reading(), false, follow), false
}

// pictureOf shows a picture in a thin frame, at most as large as it is.
func pictureOf(b manual.Block) fyne.CanvasObject {
	data, ok := manual.Picture(b.Path)
	size, err := png.DecodeConfig(bytes.NewReader(data))
	if !ok || err != nil {
		return newFlow([]manual.Span{{Text: b.Alt, Italic: true}}, reading(), false, nil)
	}
	img := fynecanvas.NewImageFromResource(fyne.NewStaticResource(b.Path, data))
	img.ScaleMode = fynecanvas.ImageScaleSmooth
	frame := fynecanvas.NewRectangle(color.Transparent)
	frame.StrokeColor, frame.StrokeWidth = look.Current().Line, 1
	return &fyne.Container{Layout: &framed{size: fyne.NewSize(float32(size.Width), float32(size.Height))}, Objects: []fyne.CanvasObject{img, frame}}
}

// framed lays a picture out, smaller where its place is.
type framed struct{ size, now fyne.Size }

func (f *framed) Layout(o []fyne.CanvasObject, s fyne.Size) {
	wide := min(s.Width, f.size.Width)
	f.now = fyne.NewSize(wide, whole(f.size.Height*wide/f.size.Width))
	for _, one := range o {
		one.Resize(f.now)
	}
}

func (f *framed) MinSize([]fyne.CanvasObject) fyne.Size { return fyne.NewSize(0, f.now.Height) }

// inset is room on every side of an object.
type inset float32

func (in inset) Layout(o []fyne.CanvasObject, s fyne.Size) {
	p := float32(in)
	o[0].Move(fyne.NewPos(p, p))
	o[0].Resize(s.SubtractWidthHeight(2*p, 2*p))
}

func (in inset) MinSize(o []fyne.CanvasObject) fyne.Size {
	return o[0].MinSize().AddWidthHeight(2*float32(in), 2*float32(in))
}

// hanging sets the text of an item in behind its sign, by how deep it is.
type hanging int

func (h hanging) in() float32 { return reading() * (1.6 + 1.6*float32(h)) }

func (h hanging) Layout(o []fyne.CanvasObject, s fyne.Size) {
	x := h.in()
	o[0].Resize(fyne.NewSize(x, s.Height))
	o[0].Move(fyne.NewPos(x-reading()*1.3, 0))
	o[1].Resize(fyne.NewSize(max(s.Width-x, 1), s.Height))
	o[1].Move(fyne.NewPos(x, 0))
}

func (h hanging) MinSize(o []fyne.CanvasObject) fyne.Size { return o[1].MinSize() }

// chapterLayout stacks blocks, texts no wider than is read easily.
type chapterLayout struct {
	gaps []float32 // before each; none: nothing between them
	wide []bool    // which may be wider than a line
	high float32
}

func (l *chapterLayout) Layout(o []fyne.CanvasObject, s fyne.Size) {
	y := float32(0)
	for i, one := range o {
		wide := s.Width
		if i < len(l.gaps) {
			y += l.gaps[i]
			wide = min(wide, measure())
			if l.wide[i] {
				wide = min(s.Width, 1.65*measure())
			}
		}
		one.Resize(fyne.NewSize(wide, one.MinSize().Height))
		one.Resize(fyne.NewSize(wide, one.MinSize().Height)) // it may need another height in another width
		one.Move(fyne.NewPos(0, y))
		y += one.MinSize().Height
	}
	l.high = y
}

func (l *chapterLayout) MinSize(o []fyne.CanvasObject) fyne.Size {
	if l.high > 0 {
		return fyne.NewSize(0, l.high)
	}
	high := float32(0)
	for _, one := range o {
		high += one.MinSize().Height
	}
	return fyne.NewSize(0, high)
}
