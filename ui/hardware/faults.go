package hardware

import (
	"strconv"
	"strings"

	"fyne.io/fyne/v2"
	"fyne.io/fyne/v2/container"
	"fyne.io/fyne/v2/widget"

	"frontlay/model/figure"
	"frontlay/ui/field"
)

// faults lists what keeps the sheet from being used, and what is worth another
// look, each with a way to its field.
type faults struct {
	page   *Page
	good   *field.Label
	list   *fyne.Container
	object *container.Scroll
}

func newFaults(p *Page) *faults {
	f := &faults{page: p, good: field.NewLabel(p.text("The figures go together.")), list: field.Column()}
	f.good.Importance = widget.SuccessImportance
	f.object = container.NewVScroll(field.BesideBar(f.list))
	return f
}

// show lists problems, then doubts.
func (f *faults) show(all []*figure.Fault, more []doubt) {
	f.list.Objects = nil
	if len(all) == 0 && len(more) == 0 {
		f.list.Add(f.good)
	}
	for _, problem := range all {
		f.add(f.page.say().Sentence(problem.Named()), problem.Path, widget.DangerImportance)
	}
	for _, d := range more {
		f.add(f.page.say().Say(d.what), d.path, widget.WarningImportance)
	}
	f.list.Refresh()
	f.object.ScrollToTop()
}

// add lists one text with a button that leads to the figure.
func (f *faults) add(text, path string, how widget.Importance) {
	l := field.NewLabel(text)
	l.Importance, l.Wrapping = how, fyne.TextWrapWord
	var to fyne.CanvasObject
	if f.page.form.rowAt(path) != nil {
		to = container.NewVBox(field.NewButton(f.page.text("Show"), func() { f.page.goToPath(path) }))
	}
	f.list.Add(container.NewBorder(nil, nil, nil, to, l))
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
