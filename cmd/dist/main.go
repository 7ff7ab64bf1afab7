// Command dist builds and packs what people install, for the commit that is checked out:
// a Debian package and a tarball of this machine's kind, and a .zip for Windows. Run it in
// the repository's folder, by make dist. The same commit gives the same bytes, with the
// same Go and the same C compilers.
package main

import (
	"bytes"
	"crypto/sha256"
	"errors"
	"flag"
	"fmt"
	"os"
	"os/exec"
	"path/filepath"
	"runtime"
	"strconv"
	"strings"
	"time"
)

func main() {
	tags := flag.String("tags", "", "build `TAGS`, as go build takes them")
	out := flag.String("o", "out/dist", "the `FOLDER` to write into")
	flag.Parse()
	if err := dist(*tags, *out); err != nil {
		fmt.Fprintln(os.Stderr, "dist:", err)
		os.Exit(1)
	}
}

// source is what is packed: the commit that is checked out.
type source struct {
	commit string
	made   time.Time // of the commit; every file that is packed has this time
}

// dist builds and packs everything, and lists the sums of what it wrote.
func dist(tags, out string) error {
	src, err := checkedOut()
	if err != nil {
		return err
	}
	if err := os.MkdirAll(out, 0o777); err != nil {
		return err
	}
	work, err := os.MkdirTemp("", "frontlay-dist")
	if err != nil {
		return err
	}
	defer os.RemoveAll(work)
	linux := filepath.Join(work, "frontlay")
	if err := build(linux, tags, src, "", "GOOS=linux", "CGO_ENABLED=1"); err != nil {
		return err
	}
	program, err := asked(linux)
	if err != nil {
		return err
	}
	resource := filepath.Join(work, "resource.o")
	if err := windowsResource(resource, program.version); err != nil {
		return err
	}
	windows := filepath.Join(work, "frontlay.exe")
	if err := build(windows, tags, src, " '-extldflags=-Wl,--no-insert-timestamp "+resource+"'", "GOOS=windows", "GOARCH=amd64", "CGO_ENABLED=1", "CC="+mingw+"gcc"); err != nil {
		return err
	}
	var sums strings.Builder
	for _, p := range []struct {
		name string
		pack func() ([]byte, error)
	}{
		{"frontlay_" + program.version + "_" + runtime.GOARCH + ".deb", func() ([]byte, error) { return deb(program, src) }},
		{"frontlay-" + program.version + "-linux-" + runtime.GOARCH + ".tar.gz", func() ([]byte, error) { return tarball(program, src) }},
		{"frontlay-" + program.version + "-windows-amd64.zip", func() ([]byte, error) { return windowsZip(windows, program, src) }},
	} {
		data, err := p.pack()
		if err == nil {
			err = os.WriteFile(filepath.Join(out, p.name), data, 0o666)
		}
		if err != nil {
			return fmt.Errorf("%s: %w", p.name, err)
		}
		fmt.Fprintf(&sums, "%x  %s\n", sha256.Sum256(data), p.name)
	}
	fmt.Print(sums.String())
	return os.WriteFile(filepath.Join(out, "SHA256SUMS"), []byte(sums.String()), 0o666)
}

// checkedOut asks git for the commit. What is changed and not committed would be packed
// under a commit that does not have it.
func checkedOut() (source, error) {
	if changed, err := output("git", "status", "--porcelain"); err != nil || changed != "" {
		return source{}, errors.Join(err, fmt.Errorf("commit first what is changed:\n%s", changed))
	}
	line, err := output("git", "show", "-s", "--format=%H %ct", "HEAD")
	if err != nil {
		return source{}, err
	}
	commit, seconds, _ := strings.Cut(line, " ")
	s, err := strconv.ParseInt(seconds, 10, 64)
	return source{commit, time.Unix(s, 0).UTC()}, err
}

// build makes the program without what differs from folder to folder: paths, the identity
// that the Go tool gives a build (it is made of its flags, with paths in them), and what the
// Go tool records of git, which depends on the tags that were fetched.
func build(to, tags string, src source, linker string, env ...string) error {
	c := exec.Command("go", "build", "-trimpath", "-buildvcs=false", "-tags", tags,
		"-ldflags", "-s -w -buildid= -X main.commit="+src.commit+linker, "-o", to, "./cmd/frontlay")
	c.Env = append(os.Environ(), append(env, "SOURCE_DATE_EPOCH="+strconv.FormatInt(src.made.Unix(), 10))...)
	c.Stdout, c.Stderr = os.Stderr, os.Stderr
	return c.Run()
}

// program is the built program and what it tells of itself.
type program struct {
	version    string
	binary     []byte
	man, bash  []byte
	depends    string // packages of Debian
	repository map[string][]byte
}

// asked asks a built program for what is packed beside it, and reads the files of the
// repository that are.
func asked(binary string) (program, error) {
	var p program
	told, err := output(binary, "--version")
	if err != nil {
		return p, err
	}
	p.version = strings.Fields(told)[1]
	for form, to := range map[string]*[]byte{"man": &p.man, "bash": &p.bash} {
		text, err := output(binary, "help", form)
		if err != nil {
			return p, err
		}
		*to = []byte(text + "\n")
	}
	if p.binary, err = os.ReadFile(binary); err != nil {
		return p, err
	}
	if p.depends, err = depends(p.binary); err != nil {
		return p, err
	}
	p.repository = map[string][]byte{}
	for _, name := range []string{"README.md", "LICENSE", "assets/licences.txt", "assets/icon.svg", "assets/icon.png"} {
		if p.repository[name], err = os.ReadFile(name); err != nil {
			return p, err
		}
	}
	return p, nil
}

// output runs another program and gives what it writes, without the last line's end.
func output(name string, args ...string) (string, error) {
	c := exec.Command(name, args...)
	var said bytes.Buffer
	c.Stderr = &said
	out, err := c.Output()
	if err != nil {
		return "", fmt.Errorf("%s: %w: %s", name, err, said.String())
	}
	return strings.TrimRight(string(out), "\n"), nil
}
