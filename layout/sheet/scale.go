package sheet

import (
	"frontlay/layout/drawing"
	"frontlay/layout/plane"
	"frontlay/model/message"
)

// scales are the full size and the reductions of ISO 5455 (series from memory),
// the largest first.
var scales = [...]int64{1, 2, 5, 10, 20, 50, 100, 200}

// fit places a drawing in the middle of an area at the largest scale at which
// it fits, and gives the scale's denominator.
func fit(d *drawing.Drawing, area plane.Rect, say message.Language) (drawing.Placed, int64) {
	den := scales[len(scales)-1]
	var r plane.Rect
	for _, s := range scales {
		r = d.OnPaper(s, say)
		if r.Width() <= area.Width() && r.Height() <= area.Height() {
			den = s
			break
		}
	}
	at := area.Centre().Sub(r.Centre())
	return drawing.Placed{Drawing: d, At: at, ScaleNum: 1, ScaleDen: den}, den
}

func scaleText(den int64) message.Message { return message.New("SCALE 1:%v", den) }
