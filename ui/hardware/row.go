package hardware

import (
	"slices"
	"strconv"
	"strings"

	"fyne.io/fyne/v2"

	"frontlay/layout/view"
	"frontlay/model"
	"frontlay/model/figure"
	"frontlay/model/length"
	"frontlay/model/message"
	"frontlay/ui/field"
	"frontlay/ui/tool"
)

// row is one field: its path as in the file, without indexes, and the figure of
// the sketch. item is its index in a grid, -1 outside of one.
type row struct {
	page   *Page
	path   string
	label  string
	figure view.Figure
	item   int
	entry  *field.Entry
	object fyne.CanvasObject
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
	if r.item >= 0 && strings.HasPrefix(r.path, "runner.") {
		r.page.chosen.screw = r.item
	}
	r.page.look(r)
}

// update shows what the sheet holds.
func (r *row) update() { r.entry.Update() }

// change is what a text asked of a field does to a sheet; it fails where the
// text can't be read.
type change func(text string) (func(*picked), error)

// source makes a field that shows get and makes changes of a text.
func (r *row) source(get func() field.Value, parse change) field.Source {
	return field.Source{
		Figure: true,
		Get:    get,
		Put: func(text string) error {
			do, err := parse(text)
			if err == nil {
				r.page.change(do)
			}
			return err
		},
		Check: func(text string) error {
			do, err := parse(text)
			if err != nil {
				return err
			}
			return r.page.judge(r, do)
		},
		Focused: r.focused,
	}
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

// docOf says what the figure at a path is and where on a maker's document it stands.
func docOf(path string) message.Message {
	r, _ := figure.Find(figure.Sheet(new(model.HardwareSheet)), path)
	return r.Doc
}

// row makes a row with a label.
func (f *form) row(path, label, unit string, figure view.Figure, s func(*row) field.Source) *row {
	r := &row{page: f.page, path: path, label: label, figure: figure, item: -1}
	fr := field.NewRow(f.page.text(label), unit, s(r), func(m message.Message) string { return f.page.say().Say(m) })
	r.entry, r.object = fr.Entry, fr.Object
	return f.add(r)
}

// size makes the row of a size.
func (f *form) size(s size) *row {
	p := f.page
	return f.row(s.path, s.label, "", s.figure, func(r *row) field.Source {
		src := r.source(func() field.Value { return p.value(s) }, func(text string) (func(*picked), error) {
			v, err := parseSize(text, p.sheet.Unit, s.none != "" || s.usual != nil)
			return func(k *picked) {
				if at := s.of(k); at != nil {
					*at = v
				}
			}, err
		})
		if p.sheet.Unit == length.UnitInch {
			src.Sample = "≈ 88 63/64"
		}
		src.Step = func(n int) error {
			p.change(func(k *picked) {
				if at := s.of(k); at != nil {
					*at += length.Length(n) * tool.Step(p.sheet.Unit, false)
				}
			})
			return nil
		}
		return src
	})
}

// parseSize reads a size; an empty text is 0 where the figure can be left out.
func parseSize(text string, u length.Unit, optional bool) (length.Length, error) {
	if optional && strings.TrimSpace(text) == "" {
		return 0, nil
	}
	return field.ParseSize(text, u)
}

// value is what the field of a size shows.
func (p *Page) value(s size) field.Value {
	k := p.now()
	at := s.of(k)
	switch {
	case at == nil:
		return field.Value{}
	case *at == 0 && s.usual != nil:
		return field.Value{Grey: p.say().Typed(s.usual(k))}
	case *at == 0 && s.none != "":
		return field.Value{Grey: p.text(s.none)}
	default:
		return field.Value{Text: p.say().Typed(*at)}
	}
}

// sizesRow makes the row of a list of sizes, written with semicolons.
func (f *form) sizesRow(path, label string, figure view.Figure, none string, of func(*picked) *[]length.Length) *row {
	p := f.page
	return f.row(path, label, "", figure, func(r *row) field.Source {
		return r.source(func() field.Value {
			at := of(p.now())
			if at == nil || len(*at) == 0 {
				return field.Value{Grey: p.text(none)}
			}
			var all []string
			for _, v := range *at {
				all = append(all, p.say().Typed(v))
			}
			return field.Value{Text: strings.Join(all, "; ")}
		}, func(text string) (func(*picked), error) {
			v, err := parseSizes(text, p.sheet.Unit)
			return func(k *picked) {
				if at := of(k); at != nil {
					*at = v
				}
			}, err
		})
	})
}

// parseSizes reads sizes between semicolons, or commas with a space behind, and
// puts them in order, the lowest first.
func parseSizes(text string, u length.Unit) ([]length.Length, error) {
	var all []length.Length
	for _, part := range strings.Split(strings.ReplaceAll(text, ", ", ";"), ";") {
		if strings.TrimSpace(part) == "" {
			continue
		}
		v, err := field.ParseSize(part, u)
		if err != nil {
			return nil, err
		}
		all = append(all, v)
	}
	slices.Sort(all)
	return all, nil
}

// text makes the row of a name.
func (f *form) text(path, label string, of func(*picked) *string) fyne.CanvasObject {
	p := f.page
	return f.row(path, label, "", view.NoFigure, func(r *row) field.Source {
		s := r.source(func() field.Value {
			if at := of(p.now()); at != nil {
				return field.Value{Text: *at}
			}
			return field.Value{}
		}, func(text string) (func(*picked), error) {
			return func(k *picked) {
				if at := of(k); at != nil {
					*at = strings.TrimSpace(text)
				}
			}, nil
		})
		s.Figure = false
		return s
	}).object
}

// weight makes the row of a figure in kg.
func (f *form) weight(path, label string, of func(*picked) *float64) fyne.CanvasObject {
	p := f.page
	return f.row(path, label, "kg", view.NoFigure, func(r *row) field.Source {
		return r.source(func() field.Value {
			at := of(p.now())
			if at == nil || *at == 0 {
				return field.Value{Grey: p.text("not given")}
			}
			return field.Value{Text: p.say().Say(message.New("%v", *at))}
		}, func(text string) (func(*picked), error) {
			v, err := parseWeight(text)
			return func(k *picked) {
				if at := of(k); at != nil {
					*at = v
				}
			}, err
		})
	}).object
}

func parseWeight(text string) (float64, error) {
	text = strings.TrimSpace(text)
	if text == "" {
		return 0, nil
	}
	v, err := strconv.ParseFloat(strings.Replace(text, ",", ".", 1), 64)
	if err != nil || v < 0 || v > 5000 {
		return 0, message.New("“%v” is no weight in kg. Write one such as 30 or 2.5.", text)
	}
	return v, nil
}
