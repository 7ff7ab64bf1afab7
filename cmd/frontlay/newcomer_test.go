package main

import (
	"fmt"
	"os"
	"path/filepath"
	"slices"
	"strings"
	"testing"
	"time"

	"gopkg.in/yaml.v3"
)

// mostActions is how many actions the job of a newcomer may take: two thirds of the
// 89 that it took when it was first counted.
const mostActions = 59

// newcomer does a job in the real window and counts the actions: a click, a drag, a
// turn of the wheel, a typed entry with the Enter or Tab that ends it, a key or a
// shortcut.
type newcomer struct {
	*desktop
	name    string // of the way
	part    string
	parts   []string
	actions map[string]int
}

// begin begins a part of the job.
func (n *newcomer) begin(part string) {
	n.part = part
	n.parts = append(n.parts, part)
}

// count counts an action and logs it.
func (n *newcomer) count(format string, args ...any) {
	n.t.Helper()
	n.actions[n.part]++
	n.t.Logf("%s %d: %s", n.part, n.actions[n.part], fmt.Sprintf(format, args...))
}

// total is how many actions there were.
func (n *newcomer) total() int {
	n.t.Helper()
	sum := 0
	var each []string
	for _, p := range n.parts {
		sum += n.actions[p]
		each = append(each, fmt.Sprintf("%s %d", p, n.actions[p]))
	}
	n.t.Logf("%d actions: %s", sum, strings.Join(each, ", "))
	return sum
}

// settled is long enough for the window to tell where the keys have got to.
const settled = 350 * time.Millisecond

func (n *newcomer) press(what string) {
	n.t.Helper()
	n.count("click %s", what)
	x, y := n.centre(what)
	n.point(x-3, y)
	n.point(x, y)
	n.x("click", "1")
}

func (n *newcomer) hit(key string) {
	n.t.Helper()
	n.count("key %s", key)
	n.x("key", key)
}

// enter types an entry and the key that ends it.
func (n *newcomer) enter(text, end string) {
	n.t.Helper()
	n.count("type %s and %s", text, end)
	n.x("type", "--delay", "15", "--", text)
	n.x("key", end)
}

// focused waits until a thing has the keys.
func (n *newcomer) focused(what string) {
	n.t.Helper()
	n.until(what+" has the keys", func(r report) bool { return r.Focused == what })
}

// asks waits until a question with an answer is asked.
func (n *newcomer) asks(answer string) {
	n.t.Helper()
	n.until(answer+" can be answered", func(r report) bool { return r.has("over " + answer) })
}

// paper are the figures of the maker's paper that the newcomer has in hand, in
// groups as the page of hardware has them. They are invented.
var paper = [][]struct{ figure, text string }{
	{
		{"side_clearance", "13"}, {"runner.least_height", "2"}, {"runner.clearance_above", "7"}, {"runner.setback", "4"},
		{"runner.clearance_behind", "11"},
	},
	{{"runner.lengths[].length 1", "450"}, {"runner.lengths[].load 1", "40"}, {"runner.lengths[].screws 1", "37, 261"}},
	{{"connector.inset", "21"}, {"connector.diameter", "8"}, {"connector.depth", "11"}},
	{{"drawers[].name 1", "plain"}, {"drawers[].side_top 1", "94"}, {"drawers[].holes 1", "46, 78"}},
	{{"drawers[].back_top", "84"}},
	{{"bottom.underside", "2"}, {"bottom.thickness", "15"}, {"bottom.deduct_width", "58"}, {"bottom.deduct_length", "17"}},
	{{"back.thickness", "15"}, {"back.deduct_width", "68"}},
}

// hardware enters the paper in a sheet that has just been made. lead leads to the
// first figure of a group that has not got the keys from the one before.
func (n *newcomer) hardware(lead func(field string)) {
	n.t.Helper()
	for i, group := range paper {
		for j, p := range group {
			field := "figure " + p.figure
			if i > 0 && j == 0 {
				lead(field)
			}
			n.focused(field)
			n.enter(p.text, "Tab")
			n.until(field+" has been left", func(r report) bool { return r.Focused != field })
		}
	}
	n.shoot(n.name + " hardware")
}

// seen tells that a field is in the column of fields, where it can be clicked.
func (n *newcomer) seen(field string) bool {
	p := n.read().Places[field]
	const top, bottom = 140, 645
	return p.Y > top && p.Y+p.Height < bottom
}

