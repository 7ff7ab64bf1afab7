package yamlfile_test

import (
	"encoding/json"
	"os"
	"path/filepath"
	"strings"
	"testing"

	"gopkg.in/yaml.v3"

	"frontlay/assets/language"
	"frontlay/assets/manual"
	"frontlay/assets/manual/manualtest"
	"frontlay/model/yamlfile"
	"frontlay/model/yamlfile/schematest"
)

func TestSchemasAndReferenceAreUpToDate(t *testing.T) {
	golden(t, "../../testdata/schema/project.schema.json", string(yamlfile.ProjectSchema(limits)))
	golden(t, "../../testdata/schema/hardware.schema.json", string(yamlfile.SheetSchema()))
	for _, code := range manual.Languages() {
		say, err := language.Read(code)
		if err != nil {
			t.Fatal(err)
		}
		manualtest.Made(t, code+"/reference-format.md", yamlfile.Reference(limits, say), *update)
	}
}

// object is a decoded mapping.
type object = map[string]any

func load(t *testing.T, text []byte) object {
	t.Helper()
	var s object
	if err := json.Unmarshal(text, &s); err != nil {
		t.Fatal(err)
	}
	return s
}

func TestEverySampleKeepsToItsSchema(t *testing.T) {
	for schema, patterns := range map[string][]string{
		string(yamlfile.ProjectSchema(limits)): {"../../assets/projects/*.yaml", "../../testdata/projects/*.yaml", "../../testdata/versions/project-2.yaml"},
		string(yamlfile.SheetSchema()):         {"../../assets/sheets/*.yaml", "../../testdata/versions/hardware-1.yaml"},
	} {
		s := load(t, []byte(schema))
		for _, p := range patterns {
			files, err := filepath.Glob(p)
			if err != nil || len(files) == 0 {
				t.Fatalf("%s: %v, %v", p, files, err)
			}
			for _, name := range files {
				if wrong := schematest.Validate(s, value(t, name)); len(wrong) > 0 {
					t.Errorf("%s: %s", name, strings.Join(wrong, "; "))
				}
			}
		}
	}
}

// What a schema can see of a bad file it must see.
func TestTheSchemaRefusesWhatItCanSee(t *testing.T) {
	s := load(t, yamlfile.ProjectSchema(limits))
	for _, name := range []string{"unknown-key", "key-missing", "boards-missing", "size-is-text", "size-is-a-list", "share-zero", "share-negative",
		"mount-unknown", "grain-unknown", "unit-unknown", "cabinets-is-a-mapping", "newer-version", "name-too-long", "front-is-text", "span-broken", "severity-unknown"} {
		if wrong := schematest.Validate(s, value(t, "../../testdata/bad/"+name+".yaml")); len(wrong) == 0 {
			t.Errorf("%s passes", name)
		}
	}
}

func value(t *testing.T, name string) any {
	t.Helper()
	data, err := os.ReadFile(name)
	if err != nil {
		t.Fatal(err)
	}
	var v any
	if err := yaml.Unmarshal(data, &v); err != nil {
		t.Fatal(err)
	}
	return v
}

// What a figure depends on beside its own key stands in the reference, whatever else
// becomes of its words.
func TestTheReferenceSaysWhatFiguresDependOn(t *testing.T) {
	text := strings.Join(strings.Fields(manual.In(language.English).Chapter("reference-format").Text()), " ")
	for subject, says := range map[string]string{
		"who takes the rest":     "the lowest of them takes the odd rest",
		"the step in inches":     "1/32 in in a project in inches",
		"bay widths":             "rounded to 0.1 mm (1/64 in where heights are rounded to inches)",
		"a gap on a partition":   "half of the gap lies on each side of its middle",
		"shared gaps":            "the project's `reveals.gap`, not a cabinet's own",
		"the channel's datum":    "from the carcass's upper edge for overlay fronts and from the opening's for inset ones",
		"shelves at niches":      "between two niches there is one",
		"drawers over a niche":   "stands on the niche's shelf",
		"spanning fronts":        "ends the partitions that it would cut",
		"screws behind inset":    "move back by the front's thickness behind inset ones",
		"where the back stands":  "laid on behind all of the carcass",
		"least change":           "edges move least in sum",
		"auto":                   "tallest drawer whose highest part has room",
		"step over fixed fronts": "fronts with heights of their own are passed over",
		"lipping of carcasses":   "on the front edge alone",
		"end panels' weight":     "weigh by its density",
	} {
		if !strings.Contains(text, says) {
			t.Errorf("%s: nothing says %q", subject, says)
		}
	}
}
