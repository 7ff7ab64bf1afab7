package main

import (
	"errors"
	"flag"
	"fmt"
	"io/fs"
	"os"
)

// starter is the project that new writes: one cabinet in which nothing is wrong but
// that its sheet is a sample and nobody has said what its drawers are to hold, with
// a comment where a beginner looks for one.
const starter = `# A frontlay project. Open it in the window, or edit it here: both keep the other's work.
frontlay: 1
title: New cabinet
unit: mm
hardware: {main: sample-a} # a sample that ships (invented figures), or the path of your own sheet beside this file
boards:
  carcass: {thickness: 18}
  front: {thickness: 19}
  back: {thickness: 8}
reveals: {left: 1.5, right: 1.5, top: 2, bottom: 0, gap: 3}
cabinets: # left to right
  - name: Cabinet 1
    width: 600 # outside
    height: 720 # of the carcass, without the plinth
    depth: 560
    mount: overlay # or inset
    bays: # left to right
      - hardware: main
        fronts: # bottom to top
          - {name: Lower, share: 1}
          - {name: Middle, share: 1}
          - {name: Upper, share: 1}
`

// runNew writes a project to begin with; it never replaces a file.
func runNew(args []string, c console) int {
	rest, err := parse(flag.NewFlagSet("new", flag.ContinueOnError), args, c)
	if err != nil {
		return failed(err, c)
	}
	path, ok := oneFile("new", rest, c)
	if !ok {
		return exitFailed
	}
	f, err := os.OpenFile(path, os.O_WRONLY|os.O_CREATE|os.O_EXCL, 0o666)
	if errors.Is(err, fs.ErrExist) {
		fmt.Fprintf(c.err, "%s: this file is there already and is left as it is. Choose another name.\n", path)
		return exitFailed
	}
	if err == nil {
		_, err = f.WriteString(starter)
		err = errors.Join(err, f.Close())
	}
	if err != nil {
		fmt.Fprintln(c.err, plain(err))
		return exitFailed
	}
	fmt.Fprintf(c.out, "%s: written. Open it with: frontlay %s\n", path, path)
	return exitFine
}
