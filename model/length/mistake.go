package length

import "fmt"

// Mistake says what is wrong with a size that was typed, as a format whose
// verbs are all %v and its arguments, so that it can be translated.
type Mistake struct {
	Says string
	Args []any
}

// Error is what is wrong, in English.
func (m *Mistake) Error() string { return fmt.Sprintf(m.Says, m.Args...) }

func wrong(says string, args ...any) error { return &Mistake{says, args} }
