"""Adds up coverage reports: a line counts as reached if any run reached it. coverage.py LEAST WORST REPORT..."""
import sys
import xml.etree.ElementTree as ElementTree

least, worst, reports = float(sys.argv[1]), int(sys.argv[2]), sys.argv[3:]
hits = {}
for report in reports:
    root = ElementTree.parse(report).getroot()
    for package in root.iter("package"):
        for cls in package.iter("class"):
            for line in cls.iter("line"):
                # A report names files from the folder that all in it have in common.
                file = cls.get("filename").split(package.get("name") + "/")[-1]
                key = (package.get("name"), file, int(line.get("number")))
                hits[key] = hits.get(key, 0) + int(line.get("hits"))

failed = not hits
for project in sorted({key[0] for key in hits}):
    lines = {key: hit for key, hit in hits.items() if key[0] == project}
    percent = 100 * sum(hit > 0 for hit in lines.values()) / len(lines)
    failed |= percent < least
    print(f"{project}: {percent:.1f} % of {len(lines)} lines{'' if percent >= least else f', below {least:.0f} %'}")
    files = {}
    for (_, file, number), hit in lines.items():
        if hit == 0:
            files.setdefault(file, []).append(number)
    for file, missed in sorted(files.items(), key=lambda item: -len(item[1]))[:worst]:
        print(f"  {len(missed):4} never reached in {file}: {', '.join(map(str, sorted(missed)[:12]))}{' ...' if len(missed) > 12 else ''}")
if len({key[0] for key in hits}) != 3:
    print("not all three projects were measured")
    failed = True
sys.exit(failed)
