package edit_test

import (
	"errors"
	"reflect"
	"slices"
	"strings"
	"testing"

	"pgregory.net/rapid"

	"frontlay/model"
	"frontlay/model/edit"
	"frontlay/model/figure"
	"frontlay/model/length"
	"frontlay/model/message"
)

func mm(v int64) length.Length { return length.MM(v) }

func sample() *model.Project {
	sheet := &model.HardwareSheet{Name: "s", Drawers: []model.DrawerHeight{{Name: "low", SideTop: mm(80)}, {Name: "tall", SideTop: mm(200)}}}
	drop := mm(5)
	return &model.Project{
		Title:    "Glaze bench",
		Hardware: []model.HardwareUse{{Name: "main", Sheet: sheet}},
		Boards:   model.Boards{Carcass: model.Board{Thickness: mm(18)}, Front: model.Board{Thickness: mm(22)}, Back: model.Board{Thickness: mm(8)}},
		Cabinets: []model.Cabinet{
			{Name: "Glazes", Width: mm(864), Height: mm(760), Depth: mm(560), Bays: []model.Bay{
				{Fronts: []model.Front{{Name: "Buckets", Height: mm(320), Drawer: "tall"}, {Name: "Jars", Share: 2, Drop: &drop}, {Name: "Brushes", Share: 1}}},
				{Width: mm(300), Fronts: []model.Front{{Height: mm(300)}, {Height: mm(457)}}},
			}},
			{Name: "Tiles", Width: mm(500), Height: mm(760), Depth: mm(560), Reveals: &model.Reveals{Gap: mm(4)},
				Bays: []model.Bay{{Fronts: []model.Front{{Share: 1}}}}},
		},
	}
}

// place draws a place that may or may not be in the sample.
func place(t *rapid.T) model.Place {
	return model.Place{
		Cabinet: rapid.IntRange(-1, 2).Draw(t, "cabinet"),
		Bay:     rapid.IntRange(-1, 2).Draw(t, "bay"),
		Front:   rapid.IntRange(-1, 3).Draw(t, "front"),
	}
}

func size(t *rapid.T) length.Length {
	return length.Length(rapid.Int64Range(-1e9, 30e9).Draw(t, "size"))
}

// plain are the keys of the rows that are set without a thought, of the thing at a
// place.
func plain(at model.Place) []string {
	var all []string
	var walk func(rows []figure.Row, in string)
	walk = func(rows []figure.Row, in string) {
		for _, r := range rows {
			switch v := r.Value.(type) {
			case *figure.Group:
				walk(v.Rows(), in+r.Key+".")
				if v.Unset != nil {
					all = append(all, in+r.Key)
				}
			case *figure.Size, *figure.Number, *figure.Count, *figure.Choice, *figure.Flag, *figure.Text:
				all = append(all, in+r.Key)
			}
		}
	}
	walk(figure.Like(at), "")
	own := []string{"height", "clear", "share", "kind", "locked", "line_up", "span", "hardware", "drawer", "runner"} // with edits of their own
	switch {
	case at.Bay < 0:
		own = []string{"name"}
	case at.Front < 0:
		own = []string{"hardware", "share", "partition", "division"}
	}
	return slices.DeleteFunc(all, func(key string) bool {
		first, _, _ := strings.Cut(key, ".")
		return slices.Contains(own, first)
	})
}

// drawSet draws a figure of a thing and a value for it, of any kind.
func drawSet(t *rapid.T, at model.Place) edit.Edit {
	key := rapid.SampledFrom(append(plain(at), "no.such")).Draw(t, "key")
	value := []any{nil, size(t), rapid.Float64().Draw(t, "number"), rapid.IntRange(-2, 5).Draw(t, "n"), rapid.StringN(0, 90, -1).Draw(t, "text"), true, false}
	return edit.Set{At: at, Key: key, Value: rapid.SampledFrom(value).Draw(t, "value")}
}

