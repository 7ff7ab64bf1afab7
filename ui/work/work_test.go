package work

import (
	"path/filepath"
	"slices"
	"strconv"
	"strings"
	"testing"
	"time"

	"pgregory.net/rapid"

	"frontlay/assets"
	"frontlay/model"
	"frontlay/model/edit"
	"frontlay/model/store"
	"frontlay/model/yamlfile"
)

const bench = "/shop/bench.yaml"

// titled is a small project.
func titled(title string) string {
	return "frontlay: 1\ntitle: " + title + `
boards: {carcass: {thickness: 18}, front: {thickness: 19}, back: {thickness: 8}}
cabinets:
  - {name: Glazes, width: 600, height: 720, depth: 560, bays: [{fronts: [{}]}]}
hardware: {main: sample-a}
`
}

// shop is a window's work on a file system in memory. Its answers are given by their
// text.
type shop struct {
	*Work
	t  fataler
	fs *memory
	k  *Keeper
}

// fataler is a test, or one of many runs of a property.
type fataler interface{ Fatalf(string, ...any) }

// newKeeper keeps work on a file system. Its journals are written when they are
// flushed; a sheet that is no sample lies outside of the project's folder.
func newKeeper(m *memory) *Keeper {
	n := 0
	return &Keeper{FS: m, Home: "/home/frontlay", Now: func() time.Time { return time.Unix(1_700_000_000, 0) },
		After: func(time.Duration) <-chan time.Time { return nil },
		Owner: func() store.Owner {
			n++
			return store.ThisProcess("window "+strconv.Itoa(n), time.Unix(0, 0))
		},
		Sheets: func(folder string, allowed func(string) bool) yamlfile.SheetSource {
			return store.Sheets{FS: m, Samples: assets.Sheet, Project: folder, Limit: yamlfile.MaxBytes, Allowed: allowed}.Find
		},
	}
}

func newShop(t fataler) *shop {
	m := newMemory()
	m.put(bench, titled("Glaze bench"))
	k := newKeeper(m)
	return &shop{k.Begin(&model.Project{Title: "New"}), t, m, k}
}

// opened is a shop with the bench open, and edited to a title where that is given.
func opened(t *testing.T, title string) *shop {
	s := newShop(t)
	t.Cleanup(func() { _ = s.Close() })
	s.is(s.Open(bench), "done", "")
	if title != "" {
		s.edit(title)
	}
	return s
}

// edit changes the title, as a window does with a change.
func (s *shop) edit(title string) {
	if err := s.Session().Do(edit.Set{At: model.Whole, Key: "title", Value: title}); err != nil {
		s.t.Fatalf("%v", err)
	}
	s.Note(s.Session().Committed())
}

// is checks what came of a step: "done", "asks", "path", "fails" or "nothing", and a
// part of what it says.
func (s *shop) is(o Outcome, what, says string) Outcome {
	got, text := "nothing", o.Told.String()
	switch {
	case o.Err != nil:
		got, text = "fails", o.Err.Error()
	case o.Ask != nil:
		got, text = "asks", o.Ask.Title.String()+": "+o.Ask.Text.String()
	case o.Path != nil:
		got, text = "path", o.Path.Name
	case o.Done:
		got = "done"
	}
	if got != what || !strings.Contains(text, says) {
		s.t.Fatalf("it %s, saying %q; want that it %s, saying %q", got, text, what, says)
	}
	return o
}

// answer goes on with an answer of a question.
func (s *shop) answer(o Outcome, text string) Outcome {
	i := slices.IndexFunc(o.Ask.Answers, func(a Answer) bool { return a.Text.String() == text })
	if i < 0 {
		s.t.Fatalf("“%v” has no answer %q", o.Ask.Title, text)
	}
	return o.Ask.Choose(i)
}

// has checks the title that the window shows, and the title in a file.
func (s *shop) has(shown, path, saved string) {
	if got := s.Session().Project().Title; got != shown {
		s.t.Fatalf("the window shows %q, not %q", got, shown)
	}
	if text := s.fs.text(path); saved != "" && !strings.Contains(text, "title: "+saved+"\n") {
		s.t.Fatalf("%s is not %q:\n%.120s", path, saved, text)
	}
}

