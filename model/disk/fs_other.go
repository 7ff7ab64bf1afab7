//go:build !unix

package disk

import "io/fs"

// syncDir does nothing where folders can't be flushed.
func syncDir(string) error { return nil }

// chownLike does nothing: a new file has its folder's rights.
func chownLike(string, fs.FileInfo) error { return nil }
