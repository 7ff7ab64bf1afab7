package main

import (
	"bytes"
	"encoding/binary"
	"image"
	"image/color"
	"image/png"
	"os"
	"os/exec"
	"path/filepath"
	"regexp"
	"runtime"
	"slices"
	"strings"
	"testing"
	"time"

	"frontlay/assets"
	"frontlay/layout/check"
	"frontlay/model/yamlfile"
)

// needTools skips a test whose programs are missing; make test has them all.
func needTools(t *testing.T, tools ...string) {
	t.Helper()
	for _, tool := range tools {
		if _, err := exec.LookPath(tool); err != nil {
			if os.Getenv("FRONTLAY_TOOLS") == "1" {
				t.Fatalf("%s is not installed, and this test needs it", tool)
			}
			t.Skipf("%s is not installed", tool)
		}
	}
}

// ran runs another program and gives all that it says.
func ran(t *testing.T, name string, args ...string) string {
	t.Helper()
	out, err := exec.Command(name, args...).CombinedOutput()
	if err != nil {
		t.Fatalf("%s %v: %v\n%s", name, args, err, out)
	}
	return string(out)
}

// small stands for a built program.
func small() program {
	return program{
		version: "1.2.3", binary: []byte("binary"), man: []byte(".TH\n"), bash: []byte("complete\n"), depends: "libc6 (>= 2.34)",
		repository: map[string][]byte{"README.md": []byte("read\n"), "LICENSE": []byte("MIT\n"), "assets/licences.txt": []byte("## Go\n"), "assets/icon.svg": []byte("<svg/>"), "assets/icon.png": assets.IconPNG()},
	}
}

var noon = source{"0123abcd", time.Date(2026, 1, 2, 12, 0, 0, 0, time.UTC)}

// Packages are the same bytes again, and the programs that people install them with read
// in them what was put there.
func TestPackages(t *testing.T) {
	needTools(t, "dpkg-deb", "tar", "python3")
	exe := filepath.Join(t.TempDir(), "frontlay.exe")
	if err := os.WriteFile(exe, []byte("MZ"), 0o666); err != nil {
		t.Fatal(err)
	}
	var paths []string
	for _, f := range installed(small()) {
		paths = append(paths, f.path)
	}
	slices.Sort(paths)
	for _, one := range []struct {
		name string
		pack func() ([]byte, error)
		list []string // a program that lists what is packed
		line string   // of that list, before the path
		more []string
	}{
		{"a.deb", func() ([]byte, error) { return deb(small(), noon) }, []string{"dpkg-deb", "--contents"}, `\./usr/`, nil},
		{"a.tar.gz", func() ([]byte, error) { return tarball(small(), noon) }, []string{"tar", "-tvzf"}, `frontlay-1\.2\.3/`, []string{"install.sh"}},
		{"a.zip", func() ([]byte, error) { return windowsZip(exe, small(), noon) }, []string{"python3", "-m", "zipfile", "-l"}, `frontlay-1\.2\.3/`, nil},
	} {
		data, err := one.pack()
		again, _ := one.pack()
		if err != nil || !bytes.Equal(data, again) {
			t.Fatalf("%s: %v, or other bytes the second time", one.name, err)
		}
		path := filepath.Join(t.TempDir(), one.name)
		if err := os.WriteFile(path, data, 0o666); err != nil {
			t.Fatal(err)
		}
		list := ran(t, one.list[0], append(one.list[1:], path)...)
		var got []string
		for _, m := range regexp.MustCompile(`(?m)`+one.line+`(\S*[^/\s])(\s|$)`).FindAllStringSubmatch(list, -1) {
			got = append(got, m[1])
		}
		want := slices.Clone(paths)
		if one.name == "a.zip" {
			want = []string{"frontlay.exe", "README.md", "licences.txt"}
		}
		want = append(want, one.more...)
		slices.Sort(want)
		slices.Sort(got)
		if !slices.Equal(got, want) || !strings.Contains(list, "2026-01-02 ") {
			t.Errorf("%s has %v; want %v, all of the commit's time:\n%s", one.name, got, want, list)
		}
		if one.name == "a.deb" {
			for field, want := range map[string]string{"Package": "frontlay", "Version": "1.2.3", "Architecture": runtime.GOARCH, "Depends": "libc6 (>= 2.34)"} {
				if got := strings.TrimSpace(ran(t, "dpkg-deb", "-f", path, field)); got != want {
					t.Errorf("%s: %q; want %q", field, got, want)
				}
			}
			if owner := regexp.MustCompile(`(?m)^-rwxr-xr-x root/root .* \./usr/bin/frontlay$`); !owner.MatchString(list) {
				t.Errorf("the program is not root's, for all to run:\n%s", list)
			}
		}
	}
}

