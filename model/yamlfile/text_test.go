package yamlfile_test

import (
	"strings"
	"testing"

	"frontlay/model"
)

// Programs that know YAML 1.1 take these for truth values, keys of their own or
// numbers to the base 60 (yaml.org/type: bool, merge, value, int, float), and
// all YAML programs some of them for null and numbers.
func TestTextsThatProgramsTakeOtherwiseAreQuoted(t *testing.T) {
	for _, name := range []string{"y", "N", "yes", "No", "ON", "off", "true", "False", "<<", "=", "12:30:45", "-1:30", "1:30.5", "null", "~", "12", "0x1F", "1e3", ".inf", "2001-01-01", "1_000"} {
		got := written(t, func(p *model.Project) { p.Title = name })
		if !strings.Contains(got, "title: \""+name+"\" #") {
			t.Errorf("%s is written without quotes:\n%.80s", name, got)
		}
	}
	for _, name := range []string{"yesterday", "onset", "12 buckets", "a:b", "1:30h", "<<<"} {
		if got := written(t, func(p *model.Project) { p.Title = name }); !strings.Contains(got, "title: "+name+" #") {
			t.Errorf("%s needs no quotes:\n%.80s", name, got)
		}
	}
}
