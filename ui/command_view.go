package ui

import (
	"fyne.io/fyne/v2"

	"frontlay/model"
	"frontlay/model/edit"
	"frontlay/model/length"
	"frontlay/model/message"
	"frontlay/ui/look"
	"frontlay/ui/screen"
)

func (w *window) viewCommands() []command {
	mode := func(m look.Mode) func() {
		return func() {
			w.theme.Mode = m
			w.app.Preferences().SetInt(prefLook, int(m))
			w.app.Settings().SetTheme(w.theme)
			for _, one := range w.group.windows {
				one.restyle()
			}
		}
	}
	isMode := func(m look.Mode) func() bool { return func() bool { return w.theme.Mode == m } }
	isUnit := func(u length.Unit) func() bool { return func() bool { return w.session.Project().Unit == u } }
	unit := func(u length.Unit) func() {
		return func() { w.apply(edit.SetUnit{Unit: u}) }
	}
	picture := func(p screen.Picture) func() {
		return func() {
			w.screen.ShowPicture(p)
			w.strip.update()
		}
	}
	return []command{
		{name: "elevation", menu: "View", label: "Elevation", key: fyne.KeyF2, mod: ctrl, do: picture(screen.Elevation)},
		{name: "section", menu: "View", label: "Section through the bay", key: fyne.KeyF3, mod: ctrl, do: picture(screen.Section)},
		{name: "rear", menu: "View", label: "Rear face of the front", key: fyne.KeyF4, mod: ctrl, do: picture(screen.RearFace)},
		{name: "drawer", menu: "View", label: "Plan of the drawer", key: fyne.KeyF5, mod: ctrl, do: picture(screen.DrawerPlan)},
		{name: "template", menu: "View", label: "Template of the front", key: fyne.KeyF8, mod: ctrl, do: w.templatePage,
			can: func() bool { return len(w.drilled()) > 0 }},
		{name: "through", menu: "View", label: "See through the fronts", key: fyne.KeyR, mod: ctrl, do: func() {
			w.screen.SetSeeThrough(!w.screen.SeeThrough())
			w.app.Preferences().SetBool(prefThrough, w.screen.SeeThrough())
			w.strip.update()
		}},
		{name: "rulers", menu: "View", label: "Rulers and grid", key: fyne.KeyF6, mod: ctrl, do: func() {
			w.screen.SetRulers(!w.screen.Rulers())
			w.app.Preferences().SetBool(prefRulers, w.screen.Rulers())
		}},
		{name: "fit", menu: "View", label: "Show the whole run", key: fyne.Key0, mod: ctrl, bare: "0", after: true, do: w.screen.Fit},
		{name: "closer", menu: "View", label: "Closer", key: fyne.KeyEqual, mod: ctrl, bare: "+", do: func() { w.screen.Zoom(1.25) }},
		{name: "further", menu: "View", label: "Further away", key: fyne.KeyMinus, mod: ctrl, bare: "-", do: func() { w.screen.Zoom(0.8) }},
		{name: "zoomselection", menu: "View", label: "Show what is selected", key: fyne.KeyM, mod: ctrl, do: w.screen.ZoomToSelection,
			can: func() bool { return len(w.session.Selection()) > 0 }},
		{name: "higher", menu: "View", label: "Drawing higher", key: fyne.KeyF9, mod: ctrl, after: true, do: func() { w.movePanels(panelStep, 0) }},
		{name: "lower", menu: "View", label: "Drawing lower", key: fyne.KeyF9, mod: ctrl | shift, do: func() { w.movePanels(-panelStep, 0) }},
		{name: "wider", menu: "View", label: "Drawing wider", key: fyne.KeyF11, mod: ctrl, do: func() { w.movePanels(0, panelStep) }},
		{name: "narrower", menu: "View", label: "Drawing narrower", key: fyne.KeyF11, mod: ctrl | shift, do: func() { w.movePanels(0, -panelStep) }},
		{name: "nextfinding", menu: "Check", label: "Next finding", key: fyne.KeyF, mod: ctrl, do: func() { w.findings.Choose(1) },
			can: func() bool { return len(w.session.Result().Findings) > 0 }},
		{name: "lastfinding", menu: "Check", label: "Finding before", key: fyne.KeyF, mod: ctrl | shift, do: func() { w.findings.Choose(-1) },
			can: func() bool { return len(w.session.Result().Findings) > 0 }},
		{name: "fix", menu: "Check", label: "Mend the finding", key: fyne.KeyH, mod: ctrl, do: w.fix,
			can: func() bool { return len(w.session.Result().Findings) > 0 }},
		{name: "rules", menu: "Check", label: "Rules of the check…", do: w.showRules},
		{name: "mm", menu: "Settings", label: "Millimetres", do: unit(length.UnitMM), checked: isUnit(length.UnitMM)},
		{name: "cm", menu: "Settings", label: "Centimetres", do: unit(length.UnitCM), checked: isUnit(length.UnitCM)},
		{name: "inch", menu: "Settings", label: "Inches, fractions", do: unit(length.UnitInch), checked: isUnit(length.UnitInch)},
		{name: "inchdecimal", menu: "Settings", label: "Inches, decimal", do: unit(length.UnitInchDecimal), checked: isUnit(length.UnitInchDecimal)},
		{name: "system", menu: "Settings", label: "Colours of the desktop", after: true, do: mode(look.System), checked: isMode(look.System)},
		{name: "light", menu: "Settings", label: "Light", do: mode(look.LightMode), checked: isMode(look.LightMode)},
		{name: "dark", menu: "Settings", label: "Dark", do: mode(look.DarkMode), checked: isMode(look.DarkMode)},
		{name: "contrast", menu: "Settings", label: "High contrast", do: mode(look.ContrastMode), checked: isMode(look.ContrastMode)},
		{name: "large", menu: "Settings", label: "Large text", after: true, checked: func() bool { return w.theme.Large }, do: func() {
			for _, one := range w.group.windows {
				one.keepPanels()
			}
			w.theme.Large = !w.theme.Large
			w.app.Preferences().SetBool(prefLarge, w.theme.Large)
			w.app.Settings().SetTheme(w.theme)
			for _, one := range w.group.windows {
				one.rebuild()
			}
		}},
	}
}

// restyle shows everything in another look.
func (w *window) restyle() {
	w.updateMenus()
	w.screen.Refresh()
	w.inspector.Rebuild()
	w.findings.Update()
}

func (w *window) fix() {
	if !w.findings.Fix() {
		w.refuse(message.New("Choose a finding that the program can mend: its changes stand beside it."))
	}
}

func placeOfCabinet(i int) model.Place { return model.Place{Cabinet: i, Bay: -1, Front: -1} }
