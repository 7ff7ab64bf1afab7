package desk

import (
	"frontlay/layout/drawing"
	"fyne.io/fyne/v2"

	"frontlay/model/message"
	"frontlay/ui/command"
	"frontlay/ui/screen"
	"frontlay/ui/tool"
)

// DrawRows are the commands for what the hand does.
func (d *Desk) DrawRows() []command.Command {
	return []command.Command{
		{Name: "select", Menu: "Draw", Words: "Select and drag", Button: command.Button{Icon: "select", Words: "Select", Group: command.Hand}, Key: fyne.Key1, Mod: command.Ctrl, Bare: "Esc",
			Checked: inHand(d, tool.Idle{}),
			Do: func() {
				d.take(tool.Idle{}, message.New("Click or draw a frame to select, drag divisions and edges. Space and drag moves the picture, the wheel zooms."))
			}},
		{Name: "drawdivision", Menu: "Draw", Words: "Draw divisions", Button: command.Button{Icon: "division", Words: "Division", Group: command.Hand}, On: command.Nothing, Key: fyne.Key2, Mod: command.Ctrl,
			Checked: inHand(d, tool.DrawDivision{}),
			Do: func() {
				d.take(tool.DrawDivision{}, message.New("Click a front where its division is to be, or type the height below it and press Enter. Shift frees it, Esc ends drawing."))
			}},
		{Name: "drawpartition", Menu: "Draw", Words: "Draw partitions", Button: command.Button{Icon: "partition", Words: "Partition", Group: command.Hand}, On: command.Nothing, Key: fyne.Key3, Mod: command.Ctrl,
			Checked: inHand(d, tool.DrawPartition{}),
			Do: func() {
				d.take(tool.DrawPartition{}, message.New("Click into a bay where the partition is to be, or type the clear width at its left and press Enter. Shift frees it, Esc ends drawing."))
			}},
		{Name: "drawcabinet", Menu: "Draw", Words: "Draw a cabinet", Button: command.Button{Icon: "cabinet", Words: "Cabinet", Group: command.Hand}, On: command.Nothing, Key: fyne.Key4, Mod: command.Ctrl,
			Checked: inHand(d, tool.DrawCabinet{}),
			Do: func() {
				d.take(tool.DrawCabinet{}, message.New("Click beside the run where the new cabinet's upper corner is to be, or type its width and press Enter."))
			}},
		{Name: "type", Menu: "Draw", Words: "Type the size of what is selected", On: command.Fronts | command.Divisions | command.Bays | command.Cabinets, Bare: "Enter", After: true,
			Can: func() bool { return len(d.host.Session().Selection()) > 0 },
			Do:  d.Screen.TypeSelected},
	}
}

// inHand tells whether a kind of tool is in the hand.
func inHand(d *Desk, t tool.Tool) func() bool {
	return func() bool { return drawn(d.Screen.Hand()) == drawn(t) }
}

// drawn is what a tool draws; all that selects and drags draws nothing.
func drawn(t tool.Tool) drawing.SubjectKind {
	switch t.(type) {
	case tool.DrawDivision:
		return drawing.DivisionThing
	case tool.DrawPartition:
		return drawing.PartitionThing
	case tool.DrawCabinet:
		return drawing.CabinetThing
	}
	return drawing.Nothing
}

// held shows which tool is in the hand, where that is another.
func (d *Desk) held() {
	if now := drawn(d.Screen.Hand()); now != d.drawn {
		d.drawn = now
		d.host.Update()
	}
}

// PictureRows are the commands for what is looked at.
func (d *Desk) PictureRows() []command.Command {
	return []command.Command{
		{Name: "elevation", Menu: "View", Words: "Elevation", Button: command.Button{Icon: "elevation", Words: "Elevation", Group: command.Pictures}, Key: fyne.Key5, Mod: command.Ctrl, Do: d.show(screen.Elevation), Checked: d.shows(screen.Elevation)},
		{Name: "section", Menu: "View", Words: "Section through the bay", Button: command.Button{Icon: "section", Words: "Section", Group: command.Pictures}, Key: fyne.Key6, Mod: command.Ctrl, Do: d.show(screen.Section), Checked: d.shows(screen.Section)},
		{Name: "rear", Menu: "View", Words: "Rear face of the front", Button: command.Button{Icon: "rear", Words: "Rear face", Group: command.Pictures}, Key: fyne.Key7, Mod: command.Ctrl, Do: d.show(screen.RearFace), Checked: d.shows(screen.RearFace)},
		{Name: "drawer", Menu: "View", Words: "Plan of the drawer", Button: command.Button{Icon: "drawer", Words: "Drawer", Group: command.Pictures}, Key: fyne.Key8, Mod: command.Ctrl, Do: d.show(screen.DrawerPlan), Checked: d.shows(screen.DrawerPlan)},
	}
}

// StudyRows are the commands that show what the studies of the job come to.
func (d *Desk) StudyRows() []command.Command {
	var rows []command.Command
	for _, s := range screen.Studies() {
		rows = append(rows, command.Command{Name: s.Command, Menu: "Check", Words: s.Words, Do: d.show(s.Picture), Checked: d.shows(s.Picture),
			Can: func() bool { return len(d.host.Session().Project().Cabinets) > 0 }})
	}
	return rows
}

