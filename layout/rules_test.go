package layout_test

import (
	"os"
	"path/filepath"
	"regexp"
	"slices"
	"strings"
	"testing"

	"frontlay/layout"
	"frontlay/layout/check"
	"frontlay/layout/drawing"
	"frontlay/layout/projecttest"
	"frontlay/layout/sheet"
	"frontlay/model"
	"frontlay/model/length"
	"frontlay/model/message"
)

// TestEveryRuleHasItsTwoProjects holds each rule to a project that breaks it and
// nothing else, and to one at its exact limit that breaks nothing.
func TestEveryRuleHasItsTwoProjects(t *testing.T) {
	for _, r := range check.Rules() {
		t.Run(r.Name, func(t *testing.T) {
			folder := filepath.Join("..", "testdata", "rules", r.Name)
			flagged := layout.Solve(projecttest.Read(t, filepath.Join(folder, "flagged.yaml"))).Findings
			if len(flagged) == 0 {
				t.Errorf("flagged.yaml has no finding")
			}
			for _, f := range flagged {
				if f.Rule != r.Name {
					t.Errorf("flagged.yaml breaks %s too: %v", f.Rule, f.What)
				}
				if f.What.Empty() || f.Change.Empty() || f.Where.Empty() {
					t.Errorf("the finding does not say what, where, or what to change: %+v", f)
				}
			}
			for _, f := range layout.Solve(projecttest.Read(t, filepath.Join(folder, "clean.yaml"))).Findings {
				t.Errorf("clean.yaml breaks %s: %v: %v", f.Rule, f.Where, f.What)
			}
		})
	}
	folders, err := os.ReadDir(filepath.Join("..", "testdata", "rules"))
	if err != nil {
		t.Fatal(err)
	}
	if len(folders) != len(check.Rules()) {
		t.Errorf("%d folders of projects for %d rules", len(folders), len(check.Rules()))
	}
}

// TestFrontShortOfTheCarcass: where a reveal is wider than the side is thick, the
// words do not speak of an overlay that is less than nothing.
func TestFrontShortOfTheCarcass(t *testing.T) {
	p := projecttest.Read(t, filepath.Join("..", "testdata", "rules", "overlay", "clean.yaml"))
	p.Boards.Carcass.Thickness = length.MM(19)
	p.Reveals.Left = length.MM(25)
	want := "the front ends 6 mm short of the carcass at its left edge"
	var said []string
	for _, f := range layout.Solve(p).Findings {
		if f.Rule == "overlay" {
			said = append(said, f.What.String())
		}
	}
	if len(said) == 0 || !strings.HasPrefix(said[0], want) {
		t.Errorf("the findings of the overlay are %q, want %q", said, want)
	}
}

// The templates of a project that breaks a rule tell not to drill exactly where
// the rule forbids it: nothing beside the rules decides that.
func TestTemplatesForbidWhatTheRuleForbids(t *testing.T) {
	for _, r := range check.Rules() {
		p := projecttest.Read(t, filepath.Join("..", "testdata", "rules", r.Name, "flagged.yaml"))
		solved := layout.Solve(p)
		forbidden := map[check.Work]bool{}
		for _, page := range sheet.TemplateFile.Document(solved.Plan, solved.Findings, sheet.Options{}).Pages {
			for _, placed := range page.Drawings() {
				for _, m := range placed.Drawing.Marks {
					text, ok := m.(*drawing.Text)
					if ok && strings.Contains(text.Say.String(), "DO NOT") { // lines are broken
						work := check.Drilling
						if page.Kind == string(sheet.RunnerTemplates) {
							work = check.Screwing
						}
						forbidden[work] = true
					}
				}
			}
		}
		for _, w := range []check.Work{check.Drilling, check.Screwing} {
			if want := r.Severity == check.Error && r.Forbids == w; forbidden[w] != want {
				t.Errorf("%s: the templates forbid work %d: %v, the rule: %v", r.Name, w, forbidden[w], want)
			}
		}
	}
}

// TestSeverityAndAcceptance: a project can turn a rule down or off, and accept a
// finding with a reason.
func TestSeverityAndAcceptance(t *testing.T) {
	p := projecttest.Read(t, filepath.Join("..", "testdata", "rules", "cover-below", "flagged.yaml"))
	first := layout.Solve(p).Findings[0]
	p.Checks.Severity["cover-below"] = "advice"
	if f := layout.Solve(p).Findings[0]; f.Severity != check.Advice {
		t.Errorf("severity is %v, want advice", f.Severity)
	}
	p.Checks.Severity["cover-below"] = check.SeverityOff
	if n := len(layout.Solve(p).Findings); n != 0 {
		t.Errorf("%d findings of a rule that is off", n)
	}
	delete(p.Checks.Severity, "cover-below")
	a := check.Acceptance(p, &first)
	a.Reason = "the bottom is veneered"
	p.Checks.Accepted = append(p.Checks.Accepted, a)
	if f := layout.Solve(p).Findings[0]; f.Accepted != a.Reason {
		t.Errorf("accepted because %q, want %q", f.Accepted, a.Reason)
	}
}

// TestDemoIsFlawless keeps the demo free of findings but those that it accepts
// with a reason.
func TestDemoIsFlawless(t *testing.T) {
	for _, g := range layout.Solve(projecttest.Demo(t)).Findings {
		if g.Accepted == "" {
			t.Errorf("%v: %v", g.Where, g.What)
		}
	}
}

