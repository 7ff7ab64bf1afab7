// Package yamlfile reads and writes projects and hardware sheets as YAML. It is
// the only package that knows the file format.
//
// Every key is described once, by a field (see field.go): how it is read, how
// it is written, what values it takes and what it means. The tables in
// project.go and sheet.go are lists of such fields; reading, writing, the JSON
// Schema and the reference page all follow them, so that they cannot disagree.
//
// Nothing is guessed: unknown keys, values out of range and contradictions are
// Problems with file, line and column. Comments survive a read and a write
// where the node they hang on survives.
package yamlfile
