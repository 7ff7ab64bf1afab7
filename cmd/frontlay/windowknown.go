package main

import "frontlay/layout/sheet"

// knownPrinters is what is known of the user's printers, the same for the
// window and for the commands.
type knownPrinters struct{}

func (knownPrinters) Load() (*sheet.Printers, error)   { return loadPrinters() }
func (knownPrinters) Save(known *sheet.Printers) error { return savePrinters(known) }
