package main

import (
	"bytes"
	"io"
	"log/slog"
	"math/rand/v2"
	"os"
	"path/filepath"
	"runtime"
	"strconv"
	"testing"

	"frontlay/layout/sheet"
	"frontlay/model"
	"frontlay/model/edit"
	"frontlay/model/length"
	"frontlay/pdfout"
	"frontlay/ui/session"
	"frontlay/ui/work"
)

// TestSoak works on one project in one process for long: random edits with undo
// and redo, a save every fifty, a print every thousand. Memory stays flat, no
// descriptor is left open, and the file is the project each time.
// FRONTLAY_SOAK sets the number of edits; 3,000 where it is not set.
func TestSoak(t *testing.T) {
	edits := 3000
	if n, err := strconv.Atoi(os.Getenv("FRONTLAY_SOAK")); err == nil {
		edits = n
	}
	const seed = 20260314
	t.Logf("%d edits, seed %d", edits, seed)
	s := newSoak(t, rand.New(rand.NewPCG(seed, seed)))
	s.run(edits / 3)
	before, open := s.measure()
	s.run(edits - edits/3)
	after, stillOpen := s.measure()
	t.Logf("heap %d kB after a third, %d kB at the end; descriptors %d and %d; %d done, %d refused", before>>10, after>>10, open, stillOpen, s.done, s.refused)
	if after > before+before/2+4<<20 {
		t.Errorf("the heap grew from %d to %d bytes", before, after)
	}
	if stillOpen > open {
		t.Errorf("%d descriptors are open, %d were before", stillOpen, open)
	}
	if s.done < edits/2 {
		t.Errorf("only %d of %d edits could be made", s.done, edits)
	}
}

type soak struct {
	t             *testing.T
	r             *rand.Rand
	work          *work.Work
	session       *session.Session
	step          int
	done, refused int
}

func newSoak(t *testing.T, r *rand.Rand) *soak {
	keeper := keeperIn(t.TempDir(), slog.New(slog.NewTextHandler(io.Discard, nil)))
	s := &soak{t: t, r: r, work: keeper.Begin(&model.Project{})}
	if o := s.work.Example("glaze-bench"); !o.Done {
		t.Fatal(o.Err)
	}
	if o := s.work.SaveTo(filepath.Join(t.TempDir(), "soak.yaml")); !o.Done {
		t.Fatal(o.Err)
	}
	s.session = s.work.Session()
	t.Cleanup(func() {
		if err := s.work.Close(); err != nil {
			t.Error(err)
		}
	})
	return s
}

func (s *soak) run(n int) {
	for range n {
		s.step++
		switch {
		case s.step%7 == 0:
			s.session.Undo()
		case s.step%11 == 0:
			s.session.Redo()
		default:
			if s.session.Do(s.edit()) != nil {
				s.refused++
			} else {
				s.done++
			}
		}
		s.work.Note(s.session.Committed())
		if s.step%50 == 0 {
			s.save()
		}
		if s.step%1000 == 0 {
			s.print()
		}
	}
}

// edit draws a change somewhere in the project.
func (s *soak) edit() edit.Edit {
	p := s.session.Committed()
	at := model.Place{Cabinet: s.r.IntN(len(p.Cabinets))}
	at.Bay = s.r.IntN(len(p.Cabinets[at.Cabinet].Bays))
	at.Front = s.r.IntN(len(p.Cabinets[at.Cabinet].Bays[at.Bay].Fronts))
	fronts := len(p.Cabinets[at.Cabinet].Bays[at.Bay].Fronts)
	mm := func(lo, hi int64) length.Length { return length.MM(lo + s.r.Int64N(hi-lo)) }
	switch s.r.IntN(9) {
	case 0:
		return edit.SetHeight{At: at, Height: mm(100, 300)}
	case 1:
		return edit.SetShare{At: at, Share: 0.5 + s.r.Float64()}
	case 2:
		d := mm(0, 20)
		return edit.Set{At: at, Key: "drop", Value: d}
	case 3:
		return edit.SetDrawer{At: at, Drawer: model.DrawerAuto}
	case 4:
		return edit.Set{At: at, Key: "name", Value: "Front " + strconv.Itoa(s.r.IntN(1000))}
	case 5:
		if fronts > 6 {
			return edit.RemoveFront{At: at}
		}
		return edit.AddFront{At: at}
	case 6:
		if fronts > 2 {
			return edit.RemoveFront{At: at}
		}
		return edit.SetKind{At: at, Kind: model.Kind(s.r.IntN(3))}
	case 7:
		return edit.Set{At: at, Key: "cover", Value: mm(0, 12)}
	default:
		at.Bay, at.Front = -1, -1
		return edit.SetCabinet(at, "height", mm(600, 900))
	}
}

func (s *soak) save() {
	p := s.session.Committed()
	if o := s.work.Save(); !o.Done {
		s.t.Fatalf("step %d: %v", s.step, o.Err)
	}
	back, err := openProject(s.work.Path(), false, nil)
	if err != nil {
		s.t.Fatalf("step %d: %v", s.step, err)
	}
	if len(back.Project.Cabinets) != len(p.Cabinets) {
		s.t.Fatalf("step %d: another project was read", s.step)
	}
}

func (s *soak) print() {
	r := s.session.CommittedResult()
	var pdf bytes.Buffer
	if err := pdfout.Write(&pdf, sheet.Make(r.Plan, r.Findings, sheet.Options{}), pdfout.Options{}); err != nil {
		s.t.Fatalf("step %d: %v", s.step, err)
	}
}

// measure gives the bytes in use and, where the system tells, the open
// descriptors.
func (s *soak) measure() (heap uint64, descriptors int) {
	runtime.GC()
	runtime.GC()
	var m runtime.MemStats
	runtime.ReadMemStats(&m)
	if fds, err := os.ReadDir("/proc/self/fd"); err == nil {
		descriptors = len(fds)
	}
	return m.HeapAlloc, descriptors
}
