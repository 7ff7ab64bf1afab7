package record_test

import (
	"os"
	"os/exec"
	"path/filepath"
	"strings"
	"testing"
	"time"

	"frontlay/model/store"
	"frontlay/model/store/record"
)

const crashEnv = "FRONTLAY_CRASH_CHILD"

// TestCrashChild is no test but the program that TestCrashReports lets crash.
func TestCrashChild(t *testing.T) {
	dir, how, ok := strings.Cut(os.Getenv(crashEnv), "|")
	if !ok {
		t.Skip("only run by TestCrashReports")
	}
	c, err := record.WatchCrashes(dir, store.ThisProcess(how, start), "frontlay 1.2")
	if err != nil {
		t.Fatal(err)
	}
	switch how {
	case "goroutine":
		go func() { panic("the glaze ran: /home/ada/Smith kitchen/bench.yaml") }()
		time.Sleep(time.Minute)
	case "memory":
		m := map[int]int{}
		for range 4 {
			go func() {
				for {
					m[1]++
				}
			}()
		}
		time.Sleep(time.Minute)
	case "recovered":
		func() {
			defer func() {
				if err := c.Record(recover(), []byte("goroutine 1:\nmain.draw\n\t/home/ada/src/frontlay/ui/draw.go:12")); err != nil {
					t.Error(err)
				}
			}()
			panic("a drawing without marks")
		}()
		if err := c.Close(); err != nil {
			t.Fatal(err)
		}
	case "killed":
		p, _ := os.FindProcess(os.Getpid())
		_ = p.Kill()
		time.Sleep(time.Minute)
	case "well":
		if err := c.Close(); err != nil {
			t.Fatal(err)
		}
	}
}

func TestCrashReports(t *testing.T) {
	cases := map[string][]string{
		"goroutine": {"panic: the glaze ran: <file>.yaml", "frontlay 1.2, go", "began 2024-05-04T03:02:01Z", "<source>/record/crash_test.go:"},
		"memory":    {"maps.fatal(", "<source>/record/crash_test.go:"},
		"recovered": {"panic: a drawing without marks [recovered]", "<source>/ui/draw.go:12"},
		"killed":    nil,
		"well":      nil,
	}
	for how, says := range cases {
		t.Run(how, func(t *testing.T) {
			dir := filepath.Join(t.TempDir(), "reports")
			cmd := exec.Command(os.Args[0], "-test.run=^TestCrashChild$")
			cmd.Env = append(os.Environ(), crashEnv+"="+dir+"|"+how)
			out, err := cmd.CombinedOutput()
			if (err != nil) != (how == "goroutine" || how == "memory" || how == "killed") {
				t.Fatalf("%v\n%s", err, out)
			}
			o := me("next")
			reports, err := record.Crashes(store.OS{}, dir, o.Host, record.ThisUser(o))
			if err != nil || (len(reports) == 1) != (says != nil) {
				t.Fatalf("%d reports, %v\n%s", len(reports), err, out)
			}
			for _, r := range reports {
				for _, s := range says {
					if !strings.Contains(r.Text, s) {
						t.Errorf("%q is not in the report:\n%.1500s", s, r.Text)
					}
				}
				for _, private := range []string{"ada", "Smith", "kitchen", dir, os.TempDir() + "/"} {
					if strings.Contains(r.Text, private) {
						t.Errorf("%q is in the report:\n%.1500s", private, r.Text)
					}
				}
				if err := r.Discard(); err != nil {
					t.Error(err)
				}
			}
			if left := names(t, dir); len(left) != 0 {
				t.Errorf("left over: %v", left)
			}
		})
	}
}

func TestReportsOfRunningProgramsAreLeftAlone(t *testing.T) {
	dir := t.TempDir()
	c, err := record.WatchCrashes(dir, me("running"), "frontlay 1.2")
	if err != nil {
		t.Fatal(err)
	}
	if reports, err := record.Crashes(store.OS{}, dir, me("").Host, record.Scrubber{}); err != nil || len(reports) != 0 || len(names(t, dir)) != 1 {
		t.Errorf("%d reports, %v, %v", len(reports), err, names(t, dir))
	}
	if err := c.Close(); err != nil || len(names(t, dir)) != 0 {
		t.Errorf("%v, %v", err, names(t, dir))
	}
}

func TestScrub(t *testing.T) {
	s := record.Scrubber{Home: "/home/ada", User: "ada", Host: "kiln-room"}
	cases := map[string]struct{ text, want string }{
		"nothing private":      {"saved in 3 ms, 12/16 fronts, 1/2 in", "saved in 3 ms, 12/16 fronts, 1/2 in"},
		"a file of the user's": {"open /home/ada/bench.yaml: no such file", "open <file>.yaml: no such file"},
		"in quotes, blanks":    {`path="/home/ada/Smith kitchen/the bench.yaml" size=3`, `path="<file>.yaml" size=3`},
		"a folder":             {"in /srv/jobs/smith now", "in <path> now"},
		"Windows":              {`open C:\Users\ada\bench.yaml: denied`, "open <file>.yaml: denied"},
		"Windows, quoted":      {`path="C:\\Users\\ada\\bench.yaml"`, `path="<file>.yaml"`},
		"a network folder":     {`open \\server\jobs\bench.yaml: denied`, "open <file>.yaml: denied"},
		"blanks in the middle": {"open /mnt/Smith kitchen/bench.yaml: gone", "open <file>.yaml: gone"},
		"names":                {"ada@kiln-room edits; adagio stays", "user@this-machine edits; adagio stays"},
		"a stack":              {"main.draw(0x1)\n\t/home/ada/src/frontlay/ui/draw.go:12 +0x1d", "main.draw(0x1)\n\t<source>/ui/draw.go:12 +0x1d"},
		"a stack, trimmed":     {"\tfrontlay/ui/draw.go:12", "\tfrontlay/ui/draw.go:12"},
		"in brackets":          {"(/etc/x.conf)", "(<file>.conf)"},
	}
	for name, c := range cases {
		t.Run(name, func(t *testing.T) {
			if got := s.Scrub(c.text); got != c.want {
				t.Errorf("%q becomes %q, want %q", c.text, got, c.want)
			}
		})
	}
	if got := (record.Scrubber{}).Scrub("nobody here"); got != "nobody here" {
		t.Errorf("without names: %q", got)
	}
}
