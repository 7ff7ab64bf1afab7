package figure

import (
	"math"
	"reflect"
	"slices"
	"strconv"
	"strings"
	"unicode"

	"frontlay/model/length"
	"frontlay/model/message"
)

// Fault is something wrong with one value: Path is the way to it by keys and
// indexes from 0, as drawers[0].side_top.
type Fault struct {
	Path   string
	What   message.Message
	Advice message.Message // what to do
}

// Word stands for a row in a message: its key, unless Named puts its name there.
type Word struct {
	Key  string
	Name message.Message
}

func (w Word) String() string { return w.Key }

// Word is what stands for the row in a message.
func (r Row) Word() Word { return Word{r.Key, r.Name} }

// Named is the fault as one sentence for a form, where rows have names.
func (f *Fault) Named() message.Message {
	m, advice := f.What, f.Advice
	m.Args = append([]any(nil), m.Args...)
	for i, a := range m.Args {
		if w, ok := a.(Word); ok && !w.Name.Empty() {
			m.Args[i] = w.Name
		}
	}
	if m.Text == missing {
		m.Text, advice = message.New("%v: nothing is given").Text, message.New("fill this in") // names may be plural
	}
	return message.New("%v; %v", m, advice)
}

const missing = "%v is missing"

// Missing is the fault of a needed row that is absent.
func (r Row) Missing() *Fault {
	return &Fault{"", message.New(missing, r.Word()), message.New("add it: %v", r.Doc)}
}

// Refuse gives what is wrong with a length for the row of a word, nil where
// nothing is. Its fault has no path yet, as that of the other kinds.
func (s *Size) Refuse(of Word, v length.Length) *Fault { return outside(of, v, s.Least, s.Greatest) }

// Refuse gives what is wrong with one length of the list.
func (s *Sizes) Refuse(of Word, v length.Length) *Fault { return outside(of, v, s.Least, s.Greatest) }

func outside(of Word, v, least, greatest length.Length) *Fault {
	switch {
	case v < least && least == 0:
		return &Fault{What: message.New("%v is %v and can't be negative", of, v), Advice: message.New("write 0 or more")}
	case v < least && least == Positive:
		return &Fault{What: message.New("%v is %v and must be more than 0", of, v), Advice: message.New("write the size, or nothing where it can be left out")}
	case v < least:
		return &Fault{What: message.New("%v is %v and can't be less than %v", of, v, least), Advice: message.New("check the figure and its unit")}
	case v > greatest:
		return &Fault{What: message.New("%v is %v and can't be more than %v", of, v, greatest), Advice: message.New("check the figure and its unit")}
	}
	return nil
}

// Refuse gives what is wrong with a number.
func (n *Number) Refuse(of Word, x float64) *Fault { return outsideNumbers(of, x, n.Least, n.Greatest) }

// Refuse gives what is wrong with a number that should be a whole one.
func (c *Count) Refuse(of Word, x float64) *Fault {
	if f := outsideNumbers(of, x, float64(c.Least), float64(c.Greatest)); f != nil {
		return f
	}
	if x != math.Trunc(x) {
		return &Fault{What: message.New("%v is %v and must be a whole number", of, x), Advice: message.New("check the figure")}
	}
	return nil
}

func outsideNumbers(of Word, x, least, greatest float64) *Fault {
	switch {
	case x == 0 && least > 0:
		return &Fault{What: message.New("%v can't be 0", of), Advice: message.New("write a number above 0, or leave it out")}
	case !(x >= least && x <= greatest): // also what is no number
		return &Fault{What: message.New("%v is %v and must be from %v to %v", of, x, least, greatest), Advice: message.New("check the figure")}
	}
	return nil
}

// Refuse gives what is wrong with a text.
func (t *Text) Refuse(of Word, s string) *Fault {
	if s != "" && len(t.OneOf) > 0 && !slices.Contains(t.OneOf, s) {
		return noneOf(of, Quote(s), t.OneOf)
	}
	return refuseText(of, s, t.Most, t.Lines)
}

// Refuse gives what is wrong with the index of a word.
func (c *Choice) Refuse(of Word, i int) *Fault {
	if i < 0 || i >= len(c.OneOf) {
		return noneOf(of, strconv.Itoa(i), c.OneOf)
	}
	return nil
}

func noneOf(of Word, what string, words []string) *Fault {
	return &Fault{What: message.New("%v can't be %v", of, what), Advice: message.New("write one of %v", strings.Join(words, ", "))}
}

// RefuseName gives what is wrong with a name that stands as a key.
func RefuseName(of Word, s string) *Fault { return refuseText(of, s, MostName, false) }

func refuseText(of Word, s string, most int, lines bool) *Fault {
	if n := len([]rune(s)); n > most {
		return &Fault{What: message.New("%v has %v characters, which is more than %v", of, n, most), Advice: message.New("shorten it")}
	}
	for _, c := range s {
		switch {
		case c == '\n' && lines, c == '\t':
		case c == '\n':
			return &Fault{What: message.New("%v must be on one line", of), Advice: message.New("join its lines; longer text goes into notes")}
		case unicode.IsControl(c) || misleading(c):
			return &Fault{What: message.New("%v has the invisible character %v in it", of, strconv.QuoteRuneToASCII(c)), Advice: message.New("remove it")}
		}
	}
	return nil
}

