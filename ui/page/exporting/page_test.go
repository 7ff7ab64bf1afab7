package exporting

import (
	"bytes"
	"context"
	"image/png"
	"os"
	"path/filepath"
	"strings"
	"testing"
	"time"

	"frontlay/layout/export"
	"frontlay/ui/page/pagetest"
)

// The page names every file of the formats that are ticked, and writes those.
func TestFilesAreNamedAndWritten(t *testing.T) {
	h := pagetest.New(t)
	h.Path = filepath.Join(t.TempDir(), "bench.yaml")
	var into string
	var names []string
	write := func(_ context.Context, folder string, files []export.File, _ func(done, of int)) error {
		into, names = folder, nil
		for _, f := range files {
			names = append(names, f.Name)
		}
		return nil
	}
	p := New(h, write, nil)
	h.Win.SetContent(p.Object)
	for _, k := range export.Kinds() {
		p.boxes[k].SetChecked(k == export.DXF || k == export.JSON)
	}
	folder := filepath.Join(t.TempDir(), "machine")
	p.folder.SetText(folder)
	shown := pagetest.Texts(p.Object)
	select {
	case <-p.writeFiles():
	case <-time.After(10 * time.Second):
		t.Fatal("nothing is written")
	}
	if into != folder || len(names) < 10 {
		t.Fatalf("%d files are written into %q", len(names), into)
	}
	for _, n := range names {
		if ext := filepath.Ext(n); ext != ".dxf" && ext != ".json" {
			t.Errorf("%s is written", n)
		}
		if !strings.Contains(shown, n) {
			t.Errorf("the page does not name %s", n)
		}
	}
	again := New(h, write, nil)
	if again.folder.Text != folder || again.boxes[export.SVG].Checked || !again.boxes[export.JSON].Checked {
		t.Errorf("the next time the page begins with %q, %v", again.folder.Text, again.ticked())
	}
}

// What would be replaced is told before; nothing ticked or no folder named can't be
// written.
func TestWhatIsThereAlreadyIsTold(t *testing.T) {
	h := pagetest.New(t)
	p := New(h, func(context.Context, string, []export.File, func(done, of int)) error { return nil }, nil)
	folder := t.TempDir()
	for _, n := range []string{"elevation.dxf", "my-own.txt"} {
		if err := os.WriteFile(filepath.Join(folder, n), nil, 0o600); err != nil {
			t.Fatal(err)
		}
	}
	p.folder.SetText(folder)
	if !strings.Contains(p.outcome.Told.Text, "replaced: 1.") {
		t.Errorf("the page says %q", p.outcome.Told.Text)
	}
	p.folder.SetText(" ")
	if !p.write.Disabled() {
		t.Error("files can be written without a folder")
	}
	p.folder.SetText(folder)
	for _, b := range p.boxes {
		b.SetChecked(false)
	}
	if !p.write.Disabled() {
		t.Error("nothing is ticked, and yet something can be written")
	}
}

// The picture has the pixels that are typed, now and the next time; what is no count
// of them is told, and nothing is written.
func TestPictureHasTheTypedPixels(t *testing.T) {
	h := pagetest.New(t)
	p := New(h, func(context.Context, string, []export.File, func(done, of int)) error { return nil }, func() string { return "2026-11-28 12:00" })
	for k, b := range p.boxes {
		b.SetChecked(k == export.Picture)
	}
	p.folder.SetText(t.TempDir())
	p.pixels.SetText("640")
	files, err := p.files()
	if err != nil || len(files) != 1 {
		t.Fatalf("%d files, %v", len(files), err)
	}
	c, err := png.DecodeConfig(bytes.NewReader(files[0].Data))
	if err != nil || max(c.Width, c.Height) != 640 {
		t.Errorf("the picture has %d × %d pixels, %v", c.Width, c.Height, err)
	}
	for _, bad := range []string{"many", "10"} {
		p.pixels.SetText(bad)
		if !p.write.Disabled() || !p.wrong.Note.Visible() {
			t.Errorf("%q is taken", bad)
		}
	}
	if again := New(h, nil, nil); again.pixels.Text != "640" {
		t.Errorf("the next time it begins with %q", again.pixels.Text)
	}
}
