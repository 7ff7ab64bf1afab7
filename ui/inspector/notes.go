package inspector

import (
	"frontlay/model"
	"frontlay/model/edit"
	"frontlay/model/message"
	"frontlay/ui/field"
)

// notes are the project's, of as many lines as it takes. What can't be taken is
// told where everything else is that can't be done.
func (f *form) notes() {
	f.heading(f.text("Notes"))
	get := func() string { return f.session.Project().Notes }
	s := field.Source{
		Get:  func() field.Value { return field.Value{Text: get(), Grey: f.text("what the bench should know")} },
		Put:  func(text string) error { return f.session.Do(edit.Set{At: model.Whole, Key: "notes", Value: text}) },
		Tell: func(m message.Message) { f.refused(m) },
	}
	e, at := take(f, "lines", "Notes", func(e *field.Entry) { e.Use(s) }, func() *field.Entry { return field.NewLines(s, 4) })
	f.add(e, at, e)
}

// refused tells what can't be taken, and nothing where that is taken away.
func (f *form) refused(m message.Message) {
	if !m.Empty() {
		f.tell(m)
	}
}
