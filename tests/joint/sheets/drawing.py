"""Reads the drawing of the joint back.

    /usr/bin/python3 -B drawing.py PROGRAM FIXTURES

On the plan, on the profile and on the sides laid flat each hole of result.json stands where it
is, at the scale that the sheet states; runs, gaps and lengths are those of the result; the check
bars are as long as they say; no words stand on other words.
"""

import re

from sheet_reading import (A3, ANSI_B, Boat, Pdf, check, close, finish, running, span,
                           whole_file_is_right)

ON_PAPER = 0.1  # mm that a hole may be off
PLAN_DOT, PROFILE_DOT, FLAT_DOT = 0.5, 0.35, 0.6  # radii of holes on the views, mm
SAME_RADIUS = 0.03
BLOCK_MM = 32  # at the foot of a sheet: the title block and the key
SIDES = ("starboard", "port", "transom")


def scale_after(words, text):
    """The factor of a scale such as 1:20 that stands behind some words."""
    found = re.search(re.escape(words) + r"[^:]*?(\d+):(\d+)", text)
    check(found, f"there is no scale behind: {words}")
    return int(found[1]) / int(found[2]) if found else 1


def dots(discs, radius, foot):
    return [(x, y) for x, y, size in discs if abs(size - radius) < SAME_RADIUS and y < foot]


def stand_where_they_are(what, found, wanted):
    """Whether dots are a set of points, moved as a whole."""
    check(len(found) == len(wanted), f"{what}: {len(found)} dots for {len(wanted)} holes")
    if len(found) != len(wanted) or not wanted:
        return
    move = [sum(dot[k] for dot in found) / len(found) -
            sum(point[k] for point in wanted) / len(wanted) for k in (0, 1)]
    for x, y in wanted:
        x, y = x + move[0], y + move[1]
        away = min(((x - dot[0]) ** 2 + (y - dot[1]) ** 2) ** 0.5 for dot in found)
        check(away < ON_PAPER, f"{what}: a hole is {away:.3f} mm off on paper")


def drilled(boat, side=None):
    return [hole for hole in boat.result["schedule"]
            if hole["drill_depth"] is not None and side in (None, hole["side"])]


def arrangement_is_right(boat, pdf):
    discs, foot = pdf.discs(0), pdf.sizes[0][1] - BLOCK_MM
    scale = scale_after("PLAN from above,", pdf.pages[0])
    stand_where_they_are(f"{boat.title}, plan", dots(discs, PLAN_DOT, foot),
                         [(hole["x"] * scale, -hole["y"] * scale) for hole in drilled(boat)])
    scale = scale_after("PROFILE from port,", pdf.pages[0])
    stand_where_they_are(f"{boat.title}, profile", dots(discs, PROFILE_DOT, foot),
                         [(hole["x"] * scale, -hole["z"] * scale)
                          for hole in drilled(boat, "port")])


def sides_are_right(boat, pdf):
    """Each side is a row of dots; to the left is aft on starboard, to port on the transom."""
    rows = {}
    for x, y in dots(pdf.discs(1), FLAT_DOT, pdf.sizes[1][1]):
        rows.setdefault(round(y), []).append((x, 0))
    names = [side for side in SIDES if drilled(boat, side)]
    check(len(rows) == len(names), f"{boat.title}: {len(rows)} rows of holes laid flat")
    for (_, found), side in zip(sorted(rows.items()), names):
        scale = scale_after("girth", pdf.pages[1])
        way = 1 if side == "port" else -1
        stand_where_they_are(f"{boat.title}, {side} laid flat", found,
                             [(way * hole["girth"] * scale, 0) for hole in drilled(boat, side)])


def bars_are_right(boat, pdf, length):
    for page in range(len(pdf.sizes)):
        lines = [line for _, line in pdf.paths(page) if len(line) == 2]
        for along, across, what in ((0, 1, "across"), (1, 0, "up")):
            corner = [line for line in lines
                      if abs(abs(line[1][along] - line[0][along]) - length) < ON_PAPER and
                      abs(line[1][across] - line[0][across]) < 0.01 and line[0][0] < 25 and
                      line[0][1] > pdf.sizes[page][1] - 15]
            check(len(corner) == 1, f"{boat.title}, sheet {page + 1}: check bars {what}: "
                                    f"{len(corner)}")
        check("must be " + ("100 mm" if length == 100 else "4 in") in pdf.pages[page],
              f"{boat.title}, sheet {page + 1}: the bars do not say their length")


