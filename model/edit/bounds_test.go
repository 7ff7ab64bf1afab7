package edit_test

import (
	"errors"
	"testing"

	"frontlay/layout/check"
	"frontlay/model"
	"frontlay/model/edit"
	"frontlay/model/figure"
	"frontlay/model/length"
	"frontlay/model/yamlfile"
)

// For every figure of a project and each end of its bounds: what a file may hold can
// be set, and what a file may not hold can't.
func TestFilesAndEditsHaveTheSameBounds(t *testing.T) {
	p := sample()
	p.Hardware[0].Sheet = whole(t)
	p.Cabinets[0].Reveals = new(model.Reveals)
	p.Cabinets[0].Bays[0].Fronts[0].Handle = &model.Handle{Diameter: mm(5)}
	judged := 0
	for _, place := range []struct {
		at   model.Place
		path string
	}{
		{model.Whole, ""},
		{model.Place{Bay: -1, Front: -1}, "cabinets[0]."},
		{model.Place{Front: -1}, "cabinets[0].bays[0]."},
		{model.Place{}, "cabinets[0].bays[0].fronts[0]."},
	} {
		each("", figure.Of(p, place.at), func(key string, row figure.Row) {
			for _, v := range ends(row.Value) {
				judged++
				next, err := setting(place.at, key, v).Apply(p)
				file := inFile(t, p, place.at, key, v)
				for _, problem := range file {
					if problem.Path != place.path+key {
						t.Fatalf("%s%s of %v: %v", place.path, key, v, problem)
					}
				}
				if (err != nil) != (len(file) > 0) {
					t.Errorf("%s%s of %v: an edit says %v, a file %v", place.path, key, v, err, file)
				}
				if err == nil {
					if _, err := yamlfile.New(next, check.Limits()).Write(next); err != nil {
						t.Errorf("%s%s of %v is set, but can't be saved: %v", place.path, key, v, err)
					}
				}
			}
		})
	}
	if judged < 150 {
		t.Errorf("only %d ends of bounds are tried", judged)
	}
}

// setting is the edit that the window makes of a figure.
func setting(at model.Place, key string, v any) edit.Edit {
	switch l, _ := v.(length.Length); {
	case at.Front >= 0 && key == "height":
		return edit.SetHeight{At: at, Height: l}
	case at.Front >= 0 && key == "share":
		return edit.SetShare{At: at, Share: v.(float64)}
	case key == "division.step":
		return edit.SetDivision{At: at, Division: model.Division{Rule: model.DivideStep, Step: l}}
	case key == "division.ratio":
		return edit.SetDivision{At: at, Division: model.Division{Rule: model.DivideRatio, Ratio: v.(float64)}}
	}
	return edit.Set{At: at, Key: key, Value: v}
}

// inFile is what a file has against a value.
func inFile(t *testing.T, p *model.Project, at model.Place, key string, v any) yamlfile.Problems {
	c := p.Clone()
	row, _ := figure.Find(figure.Of(c, at), key)
	switch r := row.Value.(type) {
	case *figure.Size:
		r.Set(v.(length.Length))
	case *figure.Number:
		*r.At = v.(float64)
	}
	switch f := c.FrontAt(at); {
	case f != nil && key == "height": // a front has one of the two
		f.Share = 0
	case f != nil && key == "share":
		f.Height = 0
	}
	data, err := yamlfile.New(c, check.Limits()).Draft(c)
	if err != nil {
		t.Fatal(err)
	}
	source := func(string) (string, []byte, error) { return "", nil, errors.New("none") }
	_, err = yamlfile.Read("", data, source, check.Limits())
	var all yamlfile.Problems
	errors.As(err, &all)
	return all
}

// each goes through the figures of a thing, those of its cabinets, bays and fronts
// and of its hardware sheets apart.
func each(path string, rows []figure.Row, do func(key string, row figure.Row)) {
	for _, r := range rows {
		switch v := r.Value.(type) {
		case *figure.Group:
			if (v.There == nil || v.There()) && r.Key != "checks" {
				each(path+r.Key+".", v.Rows(), do)
			}
		case *figure.Size, *figure.Number:
			do(path+r.Key, r)
		}
	}
}

// ends are the values at both ends of the bounds of a figure, and just outside; not
// what stands for nothing given.
func ends(v figure.Value) []any {
	var all []any
	switch v := v.(type) {
	case *figure.Size:
		for _, l := range []length.Length{v.Least - 1, v.Least, v.Greatest, v.Greatest + 1} {
			if l != 0 {
				all = append(all, l)
			}
		}
	case *figure.Number:
		for _, x := range []float64{v.Least * 0.9, v.Least, v.Greatest, v.Greatest * 1.01, -1} {
			if x != 0 {
				all = append(all, x)
			}
		}
	}
	return all
}
