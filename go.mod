module frontlay

go 1.24

require (
	fyne.io/fyne/v2 v2.7.4 // indirect
	github.com/jung-kurt/gofpdf v1.16.2 // indirect
	golang.org/x/image v0.24.0 // indirect
	gopkg.in/yaml.v3 v3.0.1 // indirect
	pgregory.net/rapid v1.3.0 // indirect
)
