package store_test

import (
	"bytes"
	"errors"
	"fmt"
	"io"
	"os"
	"os/exec"
	"path/filepath"
	"strings"
	"syscall"
	"testing"

	"frontlay/model/store"
)

// mounted is a small disk of its own; the test is skipped where the user may
// not mount one.
func mounted(t *testing.T, size string) string {
	t.Helper()
	dir := t.TempDir()
	if err := syscall.Mount("tmpfs", dir, "tmpfs", 0, "size="+size); err != nil {
		t.Skipf("no small disk can be mounted here: %v", err)
	}
	t.Cleanup(func() {
		if err := syscall.Unmount(dir, syscall.MNT_DETACH); err != nil {
			t.Errorf("unmounting: %v", err)
		}
	})
	return dir
}

// A real disk of 64 KiB fills up with versions of every size: the file is the
// last version that was saved, the journal the last that was kept, and both go
// on when there is room again.
func TestARealDiskThatFillsLosesNothing(t *testing.T) {
	dir := mounted(t, "64k")
	path := filepath.Join(dir, "bench.yaml")
	if err := os.WriteFile(path, []byte(older), 0o644); err != nil {
		t.Fatal(err)
	}
	d, _, err := store.Open(desk(filepath.Join(dir, "state"), me("full")), path)
	if err != nil {
		t.Fatal(err)
	}
	defer d.Close()
	want, full, saved := older, 0, 0
	for n := range 200 {
		text := fmt.Sprintf("version %d\n", n) + strings.Repeat("x", n*997%40_000)
		switch _, err := d.Save([]byte(text)); {
		case err == nil:
			want = text
			saved++
		case errors.Is(err, store.ErrFull):
			full++
		default:
			t.Fatalf("version %d: %v", n, err)
		}
		if got := content(t, path); got != want {
			t.Fatalf("version %d: the file has %d bytes, want %d", n, len(got), len(want))
		}
		for _, name := range names(t, dir) {
			if strings.HasSuffix(name, ".saving") {
				t.Fatalf("%s is left over", name)
			}
		}
	}
	if full == 0 || saved == 0 {
		t.Fatalf("%d saves found the disk full, %d did not", full, saved)
	}
	t.Logf("%d saves, %d found the disk full", saved, full)
	// The journal likewise.
	note(t, d, "kept")
	d.Note("Glaze bench", func() ([]byte, error) { return bytes.Repeat([]byte("y"), 80_000), nil })
	if err := d.Flush(); !errors.Is(err, store.ErrFull) {
		t.Errorf("the journal: %v", err)
	}
	data, err := os.ReadFile(filepath.Join(dir, "state", "full.journal"))
	if err != nil {
		t.Fatal(err)
	}
	if _, body, err := store.DecodeJournal(data); err != nil || string(body) != "kept" {
		t.Errorf("the journal holds %.20q, %v", body, err)
	}
	note(t, d, "small again")
}

func TestARealDiskThatTurnsReadOnly(t *testing.T) {
	dir := mounted(t, "64k")
	path := filepath.Join(dir, "bench.yaml")
	if err := os.WriteFile(path, []byte(older), 0o644); err != nil {
		t.Fatal(err)
	}
	d, _, err := store.Open(desk(filepath.Join(dir, "state"), me("read-only")), path)
	if err != nil {
		t.Fatal(err)
	}
	if err := syscall.Mount("tmpfs", dir, "tmpfs", syscall.MS_REMOUNT|syscall.MS_RDONLY, ""); err != nil {
		t.Skipf("no disk can be remounted here: %v", err)
	}
	_, err = d.Save([]byte(newer))
	if err == nil || !strings.Contains(err.Error(), "may not write in its folder") || content(t, path) != older {
		t.Errorf("told %v; the file holds %q", err, content(t, path))
	}
	second, data, err := store.Open(desk(filepath.Join(dir, "state"), me("looking")), path)
	if err == nil || second == nil || string(data) != older {
		t.Errorf("looking at it: %v", err)
	}
	if err := syscall.Mount("tmpfs", dir, "tmpfs", syscall.MS_REMOUNT, ""); err != nil {
		t.Fatal(err)
	}
	if _, err := d.Save([]byte(newer)); err != nil || content(t, path) != newer {
		t.Errorf("after it turned back: %v", err)
	}
	if err := errors.Join(d.Close(), second.Close()); err != nil {
		t.Error(err)
	}
}

