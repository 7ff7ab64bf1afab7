// Package output is what the pages share that write something for the bench: their
// two halves, what the choices come to, work in the background, what was written,
// and choices that are kept with the project.
package output

import (
	"context"
	"net/url"
	"path/filepath"
	"slices"
	"strings"

	"fyne.io/fyne/v2"
	"fyne.io/fyne/v2/container"
	"fyne.io/fyne/v2/widget"

	"frontlay/model/message"
	"frontlay/ui/ask"
	"frontlay/ui/field"
)

// Host is what the pages need of the window around them.
type Host interface {
	Ask() *ask.Asker
	Preferences() fyne.Preferences
	// OpenURL opens what another program shows.
	OpenURL(*url.URL) error
	Tell(message.Message)
}

// Outcome says what the choices on a page come to, and how writing went.
type Outcome struct {
	Object fyne.CanvasObject
	Need   *field.Label // what the choices come to
	Told   *field.Label // how writing went; before, what to see to

	host  Host
	offer *fyne.Container // what can be done with what was written
}

// New makes one that says nothing yet.
func New(h Host) *Outcome {
	o := &Outcome{host: h, Need: field.NewLabel(""), Told: field.NewLabel(""), offer: container.NewGridWithColumns(2)}
	o.Told.Wrapping = fyne.TextWrapWord
	o.Need.Wrapping, o.Need.TextStyle.Bold = fyne.TextWrapWord, true
	o.Object = field.Column(o.Need, o.Told, container.NewPadded(o.offer))
	o.offer.Hide()
	return o
}

// Before says what to see to; what was written last is not spoken of any more.
func (o *Outcome) Before(text string) { o.tell(text, widget.MediumImportance) }

// Tell tells how writing went, until something else is chosen.
func (o *Outcome) Tell(m message.Message, failed bool) {
	i := widget.SuccessImportance
	if failed {
		i = widget.DangerImportance
	}
	o.tell(o.host.Ask().Say().Say(m), i)
}

func (o *Outcome) tell(text string, i widget.Importance) {
	o.Told.Importance = i
	o.Told.SetText(text)
	o.offer.Hide()
	o.offer.Objects = nil
}

// Open is a file that can be opened, and what the button for it says.
type Open struct {
	Text message.Message
	Path string
}

// Offer offers to open files that were written, and to show their folder.
func (o *Outcome) Offer(folder string, files ...Open) {
	for _, f := range append(files, Open{message.New("Show in folder"), folder}) {
		o.offer.Add(field.NewButton(o.host.Ask().Say().Say(f.Text), func() { o.open(f.Path) }))
	}
	o.offer.Show()
}

// open lets the desktop show a file or folder.
func (o *Outcome) open(path string) {
	abs, err := filepath.Abs(path)
	if err == nil {
		err = o.host.OpenURL(&url.URL{Scheme: "file", Path: filepath.ToSlash(abs)})
	}
	if err != nil {
		o.host.Ask().Complain(err)
	}
}

// Halves puts a form, what it comes to and the buttons at the left of a page, and
// what will be written at the right.
func Halves(form fyne.CanvasObject, o *Outcome, buttons []fyne.CanvasObject, right fyne.CanvasObject) fyne.CanvasObject {
	_, scrolled := field.Scrolled(form)
	below := field.Column(o.Object, container.NewGridWithColumns(len(buttons), buttons...))
	return field.Abreast([]float32{0.34, 0.66}, container.NewBorder(nil, container.NewPadded(below), nil, nil, scrolled), right)
}

// Work does something in the background, with a bar and a way to stop. It may tell
// how far it is; stopped, its context is done. done hears how that went. What it
// returns is closed once everything is told.
func Work(a *ask.Asker, title string, work func(ctx context.Context, progress func(done, of int)) error, done func(stopped bool, err error)) <-chan struct{} {
	finished := make(chan struct{})
	ctx, stop := context.WithCancel(context.Background())
	bar := widget.NewProgressBar()
	d := a.Notice(title, a.Text("Stop"), container.New(field.AtLeast(360), bar), nil, stop)
	go func() {
		err := work(ctx, func(done, of int) {
			fyne.Do(func() { bar.SetValue(float64(done) / float64(max(of, 1))) })
		})
		stopped := ctx.Err() != nil
		fyne.Do(func() {
			d.Hide()
			done(stopped, err)
			close(finished)
		})
	}()
	return finished
}

const (
	// prefChoices keeps the choices, an entry for each project and page.
	prefChoices = "choices of pages"
	// mostChoices is how many entries are kept.
	mostChoices = 40
	// between stands between the parts of an entry; no path and no choice has it.
	between = "\x1f"
)

// Choices are those of one page, kept with the project's path. A project without a
// file has none.
type Choices struct {
	Host Host
	Page string // its name, for code
}

func (c Choices) entry() string { return c.Page + between + c.Host.Ask().Own() + between }

// Last gives what was chosen last; false where nothing was.
func (c Choices) Last() ([]string, bool) {
	if c.Host.Ask().Own() == "" {
		return nil, false
	}
	for _, e := range c.Host.Preferences().StringList(prefChoices) {
		if rest, ok := strings.CutPrefix(e, c.entry()); ok {
			return strings.Split(rest, between), true
		}
	}
	return nil, false
}

// Keep keeps what is chosen, in the place of what was.
func (c Choices) Keep(chosen ...string) {
	if c.Host.Ask().Own() == "" {
		return
	}
	all := slices.DeleteFunc(c.Host.Preferences().StringList(prefChoices), func(e string) bool { return strings.HasPrefix(e, c.entry()) })
	all = append([]string{c.entry() + strings.Join(chosen, between)}, all...)
	c.Host.Preferences().SetStringList(prefChoices, all[:min(len(all), mostChoices)])
}
