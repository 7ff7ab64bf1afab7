package yamlfile

import (
	"frontlay/model"
	"frontlay/model/length"
)

// Limits on counts. A run that is larger is not one job.
const (
	maxCabinets = 200
	maxBays     = 100
	maxFronts   = 10_000
)

var cabinets = listOf[model.Cabinet]{
	key: "cabinets", doc: "The cabinets of the run, left to right.", most: maxCabinets,
	sign: func(c *model.Cabinet) string { return c.Name },
	item: cabinetFields,
}

func cabinetFields(c *model.Cabinet) []field {
	return []field{
		text("name", "What the cabinet is called.", &c.Name),
		size("width", "Outside width of the carcass.", &c.Width, positive, maxSize).needed(),
		size("height", "Height of the carcass alone, without its plinth.", &c.Height, positive, maxSize).needed(),
		size("depth", "From the front edge of the carcass to the back of the cabinet, the back board included.", &c.Depth, positive, maxSize).needed(),
		size("plinth", "Height of the plinth below the carcass.", &c.Plinth, 0, maxSize),
		size("worktop", "Thickness of the worktop on the carcass.", &c.Worktop, 0, maxFitting),
		size("channel", "Height of a finger-pull channel that fronts stay below: from the carcass's upper edge downwards, for inset fronts from the opening's.", &c.Channel, 0, maxFitting),
		choice("mount", "Whether fronts lie over the carcass edges or sit in the opening.", &c.Mount, "overlay", "inset"),
		optional("reveals", "Gaps of this cabinet instead of the project's; a gap that is left out here is 0.", &c.Reveals, revealFields),
		group("left", "What stands at the left side, seen from the room.", besideFields(&c.Left)...),
		group("right", "What stands at the right side, seen from the room.", besideFields(&c.Right)...),
		bays.field(&c.Bays).needed(),
	}
}

func besideFields(b *model.Beside) []field {
	return []field{
		size("end_panel", "Thickness of an end panel on the carcass side; it ends level with the faces of overlay fronts.", &b.EndPanel, 0, 200*length.Millimetre),
		size("filler", "Width of a filler beyond it.", &b.Filler, 0, maxFitting),
		flag("wall", "Whether a wall or a corner follows.", &b.Wall),
		size("projection", "How far something at the wall, such as a door casing or the handles round a corner, reaches into the way of an opening drawer.", &b.Projection, 0, maxFitting),
	}
}

var bays = listOf[model.Bay]{
	key: "bays", doc: "The openings of the cabinet, left to right.", most: maxBays,
	sign: func(b *model.Bay) string {
		s := b.Hardware
		for i := range b.Fronts {
			s += "\n" + b.Fronts[i].Name
		}
		return s
	},
	item: bayFields,
}

func bayFields(b *model.Bay) []field {
	return []field{
		text("hardware", "Name of the hardware sheet; the first of the project where it is left out.", &b.Hardware),
		size("width", "Clear inside width; left out, the bay takes a share of what is left.", &b.Width, positive, maxSize),
		number("share", "Share of the width that the bays with a width leave; 1 where it is left out.", &b.Share, 0.001, 1000),
		size("partition", "Thickness of the partition at the right of this bay; the carcass board where it is left out.", &b.Partition, positive, 200*length.Millimetre),
		group("division", "The rule by which fronts without a height share what is left.", divisionFields(&b.Division)...),
		fronts.field(&b.Fronts).needed(),
	}
}

func divisionFields(d *model.Division) []field {
	return []field{
		choice("rule", "By each front's share, all equal, growing downwards by a step, or growing downwards by a ratio.", &d.Rule, "shares", "equal", "step", "ratio"),
		size("step", "With the rule step: each front is taller by this than the one above it.", &d.Step, 0, maxFitting),
		number("ratio", "With the rule ratio: each front is taller by this factor than the one above it.", &d.Ratio, 0.1, 10),
	}
}
