"""Reads the jigs' flat patterns back from DXF and SVG.

    /usr/bin/python3 -B jig_patterns.py PROGRAM FIXTURES

An independent DXF reader (ezdxf, strict, with its audit) finds millimetres in the header and each
entity on its layer; along the flat drill line the holes of a strip of no thickness are as far apart
as their girths in result.json, and as high above the low edge; a plate's are as far apart as
jigs.txt says. The SVG has the same lines, circles and words at the same places, and so has the
drawing that another program (LibreCAD's converter) makes of the DXF.
"""

import math
import os
import re
import subprocess
import xml.etree.ElementTree as xml

import ezdxf

from sheet_reading import MM, Boat, check, close, finish, output_of

LAYERS = {"outline", "holes", "drill-line", "text"}
SVG = "{http://www.w3.org/2000/svg}"


class Dxf:
    def __init__(self, boat):
        self.path = boat.path("jigs.dxf")
        drawing = ezdxf.readfile(self.path)
        audit = drawing.audit()
        name = boat.title
        check(not audit.errors and not audit.fixes,
              f"{name}: audit: {audit.errors + audit.fixes}")
        check(drawing.header.get("$INSUNITS") == 4, f"{name}: the DXF is not in millimetres")
        check(drawing.header.get("$MEASUREMENT") == 1, f"{name}: the DXF is not metric")
        check(drawing.dxfversion == "AC1009", f"{name}: {drawing.dxfversion}")
        self.lines, self.circles, self.texts = [], [], []
        for entity in drawing.modelspace():
            layer = entity.dxf.layer
            check(layer in LAYERS, f"{name}: {entity.dxftype()} on layer {layer}")
            if entity.dxftype() == "POLYLINE":
                points = [(v.dxf.location.x, v.dxf.location.y) for v in entity.vertices]
                check(entity.is_closed == (layer == "outline"), f"{name}: closed on {layer}")
                check(all(math.dist(a, b) > 1e-6 for a, b in zip(points, points[1:])),
                      f"{name}: two vertices in one place on {layer}")
                self.lines.append((layer, points))
            elif entity.dxftype() == "CIRCLE":
                self.circles.append((layer, entity.dxf.center.x, entity.dxf.center.y,
                                     entity.dxf.radius))
            elif entity.dxftype() == "TEXT":
                self.texts.append((layer, entity.dxf.align_point.x, entity.dxf.align_point.y,
                                   entity.dxf.height, entity.dxf.text))
            else:
                check(False, f"{name}: a {entity.dxftype()} in the DXF")
        check({layer for layer, _ in self.lines} == {"outline", "drill-line", "text"},
              f"{name}: lines on {sorted({layer for layer, _ in self.lines})}")
        check({layer for layer, *_ in self.circles} == {"holes"}, f"{name}: circles off holes")

    def on(self, layer):
        return [points for name, points in self.lines if name == layer]


def segment_distance(point, a, b):
    (px, py), (ax, ay), (bx, by) = point, a, b
    length = (bx - ax) ** 2 + (by - ay) ** 2
    share = max(0, min(1, ((px - ax) * (bx - ax) + (py - ay) * (by - ay)) / length))
    return math.dist(point, (ax + share * (bx - ax), ay + share * (by - ay))), share


def place_on(line, point):
    """How far along a polyline the nearest point to one lies, and how far off it is."""
    best, run = (math.inf, 0), 0
    for a, b in zip(line, line[1:]):
        off, share = segment_distance(point, a, b)
        best = min(best, (off, run + share * math.dist(a, b)))
        run += math.dist(a, b)
    return best[1], best[0]


def flat_columns(boat):
    """mark, place on and off the flat line, of the rows under each jig of jigs.txt."""
    with open(boat.path("jigs.txt")) as file:
        text = file.read().split("What a hole is off by")[0]
    jigs = re.split(r"\n(?=J-[SPT]\d+, )", text)[1:]
    return {jig.split(",")[0]: [(row[0], float(row[1]), float(row[2])) for row in
                                re.findall(r"^([SPT]\d+) +[\d.]+ +([\d.]+) +(-?[\d.]+) ", jig,
                                           re.M)]
            for jig in jigs}


