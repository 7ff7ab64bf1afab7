package screen

import (
	"fyne.io/fyne/v2"
	fynecanvas "fyne.io/fyne/v2/canvas"
	"fyne.io/fyne/v2/container"
	"fyne.io/fyne/v2/widget"

	"frontlay/layout/drawing"
	"frontlay/layout/sheet"
	"frontlay/model/length"
	"frontlay/model/message"
	"frontlay/ui/look"
)

// Still is a picture that only shows: a drawing, or a page as it will be
// printed.
type Still struct {
	widget.BaseWidget
	least   fyne.Size
	say     message.Language
	drawing *drawing.Drawing
	page    *sheet.Page
	box     *fyne.Container
}

// NewStill makes a picture of a drawing, at least so large.
func NewStill(d *drawing.Drawing, say message.Language, least fyne.Size) *Still {
	return newStill(&Still{drawing: d, say: say, least: least})
}

// NewPage makes a picture of a page, at least so large.
func NewPage(p *sheet.Page, say message.Language, least fyne.Size) *Still {
	return newStill(&Still{page: p, say: say, least: least})
}

func newStill(s *Still) *Still {
	s.box = container.NewWithoutLayout()
	s.ExtendBaseWidget(s)
	return s
}

// ShowPage shows another page.
func (s *Still) ShowPage(p *sheet.Page, say message.Language) {
	s.page, s.say = p, say
	s.Refresh()
}

// ShowDrawing shows another drawing.
func (s *Still) ShowDrawing(d *drawing.Drawing, say message.Language) {
	s.drawing, s.say = d, say
	s.Refresh()
}

func (s *Still) paint() {
	size := s.Size()
	if size.Width < 10 || size.Height < 10 {
		return
	}
	if s.page != nil {
		s.box.Objects = pageObjects(s.page, s.say, size)
	} else {
		p := &painter{size: size, palette: look.Current(), say: s.say, text: look.Text(), measure: &measures{}}
		p.prepare(s.drawing)
		m := p.margins(s.drawing)
		if m == (margins{24, 24, 24, 24}) { // no dimensions: the picture can fill its place
			m = margins{6, 6, 6, 6}
		}
		p.view = fitted(s.drawing.Bounds(), m, size)
		p.paint(s.drawing)
		s.box.Objects = p.objects
	}
	fynecanvas.Refresh(s.box)
}

// pageObjects draws a sheet of paper with everything on it, white with black as
// it comes out of the printer.
func pageObjects(pg *sheet.Page, say message.Language, size fyne.Size) []fyne.CanvasObject {
	w, h := float32(pg.Width.MM()), float32(pg.Height.MM())
	if w <= 0 || h <= 0 {
		return nil
	}
	const edge = 6
	scale := min((size.Width-2*edge)/w, (size.Height-2*edge)/h)
	at := fyne.NewPos((size.Width-w*scale)/2, (size.Height-h*scale)/2)
	paper := fynecanvas.NewRectangle(look.Sheet().Paper)
	paper.StrokeColor, paper.StrokeWidth = look.Current().Faint, 1
	paper.Move(at)
	paper.Resize(fyne.NewSize(w*scale, h*scale))
	objects := []fyne.CanvasObject{paper}
	for i := range pg.Placed {
		objects = append(objects, placedObjects(pg, &pg.Placed[i], say, at, scale))
	}
	if pg.Table != nil {
		objects = append(objects, tableObjects(pg, say, at, scale))
	}
	return objects
}

