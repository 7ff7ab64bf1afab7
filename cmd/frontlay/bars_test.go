package main

import (
	"math"
	"os/exec"
	"regexp"
	"strconv"
	"testing"
)

// measureBars finds the check bars of a PDF by another program (mutool, of the
// Debian package mupdf-tools): at least one line across and one up is 100 mm
// long within 0.01 mm.
func measureBars(t *testing.T, path string) {
	t.Helper()
	out, err := exec.Command("mutool", "trace", path).Output()
	if err != nil {
		t.Fatalf("mutool can't read the PDF: %v", err)
	}
	// A path's numbers are in its own units; its transform scales them to points.
	element := regexp.MustCompile(`(?s)<(?:stroke|fill)_path[^>]*transform="([^"]+)"[^>]*>(.*?)</(?:stroke|fill)_path>`)
	from := regexp.MustCompile(`<moveto x="([^"]+)" y="([^"]+)"/>\s*<lineto x="([^"]+)" y="([^"]+)"/>`)
	across, up := false, false
	for _, e := range element.FindAllSubmatch(out, -1) {
		scale := numbers(string(e[1]))
		if len(scale) < 4 {
			continue
		}
		for _, l := range from.FindAllSubmatch(e[2], -1) {
			dx := (number(l[3]) - number(l[1])) * math.Abs(scale[0]) * 25.4 / 72
			dy := (number(l[4]) - number(l[2])) * math.Abs(scale[3]) * 25.4 / 72
			across = across || math.Abs(dy) < 0.01 && math.Abs(math.Abs(dx)-100) < 0.01
			up = up || math.Abs(dx) < 0.01 && math.Abs(math.Abs(dy)-100) < 0.01
		}
	}
	if !across || !up {
		t.Errorf("check bars of 100 mm found across: %v, up: %v", across, up)
	}
}

func numbers(s string) (all []float64) {
	for _, m := range regexp.MustCompile(`-?[0-9.]+`).FindAllString(s, -1) {
		all = append(all, number([]byte(m)))
	}
	return all
}

func number(b []byte) float64 {
	v, err := strconv.ParseFloat(string(b), 64)
	if err != nil {
		return math.NaN()
	}
	return v
}
