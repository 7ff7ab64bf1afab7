package ui

import "fyne.io/fyne/v2"

func (w *window) fileCommands() []command {
	return []command{
		{name: "new", menu: "File", label: "New…", key: fyne.KeyN, mod: ctrl, do: w.showStart},
		{name: "newwindow", menu: "File", label: "New window", key: fyne.KeyN, mod: ctrl | shift, do: w.newWindow},
		{name: "open", menu: "File", label: "Open…", key: fyne.KeyO, mod: ctrl, do: w.openDialog},
		{name: "demo", menu: "File", label: "Open the demo", do: w.openDemo},
		{name: "save", menu: "File", label: "Save", key: fyne.KeyS, mod: ctrl, after: true, do: func() { w.save(nil) }},
		{name: "saveas", menu: "File", label: "Save as…", key: fyne.KeyS, mod: ctrl | shift, do: func() { w.saveAs(nil) }},
		{name: "print", menu: "File", label: "Templates and drawings as PDF…", key: fyne.KeyP, mod: ctrl, after: true, do: w.printPage},
		{name: "export", menu: "File", label: "Files for machines and other programs…", do: w.exportFiles,
			can: func() bool { return w.options.Export != nil }},
		{name: "quit", menu: "File", label: "Close", key: fyne.KeyQ, mod: ctrl, after: true, do: w.quit},
	}
}
