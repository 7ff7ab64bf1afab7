package paint

import (
	"image"
	"image/color"
	"math"
	"sync"
)

// Sides of the tile from which grain is cut, in pixels: along the grain and
// across it. The tile repeats without a seam.
const (
	alongTile  = 1024
	acrossTile = 512
)

// grainDepth is how much lighter or darker grain makes a board at most, in parts
// of full lightness.
const grainDepth = 0.03

// A streak of grain is so many pixels long and wide; finer ones, each of half the
// size and weight of the one before, lie over it.
const (
	streakLength = 256
	streakWidth  = 8
	octaves      = 3
)

// tile is the lightness of grain, -127 to 127 for the whole of its depth, row by
// row along the grain. It is the same at each start.
var tile = sync.OnceValue(func() *[acrossTile][alongTile]int8 {
	var sum [acrossTile][alongTile]float32
	weight, length, width := float32(1), streakLength, streakWidth
	for octave := range octaves {
		stretched(&sum, weight, length, width, uint32(octave))
		weight, length, width = weight/2, length/2, width/2
	}
	least, most := sum[0][0], sum[0][0]
	for y := range sum {
		for _, v := range sum[y] {
			least, most = min(least, v), max(most, v)
		}
	}
	var t [acrossTile][alongTile]int8
	for y := range sum {
		for x, v := range sum[y] {
			t[y][x] = int8(254*(v-least)/(most-least) - 127)
		}
	}
	return &t
})

// stretched adds noise to a tile: a random figure at each corner of cells so long
// and wide, and between corners what lies smoothly between their figures.
func stretched(sum *[acrossTile][alongTile]float32, weight float32, length, width int, seed uint32) {
	columns, rows := alongTile/length, acrossTile/width
	corner := func(row, column int) float32 {
		return scattered(seed, uint32(row%rows), uint32(column%columns))
	}
	ease := func(i, n int) float32 {
		f := float64(i) / float64(n)
		return float32(f * f * (3 - 2*f))
	}
	line := make([]float32, columns+1)
	for y := range acrossTile {
		row, down := y/width, ease(y%width, width)
		for c := range line {
			a, b := corner(row, c), corner(row+1, c)
			line[c] = a + (b-a)*down
		}
		for x := range alongTile {
			a, b := line[x/length], line[x/length+1]
			sum[y][x] += weight * (a + (b-a)*ease(x%length, length))
		}
	}
}

// scattered gives a figure from 0 to 1 that looks random for each place.
func scattered(seed, row, column uint32) float32 {
	h := seed*0x9E3779B9 ^ row*0x85EBCA6B ^ column*0xC2B2AE35
	h ^= h >> 15
	h *= 0x2C1B3C6D
	h ^= h >> 12
	h *= 0x297A2D39
	h ^= h >> 15
	return float32(h) / math.MaxUint32
}

// cut is from which place of the tile a board is cut, along the grain and across
// it.
type cut struct{ x, y int }

// grained paints the part of a board that is shown.
func grained(img *image.RGBA, s spec) {
	var shades [256]color.RGBA
	for i := range shades {
		shades[i] = opaqueOf(lightened(s.wood.Base, grainDepth*float64(i-127)/127*s.wood.Figure))
	}
	grain := tile()
	w, h := img.Rect.Dx(), img.Rect.Dy()
	for y := range h {
		row := img.Pix[y*img.Stride : y*img.Stride+4*w]
		down := y + s.shown.Min.Y
		for x := range w {
			right := x + s.shown.Min.X
			along, across := right+s.from.x, down+s.from.y
			if s.wood.Upright {
				along, across = down+s.from.y, right+s.from.x
			}
			c := shades[int(grain[across&(acrossTile-1)][along&(alongTile-1)])+127]
			row[4*x], row[4*x+1], row[4*x+2], row[4*x+3] = c.R, c.G, c.B, c.A
		}
	}
}

func opaqueOf(c color.NRGBA) color.RGBA { return color.RGBA{R: c.R, G: c.G, B: c.B, A: 255} }

// lightened adds a part of full lightness to a colour.
func lightened(c color.NRGBA, by float64) color.NRGBA {
	add := func(v uint8) uint8 { return uint8(min(max(math.Round(float64(v)+255*by), 0), 255)) }
	return color.NRGBA{R: add(c.R), G: add(c.G), B: add(c.B), A: c.A}
}

// mixed is a colour with a share of another in it.
func mixed(a, b color.NRGBA, share float64) color.NRGBA {
	mix := func(x, y uint8) uint8 { return uint8(math.Round(float64(x) + share*(float64(y)-float64(x)))) }
	return color.NRGBA{R: mix(a.R, b.R), G: mix(a.G, b.G), B: mix(a.B, b.B), A: a.A}
}