def size(mm, units):
    """The size of a set thing, zeros at its end left off."""
    return f"{mm:.2f}".rstrip("0").rstrip(".") if units == "mm" else \
        f"{mm / 25.4:.3f}".rstrip("0").rstrip(".")


def left_out(pdf, page):
    """The note of words left out of a sheet, on that sheet."""
    found = re.search(r"Left out for want of room: (.*?); see", " ".join(pdf.pages[page].split()))
    return found[1] if found else ""


def nameless(pdf, page):
    """How many words a sheet says are left out without naming them."""
    more = re.search(r" and (\d+) more$", left_out(pdf, page))
    return int(more[1]) if more else 0


def marks_are_right(boat, pdf, page):
    """Each hole's mark stands on the sheet or in its note; returns those in neither."""
    spoken = {word for number, *_, word in pdf.words() if number == page}
    named = re.split(r", | and ", left_out(pdf, page))
    marks = [hole["mark"] for hole in boat.result["schedule"]]
    for mark in marks:
        check(not (mark in spoken and mark in named),
              f"{boat.title}, sheet {page + 1}: {mark} is drawn, and said to be left out")
    missing = [mark for mark in marks if mark not in spoken and mark not in named]
    check(len(missing) <= nameless(pdf, page),
          f"{boat.title}, sheet {page + 1}: neither drawn nor named: {missing}")
    return missing


def words_are_right(boat, pdf, units):
    """Figures of the result that the sheets must say, or else name as left out."""
    flat = " ".join(pdf.pages[1].split())
    bow_bridges = {}
    marks_are_right(boat, pdf, 0)
    missing, spare = marks_are_right(boat, pdf, 1), nameless(pdf, 1)
    for side in boat.result["layout"]["sides"]:
        bridged = {(bridge["from"], bridge["to"]) for bridge in side["bridged"]}
        for run in side["runs"]:
            pitch = span(run["pitch"], units)
            whole = re.escape(span(run["to"] - run["from"], units))
            pitch = re.escape(pitch)
            words = pitch if run["spaces"] == 1 else \
                rf"{whole} in {run['spaces']} (equal spaces )?of {pitch}"
            if (run["from"], run["to"]) in bridged:
                words = f"BRIDGED {pitch} over"
            if not re.search(words, flat):
                missing.append(words)
        for bridge in side["bridged"]:
            on_one_hand = bridge["to"] - bridge["from"]
            if abs(bridge["pitch"] - 2 * on_one_hand) > 1e-6:
                continue
            words = f"BRIDGED {span(bridge['pitch'], units)} over {size(bridge['limit'], units)} " \
                    "across the centreline"
            bow_bridges[words] = bow_bridges.get(words, 0) + 1
    for words, count in bow_bridges.items():
        check(flat.count(words) == count,
              f"{boat.title}: {flat.count(words)} times, not {count}: {words}")
    check(len(missing) <= spare, f"{boat.title}: not drawn: {missing}, {spare} said to be left out")
    for jig in {hole["jig"] for hole in boat.result["schedule"]}:
        check(f"{jig}:" in flat, f"{boat.title}: {jig} is not drawn")
    tables = pdf.pages[2]
    for side in boat.result["perimeter"]["sides"]:
        row = rf"{side['name']} +{running(side['sheer_length'], units)} +" \
              rf"{running(side['drill_line_length'], units)}"
        check(re.search(row, tables), f"{boat.title}: perimeter: {row}")


def every_sheet_tells(boat, pdf):
    """A sheet that is passed on alone says whether to stop; no bend is called a keep-out."""
    failed = sum(check["state"] == "fail" for check in boat.result["checks"])
    wanted = rf"STOP: {failed} of {len(boat.result['checks'])} checks" if failed else \
        "GO ON|LOOK FIRST"
    for page, text in enumerate(pdf.pages):
        check(re.search(wanted, text),
              f"{boat.title}, sheet {page + 1} does not say: {wanted}")
    for side in boat.result["layout"]["sides"]:
        check(f"{side['name'].upper()} laid flat" in pdf.pages[1],
              f"{boat.title}: {side['name']} laid flat has no title")
    check(not re.search(r"tight bend(?!, radius under|[.])", " ".join(pdf.pages[1].split())),
          f"{boat.title}: a tight bend without its radius")


