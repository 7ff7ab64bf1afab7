package main

import (
	"context"
	"maps"
	"slices"
	"time"

	"frontlay/model/store"
	"frontlay/model/yamlfile"
)

// lookEvery is how often files that are watched are looked at. They are read whole each
// time, and only what is in them counts: so it does not matter how an editor saves, in
// place or by putting another file of the name there.
const lookEvery = 300 * time.Millisecond

// seen are the files that a project was read from, those that were missing too. Those
// of nil are not kept.
type seen struct{ paths []string }

func (s *seen) note(path string) {
	if s != nil && !slices.Contains(s.paths, path) {
		s.paths = append(s.paths, path)
	}
}

// watch does a thing once, and again at a tick where one of the files that it saw has
// become another. It ends with the context, and gives the code of the last time.
func watch(ctx context.Context, tick <-chan time.Time, once func(from *seen) int) int {
	code, known := exitFine, map[string]store.Stamp(nil)
	for {
		// Stamps are taken before the reading: what changes meanwhile shows at the next tick.
		now := stamps(known)
		if known == nil || !maps.EqualFunc(known, now, store.Stamp.Same) {
			var from seen
			code, known = once(&from), map[string]store.Stamp{}
			for _, path := range from.paths {
				stamp, was := now[path]
				if !was {
					stamp = stampOf(path)
				}
				known[path] = stamp
			}
		}
		select {
		case <-ctx.Done():
			return code
		case <-tick:
		}
	}
}

// stamps are those that files have now.
func stamps(of map[string]store.Stamp) map[string]store.Stamp {
	now := make(map[string]store.Stamp, len(of))
	for path := range of {
		now[path] = stampOf(path)
	}
	return now
}

// stampOf tells the state of a file; one that can't be read is as one that is not there.
func stampOf(path string) store.Stamp {
	_, stamp, _ := store.Read(store.OS{}, path, yamlfile.MaxBytes)
	return stamp
}
