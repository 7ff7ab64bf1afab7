package yamlfile_test

import (
	"regexp"
	"strings"
	"testing"

	"frontlay/assets"
	"frontlay/model"
	"frontlay/model/length"
	"frontlay/model/yamlfile"
)

const commented = `# Built for the back room.

frontlay: 2

# what was ordered
title: Slip bench # as the order says
unit: mm
hardware: {main: sample-a}
boards:
  # the offcuts of last year
  carcass: {thickness: 19}
  front: {thickness: 22}

# gaps as everywhere in the studio
reveals: {left: 3, right: 3, top: 3, bottom: 3, gap: 3}
cabinets:
  # under the window
  - name: Clay
    width: 900-2*18 # measured twice
    height: 760
    depth: 560
    bays:
      - fronts:
          # heavy, stays at the bottom
          - {name: Slips, height: 320, drawer: tall}
          # the caster's
          - {name: Plaster, drawer: mid}

          - {name: Tools, drawer: low} # small

  # beside the door
  - name: Tools
    width: 500
    height: 760
    depth: 560
    bays:
      - fronts:
          - {name: Ribs, drawer: low}
# the end
`

func written(t *testing.T, change func(p *model.Project)) string {
	t.Helper()
	f, err := yamlfile.Read("commented.yaml", []byte(commented), samples, limits)
	if err != nil {
		t.Fatal(err)
	}
	p := f.Project.Clone()
	change(p)
	data, err := f.Write(p)
	if err != nil {
		t.Fatal(err)
	}
	g, err := yamlfile.Read("again.yaml", data, samples, limits)
	if err != nil {
		t.Fatal(err)
	}
	again, err := g.Write(g.Project)
	if err != nil || string(again) != string(data) {
		t.Errorf("%v: the second save differs:\n%s\nfrom\n%s", err, again, data)
	}
	return string(data)
}

// The whole text is compared, so that nothing else moves either.
func TestCommentsSurvive(t *testing.T) {
	cases := map[string]struct {
		change func(p *model.Project)
		edits  [][2]string // text of the file → text it becomes
	}{
		"nothing changed": {func(*model.Project) {}, nil},
		"a size and a title": {func(p *model.Project) {
			p.Title = "Slip bench, larger"
			p.Cabinets[0].Width = 900 * length.Millimetre
		}, [][2]string{{"Slip bench #", "Slip bench, larger #"}, {"900-2*18", "900"}}},
		"two fronts swapped": {func(p *model.Project) {
			f := p.Cabinets[0].Bays[0].Fronts
			f[0], f[1] = f[1], f[0]
		}, [][2]string{{`          # heavy, stays at the bottom
          - {name: Slips, height: 320, drawer: tall}
          # the caster's
          - {name: Plaster, drawer: mid}
`, `          # the caster's
          - {name: Plaster, drawer: mid}
          # heavy, stays at the bottom
          - {name: Slips, height: 320, drawer: tall}
`}}},
		"a front added below": {func(p *model.Project) {
			b := &p.Cabinets[0].Bays[0]
			b.Fronts = append([]model.Front{{Name: "New", Share: 2}}, b.Fronts...)
		}, [][2]string{{"          # heavy", "          - {name: New, share: 2}\n          # heavy"}}},
		"a front removed": {func(p *model.Project) {
			b := &p.Cabinets[0].Bays[0]
			b.Fronts = b.Fronts[1:]
		}, [][2]string{{"          # heavy, stays at the bottom\n          - {name: Slips, height: 320, drawer: tall}\n", ""}}},
		"a front renamed": {func(p *model.Project) {
			p.Cabinets[0].Bays[0].Fronts[1].Name = "Gypsum"
		}, [][2]string{{"Plaster", "Gypsum"}}},
		"cabinets swapped": {func(p *model.Project) {
			p.Cabinets[0], p.Cabinets[1] = p.Cabinets[1], p.Cabinets[0]
		}, [][2]string{{cabinetsOf(0) + cabinetsOf(1), cabinetsOf(1) + "\n" + strings.TrimSuffix(cabinetsOf(0), "\n")}}},
		"a cabinet added between": {func(p *model.Project) {
			c := p.Clone().Cabinets[1]
			c.Name = "Slabs"
			p.Cabinets = []model.Cabinet{p.Cabinets[0], c, p.Cabinets[1]}
		}, [][2]string{{"  # beside", "  - name: Slabs\n" + afterName(1) + "\n  # beside"}}},
		"a new key lands beside its neighbours": {func(p *model.Project) {
			p.Cabinets[0].Plinth = 90 * length.Millimetre
		}, [][2]string{{"    depth: 560\n", "    depth: 560\n    plinth: 90\n"}}},
		"a fixed height becomes a share": {func(p *model.Project) {
			f := &p.Cabinets[0].Bays[0].Fronts[0]
			f.Height, f.Share = 0, 2
		}, [][2]string{{"height: 320, drawer: tall", "share: 2, drawer: tall"}}},
	}
	for name, c := range cases {
		t.Run(name, func(t *testing.T) {
			want := commented
			for _, e := range c.edits {
				if !strings.Contains(want, e[0]) {
					t.Fatalf("the case has a mistake: %q", e[0])
				}
				want = strings.Replace(want, e[0], e[1], 1)
			}
			if got := written(t, c.change); got != want {
				t.Errorf("written:\n%s\nwanted:\n%s", got, want)
			}
		})
	}
}

