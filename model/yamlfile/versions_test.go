package yamlfile_test

import (
	"fmt"
	"os"
	"path/filepath"
	"testing"

	"frontlay/model"
	"frontlay/model/figure"
	"frontlay/model/yamlfile"
)

// A file of every version is kept in testdata/versions; what it says must stay
// the same however the format changes. The facts are written out by hand.
func TestFilesOfEveryVersionReadTheSameForEver(t *testing.T) {
	kept := 0
	for version, want := range map[int]string{
		1: `Everything mm 0.5 mm top main:"sample-a" boxes:"sample-b" own:"" 18 mm 22 mm 8 mm true 32 mm Left 900 mm 900 mm 600 mm 100 mm 40 mm 30 mm ` +
			`2 bays 400 mm 25 mm 3 fronts Low 300 mm deep 24 mm 450 mm 128 mm / Wide 2 only / Carried in the project 12.7 mm 457.2 mm /   `,
		2: `Everything mm 0.5 mm top main:"sample-a" boxes:"sample-b" own:"" built:"" 18 mm 22 mm 8 mm true 32 mm Left 900 mm 900 mm 600 mm 100 mm 40 mm 30 mm ` +
			`2 bays 400 mm 25 mm 3 fronts Low 300 mm deep 24 mm 450 mm 128 mm / Wide 2 only / Carried in the project 12.7 mm 457.2 mm / ` +
			`oak frames grips front / oak frames 20 mm 720 frame 60 mm 55 mm 70 mm 12 mm 8 mm 6 mm 9 mm / grips 22 mm grip bottom 28 mm 12 mm`,
	} {
		name := fmt.Sprintf("../../testdata/versions/project-%d.yaml", version)
		data, err := os.ReadFile(name)
		if err != nil {
			t.Fatal(err)
		}
		f, err := yamlfile.Read(name, data, samples, limits)
		if err != nil {
			t.Errorf("%v", err)
			continue
		}
		if got := facts(f.Project); got != want {
			t.Errorf("version %d says\n%s\nand said\n%s", version, got, want)
		}
		if version == 2 && later(f.Project) != want2 {
			t.Errorf("version %d says also\n%s\nand said\n%s", version, later(f.Project), want2)
		}
		if _, err := f.Write(f.Project); err != nil {
			t.Errorf("version %d: %v", version, err)
		}
		kept++
	}
	if kept != figure.ProjectVersion {
		t.Errorf("%d files for %d versions", kept, figure.ProjectVersion)
	}
}

func facts(p *model.Project) string {
	c := p.Cabinets[0]
	a, b := c.Bays[0], c.Bays[1]
	low, wide, own := a.Fronts[0], b.Fronts[0], p.Sheet("own")
	rest := map[model.RestTo]string{model.RestBottom: "bottom", model.RestTop: "top"}[p.Rounding.Rest]
	s := fmt.Sprint(p.Title, " ", p.Unit, " ", p.Rounding.Step, " ", rest)
	for _, u := range p.Hardware {
		s += fmt.Sprintf(" %s:%q", u.Name, u.Source)
	}
	s += fmt.Sprint(" ", p.Boards.Carcass.Thickness, " ", p.Boards.Front.Thickness, " ", p.Boards.Back.Thickness, " ", p.SharedGaps, " ", p.HoleRows.Pitch)
	s += fmt.Sprint(" ", c.Name, " ", c.Width, " ", c.Height, " ", c.Depth, " ", c.Plinth, " ", c.Worktop, " ", c.Channel.Height)
	s += fmt.Sprint(" ", len(c.Bays), " bays ", a.Width, " ", a.Partition, " ", len(a.Fronts), " fronts")
	s += fmt.Sprint(" ", low.Name, " ", low.Height, " ", low.Drawer, " ", *low.Drop, " ", low.Runner, " ", low.Handle.Spacing)
	s += fmt.Sprint(" / ", wide.Name, " ", wide.Share, " ", wide.Drawer)
	s += fmt.Sprint(" / ", own.Name, " ", own.SideClearance, " ", own.Runner.Lengths[0].Length)
	s += fmt.Sprint(" / ", p.Board, " ", c.Board, " ", low.Board)
	for _, b := range p.Boards.Fronts {
		switch o := b.Build; o.Kind {
		case model.Frame:
			s += fmt.Sprint(" / ", b.Name, " ", b.Thickness, " ", b.Density, " frame ", o.Stile, " ", o.TopRail, " ", o.BottomRail, " ", o.Tenon, " ", o.Panel.Thickness, " ", o.Panel.Recess, " ", o.Panel.Groove)
		case model.GripEdged:
			s += fmt.Sprint(" / ", b.Name, " ", b.Thickness, " grip ", []string{"top", "bottom"}[o.Edge], " ", o.Height, " ", o.Left)
		}
	}
	return s
}

