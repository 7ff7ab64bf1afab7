package field

import (
	"frontlay/model/edit"
	"frontlay/model/length"
	"frontlay/model/message"
)

// Units are the names of the units, in their order, for a choice.
func Units(say func(message.Message) string) []string {
	var all []string
	for u := length.UnitMM; u <= length.UnitInchDecimal; u++ {
		all = append(all, say(edit.UnitName(u)))
	}
	return all
}
