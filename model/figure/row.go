// Package figure has one row for each thing that a person can set: its key in a
// file, its name in the window, what it means, and its value with the bounds that
// hold for it wherever it comes from. Reader and writer of files, their schema and
// reference, edits and forms all work by these rows, so that a file that opens can
// be edited and what an edit makes can be saved.
//
// The rows are bound: Board(&b) are those of the board b, and setting a value of
// one sets it in b.
package figure

import (
	"frontlay/model"
	"frontlay/model/length"
	"frontlay/model/message"
)

// Row is one key of a mapping. Doc says in a sentence or two what it means; Name is what it is called where people set it, empty where they do so
// by a word of their own, or not at all.
type Row struct {
	Key    string
	Name   message.Message
	Doc    message.Message
	Needed bool // it can't be left out
	// Ways is the same word in rows that say one thing in several ways: of these at most
	// one is given.
	Ways  string
	Value Value
}

// Label is the name of the row as a message, its key where it has none.
func (r Row) Label() message.Message {
	if r.Name.Empty() {
		return message.New("%v", r.Key)
	}
	return r.Name
}

// Value is one of *Size, *Number, *Count, *Text, *Choice, *Flag, *Sizes, *Words,
// *Unit, *Group, *List, *Sheets and *Version.
type Value interface {
	// absent tells that nothing is given, which a needed row must not be.
	absent() bool
}

// Positive is the least size that is more than nothing.
const Positive = length.Nanometre

// Size is a length from Least to Greatest. Where nothing is given it is 0, also if
// Least is above that.
type Size struct {
	Least, Greatest length.Length
	Nothing         bool // 0 can be given, and is other than nothing
	Get             func() (v length.Length, given bool)
	Set             func(length.Length)
	Unset           func()
}

func (s *Size) absent() bool {
	v, given := s.Get()
	return !given && !s.Fits(v)
}

// Fits tells whether a length is within the bounds.
func (s *Size) Fits(v length.Length) bool { return s.Least <= v && v <= s.Greatest }

// Number is a plain number from Least to Greatest; 0 means not given where Least
// is above it. Unit is what it counts, such as kg.
type Number struct {
	Least, Greatest float64
	Unit            string
	At              *float64
}

func (n *Number) absent() bool { return *n.At == 0 && n.Least > 0 }

// Count is a whole number from Least, above 0, to Greatest; 0 means not given.
type Count struct {
	Least, Greatest int
	At              *int
}

func (c *Count) absent() bool { return *c.At == 0 }

// Text has at most Most characters, on one line unless Lines is set. Empty means
// not given. Where it has OneOf it is one of them.
type Text struct {
	Most  int
	Lines bool
	OneOf []string
	At    *string
}

func (t *Text) absent() bool { return *t.At == "" }

// Choice is one of a few words, by the index of the word; the first is the usual.
type Choice struct {
	OneOf []string
	Get   func() int
	Set   func(int)
}

func (c *Choice) absent() bool { return false }

// Flag is yes or no; no is the usual.
type Flag struct{ At *bool }

func (f *Flag) absent() bool { return false }

// Sizes is a list of plain sizes, each within the bounds.
type Sizes struct {
	Least, Greatest length.Length
	At              *[]length.Length
}

func (s *Sizes) absent() bool { return len(*s.At) == 0 }

// Words gives names of the user's, each with one of a few words.
type Words struct {
	OneOf []string
	At    *map[string]string
}

func (w *Words) absent() bool { return len(*w.At) == 0 }

// Unit is the unit of bare sizes in the same mapping and below it.
type Unit struct{ At *length.Unit }

func (u *Unit) absent() bool { return false }

// Group is a mapping inside a mapping. The model may do without one that has Make;
// Rows are then those of an empty one of its own.
type Group struct {
	Rows  func() []Row
	There func() bool // nil: always
	Make  func()      // makes an empty one
	Unset func()      // takes it away
}

func (g *Group) absent() bool { return g.There != nil && !g.There() }

// List is a list of mappings, at most Most.
type List struct {
	Most    int
	OneLine bool // an item is short enough for a line
	Len     func() int
	Resize  func(n int)        // makes n empty items
	Rows    func(i int) []Row  // of the item at an index
	Empty   func() []Row       // of an item of its own
	Sign    func(i int) string // tells items of one list apart as well as it can: a name, say
}

func (l *List) absent() bool { return l.Len() == 0 }

// Sheets are hardware sheets by the name that bays use for them.
type Sheets struct{ At *[]model.HardwareUse }

func (s *Sheets) absent() bool { return len(*s.At) == 0 }

// Version is the format version, the first key of a file.
type Version struct{ Newest int }

func (v *Version) absent() bool { return false }
