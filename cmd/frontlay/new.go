package main

import (
	"errors"
	"flag"
	"fmt"
	"io/fs"
	"os"

	"frontlay/assets"
)

// newFile writes a project to begin with; it never replaces a file.
func newFile(*flag.FlagSet) task {
	return func(rest []string, c console) int {
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
			_, err = f.Write(assets.NewCabinet())
			err = errors.Join(err, f.Close())
		}
		if err != nil {
			fmt.Fprintln(c.err, plain(err))
			return exitFailed
		}
		fmt.Fprintf(c.out, "%s: written. Open it with: frontlay %s\n", path, path)
		return exitFine
	}
}