// turnTo clicks a field of the page of hardware, and turns the wheel before where it
// is not in sight, until it is well up.
func (n *newcomer) turnTo(field string) {
	n.t.Helper()
	if !n.seen(field) {
		n.count("turn the wheel to %s", field)
		at := n.read().Places[field]
		n.point(int(at.X+at.Width)+5, 400) // beside the fields: one with the keys would step
		for range 60 {
			was := n.read().Places[field].Y
			if was < 220 {
				break
			}
			n.x("click", "5")
			wait := 15 * time.Second // a busy machine is slow to turn
			if n.seen(field) {
				wait = time.Second
			}
			for until := time.Now().Add(wait); n.read().Places[field].Y == was && time.Now().Before(until); {
				time.Sleep(30 * time.Millisecond)
			}
			if n.read().Places[field].Y == was {
				break // the end of the column
			}
		}
	}
	n.press(field)
}

// way is how a newcomer does what can be done by mouse and by keys.
type way struct {
	name   string
	mouse  bool                                   // alone, but for what has to be typed
	choose func(n *newcomer, what string)         // brings the keys to a field or button; a button is pressed
	front  func(n *newcomer, any ...int)          // selects one of some fronts, the first sooner than others
	order  func(n *newcomer, c *order, front int) // orders something, of a front where it is more than 0
	lead   func(n *newcomer, field string)        // to the first figure of a group
}

// TestANewcomersJob does the job of a person who has the program before them for
// the first time, with a maker's paper in hand: two cabinets of 600 and 900, four
// drawers with the lowest 240 high, a partition, three graduated drawers, an open
// niche over two drawers; their own hardware, used everywhere; a cover that fails and
// is mended; templates.
func TestANewcomersJob(t *testing.T) {
	needTools(t, "Xvfb", "openbox", "xdotool", "import", "mutool", "gcc")
	shortcut := func(n *newcomer, c *order, _ int) { n.hit(c.key) }
	press := func(n *newcomer, any ...int) { n.press(fmt.Sprintf("front %d", any[0])) }
	group := func(n *newcomer, field string) { n.keysTo(field, "ctrl+Next") }
	for _, w := range []way{
		{name: "mixed", choose: (*newcomer).press, front: press, order: shortcut, lead: group},
		{name: "keys", choose: (*newcomer).walk, front: (*newcomer).arrowsTo, order: shortcut, lead: group},
		{name: "mouse", mouse: true, choose: (*newcomer).press, front: press, order: (*newcomer).pick, lead: (*newcomer).turnTo},
	} {
		t.Run(w.name, func(t *testing.T) {
			t.Parallel()
			n := &newcomer{desktop: newDesktop(t), name: w.name, actions: map[string]int{}}
			n.x("mousemove", "1365", "767") // out of the way
			n.start()
			n.do(w)
			n.check()
			if sum := n.total(); sum > mostActions {
				t.Errorf("the job takes %d actions, more than %d", sum, mostActions)
			}
		})
	}
}

// order is what can be ordered by a key, by a button or by the menu of a front.
type order struct{ key, button, words string }

var (
	drawCabinet   = &order{"ctrl+4", "button drawcabinet", ""}
	drawPartition = &order{"ctrl+3", "button drawpartition", ""}
	makeNiche     = &order{"ctrl+shift+o", "", "Make it an open niche"}
	graduate      = &order{"ctrl+g", "", "Graduate, taller downwards"}
	divide        = &order{"ctrl+t", "", "Divide the front in two"}
	equalise      = &order{"ctrl+e", "", "Equal heights"}
	toDrawing     = &order{"F7", "page Back to the drawing", ""}
	allBays       = &order{"Return", "over All bays", ""}
	printPages    = &order{"ctrl+p", "button print", ""}
	save          = &order{"Return", "over Save", ""}
)

// pick orders by the mouse: by the button, or by the menu of a front.
func (n *newcomer) pick(c *order, front int) {
	n.t.Helper()
	if c.button != "" {
		n.press(c.button)
		return
	}
	what := fmt.Sprintf("front %d", front)
	n.count("click %s with the right button", what)
	n.point(n.centre(what))
	n.x("click", "3")
	n.press("over " + c.words)
}

// walk brings the keys to a field, or presses a button, by keys alone.
func (n *newcomer) walk(what string) {
	n.t.Helper()
	if strings.HasPrefix(what, "field ") {
		n.hit("slash")
		n.enter(strings.TrimPrefix(what, "field "), "Return")
		return
	}
	n.keysTo(what, "Tab")
	if !strings.Contains(what, "field") {
		n.hit("space")
	}
}

