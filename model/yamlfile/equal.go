package yamlfile

import (
	"fmt"
	"reflect"
)

// difference tells where two values of the model differ first, "" where they
// say the same: as reflect.DeepEqual, but a list without items equals one that
// is nil, since a file can't tell them apart.
func difference(a, b any) string { return differs("", reflect.ValueOf(a), reflect.ValueOf(b)) }

func differs(path string, a, b reflect.Value) string {
	switch a.Kind() {
	case reflect.Pointer:
		if a.IsNil() || b.IsNil() {
			return where(path, a.IsNil() == b.IsNil())
		}
		if a.Pointer() == b.Pointer() {
			return ""
		}
		return differs(path, a.Elem(), b.Elem())
	case reflect.Slice:
		if a.Len() != b.Len() {
			return where(path, false)
		}
		for i := range a.Len() {
			if d := differs(fmt.Sprintf("%s[%d]", path, i), a.Index(i), b.Index(i)); d != "" {
				return d
			}
		}
		return ""
	case reflect.Struct:
		for i := range a.NumField() {
			if d := differs(path+"."+a.Type().Field(i).Name, a.Field(i), b.Field(i)); d != "" {
				return d
			}
		}
		return ""
	case reflect.Map:
		return where(path, a.Len() == 0 && b.Len() == 0 || reflect.DeepEqual(a.Interface(), b.Interface()))
	default:
		return where(path, reflect.DeepEqual(a.Interface(), b.Interface()))
	}
}

func where(path string, same bool) string {
	if same {
		return ""
	}
	return path
}
