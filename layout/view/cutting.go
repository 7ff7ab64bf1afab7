package view

import (
	"frontlay/layout/cutting"
	"frontlay/layout/drawing"
	"frontlay/layout/plane"
	"frontlay/model/message"
)

// CuttingSheet draws a stock sheet with the parts that are cut from it, the number of
// each cut at its beginning, and what is left over, in the sheet's own frame. named
// says what is written on a part, and what where that has no room.
func CuttingSheet(s cutting.Stock, sheet *cutting.Piece, named func(*cutting.Piece) (whole, short message.Message)) *drawing.Drawing {
	d := &drawing.Drawing{Title: message.New("Stock sheet")}
	whole := plane.R(0, 0, s.Length, s.Width)
	d.Add(rect(drawing.Carcass, drawing.Subject{}, whole))
	sheet.Walk(func(p *cutting.Piece) {
		switch {
		case p.Cut != nil:
		case p.Part < 0:
			d.Add(&drawing.Hatch{Tag: drawing.Tag{Meaning: drawing.Hidden}, Rect: p.Area})
		default:
			r := rect(drawing.Face, drawing.Subject{}, p.Area)
			r.Filled = true
			d.Add(r)
			long, short := named(p)
			d.Add(&drawing.Text{
				Tag: drawing.Tag{Meaning: drawing.Label}, At: p.Area.Centre(), Anchor: drawing.Anchor{X: 0.5, Y: 0.5},
				Size: smallLetters, Say: long, Short: short, Least: short, Within: p.Area,
			})
		}
	})
	for _, p := range sheet.Cuts() {
		line := &drawing.Line{Tag: drawing.Tag{Meaning: drawing.Cut}, From: p.Area.Min, To: p.Area.Max}
		anchor := drawing.Anchor{X: 0, Y: 0.5}
		if p.Cut.Upright {
			line.From.X, line.To.X = p.Cut.At, p.Cut.At
			anchor = drawing.Anchor{X: 0.5, Y: 0}
		} else {
			line.From.Y, line.To.Y = p.Cut.At, p.Cut.At
		}
		d.Add(line)
		d.Add(&drawing.Text{
			Tag: drawing.Tag{Meaning: drawing.Note}, At: line.From, Anchor: anchor, Size: smallLetters, Bold: true,
			Say: message.New("(%v)", p.Cut.Number), Within: p.Area,
		})
	}
	if s.Trim > 0 {
		trimmed := rect(drawing.Hidden, drawing.Subject{}, sheet.Area)
		trimmed.Dashed = true
		d.Add(trimmed)
	}
	d.Add(across(drawing.Subject{}, 0, s.Length, 0, -1))
	d.Add(upright(drawing.Subject{}, 0, s.Width, 0, -1))
	return d
}

// Blank draws a board from which matched fronts are cut, with their numbers, an arrow
// to the top edge of each, and its size; places are where they lie on it, as they hang
// seen from the room.
func Blank(size plane.Point, places []plane.Rect, numbers []int) *drawing.Drawing {
	d := &drawing.Drawing{Title: message.New("Blank")}
	whole := plane.R(0, 0, size.X, size.Y)
	d.Add(&drawing.Hatch{Tag: drawing.Tag{Meaning: drawing.Hidden}, Rect: whole})
	d.Add(rect(drawing.Carcass, drawing.Subject{}, whole))
	for i, p := range places {
		r := rect(drawing.Face, drawing.Subject{}, p)
		r.Filled = true
		d.Add(r)
		d.Add(&drawing.Text{
			Tag: drawing.Tag{Meaning: drawing.Label}, At: p.Centre(), Anchor: drawing.Anchor{X: 0.5, Y: 0.5}, Size: normalLetters, Bold: true,
			Say: message.New("%v ↑", numbers[i]), Within: p,
		})
		if places[0].Min.X == p.Min.X {
			d.Add(upright(drawing.Subject{}, p.Min.Y, p.Max.Y, 0, -1))
		}
		if places[0].Min.Y == p.Min.Y {
			d.Add(across(drawing.Subject{}, p.Min.X, p.Max.X, 0, -1))
		}
	}
	d.Add(across(drawing.Subject{}, 0, size.X, 0, -2))
	d.Add(upright(drawing.Subject{}, 0, size.Y, 0, -2))
	return d
}
