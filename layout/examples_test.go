package layout_test

import (
	"maps"
	"slices"
	"testing"

	"frontlay/assets"
	"frontlay/layout"
	"frontlay/layout/projecttest"
	"frontlay/model"
)

// unaccepted are the rules that find something, in order of the alphabet.
func unaccepted(r layout.Result) []string {
	found := map[string]bool{}
	for _, f := range r.Findings {
		if f.Accepted == "" {
			found[f.Rule] = true
		}
	}
	return slices.Sorted(maps.Keys(found))
}

// The examples that ship show what a visitor asks for; nothing is wrong in them but in the one
// that is to be mended.
func TestExamples(t *testing.T) {
	shown := map[string]bool{}
	for _, name := range assets.Examples() {
		p := projecttest.Example(t, name)
		r := layout.Solve(p)
		want := []string(nil)
		if name == "kiln-room" {
			want = []string{"cover-below", "front-reach", "hole-edge", "nearly-level", "reveal", "room-above", "runner-load", "runner-low"}
		}
		if got := unaccepted(r); !slices.Equal(got, want) {
			t.Errorf("%s: %q, want %q", name, got, want)
		}
		for i := range r.Plan.Fronts {
			f := &r.Plan.Fronts[i]
			shown["frame"] = shown["frame"] || len(f.Zones) > 3
			shown["niche"] = shown["niche"] || f.Kind == model.OpenNiche
			shown["channel"] = shown["channel"] || p.FrontAt(f.Place).Channel.Height > 0
			shown["handle"] = shown["handle"] || len(f.Handles) > 0
		}
		for _, c := range p.Cabinets {
			shown["inset"] = shown["inset"] || c.Mount == model.Inset
			shown["overlay"] = shown["overlay"] || c.Mount == model.Overlay
		}
	}
	for _, what := range []string{"overlay", "inset", "niche", "frame", "channel", "handle"} {
		if !shown[what] {
			t.Errorf("no example shows %s", what)
		}
	}
}

// The cabinet with faults is mended by the first thing that the check offers for each, one
// after the other; only the load has to be taken out by hand.
func TestTheFaultsOfTheExampleAreMended(t *testing.T) {
	p := projecttest.Example(t, "kiln-room")
	for range 20 {
		r := layout.Solve(p)
		done := true
		for _, f := range r.Findings {
			if f.Accepted != "" {
				continue
			}
			if offered := layout.Offered(p, r, f); len(offered) > 0 {
				q, err := offered[0].Apply(p)
				if err != nil {
					t.Fatal(err)
				}
				p, done = q, false
				break
			}
		}
		if done {
			break
		}
	}
	if left := unaccepted(layout.Solve(p)); !slices.Equal(left, []string{"runner-load"}) {
		t.Errorf("left are %q", left)
	}
}