// The tarball's own script installs, and takes away all but what is not the program's.
func TestInstallAndRemove(t *testing.T) {
	needTools(t, "tar", "sh")
	data, err := tarball(small(), noon)
	if err != nil {
		t.Fatal(err)
	}
	dir := t.TempDir()
	if err := os.WriteFile(filepath.Join(dir, "a.tar.gz"), data, 0o666); err != nil {
		t.Fatal(err)
	}
	ran(t, "tar", "-C", dir, "-xzf", filepath.Join(dir, "a.tar.gz"))
	script, to := filepath.Join(dir, "frontlay-1.2.3", "install.sh"), filepath.Join(dir, "a place")
	ran(t, script, to)
	for _, f := range installed(small()) {
		got, err := os.ReadFile(filepath.Join(to, f.path))
		if want := bytes.Replace(f.data, []byte("\nExec=frontlay "), []byte("\nExec=\""+to+"/bin/frontlay\" "), 1); err != nil || !bytes.Equal(got, want) {
			t.Errorf("%s: %v, %q", f.path, err, got)
		}
	}
	other := filepath.Join(to, "share", "applications", "other.desktop")
	if err := os.WriteFile(other, nil, 0o666); err != nil {
		t.Fatal(err)
	}
	ran(t, script, "--remove", to)
	// The index of programs belongs to the other one too.
	if left := ran(t, "find", to, "-type", "f", "-not", "-name", "mimeinfo.cache"); left != other+"\n" {
		t.Errorf("left:\n%s", left)
	}
	if out, err := exec.Command("grep", "-rl", "frontlay", to).Output(); err == nil {
		t.Errorf("the program is still told of in %s", out)
	}
}

// The desktop knows the program: its entry has the keys that the specification asks for,
// and names an icon and a type that are installed with it.
func TestDesktopEntry(t *testing.T) {
	entry := map[string]string{}
	for _, line := range strings.Split(strings.TrimSpace(string(own("frontlay.desktop"))), "\n")[1:] {
		key, value, ok := strings.Cut(line, "=")
		if _, twice := entry[key]; !ok || twice || value == "" {
			t.Errorf("%q", line)
		}
		entry[key] = value
	}
	for key, want := range map[string]string{"Type": "Application", "Name": "frontlay", "Exec": "frontlay %f", "Icon": "frontlay"} {
		if entry[key] != want {
			t.Errorf("%s=%s; want %s", key, entry[key], want)
		}
	}
	if !strings.Contains(string(own("frontlay.xml")), `type="`+strings.TrimSuffix(entry["MimeType"], ";")+`"`) {
		t.Errorf("MimeType=%s is not the type that is installed", entry["MimeType"])
	}
	needTools(t, "desktop-file-validate")
	path := filepath.Join(t.TempDir(), "frontlay.desktop")
	if err := os.WriteFile(path, own("frontlay.desktop"), 0o666); err != nil {
		t.Fatal(err)
	}
	if said := ran(t, "desktop-file-validate", path); said != "" {
		t.Error(said)
	}
}

// A desktop tells projects from other YAML by what is in them, whatever they are called.
func TestTypeOfProjects(t *testing.T) {
	needTools(t, "gio", "update-mime-database")
	home := t.TempDir()
	packages := filepath.Join(home, "mime", "packages")
	if err := os.MkdirAll(packages, 0o777); err != nil {
		t.Fatal(err)
	}
	if err := os.WriteFile(filepath.Join(packages, "frontlay.xml"), own("frontlay.xml"), 0o666); err != nil {
		t.Fatal(err)
	}
	t.Setenv("XDG_DATA_HOME", home)
	ran(t, "update-mime-database", filepath.Join(home, "mime"))
	sheet, _ := assets.Sheet(assets.SheetNames()[0])
	read, err := yamlfile.Read("demo.yaml", assets.Demo(), func(name string) (string, []byte, error) {
		data, _ := assets.Sheet(name)
		return name, data, nil
	}, check.Limits())
	if err != nil {
		t.Fatal(err)
	}
	changed := *read.Project
	changed.Title += " again"
	saved, err := read.Write(&changed)
	if err != nil {
		t.Fatal(err)
	}
	const project, yaml = "application/x-frontlay+yaml", "yaml"
	for _, one := range []struct {
		name string
		data []byte
		want string
	}{
		{"demo.yaml", assets.Demo(), project},
		{"saved.yaml", saved, project},
		{"new.yaml", assets.NewCabinet(), project},
		{"of windows.yml", []byte("frontlay: 2\r\ntitle: x\r\n"), project},
		{"no-ending", assets.Demo(), project},
		{"sheet.yaml", sheet, yaml},
		{"other.yaml", []byte("a: 1\nfor frontlay: 2\n"), yaml},
		{"notes.txt", []byte("frontlay: a program\n"), "text/plain"},
	} {
		path := filepath.Join(home, one.name)
		if err := os.WriteFile(path, one.data, 0o666); err != nil {
			t.Fatal(err)
		}
		said := ran(t, "gio", "info", "-a", "standard::content-type", path)
		_, said, _ = strings.Cut(said, "standard::content-type: ")
		if got := strings.TrimSpace(said); !strings.HasSuffix(got, one.want) || one.want == yaml && strings.Contains(got, "frontlay") {
			t.Errorf("%s is %s; want %s", one.name, got, one.want)
		}
	}
}

