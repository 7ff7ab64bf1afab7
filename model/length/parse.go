package length

import (
	"fmt"
	"math/big"
	"strconv"
	"strings"
	"unicode"
)

// MaxTyped is the greatest size that Parse accepts, with either sign.
const MaxTyped = 1000 * Metre

// maxText bounds the work that a typed or stored size can cause.
const maxText = 120

// Parse reads a size as a person types it: `12`, `12.5`, `12,5`, `12 mm`,
// `1.2 cm`, `3/4"`, `1 3/4 in`, `35 7/16`, and sums, differences, multiples and
// parts of those: `900-2*18`, `(720-6)/3`. A number without a unit is in u. The
// result is rounded to the nearest nanometre. An error is a *Mistake that says
// what is wrong with the text, in the user's words; it does not repeat the place.
func Parse(s string, u Unit) (Length, error) {
	if strings.TrimSpace(s) == "" {
		return 0, wrong("no size is given: type one, such as 320 or 12 5/8 in")
	}
	if len(s) > maxText {
		return 0, wrong("a size of %v characters is too long", len(s))
	}
	p := &parser{text: []rune(strings.TrimPrefix(strings.TrimSpace(s), "≈")), unit: u}
	v, err := p.sum(0)
	if err != nil {
		return 0, err
	}
	p.space()
	if p.at < len(p.text) {
		return 0, wrong("%v is not understood in the size %v", strconv.Quote(string(p.text[p.at:])), strconv.Quote(s))
	}
	return p.toLength(v)
}

// quantity is a number that is a length already (in nanometres) or still bare.
type quantity struct {
	n      *big.Rat
	length bool
}

type parser struct {
	text []rune
	at   int
	unit Unit
}

const maxNesting = 20

func (p *parser) space() {
	for p.at < len(p.text) && (p.text[p.at] == ' ' || p.text[p.at] == '\t' || p.text[p.at] == '\u00a0') {
		p.at++
	}
}

func (p *parser) peek() rune {
	p.space()
	if p.at < len(p.text) {
		return p.text[p.at]
	}
	return 0
}

func (p *parser) sum(depth int) (quantity, error) {
	if depth > maxNesting {
		return quantity{}, wrong("the size has too many brackets")
	}
	v, err := p.product(depth)
	if err != nil {
		return v, err
	}
	for {
		op := p.peek()
		if op != '+' && op != '-' && op != '−' {
			return v, nil
		}
		p.at++
		w, err := p.product(depth)
		if err != nil {
			return v, err
		}
		if v.length != w.length {
			v, w = p.asLength(v), p.asLength(w)
		}
		if op == '+' {
			v.n = new(big.Rat).Add(v.n, w.n)
		} else {
			v.n = new(big.Rat).Sub(v.n, w.n)
		}
	}
}

func (p *parser) product(depth int) (quantity, error) {
	v, err := p.signed(depth)
	if err != nil {
		return v, err
	}
	for {
		op := p.peek()
		if op != '*' && op != '×' && op != '/' {
			return v, nil
		}
		p.at++
		w, err := p.signed(depth)
		if err != nil {
			return v, err
		}
		switch {
		case op == '/' && w.n.Sign() == 0:
			return v, wrong("a size can't be divided by zero")
		case op == '/' && w.length:
			return v, wrong("a size can't be divided by a length; divide by a plain number")
		case op == '/':
			v.n = new(big.Rat).Quo(v.n, w.n)
		case v.length && w.length:
			return v, wrong("two lengths can't be multiplied; multiply by a plain number")
		default:
			v = quantity{new(big.Rat).Mul(v.n, w.n), v.length || w.length}
		}
	}
}

func (p *parser) signed(depth int) (quantity, error) {
	switch p.peek() {
	case '-', '−':
		p.at++
		v, err := p.operand(depth)
		if err == nil {
			v.n = new(big.Rat).Neg(v.n)
		}
		return v, err
	case '+':
		p.at++
	}
	return p.operand(depth)
}

func (p *parser) operand(depth int) (quantity, error) {
	if p.peek() == '(' {
		p.at++
		v, err := p.sum(depth + 1)
		if err != nil {
			return v, err
		}
		if p.peek() != ')' {
			return v, wrong("a bracket is not closed")
		}
		p.at++
		return p.withUnit(v)
	}
	n, err := p.mixed()
	if err != nil {
		return quantity{}, err
	}
	return p.withUnit(quantity{n: n})
}

