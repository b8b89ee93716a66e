#!/usr/bin/env bash
# The journeys: in Chromium against the loopback server, then in the app's real window under a display of its own.
set -euo pipefail
cd "$(dirname "$0")"
[ node_modules/.package-lock.json -nt package-lock.json ] || npm ci --silent --no-audit --no-fund
# The time is for what hangs; a slow machine gets there in less.
run() { node --test --test-reporter=spec --test-timeout=600000 "$@"; }
run --test-concurrency=2 [0-9]*.test.mjs
dbus-run-session -- xvfb-run -a node --test --test-reporter=spec --test-timeout=600000 --test-concurrency=1 window*.test.mjs
