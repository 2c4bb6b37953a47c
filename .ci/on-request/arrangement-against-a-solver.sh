#!/usr/bin/env bash
# On request: plans of generated stores against an exact solver (some 450 MB of packages, and a quarter of an hour).
# Every plan must hold and be no worse than first fit; the optimum at 25 containers; at 300 within 10 % of the solver's
# answer in 60 s with the usual effort and within 5 % with the thorough one.
set -eu
cd "$(dirname "$0")/../.."
dotnet build -c Release tests/Stockroom.Benchmarks -v q --nologo
compare() { dotnet tests/Stockroom.Benchmarks/bin/Release/net10.0/Stockroom.Benchmarks.dll --arrange "$@"; }
compare 25 30 20 0.25
compare 25 30 20 0.6
compare 100 5 60 0.25
compare 300 4 60 0.25
compare 1000 1 300 0.25
