package yamlfile

import (
	"bytes"
	"errors"
	"io"
	"regexp"
	"strconv"
	"strings"
	"unicode/utf8"

	"gopkg.in/yaml.v3"

	"frontlay/model/message"
)

// MaxBytes is the largest file that is read.
const MaxBytes = 4 << 20

// MaxSheetBytes is the largest hardware sheet that is read. A project can name
// many, and all of them together must be read soon.
const MaxSheetBytes = 256 << 10

// maxNodes bounds how many values a file can hold, before it is parsed: the
// memory that a parsed file takes grows with them.
const (
	maxNodes      = 400_000
	maxSheetNodes = 25_000
)

// maxDepth is how deep values can nest. The format itself needs nine.
const maxDepth = 40

// parse makes the node tree of a YAML document, or adds what is wrong with it
// to the reader and gives nil. The tree has no aliases, anchors or tags.
func (r *reader) parse(data []byte) *yaml.Node {
	if !r.acceptable(data) {
		return nil
	}
	doc, err := decode(data)
	if err != nil {
		r.notYAML(data, err)
		return nil
	}
	if doc == nil || len(doc.Content) == 0 || doc.Content[0].Tag == "!!null" {
		r.fail(nil, message.New("the file is empty"), message.New("start from a sample or the demo"))
		return nil
	}
	if !r.plainTree(doc.Content[0], 0) {
		return nil
	}
	r.root = doc.Content[0]
	return doc
}

// acceptable refuses what can't be a file of ours before the parser sees it.
func (r *reader) acceptable(data []byte) bool {
	bytesAllowed, nodesAllowed := MaxBytes, maxNodes
	if r.sheetOnly {
		bytesAllowed, nodesAllowed = MaxSheetBytes, maxSheetNodes
	}
	switch {
	case len(data) > bytesAllowed:
		r.fail(nil, message.New("the file has %v bytes, which is more than any project needs (the limit is %v)", len(data), bytesAllowed),
			message.New("check that it is the right file"))
	case !utf8.Valid(data):
		line, column := placeOf(data, firstInvalid(data))
		r.failAt(line, column, message.New("the file is not UTF-8 text"), message.New("save it as UTF-8 in your editor"))
	case bytes.IndexByte(data, 0) >= 0:
		line, column := placeOf(data, bytes.IndexByte(data, 0))
		r.failAt(line, column, message.New("the file is not a text file"), message.New("check that it is the right file"))
	case structure(data) > nodesAllowed:
		r.fail(nil, message.New("the file holds more values than any project needs (the limit is %v)", nodesAllowed),
			message.New("check that it is the right file"))
	default:
		return true
	}
	return false
}

// structure counts the characters that can begin a value.
func structure(data []byte) int {
	n := 0
	for _, c := range data {
		switch c {
		case '\n', '\r', ',', '[', '{', ':', '-', '?', '!', '&', '*', '|', '>':
			n++
		}
	}
	return n
}

func firstInvalid(data []byte) int {
	for i := 0; i < len(data); {
		c, size := utf8.DecodeRune(data[i:])
		if c == utf8.RuneError && size <= 1 {
			return i
		}
		i += size
	}
	return 0
}

func placeOf(data []byte, at int) (line, column int) {
	before := data[:at]
	line = 1 + bytes.Count(before, []byte("\n"))
	return line, 1 + utf8.RuneCount(before[bytes.LastIndexByte(before, '\n')+1:])
}

var errTwoDocuments = errors.New("a second document begins after ---")

// decode runs the YAML parser, which is not ours: a panic in it becomes an
// error.
func decode(data []byte) (doc *yaml.Node, err error) {
	defer func() {
		if p := recover(); p != nil {
			doc, err = nil, errors.New("the text can't be made sense of")
		}
	}()
	d := yaml.NewDecoder(bytes.NewReader(data))
	doc = new(yaml.Node)
	if err = d.Decode(doc); err == io.EOF {
		return nil, nil
	} else if err != nil {
		return nil, err
	}
	if err = d.Decode(new(yaml.Node)); err == nil {
		return nil, errTwoDocuments
	} else if err != io.EOF {
		return nil, err
	}
	return doc, nil
}

var lineInError = regexp.MustCompile(`^yaml: (?:line (\d+): )?(.*)$`)

// notYAML tells what the parser says. Its line is that of the outer value, and
// counts from 0 for errors of grammar.
func (r *reader) notYAML(data []byte, err error) {
	text, line := err.Error(), 0
	if m := lineInError.FindStringSubmatch(text); m != nil {
		line, _ = strconv.Atoi(m[1])
		text = m[2]
	}
	if strings.HasPrefix(text, "did not find expected") {
		line++
	}
	advice := message.New("look at the indents, colons, quotes and brackets from this line on")
	if tab := tabIndent(data); tab > 0 && (strings.Contains(text, "tab") || strings.Contains(text, "cannot start any token")) {
		line, text = tab, "a tab stands in the indent"
		advice = message.New("indent with spaces")
	}
	r.failAt(line, 0, message.New("this is not YAML: %v", text), advice)
}

// tabIndent is the first line with a tab among its leading blanks, 0 for none.
func tabIndent(data []byte) int {
	for i, line := range bytes.Split(data, []byte("\n")) {
		if bytes.ContainsRune(line[:len(line)-len(bytes.TrimLeft(line, " \t"))], '\t') {
			return i + 1
		}
	}
	return 0
}

// plainTree refuses the parts of YAML that the format has no use for, and
// nesting that no project needs.
func (r *reader) plainTree(n *yaml.Node, depth int) bool {
	switch {
	case depth > maxDepth:
		r.fail(n, message.New("values are nested more than %v deep", maxDepth), message.New("check that it is the right file"))
		return false
	case n.Kind == yaml.AliasNode, n.Anchor != "":
		r.fail(n, message.New("anchors (&) and aliases (*) are not part of the format"), message.New("write the value out where it is used, or put quotes around the text"))
		return false
	case n.Style&yaml.TaggedStyle != 0:
		r.fail(n, message.New("tags (!) are not part of the format"), message.New("leave %v out, or put quotes around the text", n.Tag))
		return false
	}
	for _, c := range n.Content {
		if !r.plainTree(c, depth+1) {
			return false
		}
	}
	return true
}
