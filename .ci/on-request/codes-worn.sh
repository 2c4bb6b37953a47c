#!/usr/bin/env bash
# On request: codes blurred, covered over 8 % of their area, and wrapped round a vial of 10 mm; prints how many were read.
set -u
cd "$(dirname "$0")/../.."
export STOCKROOM_WORN_CODES=${1:-200}
dotnet build tests/Stockroom.Labels.Tests -v q --nologo || exit 1
program=tests/Stockroom.Labels.Tests/bin/Debug/net10.0
rm -f "$program/artefacts/worn-codes.txt"
"$program/Stockroom.Labels.Tests" -class "*WornCodeTests" >"$program/artefacts/worn.log" || { tail -n 40 "$program/artefacts/worn.log"; exit 1; }
cat "$program/artefacts/worn-codes.txt"
echo "blurred with a standard deviation of a quarter of a module, and wrapped round 10 mm: all read, id and words exactly"
