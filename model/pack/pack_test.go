package pack_test

import (
	"archive/zip"
	"bytes"
	"encoding/binary"
	"errors"
	"io/fs"
	"os"
	"path/filepath"
	"strings"
	"testing"
	"time"

	"pgregory.net/rapid"

	"frontlay/model/pack"
	"frontlay/model/store"
)

const project = "frontlay: 2\ntitle: Bench\n"

// entry is a file of an archive that somebody else made.
type entry struct {
	name, text string
	mode       fs.FileMode
}

func archive(t *testing.T, entries ...entry) string {
	t.Helper()
	var b bytes.Buffer
	z := zip.NewWriter(&b)
	for _, e := range entries {
		h := &zip.FileHeader{Name: e.name, Method: zip.Deflate}
		if e.mode != 0 {
			h.SetMode(e.mode)
		}
		w, err := z.CreateHeader(h)
		if err == nil && !strings.HasSuffix(e.name, "/") {
			_, err = w.Write([]byte(e.text))
		}
		if err != nil {
			t.Fatal(err)
		}
	}
	if err := z.Close(); err != nil {
		t.Fatal(err)
	}
	return kept(t, b.Bytes())
}

func kept(t *testing.T, data []byte) string {
	t.Helper()
	path := filepath.Join(t.TempDir(), "job.zip")
	if err := os.WriteFile(path, data, 0o666); err != nil {
		t.Fatal(err)
	}
	return path
}

// A hostile archive is refused, and nothing of it is left anywhere.
func TestHostileArchivesAreRefused(t *testing.T) {
	good := entry{name: "bench.yaml", text: project}
	many := []entry{good}
	for range 5001 {
		many = append(many, entry{name: "a"})
	}
	for name, c := range map[string]struct {
		entries []entry
		says    string
	}{
		"up":                 {[]entry{good, {name: "../out.txt"}}, "is not safe"},
		"up in the midst":    {[]entry{good, {name: "a/../../out.txt"}}, "is not safe"},
		"up by backslashes":  {[]entry{good, {name: `..\out.txt`}}, "is not safe"},
		"from the root":      {[]entry{good, {name: "/tmp/out.txt"}}, "is not safe"},
		"a drive":            {[]entry{good, {name: "C:/out.txt"}}, "is not safe"},
		"a stream":           {[]entry{good, {name: "bench.yaml:hidden"}}, "is not safe"},
		"a device":           {[]entry{good, {name: "aux.txt"}}, "is not safe"},
		"a device's folder":  {[]entry{good, {name: "com1/x.txt"}}, "is not safe"},
		"a point at the end": {[]entry{good, {name: "bench.yaml."}}, "is not safe"},
		"a line feed":        {[]entry{good, {name: "a\nb"}}, "is not safe"},
		"no name":            {[]entry{good, {name: "a//b"}}, "is not safe"},
		"a link":             {[]entry{good, {name: "sheet.yaml", text: "/etc/passwd", mode: fs.ModeSymlink | 0o777}}, "a link or a device"},
		"a folder as a link": {[]entry{{name: "sheets", text: "/etc", mode: fs.ModeSymlink | 0o777}, {name: "sheets/x"}, good}, "a link or a device"},
		"a pipe":             {[]entry{good, {name: "pipe", mode: fs.ModeNamedPipe | 0o666}}, "a link or a device"},
		"twice":              {[]entry{good, {name: "a.txt"}, {name: "A.TXT"}}, "twice"},
		"too many":           {many, "more than 5000"},
		"no project":         {[]entry{{name: "a.yaml", text: "title: x"}}, "no project"},
		"two projects":       {[]entry{good, {name: "b.yaml", text: project}}, "several projects"},
		"a file as a folder": {[]entry{good, {name: "a"}, {name: "a/b"}}, "is not opened"},
	} {
		t.Run(name, func(t *testing.T) {
			path := archive(t, c.entries...)
			_, err := pack.Unpack(store.OS{}, path, pack.Folder(path))
			if err == nil || !strings.Contains(err.Error(), c.says) {
				t.Errorf("it said %v; want %q", err, c.says)
			}
			left, _ := filepath.Glob(filepath.Join(filepath.Dir(path), "*"))
			if len(left) != 1 {
				t.Errorf("it left %v", left)
			}
		})
	}
}

