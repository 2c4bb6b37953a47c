#!/usr/bin/env bash
# Prints the demo's labels, lays them down in dots at 203, 300 and 600 dpi, and scans every code at each; the hazard statements must be in the file's text.
set -u
cd "$(dirname "$0")/../.."
program="$PWD/src/Stockroom/bin/Debug/net10.0/stockroom.dll"
[ -e "$program" ] || dotnet build src/Stockroom -v q --nologo || exit 1
for tool in pdftoppm pdftotext zbarimg; do
  command -v "$tool" >/dev/null || { echo "$tool is missing"; exit 1; }
done
work=$(mktemp -d)
trap 'rm -rf "$work"' EXIT
export STOCKROOM_BOOK="$work/labels.stockbook"
dotnet "$program" demo --report --book "$STOCKROOM_BOOK" >"$work/report" || { echo "the demo failed"; exit 1; }
dotnet "$program" list --json >"$work/list.json" || exit 1
sed -n 's/^ *"id": "\([A-Z0-9]*\)".*/\1/p' "$work/list.json" | sort >"$work/ids"
for dpi in 203 300 600; do
  pdftoppm -r "$dpi" -gray -aa no -aaVector no "$STOCKROOM_BOOK/labels.pdf" "$work/page" || exit 1
  for page in "$work"/page*.pgm; do zbarimg -q --raw "$page" 2>/dev/null; done | sed -n 's/^STOCKROOM:\([A-Z0-9]*\).*/\1/p' | sort >"$work/scanned"
  diff "$work/ids" "$work/scanned" >"$work/difference" || { echo "at $dpi dpi printed and scanned ids differ:"; cat "$work/difference"; exit 1; }
  rm "$work"/page*.pgm
done
pdftotext -raw "$STOCKROOM_BOOK/labels.pdf" - | tr '\n' ' ' | tr -s ' ' >"$work/text"
missing=0 checked=0
while read -r statement; do
  grep -qF "$statement" "$work/text" || { echo "not on the labels: $statement"; missing=1; }
  checked=$((checked + 1))
done < <(sed -n '/"hazard_statements"/,/\]/p' "$work/list.json" | sed -n 's/^ *"[EUH0-9A-Za-z+ ]*[0-9][A-Za-z]* \(.*\)",\{0,1\}$/\1/p' | sort -u)
[ "$missing" = 0 ] || exit 1
[ "$checked" -ge 20 ] || { echo "only $checked statements were looked for"; exit 1; }
echo "$(wc -l <"$work/ids") labels: every code scans to its id at 203, 300 and 600 dpi, $checked different hazard statements are in the text"
