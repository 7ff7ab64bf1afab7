package record_test

import (
	"bytes"
	"io/fs"
	"log/slog"
	"os"
	"path/filepath"
	"strings"
	"syscall"
	"testing"
	"time"

	"frontlay/model/store"
	"frontlay/model/store/record"
)

var start = time.Date(2024, 5, 4, 3, 2, 1, 0, time.UTC)

func fixed() time.Time { return start }

func me(session string) store.Owner { return store.ThisProcess(session, start) }

func content(t *testing.T, path string) string {
	t.Helper()
	data, err := os.ReadFile(path)
	if err != nil {
		t.Fatal(err)
	}
	return string(data)
}

func names(t *testing.T, folder string) []string {
	t.Helper()
	entries, err := os.ReadDir(folder)
	if err != nil {
		t.Fatal(err)
	}
	var list []string
	for _, e := range entries {
		list = append(list, e.Name())
	}
	return list
}

func TestTheLogCanBeSent(t *testing.T) {
	dir := filepath.Join(t.TempDir(), "state")
	var also bytes.Buffer
	l := record.NewLog(store.OS{}, dir, record.Scrubber{Home: "/home/ada", User: "ada"}, fixed, &also)
	log := l.Logger(slog.LevelInfo)
	log.Debug("not asked for")
	log.With("window", 2).WithGroup("file").Info("saved", "path", "/home/ada/Smith kitchen/bench.yaml", "bytes", 2048)
	log.Warn("two\nlines by ada")
	if err := l.Close(); err != nil {
		t.Fatal(err)
	}
	want := "2024-05-04T03:02:01Z INFO saved window=\"2\" file.path=\"<file>.yaml\" file.bytes=\"2048\"\n" +
		"2024-05-04T03:02:01Z WARN two\\nlines by user\n"
	if got := content(t, record.LogName(dir)); got != want || also.String() != want {
		t.Errorf("the log holds\n%s\nand standard error\n%s\nwant\n%s", got, also.String(), want)
	}
}

func TestTheLogStaysSmall(t *testing.T) {
	dir := t.TempDir()
	l := record.NewLog(store.OS{}, dir, record.Scrubber{}, fixed, nil)
	log := l.Logger(slog.LevelInfo)
	line := strings.Repeat("x", 1000)
	for range 2000 {
		log.Info(line)
	}
	if err := l.Close(); err != nil {
		t.Fatal(err)
	}
	for _, name := range []string{record.LogName(dir), record.LogName(dir) + ".before"} {
		if size := len(content(t, name)); size == 0 || size > 512<<10 {
			t.Errorf("%s has %d bytes", filepath.Base(name), size)
		}
	}
	if list := names(t, dir); len(list) != 2 {
		t.Errorf("the folder holds %v", list)
	}
}

func TestALogThatCantBeWrittenStopsNobody(t *testing.T) {
	for _, sys := range []store.FS{closed{}, full{}} {
		l := record.NewLog(sys, t.TempDir(), record.Scrubber{}, fixed, nil)
		l.Logger(slog.LevelInfo).Info("nobody hears this")
		if err := l.Close(); err != nil {
			t.Errorf("%T: %v", sys, err)
		}
	}
}

// closed is a disk on which no file can be opened, full one on which none grows.
type (
	closed   struct{ store.OS }
	full     struct{ store.OS }
	fullFile struct{ store.File }
)

func (closed) OpenFile(string, int, fs.FileMode) (store.File, error) { return nil, syscall.EROFS }

func (f full) OpenFile(name string, flag int, perm fs.FileMode) (store.File, error) {
	file, err := f.OS.OpenFile(name, flag, perm)
	return fullFile{file}, err
}

func (fullFile) Write([]byte) (int, error) { return 0, syscall.ENOSPC }