// do does the job.
func (n *newcomer) do(w way) {
	n.t.Helper()
	of := func(c *order, any ...int) {
		if !w.mouse { // the menu of a front selects it too
			w.front(n, any...)
			n.selected(any...)
		}
		w.order(n, c, any[0])
	}
	n.begin("cabinets")
	w.choose(n, "page field 1")
	n.focused("page field 1")
	n.enter("600", "Return")
	if w.mouse {
		n.press("page Begin with this cabinet")
	} else {
		n.hit("Return")
	}
	n.until("the desk is there", func(r report) bool { return r.has("button drawdivision") })
	n.focused("screen")
	w.order(n, drawCabinet, 0)
	n.enter("900", "Return")
	n.until("there are two cabinets", func(r report) bool { return r.has("cabinet 2") })

	n.begin("partition")
	w.order(n, drawPartition, 0)
	if w.mouse {
		n.press("cabinet 2")
		n.press("button select")
	} else {
		n.hit("Return")
	}
	n.until("there are three bays", func(r report) bool { return r.has("front 9") })

	n.begin("niche")
	of(makeNiche, 9)
	n.until("it is a niche", func(r report) bool { return slices.Equal(r.Selected, []int{9}) && !r.has("field Drop") })

	n.begin("graduated")
	of(graduate, 5, 4, 6)
	n.until("they are graduated", func(r report) bool { return r.Places["front 4"].Height > r.Places["front 6"].Height+10 })

	n.begin("drawers")
	of(divide, 1)
	n.until("there are four drawers", func(r report) bool { return r.has("front 10") })
	w.order(n, equalise, 1)
	n.enter("240", "Return")
	n.until("the lowest has its height", func(r report) bool { return r.Places["front 1"].Height > 1.3*r.Places["front 2"].Height })
	n.shoot(n.name + " cabinets")

	n.begin("hardware")
	if w.mouse {
		n.pick(&order{words: "Hardware sheets…"}, 1)
		n.press("page New…")
	} else {
		n.hit("ctrl+shift+h")
	}
	n.asks("Add to the project")
	n.enter("bench", "Return")
	n.hardware(func(field string) { w.lead(n, field) })
	w.order(n, toDrawing, 0)
	n.asks("All bays")
	w.order(n, allBays, 0)
	n.until("the desk is there", func(r report) bool { return r.has("button drawdivision") })

	n.begin("cover")
	w.front(n, 3, 2, 4)
	n.selected(3, 2, 4)
	w.choose(n, "field Drop")
	n.focused("field Drop")
	n.enter("-60", "Return")
	n.until("the check finds the cover", uncovered)
	n.t.Logf("found: %s", strings.Join(n.read().Findings, "; "))
	if w.mouse {
		n.press(n.mend())
	} else {
		n.hit("ctrl+i")
		time.Sleep(settled)
		n.hit("ctrl+h")
	}
	n.until("it is mended", func(r report) bool { return !uncovered(r) })

	n.begin("templates")
	w.order(n, printPages, 0)
	w.choose(n, "page Write PDF…")
	n.asks("Save")
	w.order(n, save, 0)
}

// selected waits until one of some fronts is selected.
func (n *newcomer) selected(any ...int) {
	n.t.Helper()
	n.until(fmt.Sprintf("one of %v is selected", any), func(r report) bool {
		return len(r.Selected) == 1 && slices.Contains(any, r.Selected[0])
	})
}

// mend finds the button that mends.
func (n *newcomer) mend() string {
	n.t.Helper()
	found := ""
	n.until("the cover can be mended", func(r report) bool {
		for name := range r.Places {
			if strings.HasPrefix(name, "card Mend: Drop") {
				found = name
			}
		}
		return found != ""
	})
	return found
}

// keysTo presses a key until a thing has the keys.
func (n *newcomer) keysTo(what, key string) {
	n.t.Helper()
	n.until(what+" is there", func(r report) bool { return r.has(what) })
	for range 40 {
		at := n.read().Focused
		if at == what {
			return
		}
		n.hit(key)
		n.until("the keys are elsewhere", func(r report) bool { return r.Focused != at || r.Focused == "" })
		time.Sleep(settled) // what has no name is told as nothing
	}
	n.t.Fatalf("%s does not lead to %s", key, what)
}

