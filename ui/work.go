package ui

import (
	"errors"
	"path/filepath"
	"time"

	"fyne.io/fyne/v2"

	"frontlay/model/message"
	"frontlay/model/store"
	"frontlay/model/yamlfile"
	"frontlay/ui/ask"
	"frontlay/ui/session"
)

// lookEvery is how often a window looks whether another program changed its
// file.
const lookEvery = 3 * time.Second

// keeper is the Files' other side, nil where they have none.
func (w *window) keeper() Keeper {
	k, _ := w.options.Files.(Keeper)
	return k
}

// openWork reads a project to work on, with its lock and journal where there is
// a keeper. The work before is closed once the new one is there.
func (w *window) openWork(path string) (*yamlfile.File, error) {
	k := w.keeper()
	if k == nil {
		return w.options.Files.Open(path)
	}
	work, f, err := k.Take(path)
	var held *store.Held
	if err != nil && !errors.As(err, &held) {
		return nil, err
	}
	w.setWork(work)
	if held != nil {
		w.later(func() { w.tellHeld(held) })
	}
	return f, nil
}

// allower is Files that read hardware sheets elsewhere only where it is allowed.
type allower interface{ Allow(path string) }

// askOutside asks whether a project may read a hardware sheet outside of its
// folder, and opens it again where it may. False where the error is another.
func (w *window) askOutside(path string, err error) bool {
	var outside *store.Outside
	files, ok := w.options.Files.(allower)
	if !ok || !errors.As(err, &outside) {
		return false
	}
	w.ask.Choose(ask.Question{Title: w.text("A hardware sheet elsewhere"), Text: w.text("This project wants to read %v, which is not in its folder.", outside.Path), Answers: []string{w.text("Read it"), w.text("Go back")}}, func(i int) {
		if i == 0 {
			files.Allow(outside.Path)
			w.openFile(path)
		}
	})
	return true
}

// newWork begins work without a file.
func (w *window) newWork() {
	if k := w.keeper(); k != nil {
		w.setWork(k.Begin())
	}
}

// setWork puts other work in the place of what was open.
func (w *window) setWork(next Work) {
	if w.work != nil {
		if err := w.work.Close(); err != nil {
			w.later(func() { w.ask.Complain(err) })
		}
	}
	w.work, w.toldOfChange = next, false
}

// later runs something when the window is there to show it.
func (w *window) later(do func()) {
	if !w.started {
		w.pending = append(w.pending, do)
		return
	}
	fyne.Do(do)
}

// begin is ready for the first window of the program, which also shows what
// earlier runs have left.
func (w *window) begin() {
	w.ready()
	if w.keeper() != nil {
		w.showReports(w.options.Reports, w.offerLeftovers)
	}
}

// ready runs what has waited for the window, once it is there.
func (w *window) ready() {
	w.started = true
	w.desk.Inspector.Begin()
	waiting := w.pending
	w.pending = nil
	for _, do := range waiting {
		do()
	}
	if w.keeper() != nil {
		go w.lookOut()
	}
}

// note hands what is not saved to the journal. A save clears that, and leaves the
// figures of a hardware sheet that are not in the project yet.
func (w *window) note(c session.Change) {
	if c&session.Document != 0 && !w.session.InGesture() || c&session.Saved != 0 && w.sheets().drafted() {
		w.journal()
	}
}

// journal hands what is there to the journal, and empties that where everything is
// saved again: it would be offered at the next start for nothing.
func (w *window) journal() {
	switch {
	case w.work == nil:
	case w.sheets().drafted() || w.session.Unsaved():
		w.work.Note(w.file, w.sheets().withDraft(w.session.Committed()))
	default:
		if err := w.work.Forget(); err != nil {
			w.ask.Complain(err)
		}
	}
}

// write saves to the work's own file, or to another one.
func (w *window) write(path string) error {
	p := w.session.Committed()
	switch {
	case w.work == nil:
		return w.options.Files.Save(path, w.file, p)
	case path == w.path:
		return w.work.Save(w.file, p)
	default:
		return w.work.SaveAs(path, w.file, p)
	}
}