// show gives a command that shows a picture, shows one that tells whether it is shown.
func (d *Desk) show(p screen.Picture) func() {
	return func() {
		d.Screen.ShowPicture(p)
		d.host.Update()
	}
}

func (d *Desk) shows(p screen.Picture) func() bool {
	return func() bool { return d.Screen.Picture() == p }
}

// SightRows are the commands for how much of it is seen.
func (d *Desk) SightRows() []command.Command {
	return []command.Command{
		{Name: "through", Menu: "View", Words: "See through the fronts", Button: command.Button{Icon: "through", Words: "See through", Group: command.Sight}, On: command.Nothing, Key: fyne.KeyR, Mod: command.Ctrl, Checked: d.Screen.SeeThrough,
			Can: func() bool { return d.Screen.Picture() == screen.Elevation },
			Do:  d.turn(prefThrough, d.Screen.SeeThrough, d.Screen.SetSeeThrough)},
		{Name: "dimensions", Menu: "View", Words: "Dimensions", Button: command.Button{Icon: "dimensions", Group: command.Size}, Key: fyne.KeyD, Mod: command.Ctrl | command.Shift, Checked: d.Screen.Dimensions,
			Do: d.turn(prefDimensions, d.Screen.Dimensions, d.Screen.SetDimensions)},
		{Name: "rulers", Menu: "View", Words: "Rulers and grid", Key: fyne.KeyR, Mod: command.Ctrl | command.Shift, Checked: d.Screen.Rulers,
			Do: d.turn(prefRulers, d.Screen.Rulers, d.Screen.SetRulers)},
		{Name: "fit", Menu: "View", Words: "Show the whole run", On: command.Nothing, Key: fyne.Key0, Mod: command.Ctrl, Bare: "0", After: true, Do: d.Screen.Fit},
		{Name: "zoomin", Menu: "View", Words: "Closer", Key: fyne.KeyEqual, Mod: command.Ctrl, Bare: "+", Do: func() { d.Screen.Zoom(1.25) }},
		{Name: "zoomout", Menu: "View", Words: "Further away", Key: fyne.KeyMinus, Mod: command.Ctrl, Bare: "-", Do: func() { d.Screen.Zoom(0.8) }},
		{Name: "zoomselection", Menu: "View", Words: "Show what is selected", Key: fyne.KeyM, Mod: command.Ctrl, Do: d.Screen.ZoomToSelection,
			Can: func() bool { return len(d.host.Session().Selection()) > 0 }},
		{Name: "inspector", Menu: "View", Words: "Inspector", Button: command.Button{Icon: "inspector", Group: command.Beside}, Bare: "F9", After: true, Checked: func() bool { return !d.panes.hidden }, Do: d.turnInspector},
		{Name: "nextpane", Menu: "View", Words: "To the next pane", Bare: "F6", Scope: command.Anywhere, Do: d.nextPane},
		{Name: "wider", Menu: "View", Words: "Drawing wider", Key: fyne.KeyRight, Mod: command.Ctrl | command.Shift, Fields: command.AllFields, Do: func() { d.widen(-step) }},
		{Name: "narrower", Menu: "View", Words: "Drawing narrower", Key: fyne.KeyLeft, Mod: command.Ctrl | command.Shift, Fields: command.AllFields, Do: func() { d.widen(step) }},
	}
}

// turn gives a command that switches something of the drawing on and off, and keeps
// it for the next window.
func (d *Desk) turn(pref string, is func() bool, set func(bool)) func() {
	return func() {
		set(!is())
		d.host.Preferences().SetBool(pref, is())
		d.host.Update()
	}
}

// HintRows is the command that shows the hints to begin with.
func (d *Desk) HintRows() []command.Command {
	return []command.Command{
		{Name: "hints", Menu: "Help", Words: "Hints on the drawing", Checked: func() bool { return d.pins.doneOnes() != allHints }, Do: func() {
			d.pins.turn()
			d.host.Update()
		}},
	}
}

// CheckRows are the commands for what the check has found.
func (d *Desk) CheckRows() []command.Command {
	found := func() bool { return len(d.host.Session().Result().Findings) > 0 }
	return []command.Command{
		{Name: "findings", Menu: "Check", Words: "What the check has found", Key: fyne.KeyF, Mod: command.Ctrl, Checked: d.Findings.Open, Do: d.Findings.Turn},
		{Name: "nextfinding", Menu: "Check", Words: "Next finding", Key: fyne.KeyI, Mod: command.Ctrl, Do: func() { d.Findings.Choose(1) },
			Can: found},
		{Name: "lastfinding", Menu: "Check", Words: "Finding before", Key: fyne.KeyI, Mod: command.Ctrl | command.Shift, Do: func() { d.Findings.Choose(-1) },
			Can: found},
		{Name: "fix", Menu: "Check", Words: "Mend the finding", Key: fyne.KeyH, Mod: command.Ctrl, Do: d.fix,
			Can: found},
	}
}
