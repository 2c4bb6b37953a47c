#!/usr/bin/env bash
# Kills the program ten times in the middle of a stream of entries. Whatever it had acknowledged must be there, and the chain whole.
set -u
cd "$(dirname "$0")/../.."
program="$PWD/src/Stockroom/bin/Debug/net10.0/stockroom.dll"
[ -e "$program" ] || dotnet build src/Stockroom -v q --nologo || exit 1
work=$(mktemp -d)
trap 'rm -rf "$work"' EXIT
export STOCKROOM_BOOK="$work/kill.stockbook"
stockroom() { dotnet "$program" "$@"; }
stockroom place add bench --kind room >/dev/null 2>&1 || { echo "the book could not be made"; exit 1; }

for round in 1 2 3 4 5 6 7 8 9 10; do
  mkfifo "$work/lines"
  dotnet "$program" add --journal - <"$work/lines" >>"$work/acknowledged" 2>>"$work/errors" &
  writer=$!
  ( for i in $(seq 1 5000); do printf 'add\tsodium chloride\t--amount\t%s g\t--place\tbench\n' "$i"; done ) >"$work/lines" 2>/dev/null &
  feeder=$!
  before=$(grep -c '^entry ' "$work/acknowledged" 2>/dev/null)
  for wait in $(seq 1 600); do
    now=$(grep -c '^entry ' "$work/acknowledged" 2>/dev/null)
    [ "$now" -gt $((before + 5 + round * 3)) ] && break
    sleep 0.05
  done
  kill -9 "$writer" 2>/dev/null
  wait "$writer" 2>/dev/null
  kill "$feeder" 2>/dev/null
  wait "$feeder" 2>/dev/null
  rm -f "$work/lines"
done

acknowledged=$(sed -n 's/^entry [0-9]*: \([A-Z0-9]*\) received.*/\1/p' "$work/acknowledged" | sort)
count=$(printf '%s\n' "$acknowledged" | grep -c .)
[ "$count" -ge 100 ] || { echo "only $count entries were acknowledged in ten rounds"; cat "$work/errors"; exit 1; }
stockroom verify || { echo "the book does not hold after the kills"; exit 1; }
stockroom list --json >"$work/list.json" || exit 1
there=$(sed -n 's/^ *"id": "\([A-Z0-9]*\)".*/\1/p' "$work/list.json" | sort)
lost=$(comm -23 <(printf '%s\n' "$acknowledged") <(printf '%s\n' "$there"))
[ -z "$lost" ] || { echo "acknowledged and lost: $lost"; exit 1; }
echo "10 kills: $count acknowledged entries, all there, chain whole"
