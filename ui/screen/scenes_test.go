package screen

import (
	"flag"
	"fmt"
	"image/png"
	"os"
	"path/filepath"
	"strings"
	"testing"

	"fyne.io/fyne/v2"
	"fyne.io/fyne/v2/test"

	"frontlay/assets"
	"frontlay/layout"
	"frontlay/layout/projecttest"
	"frontlay/layout/view"
	"frontlay/model"
	"frontlay/model/length"
	"frontlay/model/message"
	"frontlay/ui/look"
	"frontlay/ui/session"
)

var pictures = flag.String("pictures", "", "write every scene of the lettering test that is asked for by -run as a picture into this folder")

// scene is a project whose views are painted.
type scene struct {
	name    string
	project *model.Project
}

// scenes are the demo, every project of the tests that is wrong in some way or
// has everything, and runs that are hard to letter.
func scenes(t testing.TB) []scene {
	t.Helper()
	all := []scene{{"demo", projecttest.Demo(t)}}
	root := filepath.Join("..", "..", "testdata")
	for _, pattern := range []string{"projects/*.yaml", "rules/*/flagged.yaml"} {
		files, err := filepath.Glob(filepath.Join(root, pattern))
		if err != nil || len(files) == 0 {
			t.Fatalf("no projects at %s: %v", pattern, err)
		}
		for _, file := range files {
			name, _ := filepath.Rel(root, file)
			all = append(all, scene{strings.TrimSuffix(strings.ReplaceAll(filepath.ToSlash(name), "/", "-"), ".yaml"), projecttest.Read(t, file)})
		}
	}
	return append(all,
		scene{"run of 100 fronts", cabinets(t, 20, 900, 900, 5)},
		scene{"low fronts", cabinets(t, 2, 500, 760, 12)},
		scene{"narrow cabinets", cabinets(t, 6, 300, 720, 4)},
		scene{"cabinets of 400", cabinets(t, 12, 400, 720, 3)},
		scene{"locked", locked(projecttest.Demo(t))},
		scene{"locked narrow cabinets", locked(cabinets(t, 6, 300, 720, 4))},
		scene{"locked wide", locked(cabinets(t, 2, 1200, 720, 6))},
	)
}

// locked is a project with all its fronts locked at their heights.
func locked(p *model.Project) *model.Project {
	for _, c := range p.Cabinets {
		for _, b := range c.Bays {
			for i := range b.Fronts {
				b.Fronts[i].Locked = true
			}
		}
	}
	return p
}

// cabinets is a run of like cabinets with so many equal fronts each, on the
// demo's boards and hardware.
func cabinets(t testing.TB, n int, width, height int64, fronts int) *model.Project {
	p := projecttest.Demo(t)
	one := p.Cabinets[0]
	hardware := one.Bays[0].Hardware
	p.Cabinets = nil
	for i := range n {
		c := one
		c.Name = fmt.Sprintf("Cabinet %d", i+1)
		c.Width, c.Height = length.MM(width), length.MM(height)
		c.Bays = []model.Bay{{Hardware: hardware}}
		for j := range fronts {
			c.Bays[0].Fronts = append(c.Bays[0].Fronts, model.Front{Name: fmt.Sprintf("Shelf %d", j+1), Share: 1, Drawer: model.DrawerAuto})
		}
		p.Cabinets = append(p.Cabinets, c)
	}
	return p
}

// manner is how a scene is shown.
type manner struct {
	name  string
	unit  length.Unit
	large bool
	say   message.Language
}

func manners(t testing.TB) []manner {
	data, ok := assets.Translation("de")
	if !ok {
		t.Fatal("there is no German")
	}
	german, err := message.ReadCatalogue(data)
	if err != nil {
		t.Fatal(err)
	}
	return []manner{
		{name: "mm", unit: length.UnitMM},
		{name: "mm large", unit: length.UnitMM, large: true},
		{name: "inches", unit: length.UnitInch},
		{name: "German large", unit: length.UnitMM, large: true, say: message.Language{Catalogue: german, Comma: message.DecimalComma(german)}},
	}
}

// stage shows scenes in a window of the usual size of a laptop's drawing.
type stage struct {
	t      testing.TB
	screen *Screen
	window fyne.Window
	theme  *look.Theme
	say    message.Language
}

func newStage(t testing.TB) *stage {
	s := &stage{t: t, theme: &look.Theme{Mode: look.LightMode}}
	test.NewTempApp(t)
	fyne.CurrentApp().Settings().SetTheme(s.theme)
	empty := session.New(&model.Project{}, layout.Solve)
	s.screen = New(empty, func() message.Language { return s.say })
	s.window = test.NewTempWindow(t, s.screen)
	s.window.SetPadded(false)
	s.window.Resize(fyne.NewSize(960, 600))
	return s
}

// show puts a scene on the stage.
func (s *stage) show(sc scene, m manner) {
	if s.theme.Large != m.large {
		s.theme.Large = m.large
		fyne.CurrentApp().Settings().SetTheme(s.theme)
	}
	sc.project.Unit = m.unit
	s.say = m.say
	s.say.Unit = m.unit
	s.screen.Watch(session.New(sc.project, layout.Solve))
}

// keep writes what is shown as a picture, where one is asked for.
func (s *stage) keep(name string) {
	if *pictures == "" {
		return
	}
	name = strings.NewReplacer(" ", "-", ",", "", "/", "-").Replace(name) + ".png"
	f, err := os.Create(filepath.Join(*pictures, name))
	if err != nil {
		s.t.Fatal(err)
	}
	defer f.Close()
	if err := png.Encode(f, s.window.Canvas().Capture()); err != nil {
		s.t.Fatal(err)
	}
}

// views shows every view of the scene on the stage, each at three zooms, and
// calls see for each with its name. Of long runs the first fronts stand for all.
func (s *stage) views(see func(name string)) {
	c := s.screen
	pl := c.session.Result().Plan
	zooms := func(name string) {
		for _, z := range []struct {
			name   string
			factor float64
		}{{"fit", 1}, {"2x", 2}, {"0.5x", 0.5}} {
			c.Fit()
			if z.factor != 1 {
				c.Zoom(z.factor)
			}
			see(name + ", " + z.name)
		}
	}
	c.session.Select()
	c.ShowPicture(Elevation)
	for _, through := range []bool{false, true} {
		c.SetSeeThrough(through)
		for _, silent := range []bool{true, false} {
			name := map[bool]string{false: "elevation", true: "see-through"}[through]
			if silent {
				name += " without findings"
			}
			if silent {
				c.drawing = view.Elevation(pl, view.ElevationOptions{SeeThrough: through})
			} else {
				c.drawing = nil
			}
			zooms(name)
		}
	}
	c.drawing = nil
	rulers := func(name string) {
		if !s.theme.Large { // once for each unit is enough
			c.SetRulers(true)
			zooms(name + " with rulers")
			c.SetRulers(false)
		}
	}
	rulers("see-through")
	const first = 12
	for i := range pl.Fronts {
		f := &pl.Fronts[i]
		if i >= first {
			break
		}
		c.session.Select(session.Front(f.Place))
		if f.Place.Front == 0 {
			c.ShowPicture(Section)
			zooms(fmt.Sprintf("section at %d", f.Number))
			rulers(fmt.Sprintf("section at %d", f.Number))
		}
		c.ShowPicture(RearFace)
		zooms(fmt.Sprintf("rear %d", f.Number))
		c.ShowPicture(DrawerPlan)
		zooms(fmt.Sprintf("plan %d", f.Number))
	}
	c.session.Select()
	c.ShowPicture(Elevation)
}
