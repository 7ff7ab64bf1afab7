// Package dividing is the page that proposes divisions of a bay: what is to go into its
// drawers at the left, the best few at the right.
package dividing

import (
	"strconv"
	"strings"

	"fyne.io/fyne/v2"
	"fyne.io/fyne/v2/container"
	"fyne.io/fyne/v2/widget"

	"frontlay/layout/drawing"
	"frontlay/layout/propose"
	"frontlay/model"
	"frontlay/model/edit"
	"frontlay/model/message"
	"frontlay/ui/ask"
	"frontlay/ui/field"
	"frontlay/ui/session"
)

// Host is what the page needs of the window around it.
type Host interface {
	Session() *session.Session
	Ask() *ask.Asker
	// Do makes an edit, selects what it has made, and tells where it can't be made.
	Do(e edit.Edit, made ...drawing.Subject) bool
}

// shown is how many proposals there are to choose from.
const shown = 6

// Page is the page.
type Page struct {
	Object fyne.CanvasObject

	host    Host
	done    func()
	at      model.Place
	project *model.Project // that the proposals are of
	answer  propose.Answer

	form   *form
	told   *field.Label
	cards  []*card
	column *fyne.Container
}

// New makes the page for the bay at a place, and looks for proposals with what the
// bay's drawers are to hold already. done is told when one was taken.
func New(h Host, at model.Place, done func()) *Page {
	at.Front = -1
	p := &Page{host: h, done: done, at: at, told: field.NewLabel(""), column: container.New(&grid{})}
	p.told.Wrapping = fyne.TextWrapWord
	p.form = newForm(p)
	_, form := field.Scrolled(p.form.object)
	_, offers := field.Scrolled(field.Column(p.told, field.Spacer(4), p.column))
	p.Object = field.Abreast([]float32{0.31, 0.69}, form, offers)
	p.Look()
	return p
}

// Focus brings the keys to the first proposal, or to the form where there is none, or
// where nobody has said yet what is to go in.
func (p *Page) Focus() {
	var first fyne.Focusable = p.form.things[0].name
	if len(p.cards) > 0 && p.form.things[0].name.Text != "" {
		first = p.cards[0]
	}
	if c := field.CanvasOf(p.Object); c != nil {
		c.Focus(first)
	}
}

// Look looks for proposals by what the form says, and shows them.
func (p *Page) Look() {
	q, ok := p.form.question()
	if !ok {
		p.answer = propose.Answer{Why: message.New("Something in the form can't be read: what is wrong stands below it.")}
		p.show()
		return
	}
	p.project = p.host.Session().Committed()
	p.answer = propose.Find(p.project, q)
	p.show()
}

// show shows what was found.
func (p *Page) show() {
	say := p.host.Ask().Say()
	p.cards, p.column.Objects = nil, nil
	for i := range p.answer.Proposals {
		c := newCard(p, i)
		p.cards = append(p.cards, c)
		p.column.Add(c)
	}
	p.column.Refresh()
	p.told.Importance = widget.MediumImportance
	switch {
	case len(p.cards) == 0:
		p.told.Importance = widget.DangerImportance
		p.told.SetText(say.Sentence(p.answer.Why))
		return
	case p.answer.Stopped:
		p.told.SetText(say.Say(message.New("The search stopped before it had looked at every division: there may be a better one. A coarser grid or fewer fronts bring it to its end.")))
	case p.form.style() == propose.Free && !p.form.rows.Checked:
		p.told.SetText(say.Say(message.New("The best divisions on a grid of %v, the best first. Points are millimetres of lost height: less is better. A click or Enter takes one; undo takes it back.", p.answer.Grid)))
	default:
		p.told.SetText(say.Say(message.New("The best divisions, the best first. Points are millimetres of lost height: less is better. A click or Enter takes one; undo takes it back.")))
	}
	others, inner := propose.MakesWay(p.project, p.at)
	if len(others) > 0 {
		p.told.SetText(p.told.Text + " " + say.Say(message.New("Drawers take the place of: %v.", strings.Join(others, ", "))))
	}
	if len(inner) > 0 {
		p.told.SetText(p.told.Text + " " + say.Say(message.New("The inner drawers go that are behind: %v.", strings.Join(inner, ", "))))
	}
}

// take makes a proposal, as one step, and brings the drawing back. Where the project
// has changed meanwhile it looks again instead.
func (p *Page) take(i int) {
	if p.project != p.host.Session().Committed() {
		p.Look()
		p.told.SetText(p.host.Ask().Text("The project has changed meanwhile. These are the proposals for it as it is now."))
		return
	}
	if p.host.Do(p.answer.Proposals[i].Edit, drawing.Subject{Kind: drawing.BayThing, Place: p.at}) {
		p.done()
	}
}

// title says in a few words which place a proposal has and what it comes to.
func (p *Page) title(i int) string {
	x := &p.answer.Proposals[i]
	return strconv.Itoa(i+1) + " · " + p.host.Ask().Say().Say(x.Name())
}

// bayName says which bay the page is about.
func (p *Page) bayName() string {
	project := p.host.Session().Project()
	if project.CabinetAt(p.at) == nil {
		return ""
	}
	return p.host.Ask().Text("%v, bay %v", project.CabinetName(p.at), p.at.Bay+1)
}
