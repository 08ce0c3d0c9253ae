"""Reads the crew's sheets back.

    /usr/bin/python3 sequence_sheet.py PROGRAM FIXTURES

Every fastener that is driven stands once in the order of driving, and once on the leak
map; what is not driven is named; beads, times and counts are those of result.json; the
paper has its size and carries its fonts; each record is on a sheet of its own.
"""

import json
import os
import re
import shutil
import subprocess
import sys
import tempfile
from collections import Counter

PROGRAM, FIXTURES = os.path.abspath(sys.argv[1]), os.path.abspath(sys.argv[2])
SIZES = {"a4": (210, 297), "letter": (215.9, 279.4)}  # mm; ISO 216, 8.5 x 11 in
RECORDS = ["adhesive record, one boat", "order of driving", "leak-test map, from above",
           "sign-off, one boat"]
wrong = []


def check(holds, words):
    if not holds:
        wrong.append(words)


def output(*command):
    done = subprocess.run(command, capture_output=True, text=True)
    if done.returncode not in (0, 1):
        sys.exit(f"{' '.join(command)}: exit {done.returncode}\n{done.stderr}")
    return done.stdout


def marks_of(words):
    return Counter(re.findall(r"\b[SPT]\d{2,3}\b", words))


def ranges(words):
    """The marks of "S04-S06, P01"."""
    for side, first, last in re.findall(r"\b([SPT])(\d+)(?:-[SPT](\d+))?", words):
        for number in range(int(first), int(last or first) + 1):
            yield f"{side}{number:0{len(first)}}"


def driven(page):
    """Marks in the two tables of steps, and their steps."""
    tables = page[page.index("First: locate and tack"):page.index("Which fastener goes")]
    steps = [int(number) for number in re.findall(r"(?m)(?<![SPT\d.])\b(\d+)\s+(?=[SPT-])",
                                                  tables)]
    return marks_of(tables), steps


def texts(path):
    pages = output("pdftotext", "-layout", path, "-").split("\f")[:-1]
    return pages


def paper(path, name, boat):
    width, height = SIZES[name]
    info = output("pdfinfo", path)
    size = re.search(r"Page size:\s+([\d.]+) x ([\d.]+) pts", info)
    for has, wants in zip(size.groups(), (width, height)):
        check(abs(float(has) * 25.4 / 72 - wants) < 0.1, f"{boat}: {has} pt, not {wants} mm")
    fonts = output("pdffonts", path).splitlines()[2:]
    check(len(fonts) > 0, f"{boat}: no fonts")
    for font in fonts:
        embedded = font.split()[-5]
        check(embedded == "yes", f"{boat}: a font is not embedded: {font}")


def order_of_driving(page, result, boat, out):
    marks, steps = driven(page)
    wants = Counter(station["mark"] for station in result["schedule"]
                    if station["mark"] not in out)
    check(marks == wants, f"{boat}: missing {wants - marks}, too many {marks - wants}")
    check(sorted(steps) == list(range(1, len(steps) + 1)), f"{boat}: steps {steps}")
    check(len(steps) > 3, f"{boat}: {len(steps)} steps")
    check(("DO NOT DRIVE" in page) == bool(out), f"{boat}: what is not driven")
    lengths = page[page.index("Which fastener goes"):page.index("- This sets out")]
    named = set(ranges(lengths.split("DO NOT DRIVE")[1])) if out else set()
    check(named == set(out), f"{boat}: not to be driven are {named}, not {set(out)}")


def bonding(page, result, boat, unit):
    adhesive = result["adhesive"]
    number = r"(?:\d+-)?\d+(?:/\d+)?(?:\.\d+)?"
    rows = re.findall(rf"(?<!\S){number} +{number} +(?:[SPT]\d+|before|after|between|no marks)",
                      page[page.index("Beads"):])
    check(len(rows) == len(adhesive["beads"]),
          f"{boat}: {len(rows)} bead runs, not {len(adhesive['beads'])}")
    sizes = Counter(re.findall(r"(\d+) x ", page[page.index("Beads"):]))
    wants = Counter(str(run["beads"]) for run in adhesive["beads"] if run["beads"] > 1)
    check(sizes == wants, f"{boat}: beads side by side {sizes}, not {wants}")
    check(f"{round(adhesive['boat_volume'])} ml" in page, f"{boat}: the boat's ml")
    if adhesive["time"]:
        time = adhesive["time"]
        laid = time["dispensing"] + time["pack_changes"]
        for event, minutes in (("last bead laid", laid),
                               ("deck down", laid + time["seating"]),
                               ("last fastener driven", time["total"]),
                               ("working time over", time["working_time"])):
            has = re.search(rf"{event}\D*?(\d+)", page)
            check(has and abs(int(has.group(1)) - minutes) <= 0.5,
                  f"{boat}: {event} at {has and has.group(1)}, not {minutes}")
    else:
        check("No plan" in page, f"{boat}: a plan without times")
    check(re.search(rf"from,\s+to,[\s\S]*?{unit}", page), f"{boat}: unit of the beads")


def beads_by_mark(page, result, boat):
    """The marks named for each run lie in it, by the girth on the drill line: a mark and
    the sheer above it are a lap apart in x at most."""
    named = set(re.findall(r"\b([SPT]\d+) to [SPT]\d+", page))
    check(len(named) > 0 or len(result["adhesive"]["beads"]) == 0,
          f"{boat}: no marks at the beads")
    first = {}
    for station in result["schedule"]:
        first.setdefault(station["side"], station["mark"])
    for side, mark in first.items():
        check(re.search(rf"(?<!\S)0 +\S+ +({mark}|before {mark})(?!\d)", page),
              f"{boat}: the first bead on {side} does not start with {mark}")


