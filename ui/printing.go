package ui

import (
	"strconv"
	"strings"

	"fyne.io/fyne/v2"
	"fyne.io/fyne/v2/container"
	fynelayout "fyne.io/fyne/v2/layout"
	"fyne.io/fyne/v2/widget"

	"frontlay/layout/sheet"
	"frontlay/model/message"
	"frontlay/ui/field"
	"frontlay/ui/screen"
	"frontlay/ui/session"
)

// printing is the page on which is chosen what to print; it shows every sheet
// before.
type printing struct {
	w       *window
	options sheet.Options
	pages   []sheet.Page
	at      int
	zoom    float32 // 1: the whole page is seen

	object  fyne.CanvasObject
	picture *screen.Still
	frame   *container.Scroll
	need    *field.Label
	outcome *field.Label // of writing and printing; before, what to see to
	title   *field.Label
	fronts  *field.Text
	paper   *field.Offer
	wrong   []*mistake
	asking  bool // for the printers
	parts   *fyne.Container
	boxes   map[sheet.Part]*field.Check
	write   *field.Button
	print   *field.Button
	begun   bool // the page is whole, and what is chosen on it makes pages
}

// printPage shows the page for printing over the desk.
func (w *window) printPage() {
	w.showOver(reading{}, newPrinting(w).object)
}

// templatePage shows the page for printing with the templates of the fronts that
// are selected.
func (w *window) templatePage() { w.showOver(reading{}, newTemplates(w).object) }

func newTemplates(w *window) *printing {
	p := laidOutPrinting(w)
	p.options.Parts = []sheet.Part{sheet.CornerTemplates}
	p.fronts.SetText(strings.Join(w.drilled(), ", "))
	p.begin()
	return p
}

// drilled are the numbers of the selected fronts that have holes to drill.
func (w *window) drilled() []string {
	var numbers []string
	pl := w.session.CommittedResult().Plan
	for _, at := range w.session.SelectedFronts() {
		if f := session.FrontOf(pl, at); f != nil && len(f.Holes) > 0 {
			numbers = append(numbers, strconv.Itoa(f.Number))
		}
	}
	return numbers
}

func newPrinting(w *window) *printing {
	p := laidOutPrinting(w)
	p.begin()
	return p
}

// begin makes the pages for the first time: while the page is put together none
// of its fields does.
func (p *printing) begin() {
	p.begun = true
	p.make()
}

func laidOutPrinting(w *window) *printing {
	p := &printing{w: w, zoom: 1, need: field.NewLabel(""), outcome: field.NewLabel(""), title: field.NewLabel(""), parts: field.Column(), boxes: map[sheet.Part]*field.Check{}}
	p.options = sheet.Options{Date: w.options.Date, Say: w.say()}
	p.outcome.Wrapping = fyne.TextWrapWord
	p.need.Wrapping, p.need.TextStyle.Bold = fyne.TextWrapWord, true
	p.picture = screen.NewPage(&sheet.Page{}, p.options.Say, fyne.NewSize(200, 260))
	for _, part := range sheet.Parts() {
		p.parts.Add(p.partBox(part))
	}
	p.write = field.NewButton(w.text("Write PDF…"), p.writePDF)
	p.write.Importance = widget.HighImportance
	p.print = field.NewButton(w.text("Print…"), func() { p.printNow() })
	_, form := field.Scrolled(field.Column(
		field.Heading(w.text("What to print")), p.sets(), p.parts,
		field.Heading(w.text("Fronts")), p.frontsRow(),
		field.Heading(w.text("Paper")), p.paperRow(), p.correctionRow(),
	))
	buttons := container.NewGridWithColumns(1, p.write)
	if w.options.Printer != nil {
		buttons = container.NewGridWithColumns(2, p.write, p.print)
	}
	left := container.NewBorder(nil, container.NewPadded(field.Column(p.need, p.outcome, buttons)), nil, nil, form)
	turn := container.NewHBox(
		fynelayout.NewSpacer(),
		field.NewButton(w.text("Page before"), func() { p.turn(-1) }),
		p.title,
		field.NewButton(w.text("Next page"), func() { p.turn(1) }),
		field.NewButton("–", func() { p.enlarge(1 / 1.5) }),
		field.NewButton("+", func() { p.enlarge(1.5) }),
		fynelayout.NewSpacer(),
	)
	view := field.NewView(p.picture)
	p.frame = view.Scroll
	split := container.NewHSplit(left, container.NewBorder(nil, container.NewPadded(turn), nil, nil, view))
	split.Offset = 0.34
	p.object = w.overPage("Templates, drawings and lists", split)
	return p
}

// sets are the usual choices of parts.
func (p *printing) sets() fyne.CanvasObject {
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
		field.NewButton(p.w.text("Everything"), choose(func(sheet.Part) bool { return true })),
		field.NewButton(p.w.text("Booklet"), choose(func(part sheet.Part) bool { return !part.Template() })),
		field.NewButton(p.w.text("Templates"), choose(sheet.Part.Template)),
	))
}

