// Package disk keeps the user's work: it saves whole files or none, notices what
// other programs changed, journals unsaved edits, locks open files, finds
// hardware sheets, and writes logs and crash reports. It knows nothing of what
// is in the files.
//
// # Promises
//
//   - At any moment, also if the machine stops, a saved file is whole: the version
//     before or the new one. The version before stays beside it.
//   - A file that another program changed or removed is never written over
//     without the user's word.
//   - Unsaved work is on the disk within two seconds, and offered at the next
//     start if the program ended without saving or asking.
//   - What can't be done says so in the user's words, and the work stays in the
//     window.
//   - Logs and reports hold no private names and paths.
//
// # Files
//
// Beside a project bench.yaml:
//
//	bench.yaml.before        the version before the last save
//	.bench.yaml.lock         while a window has it open: whose
//	.bench.yaml.1.saving     for a moment, while it is saved
//
// In the program's own folder:
//
//	SESSION.journal          unsaved work of one window (.new while it is written,
//	                         .broken where it could not be read)
//	SESSION.crash            what the runtime said when the program ended unforeseen
//	frontlay.log             the log (.before: the one before)
//
// Hard links to a project are not kept: a save gives its name to a new file.
// Symbolic links, permissions and, where the user may, the owner are kept.
//
// # Tests
//
// The file system comes in through FS, so that tests make every step of a save,
// of the journal and of a lock fail. Three tests have a long form:
//
//	FRONTLAY_KILLS=300 go test ./model/disk -run 'TestKill$' -v -timeout 60m
//	FRONTLAY_SOAK=100000 go test ./model/disk -run LongDay -v -timeout 60m
//	go test ./model/disk -run '^$' -fuzz FuzzJournal -fuzztime 10m
package disk
