package propose

import (
	"strconv"
	"strings"

	"frontlay/model/length"
	"frontlay/model/message"
)

// ParseFronts reads how many fronts there are to be, as 4 or 3..5 or 3-5; what is wrong
// is a message.
func ParseFronts(text string) (fewest, most int, err error) {
	low, high, ranged := strings.Cut(strings.ReplaceAll(strings.ReplaceAll(strings.TrimSpace(text), "–", "-"), "..", "-"), "-")
	if !ranged {
		high = low
	}
	fewest, err1 := strconv.Atoi(strings.TrimSpace(low))
	most, err2 := strconv.Atoi(strings.TrimSpace(high))
	if err1 != nil || err2 != nil || fewest < 1 || most > MostFronts || fewest > most {
		return 0, 0, wrongFronts
	}
	return fewest, most, nil
}

var wrongFronts = message.New("The number of fronts lies between 1 and %v, the fewest first: 3 or 3..5.", MostFronts)

// ParseFactor reads by how much a front is taller than the one above it; what is wrong
// is a message.
func ParseFactor(text string) (float64, error) {
	const greatest = 5
	f, err := number(text)
	if err != nil || f < 1 || f > greatest {
		return 0, message.New("A factor lies between 1 and %v, such as %v.", greatest, 1.25)
	}
	return f, nil
}

// ParseWeight reads a weight in millimetres of lost height; what is wrong is a message.
func ParseWeight(text string) (Weight, error) {
	f, err := number(text)
	w, ok := WeightOf(f)
	if err != nil || !ok {
		return 0, message.New("A weight lies between 0 and %v millimetres of lost height.", HeaviestMM)
	}
	return w, nil
}

// ParseThing reads a thing as NAME=HEIGHT, a bare height in a unit; what is wrong is a
// message.
func ParseThing(text string, u length.Unit) (Thing, error) {
	name, high, ok := strings.Cut(text, "=")
	h, err := length.Parse(high, u)
	if !ok || err != nil || h <= 0 {
		return Thing{}, message.New("“%v” is no thing: write what goes in and how high it is, such as jars=210", text)
	}
	return Thing{strings.TrimSpace(name), h}, nil
}

func number(text string) (float64, error) {
	return strconv.ParseFloat(strings.Replace(strings.TrimSpace(text), ",", ".", 1), 64)
}
