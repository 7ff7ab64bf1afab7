package printing

import (
	"context"
	"slices"
	"strconv"
	"strings"
	"time"

	"fyne.io/fyne/v2"
	"fyne.io/fyne/v2/widget"

	"frontlay/layout/sheet"
	"frontlay/model/message"
	"frontlay/ui/ask"
	"frontlay/ui/field"
	"frontlay/ui/page/output"
)

// Printer is the printing system of a computer. Its methods are called in the
// background.
type Printer interface {
	Printers(ctx context.Context) (names []string, standard string, err error)
	Print(ctx context.Context, j Job) error
}

// Job is what is printed and how. Progress, where it is given, hears how
// far the pages are; the context ends the work.
type Job struct {
	Printer  string
	Title    string
	Copies   int
	Paper    sheet.Paper
	Document sheet.Document
	Progress func(page, pages int)
}

// listWait is how long the printing system may take to name its printers.
const listWait = 10 * time.Second

// printNow asks which printer to print on. What it returns is closed once that is
// asked.
func (p *Page) printNow() <-chan struct{} {
	asked := make(chan struct{})
	p.asking = true // that takes a while, and one answer is enough
	p.able()
	go func() {
		ctx, cancel := context.WithTimeout(context.Background(), listWait)
		defer cancel()
		names, standard, err := p.system.Printer.Printers(ctx)
		fyne.Do(func() {
			defer close(asked)
			p.asking = false
			p.able()
			switch {
			case err != nil:
				p.ask.Complain(err)
			case len(names) == 0:
				p.ask.Complain(message.New("This computer has no printer set up. Write a PDF, and print that at actual size."))
			default:
				p.askPrinter(names, standard)
			}
		})
	}()
	return asked
}

func (p *Page) askPrinter(names []string, standard string) {
	at := max(slices.Index(names, standard), 0)
	printer := field.NewChoice(names, func() int { return at }, func(i int) { at = i })
	copies := field.NewText("")
	copies.Figure = true
	copies.SetText("1")
	note := field.NewLabel(p.ask.Text("The job asks for actual size. Measure the check bars of the first page before you drill."))
	note.Wrapping = fyne.TextWrapWord
	problem := field.NewLabel("")
	problem.Importance, problem.Wrapping = widget.DangerImportance, fyne.TextWrapWord
	body := field.Column(field.Labelled(p.ask.Text("Printer"), printer), field.Labelled(p.ask.Text("Copies"), copies), note, problem)
	n := 0
	p.ask.Form(ask.Form{
		Title: p.ask.Text("Print"), Width: 420, Body: body, Take: p.ask.Text("Print"),
		// The field has the focus and not the button: the press that asked for this
		// question would answer it too where it lasts.
		Fields: []*field.Text{copies},
		Good: func() bool {
			var err error
			n, err = strconv.Atoi(strings.TrimSpace(copies.Text))
			if err != nil || n < 1 || n > 99 {
				problem.SetText(p.ask.Text("“%v” is no count of copies: write a number from 1 to 99.", copies.Text))
				return false
			}
			return true
		},
		Then: func() { p.send(names[at], n) },
	})
}

// send prints in the background. What it returns is closed once everything is
// told.
func (p *Page) send(printer string, copies int) <-chan struct{} {
	docs, all := p.docs, len(p.pages)
	job := Job{Printer: printer, Title: p.host.Session().Committed().Title, Copies: copies, Paper: p.options.Paper}
	return output.Work(p.ask, p.ask.Text("Printing on %v", printer), func(ctx context.Context, progress func(done, of int)) error {
		before := 0
		for _, doc := range docs {
			job.Document, job.Progress = doc, func(page, pages int) { progress(before+page, all) }
			if err := p.system.Printer.Print(ctx, job); err != nil {
				return err
			}
			before += len(doc.Pages)
		}
		return nil
	}, func(stopped bool, err error) {
		switch {
		case stopped:
			p.outcome.Tell(message.New("Stopped. What the printer has already can be stopped there."), true)
		case err != nil:
			p.outcome.Tell(message.Of(err), true)
			p.ask.Complain(err)
		default:
			p.outcome.Tell(message.New("Sent to %v.", printer), false)
		}
	})
}
