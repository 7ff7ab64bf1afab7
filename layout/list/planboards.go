package list

import (
	"frontlay/layout/plan"
	"frontlay/model"
)

// jsonBoard is a board as it stands: seen from the room, with near and far how it lies from
// front to back, all of it with what lies in grooves and joints. Of a carcass near and far
// count from its front edge, of a box's board likewise.
type jsonBoard struct {
	Kind string `json:"kind"`
	jsonRect
	Near   mmLength    `json:"near"`
	Far    mmLength    `json:"far"`
	Groove *jsonGroove `json:"groove,omitempty"`
}

// jsonGroove is the groove or rebate of the back in a board's inside face, all along it, from
// near to far.
type jsonGroove struct {
	Depth mmLength `json:"depth"`
	Near  mmLength `json:"near"`
	Far   mmLength `json:"far"`
}

// boardsInJSON are the boards of a cabinet and around it, but worktops, whose sizes are not
// in the project.
func boardsInJSON(p *plan.Plan, i int) []jsonBoard {
	var all []jsonBoard
	back := p.Cabinets[i].Back
	for _, b := range p.Boards(i) {
		if b.Kind == plan.WorktopBoard {
			continue
		}
		j := jsonBoard{Kind: boardInJSON[b.Kind], jsonRect: inJSON(b.Rect), Near: mmLength(b.Near), Far: mmLength(b.Far)}
		if b.Groove > 0 && b.Milled > 0 {
			j.Groove = &jsonGroove{mmLength(b.Groove), mmLength(back.Near), mmLength(back.Near + b.Milled)}
		}
		all = append(all, j)
	}
	return all
}

// boardInJSON names boards for programs.
var boardInJSON = map[plan.BoardKind]string{
	plan.EndPanelBoard: "end panel", plan.FillerBoard: "filler", plan.LeftSideBoard: "left side", plan.RightSideBoard: "right side",
	plan.BottomBoard: "bottom", plan.TopBoard: "top", plan.PartitionBoard: "partition", plan.ShelfBoard: "shelf", plan.ChannelBoard: "channel",
	plan.BackBoard: "back", plan.PlinthBoard: "plinth", plan.RailBoard: "rail", plan.PackingBoard: "packing",
}

// baseInJSON names what a cabinet stands on.
func baseInJSON(c *model.Cabinet) string {
	switch {
	case c.Base.Kind == model.OnWall:
		return "wall"
	case c.Plinth <= 0:
		return "floor"
	case c.Base.Kind == model.OnFeet:
		return "feet"
	}
	return "plinth"
}

func boxPartsInJSON(b *plan.Box) []jsonBoard {
	names := map[plan.BoxPartKind]string{
		plan.BoxLeftSide: "left side", plan.BoxRightSide: "right side", plan.BoxFront: "inner front", plan.BoxBack: "back", plan.BoxBottom: "bottom",
	}
	var all []jsonBoard
	for i := range b.Parts {
		q := &b.Parts[i]
		all = append(all, jsonBoard{Kind: names[q.Kind], jsonRect: inJSON(q.Rect), Near: mmLength(q.Near), Far: mmLength(q.Far)})
	}
	return all
}

// feetInJSON are the feet in front, evenly, as they are drawn.
func feetInJSON(c *plan.Cabinet) []jsonRect {
	var all []jsonRect
	for _, f := range c.Feet {
		all = append(all, inJSON(f))
	}
	return all
}
