package yamlfile

// schema is one JSON Schema (draft 2020-12) as nested maps.
type schema map[string]any

func objectSchema(fields []field) schema {
	properties, required := schema{}, []string{}
	for _, f := range fields {
		s := f.schema()
		s["description"] = f.doc
		properties[f.key] = s
		if f.required {
			required = append(required, f.key)
		}
	}
	s := schema{"type": "object", "additionalProperties": false, "properties": properties}
	if len(required) > 0 {
		s["required"] = required
	}
	return s
}

// sizeSchema takes bare numbers and texts such as 3/4 in or 900-2*18.
func sizeSchema() schema {
	return schema{"type": []string{"number", "string"}, "maxLength": 120}
}
