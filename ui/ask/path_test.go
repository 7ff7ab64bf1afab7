package ask

import (
	"fmt"
	"io/fs"
	"os"
	"path/filepath"
	"strings"
	"testing"

	"fyne.io/fyne/v2"
	"fyne.io/fyne/v2/container"
	"fyne.io/fyne/v2/test"
	"fyne.io/fyne/v2/widget"

	"frontlay/model/message"
	"frontlay/ui/field"
)

// A path to write can be typed in two parts or whole, from home or relative; what
// is wrong with one is told with what it is about.
func TestPathsToWrite(t *testing.T) {
	dir, home := t.TempDir(), t.TempDir()
	t.Setenv("HOME", home)
	t.Setenv("USERPROFILE", home)
	sub, file := filepath.Join(dir, "sub"), filepath.Join(dir, "file.txt")
	if os.Mkdir(sub, 0o700) != nil || os.Mkdir(filepath.Join(dir, "bench.yaml"), 0o700) != nil || os.WriteFile(file, nil, 0o600) != nil {
		t.Fatal("the test's folders can't be made")
	}
	for _, c := range []struct{ folder, name, want, trouble string }{
		{dir, "top", filepath.Join(dir, "top.yaml"), ""},
		{dir, " top.yaml ", filepath.Join(dir, "top.yaml"), ""},
		{dir, "top.yml", filepath.Join(dir, "top.yml"), ""},
		{dir, "ünter größe", filepath.Join(dir, "ünter größe.yaml"), ""},
		{dir, "sub/top", filepath.Join(sub, "top.yaml"), ""},
		{dir, filepath.Join(sub, "top"), filepath.Join(sub, "top.yaml"), ""},
		{"", filepath.Join(sub, "top"), filepath.Join(sub, "top.yaml"), ""},
		{filepath.Join(dir, "no"), filepath.Join(sub, "top"), filepath.Join(sub, "top.yaml"), ""},
		{dir, "~/top", filepath.Join(home, "top.yaml"), ""},
		{"~", "top", filepath.Join(home, "top.yaml"), ""},
		{" ~/ ", "top", filepath.Join(home, "top.yaml"), ""},
		{dir, "~top", filepath.Join(dir, "~top.yaml"), ""},
		{dir, "sub/../top", filepath.Join(dir, "top.yaml"), ""},
		{dir, "", "", "Write a name"},
		{dir, "..", "", "Write a name"},
		{dir, "~", "", "Write a name"},
		{dir, "sub/", "", "Write a name"},
		{dir, "a\x00b", "", "Write a name"},
		{"", "top", "", "Write the folder"},
		{dir, "bench", "", "is a folder"},
		{filepath.Join(dir, "no"), "top", "", "is not there"},
		{dir, "no/top", "", "is not there"},
		{file, "top", "", "is a file, not a folder"},
	} {
		got, err := pathOf(c.folder, c.name, ".yaml")
		trouble := ""
		if err != nil {
			trouble = err.Error()
		}
		if got != c.want || (trouble == "") != (c.trouble == "") || !strings.Contains(trouble, c.trouble) {
			t.Errorf("%q in %q: %q, %q; want %q, %q", c.name, c.folder, got, trouble, c.want, c.trouble)
		}
	}
}

// Why a folder can't be written into is told in words.
func TestFoldersThatCantBeUsed(t *testing.T) {
	for err, want := range map[error]string{
		fmt.Errorf("stat: %w", fs.ErrPermission): "no permission", fmt.Errorf("stat: %w", fs.ErrNotExist): "is not there",
		fmt.Errorf("the disk is gone"): "the disk is gone",
	} {
		if got := folderTrouble("/shop", err).Error(); !strings.Contains(got, want) || !strings.Contains(got, "/shop") {
			t.Errorf("%v is told as %q", err, got)
		}
	}
	dir := t.TempDir()
	if err := cantWriteInto(dir); err != nil {
		t.Error(err)
	}
	if left, err := os.ReadDir(dir); err != nil || len(left) != 0 {
		t.Errorf("trying leaves %v behind", left)
	}
	if os.Getuid() > 0 {
		if err := os.Chmod(dir, 0o500); err != nil {
			t.Fatal(err)
		}
		if err := cantWriteInto(dir); err == nil || !strings.Contains(err.Error(), "no permission") {
			t.Errorf("a folder that is closed is told as %v", err)
		}
	}
}

