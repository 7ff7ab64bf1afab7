// Package wood says how boards look: a tone for each material that people name, and
// how much of its grain is seen. Screen, paper and picture paint by it.
package wood

import (
	"strings"

	"frontlay/model"
	"frontlay/model/message"
)

// Tone is the colour of a material as 0xRRGGBB, under a light and under a dark
// palette, and how much grain it shows: 0 to 1.
type Tone struct {
	Light, Dark uint32
	Figure      float64
}

// The tones of boards that name no other material.
var (
	Front   = Tone{0xEBD6AE, 0x66553A, 1}   // of maple
	Carcass = Tone{0xDCC9A2, 0x5A5040, 0.6} // of birch plywood
)

// material is a tone by the words that people use for it.
type material struct {
	words message.Message // parted by commas
	tone  Tone
}

// materials are what a board can be told to be of; what is first counts where a
// name has the words of several, so that a black walnut is a walnut.
var materials = []material{
	{message.New("oak"), Tone{0xDDBF8E, 0x62503A, 1}},
	{message.New("beech"), Tone{0xE6C4A0, 0x6A5240, 0.6}},
	{message.New("walnut"), Tone{0x7C593E, 0x4B382A, 1}},
	{message.New("pine, spruce"), Tone{0xEFD69F, 0x6E5B39, 1}},
	{message.New("birch"), Tone{0xE5D5B2, 0x5F5545, 0.6}},
	{message.New("white"), Tone{0xF5F3EE, 0x5B5E61, 0}},
	{message.New("grey, gray"), Tone{0xBDC0C1, 0x4C5054, 0}},
	{message.New("black"), Tone{0x38393B, 0x1B1C1E, 0}},
}

// Of is the tone of a board by the word for its material in a language or in
// English; false where it has none of the words.
func Of(b model.Board, say message.Language) (Tone, bool) {
	name := strings.ToLower(b.Material)
	for _, m := range materials {
		if m.names(name, say) {
			return m.tone, true
		}
	}
	return Tone{}, false
}

// names tells that a name in small letters has one of the material's words.
func (m material) names(name string, say message.Language) bool {
	for _, words := range []string{say.Say(m.words), m.words.Text} {
		for word := range strings.SplitSeq(words, ",") {
			if strings.Contains(name, strings.ToLower(strings.TrimSpace(word))) {
				return true
			}
		}
	}
	return false
}
