package yamlfile

import (
	"fmt"
	"strconv"
	"strings"

	"frontlay/model"
	"frontlay/model/figure"
	"frontlay/model/length"
)

const referenceHead = `# The files of frontlay

A project and a hardware sheet are YAML files (YAML 1.2, UTF-8), to be read and
written by people and by the program alike. Comments stay where the value that
they stand beside stays. This page is written from the tables that read and write
the files: do not edit it by hand.

- The first key is the format version. A file of a newer version is refused and
  left as it is; a file of an older one is read for ever and written as the newest.
- A size is a number in the file's unit, or a number with its unit: ` + "`12`, `12.5`, `12,5`,\n  `12 mm`, `1.2 cm`, `3/4 in`, `35 7/16`" + `, and sums of those: ` + "`900-2*18`" + `. Between
  braces a comma separates keys: write a point, or quotes. Sizes are exact to a
  nanometre; what an inch fraction can't say exactly is written in mm.
- Keys that are not listed here are errors, so that a slip of the keyboard is not
  taken for a wish. Anchors, aliases, tags and several documents in one file are
  errors too: the format has no use for them.
- A project can have at most %d MiB, a hardware sheet %d KiB.

`

// referenceTail says what figures depend on that are in no file: what the engine
// (layout/divide, layout/plan, layout/list) makes of those that are.
const referenceTail = `## What is worked out

Heights and widths:

- Of a stack's height, less its reveals and gaps, the fronts with a height of their
  own, locked or lined up are taken off; the others share what is left by the bay's
  rule. Their heights are whole multiples of ` + "`rounding.step`" + ` (left out: 1 mm, or
  1/32 in in a project in inches) and no more than a step off their share. Where the
  sum is no whole number of steps, the lowest of them takes the odd rest, or the
  highest with ` + "`rest: top`" + `; a front with a height of its own never does.
- ` + "`share`" + ` counts with the rule shares alone. With step and ratio, fronts with heights
  of their own are passed over: the next computed front above such a one differs by
  one step, or one factor.
- Widths of bays without one are rounded to 0.1 mm (1/64 in where heights are rounded to inches);
  the rightmost takes the odd rest.
- On a partition, half of the gap lies on each side of its middle, whatever its
  thickness. With ` + "`shared_gaps`" + ` the project's ` + "`reveals.gap`" + `, not a cabinet's own,
  lies half on each side of where two cabinets meet, where both have overlay fronts
  and no end panel or filler stands between them; otherwise each keeps its edge
  reveal.
- A cabinet's ` + "`channel`" + ` counts downwards from the carcass's upper edge for overlay fronts and
  from the opening's for inset ones; fronts stay below it by their top reveal, and
  the drawers behind them below it by the clearance above. That of a front has its
  upper edge where the front above begins, or, above the highest one, where fronts are
  measured from at the top. Its height is the gap, unless ` + "`gap_above`" + ` is given: then it
  reaches behind the front below it as far as it is higher. Where it has a ` + "`depth`" + `, a
  board of the carcass's, as wide as the opening, closes it at the back.

Niches and spanning fronts:

- A niche's height is from front line to front line; what is clear between its boards
  is less, unless ` + "`clear`" + ` is true. It gets a shelf of the carcass board below and
  above, but at the carcass's bottom and top; between two niches there is one.
  Shelves are as deep as the carcass, behind inset fronts less the fronts' thickness.
- A drawer over a niche stands on the niche's shelf as the lowest does on the carcass
  bottom, higher by the runner's ` + "`least_height`" + `.
- A front that spans bays ends the partitions that it would cut. A shelf as wide as
  those bays carries what is left of them, or lies on it.

Drawers and hardware:

- The runner of a drawer over another stands level with its front's bottom edge where
  no ` + "`drop`" + ` is given. ` + "`move_runners`" + ` raises it to the next row; ` + "`move_fronts`" + ` chooses
  bottom edges so that as few runners as possible are off the rows, and of such
  choices the one whose edges move least in sum; of equal ones the lower.
- ` + "`auto`" + ` takes the tallest drawer whose highest part has room below what is above it
  and whose holes all lie in the front, far enough from its edges; where none does,
  the lowest.
- The runner is the longest that fits from its setback, behind inset fronts further
  back by the front's thickness, to the back board less ` + "`clearance_behind`" + `. Its screw
  holes count from the carcass's front edge for overlay fronts, and move back by the
  front's thickness behind inset ones.

Boards:

- The back board is laid on behind all of the carcass, and is within the cabinet's
  ` + "`depth`" + `: sides, bottom, top and partitions are as deep as that less its thickness.
- Fronts are lipped on all four edges, carcass boards and end panels on the front edge
  alone: their cut depth is less by one lipping. ` + "`edging`" + ` says other edges; a back,
  plinth, channel or filler has none.
- End panels and fillers are of the material of ` + "`boards.front`" + `; they weigh by its density
  and, an end panel, by its own thickness. An end panel beside overlay fronts is as
  deep as the cabinet and its thickest front, beside inset ones, and behind overlay
  fronts that cover it (a reveal below zero at that side), as the cabinet.
  Shelves behind inset fronts are set back by the thickest of the cabinet.

Front boards and builds:

- A front is made of the board that its own ` + "`board`" + ` names, else its cabinet's, else the
  project's, else of ` + "`boards.front`" + `, whose name is ` + "`front`" + `.
- A ` + "`frame`" + ` has two stiles from its lower to its upper edge, rails between them, and a
  panel that reaches into a groove all around. ` + "`recess`" + ` counts from the frame's rear face
  towards the room: 0 is a panel level with the rear face. A lipping is glued around the
  whole frame, and taken off the stiles and rails. The cut list has the stiles as long as
  the front is high, the rails between them with their tenons, the panel to the bottom of
  the groove: take off what solid wood needs to move.
- A ` + "`grip`" + ` is milled from the rear along the whole edge, as deep as leaves
  ` + "`thickness_left`" + ` at the face.
- A hole is as deep as it can be in the part of the front that it touches, the thinnest
  where it touches several; a handle's hole goes through that.

Handles:

- A front's own ` + "`handle`" + ` holds for it whole; a drawer without one has its cabinet's, or
  else the project's. Fixed panels have only their own. ` + "`{none: true}`" + ` is none.
- ` + "`from_top`, `from_bottom`, `above_middle` and `on_line`" + ` say in four ways how high its
  middle is, ` + "`from_left`, `from_right` and `beside_middle`" + ` in three how far across; one of
  each at most.
`

