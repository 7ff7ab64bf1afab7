package hardware

import (
	"fmt"

	"frontlay/model"
	"frontlay/model/length"
	"frontlay/model/message"
)

// doubt is a figure that is possible but so unusual that it is more likely a
// slip; path is the way to it.
type doubt struct {
	path string
	what message.Message
}

// doubts finds figures worth another look. The bounds are common practice, no
// source; a sheet with doubts can be used all the same.
func doubts(s *model.HardwareSheet) []doubt {
	const mm = length.Millimetre
	var all []doubt
	add := func(path, text string, args ...any) { all = append(all, doubt{path, message.New(text, args...)}) }
	if v := s.SideClearance; v > 20*mm {
		add("side_clearance", "A side clearance of %v is unusual. Where the document gives both sides together, write half.", v)
	}
	if v := s.Runner.Setback; v > 20*mm {
		add("runner.setback", "A setback of %v is unusual. It ends at the runner's front end, not at its first screw.", v)
	}
	if v := s.Connector.Inset; v < s.SideClearance {
		add("connector.inset", "The connector's holes, %v from the carcass, lie outside of the drawer, which begins at %v.", v, s.SideClearance)
	}
	if v := s.Connector.Depth; v > 16*mm {
		add("connector.depth", "Holes %v deep would come through the face of many fronts.", v)
	}
	for i, l := range s.Runner.Lengths {
		for j, h := range l.Screws {
			if h.Depth > 15*mm {
				add(fmt.Sprintf("runner.lengths[%d].screws[%d].depth", i, j), "A screw hole %v deep would come through many carcass sides.", h.Depth)
				break
			}
		}
	}
	return all
}
