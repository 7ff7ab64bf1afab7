package list

import (
	"cmp"
	"fmt"
	"slices"
	"strings"

	"frontlay/layout/plan"
	"frontlay/layout/plane"
	"frontlay/model"
	"frontlay/model/length"
	"frontlay/model/message"
)

// Blank is one board from which fronts that are matched are cut in order, so that
// the grain runs from each into the next. Size is what to cut for it; Fronts lie on it
// as Places say, as they hang seen from the room, lower left corner at 0,0.
type Blank struct {
	Number  int // from 1
	Upright bool
	Board   model.Board
	Size    plane.Point
	Fronts  []*plan.Front
	Places  []plane.Rect
}

// farthest is how far apart two fronts in a row may lie and still be matched: past a
// partition or two sides, not past a filler or an end panel (common practice, no
// source).
const farthest = 50 * length.Millimetre

// Blanks are the blanks of matched fronts. In a bay that is matched upright they are
// the fronts of its stack, from the bottom up to the next open niche or front of another
// board; across, those that lie in one row through the run: level at both edges and
// beside each other. Frames are never matched, nor is a front that is alone.
func Blanks(p *plan.Plan) []Blank {
	var all []Blank
	add := func(upright bool, fronts []*plan.Front) {
		if len(fronts) > 1 {
			all = append(all, blank(len(all)+1, upright, fronts, p.Project.Saw))
		}
	}
	var across []*plan.Front
	for i := range p.Cabinets {
		for j := range p.Cabinets[i].Bays {
			bay := &p.Cabinets[i].Bays[j]
			switch matched(p.Project, bay.Place) {
			case model.MatchedUpright:
				var stack []*plan.Front
				for k := range bay.Count {
					f := &p.Fronts[bay.First+k]
					if len(stack) > 0 && (!matchable(f) || !oneBoard(stack[0], f) || f.Face.Width() != stack[0].Face.Width()) {
						add(true, stack)
						stack = nil
					}
					if matchable(f) {
						stack = append(stack, f)
					}
				}
				add(true, stack)
			case model.MatchedAcross:
				for k := range bay.Count {
					if f := &p.Fronts[bay.First+k]; matchable(f) {
						across = append(across, f)
					}
				}
			}
		}
	}
	slices.SortStableFunc(across, func(a, b *plan.Front) int {
		return cmp.Or(cmp.Compare(a.Face.Min.Y, b.Face.Min.Y), cmp.Compare(a.Face.Max.Y, b.Face.Max.Y), cmp.Compare(a.Face.Min.X, b.Face.Min.X))
	})
	var row []*plan.Front
	for _, f := range across {
		if len(row) > 0 {
			if last := row[len(row)-1]; last.Face.Min.Y != f.Face.Min.Y || last.Face.Max.Y != f.Face.Max.Y || f.Face.Min.X-last.Face.Max.X > farthest || !oneBoard(last, f) {
				add(false, row)
				row = nil
			}
		}
		row = append(row, f)
	}
	add(false, row)
	return all
}

// matched is how the fronts of a bay are matched: its own word, else its cabinet's,
// else the project's.
func matched(p *model.Project, at model.Place) string {
	return cmp.Or(p.BayAt(at).Matched, p.CabinetAt(at).Matched, p.Matched)
}

func matchable(f *plan.Front) bool {
	return f.Kind != model.OpenNiche && f.Made.Build.Kind != model.Frame
}

// oneBoard tells that two fronts are made of the same board.
func oneBoard(a, b *plan.Front) bool {
	return a.Made.Name == b.Made.Name && a.Thickness == b.Thickness
}

// blank puts fronts beside each other as they hang. Between two of them lies what
// their gap and their lippings hide, so that the grain meets across the gap; never less
// than the saw takes. All around lies what is trimmed off.
func blank(number int, upright bool, fronts []*plan.Front, saw model.Saw) Blank {
	b := Blank{Number: number, Upright: upright, Board: fronts[0].Made.Board, Fronts: fronts}
	left, right, bottom, top := b.Board.LippingOf()
	at := plane.Point{X: saw.Trim, Y: saw.Trim}
	for i, f := range fronts {
		w, h := f.Face.Width()-left-right, f.Face.Height()-bottom-top
		if i > 0 {
			before := fronts[i-1].Face
			if upright {
				at.Y = b.Places[i-1].Max.Y + max(f.Face.Min.Y-before.Max.Y+top+bottom, saw.Kerf)
			} else {
				at.X = b.Places[i-1].Max.X + max(f.Face.Min.X-before.Max.X+right+left, saw.Kerf)
			}
		}
		b.Places = append(b.Places, plane.R(at.X, at.Y, at.X+w, at.Y+h))
		b.Size.X, b.Size.Y = max(b.Size.X, at.X+w+saw.Trim), max(b.Size.Y, at.Y+h+saw.Trim)
	}
	return b
}

// Name is what the blank is called.
func (b *Blank) Name() message.Message { return message.New("blank %v", b.Number) }

// Numbers are those of its fronts, in order.
func (b *Blank) Numbers() []int {
	var all []int
	for _, f := range b.Fronts {
		all = append(all, f.Number)
	}
	return all
}

// piece is the blank as a board to cut.
func (b *Blank) piece() Piece {
	return Piece{
		What: b.Name(), For: message.New("matched fronts %v", Numbers(b.Numbers())), Place: b.Fronts[0].Place,
		Board: b.Board, Grain: b.Board.Grain, Count: 1, Blank: b.Number, Matched: len(b.Fronts),
		Width: b.Size.X, Height: b.Size.Y, CutWidth: b.Size.X, CutHeight: b.Size.Y,
	}
}

// cutFrom says of a piece that it is cut from a blank, where it is.
func (p *Piece) cutFrom(blank int) {
	if p.Blank = blank; blank > 0 {
		p.What = message.New("%v, of blank %v", p.What, blank)
	}
}

// Numbers writes rising numbers, neighbours as a range.
func Numbers(all []int) string {
	var b strings.Builder
	for i := 0; i < len(all); i++ {
		j := i
		for j+1 < len(all) && all[j+1] == all[j]+1 {
			j++
		}
		if i > 0 {
			b.WriteString(", ")
		}
		fmt.Fprint(&b, all[i])
		if j > i {
			fmt.Fprintf(&b, "–%d", all[j])
		}
		i = j
	}
	return b.String()
}
