package ui

import (
	"context"
	"os"
	"path/filepath"
	"strings"
	"testing"
	"time"

	"frontlay/assets"
	"frontlay/layout"
	"frontlay/model"
	"frontlay/model/edit"
	"frontlay/model/message"
	"frontlay/model/pack"
	"frontlay/model/store"
	"frontlay/model/yamlfile"
)

// A job that is packed in the window as it stands there, saved or not, opens again by its
// .zip; a second time the window asks, and takes nothing away.
func TestPackingAndOpeningInTheWindow(t *testing.T) {
	w, path := benchWindow(t)
	w.options.Keeper.Sheets = func(folder string, allowed func(string) bool) yamlfile.SheetSource {
		return store.Sheets{FS: store.OS{}, Samples: assets.Sheet, Project: folder, Limit: yamlfile.MaxBytes, Allowed: allowed}.Find
	}
	w.options.Pack = func(_ context.Context, path string, files []pack.File, r layout.Result, _ message.Language, progress func(done, of int)) error {
		progress(1, 1)
		pack.Names(files)
		data, err := pack.Zip(files, time.Unix(0, 0))
		if err == nil {
			err = os.WriteFile(path, data, 0o600)
		}
		return err
	}
	w.Do(edit.Set{At: model.Whole, Key: "title", Value: "Packed here"})
	w.do("pack")
	w.answerWith(t, "Cancel") // what it does in the background would go on beside the test
	zipped := strings.TrimSuffix(path, ".yaml") + ".zip"
	within10s(t, packInto(w, zipped))
	w.closeOverlays()
	w.session.MarkSaved()
	folder := pack.Folder(zipped)
	w.files.Open(zipped)
	first := filepath.Join(folder, "bench.yaml")
	if w.files.Work.Path() != first || w.session.Project().Title != "Packed here" {
		t.Fatalf("the window has %s, %q", w.files.Work.Path(), w.session.Project().Title)
	}
	if err := os.WriteFile(filepath.Join(folder, "notes.txt"), []byte("mine"), 0o600); err != nil {
		t.Fatal(err)
	}
	w.files.Open(zipped)
	w.answerWith(t, "Unpack into bench-2")
	if got := w.files.Work.Path(); got != filepath.Join(folder+"-2", "bench.yaml") {
		t.Errorf("the window has %s", got)
	}
	w.files.Open(zipped)
	w.answerWith(t, "Open what is there")
	if got := w.files.Work.Path(); got != first || content(t, filepath.Join(folder, "notes.txt")) != "mine" {
		t.Errorf("the window has %s", got)
	}
}
