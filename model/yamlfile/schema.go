package yamlfile

import (
	"encoding/json"

	"frontlay/model"
)

// schema is one JSON Schema (draft 2020-12) as nested maps.
type schema map[string]any

// ProjectSchema is the JSON Schema of a project file, for editors that complete
// and check YAML by one; limits are what the rules of the check have. What it takes may still be refused by Read, which also
// knows what a key alone can't show.
func ProjectSchema(limits []model.Limit) []byte {
	s := topSchema("Project of frontlay", projectFields(new(model.Project), limits))
	s["$defs"] = schema{"sheet": objectSchema(sheetFields(new(model.HardwareSheet)))}
	return schemaText(s)
}

// SheetSchema is the JSON Schema of a hardware sheet.
func SheetSchema() []byte {
	return schemaText(topSchema("Hardware sheet of frontlay", sheetFields(new(model.HardwareSheet))))
}

func topSchema(title string, fields []field) schema {
	s := objectSchema(fields)
	s["$schema"], s["title"] = "https://json-schema.org/draft/2020-12/schema", title
	return s
}

// schemaText writes a schema; maps come out in order of their keys.
func schemaText(s schema) []byte {
	data, err := json.MarshalIndent(s, "", "  ")
	if err != nil {
		panic("yamlfile: " + err.Error()) // maps, lists, texts and numbers always encode
	}
	return append(data, '\n')
}

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
	return schema{"type": []string{"number", "string"}, "maxLength": 120, "pattern": `^[-+−≈(\s]*[0-9.,]`}
}
