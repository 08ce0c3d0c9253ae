"""Reads the sheet of the strength back.

    /usr/bin/python3 strength_sheet.py PROGRAM FIXTURES

The figures of its verdict, tables and workings are those of result.json; nothing runs off
the paper, is cut short or is lettered too small; a boat without loads has no such sheet.
"""

import os
import re
from decimal import ROUND_HALF_UP, Decimal

from sheet_reading import A4, LETTER, Boat, Pdf, check, finish, running, span, whole_file_is_right

ALL_ROUND = 'title = "Demo 640"'
LONG = "A deck-to-hull joint with a title that goes on and on, beyond all that a block can hold " * 3


def decimals(value, count):
    return str(Decimal(repr(value)).quantize(Decimal(1).scaleb(-count), ROUND_HALF_UP))


def at_most(value, count):
    text = decimals(value, count)
    return text.rstrip("0").rstrip(".") if "." in text else text


def gap(mm, units):
    return decimals(mm, 2) if units == "mm" else decimals(mm / 25.4, 3)


def use(value):
    return decimals(value, 3)


def flat(text):
    return " ".join(text.split())


def verdict(pdf, boat, units):
    """Each value of the verdict stands on the first sheet, in its words."""
    first = flat(pdf.pages[0])
    bond = boat.result["strength"]["bond"]["worst"]
    rows = boat.result["strength"]["fasteners"]
    hole = max(rows, key=lambda row: row["utilisation"])
    for one in (bond, hole):
        state = "PASS" if one["utilisation"] <= 1 else "FAIL"
        check(f"{state}: use {use(one['utilisation'])} of 1" in first,
              f"{boat.title}: no {state} of {one['utilisation']}")
    place = f"{bond['side']}, girth {running(bond['girth'], units)} {units} along the sheer: {bond['mode']}"
    check(place in first, f"{boat.title}: the worst place is not {place}")
    check(hole["governing"] in first and f"{hole['mark']}," in first,
          f"{boat.title}: the worst hole is not {hole['mark']}, {hole['governing']}")
    load = bond["load"]
    values = [f"{gap(bond['gap_top'], units)}, {gap(bond['gap_low'], units)} {units}",
              f"{at_most(load['along'], 2)} N/mm", f"{at_most(load['across'], 2)} N/mm",
              f"{at_most(load['off'], 2)} N/mm", f"{at_most(bond['shear_along'], 2)} N/mm2",
              f"{at_most(bond['shear_across'], 2)} N/mm2", f"{at_most(bond['peel'], 2)} N/mm2",
              f"{span(hole['carries'], units)} {units}"]
    values += [f"{decimals(hole[key], 0)} N" for key in
               ("load", "pull", "shank", "shank_pull", "bearing", "shear_out", "net_tension",
                "pull_through", "pull_out") if hole[key] is not None]
    for value in values:
        check(value in first, f"{boat.title}: the verdict has no {value}")
    checks = [one for one in boat.result["checks"] if one["id"].startswith("strength.")]
    words = flat(pdf.text)
    for one in checks:
        start = " ".join(one["what"].split()[:4]).lower()
        check(start in words.lower(), f"{boat.title}: no check {one['id']}: {start}")
    states = len(re.findall(r"^\s*(?:PASS|WARN|FAIL)(?!:)\b", pdf.text, re.M))
    check(states == len(checks), f"{boat.title}: {states} checks, not {len(checks)}")


def table_rows(pdf, count):
    """Lines of the tables as their cells."""
    return [cells for cells in (line.split() for line in pdf.text.splitlines()) if len(cells) > count]


def stations(pdf, boat, units):
    lines = [" ".join(cells) for cells in table_rows(pdf, 11)]
    for point in boat.result["strength"]["bond"]["stations"]:
        load = point["load"]
        row = " ".join([running(point["girth"], units), gap(point["gap_top"], units),
                        gap(point["gap_low"], units), span(point["width"], units),
                        *(decimals(load[key], 2) for key in ("along", "across", "off")),
                        *(decimals(point[key], 2) for key in ("shear_along", "shear_across", "peel")),
                        use(point["utilisation"])])
        check(any(line.startswith(row) and point["mode"] in line for line in lines),
              f"{boat.title}: no row of the bond {row} {point['mode']}")


def holes(pdf, boat, units):
    lines = {cells[0]: " ".join(cells[1:]) for cells in table_rows(pdf, 12)
             if re.fullmatch(r"[SPT]\d+", cells[0])}
    girths = {hole["mark"]: hole["girth"] for hole in boat.result["schedule"]}
    rows = boat.result["strength"]["fasteners"]
    check(list(lines) == [row["mark"] for row in rows], f"{boat.title}: the holes of the table")
    for row in rows:
        force = [decimals(row[key], 0) if row[key] is not None else "-" for key in
                 ("load", "pull", "shank", "bearing", "shear_out", "net_tension", "shank_pull",
                  "pull_through", "pull_out")]
        wants = " ".join([running(girths[row["mark"]], units), span(row["carries"], units), *force,
                          use(row["utilisation"]) + (" !" if row["utilisation"] > 1 else ""),
                          row["governing"]])
        check(lines.get(row["mark"]) == wants,
              f"{boat.title}: {row['mark']} is {lines.get(row['mark'])}, not {wants}")


