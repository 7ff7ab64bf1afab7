package drawing

import (
	"fmt"
	"strings"

	"frontlay/model/length"
	"frontlay/model/message"
)

var meaningNames = [...]string{
	"carcass", "face", "niche", "panel", "hidden", "drawer", "bottom", "runner",
	"hole", "cross", "centre", "dimension", "label", "cover",
	"finding", "register", "check-bar", "frame", "cut", "grid", "grip", "note", "plinth", "tint", "overlay-band", "covered", "handle",
}

// String is the meaning's name, as dumps and file layers write it.
func (m Meaning) String() string {
	if int(m) < len(meaningNames) {
		return meaningNames[m]
	}
	return "unknown"
}

var kindNames = [...]string{
	"nothing", "cabinet", "bay", "front", "division", "partition", "hole", "runner", "drawer",
	"front-height", "cabinet-width", "cabinet-height", "bay-width", "sheet-figure", "front-name",
}

// String is the kind's name, as dumps write it.
func (k SubjectKind) String() string {
	if int(k) < len(kindNames) {
		return kindNames[k]
	}
	return "unknown"
}

// String is the anchor in words, as dumps write it.
func (a Anchor) String() string {
	return [...]string{"bottom", "middle", "top"}[int(2*a.Y)] + "-" + [...]string{"left", "centre", "right"}[int(2*a.X)]
}

// severityNames are what dumps write behind a mark.
var severityNames = [...]string{"", " error", " warning", " advice", " accepted"}

// Dump writes a drawing as text, one mark a line, lengths in millimetres: for
// tests to compare and people to read.
func (d *Drawing) Dump() string {
	var b strings.Builder
	var say message.Language
	fmt.Fprintf(&b, "drawing %q\n", say.Say(d.Title))
	mm := length.UnitMM.Format
	for _, m := range d.Marks {
		t := m.tag()
		fmt.Fprintf(&b, "%s ", t.Meaning)
		switch v := m.(type) {
		case *Line:
			fmt.Fprintf(&b, "line %s,%s %s,%s", mm(v.From.X), mm(v.From.Y), mm(v.To.X), mm(v.To.Y))
			b.WriteString(flag(v.Dashed, " dashed"))
		case *Rectangle:
			fmt.Fprintf(&b, "rectangle %s,%s %s,%s", mm(v.Rect.Min.X), mm(v.Rect.Min.Y), mm(v.Rect.Max.X), mm(v.Rect.Max.Y))
			b.WriteString(flag(v.Filled, " filled") + flag(v.Dashed, " dashed"))
			if v.Board != nil {
				fmt.Fprintf(&b, " of %q grain %q", v.Board.Material, v.Board.Grain)
			}
		case *Circle:
			fmt.Fprintf(&b, "circle %s,%s radius %s", mm(v.Centre.X), mm(v.Centre.Y), mm(v.Radius))
		case *Text:
			fmt.Fprintf(&b, "text %s,%s %s %q", mm(v.At.X), mm(v.At.Y), v.Anchor, say.Say(v.Say))
		case *Caption:
			fmt.Fprintf(&b, "caption %s,%s %s,%s %d %q height %s", mm(v.Face.Min.X), mm(v.Face.Min.Y), mm(v.Face.Max.X), mm(v.Face.Max.Y), v.Number, say.Say(v.Name), mm(v.Height))
			b.WriteString(flag(v.Top, " top") + flag(!v.Note.Empty(), " "+say.Say(v.Note)))
		case *Dimension:
			fmt.Fprintf(&b, "dimension %s,%s %s,%s at %s level %d %s%s", mm(v.From.X), mm(v.From.Y), mm(v.To.X), mm(v.To.Y), mm(v.Line), v.Level, v.Prefix, mm(v.Value))
		case *Hatch:
			fmt.Fprintf(&b, "hatch %s,%s %s,%s", mm(v.Rect.Min.X), mm(v.Rect.Min.Y), mm(v.Rect.Max.X), mm(v.Rect.Max.Y))
			b.WriteString(flag(v.Falling, " falling") + flag(v.Close, " close"))
		case *Spot:
			fmt.Fprintf(&b, "%s %s,%s %s,%s", v.Shape, mm(v.Rect.Min.X), mm(v.Rect.Min.Y), mm(v.Rect.Max.X), mm(v.Rect.Max.Y))
			b.WriteString(flag(v.Chosen, " chosen"))
		}
		if t.Of.Kind != Nothing {
			fmt.Fprintf(&b, " of %s at %d/%d/%d", t.Of.Kind, t.Of.Place.Cabinet, t.Of.Place.Bay, t.Of.Place.Front)
		}
		if int(t.Severity) < len(severityNames) {
			b.WriteString(severityNames[t.Severity])
		}
		b.WriteByte('\n')
	}
	return b.String()
}

func flag(on bool, s string) string {
	if on {
		return s
	}
	return ""
}
