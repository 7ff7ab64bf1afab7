package yamlfile

import (
	"fmt"
	"strings"

	"frontlay/model"
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
	keys(&b, projectFields(new(model.Project), limits), "")
	b.WriteString("## Hardware sheet\n\nAll heights are above the runner's lower edge unless told otherwise.\n\n")
	keys(&b, sheetFields(new(model.HardwareSheet)), "")
	return []byte(strings.TrimRight(b.String(), "\n") + "\n")
}

// keys writes the table of one mapping, then those of the mappings in it.
func keys(b *strings.Builder, fields []field, path string) {
	if path != "" {
		fmt.Fprintf(b, "### %s\n\n", path)
	}
	b.WriteString("| key | value | meaning |\n| --- | --- | --- |\n")
	for _, f := range fields {
		key := "`" + f.key + "`"
		if f.required {
			key += " (needed)"
		}
		fmt.Fprintf(b, "| %s | %s | %s |\n", key, f.value, f.doc)
	}
	b.WriteString("\n")
	for _, f := range fields {
		if f.children == nil {
			continue
		}
		below := f.key
		if strings.HasPrefix(f.value, "list") {
			below += "[]"
		}
		if path != "" {
			below = path + "." + below
		}
		keys(b, f.children(), below)
	}
}
