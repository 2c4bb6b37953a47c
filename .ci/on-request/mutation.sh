#!/usr/bin/env bash
# On request: mutation runs on the ledger, hazard and loss code by the tests of their own projects, with dotnet-stryker. Prints
# what share of the mutants the tests kill and every one that they do not; fails below 80 %. Works on a copy of what is
# committed. "mutation.sh ledgers" (minutes), "hazards" (half an hour) or "losses" (two hours, on two cores) runs one of them;
# "mutation.sh losses PATTERN" takes only the files under Losses that the pattern names, such as 'WeighIns/*.cs'.
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

# Nearly every test of losses runs nearly every law: a run that lets each mutant meet them all takes many hours. So the run only
# makes the mutants, with one test that has nothing to do with them, and each is then tried alone: by the recorded forecasts, and
# by the other tests of losses where those see nothing, that of halved steps last. The simulated bottles are left out.
losses() {
  cd "$work/checkout/tests/Stockroom.Assessment.Tests" || exit 1
  dotnet build -v q --nologo -p:RunAnalyzers=false || return 1
  cp -r bin/Debug/net10.0 "$work/tests"
  find . -name '*Tests.cs' -not -path './obj/*' -not -name MixFileTests.cs -delete
  dotnet dotnet-stryker --test-runner mtp --project Stockroom.Assessment.csproj -m "**/Losses/$1" -r json -c 2 --skip-version-check >"$work/losses.log" 2>&1 &
  while kill -0 $! 2>/dev/null && ! grep -q 'coverage capture complete' "$work/losses.log"; do sleep 1; done
  cp bin/Debug/net10.0/Stockroom.Assessment.dll "$work/tests"
  wait $! || { tail -n 30 "$work/losses.log"; return 1; }
  python3 "$here/.ci/on-request/mutation.py" 80 losses StrykerOutput/*/reports/mutation-report.json "$work/tests" Stockroom.Assessment.Tests.dll \
    "-class *RecordedForecastTests" "-namespace Stockroom.Assessment.Tests.Losses -class- *BottleCalibrationTests -class- *StepSizeTests" "-class *StepSizeTests"
}

failed=0
case ${1:-all} in ledgers | all) run ledgers Book "**/Ledgers/*.cs" || failed=1 ;; esac
case ${1:-all} in hazards | all) run hazards Chemistry "**/Hazards/**/*.cs" || failed=1 ;; esac
case ${1:-all} in losses | all) losses "${2:-**/*.cs}" || failed=1 ;; esac
exit $failed
