package edit_test

import (
	"strings"
	"testing"

	"pgregory.net/rapid"

	"frontlay/assets"
	"frontlay/layout/check"
	"frontlay/model"
	"frontlay/model/edit"
	"frontlay/model/length"
	"frontlay/model/yamlfile"
)

// Whatever edits make of a project can be saved: they let nothing through that a
// project file refuses.
func TestEditsLeaveWhatCanBeSaved(t *testing.T) {
	rapid.Check(t, func(t *rapid.T) {
		p := sample()
		p.Hardware[0].Sheet = whole(t)
		if _, err := yamlfile.New(p, check.Limits()).Write(p); err != nil {
			t.Fatalf("the sample itself: %v", err)
		}
		for range rapid.IntRange(1, 12).Draw(t, "steps") {
			e := drawEdit(t)
			switch e.(type) {
			case edit.AddCabinet, edit.PasteCabinet, edit.UseHardware, edit.LineUp:
				continue // drawn without what the window gives them
			}
			next, err := e.Apply(p)
			if err != nil {
				continue
			}
			p = next
			if _, err := yamlfile.New(p, check.Limits()).Write(p); err != nil {
				t.Fatalf("%T %+v leaves what can't be saved: %v", e, e, err)
			}
		}
	})
}

// Figures and texts at the ends of what files take; chance seldom comes there.
func TestEditsAtTheEndsOfWhatCanBeSaved(t *testing.T) {
	at, large := model.Place{}, 2*length.Metre+1
	for _, c := range []struct {
		name    string
		edit    edit.Edit
		refused bool
	}{
		{"worktop", edit.SetCabinet(at, "worktop", large), true},
		{"channel.height", edit.SetCabinet(at, "channel.height", large), true},
		{"plinth", edit.SetCabinet(at, "plinth", large), false},
		{"end panel", edit.SetCabinet(at, "left.end_panel", mm(200)+1), true},
		{"end panel, the thickest", edit.SetCabinet(at, "left.end_panel", mm(200)), false},
		{"filler", edit.SetCabinet(at, "left.filler", large), true},
		{"contents", edit.Set{At: at, Key: "contents.height", Value: large}, true},
		{"handle spacing", edit.Set{At: at, Key: "handle.spacing", Value: large}, true},
		{"share", edit.SetShare{At: at, Share: 0.0009}, true},
		{"share, the least", edit.SetShare{At: at, Share: 0.001}, false},
		{"density", edit.Set{At: model.Whole, Key: "boards.carcass.density", Value: 0.5}, true},
		{"notes that were copied", edit.Set{At: model.Whole, Key: "notes", Value: "\ufeffone\r\ntwo\x00\u202e"}, false},
		{"long notes", edit.Set{At: model.Whole, Key: "notes", Value: strings.Repeat("ß", 20_000)}, false},
		{"longer notes", edit.Set{At: model.Whole, Key: "notes", Value: strings.Repeat("ß", 20_001)}, true},
		{"a front board that there is not", edit.SetCabinet(at, "board", "oak"), true},
		{"no front board of its own", edit.SetCabinet(at, "board", ""), false},
		{"a title that was copied", edit.Set{At: model.Whole, Key: "title", Value: "\ufeffBench"}, false},
		{"a reason that was copied", edit.AcceptFinding{Finding: model.Accepted{Rule: "reveal", Reason: "seen\r\n\u2066it"}}, false},
	} {
		t.Run(c.name, func(t *testing.T) {
			p := sample()
			p.Hardware[0].Sheet = whole(t)
			next, err := c.edit.Apply(p)
			if (err != nil) != c.refused {
				t.Fatalf("refused: %v", err)
			}
			if err == nil {
				if _, err := yamlfile.New(next, check.Limits()).Write(next); err != nil {
					t.Error(err)
				}
			}
		})
	}
}

// whole is a hardware sheet with nothing left out, one of the samples that ship.
func whole(t interface{ Fatal(...any) }) *model.HardwareSheet {
	name := assets.SheetNames()[0]
	data, _ := assets.Sheet(name)
	s, err := yamlfile.ReadSheet(name, data)
	if err != nil {
		t.Fatal(err)
	}
	return s
}
