package hardware

import (
	"reflect"
	"regexp"
	"strings"
	"testing"

	"frontlay/model"
	"frontlay/model/figure"
	"frontlay/model/length"
)

// keyLike is what a key of a file looks like and no word does.
var keyLike = regexp.MustCompile(`[a-z]_[a-z]|\[[^\]]*\]|\bkey\b`)

// Whatever is typed: what is said about it has the words of the form, not the
// keys of a file.
func TestProblemsAreSaidInTheWordsOfTheForm(t *testing.T) {
	s := sample(t)
	p, _, _ := open(t, s)
	said := map[string]bool{}
	spoil(reflect.ValueOf(s.Clone()).Elem(), func(whole *model.HardwareSheet) {
		for _, problem := range figure.SheetFaults(whole) {
			text := p.say().Sentence(problem.Named())
			if keyLike.MatchString(text) {
				t.Errorf("%s: %s", problem.Path, text)
			}
			said[text] = true
		}
	})
	for _, want := range []string{
		"Least height is -99999 mm and can't be negative; write 0 or more.",
		"Name: nothing is given; fill this in.",
		"Drawer heights: nothing is given; fill this in.",
	} {
		if !said[want] {
			t.Errorf("nothing says %q", want)
		}
	}
	r := p.field(t, "runner.least_height")
	err := r.page.judge(r, func(k *picked) { k.sheet.Runner.LeastHeight = -99999 * mm })
	if err == nil || err.Error() != "Least height is -99999 mm and can't be negative; write 0 or more" {
		t.Errorf("beside the field stands %v", err)
	}
}

// spoil makes one figure or name after the other of a sheet wrong, and puts it
// back.
func spoil(sheet reflect.Value, look func(*model.HardwareSheet)) {
	whole := sheet.Addr().Interface().(*model.HardwareSheet)
	try := func(v reflect.Value, wrong ...any) {
		was := reflect.New(v.Type()).Elem()
		was.Set(v)
		for _, w := range wrong {
			v.Set(reflect.ValueOf(w).Convert(v.Type()))
			look(whole)
		}
		v.Set(was)
	}
	var walk func(reflect.Value)
	walk = func(v reflect.Value) {
		switch v.Kind() {
		case reflect.Struct:
			for i := range v.NumField() {
				walk(v.Field(i))
			}
		case reflect.Slice:
			try(v, reflect.Zero(v.Type()).Interface())
			for i := range v.Len() {
				walk(v.Index(i))
			}
		case reflect.String:
			try(v, "", "a\nb", "a\u200b", model.DrawerAuto, strings.Repeat("a", 300))
		case reflect.Float64:
			try(v, 0.0, -1.0, 1e7)
		case reflect.Int64:
			if v.Type() == reflect.TypeFor[length.Length]() {
				try(v, length.Length(0), -99999*mm, 99999*mm, length.Nanometre)
			}
		}
	}
	walk(sheet)
}
