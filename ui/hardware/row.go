package hardware

import (
	"slices"
	"strconv"
	"strings"

	"fyne.io/fyne/v2"

	"frontlay/model"
	"frontlay/model/figure"
	"frontlay/model/length"
	"frontlay/model/message"
	"frontlay/ui/field"
	"frontlay/ui/tool"
)

// spec is what the form adds to a figure of the sheet: its path in the file,
// without indexes, and what an empty field means where the figure can be left out: in words, or the figure that holds then.
type spec struct {
	path  string
	none  string
	usual func(*picked) length.Length
	then  func(*picked) // what a figure takes with it
}

// row is one field. item is its index in a grid, -1 outside of one; like is a row
// of the same path in an empty sheet.
type row struct {
	spec
	page   *Page
	like   figure.Row
	item   int
	entry  *field.Entry
	object fyne.CanvasObject
}

func (p *Page) newRow(s spec, item int) *row {
	like, _ := figure.Find(figure.Sheet(new(model.HardwareSheet)), s.path)
	return &row{spec: s, page: p, like: like, item: item}
}

// in is the row in a sheet, of the items that the form shows; false where there
// is no such item.
func (r *row) in(s *model.HardwareSheet) (figure.Row, bool) {
	c, item := r.page.chosen, strconv.Itoa(max(r.item, 0))
	if r.item >= 0 {
		if of := r.outer(&c); of != nil {
			*of = r.item
		}
	}
	at := func(i int) string { return "[" + strconv.Itoa(i) + "]" }
	path := strings.NewReplacer("drawers[]", "drawers"+at(c.drawer), "more_holes[]", "more_holes"+at(c.more), "lengths[]", "lengths"+at(c.runner),
		"screws[]", "screws["+item+"]", "holes[]", "holes["+item+"]").Replace(r.path)
	return figure.Find(figure.Sheet(s), path)
}

// outer is which of the items chosen a row of the table of a sheet's own list is about;
// nil: it is in no such table.
func (r *row) outer(c *chosen) *int {
	switch {
	case r.item < 0 || strings.Contains(strings.TrimPrefix(r.path, "runner."), "[].screws[]."), strings.Contains(r.path, "more_holes[]"):
		return nil
	case strings.HasPrefix(r.path, "runner.lengths[]"):
		return &c.runner
	case strings.HasPrefix(r.path, "drawers[]"):
		return &c.drawer
	}
	return nil
}

// focus gives the keyboard to the field.
func (r *row) focus() {
	if c := field.CanvasOf(r.entry); c != nil {
		c.Focus(r.entry)
		return
	}
	r.focused()
}

// focused shows what the row is about.
func (r *row) focused() {
	r.page.stepped = nil
	if of := r.outer(&r.page.chosen); of != nil {
		if *of != r.item {
			*of = r.item
			r.page.form.update()
		}
	} else if r.item >= 0 && strings.HasPrefix(r.path, "runner.") {
		r.page.chosen.screw = r.item
	}
	r.page.look(r)
}

// source makes a field of the row.
func (r *row) source() field.Source {
	p := r.page
	s := field.Source{
		Get: r.value,
		Put: func(text string) error {
			do, err := r.parse(text)
			if err == nil {
				p.change(do)
			}
			return err
		},
		Check: func(text string) error {
			do, err := r.parse(text)
			if err != nil {
				return err
			}
			return p.judge(r, do)
		},
		Focused: r.focused,
		Figure:  true,
	}
	switch r.like.Value.(type) {
	case *figure.Text:
		s.Figure = false
	case *figure.Size:
		if p.sheet.Unit == length.UnitInch {
			s.Sample = "≈ 88 63/64"
		}
		s.Step = func(n int) error {
			p.step(r, func(k *picked) {
				if at, ok := r.in(k.sheet); ok {
					size := at.Value.(*figure.Size)
					v, _ := size.Get()
					if v == 0 && r.usual != nil {
						v = r.usual(k)
					}
					size.Set(v + length.Length(n)*tool.Step(p.sheet.Unit, false))
				}
			})
			return nil
		}
	}
	return s
}

// optional tells that a size can be left out.
func (r *row) optional() bool { return r.none != "" || r.usual != nil }

// value is what the field shows. A size that the sheet's unit does not write
// exactly keeps the unit that it was typed in.
func (r *row) value() field.Value {
	p, text := r.page, ""
	at, ok := r.in(p.sheet)
	if !ok {
		return field.Value{}
	}
	switch v := at.Value.(type) {
	case *figure.Size:
		if size, _ := v.Get(); size != 0 || !r.optional() {
			text = p.say().Typed(size)
		}
	case *figure.Sizes:
		var all []string
		for _, one := range *v.At {
			all = append(all, p.say().Typed(one))
		}
		text = strings.Join(all, "; ")
	case *figure.Number:
		if *v.At != 0 {
			text = p.say().Number(*v.At)
		}
	case *figure.Text:
		return field.Value{Text: *v.At}
	}
	switch {
	case text != "":
		return field.Value{Text: text}
	case r.usual != nil:
		return field.Value{Grey: p.say().Typed(r.usual(p.now()))}
	}
	return field.Value{Grey: p.text(r.none)}
}

