package main

import "frontlay/model/disk"

// saveBytes puts a whole file, one that can be made again, in its place.
func saveBytes(path string, data []byte) error { return disk.Replace(disk.OS{}, path, data) }
