package main

import "os"

// saveBytes puts a whole file in its place.
func saveBytes(path string, data []byte) error { return os.WriteFile(path, data, 0o666) }