// What a program needs is read from the program itself, and nothing goes unnoticed.
func TestDependsOnWhatIsUsed(t *testing.T) {
	exe, err := os.ReadFile("/bin/sh")
	if err != nil || runtime.GOOS != "linux" {
		t.Skip("there is no program of Linux to look at")
	}
	got, err := depends(exe)
	if err != nil || !regexp.MustCompile(`^libc6 \(>= 2\.\d+\)$`).MatchString(got) {
		t.Errorf("%q, %v", got, err)
	}
	got, err = depends(append(exe, "\x00libXi.so.6\x00libvulkan.so.1\x00"...))
	if err != nil || !strings.HasSuffix(got, ", libxi6") {
		t.Errorf("%q, %v", got, err)
	}
	if _, err = depends(append(exe, "\x00libnobody.so.3\x00"...)); err == nil || !strings.Contains(err.Error(), "libnobody.so.3") {
		t.Errorf("an unknown library: %v", err)
	}
}

// An icon of Windows holds the picture in every size that its head tells of.
func TestIconOfWindows(t *testing.T) {
	data, err := ico(assets.IconPNG())
	if err != nil {
		t.Fatal(err)
	}
	whole, _, err := image.Decode(bytes.NewReader(assets.IconPNG()))
	if err != nil {
		t.Fatal(err)
	}
	middle := func(c color.Color) [3]int {
		n := color.NRGBAModel.Convert(c).(color.NRGBA)
		return [3]int{int(n.R), int(n.G), int(n.B)}
	}
	end := 6 + 16*len(iconEdges)
	for i, edge := range iconEdges {
		head := data[6+16*i:]
		size, at := int(binary.LittleEndian.Uint32(head[8:])), int(binary.LittleEndian.Uint32(head[12:]))
		if int(head[0]) != edge%256 || at != end {
			t.Fatalf("picture %d: edge %d at %d; want %d at %d", i, head[0], at, edge, end)
		}
		end += size
		one := data[at:end]
		if edge == 256 {
			if p, err := png.Decode(bytes.NewReader(one)); err != nil || p.Bounds().Dx() != 256 {
				t.Errorf("the largest: %v", err)
			}
			continue
		}
		// In the middle of the upper drawer, where it is of one colour around.
		p := one[40+4*((edge-1-edge/4)*edge+edge/2):]
		got, want := [3]int{int(p[2]), int(p[1]), int(p[0])}, middle(whole.At(128, 64))
		for k := range got {
			if d := got[k] - want[k]; d < -40 || d > 40 {
				t.Errorf("%d pixels: the colour %v where the icon has %v", edge, got, want)
				break
			}
		}
	}
	if end != len(data) {
		t.Errorf("%d bytes; the head tells of %d", len(data), end)
	}
}

// What a program for Windows carries of itself is read back by the linker's own tools.
func TestResourceOfWindows(t *testing.T) {
	if _, err := exec.LookPath(mingw + "windres"); err != nil {
		t.Skip("the tools of make dist are not installed")
	}
	path := filepath.Join(t.TempDir(), "resource.o")
	if err := windowsResource(path, "1.2.3"); err != nil {
		t.Fatal(err)
	}
	said := ran(t, mingw+"windres", path)
	for _, want := range []string{"FILEVERSION 1, 2, 3, 0", `VALUE "ProductVersion", "1.2.3"`, "consoleAllocationPolicy", "GROUP_ICON"} {
		if !strings.Contains(said, want) {
			t.Errorf("the resource has no %s", want)
		}
	}
}
