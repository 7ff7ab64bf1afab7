package main

import (
	"os"
	"os/exec"
	"regexp"
	"strings"
	"testing"
	"unicode/utf8"

	"frontlay/layout/list"
	"frontlay/model/message"
)

// Help and manual page tell of every command and flag, and what is completed is all of
// them.
func TestHelpTellsOfEveryCommandAndFlag(t *testing.T) {
	forms := map[string]string{}
	for _, form := range []string{"", "man", "bash"} {
		code, out, errs := do(t, strings.Fields("help "+form)...)
		if code != exitFine || errs != "" {
			t.Fatalf("help %s: exit %d, said %q", form, code, errs)
		}
		forms[form] = out
	}
	if code, _, errs := do(t, "help", "me"); code != exitFailed || !strings.Contains(errs, "help man") {
		t.Errorf("help me: exit %d, said %q", code, errs)
	}
	for _, c := range commands() {
		line := strings.TrimSpace(called(c.name) + " " + c.args)
		if !strings.Contains(forms[""], "  "+line) {
			t.Errorf("the help does not tell of %s", line)
		}
		if !strings.Contains(forms["man"], "\n.B "+roff(line)+"\n") {
			t.Errorf("the manual page does not tell of %s", line)
		}
		var dashes []string
		for _, f := range c.flags() {
			dashes = append(dashes, dashed(f))
			if f.Usage == "" || !strings.Contains(forms[""], "\n  "+written(f)+" ") {
				t.Errorf("the help does not tell of %s of %q", written(f), c.name)
			}
			if !strings.Contains(forms["man"], "\n.BI \""+roff(dashed(f))+"\"") {
				t.Errorf("the manual page does not tell of %s of %q", written(f), c.name)
			}
		}
		if offered := "'" + c.name + "') offered='" + strings.Join(dashes, " ") + "' ;;"; !strings.Contains(forms["bash"], offered) {
			t.Errorf("bash does not complete the flags of %q", c.name)
		}
	}
}

// Bash itself says what it would complete.
func TestBashCompletes(t *testing.T) {
	needTools(t, "bash")
	t.Chdir(t.TempDir())
	for _, name := range []string{"bench.yaml", "bench two.yaml", "notes.txt"} {
		if err := os.WriteFile(name, nil, 0o666); err != nil {
			t.Fatal(err)
		}
	}
	for _, one := range []struct{ typed, want string }{
		{"frontlay pri", "print"},
		{"frontlay print --fo", "--for"},
		{"frontlay print bench.yaml --for off", "office"},
		{"frontlay print bench.yaml --only jig,cor", "jig,corner"},
		{"frontlay print b", "bench two.yaml|bench.yaml"},
		{"frontlay print bench.yaml -o n", "notes.txt"},
		{"frontlay schema s", "sheet"},
		{"frontlay n", "new"},
		{"frontlay --de", "--demo"},
	} {
		script := bashCompletion() + `COMP_WORDS=($1); COMP_CWORD=$((${#COMP_WORDS[@]} - 1)); _frontlay; printf '%s\n' "${COMPREPLY[@]}" | sort`
		out, err := exec.Command("bash", "-c", script, "bash", one.typed).CombinedOutput()
		if got := strings.ReplaceAll(strings.TrimSpace(string(out)), "\n", "|"); err != nil || got != one.want {
			t.Errorf("%s completes %q (%v); want %q", one.typed, got, err, one.want)
		}
	}
}

// What the manual page says is read by man without a complaint.
func TestManReadsTheManualPage(t *testing.T) {
	needTools(t, "groff")
	c := exec.Command("groff", "-man", "-Tutf8", "-ww")
	c.Stdin = strings.NewReader(manualPage())
	var complaints strings.Builder
	c.Stderr = &complaints
	out, err := c.Output()
	if text := regexp.MustCompile("\x1b\\[[0-9;]*m|.\b").ReplaceAllString(string(out), ""); err != nil || complaints.Len() > 0 || !strings.Contains(text, "frontlay print") {
		t.Errorf("%v: %s", err, complaints.String())
	}
}

// The help has every caution that is printed and shown, and no line that a
// terminal would break.
func TestHelpHasTheCautions(t *testing.T) {
	_, out, _ := do(t, "--help")
	words := strings.Join(strings.Fields(out), " ")
	for _, r := range list.Cautions(message.Language{}).Rows {
		if !strings.Contains(words, r.Cells[1]) {
			t.Errorf("the help lacks the caution %q", r.Cells[1])
		}
	}
	for _, line := range strings.Split(out, "\n") {
		if n := utf8.RuneCountInString(line); n > helpWidth {
			t.Errorf("%d signs: %s", n, line)
		}
	}
}
