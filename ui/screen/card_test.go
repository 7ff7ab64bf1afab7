package screen

import (
	"image/color"
	"testing"

	fynecanvas "fyne.io/fyne/v2/canvas"
	"fyne.io/fyne/v2/test"

	"frontlay/ui/look"
)

// The card with the lens stands on the sheet, over neither the flag nor the place
// that it points at; it can be closed, comes back with another finding, and leads to
// the view that it shows a part of.
func TestTheCardOfTheLens(t *testing.T) {
	st := newStage(t)
	c := st.screen
	shown := 0
	for _, sc := range scenes(t) {
		st.show(sc, manners(t)[0])
		for i := range c.session.Result().Findings {
			if i == 6 {
				break
			}
			c.session.ChooseFinding(i)
			card := c.card.pictured()
			if card.Empty() {
				continue
			}
			shown++
			if !card.Within(boxOf(0, 0, c.Size().Width, c.Size().Height)) {
				t.Errorf("%s: the card lies at %v", sc.name, card)
			}
			p := c.placed()
			if places := p.chosenPlaces(); len(places) > 0 && places[0].Overlaps(card) {
				t.Errorf("%s: the card at %v hides the mark at %v", sc.name, card, places[0])
			}
			for _, w := range p.flags {
				if w.around.Overlaps(card) {
					t.Errorf("%s: the card at %v hides the flag %q", sc.name, card, w.say)
				}
			}
		}
	}
	if shown < 40 {
		t.Errorf("only %d cards are shown", shown)
	}
	st.show(scenes(t)[0], manners(t)[0])
	c.session.ChooseFinding(-1)
	if !c.card.pictured().Empty() {
		t.Error("a card is shown while no finding is chosen")
	}
	for _, sc := range scenes(t) {
		if sc.name != "projects-with-findings" {
			continue
		}
		st.show(sc, manners(t)[0])
		c.session.ChooseFinding(3)
		test.Tap(c.card.close)
		if !c.card.pictured().Empty() {
			t.Error("the closed card is shown")
		}
		c.session.ChooseFinding(4)
		want := pictureIn(c.card.lens.In)
		if c.card.pictured().Empty() {
			t.Error("with another finding the card stays closed")
		}
		test.Tap(c.card.whole)
		if c.Picture() != want || c.session.ChosenFinding() != 4 {
			t.Errorf("the way to the whole view leads to %v and finding %d", c.Picture(), c.session.ChosenFinding())
		}
	}
}

// The lens draws its dimension in the colour of the severity: thin lines, and the
// slanted strokes that end them.
func TestTheLensMeasuresInTheColourOfItsSeverity(t *testing.T) {
	st := newStage(t)
	for _, mode := range []look.Mode{look.LightMode, look.DarkMode, look.ContrastMode} {
		st.look(mode)
		st.show(scene{project: flagged(t, "cover-below")}, manners(t)[0])
		st.screen.session.ChooseFinding(0)
		if st.screen.card.pictured().Empty() {
			t.Fatal("no lens")
		}
		strokes := map[color.Color]int{}
		for _, o := range st.screen.card.picture.Objects {
			if l, ok := o.(*fynecanvas.Line); ok && slanted(l) {
				strokes[l.StrokeColor]++
			}
		}
		if p := look.Current(); strokes[p.Error] < 2 || strokes[p.Soft] > 0 {
			t.Errorf("mode %d: %v", mode, strokes)
		}
	}
}

// slanted tells that a line is as wide as high and as short as the end of a
// dimension.
func slanted(l *fynecanvas.Line) bool {
	dx, dy := l.Position2.X-l.Position1.X, l.Position2.Y-l.Position1.Y
	return dx == -dy && dx > 0 && dx < 10
}
