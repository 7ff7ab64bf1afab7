package ui

import (
	"image"

	"fyne.io/fyne/v2"

	"frontlay/layout/sheet"
)

// shots are the pictures of README and manual. After an entry is added or changed, and
// after what one shows has changed: make picture, and look at them. A page of paper takes
// no time to compare, a window a third of a second in each language: take few of those.
var shots = []shot{
	{name: "pictures/window", one: true, size: fyne.NewSize(1240, 690), set: func(w *window) {
		w.desk.Screen.SetSeeThrough(true)
		w.session.Select(w.face(2))
	}},
	{name: "pictures/tile-chest", one: true, project: "tile-chest.yaml", size: fyne.NewSize(1000, 620), set: func(*window) {}},
	{name: "pictures/packing-room", one: true, project: "packing-room.yaml", size: fyne.NewSize(1000, 620), set: func(*window) {}},
	{name: "pictures/kiln-room", one: true, project: "kiln-room.yaml", size: fyne.NewSize(1000, 620), set: func(w *window) { w.desk.Findings.Choose(0) }},
	{name: "manual/pictures/bottom-shows", set: func(w *window) {
		spoil(w)
		w.desk.Findings.Choose(1)
	}},
	{name: "manual/pictures/figures-of-a-sheet", size: fyne.NewSize(1240, 690), cut: image.Rect(0, 0, 1240, 644), set: shown("sheets")},
	{name: "manual/pictures/shop-sheet", project: "tile-chest.yaml", page: sheet.ShopSheets},
	{name: "manual/pictures/corner-template", project: "tile-chest.yaml", page: sheet.CornerTemplates},
	{name: "manual/pictures/hanging", project: "tile-chest.yaml", page: sheet.Hanging},
	{name: "manual/pictures/divide", set: hand("", "division above 1", 0, 24, true)},
	{name: "manual/pictures/proposals", set: shown("propose")},
	{name: "manual/pictures/print", set: func(w *window) { w.do("print") }},
	{name: "manual/pictures/jig", page: sheet.JigSettings, pixels: 1200, cut: image.Rect(20, 35, 828, 1000)},
	{name: "manual/pictures/sections", page: sheet.Sections, pixels: 1200, cut: image.Rect(90, 150, 760, 920)},
}
