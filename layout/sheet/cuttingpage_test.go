package sheet

import (
	"slices"
	"testing"

	"frontlay/layout/plan"
	"frontlay/model"
)

// Three cabinets 600 × 700 × 500 of 20 mm board, on sheets that hold two sides or two
// boards between them: three sheets of the one kind, three of the other.
func TestSheetsCutAlikeAreDrawnOnce(t *testing.T) {
	carcass := model.Cabinet{Name: "Low", Width: mm(600), Height: mm(700), Depth: mm(500), Bays: []model.Bay{{}}}
	project := &model.Project{
		Boards:   model.Boards{Carcass: model.Board{Thickness: mm(20)}, Front: model.Board{Thickness: mm(20), Material: "other"}},
		Saw:      model.Saw{Kerf: mm(3)},
		Cabinets: []model.Cabinet{carcass, carcass, carcass},
	}
	o := Options{Parts: []Part{CuttingPlan}}
	if pages := Make(plan.Make(project), nil, o).Pages; len(pages) != 0 {
		t.Errorf("%d pages without a stock sheet", len(pages))
	}
	project.Boards.Carcass.Stock = model.Stock{Length: mm(701), Width: mm(1010)}
	var titles, texts []string
	for _, page := range Make(plan.Make(project), nil, o).Pages {
		titles = append(titles, page.Title.String())
		for _, text := range ownTexts(page) {
			texts = append(texts, text.Say.String())
		}
	}
	if want := []string{
		"Cutting plan",
		"Board 20 mm, sheets 701 mm × 1010 mm: sheets 1–3 of 6, cut alike",
		"Board 20 mm, sheets 701 mm × 1010 mm: sheets 4–6 of 6, cut alike",
	}; !slices.Equal(titles, want) {
		t.Errorf("%q", titles)
	}
	for _, want := range []string{"1: 2 × side, Low", "2: 2 × bottom, top, Low", "(1) crosscut to 700 mm", "(2) rip to 500 mm", "138 mm × 1010 mm"} {
		if !slices.Contains(texts, want) {
			t.Errorf("%q is on no page: %q", want, texts)
		}
	}
}
