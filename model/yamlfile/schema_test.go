package yamlfile_test

import (
	"encoding/json"
	"fmt"
	"os"
	"path/filepath"
	"regexp"
	"slices"
	"strings"
	"testing"
	"unicode/utf8"

	"gopkg.in/yaml.v3"

	"frontlay/assets/language"
	"frontlay/assets/manual"
	"frontlay/assets/manual/manualtest"
	"frontlay/model/yamlfile"
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
				if wrong := validate(s, s, value(t, name), ""); len(wrong) > 0 {
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
		if wrong := validate(s, s, value(t, "../../testdata/bad/"+name+".yaml"), ""); len(wrong) == 0 {
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

// validate knows the keywords that our schemas use (JSON Schema 2020-12, Core
// and Validation) and calls any other a mistake.
func validate(root, s object, v any, path string) (wrong []string) {
	fail := func(format string, args ...any) { wrong = append(wrong, path+": "+fmt.Sprintf(format, args...)) }
	members, isObject := v.(object)
	list, isList := v.([]any)
	text, isText := v.(string)
	number, isNumber := float(v)
	for keyword, is := range s {
		switch keyword {
		case "$schema", "$defs", "title", "description":
		case "$ref":
			target := root
			for _, step := range strings.Split(strings.TrimPrefix(is.(string), "#/"), "/") {
				target = target[step].(object)
			}
			wrong = append(wrong, validate(root, target, v, path)...)
		case "type":
			if !slices.ContainsFunc(words(is), func(w string) bool { return isType(w, v) }) {
				fail("%v is not of type %v", v, is)
			}
		case "const":
			if n, _ := float(is); !isNumber || n != number {
				fail("%v is not %v", v, is)
			}
		case "enum":
			if !isText || !slices.Contains(words(is), text) {
				fail("%v is not one of %v", v, is)
			}
		case "minimum":
			if isNumber && number < is.(float64) {
				fail("%v is below %v", v, is)
			}
		case "maximum":
			if isNumber && number > is.(float64) {
				fail("%v is above %v", v, is)
			}
		case "maxLength":
			if isText && utf8.RuneCountInString(text) > int(is.(float64)) {
				fail("longer than %v", is)
			}
		case "pattern":
			if isText && !regexp.MustCompile(is.(string)).MatchString(text) {
				fail("%q is not like %v", text, is)
			}
		case "maxItems":
			if isList && len(list) > int(is.(float64)) {
				fail("more than %v items", is)
			}
		case "maxProperties":
			if isObject && len(members) > int(is.(float64)) {
				fail("more than %v keys", is)
			}
		case "items":
			for i, item := range list {
				wrong = append(wrong, validate(root, is.(object), item, fmt.Sprintf("%s[%d]", path, i))...)
			}
		case "required":
			for _, key := range words(is) {
				if _, there := members[key]; isObject && !there {
					fail("%s is missing", key)
				}
			}
		case "properties":
			for key, one := range is.(object) {
				if member, there := members[key]; there {
					wrong = append(wrong, validate(root, one.(object), member, path+"."+key)...)
				}
			}
		case "additionalProperties":
			known, _ := s["properties"].(object)
			for key, member := range members {
				if _, there := known[key]; there {
					continue
				}
				if rest, ok := is.(object); ok {
					wrong = append(wrong, validate(root, rest, member, path+"."+key)...)
				} else {
					fail("%s is unknown", key)
				}
			}
		case "anyOf":
			if !slices.ContainsFunc(is.([]any), func(one any) bool { return len(validate(root, one.(object), v, path)) == 0 }) {
				fail("%v is none of those allowed", v)
			}
		default:
			fail("the schema has the keyword %s", keyword)
		}
	}
	return wrong
}

func words(v any) []string {
	if s, ok := v.(string); ok {
		return []string{s}
	}
	var list []string
	for _, s := range v.([]any) {
		list = append(list, s.(string))
	}
	return list
}

func float(v any) (float64, bool) {
	switch n := v.(type) {
	case int:
		return float64(n), true
	case float64:
		return n, true
	}
	return 0, false
}

func isType(name string, v any) bool {
	n, isNumber := float(v)
	switch name {
	case "object":
		_, ok := v.(object)
		return ok
	case "array":
		_, ok := v.([]any)
		return ok
	case "string":
		_, ok := v.(string)
		return ok
	case "boolean":
		_, ok := v.(bool)
		return ok
	case "number":
		return isNumber
	case "integer":
		return isNumber && n == float64(int(n))
	}
	return false
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