// journalled is what stands in the journals.
func (s *shop) journalled() string {
	s.k.Flush()
	var all string
	for _, name := range s.fs.names("/home/frontlay/journal") {
		all += s.fs.text("/home/frontlay/journal/" + name)
	}
	return all
}

func (s *shop) locked(path string) bool {
	return s.fs.files[filepath.Join(filepath.Dir(path), ".bench.yaml.lock")] != nil
}

func TestOpening(t *testing.T) {
	s := opened(t, "")
	s.has("Glaze bench", bench, "Glaze bench")
	if !s.locked(bench) || s.Path() != bench || s.Session().Unsaved() {
		t.Error("the file is not open in good order")
	}
	s.edit("Mine")
	s.is(s.Open("/shop/gone.yaml"), "fails", "is not there")
	s.fs.put("/shop/bad.yaml", "frontlay: 1\ntitel: x\n")
	s.is(s.Open("/shop/bad.yaml"), "fails", "titel")
	s.has("Mine", bench, "Glaze bench")
	if !strings.Contains(s.journalled(), "title: Mine") || len(s.fs.names("/shop")) != 3 {
		t.Errorf("a file that can't be opened took the work before with it: %v", s.fs.names("/shop"))
	}
	s.fs.put("/shop/other.yaml", titled("Other"))
	o := s.is(s.Open("/shop/other.yaml"), "done", "Opened other.yaml.")
	if !o.Show || o.File != "/shop/other.yaml" || s.locked(bench) || s.journalled() != "" {
		t.Error("the file before is not closed")
	}
	s.is(s.Example("glaze-bench"), "done", "")
	if s.Path() != "" || s.Name() != "glaze-bench" {
		t.Errorf("the demo has the file %q and the name %q", s.Path(), s.Name())
	}
}

// A file that this window has open already is read again, and is not told to be open
// in another window.
func TestOpeningAgain(t *testing.T) {
	s := opened(t, "Mine")
	if o := s.is(s.Open(bench), "done", "Opened"); !o.Show {
		t.Error("nothing is shown")
	}
	s.has("Glaze bench", bench, "Glaze bench")
	if !s.locked(bench) || s.Session().Unsaved() || s.journalled() != "" {
		t.Error("the file is not open in good order")
	}
	s.edit("Mine again")
	s.is(s.Save(), "done", "Saved as bench.yaml.")
}

// A new project is unsaved work from the beginning.
func TestANewProject(t *testing.T) {
	s := newShop(t)
	if s.Session().Unsaved() || s.journalled() != "" {
		t.Error("nobody would miss what a window begins with")
	}
	s.is(s.New(&model.Project{Title: "Chest"}), "done", "")
	if !s.Session().Unsaved() || !strings.Contains(s.journalled(), "title: Chest") {
		t.Errorf("journalled is %q", s.journalled())
	}
}

func TestASheetElsewhere(t *testing.T) {
	const sheet = "/drawers/mine.yaml"
	s := newShop(t)
	s.fs.put(sheet, sheetText(t))
	s.fs.put(bench, strings.Replace(titled("Glaze bench"), "sample-a", sheet, 1))
	o := s.is(s.Open(bench), "asks", sheet)
	s.is(s.answer(o, "Cancel"), "nothing", "")
	s.has("New", bench, "")
	s.is(s.answer(s.is(s.Open(bench), "asks", sheet), "Read it"), "done", "Opened")
	s.has("Glaze bench", bench, "Glaze bench")
	s.is(s.Open(bench), "done", "") // once is enough
}

func sheetText(t *testing.T) string {
	t.Helper()
	data, ok := assets.Sheet(assets.SheetNames()[0])
	if !ok {
		t.Fatal("no sample ships")
	}
	return string(data)
}