def workings(pdf, boat):
    """Each step with its value; each number given with where it is from."""
    words = flat(pdf.text[pdf.text.index("Calculations"):])
    solid = words.replace(" ", "")  # a formula may be broken anywhere
    for one in boat.result["explain"]:
        if not one["figure"].startswith("strength."):
            continue
        check(one["figure"] in solid, f"{boat.title}: no working of {one['figure']}")
        for step in one["steps"]:
            value = float(f"{step['value']:.6g}")
            if "formula" in step:
                found = re.search(rf"(?<!\S){re.escape(step['letters'])} = (\S+)", words)
                check(found, f"{boat.title}: no step {step['letters']}")
                check(f"{step['letters']}={step['formula']}".replace(" ", "") in solid,
                      f"{boat.title}: no formula of {step['letters']}")
                values = re.findall(rf"(?<!\S){re.escape(step['letters'])} = ([-+.e\d]+)(?!\S)", words)
                check(any(abs(float(has) - value) <= 1e-5 * abs(value) + 1e-300 for has in values),
                      f"{boat.title}: {step['letters']} is {values}, not {value}")
                check(step["source"].replace(" ", "") in solid, f"{boat.title}: no source {step['source']}")
                check(step["validity"].replace(" ", "") in solid,
                      f"{boat.title}: no validity {step['validity']}")
            elif "found" in step:
                check(step["found"].replace(" ", "") in solid, f"{boat.title}: not how {step['letters']} is found")
            else:
                origin = step["from"]
                check(all(word in solid for word in origin.split()), f"{boat.title}: {origin}")


def rules_and_notes(pdf, boat):
    words = flat(pdf.text)
    for part in ("Published rules beside this joint", "Outside a formula's validity",
                 "From memory, confirm before use", "How loads combine", "Cautions", "data sheet"):
        check(part in words, f"{boat.title}: no {part}")
    for line in boat.result["strength"]["combination"]:
        check(line in words, f"{boat.title}: {line}")
    for one in boat.result["strength"]["bond"]["outside_validity"]:
        check(" ".join(one["what"].split()[:3]) in words, f"{boat.title}: outside: {one['what']}")
    states = boat.result["strength"]["rules"]
    for note in {note for row in states for note in row["notes"]}:
        check(" ".join(note.split()[:3]) in words, f"{boat.title}: no note {note}")
    check("comply" not in words and "complies" not in words, f"{boat.title}: says it complies")


def charts(pdf, boat):
    """The charts mark the limit and the worst, and name the loads and the openings."""
    words = flat(pdf.text[pdf.text.index("Use of the bond along the girth"):
                          pdf.text.index("Use of the fasteners by hole")])
    worst = boat.result["strength"]["bond"]["worst"]
    check(f"worst, {use(worst['utilisation'])}" in words, f"{boat.title}: the worst of the bond")
    for name in ("bow cleat", "bulkhead", "opening: outboard well", "limit"):
        check(name in words, f"{boat.title}: the chart does not name {name}")
    hole = max(boat.result["strength"]["fasteners"], key=lambda row: row["utilisation"])
    check(f"worst, {hole['mark']}: {use(hole['utilisation'])}" in flat(pdf.text),
          f"{boat.title}: the worst hole's bar")


def look(size, units, *options, change=()):
    with Boat("demo-640", "--units", units, *options, change=change) as boat:
        pdf = Pdf(boat.path("strength.pdf"))
        whole_file_is_right(pdf, size)
        if not change:
            check("\u2026" not in pdf.text, f"{boat.title}: words are cut short")
        # capitals of 1.8 mm: DejaVu Sans is 1.164 high for each 0.729 of its capitals
        for page, left, top, right, bottom, word in pdf.words():
            check(min(right - left, bottom - top) > 0 and
                  (len(word) < 2 or max(right - left, bottom - top) > 2.5),
                  f"{boat.title}, sheet {page + 1}: {word} is too small")
        verdict(pdf, boat, units)
        stations(pdf, boat, units)
        holes(pdf, boat, units)
        workings(pdf, boat)
        rules_and_notes(pdf, boat)
        charts(pdf, boat)
        lacks = any(before.endswith("through = 7") for before, _ in change)
        for part in ("hull", "lip"):
            check((f"NOT WORKED: {part}.through" in flat(pdf.pages[0])) == lacks,
                  f"{boat.title}: {part}.through, not given: {lacks}")


def main():
    look(A4, "mm")
    look(LETTER, "in", "--paper", "letter")
    look(A4, "mm", change=[(ALL_ROUND, f'title = "{LONG}"')])
    # no strength through the thickness: it is not worked, nor shown as worked
    look(LETTER, "mm", "--paper", "letter", change=[("\nthrough = 7", ""), ("\nthrough = 7", "")])
    with Boat("pram") as boat:
        check(not os.path.exists(boat.path("strength.pdf")), "a boat without loads has a sheet")
    finish("the strength on paper")


main()
