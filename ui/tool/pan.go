package tool

// Pan moves the picture under the pointer.
type Pan struct {
	x, y float32
}

// Press goes on from the new place.
func (t Pan) Press(_ Desk, p Pointer) Tool { return Pan{p.X, p.Y} }

// Move moves the picture by what the pointer has moved.
func (t Pan) Move(d Desk, p Pointer) Tool {
	d.Pan(p.X-t.x, p.Y-t.y)
	return Pan{p.X, p.Y}
}

// Release lets go of the picture.
func (t Pan) Release(Desk, Pointer) Tool { return Idle{} }

// Escape lets go of the picture.
func (t Pan) Escape(Desk) Tool { return Idle{} }

// Cursor is a grabbing hand.
func (t Pan) Cursor(Desk, Pointer) Cursor { return Grab }

// NewPan takes hold of the picture at a place on the screen.
func NewPan(x, y float32) Pan { return Pan{x, y} }
