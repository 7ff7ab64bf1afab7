package lp

import (
	"bytes"
	"context"
	"fmt"
	"math"
	"os"
	"os/exec"
	"path/filepath"
	"regexp"
	"strconv"
	"strings"
	"syscall"
	"testing"
	"time"

	"frontlay/layout/plan"
	"frontlay/layout/plane"
	"frontlay/layout/sheet"
	"frontlay/model"
	"frontlay/model/length"
	"frontlay/pdfout"
)

// The printer description that Debian's printer-driver-cups-pdf installs.
const description = "/usr/share/ppd/cups-pdf/CUPS-PDF_noopt.ppd"

// spooler is a CUPS of the test's own, with a printer that writes what it is
// sent into a file: Debian's PDF printer up to the last step, so that nothing is
// written into anybody's home.
type spooler struct {
	dir, socket, output string
}

func startCUPS(t *testing.T) *spooler {
	t.Helper()
	missing := ""
	for _, f := range []string{"/usr/sbin/cupsd", "/usr/sbin/lpadmin", "/usr/bin/lp", "/usr/bin/gs", "/usr/bin/mutool", description} {
		if _, err := os.Stat(f); err != nil {
			missing = f
		}
	}
	switch {
	case missing != "" && os.Getenv("FRONTLAY_TOOLS") == "1":
		t.Fatalf("%s is not installed", missing)
	case missing != "":
		t.Skipf("%s is not installed (make test installs it)", missing)
	case os.Getuid() != 0:
		t.Skip("only root can start a printing system")
	}
	dir, err := os.MkdirTemp("", "cups") // short: the path of a socket has 107 letters at most
	if err != nil {
		t.Fatal(err)
	}
	t.Cleanup(func() { _ = os.RemoveAll(dir) })
	s := &spooler{dir: dir, socket: filepath.Join(dir, "sock"), output: filepath.Join(dir, "out.ps")}
	s.write(t, "cupsd.conf", "Listen %[1]s/sock\nDefaultAuthType None\nWebInterface No\nBrowsing No\nLogLevel warn\n"+
		"<Location />\nOrder allow,deny\nAllow all\n</Location>\n<Location /admin>\nOrder allow,deny\nAllow all\n</Location>\n"+
		"<Policy default>\n<Limit All>\nOrder allow,deny\nAllow all\n</Limit>\n</Policy>\n")
	s.write(t, "cups-files.conf", "ServerRoot %[1]s\nCacheDir %[1]s/cache\nStateDir %[1]s/run\nRequestRoot %[1]s/spool\nTempDir %[1]s/spool/tmp\n"+
		"AccessLog %[1]s/access\nErrorLog %[1]s/error\nPageLog %[1]s/page\nFileDevice Yes\nUser lp\nGroup lp\nSystemGroup root\n")
	for _, d := range []string{"ppd", "cache", "run", "spool/tmp"} {
		if err := os.MkdirAll(filepath.Join(dir, d), 0o777); err != nil {
			t.Fatal(err)
		}
	}
	if err := os.WriteFile(s.output, nil, 0o666); err != nil {
		t.Fatal(err)
	}
	chmodAll(t, dir)
	daemon := exec.Command("/usr/sbin/cupsd", "-f", "-c", filepath.Join(dir, "cupsd.conf"), "-s", filepath.Join(dir, "cups-files.conf"))
	if err := daemon.Start(); err != nil {
		t.Fatal(err)
	}
	t.Cleanup(func() { _ = daemon.Process.Signal(syscall.SIGTERM); _ = daemon.Wait() })
	s.eventually(t, "the socket", func() bool { _, err := os.Stat(s.socket); return err == nil })
	if _, err := s.run(t.Context(), nil, "/usr/sbin/lpadmin", "-p", "paper", "-E", "-v", "file:"+s.output, "-P", description); err != nil {
		t.Fatal(err)
	}
	return s
}

func chmodAll(t *testing.T, dir string) {
	t.Helper()
	if err := exec.Command("chmod", "-R", "a+rwX", dir).Run(); err != nil {
		t.Fatal(err)
	}
}

