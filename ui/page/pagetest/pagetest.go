// Package pagetest is the window around a page under test.
package pagetest

import (
	"net/url"
	"testing"

	"fyne.io/fyne/v2"
	"fyne.io/fyne/v2/container"
	"fyne.io/fyne/v2/test"

	"frontlay/assets"
	"frontlay/layout"
	"frontlay/layout/check"
	"frontlay/layout/drawing"
	"frontlay/model"
	"frontlay/model/edit"
	"frontlay/model/length"
	"frontlay/model/message"
	"frontlay/model/yamlfile"
	"frontlay/ui/ask"
	"frontlay/ui/field"
	"frontlay/ui/look"
	"frontlay/ui/session"
	"frontlay/ui/tool"
)

// Host is a window without a desk, on a project.
type Host struct {
	Win     fyne.Window
	Told    message.Message // what was told last
	Refused message.Message // what was refused last
	App     fyne.App
	Begun   *model.Project // a new project
	Path    string         // of the project's file
	Opened  string         // what another program was to show last

	session *session.Session
	ask     *ask.Asker
}

// New makes one on the demo.
func New(t testing.TB) *Host {
	t.Helper()
	sheet := func(s string) (string, []byte, error) {
		data, _ := assets.Sheet(s)
		return s, data, nil
	}
	f, err := yamlfile.Read(assets.DemoName, assets.Demo(), sheet, check.Limits())
	if err != nil {
		t.Fatal(err)
	}
	h := &Host{App: test.NewTempApp(t)}
	h.App.Settings().SetTheme(&look.Theme{Mode: look.LightMode})
	h.Win = test.NewTempWindow(t, container.NewStack())
	h.Win.Resize(fyne.NewSize(1240, 690))
	h.session = session.New(f.Project, layout.Solve)
	h.ask = &ask.Asker{Win: h.Win, Say: h.Say, Begin: func() string { return "" }, Own: func() string { return h.Path }}
	return h
}

// Session is the project at work.
func (h *Host) Session() *session.Session { return h.session }

// Say is English in the project's unit.
func (h *Host) Say() message.Language { return message.Language{Unit: h.session.Project().Unit} }

// Ask asks over the window.
func (h *Host) Ask() *ask.Asker { return h.ask }

// Preferences are of the test alone.
func (h *Host) Preferences() fyne.Preferences { return h.App.Preferences() }

// Tell notes what is told.
func (h *Host) Tell(m message.Message) { h.Told = m }

// Refuse notes what is refused.
func (h *Host) Refuse(m message.Message) { h.Refused = m }

// Do makes an edit, as the window does.
func (h *Host) Do(e edit.Edit, made ...drawing.Subject) bool {
	if err := h.session.Do(e); err != nil {
		h.Refuse(tool.Said(err))
		return false
	}
	h.session.Select(made...)
	h.Tell(e.Label())
	return true
}

// FileName is that of the demo.
func (h *Host) FileName() string { return "bench" }

// OpenURL notes what is to be opened.
func (h *Host) OpenURL(u *url.URL) error {
	h.Opened = u.String()
	return nil
}

// Face is what is selected of a front, by its number.
func (h *Host) Face(n int) drawing.Subject {
	return session.Front(h.session.Result().Plan.Fronts[n-1].Place)
}

// LayOut lays the window out anew, as the desktop does before each frame.
func (h *Host) LayOut() {
	small := fyne.NewSize(1366, 690) // on a screen of 1366 × 768
	h.Win.Resize(small.AddWidthHeight(1, 0))
	h.Win.Resize(small)
}

// CloseOverlays puts questions away without an answer.
func (h *Host) CloseOverlays() {
	c := h.Win.Canvas()
	for top := c.Overlays().Top(); top != nil; top = c.Overlays().Top() {
		c.Overlays().Remove(top)
	}
}

// Answer presses a button of what lies over the window.
func (h *Host) Answer(t testing.TB, text string) {
	t.Helper()
	if top := h.Win.Canvas().Overlays().Top(); top != nil {
		for _, o := range test.LaidOutObjects(top) {
			if b, ok := o.(*field.Button); ok && b.Text == text {
				test.Tap(b)
				return
			}
		}
	}
	t.Fatalf("nothing asks %q", text)
}

// Drafted hears of a draft.
func (h *Host) Drafted() {}

// Texts are those of the labels in an object.
func Texts(in fyne.CanvasObject) string {
	all := ""
	for _, o := range test.LaidOutObjects(in) {
		if l, ok := o.(*field.Label); ok {
			all += l.Text + "\n"
		}
	}
	return all
}

// Unit is that of the demo.
func (h *Host) Unit() length.Unit { return h.session.Project().Unit }

// Begin notes the project that is begun.
func (h *Host) Begin(p *model.Project) { h.Begun = p }
