package sheet

import (
	"strings"

	"frontlay/layout/lettering"
	"frontlay/layout/list"
	"frontlay/layout/plan"
	"frontlay/model/message"
)

// runnerPages makes the templates of runner screws. Each row of screws that
// recurs is one strip, laid on a pencil line, so that a whole run of cabinets
// needs only a few sheets; strips stand on a sheet one below the other.
func runnerPages(p *plan.Plan, o Options, first int) []Page {
	var all []block
	for _, s := range strips(p, o) {
		all = append(all, s.block(o))
	}
	return stackPages(RunnerTemplates, []headLine{
		{message.New("%v: runner templates 1:1, INSIDE FACE of carcass sides", title(p)), lettering.Medium, true},
		{message.New("The inside face lies up, the bottom edge towards you. Draw the pencil lines and lay the level line on each."), lettering.Tiny, false},
		{o.careful(), lettering.Tiny, false},
	}, all, o, first)
}

// block is the strip with the heights of its pencil lines.
func (s strip) block(o Options) block {
	side := message.New("front edge at the LEFT")
	if !s.frontLeft {
		side = message.New("front edge at the RIGHT")
	}
	lines := pencilLines{
		heads: []message.Message{message.New("Board"), message.New("Pencil lines above the bottom edge")},
	}
	for _, u := range s.uses {
		var heights []string
		for _, l := range u.lines {
			heights = append(heights, o.Say.Length(l))
		}
		lines.rows = append(lines.rows, []string{o.Say.Say(u.face.Name), strings.Join(heights, ", ")})
	}
	if len(lines.rows) == 1 {
		lines.only = message.New("%v: pencil lines %v above the bottom edge", lines.rows[0][0], lines.rows[0][1])
	}
	name := message.New("Runner %v long, %v", list.MakersLength{Length: s.length, Sheet: s.holes[0].Front.Sheet}, side)
	spread := s.spread(o)
	spread.what = name
	return block{spread: spread, name: name, lines: lines}
}
