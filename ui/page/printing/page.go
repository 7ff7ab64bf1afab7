// Package printing is the page for printing: drawings, lists and templates, as a
// PDF or on a printer.
package printing

import (
	"slices"
	"strconv"
	"strings"

	"fyne.io/fyne/v2"
	"fyne.io/fyne/v2/container"
	fynelayout "fyne.io/fyne/v2/layout"
	"fyne.io/fyne/v2/widget"

	"frontlay/layout/sheet"
	"frontlay/ui/ask"
	"frontlay/ui/field"
	"frontlay/ui/page/output"
	"frontlay/ui/screen"
	"frontlay/ui/session"
)

// Host is what the page needs of the window around it.
type Host interface {
	output.Host
	Session() *session.Session
	// FileName is what files of the project are called, without an extension.
	FileName() string
}

// System is what the computer can do with pages.
type System struct {
	Write Write
	// Printer, where it is given, prints without a PDF in between.
	Printer Printer
	// Known keeps what is known of printers; nil: nothing is.
	Known KnownPrinters
	// Date gives the date and time as they are to be printed; nil: none.
	Date func() string
}

// Write writes finished pages as a PDF; it is called in the background and
// tells how far it is. Where progress fails it ends with that error and writes
// nothing.
type Write func(path string, d sheet.Document, progress func(page, pages int) error) error

// Page is the page on which is chosen what to print; it shows every sheet
// before.
type Page struct {
	Object fyne.CanvasObject

	host    Host
	system  System
	ask     *ask.Asker
	options sheet.Options
	docs    []sheet.Document // drawings, templates, labels: a file each
	pages   []sheet.Page     // of all
	at      int
	zoom    float32 // 1: the whole page is seen

	picture *screen.Still
	frame   *container.Scroll
	outcome *output.Outcome
	choices output.Choices
	title   *field.Label
	fronts  *field.Text
	paper   *field.Offer
	wrong   []*field.Mistake
	asking  bool // for the printers
	form    *fyne.Container
	chosen  bool // the parts are, one by one; else those for a place of work are printed
	places  *field.Choice
	comes   *field.Label // what is printed for the place
	parts   *fyne.Container
	boxes   map[sheet.Part]*field.Check
	labels  labels
	write   *field.Button
	print   *field.Button
	keeps   bool // what is chosen
	begun   bool // the page is whole, and what is chosen on it makes pages
}

// New makes the page. It begins with what was chosen for the project last.
func New(h Host, s System) *Page {
	p := laidOut(h, s)
	if last, ok := p.choices.Last(); ok {
		p.fronts.SetText(last[0])
		p.take(last[1:])
	}
	p.keeps = true
	p.begin()
	return p
}

// Templates makes the page with the templates of the fronts that are selected.
func Templates(h Host, s System) *Page {
	p := laidOut(h, s)
	p.take([]string{string(sheet.CornerTemplates)})
	p.fronts.SetText(strings.Join(Drilled(h.Session()), ", "))
	p.begin()
	return p
}

// Drilled are the numbers of the selected fronts that have holes to drill.
func Drilled(s *session.Session) []string {
	var numbers []string
	pl := s.CommittedResult().Plan
	for _, at := range s.SelectedFronts() {
		if f := pl.FrontAt(at); f != nil && len(f.Holes) > 0 {
			numbers = append(numbers, strconv.Itoa(f.Number))
		}
	}
	return numbers
}

// begin makes the pages for the first time: while the page is put together none
// of its fields does.
func (p *Page) begin() {
	p.begun = true
	p.make()
}

func laidOut(h Host, s System) *Page {
	p := &Page{host: h, system: s, ask: h.Ask(), zoom: 1, outcome: output.New(h), choices: output.Choices{Host: h, Page: "print"}, title: field.NewLabel(""), comes: field.NewLabel(""), parts: field.Column(), boxes: map[sheet.Part]*field.Check{}}
	p.options = sheet.Options{Say: p.ask.Say(), For: sheet.Bench}
	p.comes.Wrapping = fyne.TextWrapWord
	p.picture = screen.NewPage(&sheet.Page{}, p.options.Say, fyne.NewSize(200, 260))
	for _, part := range sheet.Parts() {
		p.parts.Add(p.partBox(part))
	}
	p.write = field.NewButton(p.ask.Text("Write PDF…"), p.writePDF)
	p.write.Importance = widget.HighImportance
	p.print = field.NewButton(p.ask.Text("Print…"), func() { p.printNow() })
	p.form = field.Column(
		field.Heading(p.ask.Text("What to print")), p.placesRow(), p.comes, p.parts,
		field.Heading(p.ask.Text("Fronts")), p.frontsRow(),
		field.Heading(p.ask.Text("Paper")), p.paperRow(), p.correctionRow(), p.labelRows(),
	)
	buttons := []fyne.CanvasObject{p.write}
	if p.system.Printer != nil {
		buttons = append(buttons, p.print)
	}
	turn := container.NewHBox(
		fynelayout.NewSpacer(),
		field.NewButton(p.ask.Text("Previous"), func() { p.turn(-1) }),
		p.title,
		field.NewButton(p.ask.Text("Next"), func() { p.turn(1) }),
		field.NewButton("–", func() { p.enlarge(1 / 1.5) }),
		field.NewButton("+", func() { p.enlarge(1.5) }),
		fynelayout.NewSpacer(),
	)
	view := field.NewView(p.picture)
	p.frame = view.Scroll
	p.Object = output.Halves(p.form, p.outcome, buttons, container.NewBorder(nil, container.NewPadded(turn), nil, nil, view))
	return p
}

