package layout_test

import (
	"fmt"
	"runtime"
	"runtime/debug"
	"testing"
	"time"

	"frontlay/assets"
	"frontlay/layout"
	"frontlay/layout/view"
	"frontlay/model"
	"frontlay/model/length"
	"frontlay/model/yamlfile"
)

// bigRun is a run of n fronts: cabinets of two bays with four fronts each, on
// hole rows, as a workshop builds them.
func bigRun(tb testing.TB, n int) *model.Project {
	data, ok := assets.Sheet("sample-a")
	if !ok {
		tb.Fatal("sample-a is missing")
	}
	sheet, err := yamlfile.ReadSheet("sample-a", data)
	if err != nil {
		tb.Fatal(err)
	}
	p := &model.Project{
		Hardware: []model.HardwareUse{{Name: "main", Sheet: sheet}},
		Boards: model.Boards{
			Carcass: model.Board{Thickness: 18 * mm}, Front: model.Board{Thickness: 19 * mm, Density: 700}, Back: model.Board{Thickness: 8 * mm},
		},
		Reveals:  model.Reveals{Left: 1500 * length.Micrometre, Right: 1500 * length.Micrometre, Top: 2 * mm, Gap: 3 * mm},
		HoleRows: model.HoleRows{Mode: model.RowsMoveFronts, Datum: 20 * mm},
	}
	for left := n; left > 0; {
		c := model.Cabinet{Name: fmt.Sprintf("C%d", len(p.Cabinets)+1), Width: 1000 * mm, Height: 760 * mm, Depth: 560 * mm}
		for j := 0; j < 2 && left > 0; j++ {
			b := model.Bay{Hardware: "main"}
			for k := 0; k < 4 && left > 0; k++ {
				b.Fronts = append(b.Fronts, model.Front{Share: 1 + 0.2*float64(k%2), Drawer: "auto"})
				left--
			}
			c.Bays = append(c.Bays, b)
		}
		p.Cabinets = append(p.Cabinets, c)
	}
	return p
}

func BenchmarkSolve(b *testing.B) {
	for _, n := range []int{5, 100, 1000, 10000} {
		b.Run(fmt.Sprintf("%d-fronts", n), func(b *testing.B) {
			p := bigRun(b, n)
			b.ReportAllocs()
			for b.Loop() {
				layout.Solve(p)
			}
			b.ReportMetric(float64(b.Elapsed().Nanoseconds())/float64(b.N)/float64(n), "ns/front")
		})
	}
}

// BenchmarkGrowth compares 10,000 fronts with ten times 1,000, by turns: at most
// 12 times. It does so with the collector of memory at work, whose share grows
// with what is alive and with what the caches hold, and without it, which is the
// engine alone.
func BenchmarkGrowth(b *testing.B) {
	small, large := bigRun(b, 1000), bigRun(b, 10000)
	turn := func() (ts, tl time.Duration) {
		start := time.Now()
		for range 10 {
			layout.Solve(small)
		}
		ts = time.Since(start) / 10
		start = time.Now()
		layout.Solve(large)
		return ts, time.Since(start)
	}
	b.Run("collected", func(b *testing.B) { growth(b, turn) })
	b.Run("engine-alone", func(b *testing.B) {
		defer debug.SetGCPercent(debug.SetGCPercent(-1))
		growth(b, func() (time.Duration, time.Duration) {
			runtime.GC()
			return turn()
		})
	})
}

func growth(b *testing.B, turn func() (small, large time.Duration)) {
	var ts, tl time.Duration
	for b.Loop() {
		s, l := turn()
		ts, tl = ts+s, tl+l
	}
	b.ReportMetric(float64(tl)/float64(ts), "times-1000")
}

// BenchmarkDrag is what one pointer move costs without painting: solve, check and
// draw 100 fronts.
func BenchmarkDrag(b *testing.B) {
	p := bigRun(b, 100)
	b.ReportAllocs()
	for b.Loop() {
		r := layout.Solve(p)
		view.Elevation(r.Plan, view.ElevationOptions{SeeThrough: true, Found: view.Found{All: r.Findings}})
	}
}

// TestMemoryGrowsLinearly counts the bytes that solving allocates, which do not
// depend on the machine's speed.
func TestMemoryGrowsLinearly(t *testing.T) {
	small, large := allocated(bigRun(t, 1000)), allocated(bigRun(t, 10000))
	if ratio := float64(large) / float64(small); ratio > 12 {
		t.Errorf("10,000 fronts take %.1f times the memory of 1,000 (%d and %d bytes)", ratio, large, small)
	}
}

func allocated(p *model.Project) uint64 {
	var before, after runtime.MemStats
	runtime.ReadMemStats(&before)
	layout.Solve(p)
	runtime.ReadMemStats(&after)
	return after.TotalAlloc - before.TotalAlloc
}
