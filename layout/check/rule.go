package check

import (
	"fmt"
	"strconv"

	"frontlay/layout/plan"
	"frontlay/layout/season"
	"frontlay/model"
	"frontlay/model/edit"
	"frontlay/model/length"
	"frontlay/model/message"
)

// Rule is one thing that can go wrong, with everything that is to be said about
// it: the page of settings, the reader of project files, the schema, the manual and
// the templates read it here.
type Rule struct {
	Name     string          // how a project file speaks of it
	Title    message.Message // what people read: what it makes sure of
	Wrong    message.Message // what is wrong where it finds something, in few words without figures
	Severity Severity        // what it counts as unless the project says otherwise
	Forbids  Work            // what must not be done while an error of it is open
	Limits   []model.Limit   // what it compares with and a project can set
	Doc      message.Message // what goes wrong at the bench, what is found and needed, what to do
	find     func(*search)
}

// search is one rule's walk over a plan.
type search struct {
	mender
	rule     Rule
	severity Severity
	accepted map[acceptKey]model.Accepted
	found    *[]Finding
	moves    *season.Study // nil: no rule has asked for it
}

type acceptKey struct {
	rule, cabinet string
	bay           int
	front         string
}

// All runs every rule over a plan, in the order of Rules, and gives the findings
// in that order and, within a rule, in the order of the run.
func All(p *plan.Plan) []Finding {
	var found []Finding
	s := search{mender: mender{p}, found: &found, accepted: acceptedOf(p.Project)}
	for _, r := range Rules() {
		severity, on := severityOf(p.Project, r)
		if !on {
			continue
		}
		s.rule, s.severity = r, severity
		r.find(&s)
	}
	return found
}

// SeverityOff in a project's settings turns a rule off.
const SeverityOff = "off"

func severityOf(p *model.Project, r Rule) (Severity, bool) {
	switch p.Checks.Severity[r.Name] {
	case Error.String():
		return Error, true
	case Warning.String():
		return Warning, true
	case Advice.String():
		return Advice, true
	case SeverityOff:
		return r.Severity, false
	default:
		return r.Severity, true
	}
}

func acceptedOf(p *model.Project) map[acceptKey]model.Accepted {
	if len(p.Checks.Accepted) == 0 {
		return nil
	}
	m := make(map[acceptKey]model.Accepted, len(p.Checks.Accepted))
	for _, a := range p.Checks.Accepted {
		if a.Reason == "" {
			a.Reason = "no reason given"
		}
		m[acceptKey{a.Rule, a.Cabinet, a.Bay, a.Front}] = a
	}
	return m
}

// Acceptance is how a project tells that it accepts a finding: its rule, its
// place in words and how far it is off; the reason empty.
func Acceptance(p *model.Project, f *Finding) model.Accepted {
	a := model.Accepted{Rule: f.Rule, Short: short(f)}
	if c := p.CabinetAt(f.Place); c != nil {
		a.Cabinet = nameOrNumber(f.Place.Cabinet, len(p.Cabinets), func(i int) string { return p.Cabinets[i].Name })
	}
	if f.Place.Bay >= 0 {
		a.Bay = f.Place.Bay + 1
	}
	if b := p.BayAt(f.Place); b != nil && p.FrontAt(f.Place) != nil {
		a.Front = nameOrNumber(f.Place.Front, len(b.Fronts), func(i int) string { return b.Fronts[i].Name })
	}
	return a
}

// short is how far a finding's figure is off.
func short(f *Finding) length.Length { return (f.Needed - f.Found).Abs() }

// nameOrNumber tells the i-th of n things by its name, or by its number from 1
// where the name is empty or given twice.
func nameOrNumber(i, n int, name func(int) string) string {
	mine := name(i)
	for k := 0; k < n && mine != ""; k++ {
		if k != i && name(k) == mine {
			mine = ""
		}
	}
	if mine == "" {
		return strconv.Itoa(i + 1)
	}
	return mine
}

// add reports a finding; the search fills in rule, severity, place in words and
// acceptance.
func (s *search) add(f Finding) {
	f.Rule, f.Severity, f.Forbids = s.rule.Name, s.severity, s.rule.Forbids
	f.Where = s.where(f.Place)
	if f.Inner > 0 {
		f.Where = message.New("%v, inner drawer %v", f.Where, f.Inner)
	}
	if s.accepted != nil {
		a := Acceptance(s.plan.Project, &f)
		if was, ok := s.accepted[acceptKey{a.Rule, a.Cabinet, a.Bay, a.Front}]; ok && (was.Short == 0 || a.Short <= was.Short) {
			f.Accepted = was.Reason
		}
	}
	*s.found = append(*s.found, f)
}

// front reports a finding about one front, or about an inner drawer behind one.
func (s *search) front(at *plan.Front, f Finding) {
	f.Place, f.Front, f.Inner = at.Place, at.Number, at.Nth
	s.add(f)
}

// where writes a place in words.
func (s *search) where(at model.Place) message.Message {
	switch {
	case at.Cabinet < 0:
		return message.New("project")
	case at.Bay < 0:
		return message.New("%v", s.plan.Project.CabinetName(at))
	case at.Front < 0:
		return message.New("%v, bay %v", s.plan.Project.CabinetName(at), at.Bay+1)
	default:
		f := s.plan.FrontAt(at)
		return message.New("%v, bay %v, front %v", s.plan.Project.CabinetName(at), at.Bay+1, called(f))
	}
}

// called is what stands behind "front": its number, and its name where it has one
// of its own.
func called(f *plan.Front) message.Message {
	if f.Nth > 0 {
		return message.New("%v, inner drawer %v", f.Number, f.Nth)
	}
	if !f.Named() {
		return message.New("%v", f.Number)
	}
	return message.New("%v (%v)", f.Number, f.Name)
}

// drawers calls do for every front with a fitted drawer.
func (s *search) drawers(do func(*plan.Front)) {
	for i := range s.plan.Fronts {
		if f := &s.plan.Fronts[i]; f.Fitted {
			do(f)
		}
	}
}

// everyDrawer calls do for every fitted drawer, inner ones too.
func (s *search) everyDrawer(do func(*plan.Front)) {
	for f := range s.plan.Drawers() {
		do(f)
	}
}

// contents is what a drawer is to hold.
func (s *search) contents(f *plan.Front) model.Contents {
	src := s.plan.Project.FrontAt(f.Place)
	if f.Nth > 0 {
		return src.Inner[f.Nth-1].Contents
	}
	return src.Contents
}

// setInner is the change that gives a figure of an inner drawer another value.
func setInner(f *plan.Front, key string, value any) edit.Edit {
	return edit.Set{At: f.Place, Key: fmt.Sprintf("inner[%d].%s", f.Nth-1, key), Value: value}
}

// raise is the change that raises a drawer's runner, or lowers it.
func raise(f *plan.Front, up length.Length) edit.Edit {
	if f.Nth > 0 {
		return setInner(f, "up", f.Runner.Lower+up-f.Datum())
	}
	return setDrop(f, f.Drop+up)
}

// setDrop is the change that gives a front another drop.
func setDrop(f *plan.Front, drop length.Length) edit.Edit {
	return edit.Set{At: f.Place, Key: "drop", Value: drop}
}
