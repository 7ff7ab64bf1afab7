package yamlfile

import (
	"frontlay/model"
)

func checksFields(c *model.Checks) []field {
	return []field{
		words("severity", "How bad the findings of a rule are in this project, by the rule's name.", &c.Severity, "error", "warning", "advice", "off"),
		group("limits", "Figures that the check compares with.", limitsFields(&c.Limits)...),
		accepted.field(&c.Accepted),
	}
}

func limitsFields(l *model.Limits) []field {
	return []field{
		sizeIfAny("least_reveal", "Least reveal; 1 mm where it is left out.", &l.LeastReveal, 0, maxFitting),
		sizeIfAny("greatest_reveal", "Greatest reveal; 6 mm where it is left out.", &l.GreatestReveal, 0, maxFitting),
		sizeIfAny("least_overlay", "How far an overlay front must cover a carcass edge; 1 mm where it is left out.", &l.LeastOverlay, 0, maxFitting),
		sizeIfAny("web", "What must stay between a hole's bottom and the face; 3 mm where it is left out.", &l.Web, 0, maxFitting),
		sizeIfAny("drill_point", "How far the drill's point reaches past the hole's depth; 0 where it is left out.", &l.DrillPoint, 0, maxFitting),
		sizeIfAny("hole_edge", "From a hole's edge to the panel's edge; the hole's diameter where it is left out.", &l.HoleEdge, 0, maxFitting),
		sizeIfAny("hole_gap", "From one hole's edge to the next one's; 2 mm where it is left out.", &l.HoleGap, 0, maxFitting),
		sizeIfAny("nearly_level", "Lines closer than this should be level; 3 mm where it is left out.", &l.NearlyLevel, 0, maxFitting),
		sizeIfAny("wide_front", "Width from which a front wants a stabiliser; 900 mm where it is left out.", &l.WideFront, 0, maxSize),
		sizeIfAny("beside_clear", "Between an opening front and what projects beside it; 3 mm where it is left out.", &l.BesideClear, 0, maxFitting),
	}
}

var accepted = listOf[model.Accepted]{
	key: "accepted", doc: "Findings that are accepted, each with the reason.", most: 10_000,
	sign: func(a *model.Accepted) string { return a.Rule + "\n" + a.Cabinet + "\n" + a.Front },
	item: acceptedFields,
}

func acceptedFields(a *model.Accepted) []field {
	return []field{
		text("rule", "Name of the rule.", &a.Rule).needed(),
		text("cabinet", "Name of the cabinet.", &a.Cabinet),
		count("bay", "Number of the bay, from 1 at the left.", &a.Bay, 1, maxBays),
		text("front", "Name of the front, or its number in the stack from 1 at the bottom.", &a.Front),
		size("short", "How far the figure was off when it was accepted; one that is further off is told again. Any where it is left out.", &a.Short, 0, maxSize),
		notes("reason", "Why the finding is accepted; it is printed.", &a.Reason),
	}
}
