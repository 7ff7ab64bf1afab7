package plan_test

import (
	"testing"

	"frontlay/layout/plan"
	"frontlay/model"
)

// What a drawer must stay below: anything that it would hit when it stands there
// or when it is pulled.
func TestWhatADrawerMustStayBelow(t *testing.T) {
	drop := 40 * mm
	cases := []struct {
		name   string
		change func(*model.Cabinet)
		front  int // whose drawer is looked at
		kind   plan.AboveKind
		limit  func(*plan.Plan) plan.Front
	}{
		{"the drawer above, level with its front", func(*model.Cabinet) {}, 0, plan.DrawerAbove, func(p *plan.Plan) plan.Front { return p.Fronts[1] }},
		{"a front above that hangs lower than its drawer", func(c *model.Cabinet) { c.Bays[0].Fronts[1].Drop = &drop }, 0, plan.FrontAbove, func(p *plan.Plan) plan.Front { return p.Fronts[1] }},
		{"a fixed panel above", func(c *model.Cabinet) { c.Bays[0].Fronts[1].Kind = model.FixedPanel }, 0, plan.FrontAbove, func(p *plan.Plan) plan.Front { return p.Fronts[1] }},
	}
	for _, c := range cases {
		t.Run(c.name, func(t *testing.T) {
			p := tradeProject()
			c.change(&p.Cabinets[0])
			got := plan.Make(p)
			f := &got.Fronts[c.front]
			if f.Drawer.Above != c.kind {
				t.Errorf("above it is %v, want %v", f.Drawer.Above.Say(), c.kind.Say())
			}
			above := c.limit(got)
			same(t, "limit", f.Drawer.Limit, above.Face.Min.Y)
		})
	}
}

func TestAChannelLimitsTheDrawerBelow(t *testing.T) {
	p := tradeProject()
	p.Cabinets[0].Channel.Height = 60 * mm
	f := &plan.Make(p).Fronts[2]
	same(t, "limit", f.Drawer.Limit, 660*mm)
	if f.Drawer.Above != plan.ChannelAbove {
		t.Errorf("above it is %v", f.Drawer.Above.Say())
	}
}

// The channel of inset fronts hangs in the opening: under a board of 19 at 400 its
// lower edge is 400 − 19 − 40 = 341. A front of 120 under it, with a reveal of 3, has
// its bottom edge, and its runner's lower edge, at 341 − 3 − 120 = 218; a drawer of
// 148 ends at 366, 25 in the channel.
func TestAChannelOverInsetFronts(t *testing.T) {
	p := tradeProject()
	c := &p.Cabinets[0]
	c.Mount, c.Height, c.Channel.Height = model.Inset, 400*mm, 40*mm
	c.Bays[0].Fronts = []model.Front{{Share: 1}, {Height: 120 * mm, Drawer: "low"}}
	sheet := *p.Hardware[0].Sheet
	sheet.Drawers = []model.DrawerHeight{{Name: "low", SideTop: 148 * mm, Holes: sheet.Drawers[0].Holes}}
	p.Hardware[0].Sheet = &sheet
	f := &plan.Make(p).Fronts[1]
	same(t, "top edge of the front", f.Face.Max.Y, 338*mm)
	same(t, "limit", f.Drawer.Limit, 341*mm)
	same(t, "room above", f.Drawer.RoomAbove, -25*mm)
	if f.Drawer.Above != plan.ChannelAbove {
		t.Errorf("above it is %v", f.Drawer.Above.Say())
	}
}

// A wide drawer at the bottom of two bays looks at both: at the partition that
// ends above it and at the niche in the bay that is not its own.
func TestASpanningDrawerLooksAtAllItsBays(t *testing.T) {
	p := spanProject()
	c := &p.Cabinets[0]
	c.Bays[0].Fronts = []model.Front{{Height: 250 * mm, Span: 2, Drawer: "low"}, {Share: 1}}
	c.Bays[1].Fronts = []model.Front{{Share: 1, Kind: model.OpenNiche}, {Share: 1}}
	got := plan.Make(p)
	wide, niche, over := &got.Fronts[0], &got.Fronts[2], &got.Fronts[3]
	if wide.Drawer.Above != plan.ShelfAbove {
		t.Errorf("above it is %v, want the niche's shelf", wide.Drawer.Above.Say())
	}
	same(t, "limit", wide.Drawer.Limit, niche.Face.Min.Y-19*mm)
	same(t, "floor of the drawer over the niche", over.Floor, niche.Face.Max.Y+19*mm)
}

// A niche that spans the bottom gives the drawers of both bays a shelf.
func TestADrawerOverASpanningNiche(t *testing.T) {
	p := spanProject()
	c := &p.Cabinets[0]
	c.Bays[0].Fronts = []model.Front{{Height: 250 * mm, Span: 2, Kind: model.OpenNiche}, {Share: 1}}
	c.Bays[1].Fronts = []model.Front{{Share: 1}}
	got := plan.Make(p)
	for _, k := range []int{1, 2} {
		f := &got.Fronts[k]
		same(t, "drop: the shelf's thickness less the gap", f.Drop, 16*mm)
	}
}

// Three fixed heights can't reach a line: that is the line's fault, not the
// stack's, which adds up.
func TestALineThatFixedHeightsMiss(t *testing.T) {
	p := tradeProject()
	p.Cabinets = append(p.Cabinets, p.Clone().Cabinets[0])
	p.Cabinets[0].Bays[0].Fronts[0] = model.Front{Name: "Low", Height: 200 * mm}
	p.Cabinets[1].Name = "B"
	p.Cabinets[1].Bays[0].Fronts = []model.Front{
		{Height: 250 * mm, LineUp: &model.LineUp{Cabinet: "A", Bay: 1, Front: "Low"}},
		{Share: 1},
	}
	got := plan.Make(p)
	if len(got.Problems) != 1 || got.Problems[0].Kind != plan.LineUpNoRoom || got.Problems[0].Amount.Abs() != 50*mm {
		t.Errorf("problems: %+v, want a line missed by 50 mm", got.Problems)
	}
	if over := got.Cabinets[1].Bays[0].Over; over != 0 {
		t.Errorf("the stack is over by %v", over)
	}
}

// A line-up without a cabinet means its own.
func TestLineUpInItsOwnCabinet(t *testing.T) {
	p := spanProject()
	c := &p.Cabinets[0]
	c.Bays[0].Fronts = []model.Front{{Name: "Low", Height: 200 * mm}, {Share: 1}}
	c.Bays[1].Fronts = []model.Front{{Share: 1, LineUp: &model.LineUp{Front: "Low"}}, {Share: 1}}
	got := plan.Make(p)
	same(t, "top edge", got.Fronts[2].Face.Max.Y, got.Fronts[0].Face.Max.Y)
}
