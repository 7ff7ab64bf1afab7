// Package plane holds points and rectangles in exact lengths, x to the right
// and y up.
package plane

import "frontlay/model/length"

// Point is a place in the plane.
type Point struct{ X, Y length.Length }

// Rect is a rectangle from Min (lower left) to Max (upper right). It is empty
// where Max is not above and right of Min.
type Rect struct{ Min, Max Point }

// R makes a rectangle of its four edges.
func R(left, bottom, right, top length.Length) Rect {
	return Rect{Point{left, bottom}, Point{right, top}}
}

// Add moves a point.
func (p Point) Add(q Point) Point { return Point{p.X + q.X, p.Y + q.Y} }

// Sub is the way from q to p.
func (p Point) Sub(q Point) Point { return Point{p.X - q.X, p.Y - q.Y} }

// Width is the size along x.
func (r Rect) Width() length.Length { return r.Max.X - r.Min.X }

// Height is the size along y.
func (r Rect) Height() length.Length { return r.Max.Y - r.Min.Y }

// Centre is the middle, rounded to a nanometre towards Min.
func (r Rect) Centre() Point {
	return Point{r.Min.X + r.Width()/2, r.Min.Y + r.Height()/2}
}

// Empty tells that the rectangle has no area.
func (r Rect) Empty() bool { return r.Max.X <= r.Min.X || r.Max.Y <= r.Min.Y }

// Contains tells that a point lies in r, edges included.
func (r Rect) Contains(p Point) bool {
	return p.X >= r.Min.X && p.X <= r.Max.X && p.Y >= r.Min.Y && p.Y <= r.Max.Y
}

// Overlaps tells that two rectangles share an area; touching is not enough.
func (r Rect) Overlaps(s Rect) bool {
	return r.Min.X < s.Max.X && s.Min.X < r.Max.X && r.Min.Y < s.Max.Y && s.Min.Y < r.Max.Y
}

// Intersect is what two rectangles share; it may be empty.
func (r Rect) Intersect(s Rect) Rect {
	return Rect{
		Point{max(r.Min.X, s.Min.X), max(r.Min.Y, s.Min.Y)},
		Point{min(r.Max.X, s.Max.X), min(r.Max.Y, s.Max.Y)},
	}
}

// Union is the least rectangle that holds both, points and lines counted.
func (r Rect) Union(s Rect) Rect {
	return Rect{
		Point{min(r.Min.X, s.Min.X), min(r.Min.Y, s.Min.Y)},
		Point{max(r.Max.X, s.Max.X), max(r.Max.Y, s.Max.Y)},
	}
}

// Move shifts a rectangle.
func (r Rect) Move(by Point) Rect { return Rect{r.Min.Add(by), r.Max.Add(by)} }

// Grow moves every edge outwards by d (inwards where d is negative).
func (r Rect) Grow(d length.Length) Rect {
	return Rect{Point{r.Min.X - d, r.Min.Y - d}, Point{r.Max.X + d, r.Max.Y + d}}
}
