#!/usr/bin/env bash
# On request: mutation runs on the ledger, hazard and loss code by the tests of their own projects, with dotnet-stryker. Prints
# what share of the mutants the tests kill and every one that they do not; fails below 80 %. Works on a copy of what is
# committed. "mutation.sh ledgers", "hazards" or "losses" runs one of them; the two latter take an hour or more on two cores.
# "mutation.sh losses PATTERN" takes only the files under Losses that the pattern names, such as 'WeighIns/*.cs'. Of the tests of
# Assessment the slow ones that have nothing to do with losses, and the simulated bottles, are left out: that kills fewer.
set -u
cd "$(dirname "$0")/../.."
here=$PWD
work=$(mktemp -d)
trap 'rm -rf "$work"' EXIT
git clone -q . "$work/checkout" || exit 1
cd "$work/checkout" || exit 1
dotnet new tool-manifest >/dev/null && dotnet tool install dotnet-stryker --version 5.1.0 >/dev/null || { echo "dotnet-stryker cannot be had"; exit 1; }
# The tables of the reference folder make each run slow and kill little that the project's own checks do not.
unset STOCKROOM_REFERENCE

run() {
  cd "$work/checkout/tests/Stockroom.$2.Tests" || exit 1
  dotnet dotnet-stryker --test-runner mtp --project "Stockroom.$2.csproj" -m "$3" -r json -c 2 --skip-version-check >"$work/$1.log" 2>&1 &
  # The mutated build is there while the run lasts.
  while kill -0 $! 2>/dev/null && ! grep -q 'coverage capture complete' "$work/$1.log"; do sleep 1; done
  cp -r bin/Debug/net10.0 "$work/$1"
  wait $! || { tail -n 30 "$work/$1.log"; return 1; }
  python3 "$here/.ci/on-request/mutation.py" 80 "$1" StrykerOutput/*/reports/mutation-report.json "$work/$1" "Stockroom.$2.Tests.dll"
}

slow="Arrangement/OptimumTests.cs Arrangement/LimitTests.cs Neighbours/*PropertyTests.cs Neighbours/ClassTables/ClassLayerTests.cs Vessels/AmpouleJudgeTests.cs Losses/Simulation Losses/ForecastPropertyTests.cs"
failed=0
case ${1:-all} in ledgers | all) run ledgers Book "**/Ledgers/*.cs" || failed=1 ;; esac
case ${1:-all} in hazards | all) run hazards Chemistry "**/Hazards/**/*.cs" || failed=1 ;; esac
case ${1:-all} in losses | all) (cd "$work/checkout/tests/Stockroom.Assessment.Tests" && rm -rf $slow) && run losses Assessment "**/Losses/${2:-**/*.cs}" || failed=1 ;; esac
exit $failed
