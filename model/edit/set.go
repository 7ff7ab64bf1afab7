package edit

import (
	"strings"

	"frontlay/model"
	"frontlay/model/figure"
	"frontlay/model/length"
	"frontlay/model/message"
)

// Set gives a value to a figure of the thing at a place: a front, a bay, a
// cabinet, or the project (model.Whole). Key is the row's path in the thing, as
// contents.height. Value is a length.Length, float64, int (of a choice or a
// count), string or bool, as the row takes it; true makes an empty group, nil
// takes away what is given. Only what it sets is judged.
type Set struct {
	At    model.Place
	Key   string
	Value any
}

// SetCabinet sets a figure of the cabinet that a place lies in.
func SetCabinet(at model.Place, key string, value any) Set {
	return Set{model.Place{Cabinet: at.Cabinet, Bay: -1, Front: -1}, key, value}
}

// Place is where it is set.
func (e Set) Place() model.Place { return e.At }

// Label names the change by the row, and by what the row is in where that has a
// name.
func (e Set) Label() message.Message {
	if m, ok := e.byWords(); ok {
		return m
	}
	rows, key := figure.Like(e.At), figure.OfKind(e.Key)
	row, _ := figure.Find(rows, key)
	what := e.valued(row)
	if i := strings.LastIndex(key, "."); i >= 0 {
		if in, _ := figure.Find(rows, key[:i]); !in.Name.Empty() {
			return message.New("%v: %v", in.Label(), what)
		}
	}
	if e.At.Cabinet >= 0 && e.At.Bay < 0 {
		return message.New("%v: %v", message.New("Cabinet"), what)
	}
	return what
}

// byWords are labels that say what becomes of a thing rather than its value.
func (e Set) byWords() (message.Message, bool) {
	switch {
	case e.Key == "gap_above" && e.Value == nil:
		return message.New("Gap above as in the cabinet"), true
	case e.Key == "drop" && e.Value == nil:
		return message.New("Drop worked out"), true
	case e.Key == "width" && e.Value == nil:
		return message.New("Bay takes what is left"), true
	case e.Key == "reveals" && e.Value == nil:
		return message.New("Reveals as in the project"), true
	case e.Key == "board" && e.Value == model.PlainBoard:
		return message.New("Plain front board"), true
	case e.Key == "board" && e.Value == nil:
		return message.New("Front board as around it"), true
	case e.Key == "packing" && e.Value == nil:
		return message.New("Packing as in the bay"), true
	case e.Key == "handle" && e.Value == nil:
		return message.New("No handle holes"), true
	case (e.Key == "measured" || e.Key == "niche") && e.Value == nil:
		return message.New("Forget what was measured"), true
	case e.Key == "name":
		return message.New("Name the front “%v”", e.Value), true
	case e.Key == "mount" && e.Value == int(model.Inset):
		return message.New("Inset fronts"), true
	case e.Key == "mount":
		return message.New("Overlay fronts"), true
	}
	return message.Message{}, false
}

// valued is the name of a row with the value.
func (e Set) valued(row figure.Row) message.Message {
	name := row.Label()
	switch v := e.Value.(type) {
	case nil:
		return message.New("%v left out", name)
	case length.Length:
		return message.New("%v %v", name, v)
	case float64:
		if n, ok := row.Value.(*figure.Number); ok && n.Unit != "" {
			return message.New("%v %v %v", name, v, n.Unit)
		}
		return message.New("%v %v", name, v)
	case string:
		if t, ok := row.Value.(*figure.Text); !ok || !t.Lines && len(t.OneOf) == 0 {
			return message.New("%v “%v”", name, v)
		}
	case bool:
		if !v {
			return message.New("%v: no", name)
		}
	}
	return name
}

