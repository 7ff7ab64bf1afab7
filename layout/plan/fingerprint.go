package plan

import (
	"crypto/sha256"
	"encoding/binary"
	"fmt"
	"hash"
	"strconv"

	"frontlay/layout/plane"
	"frontlay/model"
	"frontlay/model/message"
)

// Fingerprint tells plans apart on paper: two that differ in anything that is cut,
// drilled or fitted have different ones, but for one chance in four thousand
// million. Names, notes and materials are not in it: other words spoil no panel.
type Fingerprint uint32

// String gives it as it is printed, eight digits from 0 to F.
func (f Fingerprint) String() string { return fmt.Sprintf("%08X", uint32(f)) }

// ParseFingerprint reads what String gives; small letters are fine.
func ParseFingerprint(s string) (Fingerprint, bool) {
	f, err := strconv.ParseUint(s, 16, 32)
	return Fingerprint(f), err == nil && len(s) == 8
}

// MarshalText writes it as it is printed.
func (f Fingerprint) MarshalText() ([]byte, error) { return []byte(f.String()), nil }

// UnmarshalText reads that.
func (f *Fingerprint) UnmarshalText(s []byte) error {
	v, ok := ParseFingerprint(string(s))
	if !ok {
		return message.New("“%v” is no stamp: it has eight digits from 0 to F.", string(s))
	}
	*f = v
	return nil
}

// carcassFingerprint is that of what holds the fronts: carcasses, their boards, and
// the screws of runners in them.
func (p *Plan) carcassFingerprint() Fingerprint {
	h := digest{sha256.New()}
	if p.Project != nil {
		for _, b := range []model.Board{p.Project.Boards.Carcass, p.Project.Boards.Front, p.Project.Boards.Back} {
			h.say(b.Thickness, b.Lipping, b.Grain)
			h.edging(&b)
		}
		if p.Project.OnePlinth {
			h.say("one plinth")
		}
		for i := range p.Project.Cabinets {
			if back := p.Project.Cabinets[i].Base.Setback; back != 0 {
				h.say("plinth", i, back)
			}
		}
	}
	for i := range p.Cabinets {
		c := &p.Cabinets[i]
		h.say(c.Outline, c.Inside, c.Plinth, c.Partitions, c.Beside, c.Depth, c.Mount)
		if c.Sides != c.Depth { // let into the carcass, and how
			h.say("back", c.Sides, c.Back)
		}
		for _, f := range c.Feet {
			h.say("foot", f)
		}
		for j := range c.Bays {
			h.say(c.Bays[j].Opening)
			for _, s := range c.Bays[j].Shelves {
				h.say(s.Rect)
			}
			for _, r := range c.Bays[j].Rails {
				h.say("rail", r.Rect, r.Depth)
			}
			for _, a := range c.Bays[j].Channels {
				if a.Far > 0 {
					h.say(a.Rect, a.Near, a.Far)
				}
			}
		}
	}
	for i := range p.Fronts {
		f := &p.Fronts[i]
		h.say(f.Runner.Lower, f.Runner.Start, f.Runner.Length, f.Runner.Screws)
		if f.HasPacking() {
			h.say("packing", f.Packing)
		}
		for k := range f.Inner {
			r := &f.Inner[k].Runner
			h.say("inner", r.Lower, r.Start, r.Length, r.Screws)
		}
	}
	return h.end()
}

// fingerprint is that of the front itself: its number, size and holes, and the
// drawer behind it, wherever it hangs.
func (f *Front) fingerprint() Fingerprint {
	h := digest{sha256.New()}
	h.say(f.Number, f.Kind, f.Face.Width(), f.Face.Height(), f.Thickness, f.Inset, f.Drop)
	for i := range f.Zones {
		h.say(f.Zones[i])
	}
	if f.Made.Lipping != 0 && f.Made.Name != model.PlainBoard { // that of the plain board is the project's
		h.say("lipping", f.Made.Lipping)
		h.edging(&f.Made.Board)
	}
	h.holes(f.Holes)
	h.holes(f.HandleHoles)
	for g := range f.Drawers() {
		h.say(g.Runner.Length, g.Drawer.Body.Width(), g.Drawer.Body.Height(), g.Drawer.BottomCut, g.Drawer.BackCut)
		if b := g.Drawer.Box; b != nil {
			h.say(b.Width, b.Height, b.Length)
			for i := range b.Parts {
				h.say(b.Parts[i].Size(), b.Parts[i].Thickness)
			}
		}
	}
	return h.end()
}

// digest gathers what a fingerprint is made of.
type digest struct{ hash.Hash }

// edging says which edges get it, where these are not the usual ones.
func (h digest) edging(b *model.Board) {
	e := b.Edging
	if e.Price = 0; b.Lipping > 0 && e != (model.Edging{}) {
		h.say("edging", e)
	}
}

func (h digest) say(all ...any) {
	for _, one := range all {
		if r, ok := one.(plane.Rect); ok && r.Empty() {
			one = plane.Rect{} // wherever nothing is
		}
		fmt.Fprintf(h, "%v\x00", one)
	}
}

func (h digest) holes(all []Hole) {
	for _, o := range all {
		h.say(o.At, o.Kind, o.Diameter, o.Depth)
	}
	h.say("end")
}

func (h digest) end() Fingerprint { return Fingerprint(binary.BigEndian.Uint32(h.Sum(nil))) }

// Paper is what of a plan is kept when it is printed, to tell later what has
// changed: the fingerprints of the plan, of what holds the fronts, and of the fronts
// by their numbers, from 1.
type Paper struct {
	Plan    Fingerprint   `json:"plan"`
	Carcass Fingerprint   `json:"carcass"`
	Fronts  []Fingerprint `json:"fronts"`
}

// Paper gives what is kept of a plan.
func (p *Plan) Paper() Paper {
	paper := Paper{Carcass: p.carcassFingerprint()}
	h := digest{sha256.New()}
	h.say(paper.Carcass)
	for i := range p.Fronts {
		f := p.Fronts[i].fingerprint()
		h.say(f, p.Fronts[i].Face)
		paper.Fronts = append(paper.Fronts, f)
	}
	paper.Plan = h.end()
	return paper
}

// Changed gives the numbers of the fronts of another paper that are not as they
// were: changed, or gone, or not there before.
func (p Paper) Changed(now Paper) (fronts []int) {
	for i := range max(len(p.Fronts), len(now.Fronts)) {
		if i >= len(p.Fronts) || i >= len(now.Fronts) || p.Fronts[i] != now.Fronts[i] {
			fronts = append(fronts, i+1)
		}
	}
	return fronts
}
