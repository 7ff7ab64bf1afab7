package dividing

import (
	"slices"
	"strings"
	"testing"

	"fyne.io/fyne/v2"
	"fyne.io/fyne/v2/test"

	"frontlay/layout/propose"
	"frontlay/model"
	"frontlay/model/edit"
	"frontlay/model/length"
	"frontlay/ui/page/pagetest"
)

// host is a window with a drawing to go back to.
type host struct {
	*pagetest.Host
	back int
}

// toDrawing notes that the drawing is brought back.
func (h *host) toDrawing() { h.back++ }

// page is one on the first bay of the demo, on a coarse grid so that it is quick.
func page(t *testing.T) (*Page, *host) {
	t.Helper()
	h := &host{Host: pagetest.New(t)}
	p := New(h, model.Place{}, h.toDrawing)
	h.Win.SetContent(p.Object)
	h.LayOut()
	p.form.grid.SetText("5")
	return p, h
}

// fill types what is to go in.
func fill(p *Page, things ...string) {
	for i, s := range things {
		name, high, _ := strings.Cut(s, "=")
		p.form.things[i].name.SetText(name)
		p.form.things[i].height.SetText(high)
	}
	p.Look()
}

// A proposal is taken by Enter, as one step that undo takes back; the cards can be
// gone through by the arrow keys.
func TestAProposalIsTakenByKeys(t *testing.T) {
	p, h := page(t)
	fill(p, "Jars=210", "Brushes=60")
	if len(p.cards) < 3 {
		t.Fatalf("%d proposals: %q", len(p.cards), p.told.Text)
	}
	before := h.Session().Committed()
	p.Focus()
	c := h.Win.Canvas()
	c.Focused().TypedKey(&fyne.KeyEvent{Name: fyne.KeyRight})
	if c.Focused() != fyne.Focusable(p.cards[1]) {
		t.Fatalf("Right leads to %v", c.Focused())
	}
	c.Focused().TypedKey(&fyne.KeyEvent{Name: fyne.KeyReturn})
	if h.back != 1 {
		t.Error("the drawing is not brought back")
	}
	var got []length.Length
	for _, f := range h.Session().Result().Plan.Fronts[:3] {
		got = append(got, f.Face.Height())
	}
	if want := p.answer.Proposals[1].Heights(); !slices.Equal(got, want) {
		t.Errorf("heights are %v, want %v", got, want)
	}
	h.Session().Undo()
	if h.Session().Committed() != before {
		t.Error("one undo does not take it back")
	}
}

// What a form can't read is said under its field, and what is impossible above the
// proposals; neither leaves old proposals to be taken for new ones.
func TestWhatIsWrongIsSaid(t *testing.T) {
	p, _ := page(t)
	fill(p, "Jars=")
	if !strings.Contains(p.form.things[0].wrong.Note.Text, "how high") {
		t.Errorf("a thing without a height: %q", p.form.things[0].wrong.Note.Text)
	}
	fill(p, "Jars=700")
	if len(p.cards) > 0 || !strings.Contains(p.told.Text, "too low") {
		t.Errorf("too high a thing: %d cards, %q", len(p.cards), p.told.Text)
	}
	fill(p, "Jars=100")
	p.form.fronts.SetText("none")
	p.Look()
	if len(p.cards) > 0 || !strings.Contains(p.form.count.Note.Text, "3..5") {
		t.Errorf("no number of fronts: %d cards, %q", len(p.cards), p.form.count.Note.Text)
	}
}

// Style, hardware and weights are asked for as they are typed; a field of weight that
// is empty is the usual.
func TestTheQuestionIsThatOfTheForm(t *testing.T) {
	p, _ := page(t)
	p.form.chosen = propose.ByFactor
	p.form.by.SetText("1,25")
	p.form.weigh[propose.Lines].SetText("0")
	p.form.weigh[propose.Order].SetText("70.5")
	p.form.fronts.SetText("2..4")
	p.form.sheet = 3
	q, ok := p.form.question()
	want := propose.UsualWeights()
	want[propose.Lines], _ = propose.WeightOf(0)
	want[propose.Order], _ = propose.WeightOf(70.5)
	if !ok || q.Factor != 1.25 || q.Fewest != 2 || q.Most != 4 || q.Weights != want || !slices.Equal(q.Sheets, []string{"main", "boxes"}) {
		t.Errorf("the question is %+v, %v", q, ok)
	}
}

// The page begins with what the bay's drawers are to hold, from the top.
func TestThePageBeginsWithWhatIsThere(t *testing.T) {
	h := &host{Host: pagetest.New(t)}
	for k, high := range []int64{220, 90} {
		if err := h.Session().Do(edit.Set{At: model.Place{Front: k}, Key: "contents.height", Value: length.MM(high)}); err != nil {
			t.Fatal(err)
		}
	}
	p := New(h, model.Place{Front: 1}, h.toDrawing)
	got := []string{p.form.things[0].name.Text, p.form.things[0].height.Text, p.form.things[1].name.Text, p.form.fronts.Text}
	if want := []string{"Jars", "90", "Buckets", "3"}; !slices.Equal(got, want) {
		t.Errorf("it begins with %q, want %q", got, want)
	}
}

// Where the project has changed behind the page, a proposal is not taken: it is looked
// for again.
func TestAProposalOfAnOldProjectIsNotTaken(t *testing.T) {
	p, h := page(t)
	if err := h.Session().Do(edit.SetCabinet(model.Place{}, "height", length.MM(700))); err != nil {
		t.Fatal(err)
	}
	test.Tap(p.cards[0])
	if h.back > 0 || !strings.Contains(p.told.Text, "changed meanwhile") {
		t.Errorf("it is taken: %q", p.told.Text)
	}
	test.Tap(p.cards[0])
	if h.back != 1 {
		t.Error("the second time it is not taken")
	}
}