func TestCommentsFollowWhatIsRenamedAndThenMoved(t *testing.T) {
	f, err := yamlfile.Read("commented.yaml", []byte(commented), samples, limits)
	if err != nil {
		t.Fatal(err)
	}
	p := f.Project.Clone()
	fronts := p.Cabinets[0].Bays[0].Fronts
	fronts[1].Name = "Gypsum"
	data, err := f.Write(p)
	if err != nil {
		t.Fatal(err)
	}
	if f, err = f.Adopt(p, data); err != nil {
		t.Fatal(err)
	}
	p = p.Clone()
	fronts = p.Cabinets[0].Bays[0].Fronts
	fronts[0], fronts[1] = fronts[1], fronts[0]
	if data, err = f.Write(p); err != nil {
		t.Fatal(err)
	}
	if want := "# the caster's\n          - {name: Gypsum,"; !strings.Contains(string(data), want) {
		t.Errorf("%q is not in\n%s", want, data)
	}
}

// afterName is what stands below the name of a cabinet.
func afterName(i int) string {
	_, text, _ := strings.Cut(cabinetsOf(i), "name: Tools\n")
	return text
}

func cabinetsOf(i int) string {
	from, to := strings.Index(commented, "  # under"), strings.Index(commented, "  # beside")
	if i == 1 {
		from, to = to, strings.Index(commented, "# the end")
	}
	return commented[from:to]
}

func TestInchesAreWrittenExactly(t *testing.T) {
	cases := map[string]struct {
		unit length.Unit
		size length.Length
		want string
	}{
		"a fraction":                   {length.UnitInch, 35*length.Inch + 7*4*length.Inch64th, "width: 35 7/16\n"},
		"whole inches":                 {length.UnitInch, 24 * length.Inch, "width: 24\n"},
		"no fraction of an inch":       {length.UnitInch, 600 * length.Millimetre, "width: 600 mm\n"},
		"a decimal":                    {length.UnitInchDecimal, 23*length.Inch + 32*length.Inch64th, "width: 23.5\n"},
		"no short decimal of an inch":  {length.UnitInchDecimal, 600*length.Millimetre + 1, "width: 600.000001 mm\n"},
		"centimetres, to a nanometre":  {length.UnitCM, 600*length.Millimetre + 1, "width: 60.0000001\n"},
		"millimetres, to a micrometre": {length.UnitMM, 600*length.Millimetre + 1000, "width: 600.001\n"},
	}
	for name, c := range cases {
		t.Run(name, func(t *testing.T) {
			got := written(t, func(p *model.Project) {
				p.Unit, p.Cabinets[0].Width = c.unit, c.size
			})
			if !strings.Contains(got, strings.TrimSuffix(c.want, "\n")+" # measured twice") {
				t.Errorf("no %q in\n%s", c.want, got)
			}
		})
	}
}

func TestASheetKeepsItsComments(t *testing.T) {
	for _, name := range assets.SheetNames() {
		sample, _ := assets.Sheet(name)
		data := regexp.MustCompile(`(?m)^ *#.*\n *screw_reach: .*\n`).ReplaceAll(sample, nil) // a key to add below
		if len(data) == len(sample) {
			t.Fatalf("%s has no screw_reach", name)
		}
		f, err := yamlfile.ReadSheetFile(name, data)
		if err != nil {
			t.Fatal(err)
		}
		got, err := f.Write(f.Sheet)
		if err != nil {
			t.Fatal(err)
		}
		if string(got) != string(data) {
			t.Errorf("%s unchanged is written as\n%s", name, got)
		}
		s := *f.Sheet
		s.Connector.Inset += length.Millimetre
		s.Runner.ScrewReach = 9 * length.Millimetre
		s.Drawers = append([]model.DrawerHeight{{Name: "flat", SideTop: 60 * length.Millimetre, Holes: []length.Length{20 * length.Millimetre}}}, s.Drawers...)
		if got, err = f.Write(&s); err != nil {
			t.Fatal(err)
		}
		for _, line := range strings.Split(string(data), "\n") {
			if c := strings.TrimSpace(line); strings.HasPrefix(c, "#") && !strings.Contains(string(got), c) {
				t.Errorf("%s: the comment %q is lost in\n%s", name, c, got)
			}
		}
		if !strings.Contains(string(got), "# How deep the runner's screws go into the carcass side.") {
			t.Errorf("%s: the new key has no comment:\n%s", name, got)
		}
	}
}
