package yamlfile_test

import (
	"fmt"
	"testing"

	"frontlay/model"
	"frontlay/model/length"
	"frontlay/model/yamlfile"
)

// large is a project of n fronts in bays of ten.
func large(b *testing.B, n int) *model.Project {
	b.Helper()
	p := demo(b).Project.Clone()
	one := p.Cabinets[0]
	p.Cabinets = nil
	for n > 0 {
		c := one
		c.Name, c.Bays = fmt.Sprint("Cabinet ", len(p.Cabinets)+1), nil
		for range min(10, (n+9)/10) {
			bay := model.Bay{Hardware: "main"}
			for i := range min(10, n) {
				bay.Fronts = append(bay.Fronts, model.Front{Name: fmt.Sprint("Front ", i), Height: length.MM(int64(60 + i)), Drawer: "low"})
				n--
			}
			c.Bays = append(c.Bays, bay)
		}
		p.Cabinets = append(p.Cabinets, c)
	}
	return p
}

var sizesOfProjects = []int{10, 100, 1000, 10_000}

func BenchmarkRead(b *testing.B) {
	for _, n := range sizesOfProjects {
		b.Run(fmt.Sprintf("fronts=%d", n), func(b *testing.B) {
			p := large(b, n)
			data, err := yamlfile.New(p, limits).Write(p)
			if err != nil {
				b.Fatal(err)
			}
			b.SetBytes(int64(len(data)))
			b.ReportAllocs()
			for b.Loop() {
				if _, err := yamlfile.Read("p", data, samples, limits); err != nil {
					b.Fatal(err)
				}
			}
		})
	}
}

// Write reads back what it has written; Draft, which the journal uses, does not.
func BenchmarkWrite(b *testing.B) {
	for _, n := range sizesOfProjects {
		p := large(b, n)
		data, err := yamlfile.New(p, limits).Write(p)
		if err != nil {
			b.Fatal(err)
		}
		f, err := yamlfile.Read("p", data, samples, limits)
		if err != nil {
			b.Fatal(err)
		}
		for name, write := range map[string]func(*model.Project) ([]byte, error){"write": f.Write, "draft": f.Draft} {
			b.Run(fmt.Sprintf("%s/fronts=%d", name, n), func(b *testing.B) {
				b.ReportAllocs()
				for b.Loop() {
					if _, err := write(p); err != nil {
						b.Fatal(err)
					}
				}
			})
		}
	}
}
