"""Compares the European wording of statements.tsv with the wording of 2008 in LaTeX's ghsystem package.

Usage: wording-2008.py statements.tsv ghsystem_english.def changed-since-2008.tsv
Every difference must stand in the last table, and every row of it must still be a difference.
"""

import re
import sys


UNITS = {"\\GHScelsius": "°C", "\\GHSfahrenheit": "°F", "\\GHSkilogram": "kg", "\\GHSpounds": "lbs"}


def measure(figure, unit):
    """A figure with its unit; one that the supplier fills in is an ellipsis."""
    return ("…" if figure.startswith("\\l_") else figure) + "~" + UNITS[unit]


def spoken(body):
    """The text that the package would print, without its fill-ins."""
    body = body.replace("\\ghsystem_slash:", "/").replace("\\l_ghsystem_dots_tl\\", " …").replace("\\l_ghsystem_dots_tl", "…")
    body = re.sub(r"\\bool_if:NF\s*\\l_ghsystem_organs_bool\s*\{([^}]*)\}", r"\1", body)
    body = re.sub(r"(?:\\exp_args:No\s*)?\\SI\s*\{\s*(.*?)\s*\}\s*\{\s*(.*?)\s*\}", lambda m: measure(m.group(1), m.group(2)), body)
    body = body.replace("\\textemdash", "").replace("\\ ", "~")
    body = re.sub(r"\\iupac\s*\{([^}]*)\}", lambda m: m.group(1).replace("|", ""), body)
    body = body.replace("\\c_space_tl", "~").replace("\\,", "").replace("\\ghsystem_text:", "")
    body = re.sub(r"\\ghsystem_\w+:", "", body)
    body = re.sub(r"\s+", "", body).replace("~", " ")
    return re.sub(r"\s+", " ", body).replace(" .", ".").strip()


def plain(text):
    """A statement without what may be stated, closing stop and spacing."""
    text = re.sub(r" ?<[^>]*>", "", text)
    text = re.sub(r"\s*/\s*", "/", text)
    text = re.sub(r"\s*…\s*", " … ", text)
    return re.sub(r"\s+", " ", text).strip().rstrip(".").strip()


def main(ours_file, package_file, changed_file):
    source = open(package_file, encoding="utf-8").read()
    package = {}
    for kind, number, body in re.findall(r"\\ghsystem_add_statement:nnn \{(H|EUH|P)\} \{ ?([0-9A-Za-z]+) ?\}\s*\{((?:[^{}]|\{[^{}]*\})*)\}", source):
        package[kind + number] = plain(spoken(body))
    ours = {}
    for line in open(ours_file, encoding="utf-8"):
        cells = line.rstrip("\n").split("\t")
        if not line.startswith("#") and cells[1] == "eu":
            ours[cells[0]] = plain(cells[2])
    changed = {}
    for line in open(changed_file, encoding="utf-8"):
        if not line.startswith(("#", "code\t")):
            cells = line.rstrip("\n").split("\t")
            changed[cells[0]] = cells[1]
    both = sorted(set(ours) & set(package))
    differing = {c for c in both if ours[c] != package[c]}
    failed = False
    for code in sorted(differing - set(changed)):
        failed = True
        print(f"{code}: ours '{ours[code]}', 2008 '{package[code]}'")
    for code in sorted(set(changed) - differing):
        failed = True
        print(f"{code} is listed as changed and does not differ")
    print(f"{len(both)} statements compared: {len(both) - len(differing)} word for word, {len(differing & set(changed))} known to have changed")
    return 1 if failed or len(both) < 150 else 0


if __name__ == "__main__":
    sys.exit(main(*sys.argv[1:4]))
