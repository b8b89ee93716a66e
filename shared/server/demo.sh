#!/usr/bin/env bash
# An invented school of twelve machines with a season behind it: its server and board, and the app of
# its instructor. Everything lies in the folder given, and nothing in it is anybody's.
set -euo pipefail
folder=${1:?a folder for the demonstration}
wm=${2:?the command line}
address=127.0.0.1:7430
pin=271828
passphrase="hedge field looks on"

mkdir -p "$folder"
echo "$pin" > "$folder/pin"
export WITNESSMARK_KEYCHAIN=off
instructor() { "$wm" --data "$folder/instructor" "$@"; }

if [ ! -e "$folder/school.jsonl" ]; then
  echo "Founding the invented school and telling its season ..."
  instructor demo --school --pin-file "$folder/pin" --signatory "Ada Quill (invented)" > /dev/null
  instructor school file -o "$folder/school.jsonl" > /dev/null
fi

"$wm" server --data "$folder/server" --listen "$address" --school "$folder/school.jsonl" &
server=$!
# What ends this ends both.
trap 'kill $server 2> /dev/null; wait $server' EXIT
for _ in $(seq 100); do (exec 3<> /dev/tcp/127.0.0.1/7430) 2> /dev/null && break; sleep 0.1; done

code=$(instructor school show --json | sed -n 's/.*"school":{[^}]*"code":"\([^"]*\)".*/\1/p')
instructor school join "http://$address" --school-code "$code" --pin-file "$folder/pin" > /dev/null
instructor sync > /dev/null
echo "$passphrase" | "$wm" board-passphrase --data "$folder/server" - > /dev/null

cat << TOLD

The school's board:      http://$address/
  to look at it:         passphrase "$passphrase"
  to decide something:   sign in with the app below; its PIN is $pin
                         (or: $wm --data $folder/instructor school sign-in CODE)
The instructor's app:    the address below. Ctrl-C ends both.

TOLD
instructor serve-ui
