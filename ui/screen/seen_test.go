package screen

import (
	"image"
	"image/color"
	"math"
	"path/filepath"
	"testing"

	"fyne.io/fyne/v2"
	"fyne.io/fyne/v2/container"
	"fyne.io/fyne/v2/driver/software"

	"frontlay/layout"
	"frontlay/layout/check"
	"frontlay/layout/drawing"
	"frontlay/layout/mark"
	"frontlay/layout/plane"
	"frontlay/layout/projecttest"
	"frontlay/model"
	"frontlay/model/length"
	"frontlay/ui/look"
	"frontlay/ui/paint"
	"frontlay/ui/session"
)

// leastChanged is how many pixels of a place the mark of a finding changes at least.
const leastChanged = 150

// looks are the modes in which every mark must be seen.
var looks = []look.Mode{look.LightMode, look.DarkMode, look.ContrastMode}

// Each rule marks what it finds where it speaks of it: the picture with the
// finding chosen differs at its places from the one in which another or none is,
// in every look.
func TestEveryRuleIsSeen(t *testing.T) {
	st := newStage(t)
	st.window.Resize(fyne.NewSize(340, 280))
	c := st.screen
	for _, r := range check.Rules() {
		t.Run(r.Name, func(t *testing.T) {
			project := flagged(t, r.Name)
			for _, mode := range looks {
				st.look(mode)
				st.show(scene{project: project}, manners(t)[0])
				c.session.ChooseFinding(0)
				places := c.painter().chosenPlaces()
				chosen := st.window.Canvas().Capture()
				c.session.ChooseFinding(-1)
				found := st.window.Canvas().Capture()
				c.session = session.New(project, func(p *model.Project) layout.Result {
					r := layout.Solve(p)
					r.Findings = nil
					return r
				})
				c.drawing = nil
				c.repaint()
				without := st.window.Canvas().Capture()
				if len(places) == 0 {
					t.Fatal("no place is marked")
				}
				for name, other := range map[string]image.Image{"not chosen": found, "not found": without} {
					if n := changed(chosen, other, places); n < leastChanged {
						t.Errorf("mode %d: the places %v differ in %d pixels from where it is %s", mode, places, n, name)
					}
				}
			}
		})
	}
}

// flagged is the project that breaks a rule and nothing else.
func flagged(t *testing.T, rule string) *model.Project {
	t.Helper()
	return projecttest.Read(t, filepath.Join("..", "..", "testdata", "rules", rule, "flagged.yaml"))
}

func (s *stage) look(m look.Mode) {
	s.theme.Mode = m
	fyne.CurrentApp().Settings().SetTheme(s.theme)
}

// changed counts the pixels of some places, with a little around them, in which two
// pictures differ to the eye.
func changed(a, b image.Image, places []box) int {
	n := 0
	for y := a.Bounds().Min.Y; y < a.Bounds().Max.Y; y++ {
		for x := a.Bounds().Min.X; x < a.Bounds().Max.X; x++ {
			for _, at := range places {
				if at = at.Grown(6, 6); float32(x) >= at.X1 && float32(x) < at.X2 && float32(y) >= at.Y1 && float32(y) < at.Y2 {
					if differ(a.At(x, y), b.At(x, y)) {
						n++
					}
					break
				}
			}
		}
	}
	return n
}

func differ(a, b color.Color) bool {
	const seen = 0x1800 // of 0xFFFF
	r1, g1, b1, _ := a.RGBA()
	r2, g2, b2, _ := b.RGBA()
	far := func(v, w uint32) bool { return max(v, w)-min(v, w) > seen }
	return far(r1, r2) || far(g1, g2) || far(b1, b2)
}

// Somebody who does not see red and green tells the severities of a mark apart by
// its shape: in the luminance of the picture as such an eye sees it each shape
// looks another way for each severity, in every look.
func TestSeveritiesAreToldWithoutColour(t *testing.T) {
	st := newStage(t)
	severities := []drawing.Severity{drawing.OfError, drawing.OfWarning, drawing.OfAdvice}
	for _, mode := range looks {
		st.look(mode)
		for shape := mark.Band; shape <= mark.Reach; shape++ {
			for _, chosen := range []bool{false, true} {
				var seen [][]float64
				for _, s := range severities {
					seen = append(seen, inked(spotted(shape, s, chosen)))
				}
				for i := range seen {
					for k := range seen[:i] {
						n := 0
						for j := range seen[i] {
							if math.Abs(seen[i][j]-seen[k][j]) > 0.5 {
								n++
							}
						}
						if n < leastTold {
							t.Errorf("mode %d: %v, chosen %v: severities %d and %d differ in %d pixels of their pattern", mode, shape, chosen, severities[i], severities[k], n)
						}
					}
				}
			}
		}
	}
}

// leastTold is in how many pixels the patterns of two severities differ at least.
const leastTold = 40

// spotted paints one mark on the ground of a front.
func spotted(shape mark.Shape, s drawing.Severity, chosen bool) image.Image {
	const scale, wide, high = 1, 160, 60
	const mm = length.Millimetre
	r := plane.R(30*mm, 25*mm, 130*mm, 35*mm)
	switch shape {
	case mark.Edge, mark.Reach:
		r = plane.R(30*mm, 30*mm, 130*mm, 30*mm)
	case mark.Ring:
		r = plane.R(75*mm, 25*mm, 85*mm, 35*mm)
	}
	d := &drawing.Drawing{}
	d.Add(&drawing.Spot{Tag: drawing.Tag{Meaning: drawing.FindingMark, Severity: s}, Shape: shape, Rect: r, Chosen: chosen})
	var stock paint.Stock
	p := paint.New(d, paint.Lens{Scale: scale, Y: high}, fyne.NewSize(wide, high), 1, &stock)
	p.Surface(boxOf(0, 0, wide, high), p.Palette.Maple, color.NRGBA{}, 0)
	p.Marks()
	p.Chosen()
	c := software.NewCanvas()
	c.SetPadded(false)
	c.SetContent(container.NewWithoutLayout(p.Objects...))
	c.Resize(fyne.NewSize(wide, high))
	return c.Capture()
}

// inked is where a picture has the ink of a mark, to an eye that does not see red
// and green: 1 for what differs most from the ground in luminance, 0 for the
// ground.
func inked(i image.Image) []float64 {
	b := i.Bounds()
	ground := luminance(i.At(b.Min.X, b.Min.Y))
	var all []float64
	most := 0.0
	for y := b.Min.Y; y < b.Max.Y; y++ {
		for x := b.Min.X; x < b.Max.X; x++ {
			d := math.Abs(luminance(i.At(x, y)) - ground)
			all, most = append(all, d), max(most, d)
		}
	}
	for k := range all {
		all[k] /= max(most, 1e-9)
	}
	return all
}

// luminance is that of a colour as an eye without the cones for middle wavelengths
// sees it: red and green become one (Viénot, Brettel, Mollon, "Digital video
// colourmaps for checking the legibility of displays by dichromats", 1999; the
// matrix and the gamma of 2.2 from memory), weighed as in WCAG's relative
// luminance.
func luminance(c color.Color) float64 {
	linear := func(v uint32) float64 { return math.Pow(float64(v)/0xFFFF, 2.2) }
	r, g, b, _ := c.RGBA()
	red, green, blue := linear(r), linear(g), linear(b)
	yellow := 0.29275*red + 0.70725*green
	blue = -0.02234*red + 0.02234*green + blue
	return 0.2126*yellow + 0.7152*yellow + 0.0722*max(blue, 0)
}
