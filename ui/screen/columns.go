package screen

import "iter"

// columnWidth is how wide a column is, in screen units: about as wide as a short
// figure, so that a text that looks for its place looks through a few of them.
const columnWidth = 16

// columns tell what stands near a place without a look through the whole
// picture, which would make its cost grow with the square of the number of
// fronts. They hold numbers of boxes by the upright strip of the screen in which
// a box begins, and by those into which it reaches; what is beyond the screen is
// in the strips at its edges.
type columns struct {
	begin, reach [][]int32
}

// widen makes the columns of a screen so wide, without numbers. Where there are
// so many already their memory is used again.
func (c *columns) widen(width float32) {
	n := max(int(width/columnWidth), 0) + 1
	if len(c.begin) != n {
		c.begin, c.reach = make([][]int32, n), make([][]int32, n)
		return
	}
	for k := range n {
		c.begin[k], c.reach[k] = c.begin[k][:0], c.reach[k][:0]
	}
}

// span gives the first and last column of what is from one x to another.
func (c *columns) span(x1, x2 float32) (first, last int) {
	end := float32(len(c.begin) - 1)
	return int(min(max(x1/columnWidth, 0), end)), int(min(max(x2/columnWidth, 0), end))
}

// add puts a number where its box is.
func (c *columns) add(i int, b box) {
	first, last := c.span(b.X1, b.X2)
	c.begin[first] = append(c.begin[first], int32(i))
	for k := first + 1; k <= last; k++ {
		c.reach[k] = append(c.reach[k], int32(i))
	}
}

// drop takes the number that was added last where its box is out again.
func (c *columns) drop(b box) {
	first, last := c.span(b.X1, b.X2)
	c.begin[first] = c.begin[first][:len(c.begin[first])-1]
	for k := first + 1; k <= last; k++ {
		c.reach[k] = c.reach[k][:len(c.reach[k])-1]
	}
}

// near gives each number once whose box can meet what is from one x to another.
// Their order is that of the columns.
func (c *columns) near(x1, x2 float32) iter.Seq[int] {
	return func(yield func(int) bool) {
		first, last := c.span(x1, x2)
		for _, i := range c.reach[first] {
			if !yield(int(i)) {
				return
			}
		}
		for k := first; k <= last; k++ {
			for _, i := range c.begin[k] {
				if !yield(int(i)) {
					return
				}
			}
		}
	}
}
