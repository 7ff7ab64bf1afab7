package store_test

import (
	"bufio"
	"errors"
	"fmt"
	"math/rand/v2"
	"os"
	"os/exec"
	"path/filepath"
	"strconv"
	"strings"
	"testing"
	"time"

	"frontlay/assets"
	"frontlay/layout/check"
	"frontlay/model/store"
	"frontlay/model/yamlfile"
)

const (
	childEnv = "FRONTLAY_KILL_CHILD" // folder: this process is the one to be killed
	killsEnv = "FRONTLAY_KILLS"      // how many kills, in real time; the suite makes a few, quicker
)

func sample(source string) (string, []byte, error) {
	data, ok := assets.Sheet(source)
	return source, data, only(!ok, errors.New("no such sample"))
}

// TestKillChild is no test but the program that TestKill kills: it edits, notes
// and saves a project for ever, and tells what it has done.
func TestKillChild(t *testing.T) {
	folder := os.Getenv(childEnv)
	if folder == "" {
		t.Skip("only run by TestKill")
	}
	hurry, err := strconv.Atoi(os.Getenv(childEnv + "_HURRY"))
	if err != nil {
		t.Fatal(err)
	}
	d, data, err := store.Open(store.Options{FS: store.OS{}, Limit: yamlfile.MaxBytes, Journal: store.JournalOptions{
		Dir: filepath.Join(folder, "state"), Owner: store.ThisProcess("child", time.Now()), Now: time.Now,
		After: func(d time.Duration) <-chan time.Time { return time.After(d / time.Duration(hurry)) },
	}}, filepath.Join(folder, "bench.yaml"))
	if err != nil {
		t.Fatal(err)
	}
	f, err := yamlfile.Read("bench.yaml", data, sample, check.Limits())
	if err != nil {
		t.Fatal(err)
	}
	for i := 1; ; i++ {
		p := f.Project.Clone()
		p.Title, p.Notes = fmt.Sprintf("edit %d", i), strings.Repeat("line\n", rand.IntN(2000))
		d.Note(p.Title, func() ([]byte, error) { return f.Draft(p) })
		fmt.Println("noted", i, time.Now().UnixNano())
		if i%5 == 3 {
			if err := d.Flush(); err != nil {
				t.Fatal(err)
			}
			fmt.Println("kept", i, 0)
		}
		if rand.IntN(40) == 0 {
			data, err := f.Write(p)
			if err != nil {
				t.Fatal(err)
			}
			if _, err := d.Save(data); err != nil {
				t.Fatal(err)
			}
			fmt.Println("saved", i, 0)
		}
		time.Sleep(time.Duration(rand.IntN(int(40*time.Millisecond) / hurry)))
	}
}

// The program is killed at random moments. Each time the file is a whole
// version, no older than the last that was saved; the journal gives back the
// last edit known to be kept, and in real time all but the last two seconds.
func TestKill(t *testing.T) {
	kills, hurry := 12, 50
	if n, err := strconv.Atoi(os.Getenv(killsEnv)); err == nil {
		kills, hurry = n, 1
	}
	seed := uint64(time.Now().UnixNano())
	t.Logf("seed %d", seed)
	random := rand.New(rand.NewPCG(seed, 1))
	folder := t.TempDir()
	path := filepath.Join(folder, "bench.yaml")
	if err := os.WriteFile(path, assets.Demo(), 0o644); err != nil {
		t.Fatal(err)
	}
	var worst time.Duration
	restored := 0
	for n := range kills {
		after := time.Duration(random.Int64N(int64(8*time.Second)/int64(hurry))) + 30*time.Millisecond
		did, killed := runAndKill(t, folder, hurry, after)
		version := titleOf(t, "the file", mustRead(t, path))
		if version < did["saved"] || version > did["noted"]+1 {
			t.Fatalf("kill %d: the file is at edit %d, saved was %d, noted %d", n, version, did["saved"], did["noted"])
		}
		if data, err := os.ReadFile(store.BackupName(path)); err == nil {
			titleOf(t, "the backup", data)
		}
		best := version
		for _, l := range leftovers(t, filepath.Join(folder, "state")) {
			best = max(best, titleOf(t, "the journal", l.Data))
			restored++
			if err := l.Discard(); err != nil {
				t.Fatal(err)
			}
		}
		if best < did["kept"] || best < did["saved"] {
			t.Fatalf("kill %d: restored is edit %d, kept was %d, saved %d", n, best, did["kept"], did["saved"])
		}
		if at, ok := did[fmt.Sprint("at ", best+1)]; ok {
			lost := killed.Sub(time.Unix(0, int64(at)))
			worst = max(worst, lost)
			if hurry == 1 && lost > 2*time.Second {
				t.Fatalf("kill %d: the work of %v is lost", n, lost)
			}
		}
		again(t, folder, path)
	}
	t.Logf("%d kills; work was restored from the journal %d times; at most %v of work was lost (time runs %d times as fast)", kills, restored, worst, hurry)
}

