#!/usr/bin/env bash
# On request: the European statements against the 2008 wording in Debian's texlive-science (package ghsystem).
# GHSYSTEM may name its ghsystem_english.def; without either it says so and ends well.
set -u
cd "$(dirname "$0")/../.."
definitions=${GHSYSTEM:-}
[ -n "$definitions" ] || definitions=$(kpsewhich ghsystem_english.def 2>/dev/null || dpkg -L texlive-science 2>/dev/null | grep 'ghsystem_english\.def$')
if [ -z "$definitions" ] || [ ! -e "$definitions" ]; then
  echo "not compared: texlive-science is not installed"
  exit 0
fi
python3 .ci/on-request/wording-2008.py src/Stockroom.Chemistry/Tables/statements.tsv "$definitions" .ci/on-request/changed-since-2008.tsv
