// Package yamlfile reads and writes projects and hardware sheets as YAML. It is
// the only package that knows the file format.
//
// Every key is described once, by a row of model/figure: its bounds, its meaning and the
// value it stands for. Reading (values.go), writing (writer.go), the JSON Schema and
// the reference page all follow those rows, so that they cannot disagree.
//
// Nothing is guessed: unknown keys, values out of range and contradictions are
// Problems with file, line and column. Comments survive a read and a write
// where the node they hang on survives.
package yamlfile
