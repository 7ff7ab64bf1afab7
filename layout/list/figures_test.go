package list

import (
	"strings"
	"testing"
)

// The lower drawer's drop is 19 + 4 = 23; its sum stands in the row of the drop
// and in no other, while every row that counts with it has its value.
func TestTheDropIsDerivedOnce(t *testing.T) {
	table := Figures(worked(), Speaker{})
	var first []string
	for _, r := range table.Rows[1:] {
		if r.Group {
			break
		}
		first = append(first, strings.Join(r.Cells, "|"))
	}
	all := strings.Join(first, "\n")
	if n := strings.Count(all, "bottom overlay 19 mm"); n != 1 {
		t.Errorf("the drop is derived %d times:\n%s", n, all)
	}
	if !strings.Contains(all, "hole height|71 mm|height above the runner's lower edge 48 mm + drop 23 mm\n") {
		t.Errorf("a hole’s height is not told with the drop:\n%s", all)
	}
}

func TestNoDepthIsTakenWithoutARunner(t *testing.T) {
	table := Figures(cramped(), Speaker{})
	if rows := rowsNaming(table, "depth taken||no runner fits, see Findings"); len(rows) != 2 {
		t.Errorf("got %d rows", len(rows))
	}
	if rows := rowsNaming(table, "runner 0 mm"); len(rows) > 0 {
		t.Errorf("a runner of no length: %q", rows)
	}
}