// arrowsTo goes to the first of some fronts by the arrow keys, no further than to any.
func (n *newcomer) arrowsTo(any ...int) {
	n.t.Helper()
	for range 12 {
		r := n.read()
		to, key := r.Places[fmt.Sprintf("front %d", any[0])], "Down"
		if len(r.Selected) == 1 {
			at := r.Places[fmt.Sprintf("front %d", r.Selected[0])]
			switch {
			case slices.Contains(any, r.Selected[0]):
				return
			case to.X > at.X+5:
				key = "Right"
			case to.X < at.X-5:
				key = "Left"
			case to.Y < at.Y:
				key = "Up"
			}
		}
		n.hit(key)
		n.until("another front is selected", func(now report) bool { return !slices.Equal(now.Selected, r.Selected) })
	}
}

// uncovered tells that a drawer bottom shows.
func uncovered(r report) bool {
	return strings.Contains(strings.Join(r.Findings, " "), "needed is a cover of")
}

// check waits for the templates and measures them, and saves the project to see that
// it is the one that was wanted.
func (n *newcomer) check() {
	n.t.Helper()
	var pdf []string
	n.until("the templates are written", func(r report) bool {
		pdf, _ = filepath.Glob(filepath.Join(n.home, "*-templates.pdf"))
		return len(pdf) == 1 && strings.Contains(r.Status, ".pdf")
	})
	measureBars(n.t.(*testing.T), pdf[0])
	n.shoot(n.name + " templates")
	n.key("ctrl+s")
	n.asks("Save")
	n.key("ctrl+a")
	n.write("job")
	n.key("Return")
	saved := filepath.Join(n.home, "job.yaml")
	n.until("the project is saved", func(r report) bool {
		return strings.HasPrefix(r.Title, "New cabinet –") && !strings.Contains(r.Title, "not saved")
	})
	data, err := os.ReadFile(saved)
	if err != nil {
		n.t.Fatal(err)
	}
	var p job
	if err := yaml.Unmarshal(data, &p); err != nil {
		n.t.Fatal(err)
	}
	var cabinets []string
	for _, c := range p.Cabinets {
		cabinets = append(cabinets, c.String())
	}
	want := []string{
		"600: equal by bench: 240, equal drawer, equal drawer, equal drawer",
		"900: ratio by bench: equal drawer, equal drawer, equal drawer | equal by bench: equal drawer, equal drawer, equal open",
	}
	if !slices.Equal(cabinets, want) {
		n.t.Errorf("the cabinets are %q, want %q", cabinets, want)
	}
	for _, group := range paper {
		for _, f := range group {
			if is := inSheet(p.Hardware["bench"], strings.TrimSuffix(f.figure, " 1")); is != f.text {
				n.t.Errorf("%s is %q in the sheet, %q on the paper", f.figure, is, f.text)
			}
		}
	}
	if n.t.Failed() {
		n.t.Logf("%s", data)
	}
}

// job is what is asked of the project that was saved, by names of its file.
type job struct {
	Hardware map[string]any
	Cabinets []jobCabinet
}

type jobCabinet struct {
	Width float64
	Bays  []struct {
		Hardware string
		Division struct{ Rule string }
		Fronts   []struct {
			Kind, Drawer  string
			Height, Share float64
		}
	}
}

// String is a cabinet in words: the rule and the sheet of each bay, and its fronts
// from the bottom.
func (c jobCabinet) String() string {
	var bays []string
	for _, b := range c.Bays {
		var fronts []string
		for _, f := range b.Fronts {
			front := "front"
			switch {
			case f.Kind != "":
				front = f.Kind
			case f.Drawer == "auto":
				front = "drawer"
			}
			switch {
			case f.Height != 0:
				front = fmt.Sprint(f.Height)
			case f.Share == 1:
				front = "equal " + front
			}
			fronts = append(fronts, front)
		}
		rule := b.Division.Rule
		if rule == "" {
			rule = "equal"
		}
		bays = append(bays, rule+" by "+b.Hardware+": "+strings.Join(fronts, ", "))
	}
	return fmt.Sprint(c.Width) + ": " + strings.Join(bays, " | ")
}

// inSheet is a figure of a sheet as it is written on the paper. Of a list it is the
// first one's; of screw holes it is how far back each is.
func inSheet(sheet any, path string) string {
	at := sheet
	for _, key := range strings.Split(path, ".") {
		in, _ := at.(map[string]any)
		at = in[strings.TrimSuffix(key, "[]")]
		if all, ok := at.([]any); ok && strings.HasSuffix(key, "[]") && len(all) > 0 {
			at = all[0]
		}
	}
	all, ok := at.([]any)
	if !ok {
		return fmt.Sprint(at)
	}
	var each []string
	for _, one := range all {
		if hole, ok := one.(map[string]any); ok {
			one = hole["back"]
		}
		each = append(each, fmt.Sprint(one))
	}
	return strings.Join(each, ", ")
}
