package inspector

import (
	"frontlay/model"
	"frontlay/model/edit"
	"frontlay/model/length"
	"frontlay/ui/field"
)

// project shows what holds for the whole document; it is there when nothing is
// selected.
func (f *form) project() {
	doc := f.session.Project
	f.heading(f.text("Project"))
	f.line("Title", func() (string, string) { return doc().Title, f.text("untitled") },
		func(s string) edit.Edit { return edit.SetTitle{Title: s} })
	f.choice("Unit", field.Units(f.say().Say),
		func() int { return int(doc().Unit) },
		func(i int) edit.Edit { return edit.SetUnit{Unit: length.Unit(i)} })
	f.heading(f.text("Boards"))
	f.board("Carcass", edit.CarcassBoard, func() model.Board { return doc().Boards.Carcass })
	f.board("Fronts", edit.FrontBoard, func() model.Board { return doc().Boards.Front })
	f.board("Back", edit.BackBoard, func() model.Board { return doc().Boards.Back })
	f.heading(f.text("Reveals"))
	f.reveals(model.Whole, func() (model.Reveals, bool) { return doc().Reveals, true })
	f.mark("One gap between cabinets", func() bool { return doc().SharedGaps }, nil, func(on bool) edit.Edit { return edit.ShareGaps{Shared: on} })
	f.heading(f.text("Heights"))
	f.size("Rounded to", size{
		get: func() (length.Length, bool, bool) {
			s := doc().Rounding.Step
			if s == 0 {
				return length.Millimetre, false, false
			}
			return s, true, false
		},
		put: func(v length.Length) edit.Edit {
			return edit.SetRounding{Rounding: model.Rounding{Step: v, Rest: doc().Rounding.Rest}}
		},
		clear: func() edit.Edit {
			return edit.SetRounding{Rounding: model.Rounding{Rest: doc().Rounding.Rest}}
		},
	})
	f.choice("Odd rest goes to", []string{f.text("the lowest without a height"), f.text("the highest without a height")},
		func() int { return int(doc().Rounding.Rest) },
		func(i int) edit.Edit {
			return edit.SetRounding{Rounding: model.Rounding{Step: doc().Rounding.Step, Rest: model.RestTo(i)}}
		})
	f.heading(f.text("Hole rows in the carcass sides"))
	f.choice("Runners", []string{f.text("anywhere"), f.text("move up to a row"), f.text("on rows, fronts give way")},
		func() int { return int(doc().HoleRows.Mode) },
		func(i int) edit.Edit {
			r := doc().HoleRows
			r.Mode = model.RowMode(i)
			return edit.SetHoleRows{Rows: r}
		})
	row := func(label string, of func(*model.HoleRows) *length.Length, usual length.Length) {
		put := func(v length.Length) edit.Edit {
			r := doc().HoleRows
			*of(&r) = v
			return edit.SetHoleRows{Rows: r}
		}
		f.size(label, size{
			get: func() (length.Length, bool, bool) {
				r := doc().HoleRows
				if v := *of(&r); v != 0 {
					return v, true, false
				}
				return usual, false, false
			},
			put: put, clear: func() edit.Edit { return put(0) },
		})
	}
	row("Pitch", func(r *model.HoleRows) *length.Length { return &r.Pitch }, model.UsualPitch)
	row("First row at", func(r *model.HoleRows) *length.Length { return &r.Datum }, 0)
	row("Setback", func(r *model.HoleRows) *length.Length { return &r.Setback }, model.UsualSetback)
	f.boardDetails("Carcass board", edit.CarcassBoard, func() model.Board { return doc().Boards.Carcass })
	f.boardDetails("Front board", edit.FrontBoard, func() model.Board { return doc().Boards.Front })
	f.notes()
	f.note(f.text("Select a front, a division or a cabinet in the drawing to change it."))
}

// board is the thickness of one of the project's boards.
func (f *form) board(label string, use edit.BoardUse, get func() model.Board) {
	f.size(label, size{
		get: func() (length.Length, bool, bool) { return get().Thickness, true, false },
		put: func(v length.Length) edit.Edit {
			b := get()
			b.Thickness = v
			return edit.SetBoard{Use: use, Board: b}
		},
	})
}

// boardDetails are what lists and weights need to know of a board.
func (f *form) boardDetails(label string, use edit.BoardUse, get func() model.Board) {
	f.heading(f.text(label))
	put := func(change func(*model.Board)) edit.Edit {
		b := get()
		change(&b)
		return edit.SetBoard{Use: use, Board: b}
	}
	f.line("Material", func() (string, string) { return get().Material, "" },
		func(s string) edit.Edit { return put(func(b *model.Board) { b.Material = s }) })
	f.number("Density", "kg/m³", func() (float64, bool, bool) { d := get().Density; return d, d > 0, false },
		func(v float64) edit.Edit { return put(func(b *model.Board) { b.Density = v }) })
	grains := []string{"", "horizontal", "vertical"}
	f.choice("Grain", []string{f.text("none"), f.text("horizontal"), f.text("vertical")}, func() int {
		for i, g := range grains {
			if g == get().Grain {
				return i
			}
		}
		return -1
	}, func(i int) edit.Edit { return put(func(b *model.Board) { b.Grain = grains[i] }) })
	if use == edit.FrontBoard {
		f.size("Lipping", size{
			none:  true,
			get:   func() (length.Length, bool, bool) { v := get().Lipping; return v, v > 0, false },
			put:   func(v length.Length) edit.Edit { return put(func(b *model.Board) { b.Lipping = v }) },
			clear: func() edit.Edit { return put(func(b *model.Board) { b.Lipping = 0 }) },
		})
	}
}
