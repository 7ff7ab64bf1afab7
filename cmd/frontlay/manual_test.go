package main

import (
	"flag"
	"fmt"
	"os"
	"path"
	"path/filepath"
	"regexp"
	"slices"
	"strings"
	"testing"

	"frontlay/assets"
	"frontlay/assets/manual"
	"frontlay/assets/manual/manualtest"
)

var update = flag.Bool("update", false, "write what the manual has from the commands anew")

// The manual lists every command and flag.
func TestManualsCommands(t *testing.T) {
	words := map[string]struct{ command, does, flags, flag, means, window, examples, codes, code, says string }{
		"en": {"Command", "What it does", "Flags of", "Flag", "Meaning", "the window", "Examples", "Exit codes", "Code", "Meaning"},
		"de": {"Befehl", "Was er tut", "Schalter von", "Schalter", "Bedeutung", "frontlay FILE", "Beispiele", "Rückgabewerte", "Wert", "Bedeutung"},
	}
	cell := func(s string) string { return strings.ReplaceAll(manualtest.Cell(s), "\n", "; ") }
	for _, code := range manual.Languages() {
		w := words[code]
		var b strings.Builder
		fmt.Fprintf(&b, "| %s | %s |\n| --- | --- |\n", w.command, w.does)
		for _, c := range commands() {
			fmt.Fprintf(&b, "| `%s` | %s |\n", cell(strings.TrimSpace(called(c.name)+" "+c.args)), cell(c.about))
		}
		for _, g := range flagGroups() {
			names := slices.Clone(g.commands)
			if i := slices.Index(names, ""); i >= 0 {
				names[i] = w.window
			}
			fmt.Fprintf(&b, "\n## %s %s\n\n| %s | %s |\n| --- | --- |\n", w.flags, strings.Join(names, ", "), w.flag, w.means)
			for _, f := range g.flags {
				fmt.Fprintf(&b, "| `%s` | %s |\n", cell(written(f)), cell(meaning(f)))
			}
		}
		fmt.Fprintf(&b, "\n## %s\n\n```sh\n%s\n```\n", w.examples, examples)
		fmt.Fprintf(&b, "\n## %s\n\n| %s | %s |\n| --- | --- |\n", w.codes, w.code, w.says)
		for _, e := range exitCodes {
			fmt.Fprintf(&b, "| %d | %s |\n", e.code, cell(e.says))
		}
		manualtest.Made(t, code+"/reference-commands.md", b.String(), *update)
	}
}

// The terminal prints the manual, and says where it has no such chapter or language.
func TestManualInTheTerminal(t *testing.T) {
	for _, code := range manual.Languages() {
		_, listed, _ := do(t, "manual", "--language", code)
		for _, c := range manual.In(code).Chapters[1:] {
			if !strings.Contains(listed, c.Name) || !strings.Contains(listed, c.Title) {
				t.Errorf("%s: %s is not listed", code, c.Name)
			}
			if exit, out, _ := do(t, "manual", "--language", code, c.Name); exit != exitFine || !strings.Contains(out, "# "+c.Title) || strings.Contains(out, "<!--") {
				t.Errorf("%s: %s is not printed whole: exit %d", code, c.Name, exit)
			}
		}
	}
	for _, args := range [][]string{{"no-such-chapter"}, {"../README"}, {"reference-keys", "reference-rules"}, {"--language", "xx"}} {
		if exit, _, errs := do(t, append([]string{"manual"}, args...)...); exit != exitFailed || errs == "" {
			t.Errorf("manual %v: exit %d, said %q", args, exit, errs)
		}
	}
}

// page is a page of Markdown that people read.
type page struct {
	path string // from the root of the repository
	*manual.Chapter
}

// pages are README, the developers' page and the manual in every language.
func pages(t *testing.T) []page {
	t.Helper()
	var all []page
	for _, name := range []string{"README.md", "DEVELOPERS.md"} {
		data, err := os.ReadFile(filepath.Join(repository(t), name))
		if err != nil {
			t.Fatal(err)
		}
		all = append(all, page{name, manual.Read(name, string(data))})
	}
	for _, code := range manual.Languages() {
		for _, c := range manual.In(code).Chapters {
			all = append(all, page{path.Join("assets/manual", code, c.Name+".md"), c})
		}
	}
	return all
}

// Every link of a page leads to a file, a heading or a picture that is there, and none
// out to the network.
func TestEveryLinkLeadsSomewhere(t *testing.T) {
	root := repository(t)
	used := map[string]bool{}
	for _, p := range pages(t) {
		links := p.Links()
		for _, b := range p.Blocks {
			if b.Kind == manual.Image {
				links = append(links, b.Path)
				used[path.Join(path.Dir(p.path), b.Path)] = true
				if b.Alt == "" {
					t.Errorf("%s: the picture %s does not say what it shows", p.path, b.Path)
				}
			}
		}
		for _, to := range links {
			if strings.Contains(to, "://") {
				t.Errorf("%s leads to the network: %s", p.path, to)
				continue
			}
			file, anchor, _ := strings.Cut(to, "#")
			at := p.path
			if file != "" {
				at = path.Join(path.Dir(p.path), file)
			}
			data, err := os.ReadFile(filepath.Join(root, filepath.FromSlash(at)))
			if info, e := os.Stat(filepath.Join(root, filepath.FromSlash(at))); e == nil && info.IsDir() {
				err = nil
			}
			if err != nil {
				t.Errorf("%s leads to %s, which is not there", p.path, to)
				continue
			}
			if anchor != "" && !slices.ContainsFunc(manual.Read(at, string(data)).Blocks, func(b manual.Block) bool { return b.Kind == manual.Heading && b.Anchor == anchor }) {
				t.Errorf("%s leads to the heading %s, which is not there", p.path, to)
			}
		}
	}
	for _, name := range manual.Pictures() {
		if !used["assets/manual/pictures/"+name] {
			t.Errorf("assets/manual/pictures/%s is shown nowhere", name)
		}
	}
}

