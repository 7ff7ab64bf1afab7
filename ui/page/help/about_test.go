package help_test

import (
	"net/url"
	"strings"
	"testing"

	"fyne.io/fyne/v2/test"

	"frontlay/assets"
	"frontlay/ui/field"
	"frontlay/ui/page/help"
	"frontlay/ui/page/pagetest"
)

// About tells the version and where the logs are, and shows the licence of the part
// that is chosen, whole.
func TestAbout(t *testing.T) {
	h := pagetest.New(t)
	opened := ""
	help.About(h.Ask(), help.Facts{Version: "v9.8.7", Logs: "/home/me/frontlay", OpenURL: func(u *url.URL) error { opened = u.Path; return nil }})
	top := h.Win.Canvas().Overlays().Top()
	shown := pagetest.Texts(top)
	if !strings.Contains(shown, "v9.8.7") || !strings.Contains(shown, "/home/me/frontlay") {
		t.Errorf("it says\n%s", shown)
	}
	all := assets.Licences()
	for _, o := range test.LaidOutObjects(top) {
		switch v := o.(type) {
		case *field.Choice:
			if len(v.Options) != len(all) {
				t.Fatalf("%d parts are offered, there are %d", len(v.Options), len(all))
			}
			v.SetSelectedIndex(len(all) - 1)
		case *field.Button:
			if v.Text == "Show in folder" {
				test.Tap(v)
			}
		}
	}
	if !strings.Contains(pagetest.Texts(top), all[len(all)-1].Wording) {
		t.Error("the licence of the chosen part is not shown")
	}
	if opened != "/home/me/frontlay" {
		t.Errorf("the folder that opens is %q", opened)
	}
}
