package check

import (
	"sort"

	"frontlay/layout/plan"
	"frontlay/model/length"
	"frontlay/model/message"
)

// partitionScrews: runner screws come through a side or partition, or the
// screws of two runners on both sides of one partition meet in it. Found is how
// far the screws reach together, needed (at most) the board's thickness. Use
// shorter screws, move one runner up, or take a thicker partition.
func partitionScrews() Rule {
	return Rule{"partition-screws", message.New("Runner screws have room in the board"), Error, findPartitionScrews}
}

// sideScrew is one screw in a board, from the front whose runner it holds.
type sideScrew struct {
	front *plan.Front
	hole  plan.SideHole
	reach length.Length
}

func findPartitionScrews(s *search) {
	side := s.plan.Project.Boards.Carcass.Thickness
	for i := range s.plan.Cabinets {
		c := &s.plan.Cabinets[i]
		inBay := make([][]sideScrew, len(c.Bays))
		for j := range c.Bays {
			inBay[j] = s.screws(c, j)
			thin := side
			if j < len(c.Partitions) {
				thin = min(thin, c.Partitions[j].Width())
			}
			if j > 0 {
				thin = min(thin, c.Partitions[j-1].Width())
			}
			s.through(inBay[j], thin)
		}
		for j := range c.Partitions {
			s.meet(inBay[j], inBay[j+1], c.Partitions[j].Width())
		}
	}
}

// screws are those of a bay's runners, by height. The plan's holes are enough:
// both sides of a bay are drilled alike.
func (s *search) screws(c *plan.Cabinet, j int) []sideScrew {
	b := &c.Bays[j]
	all := make([]sideScrew, 0, 4*b.Count)
	for k := b.First; k < b.First+b.Count; k++ {
		f := &s.plan.Fronts[k]
		if !f.Fitted || f.Opening != b.Opening {
			continue // a drawer that spans bays has no runner at the partition
		}
		for _, h := range f.Runner.Screws {
			reach := h.Depth
			if f.Sheet.Runner.ScrewReach > 0 {
				reach = f.Sheet.Runner.ScrewReach
			}
			all = append(all, sideScrew{f, h, reach})
		}
	}
	sort.SliceStable(all, func(a, b int) bool { return all[a].hole.Y < all[b].hole.Y })
	return all
}

// through reports the first screw of a bay that is longer than its board.
func (s *search) through(screws []sideScrew, board length.Length) {
	var last *plan.Front
	for _, sc := range screws {
		if sc.reach < board || sc.front == last {
			continue
		}
		last = sc.front
		s.front(sc.front, Finding{
			Found: sc.reach, Needed: board,
			What:   message.New("a runner screw reaches %v into a board of %v and comes through", sc.reach, board),
			Change: message.New("use screws shorter by more than %v", sc.reach-board),
		})
	}
}

// meet reports screws of two neighbouring bays that run into each other.
func (s *search) meet(left, right []sideScrew, board length.Length) {
	start := 0
	told := map[[2]int]bool{} // pairs of fronts, by number
	for _, a := range left {
		for start < len(right) && right[start].hole.Y < a.hole.Y-clash(a, right[start]) {
			start++
		}
		for k := start; k < len(right) && right[k].hole.Y < a.hole.Y+clash(a, right[k]); k++ {
			b := right[k]
			if a.reach+b.reach <= board {
				continue
			}
			if hypot(a.hole.Y-b.hole.Y, a.hole.Back-b.hole.Back) >= clash(a, b) || told[[2]int{a.front.Number, b.front.Number}] {
				continue
			}
			told[[2]int{a.front.Number, b.front.Number}] = true
			s.front(a.front, Finding{
				Found: a.reach + b.reach, Needed: board,
				What:   message.New("its runner screws meet those of front %v (%v) in the partition: %v together in a board of %v", b.front.Number, b.front.Name, a.reach+b.reach, board),
				Change: message.New("use screws shorter by %v together, move one runner by more than %v, or take a thicker partition", a.reach+b.reach-board, clash(a, b)),
			})
		}
	}
}

// clash is the distance of two screws' middles below which they touch.
func clash(a, b sideScrew) length.Length { return (a.hole.Diameter + b.hole.Diameter) / 2 }
