// Package list makes the job's lists as tables: jig settings, cut list, sheets to buy,
// hardware list, drill list, findings.
package list

import (
	"encoding/csv"
	"io"
	"strings"

	"frontlay/layout/check"
	"frontlay/layout/plan"
	"frontlay/model/length"
	"frontlay/model/message"
)

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

// begin says a message as a cell of a table begins: with a capital letter.
func begin(m message.Message, say Speaker) string { return strings.TrimSuffix(say.Sentence(m), ".") }

// ForFiles is the language of tables that another program reads: decimal points,
// and decimal inches instead of fractions.
func ForFiles(say Speaker) Speaker {
	say.Comma = false
	if say.Unit == length.UnitInch {
		say.Unit = length.UnitInchDecimal
	}
	return say
}

// All makes every list of the job for files: with the columns that only another
// program needs, and every length as a plain number. Make say with ForFiles.
func All(p *plan.Plan, findings []check.Finding, say Speaker, spare float64) []Table {
	all := []Table{jigTable(p, findings, say), drillTable(p, findings, say, true), cutTable(p, say, true)}
	stock := StockPlans(p)
	if t := StockList(stock, say); len(t.Rows) > 0 {
		all = append(all, t)
	}
	return append(all, HardwareList(p, stock, say, spare), Findings(findings, say), labelTable(p, say))
}

// CSV writes the table's rows (RFC 4180, UTF-8): one header row, boxes to tick
// left out, and the heading of each group of rows as the first column. Make the
// table with ForFiles.
func (t *Table) CSV(w io.Writer, say Speaker) error {
	out := csv.NewWriter(w)
	grouped := t.grouped()
	var head []string
	if grouped {
		head = append(head, say.Say(message.New("Group")))
	}
	for _, c := range t.Columns {
		if c.Head == "" {
			continue
		}
		name := c.Head
		if c.Length {
			name += " (" + say.Unit.Symbol() + ")"
		}
		head = append(head, name)
	}
	if err := out.Write(head); err != nil {
		return err
	}
	group := ""
	for _, r := range t.Rows {
		if r.Group {
			group = r.Cells[0]
			continue
		}
		if r.Total {
			continue // a sum among the rows would be counted twice
		}
		var cells []string
		if grouped {
			cells = append(cells, group)
		}
		for i, c := range r.Cells {
			if t.Columns[i].Length {
				c = strings.ReplaceAll(c, "≈ ", "") // a number, to a ten-thousandth of an inch
			}
			if t.Columns[i].Head != "" {
				cells = append(cells, c)
			}
		}
		if err := out.Write(cells); err != nil {
			return err
		}
	}
	out.Flush()
	return out.Error()
}

func (t *Table) grouped() bool {
	for _, r := range t.Rows {
		if r.Group {
			return true
		}
	}
	return false
}
