package ui

import (
	"reflect"
	"slices"
	"testing"

	"fyne.io/fyne/v2"

	"frontlay/layout/drawing"
	"frontlay/model"
	"frontlay/model/edit"
	"frontlay/model/length"
	"frontlay/ui/field"
	"frontlay/ui/replay"
	"frontlay/ui/session"
)

// Every field of the inspector takes what can be and changes the project by one
// step, or says why not and changes nothing; undo leads back each time.
func TestEveryField(t *testing.T) {
	front := model.Place{Front: 1}
	for _, c := range []struct {
		name string
		sel  []drawing.Subject
		some string // a field that must be there
	}{
		{"project", nil, "Rounded to"},
		{"front", []drawing.Subject{{Kind: drawing.FrontThing, Place: front}}, "Least height"},
		{"two fronts", []drawing.Subject{{Kind: drawing.FrontThing, Place: front}, {Kind: drawing.FrontThing, Place: model.Place{}}}, "Drop"},
		{"division", []drawing.Subject{{Kind: drawing.DivisionThing, Place: model.Place{}}}, "Below"},
		{"partition", []drawing.Subject{{Kind: drawing.PartitionThing, Place: model.Place{Cabinet: 1}}}, "Clear width left"},
		{"bay", []drawing.Subject{{Kind: drawing.BayThing, Place: model.Place{Cabinet: 1, Front: -1}}}, "Clear width"},
		{"cabinet", []drawing.Subject{{Kind: drawing.CabinetThing, Place: session.PlaceOfCabinet(0)}}, "Depth"},
	} {
		t.Run(c.name, func(t *testing.T) {
			w, _, _ := newWindow(t, "")
			w.session.Select(c.sel...)
			fields := w.desk.Inspector.Fields()
			if fields[c.some] == nil {
				t.Fatalf("there is no field %q", c.some)
			}
			changed := 0
			for name := range fields {
				for _, text := range []string{"123", "1/2 in", "x y", "-7", "100000", "2"} {
					start := w.session.Project()
					_, before := w.session.Steps()
					f := w.desk.Inspector.Fields()[name]
					f.SetText(text)
					took := f.Take()
					_, after := w.session.Steps()
					switch {
					case took && after > before+1:
						t.Errorf("%s: %q makes %d steps", name, text, after-before)
					case !took && after != before:
						t.Errorf("%s: %q is refused and changes the project", name, text)
					case !took:
						f.Restore()
					}
					if after > before {
						changed++
						w.session.Undo()
					}
					if !reflect.DeepEqual(w.session.Project(), start) {
						t.Fatalf("%s: undo of %q does not lead back", name, text)
					}
				}
			}
			if changed < len(fields) {
				t.Errorf("%d fields took only %d sizes", len(fields), changed)
			}
		})
	}
}

// Every command can be undone and leads back to the same project.
func TestUndoOfEveryCommand(t *testing.T) {
	w, _, _ := newWindow(t, "")
	start := w.session.Project()
	for i := range w.table.Rows {
		c := &w.table.Rows[i]
		if apart[c.Name] || slices.Contains([]string{"undo", "redo", "light", "dark", "contrast", "system", "large"}, c.Name) {
			continue
		}
		for _, sel := range []drawing.Subject{w.face(5), {Kind: drawing.DivisionThing, Place: model.Place{}},
			{Kind: drawing.PartitionThing, Place: model.Place{Cabinet: 1}}, {Kind: drawing.CabinetThing, Place: session.PlaceOfCabinet(1)}} {
			w.session.Select(sel)
			w.run(c)
			for w.session.Unsaved() {
				if _, ok := w.session.Undo(); !ok {
					t.Fatalf("%s: the change can't be undone", c.Name)
				}
			}
			if !reflect.DeepEqual(w.session.Project(), start) {
				t.Fatalf("%s: undo does not lead back", c.Name)
			}
			if top := w.win.Canvas().Overlays().Top(); top != nil {
				w.win.Canvas().Overlays().Remove(top)
			}
		}
	}
}

var keyUp = &fyne.KeyEvent{Name: fyne.KeyUp}

