package view

import (
	"frontlay/layout/drawing"
	"frontlay/layout/plan"
	"frontlay/layout/plane"
	"frontlay/model"
	"frontlay/model/length"
	"frontlay/model/message"
)

// What the drawing of a build shows of a front that is higher and wider than it: so much
// of a panel or board between its rails or beside its grip, and of a frame seen from the
// room beyond its stile. The rest is broken out.
const (
	buildShown = 30 * length.Millimetre
	buildWide  = 26 * length.Millimetre
	buildBreak = 4 * length.Millimetre
)

// BuildSection draws how fronts are built of a board: cut upright, the face at x = 0 and
// the rear to the right of it, the lower edge at y = 0; a frame's left end beside it, as
// it is seen from the room. The middle of the height is broken out, so that everything
// else is to one scale. Focus is the path in the board of the figure that a person is
// about, such as build.stile; marks that show one have its path in their subject.
func BuildSection(b *model.FrontBoard, focus string) *drawing.Drawing {
	s := buildSection{d: &drawing.Drawing{Title: message.New("Section through a front")}, focus: focus, board: b, build: b.Filled()}
	low, high := s.ends()
	w, h := 4*s.build.Stile+4*buildWide, 2*max(low, high)+4*buildShown
	s.f = plan.Front{Face: plane.R(0, 0, w, h), Made: *b, Thickness: b.Thickness, Zones: plan.ZonesOf(b, w, h), Inset: true}
	s.broken, s.out = low+(buildShown-buildBreak)/2, h-low-high-buildShown
	s.height = s.y(h)
	s.cut()
	if s.build.Kind == model.Frame {
		s.face()
	}
	middle := s.broken + buildBreak/2
	s.d.Add(name("rear face", at(b.Thickness+buildBreak, middle), drawing.Anchor{Y: 0.5}, plane.Rect{}))
	s.figures()
	return s.d
}

// buildSection is a front of which the part from broken up is lower by out.
type buildSection struct {
	d           *drawing.Drawing
	f           plan.Front
	board       *model.FrontBoard
	build       model.Build
	focus       string
	broken, out length.Length
	height      length.Length // as drawn
}

// ends are how much of the height is something else than panel or board, at the lower
// and at the upper edge.
func (s *buildSection) ends() (low, high length.Length) {
	switch b := s.build; {
	case b.Kind == model.Frame:
		return b.BottomRail, b.TopRail
	case b.Kind == model.GripEdged && b.Edge == model.GripBottom:
		return b.Height, 0
	case b.Kind == model.GripEdged:
		return 0, b.Height
	}
	return 0, 0
}

// y is where a height of the front is drawn.
func (s *buildSection) y(v length.Length) length.Length {
	if v > s.broken {
		return v - s.out
	}
	return v
}

// parts are the pieces of a rectangle of the front: two where it is broken.
func (s *buildSection) parts(r plane.Rect) []plane.Rect {
	if r.Min.Y >= s.broken || r.Max.Y <= s.broken {
		return []plane.Rect{plane.R(r.Min.X, s.y(r.Min.Y), r.Max.X, s.y(r.Max.Y))}
	}
	return []plane.Rect{
		plane.R(r.Min.X, r.Min.Y, r.Max.X, s.broken),
		plane.R(r.Min.X, s.broken+buildBreak, r.Max.X, s.y(r.Max.Y)),
	}
}

// cut draws what the section meets, and the lipping over it.
func (s *buildSection) cut() {
	paths := map[plan.Part]string{
		plan.TopRail: "build.top_rail", plan.BottomRail: "build.bottom_rail", plan.PanelPart: "build.panel.thickness",
		plan.BoardPart: "thickness", plan.GripPart: "build.thickness_left",
	}
	_, _, below, above := s.board.LippingOf()
	for _, c := range cutThrough(&s.f, true) {
		for _, r := range s.parts(c.Rect) {
			tag := shows(drawing.Face, paths[c.Part])
			s.d.Add(&drawing.Rectangle{Tag: tag, Rect: r, Filled: true},
				&drawing.Hatch{Tag: drawing.Tag{Meaning: drawing.Face}, Rect: r, Falling: c.Part == plan.PanelPart},
				&drawing.Rectangle{Tag: tag, Rect: r})
			lip := func(from, to length.Length) {
				if from < to {
					s.d.Add(&drawing.Rectangle{Tag: shows(drawing.Face, "lipping"), Rect: plane.R(r.Min.X, from, r.Max.X, to), Filled: true})
				}
			}
			if c.Part != plan.PanelPart && r.Min.Y == 0 {
				lip(0, below)
			}
			if c.Part != plan.PanelPart && r.Max.Y == s.height {
				lip(s.height-above, s.height)
			}
		}
	}
}

