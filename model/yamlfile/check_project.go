package yamlfile

import (
	"fmt"
	"strings"

	"frontlay/model"
	"frontlay/model/figure"
	"frontlay/model/message"
)

// checkProject finds what no key alone can show: missing parts and names that
// nothing bears. What can't be built is the layout's to find, not the file's.
func (r *reader) checkProject(p *model.Project) {
	if len(r.problems) > 0 {
		return // what follows from a problem is not told again
	}
	if len(p.Cabinets) == 0 {
		r.failBelow("", message.New("the project has no cabinets"), message.New("add one under cabinets"))
	}
	r.checkBoards(p)
	if len(p.Hardware) == 0 && hasDrawers(p) {
		r.failBelow("", message.New("the project has drawers but no hardware sheet"), message.New("name one, such as hardware: {main: sample-a}"))
		return
	}
	for i := range p.Cabinets {
		c := &p.Cabinets[i]
		r.enter("cabinets")
		r.enterAt(i)
		r.checkBoard(p, c.Board)
		if len(c.Bays) == 0 {
			r.failBelow("", message.New("the cabinet %v has no bays", figure.Quote(c.Name)), message.New("add one under bays"))
		}
		for j := range c.Bays {
			r.enter("bays")
			r.enterAt(j)
			r.checkBay(p, c, &c.Bays[j])
			r.leave()
			r.leave()
		}
		r.leave()
		r.leave()
	}
}

// checkBoards checks the named boards of fronts and the one of all fronts.
func (r *reader) checkBoards(p *model.Project) {
	named := map[string]bool{model.PlainBoard: true}
	for i := range p.Boards.Fronts {
		if name := p.Boards.Fronts[i].Name; named[name] {
			r.failBelow(fmt.Sprintf("boards.fronts[%d].name", i), message.New("there is another front board named %v", figure.Quote(name)), message.New("choose another name; front is that of boards.front"))
		} else {
			named[name] = true
		}
	}
	r.checkBoard(p, p.Board)
	r.checkSpecies(p)
}

// checkSpecies checks the species of the boards, and that each of the project's own has
// one name.
func (r *reader) checkSpecies(p *model.Project) {
	named := map[string]bool{}
	for i := range p.Species {
		if name := p.Species[i].Name; named[name] {
			r.failBelow(fmt.Sprintf("species[%d].name", i), message.New("there is another species named %v", figure.Quote(name)), message.New("choose another name"))
		} else {
			named[name] = true
		}
	}
	check := func(path string, b *model.Board) {
		if _, ok := p.SpeciesOf(b); !ok && b.Species != "" {
			r.failBelow(path+".species", message.New("the coefficients of %v are not known", figure.Quote(b.Species)), meant(b.Species, p.SpeciesNames()))
		}
	}
	check("boards.carcass", &p.Boards.Carcass)
	check("boards.front", &p.Boards.Front)
	check("boards.back", &p.Boards.Back)
	for i := range p.Boards.Fronts {
		b := &p.Boards.Fronts[i]
		check(fmt.Sprintf("boards.fronts[%d]", i), &b.Board)
		check(fmt.Sprintf("boards.fronts[%d].build.panel", i), &b.Build.Panel.Board)
	}
}

// checkBoard checks the name of a front board at the path.
func (r *reader) checkBoard(p *model.Project, name string) {
	if _, ok := p.FrontBoard(name); ok {
		return
	}
	names := []string{model.PlainBoard}
	for i := range p.Boards.Fronts {
		names = append(names, p.Boards.Fronts[i].Name)
	}
	r.failBelow("board", message.New("the project has no front board named %v", figure.Quote(name)), meant(name, names))
}

func (r *reader) checkBay(p *model.Project, c *model.Cabinet, b *model.Bay) {
	if len(b.Fronts) == 0 {
		r.failBelow("", message.New("a bay of the cabinet %v has no fronts", figure.Quote(c.Name)), message.New("add one under fronts; an open niche is {kind: open}"))
	}
	sheet := p.SheetFor(b)
	if b.Hardware != "" && sheet == nil {
		r.failBelow("hardware", message.New("the project has no hardware sheet named %v", figure.Quote(b.Hardware)), meant(b.Hardware, hardwareNames(p)))
		return
	}
	for i := range b.Fronts {
		f := &b.Fronts[i]
		r.enter("fronts")
		r.enterAt(i)
		r.checkFront(p, f, sheet)
		r.leave()
		r.leave()
	}
}

