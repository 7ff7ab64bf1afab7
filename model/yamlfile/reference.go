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

// Reference is the reference page of both files, as Markdown; limits are what the
// rules of the check have.
func Reference(limits []model.Limit) []byte {
	var b strings.Builder
	fmt.Fprintf(&b, referenceHead, MaxBytes>>20, MaxSheetBytes>>10)
	b.WriteString("## Project\n\n")
	keys(&b, figure.Project(new(model.Project), limits), "")
	b.WriteString("## Hardware sheet\n\nAll heights are above the runner's lower edge unless told otherwise.\n\n")
	keys(&b, figure.Sheet(new(model.HardwareSheet)), "")
	return []byte(strings.TrimRight(b.String(), "\n") + "\n")
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
