package figure

import (
	"regexp"
	"slices"
	"strconv"
	"strings"

	"frontlay/model/length"
	"frontlay/model/message"
)

func (r Row) needed() Row {
	r.Needed = true
	return r
}

// oneWay says that of the rows with the same word at most one is given.
func (r Row) oneWay(word string) Row {
	r.Ways = word
	return r
}

// size is a length that is 0 where it is not given.
func size(key, name, doc string, at *length.Length, least, greatest length.Length) Row {
	return Row{Key: key, Name: message.New(name), Doc: message.New(doc), Value: &Size{
		Least: least, Greatest: greatest,
		Get:   func() (length.Length, bool) { return *at, *at != 0 },
		Set:   func(v length.Length) { *at = v },
		Unset: func() { *at = 0 },
	}}
}

// sizeOrNil is a length that is nil where it is not given.
func sizeOrNil(key, name, doc string, at **length.Length, least, greatest length.Length) Row {
	return Row{Key: key, Name: message.New(name), Doc: message.New(doc), Value: &Size{
		Least: least, Greatest: greatest, Nothing: true,
		Get: func() (length.Length, bool) {
			if *at == nil {
				return 0, false
			}
			return **at, true
		},
		Set:   func(v length.Length) { *at = &v },
		Unset: func() { *at = nil },
	}}
}

func number(key, name, unit, doc string, at *float64, least, greatest float64) Row {
	return Row{Key: key, Name: message.New(name), Doc: message.New(doc), Value: &Number{least, greatest, unit, at}}
}

// price is what a piece, pair or set costs.
func price(at *float64, doc string) Row {
	return number("price", "Price", "each", doc, at, 0, 1_000_000)
}

func count(key, name, doc string, at *int, least, greatest int) Row {
	return Row{Key: key, Name: message.New(name), Doc: message.New(doc), Value: &Count{least, greatest, at}}
}

// line is text on one line.
func line(key, name, doc string, at *string) Row {
	return Row{Key: key, Name: message.New(name), Doc: message.New(doc), Value: &Text{Most: MostName, At: at}}
}

// notes is text that can have several lines.
func notes(key, name, doc string, at *string) Row {
	return Row{Key: key, Name: message.New(name), Doc: message.New(doc), Value: &Text{Most: MostText, Lines: true, At: at}}
}

// word is one of a few words kept as text.
func word(key, name, doc string, at *string, words ...string) Row {
	return Row{Key: key, Name: message.New(name), Doc: message.New(doc), Value: &Text{Most: MostName, OneOf: words, At: at}}
}

// choice is one of a few words; words are by the constants' values from 0.
func choice[T ~uint8](key, name, doc string, at *T, words ...string) Row {
	return Row{Key: key, Name: message.New(name), Doc: message.New(doc), Value: &Choice{
		OneOf: words, Get: func() int { return int(*at) }, Set: func(i int) { *at = T(i) },
	}}
}

func flag(key, name, doc string, at *bool) Row {
	return Row{Key: key, Name: message.New(name), Doc: message.New(doc), Value: &Flag{at}}
}

func sizes(key, name, doc string, at *[]length.Length, least, greatest length.Length) Row {
	return Row{Key: key, Name: message.New(name), Doc: message.New(doc), Value: &Sizes{least, greatest, at}}
}

func unit(at *length.Unit) Row {
	return Row{Key: "unit", Name: message.New("Unit"), Doc: message.New("The unit of sizes written without one."), Value: &Unit{at}}
}

// group is a mapping that is always there.
func group(key, name, doc string, rows []Row) Row {
	return Row{Key: key, Name: message.New(name), Doc: message.New(doc), Value: &Group{Rows: func() []Row { return rows }}}
}

// part is a mapping that the model may do without (nil).
func part[T any](key, name, doc string, at **T, rows func(*T) []Row) Row {
	return Row{Key: key, Name: message.New(name), Doc: message.New(doc), Value: &Group{
		Rows: func() []Row {
			if *at == nil {
				return rows(new(T))
			}
			return rows(*at)
		},
		There: func() bool { return *at != nil },
		Make:  func() { *at = new(T) },
		Unset: func() { *at = nil },
	}}
}

// list is a list of mappings.
func list[T any](key, name, doc string, at *[]T, most int, oneLine bool, sign func(*T) string, rows func(*T) []Row) Row {
	return Row{Key: key, Name: message.New(name), Doc: message.New(doc), Value: &List{
		Most: most, OneLine: oneLine,
		Len: func() int { return len(*at) },
		Resize: func(n int) {
			*at = nil
			if n > 0 {
				*at = make([]T, n)
			}
		},
		Rows:  func(i int) []Row { return rows(&(*at)[i]) },
		Empty: func() []Row { return rows(new(T)) },
		Sign:  func(i int) string { return sign(&(*at)[i]) },
	}}
}

// version is the format version, the first key of a file.
func version(key string, newest int) Row {
	return Row{Key: key, Doc: message.New("Format version, the first line of the file."), Needed: true, Value: &Version{newest}}
}

// OfKind is the path of the same row in an empty thing: of an empty item, where it is
// that of an item of a list.
func OfKind(path string) string { return index.ReplaceAllString(path, "[]") }

var index = regexp.MustCompile(`\[[0-9]+\]`)

// OnlyWay takes away what other rows say of the same thing as the row at a path.
func OnlyWay(rows []Row, path string) {
	key := path[strings.LastIndex(path, ".")+1:]
	if in, found := Find(rows, strings.TrimSuffix(path, "."+key)); found && key != path {
		rows = in.Value.(*Group).Rows()
	}
	mine, _ := Find(rows, key)
	for _, r := range rows {
		if s, ok := r.Value.(*Size); ok && r.Ways == mine.Ways && r.Key != key {
			s.Unset()
		}
	}
}

// Find gives the row at a path such as drawers[0].side_top, and whether there is
// one. drawers[].side_top is that of an empty item of its own.
func Find(rows []Row, path string) (Row, bool) {
	step, rest, below := strings.Cut(path, ".")
	key, index, isItem := strings.Cut(strings.TrimSuffix(step, "]"), "[")
	at := slices.IndexFunc(rows, func(r Row) bool { return r.Key == key })
	if at < 0 {
		return Row{}, false
	}
	row := rows[at]
	if !below {
		return row, true
	}
	switch v := row.Value.(type) {
	case *Group:
		return Find(v.Rows(), rest)
	case *List:
		if isItem && index == "" {
			return Find(v.Empty(), rest)
		}
		if i, err := strconv.Atoi(index); isItem && err == nil && i >= 0 && i < v.Len() {
			return Find(v.Rows(i), rest)
		}
	}
	return Row{}, false
}
