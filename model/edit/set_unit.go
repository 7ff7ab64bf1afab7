package edit

import (
	"frontlay/model"
	"frontlay/model/length"
	"frontlay/model/message"
)

// SetUnit chooses the unit that the project is written in. No size changes: what
// heights are rounded to stays as it was.
type SetUnit struct {
	Unit length.Unit
}

// Label names the change.
func (e SetUnit) Label() message.Message { return message.New("Unit: %v", UnitName(e.Unit)) }

// UnitName is what a unit is called where one is chosen.
func UnitName(u length.Unit) message.Message {
	switch u {
	case length.UnitCM:
		return message.New("centimetres")
	case length.UnitInch:
		return message.New("inches, fractions")
	case length.UnitInchDecimal:
		return message.New("inches, decimal")
	default:
		return message.New("millimetres")
	}
}

// Apply makes the change.
func (e SetUnit) Apply(p *model.Project) (*model.Project, error) {
	c := p.Clone()
	if e.Unit != p.Unit && p.Rounding.Step == 0 {
		c.Rounding.Step = p.RoundingStep()
	}
	c.Unit = e.Unit
	return c, nil
}
