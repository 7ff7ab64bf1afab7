package inspector

import (
	"fyne.io/fyne/v2"

	"frontlay/layout/view"
	"frontlay/model"
	"frontlay/model/message"
	"frontlay/ui/field"
	"frontlay/ui/look"
	"frontlay/ui/sketch"
)

// drawnBuild are fields beside the section through a front that shows their figures: the
// field that has the focus is marked there, and a click there leads to a field.
type drawnBuild struct {
	form   *form
	sketch *sketch.Sketch // nil: nothing is drawn
	draw   func(focus string)
	fields map[string]fyne.Focusable // by their path in the board
}

// notDrawn are fields of a board that nothing is drawn of.
func (f boardForm) notDrawn() *drawnBuild { return &drawnBuild{form: f.form} }

// buildSection draws how fronts are built of a board.
func (f boardForm) buildSection(board func() *model.FrontBoard) *drawnBuild {
	s, _ := take(f.form, "sketch", "build", func(*sketch.Sketch) {}, func() *sketch.Sketch { return sketch.New(fyne.NewSize(220, 20*look.Text())) })
	d := &drawnBuild{form: f.form, sketch: s, fields: map[string]fyne.Focusable{}}
	d.draw = func(focus string) { s.Draw(view.BuildSection(board(), focus), focus, f.say()) }
	s.OnPick = func(path string) {
		if c := field.CanvasOf(s); c != nil && d.fields[path] != nil {
			c.Focus(d.fields[path])
		}
	}
	f.put(s, "", nil)
	update := func() { d.draw(s.Focus) }
	update()
	f.updates = append(f.updates, update)
	return d
}

// size is the field of a figure at a path in the board.
func (d *drawnBuild) size(label message.Message, path string, s size) {
	if d.sketch != nil {
		s.focused = func() { d.draw(path) }
	}
	d.form.size(label, s)
	if d.sketch != nil {
		d.fields[path] = d.form.focus[len(d.form.focus)-1].of
	}
}