// A plain chest with a sheet of its own, and what its drawers hold given, has no
// finding: a rule that cries where nothing is wrong is soon read by nobody.
func TestAPlainChestIsFlawless(t *testing.T) {
	p := projecttest.Read(t, filepath.Join("..", "testdata", "rules", "contents", "clean.yaml"))
	p.Checks = model.Checks{}
	everySheet(p, func(s *model.HardwareSheet) { s.Sample = false })
	for i := range p.Cabinets[0].Bays[0].Fronts {
		p.Cabinets[0].Bays[0].Fronts[i].Drawer = model.DrawerAuto
	}
	for _, g := range layout.Solve(p).Findings {
		t.Errorf("%s: %v: %v", g.Rule, g.Where, g.What)
	}
}

// Source of the density: "Ch. 4: density = 1000·G·(1 + M/100) kg/m³ with G at
// moisture content M. Printed check: G 0.40 at 12 % → 448 kg/m³" (Wood Handbook,
// FPL-GTR-190); of the weight: "600×200×19 mm at 700 kg/m³ = 1.596 kg
// (computed)".
func TestFrontWeights(t *testing.T) {
	density := func(g, m float64) float64 { return 1000 * g * (1 + m/100) }
	cases := []struct {
		name               string
		w, h, thick        int64
		density, want, tol float64
	}{
		{"computed", 600, 200, 19, 700, 1.596, 1e-9},
		{"a cubic metre at 448 kg/m³", 1000, 1000, 1000, density(0.40, 12), 448, 1e-9},
		{"white oak 0.68: 761.6 kg/m³", 1000, 1000, 1000, density(0.68, 12), 761.6, 1e-9},
		{"sugar maple 0.63: 705.6 kg/m³", 500, 400, 20, density(0.63, 12), 0.5 * 0.4 * 0.02 * 705.6, 1e-9},
	}
	for _, c := range cases {
		t.Run(c.name, func(t *testing.T) {
			f := frontOf(c.w, c.h, c.thick)
			f.Made.Density = c.density
			if got := f.WeightKg(); got < c.want-c.tol || got > c.want+c.tol {
				t.Errorf("%v kg, want %v", got, c.want)
			}
		})
	}
}

// TestMessagesAreWhole says every finding of every flagged project and looks for
// verbs that found no argument.
func TestMessagesAreWhole(t *testing.T) {
	for _, r := range check.Rules() {
		for _, f := range layout.Solve(projecttest.Read(t, filepath.Join("..", "testdata", "rules", r.Name, "flagged.yaml"))).Findings {
			for _, m := range []string{f.What.String(), f.Where.String(), f.Change.String(), f.Flag.String()} {
				if strings.Contains(m, "%!") || strings.Contains(m, "{") {
					t.Errorf("%s: %q", r.Name, m)
				}
			}
		}
	}
}

// What is advised and the button that follows say the same figure, and nothing is
// said twice: the name of a front that has none is its number.
func TestAdviceAndButtonSayTheSame(t *testing.T) {
	figure := regexp.MustCompile(`-?[0-9.]+ (mm|kg)`)
	compared := 0
	for _, r := range check.Rules() {
		for _, named := range []bool{true, false} {
			p := projecttest.Read(t, filepath.Join("..", "testdata", "rules", r.Name, "flagged.yaml"))
			for i := range p.Cabinets {
				for j := range p.Cabinets[i].Bays {
					for k := range p.Cabinets[i].Bays[j].Fronts {
						if f := &p.Cabinets[i].Bays[j].Fronts[k]; !named && r.Name != "line-up" {
							f.Name = ""
						}
					}
				}
			}
			solved := layout.Solve(p)
			for _, f := range solved.Findings {
				for _, m := range []message.Message{f.Where, f.What, f.Change, f.Flag} {
					if strings.Contains(m.String(), "(Front ") {
						t.Errorf("%s says a number twice: %v", r.Name, m)
					}
				}
				offered := layout.Offered(p, solved, f)
				if len(offered) == 0 {
					continue
				}
				said := figure.FindAllString(f.Change.String(), -1)
				told := figure.FindAllString(offered[0].Label().String(), -1)
				if len(told) == 0 {
					continue
				}
				compared++
				if !slices.ContainsFunc(told, func(s string) bool { return slices.Contains(said, s) }) {
					t.Errorf("%s advises %q and offers %q", r.Name, f.Change, offered[0].Label())
				}
			}
		}
	}
	if compared < 20 {
		t.Errorf("only %d are compared", compared)
	}
}

// An accepted finding is told again where it gets worse, and does not cover the
// same rule elsewhere: not in a cabinet without a name, nor in one of the same.
func TestAcceptanceIsForOneFindingAndNoWorse(t *testing.T) {
	p := projecttest.Read(t, filepath.Join("..", "testdata", "rules", "cover-below", "flagged.yaml"))
	p.Cabinets[0].Name = ""
	p.Cabinets = append(p.Cabinets, p.Clone().Cabinets[0])
	found := layout.Solve(p).Findings
	if len(found) != 2 {
		t.Fatalf("%d findings, want one in each cabinet", len(found))
	}
	a := check.Acceptance(p, &found[0])
	a.Reason = "not seen"
	p.Checks.Accepted = []model.Accepted{a}
	found = layout.Solve(p).Findings
	if found[0].Accepted == "" || found[1].Accepted != "" {
		t.Errorf("accepted %q and %q, want the first only", found[0].Accepted, found[1].Accepted)
	}
	p.Cabinets[0].Bays[0].Fronts[1].Cover += mm
	if f := layout.Solve(p).Findings[0]; f.Accepted != "" {
		t.Error("a worse finding is still accepted")
	}
}
