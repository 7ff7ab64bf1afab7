// Package export makes the files of a job for machines and other programs:
// drawings as SVG and DXF, lists as CSV, the plan as JSON. It gives them as
// bytes; where they go is the caller's business.
package export

import (
	"bytes"
	"cmp"
	"fmt"
	"io"
	"strconv"
	"strings"

	"frontlay/layout/check"
	"frontlay/layout/drawing"
	"frontlay/layout/drawing/dxf"
	"frontlay/layout/drawing/svg"
	"frontlay/layout/export/picture"
	"frontlay/layout/list"
	"frontlay/layout/plan"
	"frontlay/layout/sheet"
	"frontlay/layout/view"
	"frontlay/model/message"
)

// File is a file of the job: its name (ASCII, no folders) and its bytes.
type File struct {
	Name string
	Data []byte
}

// Kind is one kind of file.
type Kind string

// The kinds of files.
const (
	SVG  Kind = "svg"
	DXF  Kind = "dxf"
	CSV  Kind = "csv"
	JSON Kind = "json"
	// Picture is the client sheet.
	Picture Kind = "picture"
)

// Kinds lists every kind of file.
func Kinds() []Kind { return []Kind{SVG, DXF, CSV, JSON, Picture} }

// Title says what a kind is for.
func (k Kind) Title() message.Message {
	switch k {
	case SVG:
		return message.New("SVG: drawings to look at and to print")
	case DXF:
		return message.New("DXF: fronts and carcass sides for machines, the elevation for CAD")
	case CSV:
		return message.New("CSV: lists for a spreadsheet")
	case JSON:
		return message.New("JSON: the whole plan for other programs")
	case Picture:
		return message.New("PNG: the client sheet as a picture")
	}
	return message.New("%v", string(k))
}

// DefaultPixels is how many the longer edge of the picture has where nobody says.
const DefaultPixels = picture.DefaultPixels

// ParsePixels reads how many pixels the longer edge of the picture has; empty text is
// DefaultPixels. The error is a message for the user.
func ParsePixels(s string) (int, error) {
	if strings.TrimSpace(s) == "" {
		return DefaultPixels, nil
	}
	n, err := strconv.Atoi(strings.TrimSpace(s))
	if err != nil {
		return 0, message.New("“%v” is no count of pixels: write one such as %v", s, DefaultPixels)
	}
	return n, picture.Check(n)
}

// Options choose what is made. The zero value is every kind, with drawings of
// the run at 1:10, texts in English and lengths in millimetres.
type Options struct {
	Kinds []Kind  // empty: all
	Den   int64   // scale 1:Den of SVG drawings of the run; 0: 1:10. Fronts and sides are at full size.
	Spare float64 // part added to small parts of the hardware list; zero: a tenth, as on paper; below zero: none
	Say   message.Language
	// Pixels are how many the longer edge of the picture has; 0: picture.DefaultPixels.
	Pixels int
	Paper  sheet.Paper // whose shape the picture has; zero: A4
	Date   string      // of the picture, as it shall be written; may be empty
}

// Files makes the files. The same arguments give the same bytes.
func Files(p *plan.Plan, findings []check.Finding, o Options) ([]File, error) {
	if len(o.Kinds) == 0 {
		o.Kinds = Kinds()
	}
	if o.Den <= 0 {
		o.Den = 10
	}
	if o.Spare == 0 {
		o.Spare = list.DefaultSpare
	}
	m := &maker{p: p, o: o}
	for _, k := range o.Kinds {
		switch k {
		case SVG:
			m.svgs()
		case DXF:
			m.dxfs()
		case CSV:
			m.tables(findings)
		case JSON:
			m.add("plan.json", func(w io.Writer) error { return list.PlanJSON(w, p) })
		case Picture:
			m.picture()
		default:
			m.fail(fmt.Errorf("“%s” is not a kind of file: choose among %s", k, KindNames()))
		}
	}
	return m.files, m.err
}

// KindNames are the names of all kinds, parted by commas.
func KindNames() string {
	var all []string
	for _, k := range Kinds() {
		all = append(all, string(k))
	}
	return strings.Join(all, ", ")
}

type maker struct {
	p     *plan.Plan
	o     Options
	files []File
	err   error
}

func (m *maker) fail(err error) {
	if m.err == nil {
		m.err = err
	}
}

func (m *maker) add(name string, write func(io.Writer) error) {
	var b bytes.Buffer
	if err := write(&b); err != nil {
		m.fail(fmt.Errorf("%s: %w", name, err))
		return
	}
	m.files = append(m.files, File{name, b.Bytes()})
}

