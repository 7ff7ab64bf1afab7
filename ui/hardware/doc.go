// Package hardware is the page on which hardware sheets are made, copied and
// edited, with a sketch that shows what each figure is on the part.
package hardware