func (s *spooler) write(t *testing.T, name, text string) {
	t.Helper()
	if err := os.WriteFile(filepath.Join(s.dir, name), fmt.Appendf(nil, text, s.dir), 0o666); err != nil {
		t.Fatal(err)
	}
}

// run is a System that talks to the test's own CUPS.
func (s *spooler) run(ctx context.Context, input []byte, program string, args ...string) (string, error) {
	cmd := exec.CommandContext(ctx, program, args...)
	cmd.Env = append(os.Environ(), "LC_ALL=C", "CUPS_SERVER="+s.socket)
	cmd.Stdin = bytes.NewReader(input)
	out, err := cmd.Output()
	return string(out), err
}

func (s *spooler) eventually(t *testing.T, what string, ready func() bool) {
	t.Helper()
	for range 300 {
		if ready() {
			return
		}
		time.Sleep(100 * time.Millisecond)
	}
	log, _ := os.ReadFile(filepath.Join(s.dir, "error"))
	t.Fatalf("%s did not come\n%s", what, log)
}

// printed prints a page and gives what came out, as MuPDF reads it.
func (s *spooler) printed(t *testing.T, pdf []byte, paper sheet.Paper) string {
	t.Helper()
	if err := os.Truncate(s.output, 0); err != nil {
		t.Fatal(err)
	}
	id, err := Print(t.Context(), s.run, Job{Printer: "paper", Title: "Glaze bench", Paper: paper, PDF: pdf})
	if err != nil {
		t.Fatal(err)
	}
	s.eventually(t, "the job "+id, func() bool {
		done, err := s.run(t.Context(), nil, "lpstat", "-W", "completed", "-o")
		return err == nil && strings.Contains(done, id+" ")
	})
	out := filepath.Join(s.dir, "out.pdf")
	if msg, err := exec.Command("/usr/bin/gs", "-q", "-dBATCH", "-dNOPAUSE", "-sDEVICE=pdfwrite", "-dAutoRotatePages=/None", "-o", out, s.output).CombinedOutput(); err != nil {
		t.Fatalf("gs: %v %s", err, msg)
	}
	trace, err := exec.Command("/usr/bin/mutool", "trace", out, "1").Output()
	if err != nil {
		t.Fatal(err)
	}
	return string(trace)
}

var mediabox = regexp.MustCompile(`mediabox="0 0 (\S+) (\S+)"`)

// size is the page's size in points.
func size(trace string) string {
	m := mediabox.FindStringSubmatch(trace)
	return m[1] + " × " + m[2]
}

var (
	transformed = regexp.MustCompile(`transform="(\S+) (\S+) (\S+) (\S+) `)
	ends        = regexp.MustCompile(`<(?:moveto|lineto) x="([^"]*)" y="([^"]*)"`)
)

// bars finds straight lines of about 100 mm.
func bars(trace string) (across, up float64) {
	for _, path := range strings.Split(trace, "<stroke_path")[1:] {
		path, _, _ = strings.Cut(path, "</stroke_path>")
		m, p := transformed.FindStringSubmatch(path), ends.FindAllStringSubmatch(path, -1)
		if m == nil || len(p) != 2 {
			continue
		}
		n := func(s string) float64 { v, _ := strconv.ParseFloat(s, 64); return v }
		x, y := n(p[1][1])-n(p[0][1]), n(p[1][2])-n(p[0][2])
		dx := math.Abs(n(m[1])*x+n(m[3])*y) * 25.4 / 72
		dy := math.Abs(n(m[2])*x+n(m[4])*y) * 25.4 / 72
		switch {
		case dx > 85 && dx < 115 && dy < 0.1:
			across = dx
		case dy > 85 && dy < 115 && dx < 0.1:
			up = dy
		}
	}
	return across, up
}

