"""Reads the strips back from their sheets, tiled and on a roll.

    /usr/bin/python3 -B strip_sheets.py PROGRAM FIXTURES

Every hole of result.json is on a sheet under its mark and girth. Put together by the marks of
their seams alone, the sheets give the drill line its girths and each hole its height above the
lip's low edge; the bars to measure are of their length on every sheet.
"""

from sheet_reading import (A4, LETTER, Boat, Pdf, check, close, finish, running,
                           whole_file_is_right)
from strip_reading import Piece, foot, girths_on_paper, has_letters, joined

SIDES = ("starboard", "port", "transom")
CHORD = 1e-4  # a chord is not shorter than its pitch by more of it on these boats


def bars_are_right(piece, pdf, units, count):
    wanted = 100 if units == "mm" else 101.6
    for way, name in ((lambda bar: bar.real, "across"), (lambda bar: bar.imag, "up")):
        other = (lambda bar: bar.imag) if name == "across" else (lambda bar: bar.real)
        found = [bar for bar in piece.bars
                 if abs(abs(way(bar)) - wanted) < 0.1 and abs(other(bar)) < 0.01]
        check(len(found) == count,
              f"{pdf.name} page {piece.page + 1}: {len(found)} bars {name}, not {count}")
    text = " ".join(pdf.pages[piece.page].split())
    check(f"must be {'100 mm' if units == 'mm' else '4 in'}" in text and "100 %" in text,
          f"{pdf.name} page {piece.page + 1} does not say how long its bars are")


def heights_are_right(boat, pdf, side, pieces):
    above = {hole["mark"]: hole["above_edge"] for jig in boat.result["jigs"]
             for hole in jig["hole_list"] if jig["side"] == side}
    for piece in pieces:
        for mark, (place, _) in piece.holes.items():
            below = [found for found in (foot(place, edge) for edge in piece.edges)
                     if found[2].imag > place.imag]
            if not below:
                continue  # in another row of a deep strip
            close(min(found[0] for found in below), above[mark], 0.1,
                  f"{pdf.name} page {piece.page + 1}: {mark} above the low edge")


def girths_are_right(boat, pdf, side, pieces, parted):
    holes = boat.holes(side)
    motions = joined(pieces, pdf.name)
    places = {}
    for piece in pieces:
        turn, shift = motions[piece.page]
        for mark, (place, _) in piece.holes.items():
            there = turn * place + shift
            if mark in places:
                close(abs(places[mark] - there), 0, 0.05, f"{pdf.name}: {mark} on two sheets")
            places[mark] = there
    drawn = girths_on_paper(pieces)
    first = holes[0]
    for here, there in zip(holes, holes[1:]):
        girth = there["girth"] - here["girth"]
        if any(here["girth"] <= part <= there["girth"] for part in parted):
            first = there
            continue
        marks = here["mark"], there["mark"]
        if not all(mark in places for mark in marks):
            continue  # told already
        straight = abs(places[marks[1]] - places[marks[0]])
        check(girth * (1 - CHORD) - 0.05 <= straight <= girth + 0.05,
              f"{pdf.name}: {marks[0]} to {marks[1]}: {straight:.3f} straight, {girth:.3f} round")
        missing = [mark for mark in (*marks, first["mark"]) if mark not in drawn]
        if missing or drawn[marks[0]][0] != drawn[marks[1]][0]:
            check(False, f"{pdf.name}: no drill line from {marks[0]} to {marks[1]}")
            continue
        close(drawn[marks[1]][1] - drawn[marks[0]][1], girth, 0.1,
              f"{pdf.name}: {marks[0]} to {marks[1]} along the drill line")
        close(drawn[marks[1]][1] - drawn[first["mark"]][1], there["girth"] - first["girth"], 0.3,
              f"{pdf.name}: {first['mark']} to {marks[1]} along the drill line")


def holes_are_right(boat, pdf, side, units, pieces, in_order=False):
    holes = boat.holes(side)
    first = boat.result["schedule"][0]
    bit = first["hull_pilot"] or first["lip_hole"]
    for piece in pieces:
        piece.find_holes({hole["mark"] for hole in holes}, bit / 2)
        if in_order:
            piece.follow_holes(holes, bit / 2, side != "port")
    barred = 0
    for hole in holes:
        mark = hole["mark"]
        found = [(piece, piece.holes[mark]) for piece in pieces if mark in piece.holes]
        check(found, f"{pdf.name}: {mark} is on no sheet")
        good = hole["drill_depth"] is not None
        barred += not good
        for piece, (place, dashed) in found:
            check(dashed != good, f"{pdf.name}: {mark} is drawn to be drilled and is not, or not")
            near = {word for at, word in piece.words if abs(at - place) < 21}
            girth = running(hole["girth"], units)
            check({girth, mark} <= near or (in_order and has_letters(near, (mark, girth))),
                  f"{pdf.name}: {mark} has not its girth beside it: {sorted(near)}")
            check(("DRILL" in near) == (not good) or in_order,
                  f"{pdf.name}: {mark}: DO NOT DRILL")
    return barred


