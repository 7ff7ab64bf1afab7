package main

import (
	"archive/tar"
	"archive/zip"
	"bytes"
	"compress/gzip"
	"crypto/md5"
	"embed"
	"fmt"
	"io/fs"
	"os"
	"path"
	"regexp"
	"runtime"
	"slices"
	"strings"
	"time"
)

//go:embed files
var files embed.FS

// own is a file of this package.
func own(name string) []byte {
	data, err := files.ReadFile("files/" + name)
	if err != nil {
		panic(err) // it is embedded
	}
	return data
}

// file is one that is packed; path is below the folder that it is unpacked in.
type file struct {
	path string
	mode fs.FileMode
	data []byte
}

// installed is what lies below a prefix such as /usr, by the Filesystem Hierarchy Standard
// and the freedesktop.org specifications.
func installed(p program) []file {
	plain := func(path string, data []byte) file { return file{path, 0o644, data} }
	const doc = "share/doc/frontlay/"
	return []file{
		{"bin/frontlay", 0o755, p.binary},
		plain("share/applications/frontlay.desktop", own("frontlay.desktop")),
		plain("share/bash-completion/completions/frontlay", p.bash),
		plain(doc+"README.md", p.repository["README.md"]),
		plain(doc+"copyright", copyright(p)),
		plain("share/icons/hicolor/256x256/apps/frontlay.png", p.repository["assets/icon.png"]),
		plain("share/icons/hicolor/scalable/apps/frontlay.svg", p.repository["assets/icon.svg"]),
		plain("share/man/man1/frontlay.1.gz", zipped(p.man)),
		plain("share/mime/packages/frontlay.xml", own("frontlay.xml")),
	}
}

// copyright is the program's licence and those of all its parts.
func copyright(p program) []byte {
	return slices.Concat([]byte("frontlay\n\n"), p.repository["LICENSE"], []byte("\nIt holds parts of others; their licences follow.\n\n"), p.repository["assets/licences.txt"])
}

// deb is the package of Debian, in the format of deb(5).
func deb(p program, src source) ([]byte, error) {
	var all []file
	var sums strings.Builder
	size := 0
	for _, f := range installed(p) {
		f.path = "usr/" + f.path
		all = append(all, f)
		fmt.Fprintf(&sums, "%x  %s\n", md5.Sum(f.data), f.path)
		size += (len(f.data) + 1023) / 1024
	}
	control := fmt.Sprintf(`Package: frontlay
Version: %s
Architecture: %s
Maintainer: contributors of frontlay <frontlay@example.invalid>
Installed-Size: %d
Depends: %s
Recommends: desktop-file-utils, hicolor-icon-theme, shared-mime-info, xdg-utils
Suggests: bash-completion, cups-client
Section: graphics
Priority: optional
Description: plans the fronts of drawer cabinets
 From the carcass and the figures of the hardware it places every front, drawer,
 runner and hole, checks them, and prints drilling templates at 1:1.
`, p.version, runtime.GOARCH, size, p.depends)
	members := []file{{"debian-binary", 0o644, []byte("2.0\n")}}
	for _, m := range []struct {
		name  string
		files []file
	}{
		{"control.tar.gz", []file{{"control", 0o644, []byte(control)}, {"md5sums", 0o644, []byte(sums.String())}}},
		{"data.tar.gz", all},
	} {
		data, err := tarGz("./", m.files, src.made)
		if err != nil {
			return nil, err
		}
		members = append(members, file{m.name, 0o644, data})
	}
	return ar(members, src.made), nil
}

// tarball is what install.sh installs. It tells which packages are missing where the
// program does not run.
func tarball(p program, src source) ([]byte, error) {
	names := regexp.MustCompile(` \([^)]*\)|,`).ReplaceAllString(p.depends, "")
	script := bytes.Replace(own("install.sh"), []byte("DEPENDS"), []byte(names), 1)
	all := append(installed(p), file{"install.sh", 0o755, script})
	return tarGz("frontlay-"+p.version+"/", all, src.made)
}

// windowsZip is the program for Windows, with what must be told of it.
func windowsZip(binary string, p program, src source) ([]byte, error) {
	exe, err := os.ReadFile(binary)
	if err != nil {
		return nil, err
	}
	var b bytes.Buffer
	z := zip.NewWriter(&b)
	for _, f := range []file{
		{"frontlay.exe", 0o755, exe},
		{"README.md", 0o644, p.repository["README.md"]},
		{"licences.txt", 0o644, copyright(p)},
	} {
		h := &zip.FileHeader{Name: "frontlay-" + p.version + "/" + f.path, Method: zip.Deflate, Modified: src.made}
		h.SetMode(f.mode)
		w, err := z.CreateHeader(h)
		if err == nil {
			_, err = w.Write(f.data)
		}
		if err != nil {
			return nil, err
		}
	}
	err = z.Close()
	return b.Bytes(), err
}

// tarGz packs files below a folder, with the folders between, all of root and of one
// time.
func tarGz(below string, files []file, made time.Time) ([]byte, error) {
	var b bytes.Buffer
	t := tar.NewWriter(&b)
	write := func(h *tar.Header, data []byte) error {
		h.ModTime, h.Uname, h.Gname, h.Format = made, "root", "root", tar.FormatGNU
		h.Size = int64(len(data))
		if err := t.WriteHeader(h); err != nil {
			return err
		}
		_, err := t.Write(data)
		return err
	}
	folders := map[string]bool{}
	var mkdir func(dir string) error
	mkdir = func(dir string) error {
		if folders[dir] {
			return nil
		}
		folders[dir] = true
		if dir != "" {
			if err := mkdir(parent(dir)); err != nil {
				return err
			}
		}
		return write(&tar.Header{Typeflag: tar.TypeDir, Name: below + dir, Mode: 0o755}, nil)
	}
	for _, f := range slices.SortedFunc(slices.Values(files), func(a, b file) int { return strings.Compare(a.path, b.path) }) {
		if err := mkdir(parent(f.path)); err != nil {
			return nil, err
		}
		if err := write(&tar.Header{Typeflag: tar.TypeReg, Name: below + f.path, Mode: int64(f.mode)}, f.data); err != nil {
			return nil, err
		}
	}
	if err := t.Close(); err != nil {
		return nil, err
	}
	return zipped(b.Bytes()), nil
}

// parent is the folder that something lies in, with a slash at its end; none at the top.
func parent(name string) string {
	dir := path.Dir(strings.TrimSuffix(name, "/"))
	if dir == "." {
		return ""
	}
	return dir + "/"
}

// zipped is data as gzip writes it, without a name or a time.
func zipped(data []byte) []byte {
	var b bytes.Buffer
	z, err := gzip.NewWriterLevel(&b, gzip.BestCompression)
	if err == nil {
		_, err = z.Write(data)
	}
	if err == nil {
		err = z.Close()
	}
	if err != nil {
		panic(err) // a buffer takes everything
	}
	return b.Bytes()
}

// ar is an archive of ar(5).
func ar(members []file, made time.Time) []byte {
	b := bytes.NewBufferString("!<arch>\n")
	for _, m := range members {
		fmt.Fprintf(b, "%-16s%-12d%-6d%-6d%-8o%-10d`\n", m.path, made.Unix(), 0, 0, 0o100000|m.mode, len(m.data))
		b.Write(m.data)
		if len(m.data)%2 == 1 {
			b.WriteByte('\n')
		}
	}
	return b.Bytes()
}
