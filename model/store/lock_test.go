package store_test

import (
	"errors"
	"io"
	"os"
	"os/exec"
	"path/filepath"
	"runtime"
	"strings"
	"sync"
	"sync/atomic"
	"syscall"
	"testing"
	"time"

	"frontlay/model/store"
)

var start = time.Date(2024, 5, 4, 3, 2, 1, 0, time.UTC)

func me(session string) store.Owner { return store.ThisProcess(session, start) }

// ended is an owner whose process is over.
func ended(t *testing.T, session string) store.Owner {
	t.Helper()
	cmd := exec.Command(os.Args[0], "-test.run=^$")
	if err := cmd.Run(); err != nil {
		t.Fatal(err)
	}
	o := me(session)
	o.PID, o.Born = cmd.Process.Pid, ""
	return o
}

func TestOneWindowHasTheLock(t *testing.T) {
	path, _ := project(t, older)
	first, err := store.Acquire(store.OS{}, path, me("first"))
	if err != nil || !first.Mine() {
		t.Fatalf("%v", err)
	}
	_, err = store.Acquire(store.OS{}, path, me("second"))
	var held *store.Held
	if !errors.As(err, &held) || held.Owner.Session != "first" || held.Life != store.Running {
		t.Fatalf("the second window gets %v", err)
	}
	if !strings.Contains(err.Error(), "another window since "+start.Local().Format("2006-01-02 15:04")) {
		t.Errorf("the user is told %q", err)
	}
	link := filepath.Join(t.TempDir(), "link.yaml")
	if os.Symlink(path, link) == nil {
		if _, err := store.Acquire(store.OS{}, link, me("second")); !errors.As(err, &held) {
			t.Errorf("by a link, the second window gets %v", err)
		}
	}
	if err := first.Release(); err != nil {
		t.Fatal(err)
	}
	second, err := store.Acquire(store.OS{}, path, me("second"))
	if err != nil {
		t.Fatal(err)
	}
	if err := second.Release(); err != nil || len(names(t, filepath.Dir(path))) != 1 {
		t.Errorf("%v; the folder holds %v", err, names(t, filepath.Dir(path)))
	}
}

func TestALockOfAnEndedProgramIsTakenOver(t *testing.T) {
	reused := me("reused")
	reused.Born = "another boot 1"
	for name, owner := range map[string]store.Owner{"ended": ended(t, "ended"), "number given to another process": reused} {
		t.Run(name, func(t *testing.T) {
			path, _ := project(t, older)
			if _, err := store.Acquire(store.OS{}, path, owner); err != nil {
				t.Fatal(err)
			}
			lock, err := store.Acquire(store.OS{}, path, me("new"))
			if err != nil || !lock.Mine() {
				t.Fatalf("%v", err)
			}
			if err := lock.Release(); err != nil || len(names(t, filepath.Dir(path))) != 1 {
				t.Errorf("%v; the folder holds %v", err, names(t, filepath.Dir(path)))
			}
		})
	}
}

// A program that was killed stays in the list of processes until its parent asks
// for its end, which some never do.
func TestAProgramThatNobodyWaitedForHasEnded(t *testing.T) {
	cmd := exec.Command(os.Args[0], "-test.run=^$")
	out, err := cmd.StdoutPipe()
	if err != nil {
		t.Fatal(err)
	}
	if err := cmd.Start(); err != nil {
		t.Fatal(err)
	}
	o := me("zombie")
	o.PID, o.Born = cmd.Process.Pid, ""
	if _, err := io.ReadAll(out); err != nil { // its end closes the pipe
		t.Fatal(err)
	}
	for range 1000 {
		if store.LifeOf(o, o.Host) == store.Ended {
			break
		}
		time.Sleep(5 * time.Millisecond) // between the closing of the pipe and the end
	}
	if runtime.GOOS == "linux" && store.LifeOf(o, o.Host) != store.Ended {
		t.Error("it is taken to run")
	}
	if err := cmd.Wait(); err != nil {
		t.Error(err)
	}
	if store.LifeOf(o, o.Host) != store.Ended {
		t.Error("after it was waited for it is taken to run")
	}
}