// Focus brings the keys to the button that most come for.
func (p *Page) Focus() {
	if c := field.CanvasOf(p.write); c != nil {
		c.Focus(p.write)
	}
}

// placesRow chooses the place of work that the paper is for, or that the parts are
// chosen one by one.
func (p *Page) placesRow() fyne.CanvasObject {
	var names []string
	for _, preset := range sheet.Presets() {
		names = append(names, p.ask.Say().Say(preset.Title()))
	}
	names = append(names, p.ask.Text("Choose the parts"))
	p.places = field.NewChoice(names, func() int {
		if p.chosen {
			return len(names) - 1
		}
		return slices.Index(sheet.Presets(), p.options.For)
	}, func(i int) {
		if i < len(sheet.Presets()) {
			p.chosen, p.options.Parts, p.options.For = false, nil, sheet.Presets()[i]
		} else {
			p.choose(p.ticked())
		}
		p.make()
	})
	return container.NewPadded(p.places)
}

// forPlace stands before the name of a preset where what was chosen is kept.
const forPlace = "for "

// take takes what was kept: the name of a preset, or parts.
func (p *Page) take(kept []string) {
	for _, preset := range sheet.Presets() {
		if len(kept) == 1 && kept[0] == forPlace+string(preset) {
			p.options.For = preset
			return
		}
	}
	p.choose(slices.DeleteFunc(sheet.Parts(), func(part sheet.Part) bool { return !slices.Contains(kept, string(part)) }))
}

func (p *Page) choose(parts []sheet.Part) { p.chosen, p.options.Parts = true, parts }

// ticked are the parts whose boxes are ticked: those that are chosen, or those of the
// place of work, without what is not needed there this time.
func (p *Page) ticked() []sheet.Part {
	if p.chosen {
		return p.options.Parts
	}
	return slices.DeleteFunc(p.options.For.Parts(), func(part sheet.Part) bool {
		return part.Spared() && !slices.ContainsFunc(p.pages, func(page sheet.Page) bool { return page.Kind == string(part) })
	})
}

func (p *Page) has(part sheet.Part) bool { return slices.Contains(p.ticked(), part) }

// partBox is the box to tick for one kind of page.
func (p *Page) partBox(part sheet.Part) fyne.CanvasObject {
	c := field.NewCheck(p.ask.Say().Say(part.Title()), nil)
	p.boxes[part] = c
	c.OnChanged = func(on bool) {
		p.choose(slices.DeleteFunc(sheet.Parts(), func(q sheet.Part) bool { return q == part && !on || q != part && !p.has(q) }))
		p.make()
	}
	return c
}

// frontsRow chooses the fronts that get templates.
func (p *Page) frontsRow() fyne.CanvasObject {
	e := field.NewText("")
	p.fronts = e
	e.SetPlaceHolder(p.ask.Text("All, or numbers such as 2, 3, 5"))
	m := field.NewMistake(p.ask.Text("Fronts"), container.NewPadded(e))
	p.wrong = append(p.wrong, m)
	e.OnChanged = func(s string) {
		fronts, err := sheet.ParseFronts(s, len(p.host.Session().CommittedResult().Plan.Fronts))
		if err == nil {
			p.options.Fronts = fronts
		}
		p.tell(m, err)
	}
	return m.Object
}

// paperRow chooses the paper: a name, a size, or a roll.
func (p *Page) paperRow() fyne.CanvasObject {
	var names []string
	for _, paper := range sheet.Papers() {
		names = append(names, paper.Name)
	}
	e := field.NewOffer(names)
	p.paper = e
	label := p.ask.Text("Size or roll")
	m := field.NewMistake(label, field.Labelled(label, e))
	p.wrong = append(p.wrong, m)
	take := func(s string) {
		paper, err := sheet.ParsePaper(s, p.host.Session().Project().Unit)
		if err == nil {
			p.options.Paper = paper
			p.host.Preferences().SetString(prefPaper, s)
		}
		p.tell(m, err)
	}
	e.SetText(p.host.Preferences().StringWithFallback(prefPaper, "A4"))
	take(e.Text)
	e.OnChanged = take
	return m.Object
}