// drawEdit draws any edit with any arguments, good and bad.
func drawEdit(t *rapid.T) edit.Edit {
	at, v, w := place(t), size(t), size(t)
	n := rapid.IntRange(-2, 5).Draw(t, "n")
	text := rapid.StringN(0, 90, -1).Draw(t, "text")
	f := rapid.Float64().Draw(t, "number")
	on := rapid.Bool().Draw(t, "on")
	all := []edit.Edit{
		edit.SetHeight{At: at, Height: v}, edit.SetHeight{At: at, Height: v, Clear: true}, edit.SetShare{At: at, Share: f}, drawSet(t, at),
		edit.SetDrawer{At: at, Drawer: "low"}, edit.SetDrawer{At: at, Drawer: text}, edit.SetKind{At: at, Kind: model.Kind(n & 3)},
		edit.MoveDivision{Below: at, Lower: v, Upper: w},
		edit.AddFront{At: at, Front: model.Front{Share: 1}}, edit.RemoveFront{At: at, Freed: v}, edit.ReorderFront{At: at, To: n},
		edit.SplitFront{At: at, Lower: v, Upper: w}, edit.Equalise{At: []model.Place{at, place(t)}, Heights: []length.Length{v, w, v}[:max(n, 0)%4]}, edit.Graduate{At: []model.Place{at, place(t)}, Heights: []length.Length{v, w}, Ratio: f},
		edit.Lock{At: []model.Place{at}, Heights: []length.Length{v}, Locked: on}, edit.LineUp{At: at, With: &model.LineUp{Front: text}},
		edit.SetCabinet(at, "height", v),
		edit.RenameCabinet{At: at, Name: text}, edit.AddCabinet{At: at, Cabinet: model.Cabinet{Name: text}},
		edit.RemoveCabinet{At: at}, edit.CopyCabinet{At: at}, edit.PasteCabinet{At: at, Cabinet: model.Cabinet{Name: text, Bays: []model.Bay{{Hardware: "else", Fronts: []model.Front{{Drawer: "low", Hardware: text}}}}}}, edit.MoveCabinet{At: at, To: n}, edit.AddBay{At: at, Left: v, Right: w}, edit.AddBay{At: at},
		edit.RemoveBay{At: at}, edit.MovePartition{Left: at, WidthLeft: v, WidthRight: w},
		edit.SetUnit{Unit: length.UnitInch},
		edit.ChooseHardware{At: at, Name: "main"}, edit.ChooseHardware{At: at, Name: text}, edit.UseHardware{Use: model.HardwareUse{Name: text}},
		edit.RenameHardware{Name: "main", To: text}, edit.RemoveHardware{Name: "main"}, edit.RemoveHardware{Name: text},
		edit.CopyStack{From: at, To: []model.Place{place(t)}, Heights: []length.Length{v, w}}, edit.SetDivision{At: at, Division: model.Division{Rule: model.DivideRatio, Ratio: f}, Free: on},
		edit.SetRunner{At: at, Length: v},
		edit.Redivide{At: at, Hardware: []string{"", "main", text}[max(n, 0)%3], Division: model.Division{Rule: model.DivisionRule(max(n, 0) & 3), Ratio: f, Step: v},
			Fronts: []edit.NewFront{{Height: v, Holds: text, Contents: w}, {Drop: &w, Holds: "Jars"}, {}, {}}[:max(n, 0)%5]},
		edit.SetSpan{At: at, Count: n}, edit.SetSeverity{Rule: "cover", Severity: text}, edit.SetSeverity{Rule: "cover", Severity: "off"}, edit.SetCheckLimit{Limit: web, Value: &v},
		edit.ChooseFrontHardware{At: at, Name: "main"},
		edit.AcceptFinding{Finding: model.Accepted{Rule: "cover", Reason: text}, Revoke: on},
	}
	return all[rapid.IntRange(0, len(all)-1).Draw(t, "which")]
}

// No edit changes its argument, panics, or fails without a message in words;
// what it gives has at least one cabinet, bay and front and no impossible size.
func TestEditsArePureAndSafe(t *testing.T) {
	rapid.Check(t, func(t *rapid.T) {
		p := sample()
		for range rapid.IntRange(1, 12).Draw(t, "steps") {
			e := drawEdit(t)
			before := p.Clone()
			if e.Label().Empty() {
				t.Fatalf("%T has no label", e)
			}
			next, err := e.Apply(p)
			if !reflect.DeepEqual(before, p) {
				t.Fatalf("%T changed its argument", e)
			}
			if err != nil {
				var m message.Message
				if !errors.As(err, &m) || m.Empty() {
					t.Fatalf("%T fails without a message: %v", e, err)
				}
				continue
			}
			sound(t, next)
			p = next
		}
	})
}

func sound(t *rapid.T, p *model.Project) {
	if len(p.Cabinets) == 0 {
		t.Fatal("no cabinets are left")
	}
	names := map[string]bool{}
	for _, c := range p.Cabinets {
		if c.Name == "" || names[c.Name] {
			t.Fatalf("the name %q is empty or taken", c.Name)
		}
		names[c.Name] = true
		for _, b := range c.Bays {
			if len(b.Fronts) == 0 {
				t.Fatal("a bay has no fronts")
			}
			for _, f := range b.Fronts {
				if f.Height < 0 || f.Share < 0 {
					t.Fatalf("front %+v", f)
				}
			}
		}
	}
}

