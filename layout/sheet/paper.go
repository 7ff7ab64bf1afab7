package sheet

import (
	"slices"
	"strings"

	"frontlay/model/length"
	"frontlay/model/message"
)

func mm(v int64) length.Length { return length.MM(v) }

// quarterInches gives a count of quarter inches.
func quarterInches(v int64) length.Length { return length.Length(v) * length.Inch / 4 }

// Papers are the sizes of paper known by name, portrait: the ISO 216 A series,
// and the American sizes of ASME Y14.1 (Letter is its A, Tabloid its B).
func Papers() []Paper {
	return []Paper{
		{"A4", mm(210), mm(297)},
		{"A3", mm(297), mm(420)},
		{"A2", mm(420), mm(594)},
		{"A1", mm(594), mm(841)},
		{"A0", mm(841), mm(1189)},
		{"Letter", quarterInches(34), quarterInches(44)},
		{"Legal", quarterInches(34), quarterInches(56)},
		{"Tabloid", quarterInches(44), quarterInches(68)},
	}
}

// The least and greatest edge of a sheet. Below the least there is no room for
// the check bars of 100 mm with what must be said beside them; PDF readers take no more than 14,400 pt, which is 5,080 mm.
const (
	leastEdge    = 200 * length.Millimetre
	greatestEdge = 5000 * length.Millimetre
)

// ParsePaper reads the name of a paper (in any case), a size such as 210x297 or
// 8.5x11 in, or a roll such as `roll 610`. Bare numbers are in u. The error is a
// message for the user.
func ParsePaper(s string, u length.Unit) (Paper, error) {
	text := strings.ToLower(strings.TrimSpace(s))
	for _, p := range Papers() {
		if strings.ToLower(p.Name) == text {
			return p, nil
		}
	}
	if rest, ok := strings.CutPrefix(text, "roll"); ok {
		width, err := length.Parse(strings.TrimSpace(rest), u)
		if err != nil {
			return Paper{}, message.New("“%v” is not a roll of paper: write the width behind the word, as in roll 610 mm", s)
		}
		return Paper{Name: "roll " + u.WithSymbol(width), Width: width}.checked(s)
	}
	across, up, ok := strings.Cut(strings.ReplaceAll(text, "×", "x"), "x")
	if !ok {
		return Paper{}, message.New("“%v” is not a paper: write %v, a size such as 210x297, or a roll such as roll 610", s, paperNames())
	}
	height, err := length.Parse(up, u)
	if err != nil {
		return Paper{}, message.New("the height of the paper “%v” can’t be read: %v", s, err)
	}
	width, err := length.Parse(withUnitOf(across, up), u)
	if err != nil {
		return Paper{}, message.New("the width of the paper “%v” can’t be read: %v", s, err)
	}
	return Paper{Name: u.Format(width) + " × " + u.WithSymbol(height), Width: width, Height: height}.checked(s)
}

// withUnitOf gives the first figure of 8.5x11 in the unit of the second.
func withUnitOf(first, second string) string {
	if strings.IndexFunc(first, isLetterOrMark) >= 0 {
		return first
	}
	at := strings.IndexFunc(second, isLetterOrMark)
	if at < 0 {
		return first
	}
	return first + " " + second[at:]
}

func isLetterOrMark(r rune) bool { return r >= 'a' && r <= 'z' || r == '"' || r == '″' || r == '\'' }

func paperNames() string {
	var names []string
	for _, p := range Papers() {
		names = append(names, p.Name)
	}
	return strings.Join(names, ", ")
}

func (p Paper) checked(typed string) (Paper, error) {
	edges := []length.Length{p.Width}
	if !p.Roll() {
		edges = append(edges, p.Height)
	}
	for _, e := range edges {
		if e < leastEdge || e > greatestEdge {
			return Paper{}, message.New("the paper “%v” can’t be used: each edge must be from %v to %v long", typed, leastEdge, greatestEdge)
		}
	}
	return p, nil
}

// Roll tells that the paper has a width and any length.
func (p Paper) Roll() bool { return p.Height == 0 }

// american tells that the paper's edges are whole quarters of an inch and no whole
// millimetres.
func (p Paper) american() bool {
	edges := []length.Length{p.Width}
	if !p.Roll() {
		edges = append(edges, p.Height)
	}
	return !slices.ContainsFunc(edges, func(e length.Length) bool { return e%(length.Inch/4) != 0 }) &&
		slices.ContainsFunc(edges, func(e length.Length) bool { return e%length.Millimetre != 0 })
}

// Margins are what a printer leaves white: Side left and right, End at the top
// and the bottom.
type Margins struct{ Side, End length.Length }

// DefaultMargins suit every printer measured so far: real ones leave up to
// 6.4 mm at the sides and 12.7 mm at the top and bottom.
var DefaultMargins = Margins{mm(10), mm(13)}

// The least and the greatest margin that can be asked for: no printer prints
// nearer to the edge, and more would leave no room on the least paper.
const (
	LeastMargin    = 4 * length.Millimetre
	GreatestMargin = 25 * length.Millimetre
)

// Use is how much paper one part of a document takes.
type Use struct {
	Part   Part
	Sheets int
	Roll   length.Length // length of roll that it takes; 0 where it is printed on sheets
}

// Usage tells how much paper each part of a document takes on the paper that it
// was made for, parts in their order.
func Usage(d Document, paper Paper) []Use {
	var all []Use
	for _, p := range d.Pages {
		if n := len(all); n == 0 || all[n-1].Part != Part(p.Kind) {
			all = append(all, Use{Part: Part(p.Kind)})
		}
		u := &all[len(all)-1]
		u.Sheets++
		if paper.Roll() && u.Part.Template() {
			u.Roll += alongRoll(p, paper)
		}
	}
	return all
}

// alongRoll is the length of roll that a page takes: the edge that does not lie
// across the roll.
func alongRoll(p Page, paper Paper) length.Length {
	if p.Width == paper.Width {
		return p.Height
	}
	return p.Width
}

// ofRoll is a length of paper to cut off, which nobody measures finer than
// centimetres or inches: it is written in whole ones, rounded up.
type ofRoll length.Length

// Say writes the length in the system of the project's unit.
func (l ofRoll) Say(say message.Language) string {
	unit := length.UnitCM
	if say.Unit.Inches() {
		unit = length.UnitInch
	}
	return unit.WithSymbol(length.Length(l).CeilTo(unit.Size()))
}

// Say tells the use in words.
func (u Use) Say() message.Message {
	switch {
	case u.Roll > 0 && u.Sheets == 1:
		return message.New("%v: 1 piece, %v of the roll", u.Part.Title(), ofRoll(u.Roll))
	case u.Roll > 0:
		return message.New("%v: %v pieces, %v of the roll", u.Part.Title(), u.Sheets, ofRoll(u.Roll))
	case u.Sheets == 1:
		return message.New("%v: 1 sheet", u.Part.Title())
	}
	return message.New("%v: %v sheets", u.Part.Title(), u.Sheets)
}
