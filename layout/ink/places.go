package ink

// places are areas of the page that are found without going through all of
// them: a run of a thousand fronts has tens of thousands of letters beside each
// other.
type places struct {
	all     []box
	columns map[int][]int // which of all reach into a column of the page, in order
	sorted  int           // how many of all are in columns; the others follow when somebody asks
}

// columnWidth is that of a column in millimetres, lastColumn the one that stands
// for all beyond, on both sides.
const (
	columnWidth = 20.0
	lastColumn  = 50_000
)

func (p *places) add(b box) { p.all = append(p.all, b) }

// cut lets go of all but the first n.
func (p *places) cut(n int) {
	for ; p.sorted > n; p.sorted-- {
		b := p.all[p.sorted-1]
		for c := column(b.lo.X); c <= column(b.hi.X); c++ {
			p.columns[c] = p.columns[c][:len(p.columns[c])-1]
		}
	}
	p.all = p.all[:n]
}

// first gives the first area that overlaps another and for which is holds; -1
// where there is none. A nil is holds for every one.
func (p *places) first(b box, is func(i int) bool) int {
	p.sort()
	least := -1
	for c := column(b.lo.X); c <= column(b.hi.X); c++ {
		for _, i := range p.columns[c] {
			if least >= 0 && i >= least {
				break
			}
			if p.all[i].overlaps(b) && (is == nil || is(i)) {
				least = i
				break
			}
		}
	}
	return least
}

func (p *places) sort() {
	if p.columns == nil {
		p.columns = map[int][]int{}
	}
	for ; p.sorted < len(p.all); p.sorted++ {
		b := p.all[p.sorted]
		for c := column(b.lo.X); c <= column(b.hi.X); c++ {
			p.columns[c] = append(p.columns[c], p.sorted)
		}
	}
}

// column is where a place across the page falls; what is no number, in the first.
func column(x float64) int {
	switch v := x / columnWidth; {
	case !(v > -lastColumn):
		return -lastColumn
	case v > lastColumn:
		return lastColumn
	default:
		return int(v+lastColumn) - lastColumn // rounded down on both sides of 0
	}
}