func TestMovingADivisionKeepsTheSum(t *testing.T) {
	at := func(b, f int) model.Place { return model.Place{Cabinet: 0, Bay: b, Front: f} }
	for _, c := range []struct {
		name         string
		below        model.Place
		lower, upper int64
		want         []int64 // heights afterwards, 0 for a share
	}{
		{"both fixed", at(1, 0), 310, 447, []int64{310, 447}},
		{"a fixed one under one of two shares", at(0, 0), 330, 278, []int64{330, 278, 0}},
		{"two shares, nothing else is free", at(0, 1), 200, 232, []int64{320, 200, 0}},
	} {
		t.Run(c.name, func(t *testing.T) {
			p, err := edit.MoveDivision{Below: c.below, Lower: mm(c.lower), Upper: mm(c.upper)}.Apply(sample())
			if err != nil {
				t.Fatal(err)
			}
			for i, f := range p.BayAt(c.below).Fronts {
				if f.Height != mm(c.want[i]) {
					t.Errorf("front %d is %v, want %d mm", i, f.Height, c.want[i])
				}
			}
		})
	}
}

func TestARefusalSaysWhatIsPossible(t *testing.T) {
	front := model.Place{}
	for _, c := range []struct {
		name string
		edit edit.Edit
		want string
	}{
		{"height", edit.SetHeight{At: front, Height: 0}, "Height is 0 mm and must be more than 0; write the size, or nothing where it can be left out"},
		{"drawer", edit.SetDrawer{At: front, Drawer: "huge"}, "The hardware sheet has no drawer “huge”. It has: low, tall."},
		{"division", edit.MoveDivision{Below: front, Lower: mm(605), Upper: 0}, "Height is 0 mm and must be more than 0; write the size, or nothing where it can be left out"},
		{"top", edit.MoveDivision{Below: model.Place{Front: 2}}, "There is no front above this one, so there is no division to move."},
		{"last cabinet name", edit.RenameCabinet{At: front, Name: "Tiles"}, "Another cabinet has the name “Tiles” already."},
	} {
		t.Run(c.name, func(t *testing.T) {
			_, err := c.edit.Apply(sample())
			if err == nil || err.Error() != c.want {
				t.Errorf("got %v\nwant %s", err, c.want)
			}
		})
	}
}

func TestALockHolds(t *testing.T) {
	at := model.Place{Front: 1}
	p, err := edit.Lock{At: []model.Place{at}, Heights: []length.Length{mm(250)}, Locked: true}.Apply(sample())
	if err != nil || p.FrontAt(at).Height != mm(250) {
		t.Fatalf("%v, %v", p.FrontAt(at).Height, err)
	}
	for _, e := range []edit.Edit{
		edit.SetHeight{At: at, Height: mm(200)}, edit.SetShare{At: at, Share: 1},
		edit.MoveDivision{Below: at, Lower: mm(200), Upper: mm(100)}, edit.SplitFront{At: at, Lower: mm(100), Upper: mm(100)},
	} {
		if _, err := e.Apply(p); err == nil {
			t.Errorf("%T changed a locked front", e)
		}
	}
}

func TestRemovingTheLastShareLeavesNoHole(t *testing.T) {
	p, err := edit.RemoveFront{At: model.Place{Bay: 1, Front: 1}, Freed: mm(460)}.Apply(sample())
	if err != nil {
		t.Fatal(err)
	}
	if f := p.FrontAt(model.Place{Bay: 1}); f.Height != mm(760) {
		t.Errorf("the remaining front is %v", f.Height)
	}
}

func TestAcceptingAFindingCanBeTakenBack(t *testing.T) {
	a := model.Accepted{Rule: "cover", Cabinet: "Glazes", Bay: 1, Front: "Jars", Reason: "shop drawer, never seen"}
	p, err := edit.AcceptFinding{Finding: a}.Apply(sample())
	if err != nil || len(p.Checks.Accepted) != 1 || p.Checks.Accepted[0] != a {
		t.Fatalf("%+v, %v", p.Checks.Accepted, err)
	}
	p, err = edit.AcceptFinding{Finding: a, Revoke: true}.Apply(p)
	if err != nil || len(p.Checks.Accepted) != 0 {
		t.Fatalf("%+v, %v", p.Checks.Accepted, err)
	}
}
