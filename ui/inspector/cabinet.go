package inspector

import (
	"frontlay/model"
	"frontlay/model/edit"
	"frontlay/model/length"
)

// cabinet shows a carcass.
func (f *form) cabinet(at model.Place) {
	doc := func() *model.Cabinet {
		if c := f.session.Project().CabinetAt(at); c != nil {
			return c
		}
		return &model.Cabinet{}
	}
	f.heading(f.text("Cabinet"))
	f.line("Name", func() (string, string) { return doc().Name, "" },
		func(s string) edit.Edit { return edit.RenameCabinet{At: at, Name: s} })
	one := func(label string, which edit.CabinetSize, get func() length.Length) {
		f.size(label, size{
			get: func() (length.Length, bool, bool) { return get(), true, false },
			put: func(v length.Length) edit.Edit { return edit.SetCabinetSize{At: at, Which: which, Size: v} },
		})
	}
	one("Width", edit.Width, func() length.Length { return doc().Width })
	one("Height of carcass", edit.Height, func() length.Length { return doc().Height })
	one("Depth", edit.Depth, func() length.Length { return doc().Depth })
	one("Plinth", edit.Plinth, func() length.Length { return doc().Plinth })
	one("Worktop", edit.Worktop, func() length.Length { return doc().Worktop })
	one("Finger-pull channel", edit.Channel, func() length.Length { return doc().Channel })
	f.choice("Fronts", []string{f.text("overlay"), f.text("inset")}, func() int { return int(doc().Mount) },
		func(i int) edit.Edit { return edit.SetMount{At: at, Mount: model.Mount(i)} })
	f.placeInRun(at)
	f.heading(f.text("Reveals of this cabinet"))
	f.reveals(at, func() (model.Reveals, bool) { return f.session.Project().RevealsOf(doc()), doc().Reveals != nil })
	if len(doc().Bays) == 1 {
		f.heading(f.text("Bay"))
		bay := model.Place{Cabinet: at.Cabinet, Bay: 0, Front: -1}
		f.hardware(bay)
		f.divisionRule(bay, func() *model.Bay {
			if b := f.session.Project().BayAt(bay); b != nil {
				return b
			}
			return &model.Bay{}
		})
	}
	f.beside(at, doc)
}

// reveals are five fields; at a cabinet, grey ones are those of the project.
func (f *form) reveals(at model.Place, get func() (model.Reveals, bool)) {
	for _, r := range []struct {
		label string
		of    func(*model.Reveals) *length.Length
	}{
		{"Left", func(r *model.Reveals) *length.Length { return &r.Left }},
		{"Right", func(r *model.Reveals) *length.Length { return &r.Right }},
		{"Top", func(r *model.Reveals) *length.Length { return &r.Top }},
		{"Bottom", func(r *model.Reveals) *length.Length { return &r.Bottom }},
		{"Between fronts", func(r *model.Reveals) *length.Length { return &r.Gap }},
	} {
		s := size{
			get: func() (length.Length, bool, bool) {
				v, own := get()
				return *r.of(&v), own, false
			},
			put: func(v length.Length) edit.Edit {
				all, _ := get()
				*r.of(&all) = v
				return edit.SetReveals{At: at, Reveals: &all}
			},
		}
		if at.Cabinet >= 0 {
			s.clear = func() edit.Edit { return edit.SetReveals{At: at} }
		}
		f.size(r.label, s)
	}
}

// beside tells what stands at the cabinet's sides.
func (f *form) beside(at model.Place, doc func() *model.Cabinet) {
	for _, right := range []bool{false, true} {
		get := func() model.Beside {
			if right {
				return doc().Right
			}
			return doc().Left
		}
		if right {
			f.heading(f.text("At its right"))
		} else {
			f.heading(f.text("At its left"))
		}
		change := func(do func(*model.Beside)) edit.Edit {
			b := get()
			do(&b)
			return edit.SetBeside{At: at, Right: right, Beside: b}
		}
		f.size("End panel", size{
			none: true,
			get:  func() (length.Length, bool, bool) { v := get().EndPanel; return v, v > 0, false },
			put:  func(v length.Length) edit.Edit { return change(func(b *model.Beside) { b.EndPanel = v }) },
			clear: func() edit.Edit {
				return change(func(b *model.Beside) { b.EndPanel = 0 })
			},
		})
		f.size("Filler", size{
			none: true,
			get:  func() (length.Length, bool, bool) { v := get().Filler; return v, v > 0, false },
			put:  func(v length.Length) edit.Edit { return change(func(b *model.Beside) { b.Filler = v }) },
			clear: func() edit.Edit {
				return change(func(b *model.Beside) { b.Filler = 0 })
			},
		})
		f.mark("A wall or a corner", func() bool { return get().Wall }, nil,
			func(on bool) edit.Edit { return change(func(b *model.Beside) { b.Wall = on }) })
		f.size("Projects from the wall", size{
			none: true,
			get:  func() (length.Length, bool, bool) { v := get().Projection; return v, v > 0, false },
			put:  func(v length.Length) edit.Edit { return change(func(b *model.Beside) { b.Projection = v }) },
			clear: func() edit.Edit {
				return change(func(b *model.Beside) { b.Projection = 0 })
			},
		})
	}
}