// obstacle handles what stands in the way of saving and can be chosen about. It
// is false where the error is of another kind.
func (w *window) obstacle(err error, then func()) bool {
	var changed *store.Changed
	var held *store.Held
	switch {
	case w.work == nil:
		return false
	case errors.As(err, &changed):
		w.ask.Choose(ask.Question{Title: w.text("Changed by another program"), Text: w.say().Say(message.Of(err)), Answers: []string{w.text("Save mine beside it"), w.text("Keep mine"), w.text("Take theirs"), w.text("Go back")}}, func(i int) {
			switch i {
			case 0:
				w.saveAs(then)
			case 1:
				w.finishSave(w.path, w.work.Overwrite(w.file, w.session.Committed(), changed), then)
			case 2:
				w.takeTheirs()
			}
		})
	case errors.As(err, &held):
		w.ask.Choose(ask.Question{Title: w.text("Open elsewhere"), Text: w.say().Say(message.Of(err)), Answers: []string{w.text("Save mine beside it"), w.text("Save here all the same"), w.text("Go back")}}, func(i int) {
			switch i {
			case 0:
				w.saveAs(then)
			case 1:
				if err := w.work.TakeLock(); err != nil {
					w.ask.Complain(err)
					return
				}
				w.saveTo(w.path, then)
			}
		})
	default:
		return false
	}
	return true
}

// takeTheirs shows the other program's version and gives this one up.
func (w *window) takeTheirs() {
	f, err := w.work.Reread()
	if err != nil {
		w.ask.Complain(err)
		return
	}
	w.toldOfChange = false
	w.show(f, w.path)
	w.tell(message.New("Read %v again.", filepath.Base(w.path)))
}

func (w *window) tellHeld(h *store.Held) {
	w.ask.Choose(ask.Question{Title: w.text("Open elsewhere"), Text: h.Say(w.say()) + "\n" + w.text("You can look at it here, and save changes beside it."), Answers: []string{w.text("Look at it")}}, func(int) {})
}

// lookOut asks every few seconds whether another program changed the file, and
// lets the person choose once for each change.
func (w *window) lookOut() {
	tick := time.NewTicker(lookEvery)
	defer tick.Stop()
	for {
		select {
		case <-w.closed:
			return
		case <-tick.C:
		}
		fyne.Do(func() {
			if w.work == nil || w.toldOfChange || w.sheets() != nil || w.session.InGesture() || w.win.Canvas().Overlays().Top() != nil {
				return
			}
			if c := w.work.Changed(); c != nil {
				w.toldOfChange = true
				w.obstacle(c, nil)
			}
		})
	}
}

// offerLeftovers asks about unsaved work of a window that ended without a word,
// one piece after the other.
func (w *window) offerLeftovers() {
	k := w.keeper()
	if k == nil {
		return
	}
	left, err := k.Leftovers()
	if err != nil {
		w.ask.Complain(err)
	}
	w.offer(left)
}

func (w *window) offer(left []Leftover) {
	if len(left) == 0 {
		return
	}
	one, rest := left[0], left[1:]
	title, path, written := one.About()
	where := w.text("It was never saved to a file.")
	if path != "" {
		where = w.text("It belongs to %v.", path)
	}
	w.ask.Choose(ask.Question{Title: w.text("Unsaved work was found"), Text: w.text("“%v”, as it was on %v. %v", title, written.Local().Format("2006-01-02 15:04:05"), where), Answers: []string{w.text("Open it again"), w.text("Discard it"), w.text("Ask me later")}}, func(i int) {
		switch i {
		case 0:
			w.restore(one)
			return // what is left is offered at the next start
		case 1:
			if err := one.Discard(); err != nil {
				w.ask.Complain(err)
			}
		}
		w.offer(rest)
	})
}

// restore opens unsaved work again; it stays unsaved.
func (w *window) restore(l Leftover) {
	work, f, err := l.Restore()
	var held *store.Held
	if err != nil && !errors.As(err, &held) {
		w.ask.Complain(err)
		return
	}
	_, path, _ := l.About()
	w.setWork(work)
	w.show(f, path)
	w.session.MarkUnsaved()
	w.Update()
	if err := l.Discard(); err != nil {
		w.ask.Complain(err)
	}
	w.tell(message.New("Opened again; it is not saved yet."))
	if held != nil {
		w.tellHeld(held)
	}
}
