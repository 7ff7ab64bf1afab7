package main

import (
	"archive/zip"
	"bytes"
	"io"
	"os"
	"os/exec"
	"path/filepath"
	"strings"
	"testing"

	"frontlay/assets"
)

// packedJob is a project whose sheets are of every kind: a sample, one beside it, one of
// the user's own with the same name but for its case, and one that stands in the file.
func packedJob(t *testing.T) (path, zipped string) {
	t.Helper()
	home := t.TempDir()
	t.Setenv("XDG_CONFIG_HOME", home)
	sample, _ := assets.Sheet("sample-b")
	folder := t.TempDir()
	for name, text := range map[string]string{
		filepath.Join(folder, "Küche con.yaml"):               strings.Replace(string(assets.Demo()), "{main: sample-a, boxes: sample-b}", "{main: sample-a, boxes: my sheets/Aux.yaml, more: aux}", 1),
		filepath.Join(folder, "my sheets", "Aux.yaml"):        string(sample),
		filepath.Join(home, "frontlay", "sheets", "aux.yaml"): string(sample),
	} {
		if err := os.MkdirAll(filepath.Dir(name), 0o777); err != nil {
			t.Fatal(err)
		}
		if err := os.WriteFile(name, []byte(text), 0o666); err != nil {
			t.Fatal(err)
		}
	}
	path = filepath.Join(folder, "Küche con.yaml")
	if code, out, errs := do(t, "pack", path); code != exitFine || !strings.Contains(out, "files.") {
		t.Fatalf("exit %d, said %q and %q", code, out, errs)
	}
	return path, filepath.Join(folder, "Küche con.zip")
}

func entries(t *testing.T, path string) map[string]string {
	t.Helper()
	z, err := zip.OpenReader(path)
	if err != nil {
		t.Fatal(err)
	}
	defer z.Close()
	all := map[string]string{}
	for _, f := range z.File {
		r, err := f.Open()
		if err != nil {
			t.Fatal(err)
		}
		data, err := io.ReadAll(r)
		if err != nil {
			t.Fatal(err)
		}
		all[f.Name] = string(data)
	}
	return all
}

// A packed job opens where nothing of its author's is: with the same stamp, the same
// findings, and the bytes that print and export make of it.
func TestAPackedJobOpensAnywhere(t *testing.T) {
	path, zipped := packedJob(t)
	_, before, _ := do(t, "check", "--json", path)
	had := entries(t, zipped)
	pdf, machine := filepath.Join(t.TempDir(), "Kueche-con.pdf"), t.TempDir()
	do(t, "print", path, "-o", pdf)
	do(t, "export", path, "-o", machine)
	t.Setenv("XDG_CONFIG_HOME", t.TempDir())
	elsewhere := filepath.Join(t.TempDir(), "job")
	if code, _, errs := do(t, zipped, "--into", elsewhere); code != exitFine {
		t.Fatalf("unpacking: exit %d, %s", code, errs)
	}
	_, after, _ := do(t, "check", "--json", filepath.Join(elsewhere, "Kueche-con.yaml"))
	was, is := told(t, before), told(t, after)
	if was.Stamp == "" || was.Stamp != is.Stamp || len(was.Findings) != len(is.Findings) {
		t.Errorf("stamp %v and %d findings became %v and %d", was.Stamp, len(was.Findings), is.Stamp, len(is.Findings))
	}
	made := map[string]string{"Kueche-con.pdf": pdf, "Kueche-con-templates.pdf": strings.Replace(pdf, ".pdf", "-templates.pdf", 1)}
	files, err := os.ReadDir(machine)
	if err != nil {
		t.Fatal(err)
	}
	for _, f := range files {
		made["machine/"+f.Name()] = filepath.Join(machine, f.Name())
	}
	for name, from := range made {
		want, err := os.ReadFile(from)
		got, err2 := os.ReadFile(filepath.Join(elsewhere, filepath.FromSlash(name)))
		if err != nil || err2 != nil || !bytes.Equal(got, want) || had[name] != string(got) {
			t.Errorf("%s is not what is made without packing (%v, %v)", name, err, err2)
		}
	}
	for _, name := range []string{"sheets/sample-a.yaml", "sheets/a-Aux.yaml", "sheets/a-aux-2.yaml"} {
		if had[name] == "" {
			t.Errorf("%s is not in it", name)
		}
	}
	if want := len(made) + 4; len(had) != want {
		t.Errorf("%d files are in it; want %d", len(had), want)
	}
	if !strings.Contains(had["Kueche-con.yaml"], "# An invented job") {
		t.Error("the project has lost its comments")
	}
}

// The same job at the same time gives the same bytes.
func TestPackingIsReproducible(t *testing.T) {
	path, zipped := packedJob(t)
	first, err := os.ReadFile(zipped)
	if err != nil {
		t.Fatal(err)
	}
	do(t, "pack", path)
	if again, err := os.ReadFile(zipped); err != nil || !bytes.Equal(first, again) {
		t.Errorf("packed again it differs: %v", err)
	}
}

func TestOthersReadAPackedJob(t *testing.T) {
	needTools(t, "python3")
	_, zipped := packedJob(t)
	out, err := exec.Command("python3", "-m", "zipfile", "-t", zipped).CombinedOutput()
	if err != nil || !strings.Contains(string(out), "Done testing") || strings.Contains(string(out), "corrupted") {
		t.Errorf("%v: %s", err, out)
	}
}

// Neither packing nor unpacking replaces what is somebody's.
func TestPackingReplacesNothing(t *testing.T) {
	path, zipped := packedJob(t)
	var other bytes.Buffer
	if err := zip.NewWriter(&other).Close(); err != nil {
		t.Fatal(err)
	}
	for name, text := range map[string]string{"photos.zip": other.String(), "text.zip": "mine", "bench.zip": string(assets.Demo())} {
		out := filepath.Join(t.TempDir(), name)
		if err := os.WriteFile(out, []byte(text), 0o666); err != nil {
			t.Fatal(err)
		}
		code, _, errs := do(t, "pack", path, "-o", out)
		if got, _ := os.ReadFile(out); code != exitFailed || string(got) != text || !strings.Contains(errs, "left as it is") {
			t.Errorf("%s: exit %d, %q", name, code, errs)
		}
	}
	into := t.TempDir()
	if code, _, errs := do(t, zipped, "--into", into); code != exitFailed || !strings.Contains(errs, "--into") {
		t.Errorf("into a folder that is there: exit %d, %q", code, errs)
	}
	if left, _ := os.ReadDir(into); len(left) > 0 {
		t.Errorf("it wrote %v", left)
	}
}