const nobodyEnv = "FRONTLAY_NOBODY_CHILD"

// TestNobodyChild is no test but what TestAFolderThatMayNotBeWritten runs
// without the rights of an administrator.
func TestNobodyChild(t *testing.T) {
	path := os.Getenv(nobodyEnv)
	if path == "" {
		t.Skip("only run by TestAFolderThatMayNotBeWritten")
	}
	data, stamp, err := store.Read(store.OS{}, path, 1000)
	if err != nil || string(data) != older {
		t.Fatalf("reading: %q, %v", data, err)
	}
	if _, err := store.Save(store.OS{}, path, []byte(newer), stamp); err == nil || !strings.Contains(err.Error(), "was not saved: you may not write in its folder") {
		t.Errorf("saving: %v", err)
	}
	mine := filepath.Join(filepath.Dir(path), "mine.yaml")
	_, stamp, err = store.Read(store.OS{}, mine, 1000)
	if err != nil {
		t.Fatal(err)
	}
	if _, err := store.Save(store.OS{}, mine, []byte(newer), stamp); err == nil || !strings.Contains(err.Error(), "read-only") {
		t.Errorf("saving over a file of another's: %v", err)
	}
	if _, err := store.Acquire(store.OS{}, path, me("nobody")); err == nil || !strings.Contains(err.Error(), "folder of") {
		t.Errorf("locking: %v", err)
	}
	if _, _, err := store.Read(store.OS{}, filepath.Join(filepath.Dir(path), "secret.yaml"), 1000); err == nil || !strings.Contains(err.Error(), "may not be read") {
		t.Errorf("reading what may not be read: %v", err)
	}
}

func TestAFolderThatMayNotBeWritten(t *testing.T) {
	folder, err := os.MkdirTemp("", "frontlay")
	if err != nil {
		t.Fatal(err)
	}
	defer os.RemoveAll(folder)
	path, program := filepath.Join(folder, "bench.yaml"), filepath.Join(folder, "program")
	secret, mine := filepath.Join(folder, "secret.yaml"), filepath.Join(folder, "mine.yaml")
	if err := errors.Join(copyProgram(program), os.WriteFile(path, []byte(older), 0o666), os.WriteFile(secret, nil, 0o600), os.WriteFile(mine, nil, 0o644),
		os.Chmod(path, 0o666), os.Chmod(secret, 0), os.Chmod(mine, 0o444), os.Chmod(folder, 0o555)); err != nil {
		t.Fatal(err)
	}
	cmd := exec.Command(program, "-test.run=^TestNobodyChild$", "-test.v")
	cmd.Dir = "/"
	cmd.Env = append(os.Environ(), nobodyEnv+"="+path)
	if os.Getuid() == 0 {
		cmd.SysProcAttr = &syscall.SysProcAttr{Credential: &syscall.Credential{Uid: 65534, Gid: 65534}}
	}
	out, err := cmd.CombinedOutput()
	if err != nil || !bytes.Contains(out, []byte("--- PASS: TestNobodyChild")) {
		t.Errorf("%v\n%s", err, out)
	}
	if err := os.Chmod(folder, 0o755); err != nil {
		t.Error(err)
	}
	if content(t, path) != older || len(names(t, folder)) != 4 {
		t.Errorf("the file holds %q, the folder %v", content(t, path), names(t, folder))
	}
}

func copyProgram(to string) error {
	in, err := os.Open(os.Args[0])
	if err != nil {
		return err
	}
	defer in.Close()
	out, err := os.OpenFile(to, os.O_WRONLY|os.O_CREATE, 0o755)
	if err != nil {
		return err
	}
	_, err = io.Copy(out, in)
	return errors.Join(err, out.Close(), os.Chmod(to, 0o755))
}
