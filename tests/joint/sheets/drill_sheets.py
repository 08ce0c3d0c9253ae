"""Reads the drilling schedules back from their sheets.

    /usr/bin/python3 -B drill_sheets.py PROGRAM FIXTURES

On the sheets of each side stands every hole of result.json with its figures, and no hole of
another side; what is not to be drilled and each space over its limit is marked; the sheets are
numbered, of the paper asked for, with their fonts in them.
"""

from sheet_reading import (A4, LETTER, Boat, Pdf, check, finish, running, span,
                           whole_file_is_right)

SIDES = ("starboard", "port", "transom")
SAME_ROW = 1.3  # mm between the middles of words in one row: their heights differ
MARK_HEIGHT = 3.5  # mm of a word's box: the first column is lettered larger than the rest
ROW_COUNT = 8  # figures after the mark that are compared


def rows_by_mark(pdf, marks):
    """The words to the right of each mark, in its row, left to right; by mark."""
    words = pdf.words()
    rows = {}
    for page, left, top, right, bottom, word in words:
        if word not in marks or left > 35 or bottom - top < MARK_HEIGHT:
            continue
        middle = (top + bottom) / 2
        row = sorted((other[1], other[5]) for other in words
                     if other[0] == page and other[1] > right and
                     abs((other[2] + other[4]) / 2 - middle) < SAME_ROW)
        rows.setdefault(word, []).append([text for _, text in row])
    return rows


def figures(hole, units, across_opening):
    pitch = [] if across_opening else [span(hole["pitch"], units)]
    chord = hole["chord"]
    return [running(hole["girth"], units), *pitch,
            "-" if chord is None else span(chord, units),
            *(span(hole[axis], units) for axis in "xyz"),
            running(hole["hull_girth"], units), running(hole["jig_girth"], units)]


def holes_are_right(boat, pdf, side, units, openings):
    holes = boat.holes(side)
    rows = rows_by_mark(pdf, {hole["mark"] for hole in holes})
    for hole in holes:
        mark = hole["mark"]
        found = rows.get(mark, [])
        check(len(found) == 1, f"{pdf.name}: {mark} has {len(found)} rows")
        across = any(start < hole["girth"] and end > hole["girth"] - hole["pitch"]
                     for start, end in openings)
        wanted = figures(hole, units, across)
        for row in found[:1]:
            check(row[:len(wanted)] == wanted,
                  f"{boat.title}, {pdf.name}: {mark} has {row[:ROW_COUNT]}, not {wanted}")
    letter = {"starboard": "PT", "port": "ST", "transom": "SP"}[side]
    others = {hole["mark"] for hole in boat.result["schedule"] if hole["mark"][0] in letter}
    for mark in rows_by_mark(pdf, others):
        check(False, f"{pdf.name} has a row of {mark}")


def flags_are_right(boat, pdf, side):
    text = " ".join(pdf.text.split())
    barred = [hole["mark"] for hole in boat.holes(side) if hole["drill_depth"] is None]
    for mark in barred:
        check(f"{mark}: DO NOT DRILL" in text, f"{pdf.name} does not bar {mark}")
    check(text.count(": DO NOT DRILL:") == len(barred), f"{pdf.name} bars other holes")
    for laid in boat.result["layout"]["sides"]:
        if laid["name"] == side:
            check(text.count("SPACE OF") == len(laid["bridged"]),
                  f"{pdf.name}: {text.count('SPACE OF')} spaces flagged, not {len(laid['bridged'])}")
    jigs = {hole["jig"] for hole in boat.holes(side)}
    for jig in jigs:
        check(f"JIG {jig}:" in text, f"{pdf.name} has no {jig}")
    count = len(boat.holes(side)) - len(barred)
    check("fasteners issued" in text and f" {count}" in text.split("holes by the schedule")[1],
          f"{pdf.name} does not count {count} holes")
    return len(barred)


def words_are_right(pdf, side):
    text = " ".join(pdf.text.split())
    for words in (f"{side.upper()}: drilling schedule", "the lip's outer face: the tape lies on it",
                  "fine glass dust", "hull number", "checked by, date", "ACTUAL", "INITIALS"):
        check(words in text, f"{pdf.name} does not say: {words}")
    hand = ("it is no mirror image of starboard" in text
            or "its girths are the same as starboard's" in text)
    check(hand == (side == "port"), f"{pdf.name}: how it stands to starboard")


def boat_is_right(boat, units, paper, openings=()):
    barred = 0
    names = {side["name"] for side in boat.result["perimeter"]["sides"]}
    for side in SIDES:
        name = f"drill-{side}.pdf"
        if side not in names:
            try:
                boat.bytes(name)
                check(False, f"{boat.title} has a {name} and no such side")
            except FileNotFoundError:
                continue
        pdf = Pdf(boat.path(name))
        whole_file_is_right(pdf, (paper[1], paper[0]))
        words_are_right(pdf, side)
        holes_are_right(boat, pdf, side, units, openings if side == "transom" else ())
        barred += flags_are_right(boat, pdf, side)
    return barred


WELL = [(726, 1566)]  # of the demo boat's joint file
with Boat("demo-640") as demo:
    boat_is_right(demo, "mm", A4, WELL)
    with Boat("demo-640") as again:
        for side in SIDES:
            check(demo.bytes(f"drill-{side}.pdf") == again.bytes(f"drill-{side}.pdf"),
                  f"drill-{side}.pdf is not the same twice")
with Boat("demo-640", "--units", "in") as inches:
    boat_is_right(inches, "in", LETTER, WELL)
with Boat("double-ender") as launch:
    boat_is_right(launch, "mm", A4)
with Boat("pram", "--paper", "letter") as pram:
    boat_is_right(pram, "mm", LETTER)
with Boat("demo-640", "--units", "in",
          change=[("lengths = [16, 19, 22, 25]", "lengths = [16, 19]"),
                              ("Demo 640", "Long " * 60), ("bow cleat", "Cleat " * 500),
                              ("outboard well", "W" * 3000)]) as short:
    check(boat_is_right(short, "in", LETTER, WELL) > 0, "no hole is barred where no screw serves")
with Boat("demo-640", environment={"SOURCE_DATE_EPOCH": "1714521600"}) as dated:
    check("2024-05-01" in Pdf(dated.path("drill-port.pdf")).text, "the date is not on the sheet")
finish("drilling schedules")