// The manual has the same chapters in every language, in the same order, with the same
// headings, pictures and commands, and its contents leave none out.
func TestManualIsTheSameInEveryLanguage(t *testing.T) {
	english := manual.In("en")
	for _, code := range manual.Languages() {
		book := manual.In(code)
		if names, all := manual.Names(code), len(book.Chapters); len(names) != all {
			t.Errorf("%s: the contents list %d chapters, there are %d: %v", code, all-1, len(names)-1, names)
		}
		for i, c := range book.Chapters {
			if i >= len(english.Chapters) || english.Chapters[i].Name != c.Name {
				t.Errorf("%s: the chapter %s has not the place that it has in English", code, c.Name)
				continue
			}
			is, want := outline(c, code), outline(english.Chapters[i], "en")
			for j := range max(len(is), len(want)) {
				if j >= len(is) || j >= len(want) || is[j] != want[j] {
					t.Errorf("%s/%s.md differs from English: it has %q, English has %q", code, c.Name, is[min(j, len(is)):], want[min(j, len(want)):])
					break
				}
			}
		}
	}
}

// outline is what a chapter has in every language.
func outline(c *manual.Chapter, code string) []string {
	var all []string
	for _, b := range c.Blocks {
		switch b.Kind {
		case manual.Heading:
			all = append(all, strings.Repeat("#", b.Level))
		case manual.Image:
			all = append(all, strings.Replace(b.Path, "."+code+".png", ".png", 1))
		case manual.Code:
			for _, line := range strings.Split(b.Lines, "\n") {
				if b.Kept == "sh" {
					line, _, _ = strings.Cut(line, " # ")
					all = append(all, strings.TrimSpace(line))
				}
			}
		}
	}
	return all
}

// notRun are the lines of pages that no test runs, with what does.
var notRun = map[string]string{
	`^(sudo )?(make|apt|apt-get|dpkg|tar|unzip|sha256sum|cd|cp|git|go|brew) ?`: "builds, installs or tests the program; the suite itself is one, DEVELOPERS.md says more",
	`^FRONTLAY_`:                       "runs tests for a long time",
	`^(bin/)?frontlay( [^ ]+\.yaml)?$`: "opens the window, which its own tests do",
	`^(bin/)?frontlay --demo$`:         "opens the window, which its own tests do",
	`--printer|--watch`:                "needs a printer, or never ends",
}

// Every line of a command that README or manual shows works as it stands, on a project
// that is called as theirs.
func TestEveryCommandLineShownWorks(t *testing.T) {
	t.Chdir(t.TempDir())
	t.Setenv("HOME", t.TempDir())
	t.Setenv("XDG_CONFIG_HOME", t.TempDir())
	if err := os.WriteFile("bench.yaml", assets.Demo(), 0o666); err != nil {
		t.Fatal(err)
	}
	ran := map[string]bool{}
	for _, p := range pages(t) {
		for _, b := range p.Blocks {
			if b.Kind != manual.Code || b.Kept != "sh" {
				continue
			}
			for _, line := range strings.Split(b.Lines, "\n") {
				line, _, _ = strings.Cut(line, " # ")
				if line = strings.TrimSpace(line); line == "" || strings.HasPrefix(line, "#") || ran[line] {
					continue
				}
				ran[line] = true
				if skipped(line) {
					continue
				}
				args := strings.Fields(line)
				if args[0] != "frontlay" && args[0] != "bin/frontlay" {
					t.Errorf("%s shows %q, which no test runs: make it one that runs, or say in notRun why not", p.path, line)
					continue
				}
				if args[1] == "new" {
					args[2] = "new-" + args[2] // never writes over a file
				}
				if exit, _, errs := do(t, args[1:]...); exit == exitFailed {
					t.Errorf("%s shows %q, which fails: %s", p.path, line, errs)
				}
			}
		}
	}
	if exit, _, errs := do(t, "calibrate", "--printer", "workshop", "--measured", measuredExample()); exit != exitFine {
		t.Errorf("the example of calibrate fails: %s", errs)
	}
	if len(ran) < 10 {
		t.Errorf("only %d lines were looked at", len(ran))
	}
}

func skipped(line string) bool {
	for pattern := range notRun {
		if regexp.MustCompile(pattern).MatchString(line) {
			return true
		}
	}
	return false
}

// No paragraph of README is longer than six lines of about a hundred characters, and the
// first tells the job.
func TestReadmeIsReadAtAGlance(t *testing.T) {
	data, err := os.ReadFile(filepath.Join(repository(t), "README.md"))
	if err != nil {
		t.Fatal(err)
	}
	first, _, _ := strings.Cut(string(data), "\n\n")
	for _, want := range []string{"joiner", "fronts", "checks", "templates at 1:1"} {
		if !strings.Contains(first, want) {
			t.Errorf("the first paragraph does not speak of %s", want)
		}
	}
	target := regexp.MustCompile(`\]\([^)]*\)`)
	for _, p := range regexp.MustCompile(`\n\n|\n- |\n\d\. `).Split(string(data), -1) {
		if n := len(target.ReplaceAllString(p, "]")); n > 600 && !strings.HasPrefix(p, "```") {
			t.Errorf("a paragraph has %d characters: %.60s…", n, p)
		}
	}
}
