package main

import (
	"flag"
	"slices"

	"frontlay/layout/sheet"
	"frontlay/model/length"
)

// labelFlags say how the stickers of a sheet lie on it, as its pack tells.
type labelFlags struct {
	grid, margins, pitch *string
	first                *int
}

func addLabelFlags(fs *flag.FlagSet) labelFlags {
	return labelFlags{
		fs.String("labels", "", "print labels for all boards; a sheet of them has `COLUMNSxROWS`"),
		fs.String("label-margins", "", "how far it is to the first label, `LEFTxTOP`, as the pack tells; without it the labels fill the sheet"),
		fs.String("label-pitch", "", "how far it is from one label to the next, `ACROSSxDOWN`, as the pack tells"),
		fs.Int("first", 1, "begin with label `N` of a sheet that is used up before it"),
	}
}

// use takes the format over. Who types a format wants labels: without other parts they
// are all that is printed.
func (l labelFlags) use(o *sheet.Options) error {
	o.First = *l.first
	with := slices.Contains(o.Parts, sheet.Labels) || len(o.Parts) == 0 && slices.Contains(o.For.Parts(), sheet.Labels)
	if *l.grid != "" && len(o.Parts) == 0 && !with {
		o.Parts, with = []sheet.Part{sheet.Labels}, true
	}
	if *l.grid == "" {
		*l.grid = sheet.DefaultLabels.Grid()
	}
	var err error
	if o.Labels, err = sheet.ParseLabels(*l.grid, *l.margins, *l.pitch, length.UnitMM); err != nil || !with {
		return err
	}
	return o.CheckLabels()
}