// A page for A4 comes out of CUPS at its size on A4, and is cropped, not shrunk,
// on Letter.
func TestCUPSKeepsTheSize(t *testing.T) {
	s := startCUPS(t)
	names, _, err := Printers(t.Context(), s.run)
	if err != nil || len(names) != 1 || names[0] != "paper" {
		t.Fatalf("printers %q, %v", names, err)
	}
	f := plan.Front{Number: 1, Name: "Glazes", Face: plane.R(0, 0, length.MM(597), length.MM(283))}
	f.Holes = []plan.Hole{{At: plane.Point{X: length.MM(36), Y: length.MM(64)}, Side: plan.Left, Diameter: length.MM(10), Depth: length.MM(12)}}
	f.HandleHoles = []plan.Hole{
		{At: plane.Point{X: length.MM(200), Y: length.MM(240)}, Kind: plan.HandleHole, Diameter: length.MM(5)},
		{At: plane.Point{X: length.MM(420), Y: length.MM(240)}, Kind: plan.HandleHole, Diameter: length.MM(5)},
	}
	p := &plan.Plan{Project: &model.Project{}, Fronts: []plan.Front{f}}
	var pdf bytes.Buffer
	if err := pdfout.Write(&pdf, sheet.Make(p, nil, sheet.Options{Parts: []sheet.Part{sheet.CornerTemplates}}), pdfout.Options{}); err != nil {
		t.Fatal(err)
	}
	for _, name := range []string{"A4", "Letter"} {
		paper, err := sheet.ParsePaper(name, length.UnitMM)
		if err != nil {
			t.Fatal(err)
		}
		trace := s.printed(t, pdf.Bytes(), paper)
		across, up := bars(trace)
		if math.Abs(across-100) > 0.01 || math.Abs(up-100) > 0.01 {
			t.Errorf("on %s the bars of 100 mm came out as %.4f across and %.4f up", name, across, up)
		}
		if got, want := size(trace), map[string]string{"A4": "595 × 842", "Letter": "612 × 792"}[name]; got != want {
			t.Errorf("%s came out as a page of %s points; want %s", name, got, want)
		}
	}

	// A page that lies lengthwise is turned, not cut off.
	var wide bytes.Buffer
	d := sheet.Make(p, nil, sheet.Options{Parts: []sheet.Part{sheet.HandleTemplates}})
	if d.Pages[0].Width < d.Pages[0].Height {
		t.Fatal("the test needs a lengthwise page")
	}
	if err := pdfout.Write(&wide, d, pdfout.Options{}); err != nil {
		t.Fatal(err)
	}
	trace := s.printed(t, wide.Bytes(), sheet.Papers()[0])
	across, up := bars(trace)
	if math.Abs(across-100) > 0.01 || math.Abs(up-100) > 0.01 {
		t.Errorf("on a lengthwise page the bars came out as %.4f and %.4f", across, up)
	}
	if off := offPage(trace); off != "" {
		t.Errorf("a lengthwise page came out cut off: %s", off)
	}
}

// offPage tells of a straight line that lies outside of the page; outlines of
// panels are larger than the page, and clipped.
func offPage(trace string) string {
	m := mediabox.FindStringSubmatch(trace)
	n := func(s string) float64 { v, _ := strconv.ParseFloat(s, 64); return v }
	for _, path := range strings.Split(trace, "<stroke_path")[1:] {
		path, _, _ = strings.Cut(path, "</stroke_path>")
		k, line := all6.FindStringSubmatch(path), ends.FindAllStringSubmatch(path, -1)
		if len(line) != 2 {
			continue
		}
		for _, p := range line {
			x := n(k[1])*n(p[1]) + n(k[3])*n(p[2]) + n(k[5])
			y := n(k[2])*n(p[1]) + n(k[4])*n(p[2]) + n(k[6])
			if x < 0 || y < 0 || x > n(m[1]) || y > n(m[2]) {
				return fmt.Sprintf("%.1f, %.1f on a page of %s", x, y, size(trace))
			}
		}
	}
	return ""
}

var all6 = regexp.MustCompile(`transform="(\S+) (\S+) (\S+) (\S+) (\S+) ([^"]+)"`)
