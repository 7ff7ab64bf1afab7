package list

import (
	"encoding/json"
	"io"

	"frontlay/layout/plan"
	"frontlay/layout/plane"
	"frontlay/model"
	"frontlay/model/length"
)

// PlanVersion is the version of the file that PlanJSON writes. It rises when a
// key changes its meaning or goes; new keys may come without. In version 1 a fixed
// panel's kind was "panel" and the height of a drawer back its "length".
const PlanVersion = 2

// mmLength is written as a number of millimetres, exact.
type mmLength length.Length

// MarshalJSON writes the shortest exact decimal.
func (l mmLength) MarshalJSON() ([]byte, error) {
	return []byte(length.UnitMM.Format(length.Length(l))), nil
}

type jsonPlan struct {
	Format   string        `json:"format"`
	Version  int           `json:"version"`
	Unit     string        `json:"unit"`
	Frames   string        `json:"frames"`
	Title    string        `json:"title"`
	Cabinets []jsonCabinet `json:"cabinets"`
	Fronts   []jsonFront   `json:"fronts"`
}

type jsonRect struct {
	Left   mmLength `json:"left"`
	Bottom mmLength `json:"bottom"`
	Width  mmLength `json:"width"`
	Height mmLength `json:"height"`
}

type jsonCabinet struct {
	Name        string      `json:"name"`
	Outline     jsonRect    `json:"outline"`
	Inside      jsonRect    `json:"inside"`
	InsideDepth mmLength    `json:"inside_depth"`
	Plinth      *jsonRect   `json:"plinth,omitempty"`
	StandsOn    string      `json:"stands_on"`
	Feet        []jsonRect  `json:"feet,omitempty"`
	Boards      []jsonBoard `json:"boards"`
}

type jsonFront struct {
	Number       int         `json:"number"`
	Name         string      `json:"name"`
	Cabinet      int         `json:"cabinet"`
	Bay          int         `json:"bay"`
	Kind         string      `json:"kind"`
	Face         jsonRect    `json:"face"`
	Thickness    mmLength    `json:"thickness"`
	Board        string      `json:"board,omitempty"`
	Zones        []jsonZone  `json:"zones,omitempty"`
	EdgeDistance *jsonSides  `json:"edge_distance,omitempty"`
	Drop         *mmLength   `json:"drop,omitempty"`
	Holes        []jsonHole  `json:"holes,omitempty"`
	HandleHoles  []jsonHole  `json:"handle_holes,omitempty"`
	Runner       *jsonRunner `json:"runner,omitempty"`
	Drawer       *jsonDrawer `json:"drawer,omitempty"`
	Packing      *jsonSides  `json:"packing,omitempty"`
	Inner        []jsonInner `json:"inner,omitempty"`
}

// jsonInner is an inner drawer behind a front.
type jsonInner struct {
	Runner *jsonRunner `json:"runner"`
	Drawer *jsonDrawer `json:"drawer"`
}

// jsonZone is a part of a front that is of one thickness, in the face frame; Recess is
// how far its rear face lies back from the front's, towards the room.
type jsonZone struct {
	Part string `json:"part"`
	jsonRect
	Thickness mmLength `json:"thickness"`
	Recess    mmLength `json:"recess"`
}

type jsonSides struct {
	Left  mmLength `json:"left"`
	Right mmLength `json:"right"`
}

type jsonHole struct {
	Kind     string   `json:"kind"`
	X        mmLength `json:"x"`
	Y        mmLength `json:"y"`
	Diameter mmLength `json:"diameter"`
	Depth    mmLength `json:"depth"`
}

type jsonRunner struct {
	LowerEdge mmLength    `json:"lower_edge"`
	Start     mmLength    `json:"start"`
	Length    mmLength    `json:"length"`
	Screws    []jsonScrew `json:"screws,omitempty"`
}

type jsonScrew struct {
	Back     mmLength `json:"back"`
	Y        mmLength `json:"y"`
	Diameter mmLength `json:"diameter"`
	Depth    mmLength `json:"depth"`
}

type jsonDrawer struct {
	Height string     `json:"height"`
	Bottom jsonBottom `json:"bottom"`
	Back   jsonBack   `json:"back"`
	Cover  mmLength   `json:"cover"` // 0 of an inner drawer, which has no front
	Box    *jsonBox   `json:"box,omitempty"`
}

// jsonBox is the outside size of a wooden box, and its boards, run frame.
type jsonBox struct {
	Width  mmLength    `json:"width"`
	Height mmLength    `json:"height"`
	Length mmLength    `json:"length"`
	Boards []jsonBoard `json:"boards"`
}

type jsonBottom struct {
	Width  mmLength `json:"width"`
	Length mmLength `json:"length"`
}

type jsonBack struct {
	Width  mmLength `json:"width"`
	Height mmLength `json:"height"`
}

