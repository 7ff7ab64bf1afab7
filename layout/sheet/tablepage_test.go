package sheet

import (
	"strings"
	"testing"

	"frontlay/layout/check"
	"frontlay/layout/drawing"
	"frontlay/layout/list"
	"frontlay/layout/plan"
)

// words are all texts of a page, lines joined and figures parted by plain spaces.
func words(p Page) string {
	var all []string
	for _, placed := range p.Drawings() {
		for _, m := range placed.Drawing.Marks {
			if t, ok := m.(*drawing.Text); ok {
				all = append(all, t.Say.String())
			}
		}
	}
	return strings.ReplaceAll(strings.Join(all, " "), "\u00a0", " ")
}

// A list of many pages tells on each of them that left and right swap.
func TestEveryPageOfADrillListTellsOfTheMirror(t *testing.T) {
	var fronts []plan.Front
	for range 60 {
		f := lopsided()
		f.Number = len(fronts) + 1
		fronts = append(fronts, f)
	}
	for _, part := range []Part{JigSettings, DrillList} {
		d := Make(planOf(fronts...), nil, Options{Parts: []Part{part}})
		if len(d.Pages) < 3 {
			t.Fatalf("%s: %d pages; want some that continue", part, len(d.Pages))
		}
		for i, page := range d.Pages {
			if n := strings.Count(words(page), "RIGHT"); n != 1 {
				t.Errorf("%s, page %d tells %d times of the mirror", part, i+1, n)
			}
		}
	}
}

// The file of templates alone warns of errors as the booklet does.
func TestTheFileOfTemplatesWarnsOfErrors(t *testing.T) {
	found := []check.Finding{{Front: 1}}
	d := TemplateFile.Document(planOf(lopsided()), found, Options{})
	if len(d.Pages) == 0 {
		t.Fatal("no pages")
	}
	for i, page := range d.Pages {
		if !strings.Contains(words(page), "STOP") {
			t.Errorf("page %d does not warn", i+1)
		}
	}
}

// Notes that go over to another page stand there without a heading of columns.
func TestNotesNeedNoHeading(t *testing.T) {
	table := list.Table{Title: "Pieces", Columns: []list.Column{{Head: "Piece", Weight: 1}}, Notes: []string{"first", "last"}}
	for range 40 {
		table.Rows = append(table.Rows, list.Row{Cells: []string{"side"}})
	}
	for len(tablePages(CutList, table, Options{}.with())) == 1 {
		table.Rows = append(table.Rows, list.Row{Cells: []string{"side"}})
	}
	pages := tablePages(CutList, table, Options{}.with())
	if s := words(pages[1]); strings.Contains(s, "Piece ") || !strings.Contains(s, "last") {
		t.Errorf("the last page: %q", s)
	}
}

// The pages of a list keep none of their rows drawn, whatever their number, and
// draw the same each time.
func TestRowsAreDrawnWhenAsked(t *testing.T) {
	var fronts []plan.Front
	for range 60 {
		f := lopsided()
		f.Number = len(fronts) + 1
		fronts = append(fronts, f)
	}
	pages := Make(planOf(fronts...), nil, Options{Parts: []Part{DrillList}}).Pages
	rows := 0
	for i := range pages {
		p := &pages[i]
		kept := len(p.Placed[0].Drawing.Marks)
		drawn := len(p.Drawings()[0].Drawing.Marks)
		rows += drawn - kept
		if kept > 20 || len(p.Drawings()[0].Drawing.Marks) != drawn || len(p.Placed[0].Drawing.Marks) != kept {
			t.Errorf("page %d, %s, keeps %d marks and draws %d", i+1, p.Kind, kept, drawn)
		}
	}
	if rows < 1000 {
		t.Errorf("%d marks of rows on %d pages; want more than 1000", rows, len(pages))
	}
}