def gaps_and_checks(page, result, boat):
    """The checks of bonding stand on its own sheet, and where the gap leaves the window."""
    words = " ".join(page.split())
    for one in result["checks"]:
        if one["id"].startswith(("fit.", "adhesive.")) and one["state"] != "pass":
            start = " ".join(one["what"].split()[:3])
            check(start.lower() in words.lower(), f"{boat}: no {one['id']}: {start}")
    if "fit" not in result:
        return
    bad = [run for run in result["fit"]["runs"] if run["verdict"] != "good"]
    check(("gap leaves the adhesive" in words) == bool(bad), f"{boat}: the gap's window")
    check(len(re.findall(r"- (?:Tight|Wide|Interference), ", words)) == len(bad),
          f"{boat}: {len(bad)} stretches outside the window")


def other_lengths(page, result, boat):
    """A mark whose fastener is not of the common length has its length behind it."""
    lengths = Counter(station["length"] for station in result["schedule"]
                      if station["length"] is not None)
    tables = page[page.index("First: locate and tack"):page.index("Which fastener goes")]
    has = Counter(re.findall(r"\b([SPT]\d+) \(", tables))
    others = sum(lengths.values()) - lengths.most_common(1)[0][1]
    check(sum(has.values()) == others, f"{boat}: {has} have a length, not {others}")


def look(folder, fixture, unit, name, changes=(), out=()):
    boat = f"{fixture}, {unit}, {name}"
    home = os.path.join(folder, re.sub(r"\W", "_", boat + str(len(changes))))
    shutil.copytree(os.path.join(FIXTURES, fixture), home)
    joint = os.path.join(home, "joint.toml")
    with open(joint, encoding="utf-8") as file:
        text = file.read()
    for before, after in changes:
        text, count = re.subn(before, after, text)
        assert count == 1, f"{fixture}: {before} is there {count} times"
    with open(joint, "w", encoding="utf-8") as file:
        file.write(text)
    papers = []
    for copy in ("papers", "again"):
        output(PROGRAM, "job", joint, "--out", os.path.join(home, copy), "--quiet",
               "--units", unit, "--paper", name)
        with open(os.path.join(home, copy, "sequence.pdf"), "rb") as file:
            papers.append(file.read())
    check(papers[0] == papers[1], f"{boat}: other bytes for the same job")
    with open(os.path.join(home, "papers", "result.json"), encoding="utf-8") as file:
        result = json.load(file)
    path = os.path.join(home, "papers", "sequence.pdf")
    paper(path, name, boat)
    pages = texts(path)
    sheets = {record: [page for page in pages if record in page] for record in RECORDS}
    check([page for record in RECORDS for page in sheets[record]] == pages,
          f"{boat}: the records do not follow one another")
    check(len(pages) <= 8, f"{boat}: {len(pages)} sheets")
    leaks = pages.index(sheets[RECORDS[2]][0]) + 1
    pages = ["".join(sheets[record]) for record in RECORDS]
    check("\u2026" not in "".join(pages), f"{boat}: words are cut short")
    for page, record in zip(pages, RECORDS):
        check(record in page, f"{boat}: a sheet is not the {record}")
    order_of_driving(pages[1], result, boat, out)
    bonding(pages[0], result, boat, unit)
    beads_by_mark(pages[0], result, boat)
    wants = Counter(station["mark"] for station in result["schedule"])
    gaps_and_checks(pages[0], result, boat)
    other_lengths(pages[1], result, boat)
    # words that are turned come letter by letter
    raw = output("pdftotext", "-raw", "-f", str(leaks), "-l", str(leaks), path, "-")
    has = Counter(re.findall(r"[SPT]\d\d(?!\d)", re.sub(r"\s", "", raw)))
    check(has == wants, f"{boat}: leak map lacks {wants - has}, has {has - wants}")
    check("25 mm (1 in)" in " ".join(pages[2].split()), f"{boat}: the caution on air")
    count = len(wants) - len(out)
    for words in ("hull identification number", "dry fit", "jigs used", "squeeze-out",
                  "leak test", "non-conformance", f"holes drilled, counted {count} ",
                  f"fasteners driven, counted {count} "):
        check(words in " ".join(pages[3].split()) + " ", f"{boat}: sign-off has no {words}")
    check(pages[3].count("signature") == 4, f"{boat}: four sign")
    return result


def main(folder):
    look(folder, "demo-640", "mm", "a4")
    look(folder, "double-ender", "in", "letter")
    look(folder, "pram", "mm", "letter")
    whole = look(folder, "whole", "in", "a4")
    check(whole["adhesive"]["time"] is None, "a boat without a plan of times is looked at")
    # no fastener in stock reaches through where the gap is wide
    demo = look(folder, "demo-640", "in", "a4", [(r"lengths = \[16, 19, 22, 25\]",
                                                  "lengths = [16, 19]")],
                out=("S04", "S05", "S06", "S07", "P04", "P05", "P06", "P07"))
    check(sum(1 for station in demo["schedule"] if station["length"] is None) == 8,
          "eight holes that no length serves")


if __name__ == "__main__":
    with tempfile.TemporaryDirectory() as temporary:
        main(temporary)
    for line in wrong[:30]:
        print(line)
    if wrong:
        sys.exit(f"the crew's sheets: {len(wrong)} things are wrong")
    print("the crew's sheets: every mark once, and what they say is so")
