package edit_test

import (
	"testing"

	"frontlay/model"
	"frontlay/model/edit"
	"frontlay/model/length"
)

// A change is named by the figure, its value and what it is a figure of.
func TestWhatIsSetIsNamed(t *testing.T) {
	front, cabinet := model.Place{}, model.Place{Bay: -1, Front: -1}
	for _, c := range []struct {
		edit edit.Set
		want string
	}{
		{edit.Set{front, "cover", mm(5)}, "Least cover 5 mm"},
		{edit.Set{front, "cover", nil}, "Least cover left out"},
		{edit.Set{front, "drop", mm(-3)}, "Drop -3 mm"},
		{edit.Set{front, "drop", nil}, "Drop worked out"},
		{edit.Set{front, "name", "Jars"}, "Name the front “Jars”"},
		{edit.Set{front, "contents.weight", 2.5}, "Contents weight 2.5 kg"},
		{edit.Set{front, "handle", true}, "Handle holes"},
		{edit.Set{front, "handle", nil}, "No handle holes"},
		{edit.Set{front, "handle.diameter", mm(5)}, "Handle holes: Diameter 5 mm"},
		{edit.Set{model.Place{Front: -1}, "width", mm(300)}, "Clear width 300 mm"},
		{edit.Set{model.Place{Front: -1}, "width", nil}, "Bay takes what is left"},
		{edit.Set{cabinet, "depth", mm(560)}, "Cabinet: Depth 560 mm"},
		{edit.Set{cabinet, "mount", int(model.Inset)}, "Inset fronts"},
		{edit.Set{cabinet, "left.wall", false}, "At its left: A wall or a corner: no"},
		{edit.Set{cabinet, "reveals", nil}, "Reveals as in the project"},
		{edit.Set{model.Whole, "reveals.top", mm(3)}, "Reveals: Top 3 mm"},
		{edit.Set{model.Whole, "boards.front.thickness", mm(19)}, "Front board: Thickness 19 mm"},
		{edit.Set{model.Whole, "notes", "a\nb"}, "Notes"},
		{edit.Set{model.Whole, "hole_rows.mode", 1}, "Hole rows: Runners"},
	} {
		if got := c.edit.Label().String(); got != c.want {
			t.Errorf("%s %v: %q, want %q", c.edit.Key, c.edit.Value, got, c.want)
		}
	}
}

// What a project has out of bounds already is no reason to refuse another figure of
// it; what is set is judged by the bounds of files.
func TestOnlyWhatIsSetIsJudged(t *testing.T) {
	p := sample()
	p.Reveals.Left = 3 * length.Metre
	p.Boards.Front.Lipping = length.Metre
	for _, c := range []struct {
		set     edit.Set
		refused string
	}{
		{edit.Set{model.Whole, "reveals.top", mm(5)}, ""},
		{edit.Set{model.Whole, "reveals.left", mm(300)}, ""},
		{edit.Set{model.Whole, "boards.front.thickness", mm(30)}, ""},
		{edit.Set{model.Whole, "boards.front.thickness", mm(201)}, "Thickness is 201 mm and can't be more than 200 mm; check the figure and its unit"},
		{edit.Set{model.Whole, "boards.front.lipping", mm(60)}, ""},
		{edit.Set{model.Place{}, "handle.diameter", mm(100)}, ""},
		{edit.Set{model.Place{}, "cover", length.Metre}, ""},
		{edit.Set{model.Place{}, "cover", mm(-1)}, "Least cover is -1 mm and can't be negative; write 0 or more"},
		{edit.Set{model.Place{}, "cover", 1.5}, "“cover” can't be set here."},
		{edit.Set{model.Place{Front: 9}, "cover", mm(1)}, "There is nothing at this place any more. Select something in the drawing."},
	} {
		switch next, err := c.set.Apply(p); {
		case err == nil && c.refused != "":
			t.Errorf("%s %v is taken", c.set.Key, c.set.Value)
		case err != nil && err.Error() != c.refused:
			t.Errorf("%s %v: %v", c.set.Key, c.set.Value, err)
		case err == nil && next.Reveals.Left == 0:
			t.Errorf("%s lost the others", c.set.Key)
		}
	}
}

// A cabinet that gets a gap of its own keeps the project's others.
func TestAGapOfItsOwn(t *testing.T) {
	p := sample()
	p.Reveals = model.Reveals{Left: mm(3), Right: mm(3), Top: mm(2), Bottom: mm(1), Gap: mm(4)}
	next, err := edit.SetCabinet(model.Place{Front: 2}, "reveals.left", mm(7)).Apply(p)
	want := model.Reveals{Left: mm(7), Right: mm(3), Top: mm(2), Bottom: mm(1), Gap: mm(4)}
	if err != nil || *next.Cabinets[0].Reveals != want || next.Reveals.Left != mm(3) {
		t.Errorf("%+v, %v", next.Cabinets[0].Reveals, err)
	}
}