// beside is how far left of the section a frame is seen from the room, from its left
// edge.
func (s *buildSection) beside() length.Length { return s.build.Stile + 2*buildWide }

// face draws the left end of a frame as it is seen from the room, its tenons dashed.
func (s *buildSection) face() {
	left, right := -s.beside(), -buildWide
	whole := s.parts(plane.R(left, 0, right, s.f.Face.Height()))
	for _, r := range whole {
		s.d.Add(&drawing.Rectangle{Tag: shows(drawing.Face, ""), Rect: r, Filled: true})
	}
	stile := left + s.build.Stile
	line := func(path string, from, to plane.Point) {
		s.d.Add(&drawing.Line{Tag: shows(drawing.Face, path), From: from, To: to})
	}
	for _, r := range whole {
		line("build.stile", at(stile, r.Min.Y), at(stile, r.Max.Y))
	}
	tenon := func(rail plane.Rect) {
		if s.build.Tenon > 0 {
			s.d.Add(&drawing.Rectangle{Tag: shows(drawing.Hidden, "build.tenon"), Rect: rail, Dashed: true})
		}
	}
	low, high := s.build.BottomRail, s.height-s.build.TopRail
	line("build.bottom_rail", at(stile, low), at(right, low))
	line("build.top_rail", at(stile, high), at(right, high))
	tenon(plane.R(stile-s.build.Tenon, 0, stile, low))
	tenon(plane.R(stile-s.build.Tenon, high, stile, s.height))
}

// across measures a figure along x, upright one along y: from where the part is to a
// level beside the drawing. One of nothing is only told while it has the focus.
func (s *buildSection) across(path string, x1, x2, from, line length.Length, level int) {
	m := across(drawing.Subject{}, x1, x2, from, level)
	m.Tag, m.Line = shows(drawing.DimensionLine, path), line
	s.measure(m, path)
}

func (s *buildSection) upright(path string, y1, y2 length.Length, level int) {
	m := upright(drawing.Subject{}, y1, y2, s.board.Thickness, level)
	m.Tag = shows(drawing.DimensionLine, path)
	s.measure(m, path)
}

func (s *buildSection) measure(m *drawing.Dimension, path string) {
	if m.Value > 0 || s.focus == path {
		s.d.Add(m)
	}
}

// figures dimensions what is typed.
func (s *buildSection) figures() {
	t, b := s.board.Thickness, &s.build
	s.across("thickness", 0, t, 0, 0, -1)
	switch b.Kind {
	case model.Frame:
		low, high := b.BottomRail, s.height-b.TopRail
		s.upright("build.bottom_rail", 0, low, 1)
		s.upright("build.top_rail", high, s.height, 1)
		s.upright("build.panel.groove", high, high+b.Panel.Groove, 2)
		rear := t - b.Panel.Recess
		s.across("build.panel.thickness", rear-b.Panel.Thickness, rear, high+b.Panel.Groove, s.height, 1)
		s.across("build.panel.recess", rear, t, high, s.height, 1)
		left := -s.beside()
		s.across("build.stile", left, left+b.Stile, 0, 0, -1)
		s.across("build.tenon", left+b.Stile-b.Tenon, left+b.Stile, 0, 0, -2)
	case model.GripEdged:
		low, high, line, level := length.Length(0), b.Height, length.Length(0), -2
		if b.Edge == model.GripTop {
			low, high, line, level = s.height-b.Height, s.height, s.height, 1
		}
		s.upright("build.height", low, high, 1)
		s.across("build.thickness_left", 0, b.Left, line, line, level)
	}
	if s.focus == "lipping" {
		_, _, below, above := s.board.LippingOf()
		switch {
		case above > 0:
			s.upright("lipping", s.height-above, s.height, 2)
		case below > 0:
			s.upright("lipping", 0, below, 2)
		}
	}
}
