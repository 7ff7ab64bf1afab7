package inspector

import (
	"strings"

	"frontlay/layout/opening"
	"frontlay/model"
	"frontlay/model/edit"
	"frontlay/model/length"
	"frontlay/model/message"
)

// openingForm are the figures of an opening or a niche that was measured, and what follows from
// them.
type openingForm struct{ *form }

// bay asks for those of a bay's opening.
func (f openingForm) bay(at model.Place) {
	doc := func() *model.Measured {
		if b := f.session.Project().BayAt(at); b != nil {
			return b.Measured
		}
		return nil
	}
	f.fields(at, "measured", message.New("Opening as measured"), doc)
	told(f.form, func() string {
		if s := opening.OfBay(f.session.Result().Plan, at); s != nil {
			return strings.TrimSpace(f.say().Sentence(s.Shape.Verdict()) + " " + f.say().Sentence(s.BestSay()) + " " + f.say().Sentence(s.TurnedSay()))
		}
		return f.text("For a carcass that is there already: type what the tape says, whatever you have measured.")
	})
}

// niche asks for those of the niche that the run stands in.
func (f openingForm) niche() {
	f.fields(model.Whole, "niche", message.New("Niche as measured"), func() *model.Measured { return f.session.Project().Niche })
	told(f.form, func() string {
		if n := opening.OfNiche(f.session.Result().Plan); n != nil {
			return f.say().Sentence(n.Told())
		}
		return f.text("For a run that stands in a niche: type what the tape says, whatever you have measured.")
	})
}

// fields are one for each figure of the tape.
func (f openingForm) fields(at model.Place, group string, title message.Message, doc func() *model.Measured) {
	f.section(title, false, func() string {
		if doc() == nil {
			return f.text("not measured")
		}
		return f.text("measured")
	})
	whole := []model.Place{at}
	ask := func(keys ...string) {
		for _, key := range keys {
			f.sizes(whole, group+"."+key)
		}
	}
	ask("widths.bottom", "widths.middle", "widths.top", "heights.left", "heights.middle", "heights.right")
	ask("diagonals.rising", "diagonals.falling", "plumb.left", "plumb.right", "level")
	if group == "measured" {
		f.note(f.text("Behind, where the runners end:"))
		ask("back.bottom", "back.middle", "back.top")
	}
	f.sizeOf(at, group+".within", f.usual(whole, group+".within", func(model.Place) length.Length { return model.UsualWithin }))
	if doc() != nil {
		f.buttons(button{"Forget what was measured", func() { f.do(edit.Set{At: at, Key: group}) }})
	}
}
