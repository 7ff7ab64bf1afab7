package layout_test

import (
	"fmt"
	"slices"
	"strings"
	"testing"

	"frontlay/layout"
	"frontlay/layout/drawing"
	"frontlay/layout/projecttest"
	"frontlay/layout/sheet"
	"frontlay/model"
	"frontlay/model/length"
	"frontlay/model/message"
)

// texts are what stands on a page, but in its pictures.
func texts(p sheet.Page) (all []string) {
	var say message.Language
	for _, m := range p.Placed[len(p.Placed)-1].Drawing.Marks {
		if t, ok := m.(*drawing.Text); ok {
			all = append(all, say.Say(t.Say))
		}
	}
	return all
}

// A chest of drawers takes one sheet for the bench, the demo three. The chest's
// figures are worked out by hand: sides of 19 mm, reveals of 3 mm, connectors 20 mm
// from the inside face, their holes 48, 80, 128 and 192 mm above the runner, which
// stands 0 mm above the bottom of 19 mm.
func TestTheBenchGetsASheetForEachCabinet(t *testing.T) {
	chest := layout.Solve(projecttest.Read(t, "../testdata/projects/one-cabinet.yaml"))
	d := sheet.Drawings.Document(chest.Plan, chest.Findings, sheet.Options{})
	if len(d.Pages) != 1 || d.Pages[0].Kind != string(sheet.ShopSheets) {
		t.Fatalf("%d pages for the chest", len(d.Pages))
	}
	all := texts(d.Pages[0])
	for _, want := range []string{
		"36",                                                           // 20 + 19 - 3
		"16",                                                           // 19 - 3
		"gap 3",                                                        //
		"top 3",                                                        //
		"drop 16",                                                      //
		"bottom 3",                                                     //
		"48 · 80 · 128 · 192", "from bottom edge: 64 · 96 · 144 · 208", // 16 more
		"594 × 320", // 600 - 2·3
		"594 × 214", // (760 - 320 - 2·3 - 2·3) / 2
		"2, 3",
	} {
		if !slices.Contains(all, want) {
			t.Errorf("the sheet does not say %q: %q", want, all)
		}
	}
	bench := layout.Solve(projecttest.Demo(t))
	if d := sheet.Drawings.Document(bench.Plan, bench.Findings, sheet.Options{}); len(d.Pages) != 3 {
		t.Errorf("%d pages for the demo", len(d.Pages))
	}
}

// Cabinets that are the same share a sheet, whatever their names; one that is
// mirrored, or has another hole, has its own.
func TestEqualCabinetsShareASheet(t *testing.T) {
	titles := func(change func(p *model.Project)) (all []string) {
		p := projecttest.Demo(t)
		p.Cabinets = append(p.Cabinets, p.Cabinets[0], p.Cabinets[1])
		p = p.Clone()
		change(p)
		r := layout.Solve(p)
		var say message.Language
		for _, page := range sheet.Make(r.Plan, r.Findings, sheet.Options{Parts: []sheet.Part{sheet.ShopSheets}}).Pages {
			if title := say.Say(page.Title); !strings.Contains(title, "(continued)") {
				all = append(all, title)
			}
		}
		return all
	}
	same := titles(func(p *model.Project) { p.Cabinets[3].Name = "Slips" })
	if len(same) != 3 || !strings.Contains(same[0], "Glazes, Slips") || !strings.Contains(same[1], "Test tiles, Test tiles") {
		t.Errorf("the sheets are %q", same)
	}
	for name, change := range map[string]func(p *model.Project){
		"another drop": func(p *model.Project) { drop := length.MM(1); p.Cabinets[3].Bays[0].Fronts[1].Drop = &drop },
		"mirrored":     func(p *model.Project) { slices.Reverse(p.Cabinets[4].Bays) },
	} {
		if got := titles(change); len(got) != 4 {
			t.Errorf("%s: the sheets are %q", name, got)
		}
	}
}

// What a sheet has no room for is in a list of its own, and findings that it tells
// are not printed twice.
func TestWhatASheetHasNoRoomForIsPrintedAll(t *testing.T) {
	p := projecttest.Demo(t)
	p.Cabinets = p.Cabinets[:1]
	for i := range 40 {
		b := p.Cabinets[0].Bays[0]
		b.Fronts = slices.Clone(b.Fronts)
		drop := length.MM(int64(i))
		b.Fronts[1].Drop = &drop
		for k := range b.Fronts {
			b.Fronts[k].Name = fmt.Sprint("Jars ", i, k)
		}
		p.Cabinets[0].Bays = append(p.Cabinets[0].Bays, b)
	}
	p.Cabinets[0].Width *= 41
	r := layout.Solve(p.Clone())
	kinds := map[string]int{}
	for _, page := range sheet.Drawings.Document(r.Plan, r.Findings, sheet.Options{}).Pages {
		kinds[page.Kind]++
	}
	if kinds["shop"] < 1 || kinds["shop"] > 2 || kinds["jig"] == 0 {
		t.Errorf("printed are %v", kinds)
	}
}
