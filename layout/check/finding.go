// Package check finds what would go wrong at the bench. A rule is one value, with
// all that is to be said about it, in the file of its subject; Rules lists them.
package check

import (
	"frontlay/layout/mark"
	"frontlay/model"
	"frontlay/model/edit"
	"frontlay/model/length"
	"frontlay/model/message"
)

// Severity tells how bad a finding is.
type Severity uint8

// The severities, worst first.
const (
	Error Severity = iota
	Warning
	Advice
)

// String is the severity's name.
func (s Severity) String() string {
	switch s {
	case Error:
		return "error"
	case Warning:
		return "warning"
	default:
		return "advice"
	}
}

// Word is the severity's name as a message.
func (s Severity) Word() message.Message {
	switch s {
	case Error:
		return message.New("error")
	case Warning:
		return message.New("warning")
	default:
		return message.New("advice")
	}
}

// Work is work for a front that an open error forbids; templates say so. It is to
// be said for each rule: the zero Work is none.
type Work uint8

// What can be forbidden.
const (
	Nothing  Work = iota + 1
	Drilling      // the front's holes would be wrong
	Screwing      // its runner's screws would be
)

// Finding is one result of the check. Found and Needed are lengths; a finding
// about weight has FoundKg and NeededKg instead. Front is the number of the front,
// 0 where it is about more than one.
type Finding struct {
	Rule     string
	Severity Severity
	Forbids  Work
	Place    model.Place
	Front    int
	Inner    int // which inner drawer behind that front, from 1; 0: none
	Other    int // the second front of a pair that can't both stay; 0: none
	Found    length.Length
	Needed   length.Length
	FoundKg  float64
	NeededKg float64
	What     message.Message // what is wrong, with the figures
	Where    message.Message // cabinet, bay, front, in words
	Change   message.Message // what to change
	Spots    []mark.Spot     // the places that it speaks of
	Flag     message.Message // a few words for its flag in the drawing
	Fixes    []edit.Edit     // changes that may mend it, the best first; layout.Offered tells which really do
	Accepted string          // the reason why the user accepts it; empty: not accepted
}

// Open tells an error that the user has not accepted.
func (f *Finding) Open() bool { return f.Severity == Error && f.Accepted == "" }
