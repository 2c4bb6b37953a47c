#!/usr/bin/env bash
# Through the verbs, on disks that really refuse: a full one, one mounted read-only, a folder that may not be written. The
# book says it in one line with exit 3, loses nothing, can be read, and goes on when the cause is gone.
set -u
cd "$(dirname "$0")/../.."
program="$PWD/src/Stockroom/bin/Debug/net10.0"
[ -e "$program/stockroom.dll" ] || dotnet build src/Stockroom -v q --nologo || exit 1
if [ -z "${STOCKROOM_CHECK_IN_NAMESPACE:-}" ]; then
  if unshare -rm true 2>/dev/null; then
    STOCKROOM_CHECK_IN_NAMESPACE=1 exec unshare -rm bash ".ci/checks/$(basename "$0")"
  fi
  echo "not tried: this machine does not let a check mount a disk of its own"
  exit 0
fi

work=$(mktemp -d)
trap 'umount "$work/disk" 2>/dev/null; rm -rf "$work"' EXIT
fail() { echo "$*"; exit 1; }
stockroom() { dotnet "$program/stockroom.dll" "$@"; }
# Runs a verb that must be refused: exit 3, nothing on standard output, one line that says why.
refused() {
  local why=$1; shift
  stockroom "$@" >"$work/out" 2>"$work/error"
  local code=$?
  [ "$code" = 3 ] || fail "exit $code in place of 3 for '$*': $(cat "$work/error")"
  [ ! -s "$work/out" ] || fail "'$*' printed something"
  [ "$(wc -l <"$work/error")" = 1 ] || fail "'$*' did not answer in one line: $(cat "$work/error")"
  grep -q "$why" "$work/error" || fail "'$*' does not say '$why': $(cat "$work/error")"
}
entries() { stockroom ledger 2>/dev/null | wc -l; }

mkdir "$work/disk"
mount -t tmpfs -o size=4m tmpfs "$work/disk" || fail "no disk could be mounted"
export STOCKROOM_BOOK="$work/disk/small.stockbook"
stockroom place add store --kind room >/dev/null 2>"$work/made" || fail "no book could be made: $(cat "$work/made")"
stockroom add acetone --place store --amount "1 g" >/dev/null || fail "nothing could be booked"
before=$(entries)

dd if=/dev/zero of="$work/disk/filler" bs=1k 2>/dev/null
# What the journal's last block still holds may be booked; then the disk is really full.
long=$(head -c 1900 /dev/zero | tr '\0' x)
for _ in 1 2 3 4 5 6; do
  stockroom add acetone --place store --amount "2 g" --note "$long" >"$work/out" 2>/dev/null || break
done
before=$(entries)
refused "the disk is full" add acetone --place store --amount "2 g" --note "$long"
refused "the disk is full" backup "$work/disk/a.stockbackup"
[ "$(entries)" = "$before" ] || fail "a full disk changed the ledger"
rm "$work/disk/filler"
stockroom add acetone --place store --amount "3 g" >/dev/null || fail "it does not go on when there is room"
stockroom verify >/dev/null || fail "verify after the full disk"
before=$(entries)

mount -o remount,ro "$work/disk" || fail "the disk could not be made read-only"
refused "read-only" add acetone --place store --amount "4 g"
[ "$(entries)" = "$before" ] || fail "a read-only disk cannot be read"
stockroom verify >/dev/null || fail "verify on a read-only disk"
mount -o remount,rw "$work/disk" || fail "the disk could not be made writable"
stockroom add acetone --place store --amount "5 g" >/dev/null || fail "it does not go on when the disk can be written"
[ "$(entries)" = $((before + 1)) ] || fail "the entry is not there"
stockroom verify >/dev/null || fail "verify at the end"
echo "full disk and read-only disk: refused in one line, read all the same, went on when the cause was gone"
