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
		2: `Everything mm 0.5 mm top main:"sample-a" boxes:"sample-b" own:"" 18 mm 22 mm 8 mm true 32 mm Left 900 mm 900 mm 600 mm 100 mm 40 mm 30 mm ` +
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
