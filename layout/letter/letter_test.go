package letter_test

import (
	"flag"
	"os"
	"path/filepath"
	"testing"

	"frontlay/layout"
	"frontlay/layout/drawing"
	"frontlay/layout/letter"
	"frontlay/layout/lettering"
	"frontlay/layout/plane"
	"frontlay/layout/projecttest"
	"frontlay/layout/view"
	"frontlay/model"
	"frontlay/model/length"
	"frontlay/model/message"
)

var update = flag.Bool("update", false, "write the goldens anew")

// screenLetters measures letters as a screen has them: in one size of capitals for
// each height on paper, about as wide as those of the font that ships with Fyne.
type screenLetters struct{ text float64 }

func (m screenLetters) Sizes(paper length.Length) []float64 {
	const capitals = 0.714 // of the size of letters, from the metrics of that font
	if paper < 3*length.Millimetre {
		return []float64{0.9 * m.text * capitals}
	}
	return []float64{m.text * capitals}
}

func (m screenLetters) Width(s string, size float64, bold bool) float64 {
	return 1.08 * lettering.OnPaper{}.Width(s, size, bold)
}

func (m screenLetters) Reach(s string, size float64) (above, below float64) {
	return lettering.OnPaper{}.Reach(s, size)
}

func demo(t *testing.T) layout.Result {
	t.Helper()
	return layout.Solve(projecttest.Demo(t))
}

// renderer is how a picture is asked for.
type renderer struct {
	name    string
	metrics letter.Metrics
	style   letter.Style
	width   float64 // of the picture, in its units
	height  float64
	beside  float64 // what dimensions take at each side
}

func renderers() []renderer {
	return []renderer{
		{"screen", screenLetters{13}, letter.Style{Head: 4, Half: 4, Past: 4, Gap: 4, Figure: lettering.Small, StepX: 40, StepY: 28, Edge: 20}, 1050, 640, 110},
		{"paper", lettering.OnPaper{}, letter.Style{Above: true, Head: 2.5, Half: 0.33, Arrows: true, Past: 1.5, Gap: 0.9, Figure: lettering.Small, Lines: true, StepX: 8, StepY: 8}, 277, 184, 45},
	}
}

// picture places a drawing so that it fills the picture of a renderer.
func (r renderer) picture(d *drawing.Drawing, say message.Language) *letter.Picture {
	p := letter.New(r.metrics, r.style, say, letter.Box{Hi: letter.Point{X: r.width, Y: r.height}})
	b := d.Bounds()
	k := min((r.width-2*r.beside)/b.Width().MM(), (r.height-2*r.beside)/b.Height().MM())
	p.Add(d, letter.Placing{At: func(q plane.Point) letter.Point {
		return letter.Point{X: r.beside + (q.X-b.Min.X).MM()*k, Y: r.beside + (q.Y-b.Min.Y).MM()*k}
	}})
	return p
}

// Where letters stand, on a screen and on paper, is as looked at and kept.
func TestGoldens(t *testing.T) {
	r := demo(t)
	s := r.Plan.Fronts[3].Sheet
	for name, d := range map[string]*drawing.Drawing{
		"elevation":   view.Elevation(r.Plan, view.ElevationOptions{}),
		"see-through": view.Elevation(r.Plan, view.ElevationOptions{SeeThrough: true}),
		"section":     view.Section(r.Plan, model.Place{Front: -1}),
		"rear-face":   view.Rear(&r.Plan.Fronts[3]),
		"drawer-plan": view.DrawerPlan(r.Plan, &r.Plan.Fronts[3]),
		"hardware":    view.HardwareFront(s, view.HardwareOptions{Drawer: 1, Runner: 1}),
	} {
		for _, on := range renderers() {
			t.Run(name+" on "+on.name, func(t *testing.T) {
				got := on.picture(d, message.Language{}).Write().Dump()
				file := filepath.Join("testdata", name+"-"+on.name+".txt")
				if *update {
					if err := os.WriteFile(file, []byte(got), 0o666); err != nil {
						t.Fatal(err)
					}
				}
				want, err := os.ReadFile(file)
				if err != nil {
					t.Fatal(err)
				}
				if got != string(want) {
					t.Errorf("it differs from %s; look at it and run with -update:\n%s", file, got)
				}
			})
		}
	}
}