// mixed reads 12, 12.5, 12,5, 7/16, 35 7/16 or 35-free text's first number.
func (p *parser) mixed() (*big.Rat, error) {
	n, whole, err := p.number()
	if err != nil {
		return nil, err
	}
	if !whole {
		return n, nil
	}
	if f := p.tightFraction(n); f != nil {
		return f, nil
	}
	mark := p.at
	p.space()
	if p.at > mark && p.at < len(p.text) && isDigit(p.text[p.at]) {
		num, ok, err := p.number()
		if err != nil {
			return nil, err
		}
		if f := p.tightFraction(num); ok && f != nil {
			return n.Add(n, f), nil
		}
		return nil, wrong("two numbers stand side by side; write a sum, or a fraction such as 35 7/16")
	}
	p.at = mark
	return n, nil
}

// tightFraction reads "/16" directly behind a whole numerator.
func (p *parser) tightFraction(num *big.Rat) *big.Rat {
	if p.at+1 >= len(p.text) || p.text[p.at] != '/' || !isDigit(p.text[p.at+1]) {
		return nil
	}
	mark := p.at
	p.at++
	den, whole, err := p.number()
	if err != nil || !whole || den.Sign() == 0 {
		p.at = mark
		return nil
	}
	return new(big.Rat).Quo(num, den)
}

func (p *parser) number() (n *big.Rat, whole bool, err error) {
	p.space()
	start, points := p.at, 0
	for p.at < len(p.text) {
		r := p.text[p.at]
		if r == '.' || r == ',' {
			points++
		} else if !isDigit(r) {
			break
		}
		p.at++
	}
	s := strings.ReplaceAll(string(p.text[start:p.at]), ",", ".")
	switch {
	case s == "" && start >= len(p.text):
		return nil, false, wrong("a number is missing at the end of %v", strconv.Quote(string(p.text)))
	case s == "":
		return nil, false, wrong("%v is not a number", strconv.Quote(string(p.text[start:])))
	case points > 1:
		return nil, false, wrong("%v has more than one decimal sign; write thousands without a sign", strconv.Quote(string(p.text[start:p.at])))
	}
	n, ok := new(big.Rat).SetString(strings.TrimSuffix("0"+s, "."))
	if !ok {
		return nil, false, wrong("%v is not a number", strconv.Quote(s))
	}
	return n, points == 0, nil
}

func isDigit(r rune) bool { return r >= '0' && r <= '9' }

var suffixes = []struct {
	text string
	size Length
}{
	{"mm", Millimetre}, {"cm", Centimetre}, {"inches", Inch}, {"inch", Inch}, {"in", Inch},
	{"″", Inch}, {"\"", Inch}, {"''", Inch}, {"m", Metre},
}

func (p *parser) withUnit(v quantity) (quantity, error) {
	p.space()
	rest := string(p.text[p.at:])
	for _, s := range suffixes {
		if !strings.HasPrefix(rest, s.text) {
			continue
		}
		end := p.at + len([]rune(s.text))
		if end < len(p.text) && isLetter(p.text[end]) {
			continue
		}
		if v.length {
			return v, wrong("a unit stands twice behind one figure")
		}
		p.at = end
		return quantity{new(big.Rat).Mul(v.n, ratOf(s.size)), true}, nil
	}
	if p.at < len(p.text) && isLetter(p.text[p.at]) {
		return v, wrong("%v is not a unit; write mm, cm, m or in", strconv.Quote(word(p.text[p.at:])))
	}
	return v, nil
}

func isLetter(r rune) bool { return unicode.IsLetter(r) }

func word(r []rune) string {
	n := 0
	for n < len(r) && isLetter(r[n]) {
		n++
	}
	return string(r[:n])
}

func ratOf(l Length) *big.Rat { return new(big.Rat).SetInt64(int64(l)) }

func (p *parser) asLength(v quantity) quantity {
	if v.length {
		return v
	}
	return quantity{new(big.Rat).Mul(v.n, ratOf(p.unit.Size())), true}
}

func (p *parser) toLength(v quantity) (Length, error) {
	n := p.asLength(v).n
	if new(big.Rat).Abs(n).Cmp(ratOf(MaxTyped)) > 0 {
		return 0, wrong("%v is larger than any cabinet", string(p.text))
	}
	half := big.NewRat(1, 2)
	if n.Sign() < 0 {
		half.Neg(half)
	}
	n = new(big.Rat).Add(n, half)
	return Length(new(big.Int).Quo(n.Num(), n.Denom()).Int64()), nil
}

// Mistake says what is wrong with a size that was typed, as a format whose
// verbs are all %v and its arguments, so that it can be translated.
type Mistake struct {
	Says string
	Args []any
}

// Error is what is wrong, in English.
func (m *Mistake) Error() string { return fmt.Sprintf(m.Says, m.Args...) }

func wrong(says string, args ...any) error { return &Mistake{says, args} }
