package main

import (
	"bytes"
	"encoding/binary"
	"image"
	"image/png"
	"os"
	"path/filepath"
	"strings"

	"golang.org/x/image/draw"

	"frontlay/assets"
)

// mingw is what Debian's C compiler for Windows and its tools begin with.
const mingw = "x86_64-w64-mingw32-"

// windowsResource writes what a program for Windows carries of itself, its icon, its
// version and how it wants to be started, as an object file to link.
func windowsResource(to, version string) error {
	icon, err := ico(assets.IconPNG())
	if err != nil {
		return err
	}
	dir, err := os.MkdirTemp("", "frontlay-resource")
	if err != nil {
		return err
	}
	defer os.RemoveAll(dir)
	script := strings.NewReplacer("{{numbers}}", strings.ReplaceAll(version, ".", ",")+",0", "{{version}}", version).Replace(string(own("frontlay.rc")))
	for name, data := range map[string][]byte{"frontlay.ico": icon, "frontlay.manifest": own("frontlay.manifest"), "frontlay.rc": []byte(script)} {
		if err := os.WriteFile(filepath.Join(dir, name), data, 0o666); err != nil {
			return err
		}
	}
	_, err = output(mingw+"windres", "-I", dir, filepath.Join(dir, "frontlay.rc"), "-O", "coff", "-o", to)
	return err
}

// iconEdges are the edges of the pictures in an icon of Windows, in pixels, as its
// desktop shows them.
var iconEdges = []int{16, 24, 32, 48, 256}

// ico is a picture as an icon of Windows: pictures of several sizes, the small ones as
// bitmaps, the largest as PNG.
func ico(picture []byte) ([]byte, error) {
	whole, err := png.Decode(bytes.NewReader(picture))
	if err != nil {
		return nil, err
	}
	var head, body bytes.Buffer
	put := func(b *bytes.Buffer, values ...any) {
		for _, v := range values {
			_ = binary.Write(b, binary.LittleEndian, v) // a buffer takes everything
		}
	}
	put(&head, uint16(0), uint16(1), uint16(len(iconEdges)))
	at := 6 + 16*len(iconEdges)
	for _, edge := range iconEdges {
		data := picture
		if edge != whole.Bounds().Dx() {
			small := image.NewNRGBA(image.Rect(0, 0, edge, edge))
			draw.CatmullRom.Scale(small, small.Bounds(), whole, whole.Bounds(), draw.Src, nil)
			var dib bytes.Buffer
			put(&dib, uint32(40), int32(edge), int32(2*edge), uint16(1), uint16(32), [6]uint32{})
			for y := edge - 1; y >= 0; y-- {
				for x := range edge {
					c := small.NRGBAAt(x, y)
					put(&dib, [4]byte{c.B, c.G, c.R, c.A})
				}
			}
			dib.Write(make([]byte, (edge+31)/32*4*edge)) // the mask of old systems: all is seen
			data = dib.Bytes()
		}
		put(&head, byte(edge), byte(edge), uint16(0), uint16(1), uint16(32), uint32(len(data)), uint32(at+body.Len()))
		body.Write(data)
	}
	return append(head.Bytes(), body.Bytes()...), nil
}
