package main

import (
	"bytes"
	"debug/elf"
	"fmt"
	"maps"
	"regexp"
	"slices"
	"strconv"
	"strings"
)

// packages are the packages of Debian that have a library; none where the program names
// a library only for ways that it does not go: GLFW 3.3 looks for EGL, OSMesa and Vulkan
// where it is asked for a context of these, and Fyne asks for one of GLX.
var packages = map[string]string{
	"libc.so.6":            "libc6",
	"libm.so.6":            "libc6",
	"libGL.so.1":           "libgl1",
	"libGLX.so.0":          "libgl1", // which depends on libglx0
	"libX11.so.6":          "libx11-6",
	"libX11-xcb.so.1":      "libx11-xcb1",
	"libXcursor.so.1":      "libxcursor1",
	"libXi.so.6":           "libxi6",
	"libXinerama.so.1":     "libxinerama1",
	"libXrandr.so.2":       "libxrandr2",
	"libXrender.so.1":      "libxrender1",
	"libXxf86vm.so.1":      "libxxf86vm1",
	"libEGL.so.1":          "",
	"libGLES_CM.so.1":      "",
	"libGLESv1_CM.so.1":    "",
	"libGLESv2.so.2":       "",
	"libOSMesa.so.6":       "",
	"libOSMesa.so.8":       "",
	"libOpenGL.so.0":       "",
	"libvulkan.so.1":       "",
	"libpthread.so.0":      "libc6",
	"libdl.so.2":           "libc6",
	"ld-linux-x86-64.so.2": "libc6",
}

// depends lists the packages that a program of Linux needs: those of the libraries that it
// is linked with, and of those that it loads by name when it runs. A library that nobody
// has given a package is an error.
func depends(binary []byte) (string, error) {
	f, err := elf.NewFile(bytes.NewReader(binary))
	if err != nil {
		return "", err
	}
	linked, err := f.ImportedLibraries()
	if err != nil {
		return "", err
	}
	for _, m := range regexp.MustCompile(`\x00(lib[A-Za-z0-9_+-]+\.so\.[0-9]+)\x00`).FindAllSubmatch(bytes.ReplaceAll(binary, []byte{0}, []byte{0, 0}), -1) {
		linked = append(linked, string(m[1]))
	}
	libc, err := leastLibc(f)
	if err != nil {
		return "", err
	}
	needed := map[string]bool{}
	for _, lib := range linked {
		pkg, known := packages[lib]
		switch {
		case !known:
			return "", fmt.Errorf("the program uses %s: say in cmd/dist/depends.go which package has it", lib)
		case pkg == "libc6":
			needed["libc6 (>= "+libc+")"] = true
		case pkg != "":
			needed[pkg] = true
		}
	}
	return strings.Join(slices.Sorted(maps.Keys(needed)), ", "), nil
}

// leastLibc is the oldest version of the C library that has all that the program takes
// from it.
func leastLibc(f *elf.File) (string, error) {
	symbols, err := f.ImportedSymbols()
	if err != nil {
		return "", err
	}
	least, said := []int{2}, "2"
	for _, s := range symbols {
		v, ok := strings.CutPrefix(s.Version, "GLIBC_")
		if !ok {
			continue
		}
		var numbers []int
		for _, n := range strings.Split(v, ".") {
			i, err := strconv.Atoi(n)
			if err != nil {
				return "", fmt.Errorf("%s needs the version %s", s.Name, s.Version)
			}
			numbers = append(numbers, i)
		}
		if slices.Compare(numbers, least) > 0 {
			least, said = numbers, v
		}
	}
	return said, nil
}
