package main

import (
	"encoding/json"
	"errors"
	"fmt"
	"math"
	"reflect"
	"strings"

	"frontlay/layout"
	"frontlay/layout/check"
	"frontlay/model/message"
	"frontlay/model/yamlfile"
)

// telling is what check and print tell a program, as JSON. The fields' tags are the
// schema too: doc describes a field, oneOf lists its words.
type telling struct {
	Format   int         `json:"format" doc:"The version of this format: 1. Fields are only added to it; what becomes otherwise raises it."`
	Project  string      `json:"project" doc:"The path of the project, as it was named."`
	Title    string      `json:"title" doc:"The project's title; empty where it could not be read."`
	Stamp    string      `json:"stamp" doc:"The stamp that paper of this plan has; empty where there is no plan."`
	Fronts   int         `json:"fronts" doc:"How many fronts were checked."`
	Errors   int         `json:"errors" doc:"How many findings are errors that nobody accepted."`
	Warnings int         `json:"warnings" doc:"How many are warnings that nobody accepted."`
	Advice   int         `json:"advice" doc:"How many are advice that nobody accepted."`
	Accepted int         `json:"accepted" doc:"How many are accepted in the project."`
	Findings []finding   `json:"findings" doc:"What the check found, in the order of the rules."`
	Told     []string    `json:"told" doc:"What the studies of the job come to, a sentence each, in the language that was asked for."`
	Problems []problem   `json:"problems" doc:"What kept the project from being read, or files from being written; there are no findings then."`
	Written  []wroteFile `json:"written" doc:"The files that were written."`
}

type finding struct {
	Rule     string   `json:"rule" doc:"The name of the rule, as a project file speaks of it."`
	Severity string   `json:"severity" oneOf:"error,warning,advice" doc:"How bad it is."`
	Accepted string   `json:"accepted" doc:"The reason why the project accepts it; empty: it does not."`
	Forbids  string   `json:"forbids" oneOf:"nothing,drilling,screwing" doc:"What must not be done while it is open: drilling the front, or screwing its runners."`
	File     string   `json:"file" doc:"The file in which its place stands."`
	Line     int      `json:"line" doc:"The line of the cabinet, bay or front in that file, from 1; 0: it is about the project as a whole."`
	Cabinet  string   `json:"cabinet" doc:"The name of the cabinet; empty: it is about no single one."`
	Bay      int      `json:"bay" doc:"The bay from the left, from 1; 0: it is about no single one."`
	Front    int      `json:"front" doc:"The number of the front, as on paper; 0: it is about no single one."`
	Name     string   `json:"name" doc:"The name of that front; may be empty."`
	Inner    int      `json:"inner" doc:"Which inner drawer behind that front, from 1; 0: none."`
	Other    int      `json:"other" doc:"The number of the second front of a pair that can't both stay; 0: none."`
	Where    string   `json:"where" doc:"Its place in words, in the language that was asked for."`
	What     string   `json:"what" doc:"What is wrong, with figures in the project's unit, in that language."`
	Change   string   `json:"change" doc:"What to do, in that language."`
	FoundMM  float64  `json:"found_mm" doc:"The length that was found, in millimetres; 0 with needed_mm 0: it is about no length."`
	NeededMM float64  `json:"needed_mm" doc:"The length that is needed, in millimetres."`
	FoundKg  float64  `json:"found_kg" doc:"The weight that was found, in kilograms; 0 with needed_kg 0: it is about no weight."`
	NeededKg float64  `json:"needed_kg" doc:"The weight that is allowed, in kilograms."`
	Fixes    []string `json:"fixes" doc:"Changes that mend it and add no error, the best first, in that language; the window makes them."`
}

type problem struct {
	File   string `json:"file" doc:"The file; may be empty."`
	Line   int    `json:"line" doc:"The line, from 1; 0: not known."`
	Column int    `json:"column" doc:"The column, from 1; 0: not known."`
	What   string `json:"what" doc:"What is wrong, in the language that was asked for."`
	Advice string `json:"advice" doc:"What to do, in that language; may be empty."`
}

type wroteFile struct {
	File  string `json:"file" doc:"The path of the file."`
	Pages int    `json:"pages" doc:"How many pages it has."`
}

// reportFormat is raised where a field goes or means something else.
const reportFormat = 1

// newTelling is one that has told nothing yet. Lists are never null.
func newTelling(path string) *telling {
	return &telling{Format: reportFormat, Project: path, Findings: []finding{}, Told: []string{}, Problems: []problem{}, Written: []wroteFile{}}
}

