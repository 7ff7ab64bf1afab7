package check

import "frontlay/model"

// Rules are all the rules, in the order in which findings are listed: what
// makes the job impossible first, then what spoils a panel, then what spoils
// the looks. The list is written out so that nothing is checked unseen.
func Rules() []Rule {
	return []Rule{
		sums,
		lineUp,
		span,
		noFront,
		hardware,
		frontBuild,
		backGroove,
		coverBelow,
		coverBeside,
		overlay,
		collision,
		drawerSize,
		roomAbove,
		innerHidden,
		openingNarrow,
		niche,
		runnerDepth,
		runnerLow,
		holeEdge,
		holeGap,
		holeLipping,
		holeDepth,
		thinField,
		handleBehind,
		partitionScrews,
		runnerScrews,
		screwReach,
		runnerLoad,
		besidePath,
		tips,
		sampleSheet,
		holeRows,
		heldNearTop,
		wideFront,
		reveal,
		fixingsAcross,
		panelRoom,
		gapThroughYear,
		smallerBelow,
		nearlyLevel,
		facesNotFlush,
		leftRight,
		jigSettings,
		adjustment,
		doorPassed,
		adjustingShort,
		contents,
		measuredAgain,
	}
}

// Limits are the limits of all rules, in the order of the rules: what a project
// file can set.
func Limits() []model.Limit {
	var all []model.Limit
	for _, r := range Rules() {
		all = append(all, r.Limits...)
	}
	return all
}
