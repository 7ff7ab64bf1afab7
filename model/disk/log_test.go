package disk_test

import (
	"bytes"
	"log/slog"
	"path/filepath"
	"strings"
	"syscall"
	"testing"
	"time"

	"frontlay/model/disk"
)

func fixed() time.Time { return start }

func TestTheLogCanBeSent(t *testing.T) {
	dir := filepath.Join(t.TempDir(), "state")
	var also bytes.Buffer
	l := disk.NewLog(disk.OS{}, dir, disk.Scrubber{Home: "/home/ada", User: "ada"}, fixed, &also)
	log := l.Logger(slog.LevelInfo)
	log.Debug("not asked for")
	log.With("window", 2).WithGroup("file").Info("saved", "path", "/home/ada/Smith kitchen/bench.yaml", "bytes", 2048)
	log.Warn("two\nlines by ada")
	if err := l.Close(); err != nil {
		t.Fatal(err)
	}
	want := "2024-05-04T03:02:01Z INFO saved window=\"2\" file.path=\"<file>.yaml\" file.bytes=\"2048\"\n" +
		"2024-05-04T03:02:01Z WARN two\\nlines by user\n"
	if got := content(t, disk.LogName(dir)); got != want || also.String() != want {
		t.Errorf("the log holds\n%s\nand standard error\n%s\nwant\n%s", got, also.String(), want)
	}
}

func TestTheLogStaysSmall(t *testing.T) {
	dir := t.TempDir()
	l := disk.NewLog(disk.OS{}, dir, disk.Scrubber{}, fixed, nil)
	log := l.Logger(slog.LevelInfo)
	line := strings.Repeat("x", 1000)
	for range 2000 {
		log.Info(line)
	}
	if err := l.Close(); err != nil {
		t.Fatal(err)
	}
	for _, name := range []string{disk.LogName(dir), disk.LogName(dir) + ".before"} {
		if size := len(content(t, name)); size == 0 || size > 512<<10 {
			t.Errorf("%s has %d bytes", filepath.Base(name), size)
		}
	}
	if list := names(t, dir); len(list) != 2 {
		t.Errorf("the folder holds %v", list)
	}
}

func TestALogThatCantBeWrittenStopsNobody(t *testing.T) {
	sys := sound()
	sys.fail = func(_ int, step string) error { return only(step == "open" || step == "write", syscall.ENOSPC) }
	l := disk.NewLog(sys, t.TempDir(), disk.Scrubber{}, fixed, nil)
	l.Logger(slog.LevelInfo).Info("nobody hears this")
	if err := l.Close(); err != nil {
		t.Error(err)
	}
}
