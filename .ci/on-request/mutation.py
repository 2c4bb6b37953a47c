"""Adds up mutation reports: mutation.py LEAST NAME REPORT... A mutant that no test reaches counts as not killed."""
import collections
import json
import sys

least, name, reports = float(sys.argv[1]), sys.argv[2], sys.argv[3:]
states = collections.Counter()
alive = []
for report in reports:
    with open(report, encoding="utf-8") as text:
        files = json.load(text)["files"]
    for file, found in files.items():
        lines = found["source"].splitlines()
        for mutant in found["mutants"]:
            states[mutant["status"]] += 1
            if mutant["status"] in ("Survived", "NoCoverage"):
                start = mutant["location"]["start"]
                line = lines[start["line"] - 1].strip()
                alive.append((file.split("/src/")[-1], start["line"], mutant["status"], line[:100], mutant.get("replacement", "")[:80].replace("\n", " ")))

killed = states["Killed"] + states["Timeout"]
judged = killed + states["Survived"] + states["NoCoverage"]
percent = 100 * killed / judged if judged else 0
for file, line, status, text, became in sorted(alive):
    print(f"{status:10} {file}:{line}: {text}  ->  {became}")
print(f"{name}: {percent:.1f} % of {judged} mutants killed ({dict(states)})")
sys.exit(0 if judged and percent >= least else 1)
