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
	docs    []sheet.Document // the booklet, the templates: a file each
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
		p.options.Parts = nil
		for _, part := range sheet.Parts() {
			if slices.Contains(last[1:], string(part)) {
				p.options.Parts = append(p.options.Parts, part)
			}
		}
	}
	p.keeps = true
	p.begin()
	return p
}

// Templates makes the page with the templates of the fronts that are selected.
func Templates(h Host, s System) *Page {
	p := laidOut(h, s)
	p.options.Parts = []sheet.Part{sheet.CornerTemplates}
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
	p := &Page{host: h, system: s, ask: h.Ask(), zoom: 1, outcome: output.New(h), choices: output.Choices{Host: h, Page: "print"}, title: field.NewLabel(""), parts: field.Column(), boxes: map[sheet.Part]*field.Check{}}
	p.options = sheet.Options{Say: p.ask.Say()}
	p.picture = screen.NewPage(&sheet.Page{}, p.options.Say, fyne.NewSize(200, 260))
	for _, part := range sheet.Parts() {
		p.parts.Add(p.partBox(part))
	}
	p.write = field.NewButton(p.ask.Text("Write PDF…"), p.writePDF)
	p.write.Importance = widget.HighImportance
	p.print = field.NewButton(p.ask.Text("Print…"), func() { p.printNow() })
	form := field.Column(
		field.Heading(p.ask.Text("What to print")), p.sets(), p.parts,
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
	p.Object = output.Halves(form, p.outcome, buttons, container.NewBorder(nil, container.NewPadded(turn), nil, nil, view))
	return p
}

// Focus brings the keys to the button that most come for.
func (p *Page) Focus() {
	if c := field.CanvasOf(p.write); c != nil {
		c.Focus(p.write)
	}
}

// sets are the usual choices of parts.
func (p *Page) sets() fyne.CanvasObject {
	choose := func(want func(sheet.Part) bool) func() {
		return func() {
			p.options.Parts = nil
			for _, part := range sheet.Parts() {
				if want(part) {
					p.options.Parts = append(p.options.Parts, part)
				}
			}
			p.make()
		}
	}
	return container.NewPadded(container.NewGridWithColumns(3,
		field.NewButton(p.ask.Text("Everything"), choose(func(sheet.Part) bool { return true })),
		field.NewButton(p.ask.Text("Drawings and lists"), choose(func(part sheet.Part) bool { return !part.Template() })),
		field.NewButton(p.ask.Text("Templates"), choose(sheet.Part.Template)),
	))
}

// partBox is the box to tick for one kind of page.
func (p *Page) partBox(part sheet.Part) fyne.CanvasObject {
	begin := part != sheet.WholeTemplates && part != sheet.SideTemplates
	if begin {
		p.options.Parts = append(p.options.Parts, part)
	}
	c := field.NewCheck(p.ask.Say().Say(part.Title()), nil)
	c.SetChecked(begin)
	p.boxes[part] = c
	c.OnChanged = func(on bool) {
		var kept []sheet.Part
		for _, q := range sheet.Parts() {
			if q == part && on || q != part && p.has(q) {
				kept = append(kept, q)
			}
		}
		p.options.Parts = kept
		p.make()
	}
	return c
}

func (p *Page) has(part sheet.Part) bool {
	for _, q := range p.options.Parts {
		if q == part {
			return true
		}
	}
	return false
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
	if len(p.options.Parts) == 0 {
		p.outcome.Need.SetText(p.ask.Text("Choose what to print."))
	} else {
		for _, template := range []bool{false, true} {
			if doc := p.document(template); len(doc.Pages) > 0 {
				p.docs, p.pages = append(p.docs, doc), append(p.pages, doc.Pages...)
			}
		}
		p.outcome.Need.SetText(p.ask.Text("Pages: %v", len(p.pages)))
		if len(p.pages) == 0 {
			p.outcome.Need.SetText(p.ask.Text("What is chosen needs no pages: these fronts have no holes of that kind."))
		}
		p.tellUse()
	}
	if p.keeps {
		chosen := []string{p.fronts.Text}
		for _, part := range p.options.Parts {
			chosen = append(chosen, string(part))
		}
		p.choices.Keep(chosen...)
	}
	p.at = min(p.at, max(len(p.pages)-1, 0))
	p.turn(0)
}

// document makes the chosen parts that are templates, or the others. They are files
// of their own because the printer's settings differ.
func (p *Page) document(template bool) sheet.Document {
	o := p.options
	o.Parts = nil
	for _, part := range p.options.Parts {
		if part.Template() == template {
			o.Parts = append(o.Parts, part)
		}
	}
	if len(o.Parts) == 0 {
		return sheet.Document{}
	}
	if p.system.Date != nil {
		o.Date = p.system.Date()
	}
	r := p.host.Session().CommittedResult()
	return sheet.Make(r.Plan, r.Findings, o)
}

// able lets the pages be written and printed where there are any, as they were
// asked for.
func (p *Page) able() {
	on := len(p.pages) > 0 && len(field.Mistaken(p.wrong...)) == 0
	p.write.Able(on)
	p.print.Able(on && !p.asking)
}

// tellUse writes beside each part how much paper it takes, and ticks those that
// are chosen.
func (p *Page) tellUse() {
	say := map[sheet.Part]string{}
	for _, doc := range p.docs {
		for _, u := range sheet.Usage(doc, p.options.Paper) {
			say[u.Part] = p.ask.Say().Say(u.Say())
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
