// Package command is the table of what a person can do with the window. A row
// says all about one thing: menus, keys, buttons, the page of keys, and what is
// allowed while a page lies over the drawing come from it.
package command

import (
	"fyne.io/fyne/v2"

	"frontlay/model/message"
)

// Command is a row of the table.
type Command struct {
	Name  string // for code and tests
	Menu  string // heading of the menu that it stands in
	Words string // English; the key of their translation
	Key   fyne.KeyName
	Mod   fyne.KeyModifier
	Also  Chord  // second keys, for hands that are used to them
	Bare  string // a key without a modifier, that the drawing or window takes
	After bool   // a separator stands before it
	Scope Scope
	// Leaves tells that it puts something else in the place of a page, which is
	// asked before.
	Leaves bool
	Fields Fields
	Quits  bool   // it ends the program
	On     Things // for which it stands in the menu of the drawing
	Button Button // over the drawing; without an icon: none
	// Can tells whether it makes sense now; nil: always.
	Can func() bool
	// Checked tells whether it is what is chosen now; nil: it is nothing to choose.
	Checked func() bool
	// Named gives the words of the moment where it changes; nil: Words.
	Named func() message.Message
	// Sub gives a menu in the place of Do.
	Sub func() *fyne.Menu
	Do  func()
}

// Chord is a key with its modifiers.
type Chord struct {
	Key fyne.KeyName
	Mod fyne.KeyModifier
}

// Modifiers of keys.
const (
	Ctrl  = fyne.KeyModifierShortcutDefault
	Shift = fyne.KeyModifierShift
)

// Scope is where a command makes sense.
type Scope int

const (
	Drawing  Scope = iota // at the drawing, which is brought back first
	Project               // while a project is open, also on a page over it
	Anywhere              // always
)

// Fields tells which fields know a command too: it is theirs while one has the
// focus, because a menu gets its keys before a field does.
type Fields int

const (
	NoField     Fields = iota
	DirtyFields        // those in which something was typed
	AllFields
)

// Things are kinds of what is selected, as a set.
type Things uint8

const (
	Nothing Things = 1 << iota
	Fronts
	Divisions
	Bays // and partitions
	Cabinets
)

// Button is how a command stands in the bar over the drawing: by its icon, with
// words or alone.
type Button struct {
	Icon, Words string
	Group       Group
}

// Group is a part of the bar over the drawing.
type Group int

// The groups, from left to right.
const (
	Hand     Group = iota // what the hand does
	Steps                 // there and back
	Pictures              // what is looked at
	Sight                 // how it is looked through
	Size                  // what is written at it
	File                  // what keeps it
	Out                   // what leaves the program
	Beside                // what stands beside it
)

// Possible tells whether a command makes sense now. One with a menu has nothing to
// do itself.
func (c *Command) Possible() bool { return c.Do != nil && (c.Can == nil || c.Can()) }

// Menus are the headings of the menus, in their order.
var Menus = []string{"File", "Edit", "Stack", "Draw", "Hardware", "View", "Check", "Settings", "Help"}

// Table is every command, by its place.
type Table struct {
	Rows []Command
	say  func() message.Language
	menu []*fyne.MenuItem // of the rows
}

// New makes a table.
func New(say func() message.Language, rows ...[]Command) *Table {
	t := &Table{say: say}
	for _, r := range rows {
		t.Rows = append(t.Rows, r...)
	}
	t.menu = make([]*fyne.MenuItem, len(t.Rows))
	return t
}

// Command gives a command by its name; nil: there is none.
func (t *Table) Command(called string) *Command {
	for i := range t.Rows {
		if t.Rows[i].Name == called {
			return &t.Rows[i]
		}
	}
	return nil
}

// FunctionKey tells that a key is one of F1 to F12. They work wherever the focus is.
func FunctionKey(key fyne.KeyName) bool { return len(key) > 1 && key[0] == 'F' }

// OfKey gives the command of a function key; nil: there is none.
func (t *Table) OfKey(key fyne.KeyName) *Command {
	if !FunctionKey(key) {
		return nil
	}
	for i := range t.Rows {
		if c := &t.Rows[i]; c.Bare == string(key) {
			return c
		}
	}
	return nil
}

func (t *Table) text(s string) string { return t.say().Say(message.New(s)) }
