package projecttest

import (
	"reflect"
	"strconv"
	"unicode"

	"pgregory.net/rapid"

	"frontlay/layout/check"
	"frontlay/model"
	"frontlay/model/length"
)

// awkward are texts that YAML gives a meaning of its own.
var awkward = []string{"null", "~", "yes", "No", "true", "1e3", "0x1F", "12", "1_000", ".inf", ".nan", "- a", "# b", "a # b", " lead", "trail ",
	"a: b", "a:", "[x", "{x", "x]", "a, b", `"q"`, "'", "''", "|", ">", "<<", "=", "2001-01-01", "12:30:45", "é", "日本語", "עברית", "العربية", "@x", "`",
	"%d", "---", "...", "\tTab", "!x", "&x", "*x", "?", "? x", ":", "-", "+1", "\u00a0", "a\u2028b", "\u0301", "🏺", "\\n", `\`}

// generator fills values of the model by reflection, so that a field that is
// new in the model is in every test at once.
type generator struct{ t *rapid.T }

func (g generator) int(lo, hi int) int { return rapid.IntRange(lo, hi).Draw(g.t, "n") }
func (g generator) yes() bool          { return rapid.Bool().Draw(g.t, "yes") }

// length draws sizes up to 90 mm, which every key takes: whole and broken
// millimetres, sixty-fourths of an inch, and single nanometres.
func (g generator) length() length.Length {
	switch g.int(0, 3) {
	case 0:
		return length.MM(int64(g.int(1, 90)))
	case 1:
		return length.Length(g.int(1, 226)) * length.Inch64th
	case 2:
		return length.Length(g.int(1, 900)) * length.Millimetre / 10
	default:
		return length.Length(g.int(1, 90_000_000))
	}
}

func (g generator) text() string {
	if g.yes() {
		return awkward[g.int(0, len(awkward)-1)]
	}
	return rapid.StringOfN(rapid.RuneFrom(nil, unicode.Letter, unicode.Nd, unicode.Punct, unicode.Symbol, unicode.Zs), 1, 20, -1).Draw(g.t, "text")
}

var enums = map[reflect.Type]int{
	reflect.TypeFor[length.Unit]():         4,
	reflect.TypeFor[model.RestTo]():        2,
	reflect.TypeFor[model.Mount]():         2,
	reflect.TypeFor[model.Kind]():          4,
	reflect.TypeFor[model.Hinged]():        2,
	reflect.TypeFor[model.RowMode]():       3,
	reflect.TypeFor[model.DivisionRule]():  4,
	reflect.TypeFor[model.HoleSides]():     3,
	reflect.TypeFor[model.BuildKind]():     3,
	reflect.TypeFor[model.BaseKind]():      3,
	reflect.TypeFor[model.Standing]():      3,
	reflect.TypeFor[model.BackKind]():      3,
	reflect.TypeFor[model.GripEdge]():      2,
	reflect.TypeFor[model.ConnectorKind](): 2,
	reflect.TypeFor[model.Corners]():       2,
	reflect.TypeFor[model.BoxBottom]():     3,
	reflect.TypeFor[model.Sawn]():          2,
	reflect.TypeFor[model.Drilling]():      3,
}

// fill draws every field of a value that holds data of the model.
func (g generator) fill(v reflect.Value) {
	switch v.Interface().(type) {
	case length.Length:
		if g.yes() {
			v.SetInt(int64(g.length()))
		}
		return
	case map[string]length.Length:
		some := map[string]length.Length{}
		for _, l := range check.Limits() {
			if g.yes() {
				some[l.Key] = g.length()
			}
		}
		if len(some) > 0 {
			v.Set(reflect.ValueOf(some))
		}
		return
	case []model.HardwareUse, *model.HardwareSheet:
		return
	}
	switch v.Kind() {
	case reflect.Struct:
		for i := range v.NumField() {
			g.fill(v.Field(i))
		}
	case reflect.Pointer:
		if g.yes() {
			v.Set(reflect.New(v.Type().Elem()))
			g.fill(v.Elem())
		}
	case reflect.Slice:
		n := g.int(0, 3)
		if n > 0 {
			v.Set(reflect.MakeSlice(v.Type(), n, n))
		}
		for i := range n {
			g.fill(v.Index(i))
		}
	case reflect.Map:
		if g.yes() {
			v.Set(reflect.ValueOf(map[string]string{g.text(): "off", "cover": "warning"}))
		}
	case reflect.String:
		if g.yes() {
			v.SetString(g.text())
		}
	case reflect.Bool:
		v.SetBool(g.yes())
	case reflect.Int:
		v.SetInt(int64(g.int(0, 9)))
	case reflect.Uint8:
		n, ok := enums[v.Type()]
		if !ok {
			g.t.Fatalf("the generator does not know how many constants %v has", v.Type())
		}
		v.SetUint(uint64(g.int(0, n-1)))
	case reflect.Float64:
		if g.yes() {
			v.SetFloat(rapid.Float64Range(1, 10).Draw(g.t, "x"))
		}
	default:
		g.t.Fatalf("the generator does not know %v", v.Type())
	}
}

// Any draws a project that a file can hold, however absurd: names that YAML gives a meaning
// of its own, sizes to the nanometre, nothing that fits anything.
func Any(t *rapid.T) *model.Project { return generator{t}.project() }

// AnySheet draws a hardware sheet likewise; it does not contradict itself.
func AnySheet(t *rapid.T) *model.HardwareSheet { return generator{t}.sheet() }

// project draws a project that the reader accepts.
func (g generator) project() *model.Project {
	p := new(model.Project)
	g.fill(reflect.ValueOf(p).Elem())
	for i, n := 0, g.int(1, 3); i < n; i++ {
		use := model.HardwareUse{Name: g.text() + strconv.Itoa(i), Sheet: g.sheet()}
		if g.yes() {
			use.Source = "sheet " + strconv.Itoa(i)
		}
		p.Hardware = append(p.Hardware, use)
	}
	if g.yes() {
		p.Notes = "first line\nsecond: line\n  # third\n"
	}
	for i := range p.Species {
		s := &p.Species[i]
		s.Name, s.Radial, s.Tangential = g.text()+strconv.Itoa(i), s.Radial/1000, s.Tangential/1000
	}
	boards := []*model.Board{&p.Boards.Carcass, &p.Boards.Front, &p.Boards.Back}
	for i := range p.Boards.Fronts {
		b := &p.Boards.Fronts[i]
		b.Name, b.Build.Panel.Grain, b.Build.Panel.Lipping = g.text()+strconv.Itoa(i), g.grain(), 0
		b.Build.Panel.Species = g.word(p.SpeciesNames()...)
		boards = append(boards, &b.Board)
	}
	for _, b := range boards {
		b.Thickness, b.Grain, b.Species = g.length(), g.grain(), g.word(p.SpeciesNames()...)
		b.Edging = model.Edging{Fronts: g.word(model.EdgeAll, model.EdgeSides, model.EdgeTopBottom, model.EdgeTop, model.EdgeNone), Price: b.Edging.Price}
	}
	for i := range p.Boards.Fronts {
		p.Boards.Fronts[i].Build.Panel.Edging = model.Edging{}
	}
	edges := func() string {
		return g.word(model.EdgeFront, model.EdgeFrontBack, model.EdgeFrontEnds, model.EdgeAll, model.EdgeNone)
	}
	p.Boards.Back.Edging = model.Edging{}
	p.Boards.Front.Edging.EndPanels = edges()
	p.Boards.Carcass.Edging = model.Edging{Sides: edges(), Bottoms: edges(), Partitions: edges(), Shelves: edges(), Price: p.Boards.Carcass.Edging.Price}
	p.Board, p.Matched = g.board(p), g.matched()
	g.handle(p.Handle)
	for i := range p.Checks.Accepted {
		p.Checks.Accepted[i].Rule = "cover"
	}
	if len(p.Cabinets) == 0 {
		p.Cabinets = make([]model.Cabinet, 1)
	}
	for i := range p.Cabinets {
		g.mend(p, &p.Cabinets[i])
	}
	return p
}

func (g generator) mend(p *model.Project, c *model.Cabinet) {
	c.Width, c.Height, c.Depth, c.Board, c.Matched = g.length(), g.length(), g.length(), g.board(p), g.matched()
	g.handle(c.Handle)
	if len(c.Bays) == 0 {
		c.Bays = make([]model.Bay, 1)
	}
	for i := range c.Bays {
		b := &c.Bays[i]
		b.Hardware, b.Matched = g.hardware(p), g.matched()
		if len(b.Fronts) == 0 {
			b.Fronts = make([]model.Front, 1)
		}
		for j := range b.Fronts {
			f := &b.Fronts[j]
			f.Board = g.board(p)
			if f.Hardware, f.Drawer = g.hardware(p), ""; f.Kind == model.DrawerFront && g.yes() {
				sheet := p.SheetFor(b)
				if f.Hardware != "" {
					sheet = p.Sheet(f.Hardware)
				}
				f.Drawer = sheet.Drawers[0].Name
			}
			if !f.Kind.Holds() {
				f.Inner = nil
			}
			for k := range f.Inner {
				f.Inner[k].Drawer = g.word(model.DrawerAuto)
			}
			if f.Height > 0 {
				f.Share = 0
			}
			f.Clear = f.Clear && f.Height > 0 && f.Kind == model.OpenNiche
			f.Greatest = max(f.Greatest, f.Least)
			if f.LineUp != nil {
				f.LineUp.Front = g.text()
			}
			g.handle(f.Handle)
		}
	}
}

// handle keeps one of what places a handle in each direction.
func (g generator) handle(h *model.Handle) {
	if h == nil {
		return
	}
	h.Diameter, h.Count = g.length(), g.int(0, 2)
	for _, ways := range [][]*length.Length{{&h.FromTop, &h.FromBottom, &h.AboveMiddle, &h.OnLine}, {&h.FromLeft, &h.FromRight, &h.BesideMiddle}} {
		keep := g.int(0, len(ways))
		for i, at := range ways {
			if i != keep {
				*at = 0
			}
		}
	}
}

func (g generator) matched() string {
	return []string{"", model.NotMatched, model.MatchedUpright, model.MatchedAcross}[g.int(0, 3)]
}

// word draws one of some words, or none.
func (g generator) word(words ...string) string { return append(words, "")[g.int(0, len(words))] }

func (g generator) grain() string { return []string{"", "horizontal", "vertical"}[g.int(0, 2)] }

// board draws the name of a front board that the project has.
func (g generator) board(p *model.Project) string {
	switch i := g.int(-2, len(p.Boards.Fronts)-1); {
	case i >= 0:
		return p.Boards.Fronts[i].Name
	case i == -1:
		return model.PlainBoard
	}
	return ""
}

func (g generator) hardware(p *model.Project) string {
	if i := g.int(-1, len(p.Hardware)-1); i >= 0 {
		return p.Hardware[i].Name
	}
	return ""
}

// sheet draws a hardware sheet that does not contradict itself.
func (g generator) sheet() *model.HardwareSheet {
	s := new(model.HardwareSheet)
	g.fill(reflect.ValueOf(s).Elem())
	s.Name = g.text()
	s.Connector.Diameter = g.length() / 2 * 2 % (99 * length.Millimetre)
	s.Connector.Diameter = max(s.Connector.Diameter, 1)
	s.Bottom.Thickness = g.length()
	s.Bottom.DeductWidth += 2 * s.SideClearance
	s.Back.DeductWidth += 2 * s.SideClearance
	g.box(s)
	_, less := s.BottomDeducts()
	s.Runner.Lengths = append(s.Runner.Lengths, model.RunnerLength{})
	for i := range s.Runner.Lengths {
		l := &s.Runner.Lengths[i]
		l.Length = less + length.MM(int64(200+i))
		for j := range l.Screws {
			l.Screws[j].Diameter = length.Millimetre * 5
		}
	}
	s.Drawers = append(s.Drawers, model.DrawerHeight{})
	for i := range s.Drawers {
		d := &s.Drawers[i]
		d.Name = g.text() + strconv.Itoa(i)
		d.SideTop = s.Bottom.Underside + s.Bottom.Thickness + length.MM(int64(g.int(1, 200)))
		d.Holes = distinct(append(d.Holes, 0), d.SideTop)
		if d.RailTop > 0 {
			d.RailTop += d.SideTop
		}
		if d.RailHoles = distinct(d.RailHoles, d.RailTop); d.RailTop == 0 {
			d.RailHoles = nil
		}
	}
	return s
}

// box makes a wooden box of a sheet one that can be built, or takes it away.
func (g generator) box(s *model.HardwareSheet) {
	b := &s.Box
	if b.Sides == 0 {
		*b = model.BoxFigures{}
		return
	}
	s.Connector.Kind = model.Pair // screws would have to meet the inner front
	s.Bottom.DeductWidth, s.Bottom.DeductLength, s.Back.DeductWidth = 0, 0, 0
	b.Front, s.Back.Thickness = max(b.Front, 1), max(s.Back.Thickness, 1)
	thinnest := min(b.Sides, b.Front, s.Back.Thickness)
	b.Joint = min(b.Joint, thinnest)
	b.GrooveDepth = min(b.GrooveDepth, thinnest-1)
	if b.Bottom == model.BottomLaidOn {
		b.GrooveDepth, b.GrooveHeight = 0, 0
	}
}

func distinct(holes []length.Length, top length.Length) []length.Length {
	var out []length.Length
	seen := map[length.Length]bool{}
	for _, h := range holes {
		if h = min(h, top); !seen[h] {
			out = append(out, h)
		}
		seen[h] = true
	}
	return out
}