// partBox is the box to tick for one kind of page.
func (p *printing) partBox(part sheet.Part) fyne.CanvasObject {
	begin := part != sheet.WholeTemplates && part != sheet.SideTemplates
	if begin {
		p.options.Parts = append(p.options.Parts, part)
	}
	c := field.NewCheck(p.w.say().Say(part.Title()), nil)
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

func (p *printing) has(part sheet.Part) bool {
	for _, q := range p.options.Parts {
		if q == part {
			return true
		}
	}
	return false
}

// frontsRow chooses the fronts that get templates.
func (p *printing) frontsRow() fyne.CanvasObject {
	e := field.NewText("")
	p.fronts = e
	e.SetPlaceHolder(p.w.text("all, or numbers such as 2, 3, 5"))
	m := newMistake(p.w.text("Fronts"), container.NewPadded(e))
	p.wrong = append(p.wrong, m)
	e.OnChanged = func(s string) {
		fronts, err := sheet.ParseFronts(s, len(p.w.session.CommittedResult().Plan.Fronts))
		if err == nil {
			p.options.Fronts = fronts
		}
		p.tell(m, err)
	}
	return m.object
}

// paperRow chooses the paper: a name, a size, or a roll.
func (p *printing) paperRow() fyne.CanvasObject {
	var names []string
	for _, paper := range sheet.Papers() {
		names = append(names, paper.Name)
	}
	e := field.NewOffer(names)
	p.paper = e
	label := p.w.text("Size or roll")
	m := newMistake(label, field.Labelled(label, e))
	p.wrong = append(p.wrong, m)
	take := func(s string) {
		paper, err := sheet.ParsePaper(s, p.w.session.Project().Unit)
		if err == nil {
			p.options.Paper = paper
			p.w.app.Preferences().SetString(prefPaper, s)
		}
		p.tell(m, err)
	}
	e.SetText(p.w.app.Preferences().StringWithFallback(prefPaper, "A4"))
	take(e.Text)
	e.OnChanged = take
	return m.object
}

// tell shows under a field what is wrong with it, and makes the pages anew.
func (p *printing) tell(m *mistake, err error) {
	m.tell(p.w, err)
	p.make()
	if err != nil {
		field.Reveal(m.note)
	}
}

// make decides the pages and shows the one of the moment. While something typed
// is wrong the pages stay as they were, and can't be printed.
func (p *printing) make() {
	if !p.begun {
		return
	}
	p.outcome.Importance = widget.MediumImportance
	p.outcome.SetText(p.w.text("Print at actual size (100 %) and measure the check bars before you drill."))
	defer p.able()
	if wrong := mistaken(p.wrong...); len(wrong) > 0 {
		p.need.SetText(p.w.text("Mend first: %v", strings.Join(wrong, ", ")))
		return
	}
	if len(p.options.Parts) == 0 {
		p.pages = nil
		p.need.SetText(p.w.text("Choose what to print."))
	} else {
		r := p.w.session.CommittedResult()
		doc := sheet.Make(r.Plan, r.Findings, p.options)
		p.pages = doc.Pages
		p.need.SetText(p.w.text("Pages: %v", len(p.pages)))
		if len(p.pages) == 0 {
			p.need.SetText(p.w.text("What is chosen needs no pages: these fronts have no holes of that kind."))
		}
		p.tellUse(doc)
	}
	p.at = min(p.at, max(len(p.pages)-1, 0))
	p.turn(0)
}

// able lets the pages be written and printed where there are any, as they were
// asked for.
func (p *printing) able() {
	on := len(p.pages) > 0 && len(mistaken(p.wrong...)) == 0
	p.write.Able(on)
	p.print.Able(on && !p.asking)
}

// tellOutcome tells how writing or printing went, until something else is chosen.
func (p *printing) tellOutcome(m message.Message, failed bool) {
	p.outcome.Importance = widget.SuccessImportance
	if failed {
		p.outcome.Importance = widget.DangerImportance
	}
	p.outcome.SetText(p.w.say().Say(m))
}

// tellUse writes beside each part how much paper it takes, and ticks those that
// are chosen.
func (p *printing) tellUse(doc sheet.Document) {
	say := map[sheet.Part]string{}
	for _, u := range sheet.Usage(doc, p.options.Paper) {
		say[u.Part] = p.w.say().Say(u.Say())
	}
	for part, box := range p.boxes {
		text := say[part]
		if text == "" {
			text = p.w.say().Say(part.Title())
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
func (p *printing) enlarge(by float32) {
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
func (p *printing) turn(by int) {
	p.at = min(max(p.at+by, 0), max(len(p.pages)-1, 0))
	if len(p.pages) == 0 {
		p.picture.ShowPage(&sheet.Page{}, p.options.Say)
		p.title.SetText("")
		return
	}
	page := &p.pages[p.at]
	p.picture.ShowPage(page, p.options.Say)
	p.title.SetText(p.w.text("%v of %v: %v", p.at+1, len(p.pages), page.Title))
}

// prefPaper keeps the paper that was chosen last.
const prefPaper = "paper"
