# frontlay: two commands do everything, on a bare Debian 12 with Go and make.
#   make run    installs what the build needs, builds, opens the demo
#   make test   installs what the tests need, and passes them all

SHELL := /bin/bash
BIN := bin/frontlay
# The tag is Fyne's own: its screens refresh faster with it.
TAGS := migrated_fynedo

BUILD_PACKAGES := gcc pkg-config libgl1-mesa-dev xorg-dev
DIST_PACKAGES := $(BUILD_PACKAGES) git gcc-mingw-w64-x86-64
TEST_PACKAGES := $(BUILD_PACKAGES) xvfb xauth xdotool openbox x11-utils libgl1-mesa-dri \
	mupdf-tools poppler-utils qpdf imagemagick fonts-dejavu-core \
	python3-ezdxf python3-jsonschema gdal-bin cups cups-client cups-filters printer-driver-cups-pdf ghostscript groff-base \
	desktop-file-utils shared-mime-info libglib2.0-bin

.PHONY: run test build dist dist-try build-needs dist-needs test-needs vet tidy picture lint race bench clean

run: build
	@$(BIN) --demo

build: build-needs
	go build -tags $(TAGS) -o $(BIN) ./cmd/frontlay

test: test-needs vet tidy lint
	FRONTLAY_TOOLS=1 go test -tags $(TAGS) -timeout 20m ./...

# Only what is missing is installed, and that is said first.
define need
	@missing=""; \
	for p in $(1); do dpkg-query -W -f='$${Status}' $$p 2>/dev/null | grep -q 'ok installed' || missing="$$missing $$p"; done; \
	if [ -n "$$missing" ]; then \
		if ! command -v apt-get >/dev/null; then echo "Please install what corresponds to these Debian packages:$$missing"; exit 1; fi; \
		echo "Installing Debian packages:$$missing"; \
		sudo=""; [ "$$(id -u)" = 0 ] || sudo=sudo; \
		$$sudo apt-get update -qq && $$sudo env DEBIAN_FRONTEND=noninteractive apt-get install -y -qq --no-install-recommends $$missing >/dev/null; \
	fi
endef

# What people install, below out/dist: a Debian package, a tarball, a .zip for Windows.
# Some minutes the first time.
dist: dist-needs
	go run ./cmd/dist -tags $(TAGS)

# What was built is installed on a bare Debian and run under wine; as root.
dist-try: dist
	$(call need,debootstrap wine wine64 xvfb xdotool imagemagick python3)
	cmd/dist/try.sh

build-needs:
	$(call need,$(BUILD_PACKAGES))

dist-needs:
	$(call need,$(DIST_PACKAGES))

test-needs:
	$(call need,$(TEST_PACKAGES))

vet:
	@out=$$(gofmt -l .); if [ -n "$$out" ]; then echo "not gofmted:"; echo "$$out"; exit 1; fi
	go vet -tags $(TAGS) ./...
	CGO_ENABLED=0 go vet ./...

# The pictures of README and manual that are not true any more, painted by the program itself.
picture:
	CGO_ENABLED=0 go test ./ui -run Picture -picture

# go.mod and go.sum say what is imported, no more and no less.
tidy:
	go mod tidy -diff

# The go command fetches the linter: some minutes the first time, seconds later.
lint:
	CGO_ENABLED=0 go run honnef.co/go/tools/cmd/staticcheck@v0.8.2 -checks all ./...

race: test-needs
	FRONTLAY_TOOLS=1 go test -race -timeout 60m ./...

bench:
	go test -tags $(TAGS) -run '^$$' -bench . -benchmem ./model/yamlfile ./layout ./pdfout ./ui ./ui/screen ./cmd/frontlay

clean:
	rm -rf bin out
