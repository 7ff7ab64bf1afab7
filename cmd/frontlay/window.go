//go:build cgo || ci

package main

import (
	"bytes"
	"fmt"
	"runtime"

	"fyne.io/fyne/v2"
	"fyne.io/fyne/v2/app"

	"frontlay/assets"
	"frontlay/layout"
	"frontlay/layout/sheet"
	"frontlay/model"
	"frontlay/model/yamlfile"
	"frontlay/pdfout"
	"frontlay/ui"
)

// runWindow opens the window on the project that the arguments name, or on the
// demo. Without a display it says so and tells what works without one.
func runWindow(args []string, c console) int {
	if len(args) > 1 {
		fmt.Fprintln(c.err, "frontlay: name one project at most. See frontlay --help.")
		return exitFailed
	}
	if runtime.GOOS != "windows" && runtime.GOOS != "darwin" && c.getenv("DISPLAY") == "" && c.getenv("WAYLAND_DISPLAY") == "" {
		fmt.Fprintln(c.err, "There is no display for the window. The commands work without one: see frontlay --help.")
		return exitFailed
	}
	o := ui.Options{
		Files: windowFiles{}, Print: printProject,
		Date: c.now().Format("2006-01-02"), Places: c.getenv("FRONTLAY_PLACES"),
	}
	if len(args) == 1 {
		o.Open = args[0]
	}
	a := app.NewWithID("io.frontlay.frontlay")
	a.SetIcon(fyne.NewStaticResource("icon.png", assets.IconPNG()))
	ui.Run(a, o)
	return exitFine
}

// windowFiles opens and saves projects for the window.
type windowFiles struct{}

func (windowFiles) Demo() (*yamlfile.File, error)            { return openDemo() }
func (windowFiles) Open(path string) (*yamlfile.File, error) { return openProject(path) }

func (windowFiles) Save(path string, f *yamlfile.File, p *model.Project) error {
	data, err := f.Write(p)
	if err != nil {
		return err
	}
	return plain(saveBytes(path, data))
}

// printProject writes the pages of a project as a PDF.
func printProject(path string, p *model.Project, r layout.Result, o sheet.Options) error {
	var pdf bytes.Buffer
	if err := pdfout.Write(&pdf, sheet.Make(r.Plan, r.Findings, o), pdfout.Options{}); err != nil {
		return fmt.Errorf("%s: the PDF could not be made: %w", path, err)
	}
	return plain(saveBytes(path, pdf.Bytes()))
}
