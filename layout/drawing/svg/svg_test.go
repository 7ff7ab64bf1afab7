package svg

import (
	"bytes"
	"encoding/xml"
	"errors"
	"io"
	"strings"
	"testing"

	"frontlay/layout/drawing"
	"frontlay/layout/mark"
	"frontlay/layout/plane"
	"frontlay/model/length"
	"frontlay/model/message"
)

func everyMark() *drawing.Drawing {
	at := func(x, y int64) plane.Point { return plane.Point{X: length.MM(x), Y: length.MM(y)} }
	r := plane.R(0, 0, length.MM(40), length.MM(30))
	return &drawing.Drawing{Title: message.New("Glazes & <oxides>"), Marks: []drawing.Mark{
		&drawing.Line{From: at(0, 0), To: at(40, 10), Dashed: true},
		&drawing.Rectangle{Rect: r},
		&drawing.Rectangle{Tag: drawing.Tag{Meaning: drawing.DrawerBottom}, Rect: r.Move(at(60, 0)), Filled: true},
		&drawing.Circle{Tag: drawing.Tag{Meaning: drawing.HoleEdge}, Centre: at(20, 15), Radius: length.MM(5)},
		&drawing.Text{At: at(20, 50), Anchor: drawing.Anchor{X: 0.5, Y: 0.5}, Size: length.MM(5), Bold: true, Say: message.New("“Glaze” & %v", length.MM(5))},
		&drawing.Dimension{From: at(0, 30), To: at(40, 30), Line: length.MM(45), Value: length.MM(40), Prefix: "Ø"},
		&drawing.Hatch{Rect: r.Move(at(0, 80))},
		&drawing.Hatch{Rect: r.Move(at(60, 80)), Falling: true, Close: true},
		&drawing.Rectangle{Tag: drawing.Tag{Meaning: drawing.Grip}, Rect: r},
	}}
}

func TestEveryKindOfMark(t *testing.T) {
	var b bytes.Buffer
	if err := Write(&b, everyMark(), Options{}); err != nil {
		t.Fatal(err)
	}
	count := map[string]int{}
	var texts []string
	for dec := xml.NewDecoder(&b); ; {
		token, err := dec.Token()
		if errors.Is(err, io.EOF) {
			break
		}
		if err != nil {
			t.Fatal(err)
		}
		switch e := token.(type) {
		case xml.StartElement:
			count[e.Name.Local]++
		case xml.CharData:
			if s := strings.TrimSpace(string(e)); s != "" {
				texts = append(texts, s)
			}
		}
	}
	// Two rectangles, a grip that is not to be seen; the dimension has two heads.
	if count["rect"] != 2 || count["circle"] != 1 || count["polygon"] != 2 || count["text"] != 2 || count["line"] < 5+15 {
		t.Errorf("%v", count)
	}
	if all := strings.Join(texts, "|"); all != "Glazes & <oxides>|“Glaze” & 5 mm|Ø40" {
		t.Errorf("texts %q", all)
	}
}

func TestScaleAndSize(t *testing.T) {
	d := &drawing.Drawing{Marks: []drawing.Mark{&drawing.Rectangle{Rect: plane.R(length.MM(100), length.MM(50), length.MM(700), length.MM(250))}}}
	var b bytes.Buffer
	if err := Write(&b, d, Options{Den: 10}); err != nil {
		t.Fatal(err)
	}
	// 600 × 200 at 1:10 and 5 mm of margin all around.
	for _, want := range []string{`width="70mm" height="30mm"`, `<rect x="5" y="5" width="60" height="20"`} {
		if !strings.Contains(b.String(), want) {
			t.Errorf("no %s in\n%s", want, b.String())
		}
	}
}

func TestFaultsAreTold(t *testing.T) {
	if err := Write(failing{}, everyMark(), Options{}); err == nil {
		t.Error("a writer that fails was not told")
	}
	far := &drawing.Drawing{Marks: []drawing.Mark{&drawing.Line{To: plane.Point{X: 1 << 62}}}}
	if err := Write(io.Discard, far, Options{}); err == nil {
		t.Error("a length beyond every page was not told")
	}
}

type failing struct{}

func (failing) Write([]byte) (int, error) { return 0, io.ErrShortWrite }

// On paper, too, a mark of a finding tells its severity by its pattern, and is there
// however small its place is.
func TestSpotsTellTheSeverity(t *testing.T) {
	tiny := plane.R(0, 0, length.Nanometre, length.Nanometre)
	for shape := mark.Band; shape <= mark.Reach; shape++ {
		for _, r := range []plane.Rect{plane.R(0, 0, length.MM(40), length.MM(10)), tiny} {
			seen := map[string]drawing.Severity{}
			for _, s := range []drawing.Severity{drawing.OfError, drawing.OfWarning, drawing.OfAdvice} {
				d := &drawing.Drawing{Marks: []drawing.Mark{
					&drawing.Spot{Tag: drawing.Tag{Meaning: drawing.FindingMark, Severity: s}, Shape: shape, Rect: r},
				}}
				var b bytes.Buffer
				if err := Write(&b, d, Options{}); err != nil {
					t.Fatal(err)
				}
				if n := strings.Count(b.String(), "stroke="); n == 0 {
					t.Errorf("%v of severity %d is not drawn", shape, s)
				}
				if other, same := seen[b.String()]; same {
					t.Errorf("%v looks the same for severities %d and %d", shape, s, other)
				}
				seen[b.String()] = s
			}
		}
	}
}
