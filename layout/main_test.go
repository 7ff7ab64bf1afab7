package layout_test

import (
	"flag"
	"os"
	"testing"

	"frontlay/layout/plan"
	"frontlay/layout/plane"
	"frontlay/model/length"
)

const mm = length.Millimetre

// TestMain lets every property see a thousand random projects, unless the
// command line asks for another number.
func TestMain(m *testing.M) {
	flag.Parse()
	asked = flag.Lookup("rapid.checks").Value.String() != flag.Lookup("rapid.checks").DefValue
	checks("1000")
	os.Exit(m.Run())
}

// asked tells that the command line says how many projects are drawn.
var asked bool

// checks sets how many projects a property sees, unless the command line does.
func checks(n string) {
	if asked {
		return
	}
	if err := flag.Set("rapid.checks", n); err != nil {
		panic(err)
	}
}

// frontOf is a front of a size, in millimetres.
func frontOf(w, h, thick int64) plan.Front {
	return plan.Front{Face: plane.R(0, 0, length.MM(w), length.MM(h)), Thickness: length.MM(thick)}
}
