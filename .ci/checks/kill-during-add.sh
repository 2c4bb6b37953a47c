#!/usr/bin/env bash
# Kills the program in the middle of "add --journal -", again and again: whatever it acknowledged must be in the book.
set -u
cd "$(dirname "$0")/../.."
program="$PWD/src/Stockroom/bin/Debug/net10.0/stockroom.dll"
[ -e "$program" ] || dotnet build src/Stockroom -v q --nologo || exit 1
work=$(mktemp -d)
trap 'rm -rf "$work"' EXIT
stockroom() { dotnet "$program" "$@"; }
fail() { echo "$*"; exit 1; }
kills=${KILLS:-10}
book="$work/kill.stockbook"
export STOCKROOM_BOOK="$book"

stockroom place add store --kind room --id store >/dev/null 2>"$work/made" || fail "no book could be made: $(cat "$work/made")"
: >"$work/acknowledged"
for round in $(seq "$kills"); do
  # The last round's answers go first: the shell opens the new file only once the pipe has a writer.
  rm -f "$work/out"
  mkfifo "$work/lines"
  (n=0; while [ $n -lt 20000 ]; do n=$((n + 1)); echo "acetone --place store --amount \"$n g\" --note \"round $round, line $n\""; done) >"$work/lines" 2>/dev/null &
  feeder=$!
  dotnet "$program" add --journal - --json <"$work/lines" >"$work/out" 2>"$work/error" &
  program_id=$!
  # Not before it has acknowledged something, then after a time that differs from round to round.
  for _ in $(seq 600); do [ -s "$work/out" ] && break; sleep 0.05; done
  [ -s "$work/out" ] || fail "round $round: nothing was acknowledged within 30 s: $(head -n 1 "$work/error")"
  sleep "0.$((RANDOM % 5))$((RANDOM % 10))"
  kill -0 "$program_id" 2>/dev/null || fail "round $round: the program ended before it was killed: $(head -n 1 "$work/error")"
  kill -9 "$program_id"
  wait "$program_id" 2>/dev/null
  kill "$feeder" 2>/dev/null
  wait "$feeder" 2>/dev/null
  rm -f "$work/lines"
  # A last line without its end was not an acknowledgement.
  grep -o '^{"entry":[0-9]*,.*"id":"[0-9A-Z]*".*}$' "$work/out" | sed 's/.*"id":"\([0-9A-Z]*\)".*/\1/' >>"$work/acknowledged"

  stockroom verify >"$work/verify" 2>&1 || fail "round $round: verify: $(grep -v '^everything' "$work/verify" | head -n 3)"
  stockroom place limit store --order "$round" >/dev/null 2>"$work/error" || fail "round $round: the book does not open to write: $(cat "$work/error")"
  stockroom verify >"$work/verify" 2>&1 || fail "round $round: verify after opening anew: $(head -n 3 "$work/verify")"
done

stockroom ledger --json >"$work/ledger" || fail "the ledger cannot be read"
grep -o '"id": "[0-9A-Z]*"' "$work/ledger" | sed 's/.*"\([0-9A-Z]*\)"/\1/' | sort >"$work/booked"
[ -z "$(uniq -d "$work/booked")" ] || fail "an id was booked twice: $(uniq -d "$work/booked" | head -n 3)"
sort "$work/acknowledged" >"$work/promised"
[ -z "$(uniq -d "$work/promised")" ] || fail "an id was acknowledged twice: $(uniq -d "$work/promised" | head -n 3)"
lost=$(comm -23 "$work/promised" "$work/booked")
[ -z "$lost" ] || fail "acknowledged and not in the book: $(echo "$lost" | head -n 5)"
[ "$(wc -l <"$work/promised")" -ge "$kills" ] || fail "too few acknowledgements to say anything"
echo "$kills kills: $(wc -l <"$work/promised") entries acknowledged, all there; $(wc -l <"$work/booked") booked; verify holds"
