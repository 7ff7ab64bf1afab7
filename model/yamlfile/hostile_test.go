package yamlfile_test

import (
	"bytes"
	"fmt"
	"runtime"
	"strings"
	"testing"
	"time"

	"frontlay/assets"
	"frontlay/model/yamlfile"
)

// hostile are files made to hang a reader or to fill its memory. Each is as
// large as is let in, or larger.
func hostile() map[string][]byte {
	const most = yamlfile.MaxBytes
	fill := func(head, unit string) []byte {
		return append([]byte(head), bytes.Repeat([]byte(unit), (most-len(head))/len(unit))...)
	}
	front := "          - {name: Slips, drawer: low}\n"
	cabinet := string(project("frontlay: 1", "", "hardware: {main: sample-a}", ""))
	lines := func(head, unit string, n int) []byte { return []byte(head + strings.Repeat(unit, n)) }
	var deep strings.Builder
	for i := range 2000 {
		deep.WriteString(strings.Repeat(" ", i) + "a:\n")
	}
	return map[string][]byte{
		"a line of 100 MB":             bytes.Repeat([]byte("x"), 100_000_000),
		"100 MB of fronts":             bytes.Repeat([]byte(front), 100_000_000/len(front)),
		"a million fronts":             lines(cabinet, "- {}\n", 1_000_000),
		"fronts up to the limit":       lines(cabinet, front, 10_001),
		"as many fronts as values":     lines(cabinet, "          - {}\n", 130_000),
		"one long word":                fill("frontlay: 1\ntitle: ", "x"),
		"one long key":                 fill("frontlay: 1\n", "x"),
		"a long block of text":         fill("frontlay: 1\nnotes: |\n", "  x\n"),
		"a long quoted text":           fill("frontlay: 1\ntitle: \"", "\\u0041"),
		"folded lines":                 fill("frontlay: 1\ntitle: ", "x\n "),
		"open brackets":                fill("frontlay: 1\na: ", "["),
		"open braces":                  fill("frontlay: 1\na: ", "{"),
		"brackets just under limits":   lines("frontlay: 1\na: ", "[", 9000),
		"brackets deeper than needed":  []byte("frontlay: 1\ncabinets: " + strings.Repeat("[", 60) + strings.Repeat("]", 60) + "\n"),
		"dashes in a row":              fill("frontlay: 1\na: \n", "- "),
		"question marks":               fill("", "? "),
		"colons":                       fill("frontlay: 1\n", "a: "),
		"indents ever deeper":          []byte("frontlay: 1\n" + deep.String()),
		"empty items":                  lines("frontlay: 1\ncabinets:\n", "-\n", 190_000),
		"many keys":                    lines("frontlay: 1\n", "k: 1\n", 130_000),
		"many comments":                lines("frontlay: 1\n", "# x\n", 390_000),
		"comments, no line end":        fill("frontlay: 1 #", "#"),
		"comments and items":           lines("frontlay: 1\ncabinets:\n", "# x\n- # y\n  # z\n", 90_000),
		"blank lines":                  lines("frontlay: 1\n", "\n", 390_000),
		"blanks":                       fill("frontlay: 1\na:", " "),
		"tabs":                         fill("frontlay: 1\na:", "\t"),
		"aliases":                      append(lines("frontlay: 1\na: &a x\nb: [", "*a , ", 95_000), "x]\n"...),
		"anchors":                      append(lines("frontlay: 1\nb: [", "&a x, ", 95_000), "x]\n"...),
		"tags":                         append(lines("frontlay: 1\nb: [", "!!str x,", 100_000), "x]\n"...),
		"an alias bomb":                []byte(bomb()),
		"directives":                   fill("%YAML 1.2\n", "%TAG ! x\n"),
		"documents":                    lines("frontlay: 1\n", "---\n", 90_000),
		"quotes":                       fill("frontlay: 1\na: ", "\""),
		"a huge size":                  []byte(string(project("", "", "width: 600", "width: "+strings.Repeat("9", 1_000_000)))),
		"a huge exponent":              []byte(string(project("", "", "drawer: low", "share: 1e999999999"))),
		"a size of many sums":          []byte(string(project("", "", "width: 600", "width: "+strings.Repeat("1+", 500_000)+"1"))),
		"a fraction that grows":        []byte(string(project("", "", "width: 600", "width: "+strings.Repeat("1/97+", 23)+"1"))),
		"not a number":                 project("", "", "width: 600", "width: .nan"),
		"UTF-16":                       append([]byte{0xff, 0xfe}, bytes.Repeat([]byte{'a', 0}, 1000)...),
		"UTF-32":                       append([]byte{0xff, 0xfe, 0, 0}, bytes.Repeat([]byte{'a', 0, 0, 0}, 1000)...),
		"invalid UTF-8":                project("", "", "Clay", "Cl\xffay"),
		"overlong UTF-8":               project("", "", "Clay", "Cl\xc0\xafay"),
		"right-to-left override":       project("", "", "Clay", "Cl\u202eay"),
		"line separators":              project("", "", "Clay", "Cl\u2028ay\u2029x\u0085y"),
		"a sheet by a path that leads": project("", "", "sample-a", "../../../../etc/passwd"),
		"a sheet that is a device":     project("", "", "sample-a", "/dev/zero"),
	}
}