def jigs_are_right(boat, dxf, plate, radius, aft_left):
    circles = iter(dxf.circles)
    words = {(text[1], text[4]) for text in dxf.texts}
    flat = flat_columns(boat)
    edges = dxf.on("outline")
    drill_lines = dxf.on("drill-line")
    jigs = boat.result["jigs"]
    check(len(edges) == len(drill_lines) == len(jigs), f"{boat.title}: {len(edges)} outlines")
    for jig, outline, line in zip(jigs, edges, drill_lines):
        name = f"{boat.title} {jig['name']}"
        runs = []
        for hole in jig["hole_list"]:
            _, x, y, has = next(circles)
            close(has, radius, 1e-6, f"{name} {hole['mark']}, radius")
            run, off = place_on(line, (x, y))
            runs.append((run, x, y))
            check(off < 0.005, f"{name} {hole['mark']} is {off} off the drill line")
            # the outline's low edge is its nearest part below the hole
            low = min(segment_distance((x, y), a, b)[0]
                      for a, b in zip(outline, outline[1:] + outline[:1])
                      if (a[1] + b[1]) / 2 < y and abs(a[1] - b[1]) < abs(a[0] - b[0]))
            close(low, hole["above_edge"], 0.01, f"{name} {hole['mark']}, above the edge")
            check((x, hole["mark"]) in words, f"{name}: no {hole['mark']} under its hole")
        first, last = runs[0], runs[-1]
        check(len(flat[jig["name"]]) == len(runs), f"{name}: holes in jigs.txt")
        for hole, (run, x, y), (mark, on, off) in zip(jig["hole_list"], runs,
                                                      flat[jig["name"]]):
            check(mark == hole["mark"], f"{name}: {mark} for {hole['mark']}")
            close(abs(x - first[1]), on, 0.051, f"{name} {mark}, on the flat line")
            close(y - first[2], off, 0.051, f"{name} {mark}, off the flat line")
            if plate == 0:
                close(abs(run - first[0]), hole["girth"], 0.01, f"{name} {mark}, girth")
        if len(runs) > 1:
            left = aft_left if jig["side"] != "port" else not aft_left
            check((last[1] < first[1]) == left, f"{name} is handed the wrong way")
    check(next(circles, None) is None, f"{boat.title}: holes too many")


def svg_is_the_same(boat, dxf):
    root = xml.parse(boat.path("jigs.svg")).getroot()
    wide, high = (re.fullmatch(r"([\d.]+)mm", root.get(side))[1] for side in ("width", "height"))
    check(root.get("viewBox") == f"0 0 {wide} {high}", f"{boat.title}: the SVG is not in mm")
    groups = {group.get("id"): group for group in root.findall(SVG + "g")}
    check(set(groups) == LAYERS, f"{boat.title}: the SVG has layers {sorted(groups)}")
    high = float(high)
    lines, circles, texts = [], [], []
    for layer, group in groups.items():
        for element in group:
            if element.tag in (SVG + "polygon", SVG + "polyline"):
                pairs = [pair.split(",") for pair in element.get("points").split()]
                lines.append((layer, [(float(x), high - float(y)) for x, y in pairs]))
            elif element.tag == SVG + "circle":
                circles.append((layer, float(element.get("cx")),
                                high - float(element.get("cy")), float(element.get("r"))))
            else:
                texts.append((layer, float(element.get("x")), high - float(element.get("y")),
                              element.text))

    def same(has, wants, what):
        check(len(has) == len(wants), f"{boat.title}: {len(has)} {what} in SVG, {len(wants)}")
        for one, other in zip(sorted(has), sorted(wants)):
            check(one[0] == other[0], f"{boat.title}: {what} on {one[0]}, not {other[0]}")
            check(all(abs(a - b) < 2e-4 for a, b in zip(one[1:], other[1:])),
                  f"{boat.title}: {what} at {one}, not {other}")

    same(circles, dxf.circles, "circles")

    def flattened(entries):
        return [(layer, *(value for point in points for value in point))
                for layer, points in entries]

    same(flattened(lines), flattened(dxf.lines), "lines")
    for (_, x, y, words), text in zip(sorted(texts, key=lambda text: (text[3], text[1])),
                                      sorted(dxf.texts, key=lambda text: (text[4], text[1]))):
        check(words == text[4].replace("%%%", "%") and math.dist((x, y), text[1:3]) < 2e-4,
              f"{boat.title}: {words} at {(x, y)}, not {text}")
    check(len(texts) == len(dxf.texts), f"{boat.title}: {len(texts)} words in SVG")
    check(all(0 <= x <= float(wide) and 0 <= y <= high
              for _, points in lines for x, y in points),
          f"{boat.title}: a line off the SVG's sheet")


