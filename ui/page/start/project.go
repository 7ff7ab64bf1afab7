package start

import (
	"frontlay/model"
	"frontlay/model/length"
)

// Project is a project to begin with: one cabinet of three drawers, without
// hardware.
func Project() *model.Project {
	return &model.Project{
		Title: "New cabinet",
		Boards: model.Boards{
			Carcass: model.Board{Thickness: length.MM(18)},
			Front:   model.Board{Thickness: length.MM(19)},
			Back:    model.Board{Thickness: length.MM(8)},
		},
		Reveals: model.Reveals{Left: 1500 * length.Micrometre, Right: 1500 * length.Micrometre, Top: length.MM(2), Gap: length.MM(3)},
		Cabinets: []model.Cabinet{{
			Name: "Cabinet 1", Width: length.MM(600), Height: length.MM(720), Depth: length.MM(560), Plinth: length.MM(100),
			Bays: []model.Bay{{Fronts: []model.Front{
				{Share: 1, Drawer: model.DrawerAuto}, {Share: 1, Drawer: model.DrawerAuto}, {Share: 1, Drawer: model.DrawerAuto},
			}}},
		}},
	}
}