// placedObjects draws one drawing of a page, clipped to its place.
func placedObjects(pg *sheet.Page, pl *sheet.Placed, say message.Language, at fyne.Position, paper float32) fyne.CanvasObject {
	clip := pl.Clip
	if clip.Empty() {
		clip.Max.X, clip.Max.Y = pg.Width, pg.Height
	}
	mm := func(l length.Length) float32 { return float32(l.MM()) * paper }
	corner := fyne.NewPos(mm(clip.Min.X), mm(pg.Height-clip.Max.Y))
	p := &painter{
		size: fyne.NewSize(mm(clip.Width()), mm(clip.Height())), palette: look.Sheet(), say: say,
		text: look.Text(), paper: paper, measure: &measures{},
	}
	num, den := pl.ScaleNum, pl.ScaleDen
	if num == 0 || den == 0 {
		num, den = 1, 1
	}
	s := float64(paper) * float64(num) / float64(den)
	p.view = lens{
		scale: s,
		x:     float64(mm(pl.At.X)-corner.X) - pl.Origin.X.MM()*s,
		y:     float64(mm(pg.Height-pl.At.Y)-corner.Y) + pl.Origin.Y.MM()*s,
	}
	p.paint(pl.Drawing)
	c := container.NewClip(container.NewWithoutLayout(p.objects...))
	c.Move(at.Add(corner))
	c.Resize(p.size)
	return c
}

// tableObjects writes the beginning of a table; what runs over one sheet is left
// out, as it stands on the next.
func tableObjects(pg *sheet.Page, say message.Language, at fyne.Position, paper float32) fyne.CanvasObject {
	t := pg.Table
	size := fyne.NewSize(float32(pg.Width.MM())*paper, float32(pg.Height.MM())*paper)
	p := &painter{size: size, palette: look.Sheet(), say: say, text: look.Text(), paper: paper, measure: &measures{}}
	left, right := 15*paper, size.Width-15*paper
	y := 18 * paper
	letters := p.onPaper(2500 * length.Micrometre)
	row := func(s string, x, width float32, bold, end bool) {
		s = p.shortened(s, width, letters, bold)
		if end {
			p.write(s, fyne.NewPos(x+width, y), drawing.TopRight, letters, bold, p.palette.Ink)
			return
		}
		p.write(s, fyne.NewPos(x, y), drawing.TopLeft, letters, bold, p.palette.Ink)
	}
	p.write(t.Title, fyne.NewPos(left, y), drawing.TopLeft, letters*1.4, true, p.palette.Ink)
	y += 9 * paper
	for _, s := range t.Intro {
		row(s, left, right-left, false, false)
		y += 5 * paper
	}
	sum := 0.0
	for _, c := range t.Columns {
		sum += c.Weight
	}
	cells := func(text func(i int) string, bold bool) {
		x := left
		for i, c := range t.Columns {
			w := (right - left) * float32(c.Weight/max(sum, 0.001))
			row(text(i), x+paper, w-2*paper, bold, c.Right)
			x += w
		}
	}
	cells(func(i int) string { return t.Columns[i].Head }, true)
	y += 5 * paper
	p.line(left, y, right, y, p.palette.Ink, 1)
	y += paper
	for _, r := range t.Rows {
		if y > size.Height-18*paper {
			break
		}
		if r.Group && len(r.Cells) > 0 {
			row(r.Cells[0], left, right-left, true, false)
		} else {
			cells(func(i int) string {
				if i < len(r.Cells) {
					return r.Cells[i]
				}
				return ""
			}, false)
		}
		y += 5 * paper
	}
	c := container.NewClip(container.NewWithoutLayout(p.objects...))
	c.Move(at)
	c.Resize(size)
	return c
}

// CreateRenderer makes the renderer; everything is kept in the widget.
func (s *Still) CreateRenderer() fyne.WidgetRenderer { return &stillRenderer{s} }

type stillRenderer struct{ s *Still }

func (r *stillRenderer) Layout(size fyne.Size) {
	r.s.box.Resize(size)
	r.s.paint()
}
func (r *stillRenderer) MinSize() fyne.Size           { return r.s.least }
func (r *stillRenderer) Refresh()                     { r.s.paint() }
func (r *stillRenderer) Destroy()                     {}
func (r *stillRenderer) Objects() []fyne.CanvasObject { return []fyne.CanvasObject{r.s.box} }
