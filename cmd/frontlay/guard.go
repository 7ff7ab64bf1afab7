package main

import (
	"crypto/rand"
	"encoding/hex"
	"fmt"
	"io"
	"log/slog"
	"os"
	"path/filepath"
	"runtime/debug"
	"time"

	"frontlay/model/store"
	"frontlay/model/store/record"
	"frontlay/ui"
	"frontlay/ui/work"
)

// guarded runs the window with what keeps its work safe: journals, a log, and a
// report of an unforeseen end, which the next start shows. Where the program has
// no folder of its own the window opens without them and says so on the terminal.
func guarded(o ui.Options, verbose bool, c console) (code int) {
	home, err := keptIn()
	if err != nil {
		fmt.Fprintln(c.err, "Unsaved work is not journalled: there is no folder for settings:", err)
		home = filepath.Join(os.TempDir(), "frontlay")
	}
	me := owner()
	level, also := slog.LevelWarn, io.Writer(nil)
	if verbose {
		level, also = slog.LevelDebug, c.err
	}
	log := record.NewLog(store.OS{}, home, record.ThisUser(me), c.now, also)
	defer log.Close()
	logger := log.Logger(level)
	keeper := keeperIn(home, logger)
	o.Keeper = keeper
	reports, err := record.Crashes(store.OS{}, crashes(home), me.Host, record.ThisUser(me))
	if err != nil {
		logger.Warn("crash reports", "error", err)
	}
	for _, r := range reports {
		o.Reports = append(o.Reports, ui.Report{Text: r.Text, Discard: r.Discard})
	}
	watch, err := record.WatchCrashes(crashes(home), me, "frontlay "+version())
	if err != nil {
		logger.Warn("crash watch", "error", err)
	} else {
		defer watch.Close()
	}
	defer func() {
		if r := recover(); r != nil {
			keeper.Flush()
			if watch != nil {
				if err := watch.Record(r, debug.Stack()); err != nil {
					logger.Error("crash report", "error", err)
				}
			}
			logger.Error("ended in an unforeseen way", "panic", fmt.Sprint(r))
			fmt.Fprintln(c.err, "frontlay ended in an unforeseen way. Unsaved work is kept and offered at the next start, with a report.")
			code = exitFailed
		}
	}()
	o.Exit = func() {
		keeper.Flush() // the system may end the program in the midst of work
		logger.Info("ends")
		if watch != nil {
			_ = watch.Close() // nothing is left to tell it to
		}
		_ = log.Close()
		os.Exit(exitFine)
	}
	logger.Info("begins", "version", version())
	openWindow(o)
	// Where the system ends the program Fyne 2.7.4 drops what it was to call then,
	// Options.Exit, if that comes while its loop empties its queue.
	keeper.Flush()
	logger.Info("ends")
	return exitFine
}

// crashes is the folder of the reports inside the program's own.
func crashes(home string) string { return filepath.Join(home, "crash") }

// keeperIn keeps the work of the windows on the machine's disk, with home as the
// program's own folder.
func keeperIn(home string, log *slog.Logger) *work.Keeper {
	return &work.Keeper{
		FS: store.OS{}, Home: home, Sheets: sheetsFor, Owner: owner, After: time.After, Now: time.Now,
		Failed: func(err error) { log.Warn("journal", "error", err) },
	}
}

// owner names one window of this run unlike any other.
func owner() store.Owner {
	var id [8]byte
	// crypto/rand does not fail on any system that Go supports.
	_, _ = rand.Read(id[:])
	return store.ThisProcess(hex.EncodeToString(id[:]), time.Now())
}
