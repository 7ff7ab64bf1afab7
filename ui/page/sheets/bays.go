package sheets

import (
	"frontlay/model"
	"frontlay/model/edit"
	"frontlay/model/message"
	"frontlay/ui/ask"
)

// idle tells that the sheet that is shown came into the project on this page, that
// no bay uses it, and that nobody was asked about that yet.
func (h *Page) idle() bool {
	if !h.fresh[h.name] || len(h.Form.Problems()) > 0 {
		return false
	}
	for _, c := range h.project().Cabinets {
		for _, b := range c.Bays {
			if b.Hardware == h.name {
				return false
			}
		}
	}
	return true
}

// askForBays asks once which bays shall use a new sheet, and goes on.
func (h *Page) askForBays(then func()) {
	h.host.Ask().Choose(ask.Question{
		Title: h.text("New hardware sheet"), Text: h.text("No bay uses the sheet “%v” yet. Which bays shall use it?", h.name),
		Answers: []string{h.text("All bays"), h.text("No bay yet"), h.text("Cancel")},
	}, func(i int) {
		switch {
		case i == 0 && h.useEverywhere(), i == 1 && h.apply():
			delete(h.fresh, h.name)
			then()
		}
	})
}

// useEverywhere puts the sheet that is shown into the project and lets every bay
// use it, as one step.
func (h *Page) useEverywhere() bool {
	e := edit.Several{Name: message.New("Hardware “%v” in all bays", h.name), Edits: []edit.Edit{edit.SetSheet{Name: h.name, Sheet: h.Form.Sheet()}}}
	for i, c := range h.project().Cabinets {
		for j := range c.Bays {
			e.Edits = append(e.Edits, edit.ChooseHardware{At: model.Place{Cabinet: i, Bay: j, Front: -1}, Name: h.name})
		}
	}
	if !h.do(e) {
		return false
	}
	h.Form.Kept()
	h.update()
	return true
}
