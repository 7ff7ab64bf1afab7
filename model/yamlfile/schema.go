package yamlfile

import (
	"encoding/json"

	"frontlay/model"
	"frontlay/model/figure"
	"frontlay/model/length"
)

// schema is one JSON Schema (draft 2020-12) as nested maps.
type schema map[string]any

// ProjectSchema is the JSON Schema of a project file, for editors that complete
// and check YAML by one; limits are what the rules of the check have. What it takes may still be refused by Read, which also
// knows what a key alone can't show.
func ProjectSchema(limits []model.Limit) []byte {
	s := topSchema("Project of frontlay", figure.Project(new(model.Project), limits))
	s["$defs"] = schema{"sheet": objectSchema(figure.Sheet(new(model.HardwareSheet)))}
	return schemaText(s)
}

// SheetSchema is the JSON Schema of a hardware sheet.
func SheetSchema() []byte {
	return schemaText(topSchema("Hardware sheet of frontlay", figure.Sheet(new(model.HardwareSheet))))
}

func topSchema(title string, rows []figure.Row) schema {
	s := objectSchema(rows)
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

func objectSchema(rows []figure.Row) schema {
	properties, required := schema{}, []string{}
	for _, f := range rows {
		s := valueSchema(f.Value)
		s["description"] = f.Doc.String()
		properties[f.Key] = s
		if f.Needed {
			required = append(required, f.Key)
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

func valueSchema(value figure.Value) schema {
	switch v := value.(type) {
	case *figure.Version:
		return schema{"const": v.Newest}
	case *figure.Size:
		return sizeSchema()
	case *figure.Sizes:
		return schema{"type": "array", "maxItems": figure.MostSizes, "items": sizeSchema()}
	case *figure.Number:
		return schema{"type": "number", "minimum": v.Least, "maximum": v.Greatest}
	case *figure.Count:
		return schema{"type": "integer", "minimum": v.Least, "maximum": v.Greatest}
	case *figure.Text:
		if len(v.OneOf) > 0 {
			return schema{"enum": v.OneOf}
		}
		return schema{"type": []string{"string", "number"}, "maxLength": v.Most}
	case *figure.Choice:
		return schema{"enum": v.OneOf}
	case *figure.Flag:
		return schema{"type": "boolean"}
	case *figure.Words:
		return schema{"type": "object", "additionalProperties": schema{"enum": v.OneOf}}
	case *figure.Unit:
		return schema{"enum": length.UnitNames()}
	case *figure.List:
		return schema{"type": "array", "maxItems": v.Most, "items": objectSchema(v.Empty())}
	case *figure.Sheets:
		return schema{"type": "object", "maxProperties": figure.MostSheets,
			"additionalProperties": schema{"anyOf": []schema{{"type": "string"}, schema{"$ref": "#/$defs/sheet"}}}}
	case *figure.Group:
		return objectSchema(v.Rows())
	default:
		return schema{}
	}
}
