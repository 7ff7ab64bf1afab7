package record

import (
	"os"
	"path/filepath"
	"regexp"
	"strings"

	"frontlay/model/store"
)

// Scrubber takes out of a text what is nobody's business: where files lie and
// what they are called, the user's and the machine's name. Reports and logs go
// through it before they are written, so that they can be sent as they are.
type Scrubber struct {
	Home, User, Host string
}

// ThisUser is the Scrubber for the user who runs the program.
func ThisUser(o store.Owner) Scrubber {
	home, err := os.UserHomeDir()
	if err != nil {
		home = ""
	}
	return Scrubber{Home: home, User: o.User, Host: o.Host}
}

var (
	// A source file of a stack trace: only its last two names are told, with the
	// line.
	sourceFile = regexp.MustCompile(`(?m)(^|[\s(])(?:[A-Za-z]:)?(?:[/\\][^/\\\n:*?"<>|]*)*?[/\\]([^/\\\s:]+[/\\][^/\\\s:]+\.go:\d+)`)
	// Any other absolute path, to the end of the quotes or the word; blanks
	// within are taken along where a / or \ follows.
	quotedPath = regexp.MustCompile(`"(?:[A-Za-z]:)?[/\\][^"\n]*"`)
	barePath   = regexp.MustCompile(`(^|[\s=(\[:,])((?:[A-Za-z]:[/\\]|/|\\\\)[^\s:;,"'()\[\]]*(?: [^\s:;,"'()\[\]/\\]*[/\\][^\s:;,"'()\[\]]*)*)`)
	extension  = regexp.MustCompile(`^\.[A-Za-z0-9]{1,5}$`)
)

// Scrub takes private things out of a text.
func (s Scrubber) Scrub(text string) string {
	for _, r := range []struct{ private, public string }{{s.Home, "/~"}, {s.Host, "this-machine"}} {
		if len(r.private) > 1 {
			text = strings.ReplaceAll(text, r.private, r.public)
		}
	}
	if len(s.User) > 1 {
		text = regexp.MustCompile(`\b`+regexp.QuoteMeta(s.User)+`\b`).ReplaceAllLiteralString(text, "user")
	}
	text = sourceFile.ReplaceAllString(text, "$1<source>/$2")
	text = quotedPath.ReplaceAllStringFunc(text, func(p string) string { return `"` + hidden(strings.Trim(p, `"`)) + `"` })
	return barePath.ReplaceAllStringFunc(text, func(m string) string {
		parts := barePath.FindStringSubmatch(m)
		return parts[1] + hidden(parts[2])
	})
}

// hidden tells of a path only what kind of file it is.
func hidden(path string) string {
	if path == "/" {
		return path
	}
	if e := filepath.Ext(path); extension.MatchString(e) {
		return "<file>" + e
	}
	return "<path>"
}
