package layout_test

import (
	"io"
	"math"
	"os"
	"path/filepath"
	"testing"
	"time"

	"frontlay/assets"
	"frontlay/layout"
	"frontlay/layout/check"
	"frontlay/layout/list"
	"frontlay/layout/view"
	"frontlay/model/yamlfile"
)

// FuzzLoadAndSolve feeds the loader and, where it takes the file, the engine,
// the views, the lists and the explanations: no panic, no hang, no NaN.
func FuzzLoadAndSolve(f *testing.F) {
	for _, pattern := range []string{"projects/*.yaml", "rules/*/*.yaml", "bad/*.yaml", "versions/project-*.yaml"} {
		files, err := filepath.Glob(filepath.Join("..", "testdata", pattern))
		if err != nil {
			f.Fatal(err)
		}
		for _, file := range files {
			data, err := os.ReadFile(file)
			if err != nil {
				f.Fatal(err)
			}
			f.Add(data)
		}
	}
	f.Add(assets.Demo())
	f.Fuzz(func(t *testing.T, data []byte) {
		if len(data) > 20_000 {
			return // more of the same only slows the search down
		}
		hang := time.AfterFunc(20*time.Second, func() { panic("hang: " + string(data)) })
		defer hang.Stop()
		file, err := yamlfile.Read("fuzz.yaml", data, func(source string) (string, []byte, error) {
			if sheet, ok := assets.Sheet(source); ok {
				return source, sheet, nil
			}
			return source, nil, os.ErrNotExist
		}, check.Limits())
		if err != nil {
			if err.Error() == "" {
				t.Error("an error without words")
			}
			return
		}
		r := layout.Solve(file.Project)
		for i := range r.Findings {
			g := &r.Findings[i]
			if math.IsNaN(g.FoundKg) || math.IsNaN(g.NeededKg) {
				t.Errorf("%s: a weight is not a number", g.Rule)
			}
			if i < 20 {
				layout.Offered(file.Project, r, *g)
			}
		}
		view.Elevation(r.Plan, view.ElevationOptions{SeeThrough: true, Found: view.Found{All: r.Findings}})
		for i := range r.Plan.Fronts {
			fr := &r.Plan.Fronts[i]
			view.Rear(fr)
			for _, s := range r.Plan.Explanations(fr) {
				if len(s.Terms) > 0 && s.Total() != s.Value {
					t.Errorf("%v does not add up", s.Say())
				}
			}
		}
		list.All(r.Plan, r.Findings, list.Speaker{}, 0)
		if err := list.PlanJSON(io.Discard, r.Plan); err != nil {
			t.Error(err)
		}
		for _, c := range r.Plan.Cabinets {
			for _, b := range c.Bays {
				view.Section(r.Plan, b.Place)
			}
		}
	})
}