// The dialog for saving says where the file goes, and beside it what is wrong,
// while the name is typed.
func TestThePathIsJudgedWhileItIsTyped(t *testing.T) {
	dir := t.TempDir()
	a := asker(t, dir)
	saved := ""
	a.Path("Save as", "bench", ".yaml", func(path string) { saved = path })
	told := func() (text string, bad bool) {
		for _, l := range labelsIn(a.Win.Canvas().Overlays().Top()) {
			if strings.Contains(l.Text, dir) || l.Importance == widget.DangerImportance {
				return l.Text, l.Importance == widget.DangerImportance
			}
		}
		return "", false
	}
	if text, bad := told(); bad || !strings.Contains(text, filepath.Join(dir, "bench.yaml")) {
		t.Errorf("it says %q", text)
	}
	e := a.Win.Canvas().Focused().(interface {
		fyne.Focusable
		SetText(string)
	})
	e.SetText("no/bench")
	if text, bad := told(); !bad || !strings.Contains(text, "is not there") {
		t.Errorf("of a folder that is not there it says %q", text)
	}
	e.TypedKey(&fyne.KeyEvent{Name: fyne.KeyReturn})
	if saved != "" {
		t.Errorf("it was saved to %s", saved)
	}
	e.SetText("top")
	if text, bad := told(); bad || !strings.Contains(text, "top.yaml") {
		t.Errorf("it says %q", text)
	}
	e.TypedKey(&fyne.KeyEvent{Name: fyne.KeyReturn})
	if saved != filepath.Join(dir, "top.yaml") {
		t.Errorf("it was saved to %q", saved)
	}
}

// labelsIn are the labels in an object that can be seen.
func labelsIn(o fyne.CanvasObject) (all []*field.Label) {
	switch v := o.(type) {
	case *field.Label:
		all = append(all, v)
	case *widget.PopUp:
		all = labelsIn(v.Content)
	case *fyne.Container:
		for _, c := range v.Objects {
			all = append(all, labelsIn(c)...)
		}
	}
	return all
}

// asker asks over an empty window.
func asker(t *testing.T, folder string) *Asker {
	t.Helper()
	test.NewTempApp(t)
	w := test.NewTempWindow(t, container.NewWithoutLayout())
	w.Resize(fyne.NewSize(1240, 690))
	return &Asker{Win: w, Say: func() message.Language { return message.Language{} }, Begin: func() string { return folder }, Own: func() string { return "" }}
}

// press gives a key to what has the focus, or to the window.
func press(a *Asker, key fyne.KeyName) {
	e := &fyne.KeyEvent{Name: key}
	if f := a.Win.Canvas().Focused(); f != nil {
		f.TypedKey(e)
		return
	}
	a.Win.Canvas().OnTypedKey()(e)
}

// Esc closes the folders that lie over a question about a path, and not the
// question below them.
func TestEscClosesWhatIsOnTop(t *testing.T) {
	a := asker(t, t.TempDir())
	a.Path("Save as", "bench", ".yaml", func(string) {})
	question := a.Win.Canvas().Overlays().Top()
	for _, o := range test.LaidOutObjects(question) {
		if b, ok := o.(*field.Button); ok && b.Text == "Choose a folder…" {
			test.Tap(b)
		}
	}
	if a.Win.Canvas().Overlays().Top() == question {
		t.Fatal("no folders are shown")
	}
	press(a, fyne.KeyEscape)
	if a.Win.Canvas().Overlays().Top() != question || !question.Visible() {
		t.Fatal("the question is gone, or the folders are not")
	}
	press(a, fyne.KeyEscape)
	if a.Win.Canvas().Overlays().Top() != nil {
		t.Error("the question is not closed")
	}
}

// A dialog that is closed twice leaves the keys to the one that is open now.
func TestADialogClosedTwice(t *testing.T) {
	a := asker(t, "")
	first := a.Notice("First", "Close", field.NewLabel("text"), nil, nil)
	first.Hide()
	a.Complain(fs.ErrPermission)
	first.Hide()
	a.Win.Canvas().Unfocus()
	press(a, fyne.KeyEscape)
	if a.Win.Canvas().Overlays().Top() != nil {
		t.Error("Esc does not close the one that is open")
	}
}

// Enter does not replace a file: the focus is on going back.
func TestEnterReplacesNothing(t *testing.T) {
	a := asker(t, "")
	path := filepath.Join(t.TempDir(), "there.pdf")
	if err := os.WriteFile(path, []byte("mine"), 0o600); err != nil {
		t.Fatal(err)
	}
	taken := false
	a.Path("Write PDF", path[:len(path)-len(".pdf")], ".pdf", func(string) { taken = true })
	press(a, fyne.KeyReturn)
	if a.Win.Canvas().Overlays().Top() == nil {
		t.Fatal("nothing asks")
	}
	press(a, fyne.KeyReturn)
	if taken || a.Win.Canvas().Overlays().Top() != nil {
		t.Errorf("the file is replaced: %v", taken)
	}
}
