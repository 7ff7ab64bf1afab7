// Package locale gives the process a locale that Fyne understands before Fyne
// looks: it logs an error at start-up where the environment has none, or C, which
// every cron job and many a terminal has. Go initialises packages that depend on
// nothing in order of their paths, so this one comes before Fyne's.
package locale

import "os"

func init() {
	for _, name := range []string{"LC_ALL", "LC_MESSAGES", "LANG"} {
		switch os.Getenv(name) {
		case "C", "POSIX", "C.UTF-8", "C.utf8":
			// A failure leaves the log line that there would have been anyway.
			_ = os.Setenv(name, "en_US.UTF-8")
		}
	}
	if os.Getenv("LC_ALL") == "" && os.Getenv("LANG") == "" {
		_ = os.Setenv("LANG", "en_US.UTF-8")
	}
}