def words_are_right(pdf, side, level=True):
    text = " ".join(word[5] for word in pdf.words())
    start = "starboard transom corner" if side == "transom" else "bow datum"
    on_strip = ["THIS EDGE UP: sheer", "this edge flush with the lip's low edge",
                "TO STARBOARD" if side == "transom" else "TO BOW", "ZERO: " + start]
    for words in [side.upper(), "three points", "fine glass dust", "use jigs.dxf",
                  *(on_strip if level else [])]:
        check(words in text, f"{pdf.name} does not say: {words}")
    check(("no mirror image of starboard" in text) == (side == "port"), f"{pdf.name}: mirror")


def tiles_are_right(pdf, side, pieces):
    """Numbered in order, with their neighbours to the proper hand."""
    count = len(pieces)
    for number, piece in enumerate(pieces, 1):
        text = " ".join(pdf.pages[piece.page].split())
        check(f"tile {number} of {count}" in text, f"{pdf.name}: no tile {number} of {count}")
        check(side.upper() in text, f"{pdf.name}: tile {number} does not name its side")
        for label in {seam[:-1] for seam in piece.seams}:
            under, over = map(int, label.split("|"))
            other = over if under == number else under
            hand = "left" if (other > number) == (side != "port") else "right"
            if abs(piece.seams[label + "A"].real - piece.seams[label + "B"].real) < 20:
                check(f"tile {other} to the {hand}" in text,
                      f"{pdf.name}: tile {number} does not say tile {other} is to the {hand}")


def strip_is_right(boat, side, units, paper, parted):
    pdf = Pdf(boat.path(f"strip-{side}.pdf"))
    lying = pdf.sizes[0][0] > pdf.sizes[0][1]
    whole_file_is_right(pdf, (paper[1], paper[0]) if lying else paper)
    words = pdf.words()
    first = next(page for page, text in enumerate(pdf.pages) if "tile 1 of" in text)
    pieces = [Piece(pdf, page, words) for page in range(first, len(pdf.pages))]
    tiles_are_right(pdf, side, pieces)
    words_are_right(pdf, side)
    for piece in pieces:
        bars_are_right(piece, pdf, units, 1)
    barred = holes_are_right(boat, pdf, side, units, pieces)
    heights_are_right(boat, pdf, side, pieces)
    girths_are_right(boat, pdf, side, pieces, parted)
    return barred


def roll_is_right(boat, side, units, parted):
    pdf = Pdf(boat.path(f"strip-{side}-roll.pdf"))
    longest = max(wide for wide, _ in pdf.sizes)
    check(longest <= 5000.01, f"{pdf.name} is {longest} mm long")
    drill_line = next(one["drill_line_length"] for one in boat.result["perimeter"]["sides"]
                      if one["name"] == side)
    check(len(pdf.sizes) == (1 if drill_line < 4800 else 2), f"{pdf.name}: {len(pdf.sizes)} pages")
    words = pdf.words()
    pieces = [Piece(pdf, page, words) for page in range(len(pdf.pages))]
    words_are_right(pdf, side, level=False)
    for piece in pieces:
        bars_are_right(piece, pdf, units, 2)
    holes_are_right(boat, pdf, side, units, pieces, in_order=True)
    heights_are_right(boat, pdf, side, pieces)
    girths_are_right(boat, pdf, side, pieces, parted)


def boat_is_right(boat, units, paper, parted=None, rolls=True, sides=SIDES):
    barred = 0
    for side in [one["name"] for one in boat.result["perimeter"]["sides"]]:
        if side not in sides:
            continue
        parts = (parted or {}).get(side, ())
        barred += strip_is_right(boat, side, units, paper, parts)
        if rolls:
            roll_is_right(boat, side, units, parts)
    return barred


WELL = {"transom": (1000,)}  # within the opening of the demo boat's joint file
BOW = {"starboard": (343.8,), "port": (343.8,)}  # the pram's corners, derived: see its rows
DEEP = [("depth = 50", "depth = 150"), ("lip_low = 3.9", "lip_low = 7.5")]
DEEPEST = [("depth = 50", "depth = 330"), ("lip_low = 3.9", "lip_low = 14")]
NO_SCREW = [("lengths = [16, 19, 22, 25]", "lengths = [16, 19]")]

with Boat("demo-640") as demo:
    check(boat_is_right(demo, "mm", A4, WELL) == 0, "a hole is crossed out that is to be drilled")
    with Boat("demo-640") as again:
        for name in ("strip-port.pdf", "strip-transom-roll.pdf"):
            check(demo.bytes(name) == again.bytes(name), f"{name} is not the same twice")
with Boat("double-ender") as launch:
    boat_is_right(launch, "mm", A4, sides=("starboard",))
with Boat("pram") as pram:
    boat_is_right(pram, "mm", A4, BOW, sides=("port", "transom"))
with Boat("demo-640", "--units", "in", change=NO_SCREW) as inches:
    check(boat_is_right(inches, "in", LETTER, WELL, sides=("starboard", "transom")) > 0,
          "no hole is crossed out")
with Boat("demo-640", change=DEEP) as deep:
    boat_is_right(deep, "mm", A4, WELL, rolls=False, sides=("port",))
with Boat("demo-640", change=DEEPEST) as deepest:
    boat_is_right(deepest, "mm", A4, WELL, rolls=False, sides=("transom",))
finish("strips")
