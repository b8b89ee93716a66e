# make run    set up, build and start the app; with no display, serve the same screens on loopback
# make test   set up and pass everything
# make demo   an invented school of twelve machines: its server, its board, its instructor's app
# The other targets are steps of these two, or an author's tools; DEVELOPERS.md explains them.

SHELL := bash
.SHELLFLAGS := -eu -o pipefail -c
.DEFAULT_GOAL := help
.PHONY: help run test setup-core setup-shell setup-test ui core shell lint unit outside journeys licences types bench shots demo clean

DATA ?= .data
CARGO ?= cargo
export CARGO_TERM_COLOR ?= auto

# System packages: for the core and the loopback server; for the window; for the tests.
CORE_PACKAGES := build-essential pkg-config libdbus-1-dev
SHELL_PACKAGES := libwebkit2gtk-4.1-dev librsvg2-dev fonts-dejavu-core dbus
TEST_PACKAGES := webkit2gtk-driver xvfb xauth dbus-x11 chromium python3-venv \
  poppler-utils zbar-tools librsvg2-bin postgresql

help:
	@sed -n '1,4p' Makefile

# Installs what is missing among $(1), asks nothing, says what it does.
define packages
	@missing=(); for p in $(1); do dpkg-query -W -f='$${Status}' $$p 2>/dev/null | grep -q 'ok installed' || missing+=($$p); done; \
	if [ $${#missing[@]} -gt 0 ]; then \
	  echo "Installing system packages: $${missing[*]}"; \
	  as=; [ "$$(id -u)" = 0 ] || as=sudo; \
	  $$as apt-get update -qq && DEBIAN_FRONTEND=noninteractive $$as apt-get install -y -qq --no-install-recommends "$${missing[@]}" >/dev/null; \
	fi
endef

setup-core:
	$(call packages,$(CORE_PACKAGES))
setup-shell: setup-core
	$(call packages,$(SHELL_PACKAGES))
setup-test: setup-shell
	$(call packages,$(TEST_PACKAGES))

ui/node_modules/.package-lock.json: ui/package-lock.json
	cd ui && npm ci --no-audit --no-fund
ui/dist/index.html: ui/node_modules/.package-lock.json $(shell find ui/src ui/board ui/public ui/index.html ui/board.html ui/vite.config.ts shared/catalogue/texts -type f 2>/dev/null)
	cd ui && npm run --silent build
ui: ui/dist/index.html

core: setup-core ui
	$(CARGO) build --quiet
shell: setup-shell ui
	$(CARGO) build --quiet --workspace

# A window where there is a display, else the same screens in a browser on this machine.
run:
	@if [ -n "$${DISPLAY:-}$${WAYLAND_DISPLAY:-}" ]; then \
	  $(MAKE) --no-print-directory shell && WITNESSMARK_DATA="$${WITNESSMARK_DATA:-$(DATA)}" target/debug/witnessmark-shell; \
	else \
	  $(MAKE) --no-print-directory core && echo "No display here: open this address in a browser on this machine. Ctrl-C ends it." && \
	  target/debug/witnessmark --data "$${WITNESSMARK_DATA:-$(DATA)}" serve-ui; \
	fi

# An invented school: its server, its board, its instructor's app.
DEMO ?= .demo
demo: core
	shared/server/demo.sh $(DEMO) target/debug/witnessmark

test: setup-test shell lint unit outside journeys licences
	@echo "All tests passed."

lint: shell
	cd ui && npm run --silent check
	$(CARGO) fmt --check
	$(CARGO) clippy --quiet --workspace --all-targets -- -D warnings
# Tests drive the built programs, so these are built first; no keychain asks a person who isn't there.
unit: shell
	WITNESSMARK_KEYCHAIN=off $(CARGO) test --quiet --workspace --no-fail-fast
outside: shell
	WITNESSMARK_KEYCHAIN=off tests/outside/run.sh
journeys: shell
	WITNESSMARK_KEYCHAIN=off tests/journeys/run.sh
licences: ui
	python3 tests/outside/licences.py

# Writes the UI's types and the catalogue's schemas anew from the Rust types.
types:
	WITNESSMARK_BLESS=1 $(CARGO) test --quiet -p witnessmark-app --test types
# Speed, as ratios against baselines measured in the same run.
bench: setup-test ui
	$(CARGO) build --quiet --release -p witnessmark-shell --bins --examples
	WITNESSMARK_KEYCHAIN=off dbus-run-session -- xvfb-run -a $(CARGO) bench --quiet -p witnessmark-tests
# Every screen, phone and wide, light and dark, into tests/shots.
shots: shell
	WITNESSMARK_KEYCHAIN=off tests/journeys/shots.sh

clean:
	$(CARGO) clean
	rm -rf ui/dist ui/node_modules .venv tests/*/node_modules
