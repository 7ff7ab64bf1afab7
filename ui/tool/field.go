package tool

import (
	"frontlay/layout/drawing"
	"frontlay/layout/plane"
	"frontlay/model/edit"
	"frontlay/model/length"
	"frontlay/model/message"
	"frontlay/ui/session"
)

// Field is what is typed over a text of the drawing: a size, or a name.
type Field struct {
	Of   drawing.Subject // the text that it lies over
	At   plane.Point     // where it lies where the drawing has no such text
	Size length.Length   // the size of the moment
	Name *string         // the name of the moment; nil: it is a size
	// Edit is the change that a typed text asks for; the error says why there is
	// none, and what would be possible.
	Edit func(text string) (edit.Edit, error)
	// Proposed tells that it is a size of what a tool would draw: Enter draws it,
	// changed or not, going elsewhere does not.
	Proposed bool
	// Drawn follows the change; nil: nothing does.
	Drawn func()
	// Next is the field that Tab leads to, where it is not the next of the drawing,
	// by the tool that is in the hand then.
	Next func(Tool) (Field, bool)
}

// Follows tells that a size can't be typed.
func Follows() message.Message { return message.New("This size follows from the others.") }

// FieldOf is the field for a figure or a name that stands for a thing; false
// where it can't be typed.
func FieldOf(s *session.Session, of drawing.Subject) (Field, bool) {
	if of.Kind == drawing.FrontName {
		return nameField(s, of)
	}
	v, where, ok := sizeOf(s, of)
	if !ok {
		return Field{}, false
	}
	return Field{Of: of, At: where.Centre(), Size: v, Edit: func(text string) (edit.Edit, error) {
		v, err := length.Parse(text, s.Project().Unit)
		if err != nil {
			return nil, message.Of(err)
		}
		e := sized(of, v)
		return e, s.Judge(e)
	}}, true
}

// nameField is the field for a front's name.
func nameField(s *session.Session, of drawing.Subject) (Field, bool) {
	f := s.Project().FrontAt(of.Place)
	placed := s.Result().Plan.FrontAt(of.Place)
	if f == nil || placed == nil {
		return Field{}, false
	}
	name := f.Name
	return Field{Of: of, At: placed.Face.Centre(), Name: &name, Edit: func(text string) (edit.Edit, error) {
		e := edit.Set{At: of.Place, Key: "name", Value: text}
		return e, s.Judge(e)
	}}, true
}

// sizeOf is the size of the moment that a typed one would replace, and where the
// thing is that has it.
func sizeOf(s *session.Session, of drawing.Subject) (length.Length, plane.Rect, bool) {
	pl := s.Result().Plan
	switch of.Kind {
	case drawing.FrontHeight:
		if f := pl.FrontAt(of.Place); f != nil {
			return f.Face.Height(), f.Face, true
		}
	case drawing.BayWidth:
		if b := pl.BayAt(of.Place); b != nil {
			return b.Opening.Width(), b.Opening, true
		}
	case drawing.CabinetWidth:
		if cab := pl.CabinetAt(of.Place); cab != nil {
			return cab.Outline.Width(), cab.Outline, true
		}
	case drawing.CabinetHeight:
		if cab := pl.CabinetAt(of.Place); cab != nil {
			return cab.Outline.Height(), cab.Outline, true
		}
	}
	return 0, plane.Rect{}, false
}

// sized is the edit that gives a thing a size.
func sized(of drawing.Subject, v length.Length) edit.Edit {
	switch of.Kind {
	case drawing.FrontHeight:
		return edit.SetHeight{At: of.Place, Height: v}
	case drawing.CabinetHeight:
		return edit.SetCabinet(of.Place, "height", v)
	case drawing.CabinetWidth:
		return edit.SetCabinet(of.Place, "width", v)
	default:
		return edit.Set{At: of.Place, Key: "width", Value: v}
	}
}

// typed tells that a size can be typed in place of a figure.
func typed(k drawing.SubjectKind) bool {
	switch k {
	case drawing.FrontHeight, drawing.CabinetWidth, drawing.CabinetHeight, drawing.BayWidth:
		return true
	}
	return false
}

// typeAt opens the field for a figure or a name, or tells why there is none.
func typeAt(d Desk, of drawing.Subject) {
	if f, ok := FieldOf(d.Session(), of); ok {
		d.Type(f)
	} else {
		d.Tell(Follows())
	}
}
