package paint

import (
	"image"
	"image/color"
	"testing"

	"frontlay/model"
	"frontlay/model/message"
	"frontlay/ui/look"
)

// palettes are all looks.
func palettes() map[string]look.Palette {
	return map[string]look.Palette{
		"light": look.Light(), "dark": look.Dark(), "contrast": look.Contrast(), "dark contrast": look.DarkContrast(),
	}
}

// Names and figures on a board have a contrast of at least 4.5:1 (WCAG 2.2,
// success criterion 1.4.3) with the lightest and the darkest of its grain.
func TestTextsOnWoodAreLegible(t *testing.T) {
	for name, p := range palettes() {
		boards := []string{"", "oak", "beech", "walnut", "pine", "birch", "white", "grey", "black"}
		for _, material := range boards {
			w := WoodOf(model.Board{Material: material}, message.Language{}, p)
			img := spec{wood: w, w: 300, h: 200, edge: 1, shown: image.Rect(0, 0, 300, 200)}.paint(300, 200).(*image.RGBA)
			lightest, darkest := w.Base, w.Base
			for y := 8; y < 192; y++ {
				for x := 8; x < 292; x++ {
					c := img.RGBAAt(x, y)
					if one := (color.NRGBA{R: c.R, G: c.G, B: c.B, A: 255}); one.G > lightest.G {
						lightest = one
					} else if one.G < darkest.G {
						darkest = one
					}
				}
			}
			g := Glass(w, p)
			for _, text := range []color.NRGBA{g.On, g.OnSoft} {
				if r := contrast(text, g.Base); r < 4.5 {
					t.Errorf("%s: %v on glass of %q has %.2f:1", name, text, material, r)
				}
			}
			for _, text := range []color.NRGBA{w.On, w.OnSoft} {
				least := min(contrast(text, lightest), contrast(text, darkest))
				if least < 4.5 {
					t.Errorf("%s: %v on %q has %.2f:1", name, text, material, least)
				}
			}
		}
	}
}

// A board is known by the word for its material, in the window's language or in
// English; in high contrast all are alike.
func TestMaterialsAreKnownByTheirWords(t *testing.T) {
	german := message.Language{Catalogue: map[string]string{"walnut": "Nussbaum, Nußbaum", "white": "weiß"}}
	p := look.Light()
	of := func(name string, say message.Language) color.NRGBA {
		return WoodOf(model.Board{Material: name}, say, p).Base
	}
	walnut := of("American black walnut, oiled", message.Language{})
	if walnut == p.Maple || walnut != of("Nußbaum furniert", german) || walnut != of("Walnut", german) {
		t.Error("walnut is not known")
	}
	if of("Spanplatte weiß", german) != of("white", message.Language{}) || of("sycamore", german) != p.Maple || of("", german) != p.Maple {
		t.Error("white, or what has no word, is not known")
	}
	if WoodOf(model.Board{Material: "walnut"}, german, look.Contrast()).Base != look.Contrast().Maple {
		t.Error("high contrast shows walnut")
	}
	if !WoodOf(model.Board{Grain: "vertical"}, german, p).Upright {
		t.Error("grain that is upright lies")
	}
}

// Grain makes a board lighter and darker by no more than 3 % of full lightness,
// and repeats without a seam: neighbours at the edge of the tile differ by no more
// than neighbours elsewhere.
func TestGrainIsFaintAndHasNoSeam(t *testing.T) {
	w := Maple(look.Light())
	s := spec{wood: w, w: alongTile + 20, h: acrossTile + 20, edge: 1}
	s.shown = image.Rect(0, 0, s.w, s.h)
	img := s.paint(s.w, s.h).(*image.RGBA)
	most, seam := 0, 0
	lightest, darkest := 0, 0
	for y := 2; y < s.h-2; y++ {
		for x := 2; x < s.w-3; x++ {
			a, b := int(img.RGBAAt(x, y).R), int(img.RGBAAt(x+1, y).R)
			step := max(a-b, b-a)
			if x+1 == alongTile {
				seam = max(seam, step)
			} else {
				most = max(most, step)
			}
			lightest, darkest = max(lightest, a-int(w.Base.R)), min(darkest, a-int(w.Base.R))
		}
	}
	if seam > most {
		t.Errorf("the seam steps by %d, grain elsewhere by %d", seam, most)
	}
	const depth = 8 // 3 % of 255, rounded up
	if lightest > depth || darkest < -depth || lightest-darkest < depth {
		t.Errorf("grain goes from %d to %d", darkest, lightest)
	}
}

// What is painted of a board is the same wherever the rest of it is cut off.
func TestAPartOfABoardIsThatPart(t *testing.T) {
	for _, p := range []part{board, panel, niche, plinth} {
		s := spec{part: p, wood: Maple(look.Light()), dark: look.Light().Niche, w: 400, h: 300, edge: 2, from: cut{-30, 17}}
		s.shown = image.Rect(0, 0, 400, 300)
		whole := s.paint(400, 300).(*image.RGBA)
		s.shown = image.Rect(256, 100, 400, 300)
		piece := s.paint(144, 200).(*image.RGBA)
		for y := range 200 {
			for x := range 144 {
				if piece.RGBAAt(x, y) != whole.RGBAAt(x+256, y+100) {
					t.Fatalf("part %d differs at %d, %d", p, x, y)
				}
			}
		}
	}
}

// BenchmarkBoard paints a front of usual size, which a step of a drag does twice.
func BenchmarkBoard(b *testing.B) {
	s := spec{wood: Maple(look.Light()), w: 330, h: 120, edge: 1, shown: image.Rect(0, 0, 330, 120)}
	for range b.N {
		s.paint(330, 120)
	}
}
