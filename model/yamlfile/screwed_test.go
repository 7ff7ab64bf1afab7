package yamlfile

import (
	"os"
	"strings"
	"testing"

	"frontlay/model"
)

// The first key for fronts that are screwed on is still read, and written as what it
// became; a word that it never took is told where it stands.
func TestScrewedBecameAKindOfConnector(t *testing.T) {
	data, err := os.ReadFile("../../testdata/versions/hardware-1.yaml")
	if err != nil {
		t.Fatal(err)
	}
	for word, want := range map[string]model.ConnectorKind{"true": model.Screws, "false": model.Pair} {
		text := strings.Replace(string(data), "connector:\n", "connector:\n  screwed: "+word+" # from inside\n", 1)
		s, err := ReadSheet("old.yaml", []byte(text))
		if err != nil || s.Connector.Kind != want {
			t.Errorf("screwed: %s is read as %+v, %v; want %v", word, s, err, want)
		}
	}
	text := strings.Replace(string(data), "connector:\n", "connector:\n  screwed: perhaps\n", 1)
	if _, err := ReadSheet("old.yaml", []byte(text)); err == nil || !strings.Contains(err.Error(), "screwed") {
		t.Errorf("screwed: perhaps is told as %v", err)
	}
}