def sections_are_right(boat, pdf, lap):
    """The worst gaps are dimensioned where the gap is not the same all round, and the lap is as
    high as its scale makes it."""
    text = pdf.pages[2]
    fit = boat.result["fit"]
    by_depth = zip(*(station["gaps"] for station in fit["stations"]))
    same = all(max(gaps) - min(gaps) < 0.05 for gaps in by_depth)
    sections = 1 if same else 3
    check(len(re.findall(r"SECTION .-.,", text)) == sections,
          f"{boat.title}: there are not {sections} sections")
    check(("same all round" in " ".join(text.split())) == same,
          f"{boat.title}: says the gap is the same all round, or does not, wrongly")
    for gap in (fit["gap_min"], fit["gap_max"]) if not same else ():
        check(f"gap {gap:.2f}" in text, f"{boat.title}: no section with the gap {gap:.2f}")
    wanted = lap * scale_after("SECTION A-A,", text)
    heights = [abs(line[1][1] - line[0][1]) for _, line in pdf.paths(2)
               if len(line) == 2 and abs(line[1][0] - line[0][0]) < 0.01 and line[0][0] > 40]
    check(sum(abs(height - wanted) < ON_PAPER for height in heights) >= sections,
          f"{boat.title}: the lap is not {wanted:.1f} mm high in its sections")


def no_words_on_others(boat, pdf):
    """Boxes of words go from ascender to descender: a part of that is never inked."""
    uninked = 0.55
    words = [(page, left + uninked, top + uninked, right - uninked, bottom - uninked, word)
             for page, left, top, right, bottom, word in pdf.words()]
    for number, one in enumerate(words):
        for other in words[number + 1:]:
            if one[0] == other[0] and one[1] < other[3] and other[1] < one[3] and \
                    one[2] < other[4] and other[2] < one[4]:
                check(False, f"{boat.title}, sheet {one[0] + 1}: {one[5]} stands on {other[5]}")


def drawing_is_right(boat, units, size, lap=None):
    pdf = Pdf(boat.path("drawing.pdf"))
    whole_file_is_right(pdf, size)
    check(len(pdf.sizes) == 3, f"{boat.title}: {len(pdf.sizes)} sheets")
    arrangement_is_right(boat, pdf)
    sides_are_right(boat, pdf)
    bars_are_right(boat, pdf, 100 if units == "mm" else 101.6)
    words_are_right(boat, pdf, units)
    every_sheet_tells(boat, pdf)
    if lap:
        sections_are_right(boat, pdf, lap)
    no_words_on_others(boat, pdf)
    return pdf


with Boat("demo-640") as demo:
    read = drawing_is_right(demo, "mm", A3, lap=50)
    for sheet in (0, 1):
        check("tight bend, radius under 150 mm" in read.pages[sheet],
              f"sheet {sheet + 1} does not say what a tight bend is")
    check(read.pages[1].count("BRIDGED 140.0 over 100 across the centreline") == 2,
          "the bridge over the bow is not told on both sides")
    with Boat("demo-640") as again:
        check(demo.bytes("drawing.pdf") == again.bytes("drawing.pdf"),
              "the drawing is not the same twice")
with Boat("demo-640", "--units", "in", change=[("lengths = [16, 19, 22, 25]", "lengths = [16, 19]"),
                                               ("Demo 640", "Long " * 60),
                                               ("bow cleat", "Cleat " * 500),
                                               ("outboard well", "W" * 3000)]) as inches:
    drawing_is_right(inches, "in", ANSI_B)
with Boat("double-ender") as launch:
    drawing_is_right(launch, "mm", A3, lap=60)
with Boat("pram", "--paper", "letter") as pram:
    drawing_is_right(pram, "mm", ANSI_B)
finish("drawing of the joint")
