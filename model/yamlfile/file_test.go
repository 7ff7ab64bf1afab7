package yamlfile_test

import (
	"fmt"
	"testing"

	"frontlay/assets"
	"frontlay/layout/check"
	"frontlay/model"
	"frontlay/model/yamlfile"
)

// limits are those that project files of the program can set.
var limits = check.Limits()

// samples finds the sheets that ship.
func samples(source string) (string, []byte, error) {
	if data, ok := assets.Sheet(source); ok {
		return source + ".yaml", data, nil
	}
	return "", nil, fmt.Errorf("there is no sample of that name")
}

func demo(t testing.TB) *yamlfile.File {
	t.Helper()
	f, err := yamlfile.Read(assets.DemoName, assets.Demo(), samples, limits)
	if err != nil {
		t.Fatal(err)
	}
	return f
}

func TestTheDemoReads(t *testing.T) {
	p := demo(t).Project
	if len(p.Cabinets) != 3 || len(p.Cabinets[1].Bays) != 2 || p.Cabinets[1].Bays[1].Fronts[1].Kind != model.OpenNiche {
		t.Errorf("the demo reads as %+v", p)
	}
}

func TestAnUnchangedProjectIsWrittenAsItWas(t *testing.T) {
	f := demo(t)
	got, err := f.Write(f.Project)
	if err != nil {
		t.Fatal(err)
	}
	if string(got) != string(assets.Demo()) {
		t.Errorf("written:\n%s", got)
	}
}