func TestSaving(t *testing.T) {
	s := opened(t, "Mine")
	o := s.is(s.Save(), "done", "Saved as bench.yaml.")
	if s.has("Mine", bench, "Mine"); s.Session().Unsaved() || s.journalled() != "" || o.File != bench {
		t.Error("it is not saved in good order")
	}
	s.is(s.is(s.SaveAs(), "path", "bench").Path.Then("/shop/other.yaml"), "done", "Saved as other.yaml.")
	if s.has("Mine", "/shop/other.yaml", "Mine"); s.Path() != "/shop/other.yaml" || s.locked(bench) {
		t.Error("the other file is not the work's own")
	}
	for _, fail := range []string{"write", "rename"} {
		s.edit("Lost? " + fail)
		s.fs.fails[fail] = errFull
		s.is(s.Save(), "fails", "full")
		s.is(s.SaveTo("/shop/third.yaml"), "fails", "full")
		delete(s.fs.fails, fail)
		s.has("Lost? "+fail, "/shop/other.yaml", "Mine")
		if !s.Session().Unsaved() || s.Path() != "/shop/other.yaml" || !strings.Contains(s.journalled(), "Lost? "+fail) {
			t.Error("a failed save counts as one")
		}
	}
	s.is(s.Save(), "done", "")
	fresh := newShop(t)
	fresh.edit("  a/b: c ")
	s.is(fresh.Save(), "path", "a-b--c")
}

func TestChangedByAnotherProgram(t *testing.T) {
	for _, c := range []struct{ answer, comes, shown, saved string }{
		{"Save mine beside it", "path", "Mine", "Theirs"},
		{"Keep mine", "done", "Mine", "Mine"},
		{"Take theirs", "done", "Theirs", "Theirs"},
		{"Cancel", "nothing", "Mine", "Theirs"},
	} {
		for _, when := range []string{"saving", "looking"} {
			t.Run(c.answer+", "+when, func(t *testing.T) {
				s := opened(t, "Mine")
				s.is(s.Look(), "nothing", "")
				s.fs.put(bench, titled("Theirs"))
				step := s.Save
				if when == "looking" {
					step = s.Look
				}
				o := s.is(step(), "asks", "Changed by another program: "+bench)
				s.is(s.answer(o, c.answer), c.comes, "")
				s.has(c.shown, bench, c.saved)
				if unsaved := c.shown != c.saved; s.Session().Unsaved() != unsaved || (s.journalled() != "") != unsaved {
					t.Errorf("unsaved: %v, journal %q", s.Session().Unsaved(), s.journalled())
				}
			})
		}
	}
}

// Each change is told once, and one that comes while the question is open is not
// overwritten by its answer.
func TestEachChangeIsToldOnce(t *testing.T) {
	s := opened(t, "Mine")
	s.fs.put(bench, titled("Theirs"))
	first := s.is(s.Look(), "asks", "")
	s.is(s.Look(), "nothing", "")
	s.fs.put(bench, titled("Theirs again"))
	s.is(s.Look(), "asks", "")
	s.is(s.answer(first, "Keep mine"), "asks", "Changed by another program")
	s.has("Mine", bench, "Theirs again")
	delete(s.fs.files, bench)
	o := s.is(s.Look(), "asks", "moved or removed")
	s.is(s.answer(o, "Take theirs"), "fails", "is not there")
	s.is(s.answer(o, "Keep mine"), "done", "")
	s.has("Mine", bench, "Mine")
}

// Their version that can't be understood is not taken: the work stays, and it is
// asked again before theirs is overwritten.
func TestTheirsThatCantBeRead(t *testing.T) {
	s := opened(t, "Mine")
	s.fs.put(bench, "frontlay: 1\ntitel: x\n")
	o := s.is(s.Save(), "asks", "")
	s.is(s.answer(o, "Take theirs"), "fails", "titel")
	s.has("Mine", bench, "")
	if !strings.Contains(s.journalled(), "title: Mine") || !s.Session().Unsaved() {
		t.Error("the work is out of the journal")
	}
	s.is(s.Save(), "asks", "Changed by another program")
}

