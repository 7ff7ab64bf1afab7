package disk

import "time"

// lookPatience is how long Changed waits for the file system. A folder on a
// network that is gone can keep a program waiting for minutes.
const lookPatience = 200 * time.Millisecond

// look is what was found of a file.
type look struct {
	path       string
	known, now Stamp
	err        error
}

// Changed tells what another program made of the file since it was read or
// saved here, nil where it is as it was. It can be asked every second, also by
// the goroutine that draws the window: where the file system does not answer
// soon, it is nil until it does.
func (d *Document) Changed() *Changed {
	d.mu.Lock()
	if d.path == "" {
		d.mu.Unlock()
		return nil
	}
	answer := d.looking
	if answer == nil {
		answer = make(chan look, 1)
		d.looking = answer
		l := look{path: d.path, known: d.known}
		go func() {
			l.now, l.err = StampOf(d.desk.FS, l.path, l.known)
			answer <- l
		}()
	}
	d.mu.Unlock()
	select {
	case l := <-answer:
		return d.seen(l)
	case <-d.desk.Journal.After(lookPatience):
		return nil
	}
}

// seen tells what a look means now; the document may have been saved since.
func (d *Document) seen(l look) *Changed {
	d.mu.Lock()
	defer d.mu.Unlock()
	d.looking = nil
	if l.err != nil || l.path != d.path || !l.known.Same(d.known) || l.now.Same(d.known) {
		return nil // a file that can't be read just now is told when it is saved
	}
	return &Changed{Path: d.path, Now: l.now}
}
