package hardware

import (
	"strconv"
	"strings"

	"fyne.io/fyne/v2"
	"fyne.io/fyne/v2/container"
	"fyne.io/fyne/v2/widget"

	"frontlay/model/yamlfile"
	"frontlay/ui/field"
)

// faults lists what keeps the sheet from being used, each with a way to its
// field.
type faults struct {
	page   *Page
	good   *widget.Label
	list   *fyne.Container
	object *container.Scroll
}

func newFaults(p *Page) *faults {
	f := &faults{page: p, good: widget.NewLabel(p.text("The figures go together.")), list: field.Column()}
	f.good.Importance = widget.SuccessImportance
	f.object = container.NewVScroll(f.list)
	return f
}

// show lists problems.
func (f *faults) show(all yamlfile.Problems) {
	f.list.Objects = nil
	if len(all) == 0 {
		f.list.Add(f.good)
	}
	for _, problem := range all {
		l := widget.NewLabel(problem.Say(f.page.say()))
		l.Importance, l.Wrapping = widget.DangerImportance, fyne.TextWrapWord
		var to fyne.CanvasObject
		if f.page.form.rowAt(problem.Path) != nil {
			to = container.NewVBox(widget.NewButton(f.page.text("Show"), func() { f.page.goToPath(problem.Path) }))
		}
		f.list.Add(container.NewBorder(nil, nil, nil, to, l))
	}
	f.list.Refresh()
	f.object.ScrollToTop()
}

// plainPath takes the indexes out of a path: drawers[2].side_top becomes
// drawers[].side_top, and 2.
func plainPath(path string) (plain string, indexes []int) {
	var b strings.Builder
	for {
		before, rest, found := strings.Cut(path, "[")
		b.WriteString(before)
		if !found {
			return strings.TrimSuffix(b.String(), "[]"), indexes
		}
		index, after, _ := strings.Cut(rest, "]")
		if n, err := strconv.Atoi(index); err == nil {
			indexes = append(indexes, n)
		}
		b.WriteString("[]")
		path = after
	}
}

// goToPath shows the items that a path leads through, and gives the focus to the
// field at its end.
func (p *Page) goToPath(path string) {
	plain, at := plainPath(path)
	for i, list := range []struct {
		prefix string
		of     *int
	}{
		{"runner.lengths[]", &p.chosen.runner},
		{"drawers[]", &p.chosen.drawer},
	} {
		if strings.HasPrefix(plain, list.prefix) && len(at) > 0 {
			*list.of = at[0]
			if i == 1 && len(at) > 1 && strings.HasPrefix(plain, "drawers[].more_holes[]") {
				p.chosen.more = at[1]
			}
		}
	}
	p.update()
	if r := p.form.rowAt(path); r != nil {
		r.focus()
	}
}

// rowAt finds the field at a path, or the first one below it.
func (f *form) rowAt(path string) *row {
	plain, at := plainPath(path)
	var below *row
	for _, r := range f.all() {
		switch {
		case r.path == plain && (r.item < 0 || len(at) > 0 && r.item == at[len(at)-1]):
			return r
		case below == nil && plain != "" && strings.HasPrefix(r.path, plain):
			below = r
		}
	}
	return below
}
