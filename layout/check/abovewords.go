package check

import (
	"frontlay/layout/plan"
	"frontlay/model/message"
)

// into says what a drawer reaches into. The preposition stands in the text, as
// other languages bend the name behind it.
func into(k plan.AboveKind) message.Message {
	switch k {
	case plan.DrawerAbove:
		return message.New("into the drawer above")
	case plan.ShelfAbove:
		return message.New("into the shelf above")
	case plan.FrontAbove:
		return message.New("up behind the front above")
	case plan.ChannelAbove:
		return message.New("into the finger-pull channel")
	default:
		return message.New("into the carcass top")
	}
}

// upTo says what ends the room above a drawer.
func upTo(k plan.AboveKind) message.Message {
	switch k {
	case plan.DrawerAbove:
		return message.New("up to the drawer above")
	case plan.ShelfAbove:
		return message.New("up to the shelf above")
	case plan.FrontAbove:
		return message.New("up to the front above")
	case plan.ChannelAbove:
		return message.New("up to the finger-pull channel")
	default:
		return message.New("up to the carcass top")
	}
}
