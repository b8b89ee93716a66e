#!/usr/bin/env bash
# Our records, figures and catalogue in the hands of programs that are not ours.
# Prints one line a check and the count; fails when any check fails.
set -uo pipefail
cd "$(dirname "$0")"
root=$(cd ../.. && pwd)
python=$root/.venv/bin/python
program=${WITNESSMARK_BIN:-$root/target/debug/witnessmark}
export WITNESSMARK_KEYCHAIN=off PYTHONDONTWRITEBYTECODE=1
work=$(mktemp -d)
trap 'rm -rf "$work"' EXIT
log=$work/log
: >"$log"

die() { echo "tests/outside: $*" >&2; exit 2; }

[ -x "$program" ] || die "$program is not built: cargo build -p witnessmark-cli"
# The requirements as installed are kept beside them, so that a second run needs no network.
if ! cmp -s requirements.txt "$root/.venv/installed.txt"; then
  { [ -x "$python" ] || python3 -m venv "$root/.venv"; } &&
    "$python" -m pip install --quiet --disable-pip-version-check -r requirements.txt &&
    cp requirements.txt "$root/.venv/installed.txt" || die "the Python packages can't be installed"
fi
if [ package-lock.json -nt node_modules/.package-lock.json ]; then
  npm ci --silent --no-audit --no-fund || die "the Node packages can't be installed"
fi

# check NAME COMMAND…: one check, by exit code.
check() {
  local name=$1 told
  shift
  if told=$("$@" 2>&1); then echo "ok $name"; else echo "FAILED $name: $(tail -n 1 <<<"$told")"; fi | tee -a "$log"
}
# checks SCRIPT…: a script that tells its own checks; one that stops early counts as one failed.
checks() {
  "$@" 2>"$work/err" | tee -a "$log"
  local code=${PIPESTATUS[0]}
  if [ "$code" -gt 1 ] || { [ "$code" -eq 1 ] && [ -s "$work/err" ]; }; then
    echo "FAILED $*: $(tail -n 1 "$work/err")" | tee -a "$log"
  fi
}
# no NAME COMMAND…: the answer must be no (exit 1), not a fault (2) and not yes (0).
no() {
  local name=$1
  shift
  "$@" >/dev/null 2>&1
  if [ $? -eq 1 ]; then echo "ok $name"; else echo "FAILED $name"; fi | tee -a "$log"
}

# Bundles that we write: every invented machine of the demonstration.
"$program" --data "$work/data" demo >/dev/null || die "the demonstration can't be made"
bundles=()
for id in $("$program" --data "$work/data" machine list --json | "$python" -c 'import json, sys; print(*[m["id"] for m in json.load(sys.stdin)])'); do
  "$program" --data "$work/data" export "$id" "$work/$id.jsonl" >/dev/null || die "machine $id can't be exported"
  bundles+=("$work/$id.jsonl")
done
[ ${#bundles[@]} -gt 0 ] || die "the demonstration has no machine"
checks "$python" records.py verify "${bundles[@]}"
checks node records.mjs verify "${bundles[@]}"

# Bundles that they write.
"$python" records.py sign "$work/python.jsonl" || die "jwcrypto can't sign"
node records.mjs sign "$work/node.jsonl" || die "jose can't sign"
for by in python node; do
  check "we verify what $by signed" "$program" verify "$work/$by.jsonl"
  sed 's/Written elsewhere/Written elsewherd/' "$work/$by.jsonl" >"$work/altered.jsonl"
  no "we refuse what $by signed, altered" "$program" verify "$work/altered.jsonl"
  tail -n 1 "$work/$by.jsonl" >"$work/keyless.jsonl"
  no "we refuse what $by signed, without its key" "$program" verify "$work/keyless.jsonl"
done
# Each verifies the other's too.
cat "$work/python.jsonl" "$work/node.jsonl" >"$work/both.jsonl"
check "we verify both in one file" "$program" verify "$work/both.jsonl"
checks "$python" records.py verify "$work/both.jsonl"
checks node records.mjs verify "$work/both.jsonl"

check "the table of units is what pint says" "$python" units.py --check
checks "$python" schemas.py "$program"
checks "$python" graph.py "$program"
checks "$python" papers.py "$program"
checks "$python" figures.py "$program"
checks "$python" fleet.py "$program"
check "the sample logs are what pandas reads them as" "$python" logs.py --check
checks "$python" logs.py "$program"

# A school's server, by clients that are not ours and by what makes requests of all sorts.
checks "$python" client.py "$program"
checks "$python" school.py "$program" node client.mjs
checks "$python" door.py "$program"
checks node deploy.mjs "$program"

passed=$(grep -c '^ok ' "$log")
failed=$(grep -c '^FAILED ' "$log")
echo "$passed passed, $failed failed"
[ "$failed" -eq 0 ]
