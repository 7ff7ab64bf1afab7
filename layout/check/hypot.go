package check

import (
	"math"

	"frontlay/model/length"
)

// hypot is the distance over two legs, rounded to the nearest nanometre.
func hypot(dx, dy length.Length) length.Length {
	return length.FromMM(math.Hypot(dx.MM(), dy.MM()))
}
