package help

import (
	"cmp"
	"math"
	"slices"

	"fyne.io/fyne/v2"
	fynecanvas "fyne.io/fyne/v2/canvas"

	"frontlay/assets/manual"
	"frontlay/ui/look"
)

// tableOf shows a table: heads in bold, a line below each row.
func tableOf(rows [][][]manual.Span, follow func(to string)) *fyne.Container {
	t := &table{}
	box := &fyne.Container{Layout: t}
	for i, row := range rows {
		var cells []*fyne.Container
		for j, text := range row {
			c := newFlow(text, reading(), i == 0, follow)
			line, longest := c.Layout.(*flow).natural()
			for len(t.natural) <= j {
				t.natural, t.longest = append(t.natural, 0), append(t.longest, 0)
			}
			t.natural[j], t.longest[j] = max(t.natural[j], line), max(t.longest[j], longest)
			cells = append(cells, c)
			box.Objects = append(box.Objects, c)
		}
		rule := fynecanvas.NewRectangle(look.Current().Line)
		if i == 0 {
			rule.FillColor = look.Current().Soft
		}
		box.Objects = append(box.Objects, rule)
		t.cells, t.rules = append(t.cells, cells), append(t.rules, rule)
	}
	return box
}

// table is the layout of a table.
type table struct {
	cells            [][]*fyne.Container
	rules            []*fynecanvas.Rectangle
	natural, longest []float32 // of the columns: in one line, and of the longest word
	tops             []float32 // of the rows
	high             float32
}

// Room in a table: between columns, and above and below a row's text.
const columnGap, rowGap = 16, 3

// columns shares a width: columns that need little get it, the others share what is
// left by the roots of what they need in one line, so that one with more to say is
// wider but not alone there; none gets less than its longest word where that can be.
func (t *table) columns(width float32) []float32 {
	n := len(t.natural)
	widths, order := make([]float32, n), make([]int, n)
	left, weights := width-columnGap*float32(n-1), float32(0)
	root := func(i int) float32 { return float32(math.Sqrt(float64(t.natural[i]))) }
	for i := range order {
		order[i] = i
		weights += root(i)
	}
	slices.SortFunc(order, func(a, b int) int { return cmp.Compare(t.natural[a], t.natural[b]) })
	for _, i := range order {
		share := left * root(i) / weights
		widths[i] = min(t.natural[i], max(share, min(t.longest[i], left*0.6)))
		left -= widths[i]
		weights -= root(i)
	}
	return widths
}

func (t *table) Layout(_ []fyne.CanvasObject, s fyne.Size) {
	widths := t.columns(s.Width)
	whole := columnGap * float32(max(len(widths)-1, 0))
	for _, w := range widths {
		whole += w
	}
	y := float32(0)
	t.tops = t.tops[:0]
	for i, row := range t.cells {
		t.tops = append(t.tops, y)
		x, high := float32(0), float32(0)
		for j, c := range row {
			c.Resize(fyne.NewSize(max(widths[j], 1), c.MinSize().Height))
			c.Move(fyne.NewPos(x, y+rowGap))
			high = max(high, c.MinSize().Height)
			x += widths[j] + columnGap
		}
		y += high + 2*rowGap
		t.rules[i].Move(fyne.NewPos(0, y))
		t.rules[i].Resize(fyne.NewSize(whole, 1))
		y++
	}
	t.high = y
}

// bottom is where a row ends.
func (t *table) bottom(row int) float32 {
	if row+1 < len(t.tops) {
		return t.tops[row+1]
	}
	return t.high
}

func (t *table) MinSize([]fyne.CanvasObject) fyne.Size { return fyne.NewSize(0, t.high) }
