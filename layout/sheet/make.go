package sheet

import (
	"slices"
	"strconv"
	"strings"

	"frontlay/layout/check"
	"frontlay/layout/list"
	"frontlay/layout/plan"
	"frontlay/model/message"
)

// Make decides every page of the parts that are asked for, in the order of
// Parts. It never fails: a part without anything to show says so or has no page.
// The same arguments give the same document.
func Make(p *plan.Plan, findings []check.Finding, o Options) Document {
	m := &maker{p: p, findings: findings, o: o.with()}
	m.d = Document{Title: said(title(p)), Say: o.Say, Paper: p.Paper()}
	m.o.warn, m.o.refused = stopNote(findings), refused(findings)
	m.o.depth, m.o.stamp = list.DepthStop(p), stampOf(p, m.d.Paper, o.Say)
	for _, part := range Parts() {
		if !m.o.wants(part) || m.o.sparing && part.Spared() && !m.needs(part) {
			continue
		}
		first := len(m.d.Pages)
		pages := m.pages(part, first+1)
		m.d.Pages = append(m.d.Pages, pages...)
		m.mark(part, first)
	}
	if m.o.wants(Cover) {
		m.fillContents()
	}
	number(m.d.Pages, m.o)
	return m.d
}

// Documents makes the parts that are asked for as the files that they go into, those
// that have pages.
func Documents(p *plan.Plan, findings []check.Finding, o Options) []Document {
	var all []Document
	for f := Drawings; f <= LabelFile; f++ {
		if d := f.Document(p, findings, o); len(d.Pages) > 0 {
			all = append(all, d)
		}
	}
	return all
}

// Document makes those of the parts that are asked for that go into the file; no pages
// where there are none.
func (f File) Document(p *plan.Plan, findings []check.Finding, o Options) Document {
	o = o.with()
	o.Parts = slices.DeleteFunc(slices.Clone(o.Parts), func(part Part) bool { return part.File() != f })
	if len(o.Parts) == 0 {
		return Document{}
	}
	d := Make(p, findings, o)
	d.File = f
	return d
}

// stopNote is what stands on templates while the check has errors that are not
// accepted; empty where it has none.
func stopNote(findings []check.Finding) message.Message {
	var open []int
	others := false
	for i := range findings {
		switch f := &findings[i]; {
		case !f.Open():
		case f.Front == 0:
			others = true
		default:
			open = append(open, f.Front)
		}
	}
	slices.Sort(open)
	var fronts []string
	for _, n := range slices.Compact(open) {
		fronts = append(fronts, strconv.Itoa(n))
	}
	switch {
	case len(fronts) == 1:
		return message.New("STOP: the check found errors at front %v. Mend or accept them before you drill.", fronts[0])
	case len(fronts) > 1:
		return message.New("STOP: the check found errors at fronts %v. Mend or accept them before you drill.", strings.Join(fronts, ", "))
	case others:
		return message.New("STOP: the check found errors in this project. Mend or accept them before you drill.")
	}
	return message.Message{}
}

type maker struct {
	p        *plan.Plan
	findings []check.Finding
	o        Options
	d        Document
	left     map[Part]bool // what the shop sheets had no room for is there
	stock    []list.StockPlan
	laid     bool // stock is known
}

// stockPlans lays the parts on stock sheets once for all pages that tell of it.
func (m *maker) stockPlans() []list.StockPlan {
	if !m.laid {
		m.stock, m.laid = list.StockPlans(m.p), true
	}
	return m.stock
}

// needs tells that a part has something that the shop sheets do not tell.
func (m *maker) needs(part Part) bool {
	if part == Cautions {
		return len(m.p.Cabinets) == 0 // there are no shop sheets, at whose foot they stand
	}
	return m.left[part]
}

// pages makes the pages of one part, the first of which will be the first-th of
// the document (from 1).
func (m *maker) pages(part Part, first int) []Page {
	p, o := m.p, m.o
	table := func(t list.Table) []Page { return tablePages(part, t, o) }
	switch part {
	case Cover:
		return []Page{coverPage(p, m.findings, o)}
	case ShopSheets:
		var pages []Page
		pages, m.left = shopPages(p, m.findings, o)
		return pages
	case Client:
		return []Page{clientPage(p, o)}
	case Elevation:
		return elevationPages(p, o)
	case Sections:
		return sectionPages(p, o)
	case DrawerPlans:
		return drawerPages(p, o)
	case RearFaces:
		return rearPages(p, o)
	case Figures:
		return table(list.Figures(p, o.Say))
	case JigSettings:
		return jigPages(p, o)
	case DrillList:
		return table(list.DrillList(p, m.findings, o.Say))
	case CutList:
		return table(list.CutList(p, o.Say))
	case CuttingPlan:
		return cuttingPages(p, m.stockPlans(), o)
	case HardwareList:
		return table(list.HardwareList(p, m.stockPlans(), o.Say, o.Spare))
	case Findings:
		return table(list.Findings(m.findings, o.Say))
	case Hanging:
		return hangingPages(p, o)
	case Openings:
		return openingPages(p, o)
	case Tipping:
		return tippingPages(p, o)
	case Season:
		return seasonPages(p, o)
	case Spread:
		return spreadPages(p, o)
	case Cautions:
		return table(list.CautionsFor(p, o.Say))
	case CornerTemplates:
		pages := cornerPages(p, o, first)
		return append(pages, middlePages(p, o, first+len(pages))...)
	case WholeTemplates:
		return wholePages(p, o, first)
	case RunnerTemplates:
		return runnerPages(p, o, first)
	case SideTemplates:
		return sidePages(p, o, first)
	case HandleTemplates:
		return handlePages(p, o, first)
	case Labels:
		return labelPages(p, o)
	}
	return nil
}

// mark adds the bookmarks of a part's pages: the part, and under it its pages
// where they have names of their own.
func (m *maker) mark(part Part, first int) {
	if first == len(m.d.Pages) {
		return
	}
	m.d.Bookmarks = append(m.d.Bookmarks, Bookmark{Title: part.Title(), Page: first})
	if first+1 == len(m.d.Pages) {
		return
	}
	last := part.Title().String()
	for i := first; i < len(m.d.Pages); i++ {
		t := m.d.Pages[i].Title
		if s := t.String(); s != last && s != part.Title().String() {
			last = s
			m.d.Bookmarks = append(m.d.Bookmarks, Bookmark{Title: t, Page: i, Level: 1})
		}
	}
}

// title is the project's, or the program's name where it has none.
func title(p *plan.Plan) string {
	if p.Project != nil && p.Project.Title != "" {
		return clipped(p.Project.Title, 100)
	}
	return "frontlay"
}

// clipped is a name of at most so many letters, so that no name, however long,
// takes the page from what it stands on.
func clipped(name string, letters int) string {
	if r := []rune(name); len(r) > letters {
		return strings.TrimRight(string(r[:letters-1]), " ") + "…"
	}
	return name
}