func TestOpenInAnotherWindow(t *testing.T) {
	other := func(t *testing.T) (*shop, *shop) {
		s := opened(t, "Theirs")
		w := &shop{s.k.Begin(&model.Project{}), t, s.fs, s.k}
		t.Cleanup(func() { _ = w.Close() })
		return s, w
	}
	t.Run("to look at", func(t *testing.T) {
		s, w := other(t)
		o := w.is(w.Open(bench), "asks", "You can look at it here")
		if !o.Show {
			t.Error("it is not shown")
		}
		w.is(w.answer(o, "Look at it"), "nothing", "")
		w.edit("Mine")
		w.is(w.answer(w.is(w.Save(), "asks", "is open in another window"), "Cancel"), "nothing", "")
		w.has("Mine", bench, "Glaze bench")
		w.is(w.answer(w.Save(), "Save mine beside it"), "path", "bench")
		w.is(w.answer(w.Save(), "Save here all the same"), "done", "")
		w.has("Mine", bench, "Mine")
		s.is(s.Save(), "asks", "is open in another window")
	})
	t.Run("saved over", func(t *testing.T) {
		s, w := other(t)
		w.is(w.Example("glaze-bench"), "done", "")
		w.edit("Mine")
		o := w.is(w.SaveTo(bench), "asks", "is open in another window")
		w.has("Mine", bench, "Glaze bench")
		w.is(w.answer(o, "Save here all the same"), "done", "")
		w.has("Mine", bench, "Mine")
		if w.Path() != bench {
			t.Errorf("it is saved to %q", w.Path())
		}
		s.is(s.Save(), "asks", "is open in another window")
	})
}

func TestLeaving(t *testing.T) {
	s := opened(t, "")
	s.is(s.Leave(), "done", "")
	s.edit("Mine")
	o := s.is(s.Leave(), "asks", "“Mine” has changes")
	s.is(s.answer(o, "Cancel"), "nothing", "")
	s.is(s.answer(o, "Don't save"), "done", "")
	s.has("Mine", bench, "Glaze bench")
	s.fs.fails["write"] = errFull
	s.is(s.answer(o, "Save"), "fails", "full")
	delete(s.fs.fails, "write")
	s.is(s.answer(o, "Save"), "done", "")
	s.has("Mine", bench, "Mine")
	s.is(s.Leave(), "done", "")
	if err := s.Close(); err != nil || len(s.fs.names("/shop")) != 2 || s.journalled() != "" {
		t.Errorf("closed: %v, left are %v", err, s.fs.names("/shop"))
	}
}

// crash ends a window without a word: its journal and its lock stay.
func (s *shop) crash() {
	s.k.Flush()
	for name, c := range s.fs.files {
		if strings.HasSuffix(name, ".journal") || strings.HasSuffix(name, ".lock") {
			c.data = []byte(strings.ReplaceAll(string(c.data), `"pid":`, `"pid":99`)) // no system has so many processes
		}
	}
	s.k.keep(s.doc, false)
}

func TestLeftovers(t *testing.T) {
	left := func(t *testing.T) *shop {
		s := opened(t, "Lost")
		s.crash()
		return &shop{s.k.Begin(&model.Project{Title: "New"}), t, s.fs, s.k}
	}
	t.Run("opened again", func(t *testing.T) {
		s := left(t)
		o := s.is(s.Leftovers(), "asks", "“Lost”, as it was on")
		if !strings.Contains(o.Ask.Text.String(), "It belongs to "+bench) {
			t.Errorf("it says %v", o.Ask.Text)
		}
		s.is(s.answer(o, "Open it again"), "done", "not saved yet")
		if s.has("Lost", bench, "Glaze bench"); !s.Session().Unsaved() || strings.Count(s.journalled(), "title: Lost") != 1 {
			t.Errorf("journalled is\n%s", s.journalled())
		}
		s.is(s.Save(), "done", "")
		s.has("Lost", bench, "Lost")
		s.is(s.Leftovers(), "nothing", "")
	})
	t.Run("later", func(t *testing.T) {
		s := left(t)
		s.is(s.answer(s.Leftovers(), "Ask me later"), "nothing", "")
		s.is(s.Leftovers(), "asks", "“Lost”")
	})
	t.Run("discarded", func(t *testing.T) {
		s := left(t)
		s.is(s.answer(s.Leftovers(), "Discard it"), "nothing", "")
		s.is(s.Leftovers(), "nothing", "")
	})
	t.Run("that can't be discarded", func(t *testing.T) {
		s := left(t)
		s.fs.fails["remove"] = errClosed
		s.is(s.answer(s.Leftovers(), "Discard it"), "fails", "permission")
	})
	t.Run("that can't be kept again", func(t *testing.T) {
		s := left(t)
		o := s.is(s.Leftovers(), "asks", "")
		s.fs.fails["write"] = errFull
		s.is(s.answer(o, "Open it again"), "fails", "full")
		delete(s.fs.fails, "write")
		s.has("New", bench, "")
		s.is(s.Leftovers(), "asks", "“Lost”")
	})
	t.Run("of a folder that is gone", func(t *testing.T) {
		s := left(t)
		for name := range s.fs.files {
			if strings.HasPrefix(name, "/shop/") {
				delete(s.fs.files, name)
			}
		}
		o := s.Leftovers()
		s.fs.fails["link"], s.fs.fails["stat"] = errClosed, errClosed
		s.is(s.answer(o, "Open it again"), "done", "")
		s.has("Lost", bench, "")
	})
	t.Run("of several windows", func(t *testing.T) {
		s := opened(t, "First")
		next := &shop{s.k.Begin(&model.Project{}), t, s.fs, s.k}
		next.is(next.New(&model.Project{Title: "Second"}), "done", "")
		next.crash()
		s.k.keep(s.doc, false)
		s = &shop{s.k.Begin(&model.Project{Title: "New"}), t, s.fs, s.k}
		o := s.Leftovers()
		o = s.is(s.answer(o, "Ask me later"), "asks", "")
		s.is(s.answer(o, "Discard it"), "nothing", "")
		s.is(s.Leftovers(), "asks", "")
	})
}

