package ui

import (
	"flag"
	"fmt"
	"strings"
	"testing"

	"frontlay/assets/manual"
	"frontlay/assets/manual/manualtest"
	"frontlay/ui/command"
)

var update = flag.Bool("update", false, "write what the manual has from the commands anew")

// The manual lists every command that has keys, in the words of each language.
func TestManualsKeys(t *testing.T) {
	for _, code := range manual.Languages() {
		w := dressed(t, appearance{language: code})
		heads := map[string][3]string{"en": {"Menu", "Command", "Keys"}, "de": {"Menü", "Befehl", "Tasten"}}[code]
		var b strings.Builder
		fmt.Fprintf(&b, "| %s | %s | %s |\n| --- | --- | --- |\n", heads[0], heads[1], heads[2])
		for _, menu := range command.Menus {
			for i := range w.table.Rows {
				c := &w.table.Rows[i]
				if keys := w.table.Keys(c); c.Menu == menu && keys != "" {
					fmt.Fprintf(&b, "| %s | %s | %s |\n", w.ask.Text(menu), manualtest.Cell(w.ask.Text(c.Words)), keys)
				}
			}
		}
		manualtest.Made(t, code+"/reference-keys.md", b.String(), *update)
	}
}
