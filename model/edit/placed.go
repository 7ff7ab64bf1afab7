package edit

import "frontlay/model"

// Placed is an edit of one front, whose name says more to a person than the
// edit's label alone.
type Placed interface {
	// Place is the front's.
	Place() model.Place
}

// Place of the front whose height is set.
func (e SetHeight) Place() model.Place { return e.At }

// Place of the front that takes a share.
func (e SetShare) Place() model.Place { return e.At }

// Place of the front whose drawer is chosen.
func (e SetDrawer) Place() model.Place { return e.At }

// Place of the front whose runner is chosen.
func (e SetRunner) Place() model.Place { return e.At }

// Place of the front below the division.
func (e MoveDivision) Place() model.Place { return e.Below }