// want2 is what format 2 says that 1 could not.
const want2 = `2026-07 The pottery studio (invented) nobody B / saw 3.2 mm 8 mm stock 2500 mm 1250 mm edging 0.9 / air {35 22 0} {65 0 0} {0 0 9} sugar maple pear 0.003 / process 1 0.4 mm 0.3 mm within 0.8 mm / niche {960 mm 963 mm 962 mm} {1050 mm 1049 mm 1048 mm} 1421 mm -3 mm 1 mm / tipping 30 1 950 mm 6 40 mm rail 20 mm 80 mm back 6 mm 12 mm left 22 mm / handles 2 true 90 mm 600 mm 60 mm true / measured {401 mm 400.5 mm 402 mm} {864 mm 864 mm 863 mm} 953 mm 951.5 mm 1.5 mm -0.5 mm {402 mm 401 mm 402 mm} 0.5 mm / as built 1.5 mm 3.5 mm 3 mm turns 0.79375 mm 1.5875 mm 1.5875 mm / high 4 mm 30 mm 70 mm / door 3 1 &{30 mm 31 mm} inner 20 mm only 457.2 mm 3 packing {12 mm 8 mm} / box 13 mm 16 mm 5 mm 6 mm beech`

func later(p *model.Project) string {
	c := p.Cabinets[0]
	a, b := c.Bays[0], c.Bays[1]
	low, high, wide, door := a.Fronts[0], a.Fronts[2], b.Fronts[0], b.Fronts[1]
	in, built, m, own := door.Inner[0], p.Sheet("built"), a.Measured, p.Sheet("own")
	return fmt.Sprint(p.Number, " ", p.Client, " ", p.DrawnBy, " ", p.Revision,
		" / saw ", p.Saw.Kerf, " ", p.Saw.Trim, " stock ", p.Boards.Carcass.Stock.Length, " ", p.Boards.Carcass.Stock.Width, " edging ", p.Boards.Carcass.Edging.Price,
		" / air ", p.Climate.Driest, p.Climate.Dampest, p.Climate.Today, " ", p.Boards.Front.Species, " ", p.Species[0].Name, " ", p.Species[0].Tangential,
		" / process ", p.Process.Drilling, " ", *p.Process.Cutting, " ", *p.Process.Connector, " within ", *p.Process.Within,
		" / niche ", p.Niche.Widths, p.Niche.Heights, " ", p.Niche.Rising, " ", *p.Niche.PlumbRight, " ", p.Niche.Within,
		" / tipping ", p.TippingLoad, " ", c.Base.Stands, " ", c.Base.FixedAt, " ", c.Base.FeetCount, " ", c.Base.Setback, " rail ", c.Rail.Height, " ", c.Rail.Depth, " back ", c.Back.Depth, " ", c.Back.Setback, " left ", c.Left.Side,
		" / handles ", p.Handle.Count, " ", p.Handle.Upright, " ", p.Handle.FromBottom, " ", c.Handle.OnLine, " ", low.Handle.FromTop, " ", wide.Handle.None,
		" / measured ", m.Widths, m.Heights, " ", m.Rising, " ", m.Falling, " ", *m.PlumbLeft, " ", *m.Level, " ", m.Back, " ", m.Within,
		" / as built ", *low.AsBuilt.Below.First, " ", *low.AsBuilt.Above.Second, " ", *low.AsBuilt.Right.First, " turns ", own.Connector.PerTurn, " ", own.Connector.PerTurnSide, " ", own.Connector.Play,
		" / high ", *high.GapAbove, " ", high.Channel.Height, " ", high.Rail.Depth,
		" / door ", door.Kind, " ", door.Hinged, " ", door.Packing, " inner ", in.Up, " ", in.Drawer, " ", in.Runner, " ", in.Contents.Weight, " packing ", b.Packing,
		" / box ", built.Box.Sides, " ", built.Box.Front, " ", built.Box.Joint, " ", built.Box.GrooveDepth, " ", built.Box.Material)
}

func TestSheetsOfEveryVersionReadTheSameForEver(t *testing.T) {
	files, err := filepath.Glob("../../testdata/versions/hardware-*.yaml")
	if err != nil || len(files) != figure.SheetVersion {
		t.Fatalf("%d files for %d versions, %v", len(files), figure.SheetVersion, err)
	}
	for _, name := range files {
		data, err := os.ReadFile(name)
		if err != nil {
			t.Fatal(err)
		}
		s, err := yamlfile.ReadSheet(name, data)
		if err != nil {
			t.Errorf("%v", err)
			continue
		}
		got := fmt.Sprint(s.Name, " ", s.SideClearance, " ", s.Connector.Inset, " ", len(s.Runner.Lengths), " ", s.Runner.Lengths[3].Load, " ",
			s.Drawers[2].Name, " ", s.Drawers[2].Holes, s.Drawers[2].RailHoles, " ", s.Bottom.Underside, " ", s.Back.DeductWidth)
		if want := "Sample A, metal-sided drawers 12 mm 20 mm 4 60 tall [48 mm 80 mm] [128 mm 192 mm] 14 mm 74 mm"; got != want {
			t.Errorf("%s says\n%s\nand said\n%s", name, got, want)
		}
	}
}