func bomb() string {
	s := "frontlay: 1\na0: &a0 [x, x, x, x, x, x, x, x, x, x]\n"
	for i := 1; i < 25; i++ {
		n := string(rune('a' + i))
		p := string(rune('a' + i - 1))
		if i == 1 {
			p = "a0"
		}
		s += n + ": &" + n + " [" + strings.Repeat("*"+p+", ", 9) + "*" + p + "]\n"
	}
	return s
}

// project is a small valid project with some of its text replaced.
func project(replace ...string) []byte {
	s := `frontlay: 1
hardware: {main: sample-a}
boards: {carcass: {thickness: 19}, front: {thickness: 19}}
cabinets:
  - name: Clay
    width: 600
    height: 760
    depth: 560
    bays:
      - fronts:
          - {name: Top, drawer: low}
`
	for i := 0; i+1 < len(replace); i += 2 {
		if replace[i] != "" && replace[i+1] != "" {
			s = strings.Replace(s, replace[i], replace[i+1], 1)
		}
	}
	return []byte(s)
}

// maxMemory is what reading any file may allocate in all, most of it for a
// moment only; the worst of the files below was measured at 100 MB.
const maxMemory = 200 << 20

// Each ends with a clear message, or is a project after all. How long each
// takes is logged (-v), not asserted: machines differ.
func TestHostileFilesEndSoonAndSmall(t *testing.T) {
	if _, err := yamlfile.Read("project.yaml", project(), samples, limits); err != nil {
		t.Fatalf("the small project is bad: %v", err)
	}
	for name, data := range hostile() {
		t.Run(name, func(t *testing.T) {
			var before, after runtime.MemStats
			runtime.ReadMemStats(&before)
			began := time.Now()
			f, err := yamlfile.Read("hostile.yaml", data, samples, limits)
			took := time.Since(began)
			runtime.ReadMemStats(&after)
			used := after.TotalAlloc - before.TotalAlloc
			t.Logf("%d bytes: %v, %d MB: %.200v", len(data), took.Round(time.Millisecond), used>>20, err)
			if used > maxMemory {
				t.Errorf("reading takes %d MB", used>>20)
			}
			if err == nil {
				if _, err := f.Write(f.Project); err != nil {
					t.Errorf("it is read but not written: %v", err)
				}
				return
			}
			if len(err.Error()) > 40_000 || err.Error() == "" {
				t.Errorf("the message has %d bytes", len(err.Error()))
			}
		})
	}
}

// A project that names as many large sheets as it can, each wrong only at its
// end.
func TestManyHostileSheetsEndSoonAndSmall(t *testing.T) {
	sheet, _ := assets.Sheet("sample-a")
	sheet = append(sheet, bytes.Repeat([]byte("# a long tail\n"), (yamlfile.MaxSheetBytes-len(sheet)-20)/14)...)
	sheet = append(sheet, "wrong: 1\n"...)
	asked := map[string]int{}
	source := func(name string) (string, []byte, error) {
		asked[name]++
		return name, sheet, nil
	}
	var names strings.Builder
	for i := range 50 {
		fmt.Fprintf(&names, "s%d: sheet-%d, t%d: sheet-%d, ", i, i%25, i, i%25)
	}
	for names, want := range map[string]int{"main: sample-a, " + names.String(): 0, "main: sample-a, " + names.String()[:strings.Index(names.String(), "s24")]: 25} {
		var before, after runtime.MemStats
		runtime.ReadMemStats(&before)
		began := time.Now()
		_, err := yamlfile.Read("hostile.yaml", project("main: sample-a", names), source, limits)
		took := time.Since(began)
		runtime.ReadMemStats(&after)
		t.Logf("%v, %d MB: %.200v", took.Round(time.Millisecond), (after.TotalAlloc-before.TotalAlloc)>>20, err)
		if err == nil || len(asked) != want {
			t.Errorf("%d sheets are asked for, want %d: %.200v", len(asked), want, err)
		}
		for name, n := range asked {
			if n > 1 {
				t.Errorf("%s is read %d times", name, n)
			}
		}
		clear(asked)
	}
}
