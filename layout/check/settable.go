package check

import (
	"frontlay/model"
	"frontlay/model/length"
	"frontlay/model/message"
)

// Limit is a figure that a rule compares with and that a project can set. Usual
// holds where it does not; Diameter tells that then the hole's own diameter
// counts.
type Limit struct {
	Which    model.Limit
	Title    message.Message
	Usual    length.Length
	Diameter bool
}

// Limits are the figures of a rule that a project can set, none for most rules.
func (r Rule) Limits() []Limit {
	usual := limitsOf(&model.Project{})
	switch r.Name {
	case "overlay":
		return []Limit{{Which: model.LeastOverlay, Title: message.New("least overlay"), Usual: usual.leastOverlay}}
	case "hole-edge":
		return []Limit{{Which: model.HoleEdge, Title: message.New("from a hole's edge to the panel's"), Diameter: true}}
	case "hole-gap":
		return []Limit{{Which: model.HoleGap, Title: message.New("between the edges of two holes"), Usual: usual.holeGap}}
	case "hole-depth":
		return []Limit{
			{Which: model.Web, Title: message.New("from a hole's bottom to the face"), Usual: usual.web},
			{Which: model.DrillPoint, Title: message.New("the drill's point reaches deeper by"), Usual: usual.drillPoint},
		}
	case "beside-path":
		return []Limit{{Which: model.BesideClear, Title: message.New("clearance beside an opening front"), Usual: usual.besideClear}}
	case "wide-front":
		return []Limit{{Which: model.WideFront, Title: message.New("width from which a stabiliser is asked for"), Usual: usual.wideFront}}
	case "reveal":
		return []Limit{
			{Which: model.LeastReveal, Title: message.New("least gap"), Usual: usual.leastReveal},
			{Which: model.GreatestReveal, Title: message.New("greatest gap"), Usual: usual.greatestReveal},
		}
	case "nearly-level":
		return []Limit{{Which: model.NearlyLevel, Title: message.New("lines closer than this should be level"), Usual: usual.nearlyLevel}}
	}
	return nil
}
