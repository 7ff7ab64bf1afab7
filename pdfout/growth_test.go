package pdfout

import (
	"fmt"
	"io"
	"runtime"
	"testing"
	"time"

	"frontlay/layout"
	"frontlay/layout/export"
	"frontlay/layout/sheet"
	"frontlay/model"
	"frontlay/model/length"
)

// longRun is a run of n fronts, bench again and again: no two cabinets are of one
// width, so that no two fronts are equal.
func longRun(n int) *model.Project {
	p := bench().Project
	one := p.Cabinets[0]
	p.Cabinets = nil
	for i := 0; i*len(bench().Fronts) < n; i++ {
		c := one
		c.Name = fmt.Sprintf("%s %d", one.Name, i+1)
		c.Width += length.Length(i) * 10 * length.Micrometre
		p.Cabinets = append(p.Cabinets, c)
	}
	return p
}

// everything makes all that a job has on paper and in files.
func everything(tb testing.TB, p *model.Project) {
	r := layout.Solve(p)
	if err := Write(io.Discard, sheet.Make(r.Plan, r.Findings, sheet.Options{Parts: sheet.Parts()}), Options{}); err != nil {
		tb.Fatal(err)
	}
	if _, err := export.Files(r.Plan, r.Findings, export.Options{}); err != nil {
		tb.Fatal(err)
	}
}

// Four times the fronts are at most five times the work, counted in what is
// allocated, which no machine's speed changes. Work that allocates nothing is in
// BenchmarkGrowth.
func TestPaperAndFilesGrowLinearly(t *testing.T) {
	count := func(n int) uint64 {
		p := longRun(n)
		var before, after runtime.MemStats
		runtime.ReadMemStats(&before)
		everything(t, p)
		runtime.ReadMemStats(&after)
		return after.Mallocs - before.Mallocs
	}
	few, many := count(60), count(240)
	if ratio := float64(many) / float64(few); ratio > 5 {
		t.Errorf("240 fronts allocate %.1f times as often as 60 (%d and %d)", ratio, many, few)
	}
}

// BenchmarkGrowth compares 1,200 fronts on paper and in files with 300, by turns:
// at most five times.
func BenchmarkGrowth(b *testing.B) {
	few, many := longRun(300), longRun(1200)
	var short, long time.Duration
	for b.Loop() {
		start := time.Now()
		everything(b, few)
		short += time.Since(start)
		start = time.Now()
		everything(b, many)
		long += time.Since(start)
	}
	b.ReportMetric(float64(long)/float64(short), "times-300")
}
