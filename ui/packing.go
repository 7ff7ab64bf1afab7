package ui

import (
	"context"
	"path/filepath"

	"frontlay/layout"
	"frontlay/model/message"
	"frontlay/model/pack"
	"frontlay/ui/page/output"
)

// Pack writes a job as one .zip: files, project and sheets, come first, then all that
// is printed and exported of the result. It is called in the background, tells how far
// it is, and ends where the context does, with nothing written.
type Pack func(ctx context.Context, path string, files []pack.File, r layout.Result, say message.Language, progress func(done, of int)) error

// packJob asks where to, and packs the job as it is on the screen.
func packJob(w *window) {
	w.ask.Path(w.ask.Text("Pack the job"), w.FileName(), pack.Ext, func(path string) { packInto(w, path) })
}

// packInto packs it in the background; the channel, nil where nothing is begun, is closed
// once what came of it has been told.
func packInto(w *window, path string) <-chan struct{} {
	files, err := w.files.Work.Packed()
	if err != nil {
		w.ask.Complain(err)
		return nil
	}
	r, say := w.session.CommittedResult(), w.Say()
	return output.Work(w.ask, w.ask.Text("Packing %v", filepath.Base(path)), func(ctx context.Context, progress func(done, of int)) error {
		return w.options.Pack(ctx, path, files, r, say, progress)
	}, func(stopped bool, err error) {
		switch {
		case stopped:
			w.Tell(message.New("Stopped; nothing was packed."))
		case err != nil:
			w.ask.Complain(err)
		default:
			w.Tell(message.New("Packed into %v: project, hardware sheets, PDFs and files for machines.", path))
		}
	})
}