// parse gives what a text asked of the field does to a sheet; it fails where the
// text can't be read.
func (r *row) parse(text string) (func(*picked), error) {
	var err error
	var set func(figure.Value)
	switch r.like.Value.(type) {
	case *figure.Size:
		var v length.Length
		if !r.optional() || strings.TrimSpace(text) != "" {
			v, err = field.ParseSize(text, r.page.sheet.Unit)
		}
		set = func(at figure.Value) { at.(*figure.Size).Set(v) }
	case *figure.Sizes:
		var all []length.Length
		all, err = parseSizes(text, r.page.sheet.Unit)
		set = func(at figure.Value) { *at.(*figure.Sizes).At = all }
	case *figure.Number:
		var n float64
		n, err = parseNumber(text, r.like.Value.(*figure.Number))
		set = func(at figure.Value) { *at.(*figure.Number).At = n }
	case *figure.Text:
		set = func(at figure.Value) { *at.(*figure.Text).At = strings.TrimSpace(text) }
	}
	return func(k *picked) {
		if at, ok := r.in(k.sheet); ok {
			set(at.Value)
			if r.then != nil {
				r.then(k)
			}
		}
	}, err
}

// judge tells what would be wrong with the figure of a row after a change. The
// change can be made all the same: the figure it contradicts may be the wrong
// one.
func (p *Page) judge(r *row, do func(*picked)) error {
	c := p.sheet.Clone()
	do(p.pick(c))
	for _, fault := range figure.SheetFaults(c) {
		if path, _ := plainPath(fault.Path); path == r.path {
			return fault.Named()
		}
	}
	return nil
}

// rows are the fields of figures, each with its label, two side by side.
func (f *form) rows(specs ...spec) fyne.CanvasObject {
	cells, group := f.cells(specs)
	f.groups = append(f.groups, func() []*row { return group })
	return cells
}

// rowsWhile are fields that stand below those of the group before, and belong to it,
// only while there is what they are about.
func (f *form) rowsWhile(there func(*picked) bool, specs ...spec) fyne.CanvasObject {
	cells, more := f.cells(specs)
	last := len(f.groups) - 1
	group := f.groups[last]
	f.groups[last] = func() []*row { return slices.Concat(group(), more) }
	return f.shownWith(cells, there)
}

// always is of fields that are there with every sheet.
func always(*picked) bool { return true }

func (f *form) cells(specs []spec) (fyne.CanvasObject, []*row) {
	var all []fyne.CanvasObject
	var group []*row
	for _, s := range specs {
		r := f.row(s)
		all, group = append(all, r.object), append(group, r)
	}
	return field.Cells(all...), group
}

func (f *form) row(s spec) *row {
	p := f.page
	r := p.newRow(s, -1)
	unit := ""
	switch v := r.like.Value.(type) {
	case *figure.Number:
		unit = v.Unit
	case *figure.Size:
		unit = p.sheet.Unit.Symbol()
	}
	fr := field.NewCell(p.say().Say(r.like.Name), unit, r.source(), func(m message.Message) string { return p.say().Say(m) })
	r.entry, r.object = fr.Entry, fr.Object
	f.single = append(f.single, r)
	return r
}

// parseSizes reads sizes between semicolons, commas with a space behind, tabs, line
// ends, or spaces alone, as they are copied from a document, and puts them in order,
// the lowest first.
func parseSizes(text string, u length.Unit) ([]length.Length, error) {
	var all []length.Length
	for _, part := range strings.Split(strings.NewReplacer(", ", ";", "\t", ";", "\n", ";").Replace(text), ";") {
		if strings.TrimSpace(part) == "" {
			continue
		}
		v, err := field.ParseSize(part, u)
		if err == nil {
			all = append(all, v)
			continue
		}
		apart := spaced(part)
		if len(apart) < 2 {
			return nil, err
		}
		for _, one := range apart {
			v, err := field.ParseSize(one, u)
			if err != nil {
				return nil, err
			}
			all = append(all, v)
		}
	}
	slices.Sort(all)
	return all, nil
}

// spaced parts figures at their spaces, but for the one before a fraction or a unit.
func spaced(text string) []string {
	var all []string
	for _, word := range strings.Fields(text) {
		n := len(all)
		unit := strings.Trim(word, "0123456789.,/+-*()") == word
		fraction := strings.Contains(word, "/") && n > 0 && !strings.ContainsAny(all[n-1], "/.,") && strings.Trim(all[n-1], "0123456789") == ""
		if n > 0 && (unit || fraction) {
			all[n-1] += " " + word
			continue
		}
		all = append(all, word)
	}
	return all
}

// parseNumber reads a weight or a price, 0 where nothing is given.
func parseNumber(text string, of *figure.Number) (float64, error) {
	text = strings.TrimSpace(text)
	if text == "" {
		return 0, nil
	}
	v, err := strconv.ParseFloat(strings.Replace(text, ",", ".", 1), 64)
	switch {
	case err == nil && v >= 0 && v <= of.Greatest:
		return v, nil
	case of.Unit == "kg":
		return 0, message.New("“%v” is no weight in kg. Write one such as 30 or 2.5.", text)
	}
	return 0, message.New("“%v” is no price. Write one such as 30 or 2.5.", text)
}
