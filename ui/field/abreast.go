package field

import (
	"fyne.io/fyne/v2"
	"fyne.io/fyne/v2/container"
	"fyne.io/fyne/v2/widget"
)

// Abreast puts objects side by side over the whole height, with a thin line between
// them. shares are how much of the width each gets, out of their sum; none is
// narrower than it needs where the others can give.
func Abreast(shares []float32, objects ...fyne.CanvasObject) *fyne.Container {
	var all []fyne.CanvasObject
	for i, o := range objects {
		if i > 0 {
			all = append(all, widget.NewSeparator())
		}
		all = append(all, o)
	}
	return container.New(&abreast{shares}, all...)
}

type abreast struct{ shares []float32 }

// Layout shares the width out.
func (a *abreast) Layout(o []fyne.CanvasObject, s fyne.Size) {
	line := float32(0)
	if len(o) > 1 {
		line = o[1].MinSize().Width
	}
	rest, sum := s.Width-line*float32(len(a.shares)-1), float32(0)
	for _, share := range a.shares {
		sum += share
	}
	wide := make([]float32, len(a.shares))
	// Those that need more than their share get that first, the others share what is
	// left; each round finds at least one more of the first, or all is shared.
	for range a.shares {
		tight := false
		for i, share := range a.shares {
			if least := o[2*i].MinSize().Width; wide[i] == 0 && least > rest*share/sum {
				wide[i], rest, sum, tight = least, rest-least, sum-share, true
			}
		}
		if !tight {
			break
		}
	}
	x := float32(0)
	for i, share := range a.shares {
		if wide[i] == 0 {
			wide[i] = rest * share / sum
		}
		o[2*i].Move(fyne.NewPos(x, 0))
		o[2*i].Resize(fyne.NewSize(wide[i], s.Height))
		x += wide[i]
		if 2*i+1 < len(o) {
			o[2*i+1].Move(fyne.NewPos(x, 0))
			o[2*i+1].Resize(fyne.NewSize(line, s.Height))
			x += line
		}
	}
}

// MinSize is the width of all and the greatest height.
func (a *abreast) MinSize(o []fyne.CanvasObject) fyne.Size {
	var s fyne.Size
	for _, one := range o {
		m := one.MinSize()
		s.Width += m.Width
		s.Height = max(s.Height, m.Height)
	}
	return s
}
