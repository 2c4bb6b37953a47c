"""Adds up a mutation report: mutation.py LEAST NAME REPORT FOLDER TESTS [WHICH...]

The run keeps one process for many mutants, so that what is read once (tables, static fields) never sees a later mutant. Every
mutant that lived or was not reached is therefore tried once more in a process of its own: FOLDER holds the mutated build,
TESTS its test program, each WHICH a choice of its tests, the next one tried where the one before kills nothing (none: all
tests at once). A mutant that no test reaches counts as not killed, unless that kills it.
"""
import collections
import concurrent.futures
import json
import os
import shlex
import subprocess
import sys

least, name, report, folder, tests = float(sys.argv[1]), sys.argv[2], sys.argv[3], sys.argv[4], sys.argv[5]
choices = [shlex.split(which) for which in sys.argv[6:]] or [[]]
alone = int(os.environ.get("STOCKROOM_MUTANTS_AT_ONCE", "2"))
slowest_seconds = 300


def dies(mutant):
    """True where a test fails, or hangs, with this mutant alone."""
    return any(fails(mutant, which) for which in choices)


def fails(mutant, which):
    chosen = dict(os.environ, STRYKER_MUTANT_ID_CONTROL_VAR="STOCKROOM_MUTANT", STOCKROOM_MUTANT=mutant)
    try:
        run = subprocess.run(["dotnet", tests, "-stopOnFail", *which], cwd=folder, env=chosen, stdout=subprocess.DEVNULL, stderr=subprocess.DEVNULL, timeout=slowest_seconds)
    except subprocess.TimeoutExpired:
        return True
    return run.returncode != 0


if dies("-1"):
    print(f"{name}: the tests fail without any mutant")
    sys.exit(1)
with open(report, encoding="utf-8") as text:
    files = json.load(text)["files"]
found = [(file.split("/src/")[-1], of["source"].splitlines(), mutant) for file, of in files.items() for mutant in of["mutants"]]
lived = [x for x in found if x[2]["status"] in ("Survived", "NoCoverage")]
with concurrent.futures.ThreadPoolExecutor(alone) as pool:
    for (_, _, mutant), died in zip(lived, pool.map(lambda x: dies(x[2]["id"]), lived)):
        if died:
            mutant["status"] = "KilledAlone"

states = collections.Counter(mutant["status"] for _, _, mutant in found)
killed = states["Killed"] + states["Timeout"] + states["KilledAlone"]
judged = killed + states["Survived"] + states["NoCoverage"]
percent = 100 * killed / judged if judged else 0
kinds = collections.Counter()
of_file = collections.defaultdict(collections.Counter)
for file, _, mutant in found:
    of_file[file][mutant["status"]] += 1
for file, of in sorted(of_file.items()):
    dead, alive = of["Killed"] + of["Timeout"] + of["KilledAlone"], of["Survived"] + of["NoCoverage"]
    if dead + alive:
        print(f"{file}: {dead + alive} mutants, {dead} killed, {alive} alive")
for file, lines, mutant in sorted(found, key=lambda x: (x[0], x[2]["location"]["start"]["line"])):
    if mutant["status"] not in ("Survived", "NoCoverage"):
        continue
    line = mutant["location"]["start"]["line"]
    kinds[mutant["mutatorName"]] += 1
    became = mutant.get("replacement", "").replace("\n", " ")[:80]
    print(f"{mutant['id']:>6} {mutant['mutatorName'][:28]:28} {file}:{line}: {lines[line - 1].strip()[:100]}  ->  {became}")
print(f"{name}: {percent:.1f} % of {judged} mutants killed ({dict(states)}); alive: {dict(kinds)}")
sys.exit(0 if judged and percent >= least else 1)
