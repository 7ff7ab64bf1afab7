package view_test

import (
	"slices"
	"testing"

	"frontlay/layout/drawing"
	"frontlay/layout/plane"
	"frontlay/layout/view"
	"frontlay/model"
	"frontlay/model/length"
)

// A section through a frame of 20 mm with rails of 55 and 70, its panel of 8 mm lying 6
// back and 9 deep in the groove, worked by hand: of the panel 30 mm are shown between the
// rails, with 4 mm broken out in the middle of them.
func TestBuildSection(t *testing.T) {
	box := func(x1, y1, x2, y2 int64) plane.Rect {
		return plane.R(length.MM(x1), length.MM(y1), length.MM(x2), length.MM(y2))
	}
	frame := model.FrontBoard{Board: model.Board{Thickness: length.MM(20), Lipping: length.MM(1), Edging: model.Edging{Fronts: model.EdgeTop}}, Build: model.Build{
		Kind: model.Frame, Stile: length.MM(60), TopRail: length.MM(55), BottomRail: length.MM(70), Tenon: length.MM(12),
		Panel: model.Panel{Board: model.Board{Thickness: length.MM(8)}, Recess: length.MM(6), Groove: length.MM(9)},
	}}
	grip := model.FrontBoard{Board: model.Board{Thickness: length.MM(22)}, Build: model.Build{Kind: model.GripEdged, Edge: model.GripBottom, Height: length.MM(28), Left: length.MM(12)}}
	for name, c := range map[string]struct {
		of    model.FrontBoard
		parts []plane.Rect // that the section meets
		sizes map[string]int64
	}{
		"frame": {frame, []plane.Rect{box(0, 0, 20, 70), box(0, 100, 20, 155), box(6, 61, 14, 83), box(6, 87, 14, 109)}, map[string]int64{
			"thickness": 20, "build.stile": 60, "build.top_rail": 55, "build.bottom_rail": 70, "build.tenon": 12,
			"build.panel.thickness": 8, "build.panel.recess": 6, "build.panel.groove": 9, "lipping": 1,
		}},
		"grip": {grip, []plane.Rect{box(0, 0, 12, 28), box(0, 28, 22, 41), box(0, 45, 22, 58)}, map[string]int64{
			"thickness": 22, "build.height": 28, "build.thickness_left": 12,
		}},
		"slab": {model.FrontBoard{Board: model.Board{Thickness: length.MM(18)}}, []plane.Rect{box(0, 0, 18, 13), box(0, 17, 18, 30)}, map[string]int64{"thickness": 18}},
	} {
		t.Run(name, func(t *testing.T) {
			var parts []plane.Rect
			for _, m := range view.BuildSection(&c.of, "").Marks {
				if h, ok := m.(*drawing.Hatch); ok {
					parts = append(parts, h.Rect)
				}
			}
			if len(parts) != len(c.parts) || slices.ContainsFunc(c.parts, func(r plane.Rect) bool { return !slices.Contains(parts, r) }) {
				t.Errorf("cut is %v, want %v", parts, c.parts)
			}
			for path, want := range c.sizes {
				if got := sizes(view.BuildSection(&c.of, path), path); !slices.Equal(got, []length.Length{length.MM(want)}) {
					t.Errorf("%s is dimensioned %v, want %v mm", path, got, want)
				}
			}
		})
	}
}
