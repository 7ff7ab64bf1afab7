// Package schematest tells whether a value keeps to one of our JSON Schemas.
package schematest

import (
	"fmt"
	"regexp"
	"slices"
	"strings"
	"unicode/utf8"
)

// object is a decoded mapping.
type object = map[string]any

// Validate tells where a decoded value does not keep to a schema.
func Validate(schema map[string]any, v any) []string { return validate(schema, schema, v, "") }

// validate knows the keywords that our schemas use (JSON Schema 2020-12, Core
// and Validation) and calls any other a mistake.
func validate(root, s object, v any, path string) (wrong []string) {
	fail := func(format string, args ...any) { wrong = append(wrong, path+": "+fmt.Sprintf(format, args...)) }
	members, isObject := v.(object)
	list, isList := v.([]any)
	text, isText := v.(string)
	number, isNumber := float(v)
	for keyword, is := range s {
		switch keyword {
		case "$schema", "$defs", "title", "description":
		case "$ref":
			target := root
			for _, step := range strings.Split(strings.TrimPrefix(is.(string), "#/"), "/") {
				target = target[step].(object)
			}
			wrong = append(wrong, validate(root, target, v, path)...)
		case "type":
			if !slices.ContainsFunc(words(is), func(w string) bool { return isType(w, v) }) {
				fail("%v is not of type %v", v, is)
			}
		case "const":
			if n, _ := float(is); !isNumber || n != number {
				fail("%v is not %v", v, is)
			}
		case "enum":
			if !isText || !slices.Contains(words(is), text) {
				fail("%v is not one of %v", v, is)
			}
		case "minimum":
			if isNumber && number < is.(float64) {
				fail("%v is below %v", v, is)
			}
		case "maximum":
			if isNumber && number > is.(float64) {
				fail("%v is above %v", v, is)
			}
		case "maxLength":
			if isText && utf8.RuneCountInString(text) > int(is.(float64)) {
				fail("longer than %v", is)
			}
		case "pattern":
			if isText && !regexp.MustCompile(is.(string)).MatchString(text) {
				fail("%q is not like %v", text, is)
			}
		case "maxItems":
			if isList && len(list) > int(is.(float64)) {
				fail("more than %v items", is)
			}
		case "maxProperties":
			if isObject && len(members) > int(is.(float64)) {
				fail("more than %v keys", is)
			}
		case "items":
			for i, item := range list {
				wrong = append(wrong, validate(root, is.(object), item, fmt.Sprintf("%s[%d]", path, i))...)
			}
		case "required":
			for _, key := range words(is) {
				if _, there := members[key]; isObject && !there {
					fail("%s is missing", key)
				}
			}
		case "properties":
			for key, one := range is.(object) {
				if member, there := members[key]; there {
					wrong = append(wrong, validate(root, one.(object), member, path+"."+key)...)
				}
			}
		case "additionalProperties":
			known, _ := s["properties"].(object)
			for key, member := range members {
				if _, there := known[key]; there {
					continue
				}
				if rest, ok := is.(object); ok {
					wrong = append(wrong, validate(root, rest, member, path+"."+key)...)
				} else {
					fail("%s is unknown", key)
				}
			}
		case "anyOf":
			if !slices.ContainsFunc(is.([]any), func(one any) bool { return len(validate(root, one.(object), v, path)) == 0 }) {
				fail("%v is none of those allowed", v)
			}
		default:
			fail("the schema has the keyword %s", keyword)
		}
	}
	return wrong
}

func words(v any) []string {
	if s, ok := v.(string); ok {
		return []string{s}
	}
	var list []string
	for _, s := range v.([]any) {
		list = append(list, s.(string))
	}
	return list
}

func float(v any) (float64, bool) {
	switch n := v.(type) {
	case int:
		return float64(n), true
	case float64:
		return n, true
	}
	return 0, false
}

func isType(name string, v any) bool {
	n, isNumber := float(v)
	switch name {
	case "object":
		_, ok := v.(object)
		return ok
	case "array":
		_, ok := v.([]any)
		return ok
	case "string":
		_, ok := v.(string)
		return ok
	case "boolean":
		_, ok := v.(bool)
		return ok
	case "number":
		return isNumber
	case "integer":
		return isNumber && n == float64(int(n))
	}
	return false
}
