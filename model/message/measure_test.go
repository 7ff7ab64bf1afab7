package message_test

import (
	"testing"

	"frontlay/model/length"
	"frontlay/model/message"
)

// Weights and areas follow the unit of lengths. 1 lb = 0.45359237 kg and 1 ft =
// 0.3048 m exactly (NIST Special Publication 811, appendix B.8).
func TestWeightsAndAreasFollowTheUnit(t *testing.T) {
	metric, inches := message.Language{Comma: true}, message.Language{Unit: length.UnitInch}
	for _, c := range []struct{ got, want string }{
		{metric.Say(message.New("%v", message.Kilograms(4.25))), "4,25 kg"},
		{inches.Say(message.New("%v", message.Kilograms(45.359237))), "100 lb"},
		{inches.Say(message.New("%v", message.Kilograms(1))), "2.205 lb"},
		{message.Kilograms(1).Figure(metric, 2), "1,00"},
		{message.Kilograms(1).Figure(inches, 2), "2.20"},
		{message.SquareMetres(1).Figure(metric, 3), "1,000"},
		{message.SquareMetres(1).Figure(inches, 3), "10.764"},
		{message.SquareMetres(0.09290304).Figure(inches, 3), "1.000"},
		{metric.WeightUnit() + metric.AreaUnit(), "kgm²"},
		{inches.WeightUnit() + inches.AreaUnit(), "lbft²"},
	} {
		if c.got != c.want {
			t.Errorf("%q; want %q", c.got, c.want)
		}
	}
}
