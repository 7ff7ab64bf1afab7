package check

import (
	"cmp"
	"slices"

	"frontlay/layout/mark"
	"frontlay/layout/plan"
	"frontlay/model"
	"frontlay/model/length"
	"frontlay/model/message"
)

var screwGap = model.Limit{Key: "screw_gap", Title: message.New("between opposite runner screws in a partition"), Usual: length.Millimetre, Greatest: 200 * length.Millimetre}

var partitionScrews = Rule{
	Name:     "partition-screws",
	Title:    message.New("Runner screws have room in the board"),
	Wrong:    message.New("Screws too long for the board"),
	Severity: Error,
	Forbids:  Screwing,
	Limits:   []model.Limit{screwGap},
	Doc: message.New("Runner screws come through a side or partition, or the screws of two runners on " +
		"both sides of one partition meet in it, or nearly: a board is not quite as thick as " +
		"it is called, and a screw not driven to the hair. Found is what stays between the " +
		"screws (below 0: they run into each other), needed the gap of the project's limits; " +
		"for a screw that comes through, how far it goes and the board's thickness. Use " +
		"shorter screws, move one runner up, or take a thicker partition."),
	find: findPartitionScrews,
}

// sideScrew is one screw in a board, from the front whose runner it holds.
type sideScrew struct {
	front *plan.Front
	hole  plan.SideHole
	reach length.Length
	x     length.Length // of the face that it goes into, run frame
}

func (s *sideScrew) spot() mark.Spot { return screw(s.front, &s.hole, s.x) }

// boardScrews are the screws in the boards of a cabinet, from the left side to
// the right one: into each board's left face and into its right face.
type boardScrews struct {
	thickness   []length.Length
	left, right [][]sideScrew
}

func findPartitionScrews(s *search) {
	for i := range s.plan.Cabinets {
		b := s.boards(&s.plan.Cabinets[i])
		told := map[int]bool{} // fronts whose screws come through, by number
		for k, board := range b.thickness {
			s.through(b.left[k], board, told)
			s.through(b.right[k], board, told)
			s.meet(b.left[k], b.right[k], board)
		}
	}
}

// boards gathers a cabinet's runner screws: those of a front go into the board
// at the left of the first bay that it covers and at the right of the last.
func (s *search) boards(c *plan.Cabinet) boardScrews {
	n := len(c.Bays) + 1
	b := boardScrews{make([]length.Length, n), make([][]sideScrew, n), make([][]sideScrew, n)}
	for k := range b.thickness {
		switch {
		case k == 0:
			b.thickness[k] = c.Inside.Min.X - c.Outline.Min.X
		case k <= len(c.Partitions):
			b.thickness[k] = c.Partitions[k-1].Width()
		default:
			b.thickness[k] = c.Outline.Max.X - c.Inside.Max.X
		}
	}
	for j := range c.Bays {
		n := 4 * c.Bays[j].Count // runners seldom have more screws
		b.right[j], b.left[j+1] = make([]sideScrew, 0, n), append(make([]sideScrew, 0, n), b.left[j+1]...)
		for k := c.Bays[j].First; k < c.Bays[j].First+c.Bays[j].Count; k++ {
			for f := range s.plan.Fronts[k].Drawers() {
				b.right[j] = appendScrews(b.right[j], f, f.Opening.Min.X, f.Packing.Left)
				b.left[j+f.Bays] = appendScrews(b.left[j+f.Bays], f, f.Opening.Max.X, f.Packing.Right)
			}
		}
	}
	for k := range b.thickness {
		byHeight(b.left[k])
		byHeight(b.right[k])
	}
	return b
}

// appendScrews adds a runner's screws in a board whose face is at x, as deep as they go
// into it: through packing, less, or not at all.
func appendScrews(all []sideScrew, f *plan.Front, x, packing length.Length) []sideScrew {
	for _, h := range f.Runner.Screws {
		reach := h.Depth
		if f.Sheet.Runner.ScrewReach > 0 {
			reach = f.Sheet.Runner.ScrewReach
		}
		if reach > packing {
			all = append(all, sideScrew{f, h, reach - packing, x})
		}
	}
	return all
}

func byHeight(screws []sideScrew) {
	slices.SortStableFunc(screws, func(a, b sideScrew) int { return cmp.Compare(a.hole.Y, b.hole.Y) })
}