// tell shows under a field what is wrong with it, and makes the pages anew.
func (p *Page) tell(m *field.Mistake, err error) {
	m.Tell(p.ask.Say(), err)
	p.make()
	if err != nil {
		field.Reveal(m.Note)
	}
}

// make decides the pages and shows the one of the moment. While something typed
// is wrong the pages stay as they were, and can't be printed.
func (p *Page) make() {
	if !p.begun {
		return
	}
	p.outcome.Before(p.ask.Text("Print at actual size (100 %) and measure the check bars before you drill."))
	defer p.able()
	p.readLabels()
	if wrong := field.Mistaken(p.wrong...); len(wrong) > 0 {
		p.outcome.Need.SetText(p.ask.Text("Mend first: %v", strings.Join(wrong, ", ")))
		return
	}
	p.docs, p.pages = nil, nil
	if p.chosen && len(p.options.Parts) == 0 {
		p.outcome.Need.SetText(p.ask.Text("Choose what to print."))
	} else {
		o, r := p.options, p.host.Session().CommittedResult()
		if p.system.Date != nil {
			o.Date = p.system.Date()
		}
		// They are files of their own because the printer's settings differ.
		p.docs = sheet.Documents(r.Plan, r.Findings, o)
		for _, doc := range p.docs {
			p.pages = append(p.pages, doc.Pages...)
		}
		p.outcome.Need.SetText(p.ask.Text("Pages: %v", len(p.pages)))
		if len(p.pages) == 0 {
			p.outcome.Need.SetText(p.ask.Text("What is chosen needs no pages: these fronts have no holes of that kind."))
		}
	}
	p.tellUse()
	if p.keeps {
		chosen := []string{p.fronts.Text}
		if !p.chosen {
			chosen = append(chosen, forPlace+string(p.options.For))
		}
		for _, part := range p.options.Parts {
			chosen = append(chosen, string(part))
		}
		p.choices.Keep(chosen...)
	}
	p.at = min(p.at, max(len(p.pages)-1, 0))
	p.turn(0)
}

// able lets the pages be written and printed where there are any, as they were
// asked for.
func (p *Page) able() {
	on := len(p.pages) > 0 && len(field.Mistaken(p.wrong...)) == 0
	p.write.Able(on)
	p.print.Able(on && !p.asking)
}

// tellUse tells how much paper each part takes: beside its box, where parts are chosen,
// else in lines under the place of work.
func (p *Page) tellUse() {
	say, lines := map[sheet.Part]string{}, []string(nil)
	for _, doc := range p.docs {
		for _, u := range sheet.Usage(doc, p.options.Paper) {
			say[u.Part] = p.ask.Say().Say(u.Say())
			lines = append(lines, say[u.Part])
		}
	}
	for part, box := range p.boxes {
		text := say[part]
		if text == "" {
			text = p.ask.Say().Say(part.Title())
		}
		changed := box.OnChanged
		box.OnChanged = nil
		box.SetChecked(p.has(part))
		box.OnChanged = changed
		if box.Text != text {
			box.SetText(text)
		}
	}
	p.comes.SetText(strings.Join(lines, "\n"))
	p.places.Update()
	if p.parts.Hidden == p.chosen {
		p.parts.Hidden, p.comes.Hidden = !p.chosen, p.chosen
		p.form.Refresh()
	}
}

// enlarge shows the page larger or smaller; the whole page is the smallest.
func (p *Page) enlarge(by float32) {
	p.zoom = min(max(p.zoom*by, 1), 8)
	least := fyne.NewSize(200, 260)
	if p.zoom > 1 {
		s := p.frame.Size()
		least = fyne.NewSize(s.Width*p.zoom, s.Height*p.zoom)
	}
	p.picture.Enlarge(least)
	p.frame.Refresh()
	p.frame.ScrollToOffset(fyne.NewPos(max(least.Width-p.frame.Size().Width, 0)/2, 0))
}

// turn shows another page.
func (p *Page) turn(by int) {
	p.at = min(max(p.at+by, 0), max(len(p.pages)-1, 0))
	if len(p.pages) == 0 {
		p.picture.ShowPage(&sheet.Page{}, p.options.Say)
		p.title.SetText("")
		return
	}
	page := &p.pages[p.at]
	p.picture.ShowPage(page, p.options.Say)
	p.title.SetText(p.ask.Text("%v of %v: %v", p.at+1, len(p.pages), page.Title))
}

// prefPaper keeps the paper that was chosen last.
const prefPaper = "paper"