// What an archive says of its sizes is not believed: a file that grows beyond it is
// damaged; and what is damaged leaves nothing.
func TestSizesAreNotBelieved(t *testing.T) {
	path := archive(t, entry{name: "bench.yaml", text: project}, entry{name: "big.txt", text: strings.Repeat("0", 1<<20)})
	data, err := os.ReadFile(path)
	if err != nil {
		t.Fatal(err)
	}
	at := bytes.LastIndex(data, []byte("PK\x01\x02")) // the entry of big.txt in the directory
	for name, size := range map[string]uint32{"small": 10, "huge": 3 << 30} {
		wrong := bytes.Clone(data)
		binary.LittleEndian.PutUint32(wrong[at+24:], size)
		path := kept(t, wrong)
		if _, err := pack.Unpack(store.OS{}, path, pack.Folder(path)); err == nil {
			t.Errorf("%s: it was opened", name)
		}
		if _, err := os.Lstat(pack.Folder(path)); !errors.Is(err, fs.ErrNotExist) {
			t.Errorf("%s: its folder is there: %v", name, err)
		}
	}
	for cut := range 40 {
		path := kept(t, data[:len(data)*cut/40])
		if _, err := pack.Unpack(store.OS{}, path, pack.Folder(path)); err == nil {
			t.Errorf("cut at %d/40 it was opened", cut)
		}
	}
}

// Nothing is replaced; what systems add for themselves is left out; a job that somebody
// packed again in a folder of its own opens.
func TestUnpackingReplacesNothing(t *testing.T) {
	path := archive(t, entry{name: "bench/"}, entry{name: "bench/bench.yaml", text: project}, entry{name: "bench/.DS_Store"},
		entry{name: "__MACOSX/bench/._bench.yaml", text: project}, entry{name: "bench/sheets/Griff für Anna.yaml", text: "frontlay_hardware: 1"})
	folder := pack.Folder(path)
	got, err := pack.Unpack(store.OS{}, path, folder)
	if err != nil || got != filepath.Join(folder, "bench", "bench.yaml") {
		t.Fatalf("%q, %v", got, err)
	}
	var names []string
	_ = filepath.WalkDir(folder, func(p string, d fs.DirEntry, err error) error {
		if err == nil && !d.IsDir() {
			names = append(names, filepath.Base(p))
		}
		return err
	})
	if strings.Join(names, ",") != "bench.yaml,Griff für Anna.yaml" {
		t.Errorf("it took out %q", names)
	}
	if err := os.WriteFile(got, []byte("mine"), 0o666); err != nil {
		t.Fatal(err)
	}
	var there *pack.There
	if _, err := pack.Unpack(store.OS{}, path, folder); !errors.As(err, &there) || there.Project != got {
		t.Errorf("a second time it said %v", err)
	}
	if data, _ := os.ReadFile(got); string(data) != "mine" {
		t.Errorf("it wrote over the project: %s", data)
	}
	if free := pack.Free(store.OS{}, folder); free != folder+"-2" {
		t.Errorf("free is %s", free)
	}
}

func TestSafeNames(t *testing.T) {
	for name, want := range map[string]string{
		"Glaze bench.yaml": "Glaze-bench.yaml", "Küche/Größe.yaml": "Kueche-Groesse.yaml", "con.yaml": "a-con.yaml", "LPT1": "a-LPT1", "aux.tar.gz": "a-aux.tar.gz",
		"..": "file", "": "file", ".hidden": "hidden", "end. ": "end", "窓": "file", "a\x00b": "a-b", strings.Repeat("x", 300) + ".yaml": strings.Repeat("x", 75) + ".yaml",
	} {
		if got := pack.SafeName(name); got != want {
			t.Errorf("%q becomes %q; want %q", name, got, want)
		}
	}
}

// Whatever files are called, what is packed can be taken out, each under its own name.
func TestEveryNameIsPackedSafely(t *testing.T) {
	dir := t.TempDir()
	n := 0
	rapid.Check(t, func(r *rapid.T) {
		files := []pack.File{{Name: "bench.yaml", Data: []byte(project)}}
		for _, name := range rapid.SliceOfN(rapid.OneOf(rapid.String(), rapid.SampledFrom([]string{"A", "a", "Con.PDF", "con.pdf", "a/b", "A/B", "x.", ".yaml", "bench.yaml"})), 0, 6).Draw(r, "names") {
			files = append(files, pack.File{Name: name, Data: []byte(name)})
		}
		pack.Names(files)
		data, err := pack.Zip(files, time.Unix(1_700_000_000, 0))
		if err != nil {
			r.Fatal(err)
		}
		n++
		path := filepath.Join(dir, "job.zip")
		if err := os.WriteFile(path, data, 0o666); err != nil {
			r.Fatal(err)
		}
		folder := filepath.Join(dir, pack.SafeName(time.Duration(n).String()))
		if _, err := pack.Unpack(store.OS{}, path, folder); err != nil {
			r.Fatalf("%v: %v", files, err)
		}
		for _, f := range files {
			if got, err := os.ReadFile(filepath.Join(folder, filepath.FromSlash(f.Name))); err != nil || !bytes.Equal(got, f.Data) {
				r.Fatalf("%s: %q, %v", f.Name, got, err)
			}
		}
	})
}
