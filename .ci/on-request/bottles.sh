#!/usr/bin/env bash
# On request: simulated bottles, 1,000 or more, weighed eight times each (2,500 take some two minutes on two cores); prints by kind how many
# bands held the truth, how many alarms were false, and how many leaks were flagged, for the seeds set aside and for those of development.
set -eu
cd "$(dirname "$0")/../.."
export STOCKROOM_BOTTLES=${1:-2500}
dotnet build -c Release tests/Stockroom.Assessment.Tests -v q --nologo
tests/Stockroom.Assessment.Tests/bin/Release/net10.0/Stockroom.Assessment.Tests -class "*BottleCalibrationTests" -showLiveOutput | sed 's/.*\[OUTPUT\] //'