// Apply makes the change.
func (e Set) Apply(p *model.Project) (*model.Project, error) {
	c := p.Clone()
	old, next := figure.Of(p, e.At), figure.Of(c, e.At)
	if next == nil {
		return nil, message.New("There is nothing at this place any more. Select something in the drawing.")
	}
	e.begin(c)
	began(next, e)
	row, ok := figure.Find(next, e.Key)
	if !ok || !put(row.Value, e.Value) {
		return nil, message.New("“%v” can't be set here.", e.Key)
	}
	if row.Ways != "" && e.Value != nil {
		figure.OnlyWay(next, e.Key)
	}
	first, _, _ := strings.Cut(e.Key, ".")
	was, _ := figure.Find(old, first)
	now, _ := figure.Find(next, first)
	if err := figure.Refused([]figure.Row{was}, []figure.Row{now}); err != nil {
		return nil, err
	}
	if name, ok := e.Value.(string); ok && e.Key == "board" && name != "" {
		if _, there := c.FrontBoard(oneLine(name)); !there {
			return nil, message.New("The project has no front board “%v”. Make one of this name first.", name)
		}
	}
	if f := c.FrontAt(e.At); f != nil && (e.Key == "least" || e.Key == "greatest") && f.Greatest != 0 && f.Least > f.Greatest {
		return nil, message.New("The least height of %v is above the greatest of %v. Change one of the two.", f.Least, f.Greatest)
	}
	return c, nil
}

// begin makes the group of the key, where there is none yet: a cabinet's reveals
// begin as those of the project, of which one is to change, a front's rail as its cabinet's,
// handles and a front's packing as what is around says.
func (e Set) begin(c *model.Project) {
	group, _, _ := strings.Cut(e.Key, ".")
	switch {
	case e.Value == nil:
	case group == "reveals" && e.At.Cabinet >= 0:
		cab := c.CabinetAt(e.At)
		r := c.RevealsOf(cab)
		cab.Reveals = &r
	case group == "rail" && c.FrontAt(e.At) != nil && c.FrontAt(e.At).Rail == nil:
		r := c.CabinetAt(e.At).Rail
		c.FrontAt(e.At).Rail = &r
	case group == "packing" && c.FrontAt(e.At) != nil && c.FrontAt(e.At).Packing == nil:
		k := c.PackingOf(e.At, c.FrontAt(e.At).Span)
		c.FrontAt(e.At).Packing = &k
	case group == "handle" && c.HandleAt(e.At) != nil:
		at := c.HandleAt(e.At)
		if *at != nil {
			return
		}
		h := model.Handle{Diameter: model.UsualHandleHole}
		if around := c.HandleAround(e.At); around != nil && !around.None {
			h = *around
		}
		*at = &h
	}
}

// began makes the outermost group of the key where the thing does without it, and what is
// set in it would be lost.
func began(rows []figure.Row, e Set) {
	group, _, below := strings.Cut(e.Key, ".")
	if !below || e.Value == nil {
		return
	}
	if in, _ := figure.Find(rows, group); in.Value != nil {
		if g, ok := in.Value.(*figure.Group); ok && g.Make != nil && !g.There() {
			g.Make()
		}
	}
}

// put gives a row a value; it is false for a value that the row does not take.
func put(row figure.Value, value any) bool {
	switch r := row.(type) {
	case *figure.Size:
		return taken(value, r.Set, r.Unset)
	case *figure.Number:
		return taken(value, func(v float64) { *r.At = v }, func() { *r.At = 0 })
	case *figure.Count:
		return taken(value, func(v int) { *r.At = v }, func() { *r.At = 0 })
	case *figure.Choice:
		return taken(value, r.Set, func() { r.Set(0) })
	case *figure.Flag:
		return taken(value, func(v bool) { *r.At = v }, func() { *r.At = false })
	case *figure.Text:
		clean := oneLine
		if r.Lines {
			clean = lines
		}
		return taken(value, func(s string) { *r.At = clean(s) }, func() { *r.At = "" })
	case *figure.Group:
		return r.Unset != nil && taken(value, func(bool) {}, r.Unset)
	}
	return false
}

// taken sets a value of the right type, or unsets where there is none.
func taken[T any](value any, set func(T), unset func()) bool {
	v, ok := value.(T)
	switch {
	case ok:
		set(v)
	case value == nil:
		unset()
	}
	return ok || value == nil
}