// Whatever a person and another program do, and whatever fails: a file holds only
// what was saved to it or what the other program wrote, nothing of theirs goes but by
// a word, and work that is not saved is in the window and in the journal.
func TestNothingIsLost(t *testing.T) {
	rapid.Check(t, func(t *rapid.T) {
		s := newShop(t)
		defer func() { _ = s.Close() }()
		s.is(s.Open(bench), "done", "")
		n, theirs, mine, whole := 0, "", map[string]bool{"Glaze bench": true}, map[string]bool{}
		follow := func(o Outcome) {
			for range 5 {
				switch {
				case o.Ask != nil:
					i := rapid.IntRange(0, len(o.Ask.Answers)-1).Draw(t, "answer")
					if text := o.Ask.Answers[i].Text.String(); text == "Keep mine" || text == "Take theirs" {
						theirs = ""
					}
					o = o.Ask.Choose(i)
				case o.Path != nil:
					o = o.Path.Then(rapid.SampledFrom([]string{bench, "/shop/beside.yaml"}).Draw(t, "path"))
				default:
					return
				}
			}
		}
		t.Repeat(map[string]func(*rapid.T){
			"edit": func(t *rapid.T) {
				n++
				s.edit("Mine " + strconv.Itoa(n))
				mine["Mine "+strconv.Itoa(n)] = true
			},
			"save":  func(t *rapid.T) { follow(s.Save()) },
			"look":  func(t *rapid.T) { follow(s.Look()) },
			"leave": func(t *rapid.T) { follow(s.Leave()) },
			"fail": func(t *rapid.T) {
				s.fs.fails[rapid.SampledFrom([]string{"write", "rename", "link"}).Draw(t, "step")] = errFull
			},
			"mend": func(t *rapid.T) { clear(s.fs.fails) },
			"theirs": func(t *rapid.T) {
				n++
				theirs = "Theirs " + strconv.Itoa(n)
				s.fs.put(bench, titled(theirs))
			},
			"": func(t *rapid.T) {
				if theirs != "" && s.Path() == bench && !strings.Contains(s.fs.text(bench), "title: "+theirs+"\n") {
					t.Fatalf("%q was overwritten without a word", theirs)
				}
				title := s.Session().Project().Title
				if s.Session().Unsaved() && len(s.fs.fails) == 0 {
					s.Note(s.Session().Committed())
					if !strings.Contains(s.journalled(), "title: "+title+"\n") {
						t.Fatalf("%q is neither saved nor journalled", title)
					}
				}
				if !s.Session().Unsaved() && !mine[title] && !strings.HasPrefix(title, "Theirs") {
					t.Fatalf("%q came from nowhere", title)
				}
				for _, path := range []string{bench, "/shop/beside.yaml"} {
					if text := s.fs.text(path); text != "" && !whole[text] {
						whole[text] = true
						if _, err := s.k.read(path, []byte(text), "/shop"); err != nil {
							t.Fatalf("%s is not whole: %v", path, err)
						}
					}
				}
			},
		})
	})
}