def another_reader_draws_the_same(boat, dxf):
    """The converter's drawing, made to fit a sheet: circles and outlines.

    Its scale and place on the sheet are taken from the two circles that are furthest apart."""
    folder = os.path.dirname(dxf.path)
    done = subprocess.run(["librecad", "dxf2pdf", "--fit", "jigs.dxf"], cwd=folder, timeout=60,
                          capture_output=True, text=True,
                          env={**os.environ, "QT_QPA_PLATFORM": "offscreen", "HOME": folder})
    check(done.returncode == 0, f"the converter's exit status is {done.returncode}")
    svg = output_of("pdftocairo", "-svg", os.path.join(folder, "jigs.pdf"), "-")
    centres, corners = [], []
    for path, scale in re.findall(r' d="([^"]*)" transform="matrix\(([\d.]+),', svg):
        numbers = [float(number) * float(scale) * MM for number in re.findall(r"-?[\d.]+", path)]
        points = list(zip(numbers[::2], numbers[1::2]))
        if " C " in path:
            xs, ys = zip(*points)
            centres.append(((min(xs) + max(xs)) / 2, (min(ys) + max(ys)) / 2))
        else:
            corners += points
    check(len(centres) == len(dxf.circles), f"the converter draws {len(centres)} circles")
    drawn = [(x, -y) for _, x, y, _ in dxf.circles]  # y runs down on a sheet

    def ends(points):
        return (min(points, key=lambda point: point[0] + point[1]),
                max(points, key=lambda point: point[0] + point[1]))

    (first, last), (there, beyond) = ends(drawn), ends(centres)
    scale = math.dist(there, beyond) / math.dist(first, last)

    def on_sheet(x, y):
        return there[0] + (x - first[0]) * scale, there[1] + (y - first[1]) * scale

    for x, y in drawn:
        check(min(math.dist(on_sheet(x, y), centre) for centre in centres) < 0.02 * scale,
              f"the converter has no circle at {(x, y)}")
    for x, y in (corner for outline in dxf.on("outline") for corner in outline):
        # it puts the ends of straight lines on a grid of 1/1200 in
        check(min(math.dist(on_sheet(x, -y), corner) for corner in corners) < 25.4 / 1200,
              f"the converter has no corner at {(x, y)}")


NO_PLATE = ("plate = 3 ", "plate = 0 ")
with Boat("demo-640") as boat:
    dxf = Dxf(boat)
    jigs_are_right(boat, dxf, plate=3, radius=4, aft_left=True)
    svg_is_the_same(boat, dxf)
    another_reader_draws_the_same(boat, dxf)
    outside = dxf
with Boat("demo-640", change=[NO_PLATE]) as boat:
    dxf = Dxf(boat)
    jigs_are_right(boat, dxf, plate=0, radius=3.9 / 2, aft_left=True)
with Boat("demo-640", change=[('marks = "outer"', 'marks = "lip"')]) as boat:
    dxf = Dxf(boat)
    jigs_are_right(boat, dxf, plate=3, radius=4, aft_left=False)
    check(sum("MIRRORED" in text[4] for text in dxf.texts) == len(boat.result["jigs"]),
          "a mirrored pattern does not say so")
    check(not any("MIRRORED" in text[4] for text in outside.texts), "mirrored from outside")
for name in ("double-ender", "pram", "whole"):
    with Boat(name) as boat:
        dxf = Dxf(boat)
        # the fixtures' tables give no plate: the pilot, or the bolt's own hole, is cut
        hole = boat.result["schedule"][0]
        radius = (hole["hull_pilot"] or hole["lip_hole"]) / 2
        if '"in"' not in open(os.path.join(boat.folder, "joint.toml")).read():
            jigs_are_right(boat, dxf, plate=0, radius=radius, aft_left=True)
        svg_is_the_same(boat, dxf)
finish("flat patterns of the jigs")