// Steppers go by one step of the unit.
func TestSteppers(t *testing.T) {
	w, _, _ := newWindow(t, "")
	w.session.Select(w.face(1))
	for _, c := range []struct {
		unit string
		want length.Length
	}{{"mm", length.Millimetre}, {"inch", length.Inch / 16}} {
		w.do(c.unit)
		before := w.session.Result().Plan.Fronts[0].Face.Height()
		w.desk.Inspector.Fields()["Height"].TypedKey(keyUp)
		if d := w.session.Result().Plan.Fronts[0].Face.Height() - before; d != c.want {
			t.Errorf("in %s a step is %v", c.unit, d)
		}
	}
}

// On the page of a new cabinet a step of a board is a millimetre: they are
// bought in such steps, while sizes of carcasses come in tens.
func TestSteppersOfANewCabinet(t *testing.T) {
	w, _, _ := newWindow(t, "")
	w.showStart(nil)
	b := w.beginning()
	fields := map[string]*field.Entry{}
	replay.Named(w.stage.front, "", func(name string, o fyne.CanvasObject) {
		if e, ok := o.(*field.Entry); ok {
			fields[name] = e
		}
	})
	size := func() length.Length { return b.Session.Project().Cabinets[0].Width }
	board := func() length.Length { return b.Session.Project().Boards.Carcass.Thickness }
	for _, c := range []struct {
		field string
		of    func() length.Length
		want  length.Length
	}{{"field 1", size, length.MM(10)}, {"field 5", board, length.Millimetre}} {
		before := c.of()
		fields[c.field].TypedKey(keyUp)
		if d := c.of() - before; d != c.want {
			t.Errorf("a step of %s is %v, not %v", c.field, d, c.want)
		}
	}
}

// Where the selected fronts differ every field says so in one way, and what is
// typed holds for all of them and leaves the rest as it was.
func TestSeveralFrontsThatDiffer(t *testing.T) {
	w, _, _ := newWindow(t, "")
	a, b := w.face(1).Place, w.face(6).Place
	for _, e := range []edit.Edit{
		edit.SetHeight{At: a, Height: length.MM(300)}, edit.SetDrawer{At: a, Drawer: "low"}, edit.SetDrawer{At: b, Drawer: model.DrawerAuto},
		edit.Set{At: a, Key: "contents.weight", Value: 3.0}, edit.Set{At: a, Key: "least", Value: length.MM(100)},
		edit.Lock{At: []model.Place{a}, Heights: []length.Length{length.MM(300)}, Locked: true},
		edit.Set{At: a, Key: "handle.diameter", Value: length.MM(4)}, edit.Set{At: a, Key: "handle.from_top", Value: length.MM(40)},
		edit.Set{At: b, Key: "handle.diameter", Value: length.MM(6)}, edit.Set{At: b, Key: "handle.from_top", Value: length.MM(50)},
	} {
		if !w.Do(e) {
			t.Fatalf("%T can't be made", e)
		}
	}
	w.session.Select(session.Front(a), session.Front(b))
	for _, label := range []string{"Height", "Share of the rest", "Contents weight", "Least height", "Diameter", "From the top edge"} {
		if f := w.desk.Inspector.Fields()[label]; f == nil || f.Text != "" || f.PlaceHolder != "several" {
			t.Errorf("the field %q does not say that the fronts differ", label)
		}
	}
	dashes, partial := 0, 0
	for _, c := range controls(w.desk.Inspector.Object, nil) {
		switch v := c.(type) {
		case *field.Choice:
			if v.Selected == "" && v.PlaceHolder != "several" {
				dashes++
			}
		case *field.Mark:
			if v.Partial {
				partial++
			}
		}
	}
	if dashes != 0 || partial != 1 {
		t.Errorf("%d choices show a dash, %d boxes are half ticked", dashes, partial)
	}
	f := w.desk.Inspector.Fields()["Diameter"]
	f.SetText("5")
	if !f.Take() {
		t.Fatal("the diameter is not taken")
	}
	for at, top := range map[model.Place]int64{a: 40, b: 50} {
		if h := w.session.Project().FrontAt(at).Handle; h.Diameter != length.MM(5) || h.FromTop != length.MM(top) {
			t.Errorf("the handle at %v is %+v", at, h)
		}
	}
}
