package ui

import (
	"bytes"
	"cmp"
	"crypto/sha256"
	"encoding/hex"
	"flag"
	"fmt"
	"image"
	"image/color"
	"image/png"
	"maps"
	"os"
	"path/filepath"
	"slices"
	"strings"
	"testing"

	"fyne.io/fyne/v2"
	"fyne.io/fyne/v2/test"

	"frontlay/assets"
	"frontlay/assets/language"
	"frontlay/assets/manual"
	"frontlay/layout"
	"frontlay/layout/check"
	"frontlay/layout/export/picture"
	"frontlay/layout/ink"
	"frontlay/layout/sheet"
	"frontlay/model/length"
	"frontlay/model/message"
	"frontlay/model/yamlfile"
	"frontlay/ui/desk"
	"frontlay/ui/look"
)

var pictureFlag = flag.Bool("picture", false, "paint the pictures of README and manual anew that are not true any more")

// shot is a picture of README or manual: the window, or a page of paper.
type shot struct {
	name    string          // below assets, without language and ending
	one     bool            // it serves all languages
	project string          // file in assets/projects; empty: the demo
	size    fyne.Size       // of the window; zero: usualShot
	cut     image.Rectangle // what is kept of window or page, in pixels; empty: all
	set     func(w *window) // what the window shows
	page    sheet.Part      // a page of this part in the place of the window
	number  int             // which of them, from 0
	pixels  int             // of a page's longer edge; 0: 1000
}

// usualShot is the window in pictures of the manual: small enough that its letters can
// be read beside a text.
var usualShot = fyne.NewSize(1000, 600)

// file is the picture's file in a language, below assets.
func (s shot) file(code string) string {
	if s.one {
		return s.name + ".png"
	}
	return s.name + "." + code + ".png"
}

// source is the text of the project that a picture shows.
func (s shot) source(t *testing.T) []byte {
	t.Helper()
	data, err := os.ReadFile(filepath.Join("..", "assets", "projects", cmp.Or(s.project, assets.DemoName)))
	if err != nil {
		t.Fatal(err)
	}
	return data
}

// window opens a window in a language. Each picture has one of its own, so that none
// depends on those before it.
func (s shot) window(t *testing.T, code string) *window {
	t.Helper()
	app := test.NewTempApp(t)
	th := &look.Theme{Mode: look.LightMode}
	app.Settings().SetTheme(th)
	desk.HintsDone(app.Preferences())
	app.Preferences().SetString(prefLanguage, code)
	o := Options{Keeper: keeper(t, &disk{}), Date: func() string { return printedOn }}
	if o.Example = strings.TrimSuffix(cmp.Or(s.project, assets.DemoName), ".yaml"); !slices.Contains(assets.Examples(), o.Example) {
		o.Open = filepath.Join(t.TempDir(), s.project)
		if err := os.WriteFile(o.Open, s.source(t), 0o600); err != nil {
			t.Fatal(err)
		}
	}
	w := open(app, th, o)
	t.Cleanup(w.shut)
	w.desk.Inspector.Begin()
	size := s.size
	if size.IsZero() {
		size = usualShot
	}
	w.win.Resize(size)
	s.set(w)
	w.Update()
	w.win.Resize(size.AddWidthHeight(1, 0)) // the desktop lays out anew before each frame
	w.win.Resize(size)
	return w
}

// printedOn is the date on paper.
const printedOn = "2026-01-01"

// paper makes the page of a picture.
func (s shot) paper(t *testing.T, code string) (*sheet.Page, message.Language) {
	t.Helper()
	say, err := language.Read(code)
	if err != nil {
		t.Fatal(err)
	}
	f, err := yamlfile.Read(s.project, s.source(t), samples, check.Limits())
	if err != nil {
		t.Fatal(err)
	}
	say.Unit = f.Project.Unit
	r := layout.Solve(f.Project)
	d := sheet.Make(r.Plan, r.Findings, sheet.Options{Parts: []sheet.Part{s.page}, Say: say, Date: printedOn})
	if len(d.Pages) <= s.number {
		t.Fatalf("%s: there are %d pages %q", s.name, len(d.Pages), s.page)
	}
	return &d.Pages[s.number], d.Say
}

// take tells what a picture shows, as text, and gives what paints it.
func (s shot) take(t *testing.T, code string) (dump string, paint func() image.Image) {
	t.Helper()
	if s.page != "" {
		page, say := s.paper(t, code)
		var r recorder
		ink.Draw(&r, page.Drawings(), page.LetterArea(), say)
		pixels := cmp.Or(s.pixels, 1000)
		return fmt.Sprintln(pixels, s.cut) + r.String(), func() image.Image {
			data, err := picture.PNG(page, say, pixels)
			if err != nil {
				t.Fatal(err)
			}
			img, err := png.Decode(bytes.NewReader(data))
			if err != nil {
				t.Fatal(err)
			}
			return s.kept(img)
		}
	}
	w := s.window(t, code)
	return fmt.Sprintln(w.win.Canvas().Size(), s.cut) + test.RenderToMarkup(w.win.Canvas()), func() image.Image { return s.kept(w.win.Canvas().Capture()) }
}

// kept is what is kept of a picture.
func (s shot) kept(img image.Image) image.Image {
	if s.cut.Empty() {
		return img
	}
	return img.(interface {
		SubImage(image.Rectangle) image.Image
	}).SubImage(s.cut)
}

// recorder writes down what would be drawn on a page.
type recorder struct{ bytes.Buffer }

