package main

import (
	"encoding/json"
	"errors"
	"fmt"
	"io/fs"
	"path/filepath"
	"slices"
	"strconv"
	"strings"
	"time"

	"frontlay/layout/plan"
	"frontlay/model/message"
	"frontlay/model/store"
)

// printedTime is how the time stands on paper, as ISO 8601 writes it but for the
// blank between.
const printedTime = "2006-01-02 15:04"

// printing is the time that stands on paper: now, or what SOURCE_DATE_EPOCH says in
// seconds since 1970 (reproducible-builds.org), so that the same project gives the
// same bytes again.
func (c console) printing() time.Time {
	if s, err := strconv.ParseInt(c.getenv("SOURCE_DATE_EPOCH"), 10, 64); err == nil {
		return time.Unix(s, 0).UTC()
	}
	return c.now()
}

// papers are where the program keeps what it has printed.
func papers() (store.Papers, error) {
	dir, err := keptIn()
	return store.Papers{FS: store.OS{}, Dir: filepath.Join(dir, "papers"), Now: time.Now()}, err
}

// keepPaper keeps what was printed, so that a stamp can tell later what changed.
func keepPaper(paper plan.Paper) error {
	if paper.Fronts == nil {
		return nil
	}
	kept, err := papers()
	if err != nil {
		return err
	}
	data, err := json.Marshal(paper)
	if err != nil {
		return err
	}
	return kept.Keep(paper.Plan.String(), data)
}

// checkStamp tells whether paper with a stamp still fits a plan, and which of its
// fronts do not.
func checkStamp(stamp string, p *plan.Plan, say message.Language, c console) int {
	var asked plan.Fingerprint
	if err := asked.UnmarshalText([]byte(stamp)); err != nil {
		fmt.Fprintln(c.err, "frontlay check:", say.Say(message.Of(err)))
		return exitFailed
	}
	now := p.Paper()
	if asked == now.Plan {
		fmt.Fprintln(c.out, say.Say(message.New("Paper with the stamp %v fits this project.", asked)))
		return exitFine
	}
	fmt.Fprintln(c.out, say.Say(message.New("Paper with the stamp %v does not fit this project as it is now; its stamp is %v.", asked, now.Plan)))
	was, err := findPaper(asked)
	switch {
	case errors.Is(err, fs.ErrNotExist):
		fmt.Fprintln(c.out, say.Say(message.New("It was not printed by you on this computer: what has changed is not known. Print it again.")))
	case err != nil:
		fmt.Fprintln(c.err, "frontlay check:", say.Say(message.Of(err)))
	default:
		for _, m := range changes(was, now) {
			fmt.Fprintln(c.out, say.Say(m))
		}
	}
	return exitFindings
}

func findPaper(stamp plan.Fingerprint) (p plan.Paper, err error) {
	kept, err := papers()
	if err != nil {
		return p, err
	}
	data, err := kept.Find(stamp.String())
	if err != nil {
		return p, err
	}
	return p, json.Unmarshal(data, &p)
}

// changes tells in sentences what differs between a paper and the plan of now.
func changes(was, now plan.Paper) []message.Message {
	var all []message.Message
	fronts := was.Changed(now)
	told := func(text string, these func(n int) bool) {
		var numbers []string
		for _, n := range fronts {
			if these(n) {
				numbers = append(numbers, strconv.Itoa(n))
			}
		}
		if len(numbers) > 0 {
			all = append(all, message.New(text, strings.Join(numbers, ", ")))
		}
	}
	told("Changed: fronts %v. Do not cut or drill them by this paper.", func(n int) bool { return n <= len(was.Fronts) && n <= len(now.Fronts) })
	told("No longer there: fronts %v.", func(n int) bool { return n > len(now.Fronts) })
	told("Not on this paper: fronts %v.", func(n int) bool { return n > len(was.Fronts) })
	switch {
	case len(fronts) == 0:
		all = append(all, message.New("Every front is as it was, and so are its holes."))
	case slices.ContainsFunc(now.Fronts, func(f plan.Fingerprint) bool { return slices.Contains(was.Fronts, f) }):
		all = append(all, message.New("All other fronts are as they were, and so are their holes."))
	}
	if was.Carcass != now.Carcass {
		return append(all, message.New("The carcasses, their boards or the screws of runners have changed."))
	}
	return append(all, message.New("The carcasses are as they were."))
}