// again opens the file as the next start does, and makes edits count from 0.
func again(t *testing.T, folder, path string) {
	t.Helper()
	d, _, err := store.Open(desk(filepath.Join(folder, "state"), me("next")), path)
	if err != nil || !d.Locked() {
		t.Fatalf("the next start: %v", err)
	}
	if _, err := d.Save(assets.Demo()); err != nil {
		t.Fatal(err)
	}
	if err := d.Close(); err != nil {
		t.Fatal(err)
	}
	if err := os.Remove(store.BackupName(path)); err != nil && !os.IsNotExist(err) {
		t.Fatal(err)
	}
	for _, name := range names(t, folder) {
		if name != "bench.yaml" && name != "state" {
			t.Errorf("%s is left over", name)
		}
	}
}

// runAndKill gives the last edit that the child noted, kept and saved, and when
// each was noted, and the moment of the kill.
func runAndKill(t *testing.T, folder string, hurry int, after time.Duration) (map[string]int, time.Time) {
	t.Helper()
	cmd := exec.Command(os.Args[0], "-test.run=^TestKillChild$")
	cmd.Env = append(os.Environ(), childEnv+"="+folder, childEnv+"_HURRY="+strconv.Itoa(hurry))
	out, err := cmd.StdoutPipe()
	if err != nil {
		t.Fatal(err)
	}
	if err := cmd.Start(); err != nil {
		t.Fatal(err)
	}
	did := map[string]int{}
	killed := make(chan time.Time, 1)
	begun := false
	lines := bufio.NewScanner(out)
	for lines.Scan() {
		var what string
		var i, at int
		if _, err := fmt.Sscan(lines.Text(), &what, &i, &at); err != nil {
			t.Fatalf("the child says %q", lines.Text())
		}
		did[what] = i
		if what == "noted" {
			did[fmt.Sprint("at ", i)] = at
		}
		if !begun {
			begun = true
			time.AfterFunc(after, func() {
				killed <- time.Now()
				_ = cmd.Process.Kill() // a child that has ended by itself is told by Wait
			})
		}
	}
	if err := cmd.Wait(); err == nil || !strings.Contains(err.Error(), "killed") {
		t.Fatalf("the child ended by itself: %v", err)
	}
	return did, <-killed
}

func mustRead(t *testing.T, path string) []byte {
	t.Helper()
	data, err := os.ReadFile(path)
	if err != nil {
		t.Fatal(err)
	}
	return data
}

// titleOf reads a whole project and gives the number of its edit, 0 for the
// demo.
func titleOf(t *testing.T, what string, data []byte) int {
	t.Helper()
	f, err := yamlfile.Read(what, data, sample, check.Limits())
	if err != nil {
		t.Fatalf("%s is not whole: %v", what, err)
	}
	n, err := strconv.Atoi(strings.TrimPrefix(f.Project.Title, "edit "))
	if err != nil {
		return 0
	}
	return n
}