// checkFront checks one front; sheet is its bay's.
func (r *reader) checkFront(p *model.Project, f *model.Front, sheet *model.HardwareSheet) {
	if f.Height > 0 && f.Share > 0 {
		r.failBelow("share", message.New("the front %v has both a height and a share", figure.Quote(f.Name)), message.New("keep the height to fix it, or the share to let it grow"))
	}
	if f.Clear && (f.Kind != model.OpenNiche || f.Height <= 0) {
		r.failBelow("clear", message.New("the front %v has a clear height, but is no open niche with a height", figure.Quote(f.Name)), message.New("remove the key, or give a niche its height"))
	}
	if f.Least > 0 && f.Greatest > 0 && f.Least > f.Greatest {
		r.failBelow("least", message.New("the front %v has a least height of %v above its greatest of %v", figure.Quote(f.Name), f.Least, f.Greatest), message.New("change one of the two"))
	}
	r.checkBoard(p, f.Board)
	if f.Hardware != "" {
		if sheet = p.Sheet(f.Hardware); sheet == nil {
			r.failBelow("hardware", message.New("the project has no hardware sheet named %v", figure.Quote(f.Hardware)), meant(f.Hardware, hardwareNames(p)))
			return
		}
	}
	if len(f.Inner) > 0 && !f.Kind.Holds() {
		r.failBelow("inner", message.New("the front %v has inner drawers, but does not open", figure.Quote(f.Name)), message.New("make it a drawer or a door, or remove the key"))
		return
	}
	if sheet == nil {
		return
	}
	if f.Kind == model.DrawerFront {
		r.checkDrawer(sheet, f.Drawer)
	}
	for i := range f.Inner {
		r.enter("inner")
		r.enterAt(i)
		r.checkDrawer(sheet, f.Inner[i].Drawer)
		r.leave()
		r.leave()
	}
}

// checkDrawer checks that a hardware sheet has the drawer height of a name.
func (r *reader) checkDrawer(sheet *model.HardwareSheet, drawer string) {
	if drawer == "" || drawer == model.DrawerAuto || sheet.Drawer(drawer) != nil {
		return
	}
	names := []string{model.DrawerAuto}
	for i := range sheet.Drawers {
		names = append(names, sheet.Drawers[i].Name)
	}
	r.failBelow("drawer", message.New("the hardware sheet %v has no drawer height named %v", figure.Quote(sheet.Name), figure.Quote(drawer)), meant(drawer, names))
}

func hardwareNames(p *model.Project) []string {
	names := make([]string, len(p.Hardware))
	for i := range p.Hardware {
		names[i] = p.Hardware[i].Name
	}
	return names
}

func hasDrawers(p *model.Project) bool {
	for i := range p.Cabinets {
		for j := range p.Cabinets[i].Bays {
			for _, f := range p.Cabinets[i].Bays[j].Fronts {
				if f.HasDrawer() {
					return true
				}
			}
		}
	}
	return false
}

// meant is advice for a name that nothing bears.
func meant(name string, names []string) message.Message {
	if near := nearest(name, names); near != "" {
		return message.New("did you mean %v?", near)
	}
	if len(names) == 0 {
		return message.New("name one under hardware, such as hardware: {main: sample-a}")
	}
	return message.New("write one of %v", strings.Join(names, ", "))
}

// nearest finds the known word most like a mistyped one, "" where none is near
// enough to be what was meant.
func nearest(word string, known []string) string {
	if len(word) > 60 {
		return ""
	}
	word = plain(word)
	best, bestDistance := "", 0
	for _, k := range known {
		d := distance([]rune(word), []rune(plain(k)))
		if best == "" || d < bestDistance {
			best, bestDistance = k, d
		}
	}
	if best == "" || bestDistance*5 > 2*max(len([]rune(best)), len([]rune(word))) {
		return ""
	}
	return best
}

func plain(s string) string {
	return strings.NewReplacer("-", "_", " ", "_").Replace(strings.ToLower(s))
}

// distance counts the insertions, removals, replacements and swaps of
// neighbours that turn a into b (optimal string alignment).
func distance(a, b []rune) int {
	before, last, row := make([]int, len(b)+1), make([]int, len(b)+1), make([]int, len(b)+1)
	for j := range last {
		last[j] = j
	}
	for i := 1; i <= len(a); i++ {
		row[0] = i
		for j := 1; j <= len(b); j++ {
			cost := 1
			if a[i-1] == b[j-1] {
				cost = 0
			}
			row[j] = min(last[j]+1, row[j-1]+1, last[j-1]+cost)
			if i > 1 && j > 1 && a[i-1] == b[j-2] && a[i-2] == b[j-1] {
				row[j] = min(row[j], before[j-2]+1)
			}
		}
		before, last, row = last, row, before
	}
	return last[len(b)]
}