// PlanJSON writes the plan as JSON: every length in millimetres, exact. Cabinets,
// faces and runners are in the run frame (origin at the left end of the run on
// the floor, x to the right as seen from the room, y up); holes are in the face
// frame of their front (origin at its lower left corner as seen from the room);
// start, back, near and far count from the carcass's front edge to the back. Boards of
// carcasses and wooden boxes are told as they stand, with what lies in grooves and joints.
func PlanJSON(w io.Writer, p *plan.Plan) error {
	out := jsonPlan{
		Format: "frontlay plan", Version: PlanVersion, Unit: "mm",
		Frames: "run: origin at the left end on the floor, seen from the room, y up; holes: from the front's lower left corner seen from the room; back, start, near, far: from the carcass's front edge",
	}
	if p.Project != nil {
		out.Title = p.Project.Title
	}
	for i := range p.Cabinets {
		c := &p.Cabinets[i]
		j := jsonCabinet{Name: c.Name, Outline: inJSON(c.Outline), Inside: inJSON(c.Inside), InsideDepth: mmLength(c.Depth), Feet: feetInJSON(c), Boards: boardsInJSON(p, i)}
		if doc := p.Project.CabinetAt(c.Place); doc != nil {
			j.StandsOn = baseInJSON(doc)
		}
		if !c.Plinth.Empty() {
			r := inJSON(c.Plinth)
			j.Plinth = &r
		}
		out.Cabinets = append(out.Cabinets, j)
	}
	for i := range p.Fronts {
		out.Fronts = append(out.Fronts, frontInJSON(&p.Fronts[i]))
	}
	enc := json.NewEncoder(w)
	enc.SetIndent("", "  ")
	enc.SetEscapeHTML(false)
	return enc.Encode(out)
}

func inJSON(r plane.Rect) jsonRect {
	return jsonRect{mmLength(r.Min.X), mmLength(r.Min.Y), mmLength(r.Width()), mmLength(r.Height())}
}

func frontInJSON(f *plan.Front) jsonFront {
	j := jsonFront{
		Number: f.Number, Name: f.Name, Cabinet: f.Place.Cabinet + 1, Bay: f.Place.Bay + 1,
		Kind: kindInJSON(f.Kind), Face: inJSON(f.Face), Thickness: mmLength(f.Thickness),
		Holes: holesInJSON(f.Holes), HandleHoles: holesInJSON(f.HandleHoles),
	}
	if f.Made.Name != model.PlainBoard {
		j.Board = f.Made.Name
	}
	for _, z := range f.Zones {
		j.Zones = append(j.Zones, jsonZone{partInJSON[z.Part], inJSON(z.Rect), mmLength(z.Thickness), mmLength(z.Recess)})
	}
	if f.HasPacking() {
		j.Packing = &jsonSides{mmLength(f.Packing.Left), mmLength(f.Packing.Right)}
	}
	for g := range f.Drawers() {
		if g.Nth > 0 {
			inner := jsonInner{}
			inner.Runner, inner.Drawer = drawerInJSON(g)
			j.Inner = append(j.Inner, inner)
		}
	}
	if !f.Fitted {
		return j
	}
	drop := mmLength(f.Drop)
	j.Drop = &drop
	j.EdgeDistance = &jsonSides{mmLength(f.EdgeDistance.Left), mmLength(f.EdgeDistance.Right)}
	j.Runner, j.Drawer = drawerInJSON(f)
	return j
}

func drawerInJSON(f *plan.Front) (*jsonRunner, *jsonDrawer) {
	runner := &jsonRunner{LowerEdge: mmLength(f.Runner.Lower), Start: mmLength(f.Runner.Start), Length: mmLength(f.Runner.Length)}
	for _, s := range f.Runner.Screws {
		runner.Screws = append(runner.Screws, jsonScrew{mmLength(s.Back), mmLength(s.Y), mmLength(s.Diameter), mmLength(s.Depth)})
	}
	drawer := &jsonDrawer{
		Height: f.Height.Name, Cover: mmLength(f.Drawer.Cover.Bottom),
		Bottom: jsonBottom{mmLength(f.Drawer.BottomCut.Width), mmLength(f.Drawer.BottomCut.Length)},
		Back:   jsonBack{mmLength(f.Drawer.BackCut.Width), mmLength(f.Drawer.BackCut.Length)},
	}
	if b := f.Drawer.Box; b != nil {
		drawer.Box = &jsonBox{mmLength(b.Width), mmLength(b.Height), mmLength(b.Length), boxPartsInJSON(b)}
	}
	return runner, drawer
}

// partInJSON names the parts of fronts for programs.
var partInJSON = map[plan.Part]string{
	plan.LeftStile: "left stile", plan.RightStile: "right stile", plan.BottomRail: "bottom rail", plan.TopRail: "top rail",
	plan.PanelPart: "panel", plan.BoardPart: "board", plan.GripPart: "grip",
}

func kindInJSON(k model.Kind) string {
	switch k {
	case model.FixedPanel:
		return "fixed"
	case model.OpenNiche:
		return "open"
	case model.Door:
		return "door"
	}
	return "drawer"
}

func holesInJSON(holes []plan.Hole) []jsonHole {
	var all []jsonHole
	for _, h := range holes {
		all = append(all, jsonHole{holeKindInJSON(h.Kind), mmLength(h.At.X), mmLength(h.At.Y), mmLength(h.Diameter), mmLength(h.Depth)})
	}
	return all
}

// holeKindInJSON names a kind of hole for programs, whatever people are told.
func holeKindInJSON(k plan.HoleKind) string {
	switch k {
	case plan.RailHole:
		return "rail"
	case plan.StabiliserHole:
		return "stabiliser"
	case plan.HandleHole:
		return "handle"
	}
	return "connector"
}