// through reports each front once whose screws are longer than their board.
func (s *search) through(screws []sideScrew, board length.Length, told map[int]bool) {
	for _, sc := range screws {
		if sc.reach < board || told[sc.front.Number] {
			continue
		}
		told[sc.front.Number] = true
		s.front(sc.front, Finding{
			Found: sc.reach, Needed: board,
			What:   message.New("a runner screw reaches %v into a board of %v and comes through", sc.reach, board),
			Change: message.New("use screws shorter by more than %v", sc.reach-board),
			Spots:  []mark.Spot{sc.spot()},
			Flag:   message.New("Screw %v too long", sc.reach-board),
		})
	}
}

// meet reports screws of two neighbouring bays that run into each other, or nearly.
func (s *search) meet(left, right []sideScrew, board length.Length) {
	gap := screwGap.In(s.plan.Project)
	told := map[[2]int]bool{} // pairs of fronts, by number
	opposite(left, right, gap, func(a, b sideScrew) {
		both := a.reach + b.reach
		pair := [2]int{a.front.Number, b.front.Number}
		if board-both >= gap || told[pair] {
			return
		}
		told[pair] = true
		what := message.New("its runner screws meet those of front %v in the partition: %v together in a board of %v", called(b.front), both, board)
		if both < board {
			what = message.New("its runner screws leave %v to those of front %v in the partition; needed is %v", board-both, called(b.front), gap)
		}
		s.front(a.front, Finding{
			Other: b.front.Number, Found: board - both, Needed: gap, What: what,
			Spots:  []mark.Spot{a.spot(), b.spot()},
			Flag:   message.New("Screws %v too close", gap+both-board),
			Change: message.New("use screws shorter by %v together, move one runner by more than %v, or take a thicker partition", gap+both-board, clash(a, b)+gap),
		})
	})
}

// opposite calls do for the screws from both faces of a board that would come
// closer to each other than a gap if both went through it.
func opposite(left, right []sideScrew, gap length.Length, do func(a, b sideScrew)) {
	start := 0
	for _, a := range left {
		for start < len(right) && right[start].hole.Y <= a.hole.Y-clash(a, right[start])-gap {
			start++
		}
		for _, b := range right[start:] {
			near := clash(a, b) + gap
			if b.hole.Y >= a.hole.Y+near {
				break
			}
			if hypot(a.hole.Y-b.hole.Y, a.hole.Back-b.hole.Back) < near {
				do(a, b)
			}
		}
	}
}

// clash is the distance of two screws' middles below which they touch.
func clash(a, b sideScrew) length.Length { return (a.hole.Diameter + b.hole.Diameter) / 2 }

var screwReach = Rule{
	Name:     "screw-reach",
	Title:    message.New("How deep opposite runner screws go is known"),
	Wrong:    message.New("Depth of screws not known"),
	Severity: Advice,
	Forbids:  Nothing,
	Doc: message.New("Runner screws stand opposite each other in a partition, and a hardware sheet does not " +
		"say how deep its screws go: the depth of their holes was taken, and a screw can go " +
		"deeper than its hole. It is told once for the project. Found is the depth that was " +
		"taken. Write the screw's length less the runner's thickness into the sheet."),
	find: findScrewReach,
}

func findScrewReach(s *search) {
	gap, told := screwGap.In(s.plan.Project), false
	for i := range s.plan.Cabinets {
		b := s.boards(&s.plan.Cabinets[i])
		for k := range b.thickness {
			opposite(b.left[k], b.right[k], gap, func(x, y sideScrew) {
				if x.front.Sheet.Runner.ScrewReach > 0 {
					x = y
				}
				if told || x.front.Sheet.Runner.ScrewReach > 0 {
					return
				}
				told = true
				s.front(x.front, Finding{
					Found:  x.reach,
					Spots:  []mark.Spot{x.spot()},
					Flag:   message.New("How deep screws go is not known"),
					What:   message.New("its runner screws have others opposite in a partition, and the hardware sheet %v does not say how deep they go; taken is the depth of their holes, %v", x.front.Sheet.Name, x.reach),
					Change: message.New("write how deep the runner screws go into the hardware sheet: the screw’s length less the runner’s thickness"),
				})
			})
		}
	}
}
