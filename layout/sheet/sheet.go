// Package sheet decides which drawing stands on which page: tiles, corner
// templates, title blocks. It knows nothing of PDF; the window's print page and
// the PDF show the same sheets.
package sheet

import (
	"slices"

	"frontlay/layout/drawing"
	"frontlay/layout/plan"
	"frontlay/layout/plane"
	"frontlay/model/length"
	"frontlay/model/message"
)

// Paper is a size of paper, Width by Height as named (portrait for the ISO and
// American sheets).
type Paper struct {
	Name          string
	Width, Height length.Length
}

// Document is a list of pages in the order they are printed.
type Document struct {
	Title message.Message
	Say   message.Language
	Pages []Page
	// Bookmarks name pages, in the order of pages.
	Bookmarks []Bookmark
	// Paper is what is kept when it is printed, to tell later what has changed; zero
	// where the pages are of no plan.
	Paper plan.Paper
	File  File // which of the job's files it is
}

// Bookmark names a page (its index in Pages) in the reader's outline. Level 0
// is the outermost.
type Bookmark struct {
	Title message.Message
	Page  int
	Level int
}

// Page is one sheet of paper. Page coordinates have their origin at the lower
// left corner of the paper, y up. Drawings gives all that is on it; Placed is that
// without the rows of lists.
type Page struct {
	Width, Height length.Length
	Kind          string // what it is, for choosing: "corner", "whole", "jig", "elevation", "findings" …
	Title         message.Message
	Placed        []drawing.Placed
	Links         []Link
	Correction    Correction            // applied by whoever writes the page to paper
	Inside        plane.Rect            // what the margins leave; letters stay in it
	number        plane.Rect            // the title block's room for the page's number; empty: it stands at the foot
	footFrom      length.Length         // where the foot's line is free, from the left; 0: from the margin
	rows          func() []drawing.Mark // of a list; nil: none
	before        int                   // how many of the page's own marks, the last of Placed, come before the rows
}

// Drawings are what stands on the page. The rows of lists are drawn each time
// somebody asks for them: those of thousands of pages would fill the memory.
func (p *Page) Drawings() []drawing.Placed {
	if p.rows == nil {
		return p.Placed
	}
	all := slices.Clone(p.Placed)
	last := &all[len(all)-1]
	own := *last.Drawing
	own.Marks = slices.Concat(own.Marks[:p.before], p.rows(), own.Marks[p.before:])
	last.Drawing = &own
	return all
}

// LetterArea is the part of the page that letters stay in.
func (p *Page) LetterArea() plane.Rect {
	if p.Inside.Empty() {
		return plane.R(0, 0, p.Width, p.Height)
	}
	return p.Inside
}

// Link is an area of a page that leads to another page (its index in the
// document).
type Link struct {
	Area plane.Rect
	Page int
}
