package sheet

import (
	"slices"

	"frontlay/layout/lettering"
	"frontlay/layout/list"
	"frontlay/layout/plan"
	"frontlay/model/length"
	"frontlay/model/message"
)

// sideInRoom says which side of a front a template is for.
func sideInRoom(s plan.Side) message.Message {
	if s == plan.Left {
		return message.New("LEFT side in the room")
	}
	return message.New("RIGHT side in the room")
}

func faceDown() message.Message {
	return message.New("The front lies face down, its bottom edge towards you.")
}

// lying says how the panel lies, and where that swaps its sides says so in letters
// that are read at arm's length.
func lying(how message.Message) []headLine {
	if !contains(how, faceDown()) {
		return []headLine{{how, lettering.Small, false}}
	}
	return []headLine{{message.New("Left on this paper is RIGHT in the room."), lettering.Large, true}, {how, lettering.Small, false}}
}

// careful is on every page that is drilled through; depth tells how its depths
// are meant.
func (o Options) careful() message.Message {
	return message.New("%v %v", message.New("Try it on scrap first. Clamp the work, set a depth stop, protect eyes and lungs. The maker’s instructions and local codes come first."), o.depth)
}

// drilling says what a hole is.
func (b bore) drilling() message.Message {
	diameter, depth := list.MakersLength{Length: b.diameter, Sheet: b.sheet}, list.MakersLength{Length: b.depth, Sheet: b.sheet}
	if b.through {
		return message.New("Ø %v, through", diameter)
	}
	if b.depth <= 0 {
		return message.New("Ø %v", diameter)
	}
	return message.New("Ø %v, %v deep", diameter, depth)
}

// headLine is a line, or more where it must be wrapped, at the top of a page.
type headLine struct {
	say  message.Message
	size length.Length
	bold bool
}

// templateHead is what stands at the top of every 1:1 page; how says how the panel
// lies, and more what else is to be done with the paper.
func (o Options) templateHead(what, how message.Message, more ...headLine) []headLine {
	lines := append([]headLine{{what, lettering.Medium, true}}, lying(how)...)
	lines = append(lines, more...)
	return append(lines, headLine{o.careful(), lettering.Small, false})
}

// warned adds below the title that the check has errors, where it has, and at the
// end that figures are rounded, where they may be.
func warned(o Options, lines []headLine) []headLine {
	if list.InInches(o.Say) {
		lines = append(lines, headLine{list.Rounded(), lettering.Small, false})
	}
	if o.warn.Empty() {
		return lines
	}
	return slices.Insert(lines, 1, headLine{o.warn, lettering.Small, true})
}

// headHeight is what head takes.
func (d *draft) headHeight(lines []headLine, width length.Length) length.Length {
	h := length.Length(0)
	for _, l := range lines {
		h += d.heightOf(width, l.size, l.bold, l.say)
	}
	return h + mm(2)
}

// head writes the lines at the top of the page and gives the y below them.
func (d *draft) head(lines []headLine, width length.Length) length.Length {
	return d.headFrom(d.area.Min.X, lines, width)
}

// headFrom writes them from a left edge of their own.
func (d *draft) headFrom(left length.Length, lines []headLine, width length.Length) length.Length {
	y := d.area.Max.Y
	for _, l := range lines {
		from := len(d.own.Marks)
		y = d.paragraph(left, y, width, l.size, l.bold, l.say)
		if l.say.Text == list.Rounded().Text {
			d.rounded, d.roundedEnd = from, len(d.own.Marks)
		}
	}
	return y - mm(2)
}

// contains tells that a message is another or has it in it.
func contains(m, other message.Message) bool {
	return m.Text == other.Text || slices.ContainsFunc(m.Args, func(a any) bool {
		in, ok := a.(message.Message)
		return ok && contains(in, other)
	})
}

// fromEdges says what the arrows at the holes and crosses of a panel mean.
func fromEdges() message.Message {
	return message.New("At holes and crosses: → from the left edge as it lies, ← from the right edge, ↑ from the bottom edge.")
}

// arrows says how far a hole lies from a side edge, or another line at its side, and
// how far up (below zero: down), by arrows that point away from them.
func arrows(say message.Language, right bool, side, up length.Length) string {
	across, along := "←", "↑"
	if right {
		across = "→"
	}
	if up < 0 {
		along = "↓"
	}
	return across + "\u00a0" + say.Figure(side.Abs()) + "  " + along + "\u00a0" + say.Figure(up.Abs())
}
