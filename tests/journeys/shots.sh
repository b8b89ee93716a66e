#!/usr/bin/env bash
# Every screen as a picture into tests/shots, for eyes to judge; built programs are there already.
set -euo pipefail
cd "$(dirname "$0")"
[ node_modules/.package-lock.json -nt package-lock.json ] || npm ci --silent --no-audit --no-fund
exec dbus-run-session -- xvfb-run -a node --test --test-timeout=300000 shots.mjs