// Reference is the reference page of both files, as Markdown; limits are what the
// rules of the check have.
func Reference(limits []model.Limit) []byte {
	var b strings.Builder
	fmt.Fprintf(&b, referenceHead, MaxBytes>>20, MaxSheetBytes>>10)
	b.WriteString("## Project\n\n")
	keys(&b, figure.Project(new(model.Project), limits), "")
	b.WriteString("## Hardware sheet\n\nAll heights are above the runner's lower edge unless told otherwise.\n\n")
	keys(&b, figure.Sheet(new(model.HardwareSheet)), "")
	b.WriteString(referenceTail)
	return []byte(b.String())
}

// keys writes the table of one mapping, then those of the mappings in it.
func keys(b *strings.Builder, rows []figure.Row, path string) {
	if path != "" {
		fmt.Fprintf(b, "### %s\n\n", path)
	}
	b.WriteString("| key | value | meaning |\n| --- | --- | --- |\n")
	for _, f := range rows {
		key := "`" + f.Key + "`"
		if f.Needed {
			key += " (needed)"
		}
		fmt.Fprintf(b, "| %s | %s | %s |\n", key, inWords(f.Value), f.Doc)
	}
	b.WriteString("\n")
	for _, f := range rows {
		below, items := f.Key, []figure.Row(nil)
		switch v := f.Value.(type) {
		case *figure.Group:
			items = v.Rows()
		case *figure.List:
			below, items = below+"[]", v.Empty()
		default:
			continue
		}
		if path != "" {
			below = path + "." + below
		}
		keys(b, items, below)
	}
}

// inWords tells what values a row takes.
func inWords(value figure.Value) string {
	switch v := value.(type) {
	case *figure.Version:
		return strconv.Itoa(v.Newest)
	case *figure.Size:
		return "size" + rangeText(v.Least, v.Greatest)
	case *figure.Sizes:
		return "list of sizes"
	case *figure.Number:
		return fmt.Sprintf("number from %v to %v", v.Least, v.Greatest)
	case *figure.Count:
		return fmt.Sprintf("whole number from %d to %d", v.Least, v.Greatest)
	case *figure.Text:
		if len(v.OneOf) > 0 {
			return oneOf(v.OneOf)
		}
		return map[bool]string{false: "text on one line", true: "text"}[v.Lines] + ", at most " + strconv.Itoa(v.Most) + " characters"
	case *figure.Choice:
		return oneOf(v.OneOf)
	case *figure.Flag:
		return "true or false"
	case *figure.Words:
		return "names, each with " + oneOf(v.OneOf)
	case *figure.Unit:
		return oneOf(length.UnitNames())
	case *figure.List:
		return "list, at most " + strconv.Itoa(v.Most)
	case *figure.Sheets:
		return "names, each with a text or the keys of a hardware sheet"
	default:
		return "keys"
	}
}

func oneOf(words []string) string { return "one of " + strings.Join(words, ", ") }

// rangeText tells the limits of a size, for the reference.
func rangeText(lo, hi length.Length) string {
	switch {
	case lo == figure.Positive:
		return " above 0, at most " + hi.String()
	case lo == 0:
		return ", at most " + hi.String()
	default:
		return " from " + lo.String() + " to " + hi.String()
	}
}
