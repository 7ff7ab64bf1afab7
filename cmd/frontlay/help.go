package main

import (
	"fmt"
	"runtime/debug"
	"strings"
)

func helpText() string {
	var b strings.Builder
	b.WriteString(`frontlay plans drawer cabinets: it divides the elevation, places every front,
drawer, runner and hole, checks that each front hides its drawer bottom (and
what else goes wrong), and prints drilling templates at 1:1.

Use:
  frontlay [FILE]                            open the window, on a project if one is named
  frontlay --demo                            open the window on the demo project
`)
	for _, c := range commands() {
		fmt.Fprintf(&b, "  frontlay %-32s %s\n", c.use, c.about)
	}
	b.WriteString(`  frontlay --help, --version

Flags of print:
  -o FILE          where to write; without --only the templates get a file of
                   their own beside it, OUT-templates.pdf
  --paper NAME     A4 (default), A3, Letter, …, WIDTHxHEIGHT in mm, or "roll 610"
  --only LIST      only these parts, with commas between: ` + partNames() + `
  --fronts LIST    templates only for these fronts, by number: 2,5-7
  --printer NAME   undo this printer's measured fault of scale

Flags of export:
  -o FOLDER        where to write
  --only LIST      only these kinds: svg, dxf, csv, json

Flags of calibrate:
  -o FILE, --paper NAME        write the page to print and measure
  --printer NAME --measured ACROSSxUP [--paper NAME] [--sure]
                               keep what the rule says, such as ` + measuredExample() + `

Flags of check, print and export:
  --language CODE    en, de, or the path of a file of translations
  --sheets-anywhere  read hardware sheets outside of the project's folder too

Flags of the window:
  --verbose        log everything, to the terminal too

Examples:
  frontlay bench.yaml
  frontlay check bench.yaml
  frontlay print bench.yaml -o bench.pdf --paper A3
  frontlay print bench.yaml -o drill.pdf --only jig,corner --fronts 1-3
  frontlay export bench.yaml -o machine --only dxf
  frontlay new bench.yaml

Exit codes: 0 fine; 1 the check found errors; 2 could not read or write.

Before you drill: print at actual size (100 %), measure the check bars, set the
depth stop, clamp the front, protect eyes and lungs. Lift large fronts with two,
fix tall cabinets to the wall. The maker's instructions and local codes come
first.
`)
	return b.String()
}

// version is the module's version as the Go tool has recorded it.
func version() string {
	if info, ok := debug.ReadBuildInfo(); ok && info.Main.Version != "" {
		return info.Main.Version
	}
	return "(not recorded)"
}
