package main

import (
	"fmt"
	"runtime/debug"
	"strconv"
	"strings"
	"unicode/utf8"

	"frontlay/layout/export"
	"frontlay/layout/list"
	"frontlay/layout/sheet"
	"frontlay/model/message"
)

func helpText() string {
	var b strings.Builder
	b.WriteString(`frontlay plans drawer cabinets: it divides the elevation, places every front,
drawer, runner and hole, checks that each front hides its drawer bottom (and
what else goes wrong), and prints drilling templates at 1:1.

Use:
`)
	b.WriteString(use("[FILE]", "open the window, on a project if one is named"))
	b.WriteString(use("--demo", "open the window on the demo project"))
	for _, c := range commands() {
		b.WriteString(use(c.use, c.about))
	}
	b.WriteString(`  frontlay --help, --version

Flags of print:
  -o FILE          where to write; without --only templates and labels get files
                   of their own beside it, OUT-templates.pdf, OUT-labels.pdf
  --paper NAME     A4 (default), A3, Letter, …, WIDTHxHEIGHT in mm, "roll 610"
` + forPlaces() + paragraph("  --only LIST      ", "only these parts, with commas between, in one file: "+listed(sheet.Parts())) + `  --fronts LIST    templates only for these fronts, by number: 2,5-7
  --printer NAME   undo this printer's measured fault of scale
  --labels 3x8     print labels for all boards: columns x rows on a sheet
  --label-margins LEFTxTOP, --label-pitch ACROSSxDOWN
                   to the first label and from one to the next, as the pack
                   tells; without them the labels fill the sheet
  --first N        begin with label N of a sheet that is used up before it

Flags of export:
  -o FOLDER        where to write
` + paragraph("  --only LIST      ", "only these kinds: "+export.KindNames()) + `  --pixels N       of the picture's longer edge; ` + strconv.Itoa(export.DefaultPixels) + ` where you do not say

Flags of calibrate:
  -o FILE, --paper NAME        write the page to print and measure
  --printer NAME --measured ACROSSxUP [--paper NAME] [--sure]
                               keep what the rule says, such as ` + measuredExample() + `

Flags of check:
  --stamp XXXXXXXX   tell whether paper with this stamp still fits the project,
                     and which fronts have changed since it was printed

Flags of propose:
  --cabinet NAME, --bay N   which bay; the first where you do not say
  --thing NAME=HEIGHT       what one drawer is to hold, and how high it stands;
                            once for each drawer
  --fronts 3..5             how many fronts
` + paragraph("  --style NAME              ", strings.Join(styles, ", ")+"; with --by the step or factor, else the best") + `  --rows, --grid STEP       free heights: runners on hole rows; step of heights
  --sheet NAME              hardware of the project, also more than once
` + paragraph("  --weight KEY=MM           ", "what one of it counts, in mm of lost height: "+weightKeys()) + `  --best N                  how many

Flags of check, propose, print and export:
  --language CODE    en, de, or the path of a file of translations
  --sheets-anywhere  read hardware sheets outside of the project's folder too

Flags of the window:
  --verbose        log everything, to the terminal too

Examples:
  frontlay bench.yaml
  frontlay check bench.yaml
  frontlay propose bench.yaml --fronts 3..5 --thing jars=210 --thing brushes=60
  frontlay print bench.yaml -o bench.pdf --paper A3
  frontlay print bench.yaml -o file.pdf --for office
  frontlay print bench.yaml -o drill.pdf --only jig,corner --fronts 1-3
  frontlay print bench.yaml -o labels.pdf --labels 3x8 --first 5
  frontlay export bench.yaml -o machine --only dxf
  frontlay new bench.yaml

Exit codes: 0 fine; 1 the check found errors, or paper does not fit any more;
2 could not read or write.

`)
	cautions := list.Cautions(message.Language{})
	fmt.Fprintf(&b, "%s:\n", cautions.Title)
	for _, r := range cautions.Rows {
		b.WriteString(paragraph("  - ", r.Cells[1]))
	}
	return b.String()
}

// forPlaces says what is printed for each place of work.
func forPlaces() string {
	var b strings.Builder
	sign := "  --for PLACE      "
	for i, p := range sheet.Presets() {
		of := " "
		if i == 0 {
			of = " (default) "
		}
		var parts []string
		for _, part := range p.Parts() {
			name := string(part)
			if p == sheet.Bench && part.Spared() {
				name += "*"
			}
			parts = append(parts, name)
		}
		b.WriteString(paragraph(sign, string(p)+of+"prints "+strings.Join(parts, ", ")))
		sign = strings.Repeat(" ", len(sign))
	}
	b.WriteString(paragraph(sign, "* only where the shop sheets do not tell it"))
	return b.String()
}

// helpWidth is how many signs a line of the help may have: what terminals show
// since there are terminals.
const helpWidth = 80

// use says in one paragraph how a command is written and what it does.
func use(written, about string) string {
	return paragraph(fmt.Sprintf("  frontlay %-34s", written), about)
}

// paragraph breaks a text into lines, the first of them behind a sign and the
// others below its text.
func paragraph(sign, text string) string {
	lines := []string{sign}
	for _, word := range strings.Fields(text) {
		at := len(lines) - 1
		if utf8.RuneCountInString(lines[at])+utf8.RuneCountInString(word) >= helpWidth {
			lines, at = append(lines, strings.Repeat(" ", len(sign))), at+1
		}
		if len(lines[at]) > len(sign) {
			lines[at] += " "
		}
		lines[at] += word
	}
	return strings.Join(lines, "\n") + "\n"
}

// version is the module's version as the Go tool has recorded it.
func version() string {
	if info, ok := debug.ReadBuildInfo(); ok && info.Main.Version != "" {
		return info.Main.Version
	}
	return "(not recorded)"
}