func (r *recorder) Line(p ink.Pen, a, b ink.Point) { fmt.Fprintln(r, "line", p, a, b) }
func (r *recorder) Rect(edge *ink.Pen, fill *ink.Colour, lo, hi ink.Point) {
	fmt.Fprint(r, "rect ", lo, hi)
	if edge != nil {
		fmt.Fprint(r, *edge)
	}
	if fill != nil {
		fmt.Fprint(r, *fill)
	}
	fmt.Fprintln(r)
}
func (r *recorder) Circle(p ink.Pen, centre ink.Point, radius float64) {
	fmt.Fprintln(r, "circle", p, centre, radius)
}
func (r *recorder) Triangle(fill ink.Colour, a, b, c ink.Point) {
	fmt.Fprintln(r, "triangle", fill, a, b, c)
}
func (r *recorder) Clip(lo, hi ink.Point) { fmt.Fprintln(r, "clip", lo, hi) }
func (r *recorder) Unclip()               { fmt.Fprintln(r, "unclip") }
func (r *recorder) Text(at ink.Point, size length.Length, bold, turned bool, c ink.Colour, s string) {
	fmt.Fprintln(r, "text", at, size, bold, turned, c, s)
}

// picturesList says for each picture what it was painted from, and which bytes that
// gave: a line each, name, sum of the dump, sum of the file.
var picturesList = filepath.Join("..", "assets", "manual", "pictures", "pictures.txt")

// most is how many bytes a picture can have, and all of the manual together.
const mostOfOne, mostOfAll = 150_000, 4_000_000

func sum(data []byte) string {
	s := sha256.Sum256(data)
	return hex.EncodeToString(s[:8])
}

// Pictures of README and manual are no older than what they show: what the window or
// the page draws now is what they were painted from. With -picture, those that are not
// are painted anew.
func TestPicturesShowWhatIsThere(t *testing.T) {
	was, now := map[string]string{}, map[string]string{}
	list, err := os.ReadFile(picturesList)
	if err != nil {
		t.Fatal(err)
	}
	for _, line := range strings.Split(strings.TrimSpace(string(list)), "\n") {
		name, sums, _ := strings.Cut(line, " ")
		was[name] = sums
	}
	all := 0
	for _, s := range shots {
		for _, code := range manual.Languages() {
			file := s.file(code)
			if _, done := now[file]; done || s.one && code != "en" {
				continue
			}
			path := filepath.Join("..", "assets", filepath.FromSlash(file))
			dump, paint := s.take(t, code)
			data, err := os.ReadFile(path)
			now[file] = sum([]byte(dump)) + " " + sum(data)
			if err != nil || now[file] != was[file] {
				if !*pictureFlag {
					t.Errorf("assets/%s is older than what it shows, or not the picture that was painted. Look at it again: make picture", file)
					continue
				}
				data = painted(t, paint())
				if err := os.WriteFile(path, data, 0o666); err != nil {
					t.Fatal(err)
				}
				now[file] = sum([]byte(dump)) + " " + sum(data)
			}
			if len(data) > mostOfOne {
				t.Errorf("assets/%s has %d bytes, more than %d: show less, or make it smaller", file, len(data), mostOfOne)
			}
			all += len(data)
		}
	}
	if all > mostOfAll {
		t.Errorf("all pictures have %d bytes, more than %d", all, mostOfAll)
	}
	for _, name := range manual.Pictures() {
		if _, made := now["manual/pictures/"+name]; !made {
			t.Errorf("assets/manual/pictures/%s is painted by no entry of the list in ui/shots_test.go", name)
		}
	}
	if *pictureFlag {
		var b strings.Builder
		for _, name := range slices.Sorted(maps.Keys(now)) {
			fmt.Fprintln(&b, name, now[name])
		}
		if err := os.WriteFile(picturesList, []byte(b.String()), 0o666); err != nil {
			t.Fatal(err)
		}
	}
	for name := range was {
		if _, made := now[name]; !made && !*pictureFlag {
			t.Errorf("%s is in the list of pictures, but not made any more", name)
		}
	}
}

// painted is a picture as a small file: of 256 colours, the most frequent ones, and for
// every other the nearest of them. One of nothing is no picture.
func painted(t *testing.T, img image.Image) []byte {
	t.Helper()
	b := img.Bounds()
	many := map[color.RGBA]int{}
	each := func(do func(x, y int, c color.RGBA)) {
		for y := b.Min.Y; y < b.Max.Y; y++ {
			for x := b.Min.X; x < b.Max.X; x++ {
				do(x-b.Min.X, y-b.Min.Y, color.RGBAModel.Convert(img.At(x, y)).(color.RGBA))
			}
		}
	}
	each(func(_, _ int, c color.RGBA) { many[c]++ })
	if len(many) < 20 {
		t.Fatalf("the picture has %d colours: nothing was painted", len(many))
	}
	byUse := slices.SortedFunc(maps.Keys(many), func(a, b color.RGBA) int {
		return cmp.Or(many[b]-many[a], int(a.R)-int(b.R), int(a.G)-int(b.G), int(a.B)-int(b.B))
	})
	var palette color.Palette
	for _, c := range byUse[:min(len(byUse), 256)] {
		palette = append(palette, c)
	}
	index := map[color.RGBA]uint8{}
	for _, c := range byUse {
		index[c] = uint8(palette.Index(c))
	}
	small := image.NewPaletted(image.Rect(0, 0, b.Dx(), b.Dy()), palette)
	each(func(x, y int, c color.RGBA) { small.SetColorIndex(x, y, index[c]) })
	var out bytes.Buffer
	if err := (&png.Encoder{CompressionLevel: png.BestCompression}).Encode(&out, small); err != nil {
		t.Fatal(err)
	}
	return out.Bytes()
}
