// Package list makes the job's lists as tables: jig settings, cut list,
// hardware list, drill list, findings.
package list

import "frontlay/model/message"

// Table is a list ready to be shown or written. Cells are said already, in the
// project's unit and language.
type Table struct {
	Name    string // short ASCII name for files
	Title   string
	Intro   []string // sentences above the table
	Repeat  []string // sentences under the heading of every page that the table takes
	Columns []Column
	Rows    []Row
	Notes   []string // sentences below the table
}

// Column heads a column. Weight is its share of the page's width.
type Column struct {
	Head   string
	Weight float64
	Right  bool // figures stand at the right
	Length bool // figures are lengths in the table's unit
}

// Row is one line; Group rows are headings across the table with one cell.
type Row struct {
	Cells []string
	Group bool
	Total bool // a sum of the rows above
}

// Speaker says messages and lengths in the project's unit and the user's
// language.
type Speaker = message.Language
