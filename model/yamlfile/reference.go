package yamlfile

import (
	"fmt"
	"strconv"
	"strings"

	"frontlay/model"
	"frontlay/model/figure"
	"frontlay/model/length"
	"frontlay/model/message"
)

// Reference is the tables of all keys of both files, as Markdown in a language; limits
// are what the rules of the check have.
func Reference(limits []model.Limit, say message.Language) string {
	r := reference{say: say}
	fmt.Fprintf(&r.b, "%s\n\n", say.Say(message.New("A project can have at most %v MiB, a hardware sheet %v KiB.", MaxBytes>>20, MaxSheetBytes>>10)))
	fmt.Fprintf(&r.b, "## %s\n\n", say.Say(message.New("Project")))
	r.keys(figure.Project(new(model.Project), limits), "")
	fmt.Fprintf(&r.b, "## %s\n\n%s\n\n", say.Say(message.New("Hardware sheet")), say.Say(message.New("All heights are above the runner's lower edge unless told otherwise.")))
	r.keys(figure.Sheet(new(model.HardwareSheet)), "")
	return r.b.String()
}

// reference is the page while it is written.
type reference struct {
	b   strings.Builder
	say message.Language
}

// keys writes the table of one mapping, then those of the mappings in it.
func (r *reference) keys(rows []figure.Row, path string) {
	if path != "" {
		fmt.Fprintf(&r.b, "### %s\n\n", path)
	}
	fmt.Fprintf(&r.b, "| %s | %s | %s |\n| --- | --- | --- |\n", r.say.Say(message.New("key")), r.say.Say(message.New("value")), r.say.Say(message.New("meaning")))
	for _, f := range rows {
		key := message.New("%v", "`"+f.Key+"`")
		if f.Needed {
			key = message.New("%v (needed)", "`"+f.Key+"`")
		}
		fmt.Fprintf(&r.b, "| %s | %s | %s |\n", r.say.Say(key), r.say.Say(inWords(f.Value)), r.say.Say(f.Doc))
	}
	r.b.WriteString("\n")
	for _, f := range rows {
		below, items := f.Key, []figure.Row(nil)
		switch v := f.Value.(type) {
		case *figure.Group:
			items = v.Rows()
		case *figure.List:
			below, items = below+"[]", v.Empty()
		default:
			continue
		}
		if path != "" {
			below = path + "." + below
		}
		r.keys(items, below)
	}
}

// inWords tells what values a row takes.
func inWords(value figure.Value) message.Message {
	switch v := value.(type) {
	case *figure.Version:
		return message.New("%v", strconv.Itoa(v.Newest))
	case *figure.Size:
		return sizes(v.Least, v.Greatest)
	case *figure.Sizes:
		return message.New("list of sizes")
	case *figure.Number:
		return message.New("number from %v to %v", v.Least, v.Greatest)
	case *figure.Count:
		return message.New("whole number from %v to %v", v.Least, v.Greatest)
	case *figure.Text:
		switch {
		case len(v.OneOf) > 0:
			return oneOf(v.OneOf)
		case v.Lines:
			return message.New("text, at most %v characters", v.Most)
		}
		return message.New("text on one line, at most %v characters", v.Most)
	case *figure.Choice:
		return oneOf(v.OneOf)
	case *figure.Flag:
		return message.New("`true` or `false`")
	case *figure.Words:
		return message.New("names, each with %v", oneOf(v.OneOf))
	case *figure.Unit:
		return oneOf(length.UnitNames())
	case *figure.List:
		return message.New("list, at most %v", v.Most)
	case *figure.Sheets:
		return message.New("names, each with a text or the keys of a hardware sheet")
	default:
		return message.New("keys")
	}
}

func oneOf(words []string) message.Message {
	return message.New("one of %v", "`"+strings.Join(words, "`, `")+"`")
}

// sizes tells the limits of a size.
func sizes(lo, hi length.Length) message.Message {
	switch {
	case lo == figure.Positive:
		return message.New("size above 0, at most %v", hi)
	case lo == 0:
		return message.New("size, at most %v", hi)
	default:
		return message.New("size from %v to %v", lo, hi)
	}
}