// tell puts findings into the report.
func (r *telling) tell(f *yamlfile.File, result layout.Result, say message.Language) {
	p := result.Plan
	r.Title, r.Fronts, r.Stamp = f.Project.Title, len(p.Fronts), p.Paper().Plan.String()
	for _, m := range layout.Told(p) {
		r.Told = append(r.Told, say.Sentence(m))
	}
	for i := range result.Findings {
		one := &result.Findings[i]
		switch {
		case one.Accepted != "":
			r.Accepted++
		case one.Severity == check.Error:
			r.Errors++
		case one.Severity == check.Warning:
			r.Warnings++
		default:
			r.Advice++
		}
		told := finding{
			Rule: one.Rule, Severity: one.Severity.String(), Accepted: one.Accepted, Forbids: forbids(one.Forbids),
			File: r.Project, Line: f.Line(one.Place), Bay: one.Place.Bay + 1, Front: one.Front, Inner: one.Inner, Other: one.Other,
			Where: say.Say(one.Where), What: say.Say(one.What), Change: say.Say(one.Change),
			FoundMM: finite(one.Found.MM()), NeededMM: finite(one.Needed.MM()), FoundKg: finite(one.FoundKg), NeededKg: finite(one.NeededKg), Fixes: []string{},
		}
		if at := one.Place; at.Cabinet >= 0 {
			c := &f.Project.Cabinets[at.Cabinet]
			told.Cabinet = c.Name
			if at.Bay >= 0 && at.Front >= 0 {
				told.Name = c.Bays[at.Bay].Fronts[at.Front].Name
			}
		}
		if one.Accepted == "" {
			for _, e := range layout.Offered(f.Project, result, *one) {
				told.Fixes = append(told.Fixes, say.Say(e.Label()))
			}
		}
		r.Findings = append(r.Findings, told)
	}
}

// fail puts an error into the report, each problem of a file for itself.
func (r *telling) fail(err error, say message.Language) {
	var all yamlfile.Problems
	if !errors.As(err, &all) {
		r.Problems = append(r.Problems, problem{What: say.Say(message.Of(err))})
		return
	}
	for _, p := range all {
		r.Problems = append(r.Problems, problem{p.File, p.Line, p.Column, say.Say(p.Message), say.Say(p.Advice)})
	}
}

// print writes the report on one line.
func (r *telling) print(c console) {
	e := json.NewEncoder(c.out)
	e.SetEscapeHTML(false)
	if err := e.Encode(r); err != nil {
		fmt.Fprintln(c.err, err)
	}
}

// finite keeps what JSON has no number for out of it.
func finite(v float64) float64 {
	if math.IsNaN(v) || math.IsInf(v, 0) {
		return 0
	}
	return v
}

func forbids(w check.Work) string {
	switch w {
	case check.Drilling:
		return "drilling"
	case check.Screwing:
		return "screwing"
	}
	return "nothing"
}

// findingsSchema is the JSON Schema of a report.
func findingsSchema() []byte {
	s := schemaOf(reflect.TypeFor[telling]())
	s["$schema"], s["title"] = "https://json-schema.org/draft/2020-12/schema", "What frontlay check and frontlay print tell with --json"
	s["description"] = "One object on a line; with --watch one for each check. Names of fields that end in _mm are lengths in millimetres, those in _kg weights in kilograms."
	data, err := json.MarshalIndent(s, "", "  ")
	if err != nil {
		panic("frontlay: " + err.Error()) // maps, lists and texts always encode
	}
	return append(data, '\n')
}

func schemaOf(t reflect.Type) map[string]any {
	switch t.Kind() {
	case reflect.Slice:
		return map[string]any{"type": "array", "items": schemaOf(t.Elem())}
	case reflect.Int:
		return map[string]any{"type": "integer", "minimum": 0}
	case reflect.Float64:
		return map[string]any{"type": "number"}
	case reflect.String:
		return map[string]any{"type": "string"}
	}
	properties, required := map[string]any{}, []string{}
	for i := range t.NumField() {
		f := t.Field(i)
		one := schemaOf(f.Type)
		one["description"] = f.Tag.Get("doc")
		if words := f.Tag.Get("oneOf"); words != "" {
			one["enum"] = strings.Split(words, ",")
		}
		properties[f.Tag.Get("json")] = one
		required = append(required, f.Tag.Get("json"))
	}
	return map[string]any{"type": "object", "properties": properties, "required": required, "additionalProperties": false}
}