func (m *maker) svgs() {
	write := func(name string, d *drawing.Drawing, den int64) {
		m.add(name+".svg", func(w io.Writer) error { return svg.Write(w, d, svg.Options{Den: den, Say: m.o.Say}) })
	}
	write("elevation", view.Elevation(m.p, view.ElevationOptions{Chains: true}), m.o.Den)
	for i := range m.p.Cabinets {
		for j := range m.p.Cabinets[i].Bays {
			b := &m.p.Cabinets[i].Bays[j]
			if b.Count > 0 {
				write(fmt.Sprintf("section-%02d-%02d", i+1, j+1), view.Section(m.p, b.Place), m.o.Den)
			}
		}
	}
	m.eachFront(func(f *plan.Front, name string) {
		d := view.Rear(f)
		d.Add(faceNote(belowAll(d, m.o.Say), rearNote()))
		write(name, d, 1)
	})
	m.eachFace(func(c *sheet.CarcassFace, name string) {
		d := c.Drawing()
		d.Add(faceNote(belowAll(d, m.o.Say), insideNote(c)))
		write(name, d, 1)
	})
}

func (m *maker) dxfs() {
	m.add("elevation.dxf", func(w io.Writer) error {
		return dxf.Write(w, view.Elevation(m.p, view.ElevationOptions{Chains: true}), dxf.Options{Say: m.o.Say, Layer: pictureLayer})
	})
	m.eachFront(func(f *plan.Front, name string) {
		d, layer := FrontForMachine(f)
		m.add(name+".dxf", func(w io.Writer) error {
			return dxf.Write(w, d, dxf.Options{Say: m.o.Say, Layer: layer, TextHeight: noteHeight})
		})
	})
	m.eachFace(func(c *sheet.CarcassFace, name string) {
		d, layer := FaceForMachine(c)
		m.add(name+".dxf", func(w io.Writer) error {
			return dxf.Write(w, d, dxf.Options{Say: m.o.Say, Layer: layer, TextHeight: noteHeight})
		})
	})
}

// picture is the client sheet in pixels.
func (m *maker) picture() {
	pages := sheet.ClientSheet(m.p, sheet.Options{Paper: m.o.Paper, Say: m.o.Say, Date: m.o.Date}).Pages
	m.add("client-sheet.png", func(w io.Writer) error {
		png, err := picture.PNG(&pages[0], m.o.Say, cmp.Or(m.o.Pixels, picture.DefaultPixels))
		if err == nil {
			_, err = w.Write(png)
		}
		return err
	})
}

// pictureLayer leaves out what is only there to be taken hold of on a screen.
func pictureLayer(m drawing.Mark) string {
	t := drawing.TagOf(m).Meaning
	if t == drawing.Grip {
		return ""
	}
	return t.String()
}

func (m *maker) tables(findings []check.Finding) {
	say := list.ForFiles(m.o.Say)
	for _, t := range list.All(m.p, findings, say, m.o.Spare) {
		m.add(t.Name+".csv", func(w io.Writer) error { return t.CSV(w, say) })
	}
}

// eachFront goes through the fronts that are drilled. The file's name tells which
// face lies up, as it is all that is seen of it in a machine's list.
func (m *maker) eachFront(do func(f *plan.Front, name string)) {
	for i := range m.p.Fronts {
		if f := &m.p.Fronts[i]; len(f.Holes)+len(f.HandleHoles) > 0 {
			do(f, fileName(fmt.Sprintf("front-%02d-%s", f.Number, f.Name))+"-rear-face")
		}
	}
}

func (m *maker) eachFace(do func(c *sheet.CarcassFace, name string)) {
	faces := sheet.CarcassFaces(m.p)
	for i := range faces {
		do(&faces[i], fileName(fmt.Sprintf("side-%02d-%s", i+1, faces[i].Name))+"-inside-face")
	}
}

// fileName makes a text a name that every file system takes: letters and digits
// of ASCII, others become a hyphen. Numbers before it keep it unique.
func fileName(s string) string {
	var b strings.Builder
	for _, r := range s {
		switch {
		case r >= 'a' && r <= 'z', r >= 'A' && r <= 'Z', r >= '0' && r <= '9':
			b.WriteRune(r)
		case b.Len() > 0 && !strings.HasSuffix(b.String(), "-"):
			b.WriteByte('-')
		}
		if b.Len() >= 60 {
			break
		}
	}
	return strings.TrimRight(b.String(), "-")
}
