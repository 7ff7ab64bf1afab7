package inspector

import (
	"slices"
	"strings"

	fynetheme "fyne.io/fyne/v2/theme"

	"frontlay/layout/check"
	"frontlay/layout/drawing"
	"frontlay/layout/plan"
	"frontlay/layout/view"
	"frontlay/model"
	"frontlay/model/edit"
	"frontlay/model/length"
	"frontlay/model/message"
	"frontlay/ui/field"
	"frontlay/ui/look"
)

// workedOut shows what follows for one front. Each figure tells how it came about,
// and stands out where a rule blames it.
func (f *frontForm) workedOut() {
	pf := func() *plan.Front { return f.planned(f.at[0]) }
	f.section(message.New("Worked out"), true, func() string {
		r := pf().Face
		return f.say().Figure(r.Width()) + " × " + f.say().Length(r.Height())
	})
	l := func(v length.Length) string { return f.say().Length(v) }
	pair := func(a, b length.Length) string {
		if a == b {
			return l(a)
		}
		return f.say().Figure(a) + " / " + l(b)
	}
	pl := func() *plan.Plan { return f.session.Result().Plan }
	both := func(of func(*plan.Front, plan.Side) plan.Sum) func() []plan.Sum {
		return func() []plan.Sum { return []plan.Sum{of(pf(), plan.Left), of(pf(), plan.Right)} }
	}
	f.outcome(message.New("Front size"), func() string {
		r := pf().Face
		return f.say().Figure(r.Width()) + " × " + l(r.Height())
	}, func() []plan.Sum { return []plan.Sum{pl().WidthOf(pf()), pl().HeightOf(pf())} }, "collision")
	f.outcome(message.New("Side overlay"), func() string { return pair(pf().Overlay.Left, pf().Overlay.Right) },
		both(func(a *plan.Front, s plan.Side) plan.Sum { return pl().OverlayOf(a, s) }), "overlay")
	if !decides(f.form, func() bool { return pf().Fitted }) {
		if pf().Kind == model.DrawerFront {
			f.note(f.text("No drawer of the hardware sheet fits here yet. The check tells why."))
		}
		return
	}
	one := func(of func() plan.Sum) func() []plan.Sum { return func() []plan.Sum { return []plan.Sum{of()} } }
	f.outcome(message.New("Cover below"), func() string { return l(pf().Drawer.Cover.Bottom) }, one(func() plan.Sum { return pl().CoverOf(pf()) }), "cover-below")
	f.outcome(message.New("Cover at the sides"), func() string { return pair(pf().Drawer.Cover.Left, pf().Drawer.Cover.Right) },
		both(func(a *plan.Front, s plan.Side) plan.Sum { return pl().SideCoverOf(a, s) }), "cover-beside")
	f.outcome(message.New("Room above"), func() string { return l(pf().Drawer.RoomAbove) }, one(func() plan.Sum { return pl().RoomAboveOf(pf()) }), "room-above")
	f.outcome(message.New("Runner"), func() string {
		if pf().Runner.Length == 0 {
			return f.text("none fits")
		}
		return l(pf().Runner.Length)
	}, one(func() plan.Sum { return pl().DepthOf(pf()) }), "runner-depth")
	f.outcome(message.New("Drop"), func() string { return l(pf().Drop) }, one(func() plan.Sum { return pl().DropOf(pf()) }), "runner-low")
	f.outcome(message.New("Edge distance"), func() string { return pair(pf().EdgeDistance.Left, pf().EdgeDistance.Right) },
		both(func(a *plan.Front, s plan.Side) plan.Sum { return pl().EdgeDistanceOf(a, s) }))
	f.outcome(message.New("Drawer height"), func() string {
		if h := pf().Height; h != nil {
			return h.Name
		}
		return "–"
	}, nil)
	f.outcome(message.New("Drawer bottom"), func() string {
		c := pf().Drawer.BottomCut
		return f.say().Figure(c.Width) + " × " + l(c.Length)
	}, func() []plan.Sum { return []plan.Sum{pl().BottomWidthOf(pf()), pl().BottomLengthOf(pf())} }, "drawer-size")
	f.outcome(message.New("Holes"), func() string { return f.text("%v", len(pf().Holes)) }, func() []plan.Sum {
		var all []plan.Sum
		told := map[length.Length]bool{}
		for i := range pf().Holes {
			if h := &pf().Holes[i]; !told[h.AboveRunner] {
				told[h.AboveRunner] = true
				all = append(all, pl().HoleHeightOf(pf(), h))
			}
		}
		return all
	}, "hole-edge", "hole-gap", "hole-depth")
	f.explanations(pf)
}

// outcome is a line of what is worked out: a figure, the sums that it is made of, and
// the rules that speak of it.
func (f *frontForm) outcome(label message.Message, get func() string, sums func() []plan.Sum, rules ...string) {
	var how func() string
	if sums != nil {
		how = func() string { return f.sums(sums(), "; ") }
	}
	bad := func() *field.Pill { return f.blame(rules) }
	o, at := take(f.form, "outcome", label.Text, func(*field.Outcome) {}, func() *field.Outcome { return field.NewOutcome(f.say().Say(label)) })
	o.Use(get, bad, how)
	f.put(o, f.say().Say(label), o)
	f.reach(at, o)
}

// sums writes sums that have terms.
func (f *frontForm) sums(all []plan.Sum, between string) string {
	var lines []string
	for _, s := range all {
		if text := f.say().Say(s.Say()); len(s.Terms) > 0 && !slices.Contains(lines, text) {
			lines = append(lines, text)
		}
	}
	return strings.Join(lines, between)
}

// blame is the pill of a figure that some rules speak of; nil: they find nothing that
// is open.
func (f *frontForm) blame(rules []string) *field.Pill {
	var worst *check.Finding
	all := f.session.Result().Findings
	for i := range all {
		if g := &all[i]; g.Accepted == "" && g.Place == f.at[0] && slices.Contains(rules, g.Rule) && (worst == nil || g.Severity < worst.Severity) {
			worst = g
		}
	}
	if worst == nil {
		return nil
	}
	p, severity := look.Current(), view.Severity(worst)
	_, ink := p.Severity(severity)
	pill := &field.Pill{Ink: fynetheme.ColorNameForeground, Surface: p.Tint(severity), Sign: look.Icon(look.SeverityIcon(severity), ink, p.OnSign)}
	switch severity {
	case drawing.OfError:
		pill.Ink = fynetheme.ColorNameError
	case drawing.OfWarning:
		pill.Ink = fynetheme.ColorNameWarning
	}
	return pill
}

// blamed tells whether the check blames a figure that was typed: an error about one of
// the things is mended best by another figure there.
func (f *frontForm) blamed(at []model.Place, key string) func() bool {
	return func() bool {
		all := f.session.Result().Findings
		for i := range all {
			if g := &all[i]; g.Open() && len(g.Fixes) > 0 {
				if e, ok := g.Fixes[0].(edit.Set); ok && e.Key == key && slices.Contains(at, e.At) {
					if _, given := f.sized(e.At, key); given {
						return true
					}
				}
			}
		}
		return false
	}
}

// explanations tell how all figures of a front came about.
func (f *frontForm) explanations(pf func() *plan.Front) {
	f.section(message.New("How it came about"), false, nil)
	told(f.form, func() string { return f.sums(f.session.Result().Plan.Explanations(pf()), "\n\n") })
}
