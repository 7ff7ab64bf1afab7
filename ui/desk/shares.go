package desk

// Names of the settings that are kept.
const (
	prefRulers  = "rulers"
	prefThrough = "see through"
	prefDown    = "height of the drawing"
	prefAcross  = "width of the drawing"
)

// shares is how much of the window's height and width the drawing has: what it had
// when the last window was closed. Large text wants wider panels, and has shares
// of its own.
func (d *Desk) shares() (down, across float64) {
	p, usualDown, usual := d.host.Preferences(), 0.68, 0.76 // room for three findings of two lines
	if d.host.Large() {
		usualDown, usual = 0.67, 0.7
	}
	return share(p.FloatWithFallback(d.pref(prefDown), usualDown)), share(p.FloatWithFallback(d.pref(prefAcross), usual))
}

// share keeps the drawing and the panels beside it from going out of sight.
func share(v float64) float64 { return min(max(v, 0.2), 0.95) }

// step is how far one press of a key moves the bars.
const step = 0.04

// move moves the bars between the drawing and its panels, as the pointer can, by
// shares of the window.
func (d *Desk) move(down, across float64) {
	d.Down.SetOffset(share(d.Down.Offset + down))
	d.Across.SetOffset(share(d.Across.Offset + across))
}

func (d *Desk) pref(name string) string {
	if d.host.Large() {
		return name + ", large text"
	}
	return name
}

// KeepShares notes where the bars between the drawing and its panels stand.
func (d *Desk) KeepShares() {
	d.host.Preferences().SetFloat(d.pref(prefDown), d.Down.Offset)
	d.host.Preferences().SetFloat(d.pref(prefAcross), d.Across.Offset)
}
