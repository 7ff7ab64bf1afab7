package main

import (
	"flag"
	"fmt"
	"io"
	"slices"
	"strconv"
	"strings"

	"frontlay/layout/propose"
	"frontlay/model"
	"frontlay/model/length"
	"frontlay/model/message"
)

// styles are the styles of proposals by the words of the command line.
var styles = []string{propose.Free: "free", propose.Equal: "equal", propose.ByStep: "step", propose.ByFactor: "factor"}

// several collects the values of a flag that can be given more than once.
type several []string

func (s *several) String() string { return strings.Join(*s, ",") }

// Set adds a value.
func (s *several) Set(v string) error {
	*s = append(*s, v)
	return nil
}

// proposing prints the best divisions of a bay, the best first.
func proposing(fs *flag.FlagSet) task {
	cabinet := fs.String("cabinet", "1", "the cabinet of this `NAME` or number")
	bay := fs.Int("bay", 1, "its bay `N`")
	fronts := fs.String("fronts", "3..5", "how many fronts, `LEAST..MOST`")
	style := oneOf(fs, "style", styles[propose.Free], styles, "the `STYLE` of the heights: "+listed(styles))
	by := fs.String("by", "", "the `STEP` or factor of the style; the best where you do not say")
	grid := fs.String("grid", "", "free heights are whole multiples of this `STEP`")
	rows := fs.Bool("rows", false, "free heights put the runners on hole rows")
	best := fs.Int("best", 5, "show the `N` best")
	var things, sheets, weights several
	fs.Var(&things, "thing", "what one drawer is to hold, and how high it stands, as `NAME=HEIGHT`; once for each drawer")
	fs.Var(&sheets, "sheet", "try the hardware sheet of this `NAME` in the project; more than once to compare")
	fs.Var(&weights, "weight", "what one of it counts in mm of lost height, as `KEY=MM`: "+weightKeys())
	project := addProjectFlags(fs)
	return func(rest []string, c console) int {
		path, ok := oneFile("propose", rest, c)
		if !ok {
			return exitFailed
		}
		f, say, ok := project.open("propose", path, c)
		if !ok {
			return exitFailed
		}
		q := propose.Question{Rows: *rows, Best: *best, Weights: propose.UsualWeights()}
		if err := asked(&q, f.Project, request{*cabinet, *bay, *fronts, *style, *by, *grid, things, sheets, weights}); err != nil {
			fmt.Fprintln(c.err, "frontlay propose: "+say.Say(message.Of(err)))
			return exitFailed
		}
		a := propose.Find(f.Project, q)
		if len(a.Proposals) == 0 {
			fmt.Fprintln(c.err, "frontlay propose: "+say.Say(a.Why))
			return exitFailed
		}
		printProposals(c.out, say, &a)
		return exitFine
	}
}

// request is what the flags say, as it was written.
type request struct {
	cabinet                 string
	bay                     int
	fronts, style, by, grid string
	things, sheets, weights []string
}

// asked makes a question of a request.
func asked(q *propose.Question, p *model.Project, r request) (err error) {
	if q.At, err = bayNamed(p, r.cabinet, r.bay); err != nil {
		return err
	}
	if q.Fewest, q.Most, err = propose.ParseFronts(r.fronts); err != nil {
		return err
	}
	style := slices.Index(styles, r.style)
	if style < 0 {
		return message.New("There is no style “%v”. Styles: %v.", r.style, strings.Join(styles, ", "))
	}
	q.Style = propose.Style(style)
	switch {
	case r.by == "":
	case q.Style == propose.ByStep:
		q.By, err = length.Parse(r.by, p.Unit)
	case q.Style == propose.ByFactor:
		q.Factor, err = propose.ParseFactor(r.by)
	}
	if err == nil && r.grid != "" {
		q.Grid, err = length.Parse(r.grid, p.Unit)
	}
	if err != nil {
		return err
	}
	for _, t := range r.things {
		thing, err := propose.ParseThing(t, p.Unit)
		if err != nil {
			return err
		}
		q.Things = append(q.Things, thing)
	}
	for _, s := range r.sheets {
		if p.Sheet(s) == nil {
			return message.New("There is no hardware sheet “%v” in the project.", s)
		}
		q.Sheets = append(q.Sheets, s)
	}
	return weighed(q, r.weights)
}

// weighed sets weights that are written as KEY=MILLIMETRES.
func weighed(q *propose.Question, weights []string) error {
	for _, w := range weights {
		key, mm, _ := strings.Cut(w, "=")
		at := slices.IndexFunc(propose.Measures(), func(m propose.Measure) bool { return m.Key() == key })
		if at < 0 {
			return message.New("Nothing that is weighed is called “%v”. Weights: %v.", key, weightKeys())
		}
		var err error
		if q.Weights[at], err = propose.ParseWeight(mm); err != nil {
			return err
		}
	}
	return nil
}

// weightKeys lists what can be weighed, with what it weighs where nobody says.
func weightKeys() string {
	var keys []string
	for i, w := range propose.UsualWeights() {
		keys = append(keys, fmt.Sprintf("%s=%v", propose.Measure(i).Key(), w.MM()))
	}
	return strings.Join(keys, ", ")
}

// bayNamed finds a bay by the name or number of its cabinet and by its number.
func bayNamed(p *model.Project, cabinet string, bay int) (model.Place, error) {
	for i := range p.Cabinets {
		if c := &p.Cabinets[i]; c.Name == cabinet || strconv.Itoa(i+1) == cabinet {
			if bay < 1 || bay > len(c.Bays) {
				return model.Place{}, message.New("This cabinet has bays from 1 to %v.", len(c.Bays))
			}
			return model.Place{Cabinet: i, Bay: bay - 1, Front: -1}, nil
		}
	}
	var names []string
	for i := range p.Cabinets {
		names = append(names, p.Cabinets[i].Name)
	}
	return model.Place{}, message.New("There is no cabinet “%v”. Cabinets: %v.", cabinet, strings.Join(names, ", "))
}

// printProposals writes one proposal after the other: its fronts from the top, then its
// terms.
func printProposals(w io.Writer, say message.Language, a *propose.Answer) {
	for i := range a.Proposals {
		x := &a.Proposals[i]
		fmt.Fprintln(w, say.Say(message.New("%v. %v, points: %v", i+1, x.Name(), x.Points())))
		b := x.Result.Plan.BayAt(x.Edit.At)
		for k := b.Count - 1; k >= 0; k-- {
			f := &x.Result.Plan.Fronts[b.First+k]
			holds := x.Edit.Fronts[k].Holds
			if holds == "" {
				holds = say.Say(message.New("nothing in particular"))
			}
			fmt.Fprintln(w, "     "+say.Say(message.New("front %v: %v, inside %v, drop %v; for %v", f.Number, f.Face.Height(), propose.Usable(f), f.Drop, holds)))
		}
		for _, m := range x.Words() {
			fmt.Fprintln(w, "   - "+say.Say(m))
		}
		if n := x.Warnings(); n > 0 {
			fmt.Fprintln(w, "   - "+say.Say(message.New("Warnings of the check in this bay: %v", n)))
		}
	}
	if a.Stopped {
		fmt.Fprintln(w, say.Say(message.New("The search stopped before it had looked at every division: there may be a better one. A coarser grid or fewer fronts bring it to its end.")))
	}
}