func TestALockOfAnotherMachineIsTheUsersToDecide(t *testing.T) {
	path, _ := project(t, older)
	far := me("far")
	far.Host, far.User = "kiln-room", "ada"
	other, err := store.Acquire(store.OS{}, path, far)
	if err != nil {
		t.Fatal(err)
	}
	_, err = store.Acquire(store.OS{}, path, me("near"))
	var held *store.Held
	if !errors.As(err, &held) || held.Life != store.Unknown || !strings.Contains(err.Error(), "kiln-room by ada") {
		t.Fatalf("told %v", err)
	}
	lock, err := store.Steal(store.OS{}, path, me("near"))
	if err != nil || !lock.Mine() || other.Mine() {
		t.Fatalf("stealing: %v", err)
	}
	if err := other.Release(); err != nil || !lock.Mine() {
		t.Errorf("the other's release takes the lock away: %v", err)
	}
}

func TestBrokenLocksAreNotTakenForFree(t *testing.T) {
	for name, text := range map[string]string{"empty": "", "torn": `{"session":"x","pi`, "nothing in it": "{}", "huge": strings.Repeat(" ", 70<<10)} {
		path, _ := project(t, older)
		if err := os.WriteFile(store.LockName(path), []byte(text), 0o644); err != nil {
			t.Fatal(err)
		}
		_, err := store.Acquire(store.OS{}, path, me("new"))
		var held *store.Held
		if !errors.As(err, &held) || !strings.Contains(err.Error(), "lock can't be read") {
			t.Errorf("%s: %v", name, err)
		}
		if _, err := store.Steal(store.OS{}, path, me("new")); err != nil {
			t.Errorf("%s: stealing: %v", name, err)
		}
	}
}

func TestLocksWithoutSecondNames(t *testing.T) {
	path, _ := project(t, older)
	sys := sound()
	sys.fail = func(_ int, step string) error { return only(step == "link", syscall.EPERM) }
	if _, err := store.Acquire(sys, path, me("first")); err != nil {
		t.Fatal(err)
	}
	var held *store.Held
	if _, err := store.Acquire(sys, path, me("second")); !errors.As(err, &held) {
		t.Errorf("the second window gets %v", err)
	}
}

func TestALockInAFolderThatMayNotBeWritten(t *testing.T) {
	path, _ := project(t, older)
	sys := sound()
	sys.fail = func(_ int, step string) error { return only(step == "open", syscall.EROFS) }
	_, err := store.Acquire(sys, path, me("first"))
	var told *store.Error
	if !errors.As(err, &told) || !strings.Contains(err.Error(), "may not be written") {
		t.Errorf("told %v", err)
	}
}

// Many ask at once for a lock, free or left by an ended program: one gets it.
func TestOneOfManyGetsTheLock(t *testing.T) {
	gone := ended(t, "gone")
	for round := range 30 {
		path, _ := project(t, older)
		if round%2 == 1 {
			if _, err := store.Acquire(store.OS{}, path, gone); err != nil {
				t.Fatal(err)
			}
		}
		var got atomic.Int32
		var all sync.WaitGroup
		for i := range 8 {
			all.Add(1)
			go func() {
				defer all.Done()
				lock, err := store.Acquire(store.OS{}, path, me(string(rune('a'+i))))
				var held *store.Held
				if err == nil && lock.Mine() {
					got.Add(1)
				} else if err != nil && !errors.As(err, &held) {
					t.Errorf("%v", err)
				}
			}()
		}
		all.Wait()
		if got.Load() != 1 {
			t.Fatalf("round %d: %d windows have the lock", round, got.Load())
		}
	}
}

// Whenever two other windows ask while a third takes over the lock of an ended
// program, only one of the three is told that it has it.
func TestALockIsTakenOverOnce(t *testing.T) {
	gone := ended(t, "gone")
	steps := 24 // more than taking over takes, before it is counted
	for first := 0; first < steps; first++ {
		for second := first; second < steps; second++ {
			path, _ := project(t, older)
			if _, err := store.Acquire(store.OS{}, path, gone); err != nil {
				t.Fatal(err)
			}
			got := 0
			ask := func(sys store.FS, session string) {
				var held *store.Held
				if _, err := store.Acquire(sys, path, me(session)); err == nil {
					got++
				} else if !errors.As(err, &held) {
					t.Errorf("%v", err)
				}
			}
			sys, step := sound(), -1
			sys.fail = func(int, string) error {
				if step++; step == first {
					ask(store.OS{}, "b")
				}
				if step == second {
					ask(store.OS{}, "c")
				}
				return nil
			}
			ask(sys, "a")
			if first == 0 && second > step {
				steps = step + 1
			}
			if got > 1 {
				t.Fatalf("asked before steps %d and %d: %d windows have the lock", first, second, got)
			}
		}
	}
}