// Quote is a piece of what the user wrote made safe and short for a message.
func Quote(s string) string {
	if r := []rune(s); len(r) > 40 {
		s = string(r[:40]) + "…"
	}
	return strconv.Quote(s)
}

// misleading tells the characters that make text look other than it is: those
// that override the direction of writing (Unicode Standard Annex 9, explicit
// directional formatting) and the byte order mark. Scripts that run right to
// left need none of them.
func misleading(c rune) bool {
	return c >= '\u202a' && c <= '\u202e' || c >= '\u2066' && c <= '\u2069' || c == '\ufeff'
}

// judge collects faults on the way through rows.
type judge struct {
	path   []string
	faults []*Fault
}

func (j *judge) enter(key string) { j.path = append(j.path, key) }
func (j *judge) enterAt(i int)    { j.enter("[" + strconv.Itoa(i) + "]") }
func (j *judge) leave()           { j.path = j.path[:len(j.path)-1] }

func (j *judge) add(f *Fault) {
	if f != nil {
		f.Path = PathText(j.path)
		j.faults = append(j.faults, f)
	}
}

// fail adds a fault of the value at a key below the path, "" for the path itself.
func (j *judge) fail(key string, what, advice message.Message) {
	j.enter(key)
	j.add(&Fault{What: what, Advice: advice})
	j.leave()
}

// PathText writes keys and indexes as cabinets[0].width.
func PathText(path []string) string {
	return strings.TrimSuffix(strings.ReplaceAll(strings.Join(path, "."), ".[", "["), ".")
}

// rows judges each value by itself.
func (j *judge) rows(rows []Row) {
	for _, r := range rows {
		j.enter(r.Key)
		if r.Needed && r.Value.absent() {
			j.add(r.Missing())
		} else {
			j.row(r)
		}
		j.leave()
	}
}

func (j *judge) row(r Row) {
	of := r.Word()
	switch v := r.Value.(type) {
	case *Size:
		if x, given := v.Get(); given {
			j.add(v.Refuse(of, x))
		}
	case *Sizes:
		for i, x := range *v.At {
			j.enterAt(i)
			j.add(v.Refuse(Word{of.Key + "[" + strconv.Itoa(i) + "]", of.Name}, x))
			j.leave()
		}
	case *Number:
		if *v.At != 0 {
			j.add(v.Refuse(of, *v.At))
		}
	case *Count:
		if *v.At != 0 {
			j.add(v.Refuse(of, float64(*v.At)))
		}
	case *Text:
		j.add(v.Refuse(of, *v.At))
	case *Choice:
		j.add(v.Refuse(of, v.Get()))
	case *Group:
		if v.There == nil || v.There() {
			j.rows(v.Rows())
		}
	case *List:
		for i := range v.Len() {
			j.enterAt(i)
			j.rows(v.Rows(i))
			j.leave()
		}
	}
}

// Faults are what is wrong with the values of rows, each by itself.
func Faults(rows []Row) []*Fault {
	j := new(judge)
	j.rows(rows)
	return j.faults
}

// Refused tells what is wrong with what an edit has set: the first row of next that
// differs from that of old and is out of its bounds. What was wrong before is not
// the edit's; it is told where it is looked at.
func Refused(old, next []Row) error {
	for i, r := range next {
		if i < len(old) {
			was, isGroup := old[i].Value.(*Group)
			if same(old[i].Value, r.Value) {
				continue
			}
			if isGroup && !was.absent() {
				if err := Refused(was.Rows(), r.Value.(*Group).Rows()); err != nil {
					return err
				}
				continue
			}
		}
		if f := Faults([]Row{r}); len(f) > 0 {
			return f[0].Named()
		}
	}
	return nil
}

// same tells that two values of one row hold the same.
func same(a, b Value) bool { return reflect.DeepEqual(held(a), held(b)) }

// held is what a value holds.
func held(v Value) any {
	switch v := v.(type) {
	case *Size:
		x, given := v.Get()
		return []any{x, given}
	case *Number:
		return *v.At
	case *Count:
		return *v.At
	case *Text:
		return *v.At
	case *Choice:
		return v.Get()
	case *Flag:
		return *v.At
	case *Sizes:
		return *v.At
	case *Words:
		return *v.At
	case *Unit:
		return *v.At
	case *Sheets:
		return *v.At
	case *Group:
		if v.absent() {
			return nil
		}
		return heldBy(v.Rows())
	case *List:
		all := make([]any, v.Len())
		for i := range all {
			all[i] = heldBy(v.Rows(i))
		}
		return all
	}
	return nil
}

func heldBy(rows []Row) []any {
	all := make([]any, len(rows))
	for i, r := range rows {
		all[i] = held(r.Value)
	}
	return all
}
