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
	if f := flag.Lookup("rapid.checks"); f.Value.String() == f.DefValue {
		if err := f.Value.Set("1000"); err != nil {
			panic(err)
		}
	}
	os.Exit(m.Run())
}

// frontOf is a front of a size, in millimetres.
func frontOf(w, h, thick int64) plan.Front {
	return plan.Front{Face: plane.R(0, 0, length.MM(w), length.MM(h)), Thickness: length.MM(thick)}
}
