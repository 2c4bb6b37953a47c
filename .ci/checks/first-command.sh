#!/usr/bin/env bash
# The README's first command, as it stands there, with no terminal: the report, the labels, exit 0.
set -u
cd "$(dirname "$0")/../.."
work=$(mktemp -d)
trap 'rm -rf "$work"' EXIT
grep -q '^dotnet run --project src/Stockroom -- demo$' README.md || { echo "the README no longer names the first command"; exit 1; }
XDG_DATA_HOME="$work" dotnet run --project src/Stockroom -- demo >"$work/report" 2>"$work/errors" </dev/null || { echo "it failed:"; cat "$work/errors"; exit 1; }
for found in 'hands off' 'can burst' 'Ammonia' 'Sulfuric acid 37%' 'n-hexane' 'does not stand bromine' 'Contents unknown' 'test for peroxides' 'top up the water cover' 'top up the paraffin oil cover' 'past half of its strength'; do
  grep -qi -- "$found" "$work/report" || { echo "the report does not find: $found"; exit 1; }
done
[ -s "$work/stockroom/demo.stockbook/labels.pdf" ] || { echo "no labels were written"; exit 1; }
echo "the first command reports $(grep -cE '^(DANGER|Warning|Due)' "$work/report") findings and writes the labels"
