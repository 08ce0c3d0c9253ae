"""What the test of the strips reads from a page: edges, holes and register marks; and how pages
are put together by the marks alone. Places are complex numbers, mm, y down."""

import cmath
import re
from collections import Counter

from sheet_reading import MM, check, close

REGISTER_RADIUS = 1.7
NEAR = 0.02  # mm, of sizes that are drawn
MARK_AWAY = (7.5, 14.2)  # of a mark's middle from its hole, a little more
EDGE_WIDTH = 0.5  # mm, of the strip's edges
LEAST_LINE = 30  # mm, of an edge or a drill line: longer than an arrow


def circle(points):
    """The middle and radius of a closed path of curves that is a circle."""
    if len(points) not in (8, 14) or points[0] != points[-1]:
        return None
    on_it = points[:-2:3]  # every third, between those that bend the curve
    middle = sum(on_it) / len(on_it)
    radius = abs(on_it[0] - middle)
    round_it = all(abs(abs(point - middle) - radius) < NEAR for point in on_it)
    return (middle, radius) if round_it and radius > 0 else None


def has_letters(words, wanted):
    """Whether words that a turn has broken up hold all the letters of others."""
    left = Counter("".join(words))
    left.subtract(Counter("".join(wanted)))
    return min(left.values()) >= 0


class Piece:
    """What a page has drawn of the strip; its places as complex numbers, mm, y down."""

    def __init__(self, pdf, page, words):
        self.page = page
        self.words = [(complex((left + right) / 2, (top + bottom) / 2), word)
                      for at, left, top, right, bottom, word in words if at == page]
        self.circles, self.edges, self.drill_lines, self.bars = [], [], [], []
        for style, points in pdf.paths(page):
            self._take(style, [complex(x, y) for x, y in points])
        self.seams = self._seams()
        self.holes = {}

    def _take(self, style, points):
        wide = re.search(r"stroke-width:([\d.]+)", style)
        dash = re.search(r"stroke-dasharray:([\d.,]+)", style)
        dashes = len(dash[1].split(",")) if dash else 0
        width = float(wide[1]) * MM if wide else 0
        ring = circle(points)
        if ring:
            self.circles.append((*ring, dashes > 0))
            return
        long = abs(points[-1] - points[0]) > LEAST_LINE
        if long and not dashes and abs(width - EDGE_WIDTH) < NEAR:
            self.edges.append(points)
        elif long and dashes == 4:  # long and short: the drill line alone
            self.drill_lines.append(points)
        elif len(points) == 2 and not dashes:
            self.bars.append(points[1] - points[0])

    def _seams(self):
        """The place of each register mark by its name, as it stands beside it."""
        marks = [middle for middle, radius, _ in self.circles
                 if abs(radius - REGISTER_RADIUS) < NEAR]
        names = []
        for place, word in self.words:
            if re.fullmatch(r"\d+\|\d+", word):
                letter = min((abs(at - place), text) for at, text in self.words
                             if text in ("A", "B", "A:", "B:"))[1]
                names.append((place, word + letter[0]))
        seams = {}
        for place, name in names:
            # the names of one level are in the order of their marks
            level = sorted((at.real, other) for at, other in names
                           if abs((at - place).imag) < 2.5)
            beside = sorted(mark.real for mark in marks if abs((mark - place).imag) < 2.5)
            index = [other for _, other in level].index(name)
            if len(beside) == len(level):
                seams[name] = next(mark for mark in marks if mark.real == beside[index] and
                                   abs((mark - place).imag) < 2.5)
        return seams

    def find_holes(self, marks, radius):
        """The middle of each hole whose mark is on the page."""
        rings = [(middle, dashed) for middle, size, dashed in self.circles
                 if abs(size - radius) < NEAR]
        for place, word in self.words:
            if word not in marks:
                continue
            near = sorted((ring for ring in rings
                           if MARK_AWAY[0] < abs(ring[0] - place) < MARK_AWAY[1]),
                          key=lambda ring: abs((ring[0] - place).real))
            if near:
                self.holes[word] = near[0]


    def follow_holes(self, holes, radius, runs_left):
        """The holes of a page in their order, from one whose mark was read: where the strip is
        turned a lot, words are read in pieces."""
        rings = sorted(((middle, dashed) for middle, size, dashed in self.circles
                        if abs(size - radius) < NEAR), key=lambda ring: ring[0].real,
                       reverse=runs_left)
        places = [ring[0] for ring in rings]
        marks = [hole["mark"] for hole in holes]
        starts = {marks.index(mark) - places.index(ring[0]) for mark, ring in self.holes.items()}
        check(len(starts) == 1, f"page {self.page + 1}: holes are out of order")
        start = min(starts, default=0)
        self.holes = dict(zip(marks[max(start, 0):], rings))
        check(len(self.holes) == len(rings), f"page {self.page + 1}: more rings than holes")


def motion_between(here, there):
    """The rigid motion that lays the marks of a page onto the same ones of another."""
    turn = cmath.exp(1j * cmath.phase((there[1] - there[0]) / (here[1] - here[0])))
    return turn, (there[0] + there[1] - turn * (here[0] + here[1])) / 2


def joined(pieces, name):
    """A motion into one frame for every page, by stretches that hang together."""
    motions = {}
    for start in pieces:
        if start.page in motions:
            continue
        motions[start.page] = (1, 0)
        reached = [start]
        for piece in reached:
            for label in {seam[:-1] for seam in piece.seams}:
                for other in pieces:
                    if other.page in motions or label + "A" not in other.seams:
                        continue
                    pair = [[one.seams.get(label + letter) for letter in "AB"]
                            for one in (other, piece)]
                    if None in pair[0] or None in pair[1]:
                        check(False, f"{name}: {label} is not marked twice on both sheets")
                        continue
                    close(abs(pair[0][1] - pair[0][0]), abs(pair[1][1] - pair[1][0]), 0.05,
                          f"{name}: {label}, from A to B")
                    turn, shift = motion_between(*pair)
                    before = motions[piece.page]
                    motions[other.page] = (before[0] * turn, before[0] * shift + before[1])
                    reached.append(other)
    return motions


def foot(point, line):
    """How far a point is from a polyline, the girth there, and the nearest place."""
    best, run = None, 0
    for start, end in zip(line, line[1:]):
        way = end - start
        length = abs(way)
        if length > 0:
            share = ((point - start) * way.conjugate()).real / length**2
            share = min(max(share, 0), 1)
            place = start + share * way
            found = (abs(point - place), run + share * length, place)
            best = min(best, found, key=lambda one: one[0]) if best else found
        run += length
    return best


def crossing(line, start, end):
    """The girth of a polyline where it crosses from one side of a line to the other."""
    run = 0
    for here, there in zip(line, line[1:]):
        sides = [((point - start) * (end - start).conjugate()).imag for point in (here, there)]
        length = abs(there - here)
        if sides[0] * sides[1] <= 0 and sides[0] != sides[1]:
            share = sides[0] / (sides[0] - sides[1])
            along = ((here + share * (there - here) - start) / (end - start)).real
            if 0 <= along <= 1:
                return run + share * length
        run += length
    return None


def runs(pieces):
    """Of every drill line on a page: the part of the strip it belongs to, and the girth on it
    of the line's start. Lines on two pages belong together where a seam crosses both."""
    crossings = {}
    for number, piece in enumerate(pieces):
        for label in {seam[:-1] for seam in piece.seams}:
            for index, line in enumerate(piece.drill_lines):
                at = crossing(line, piece.seams.get(label + "A"), piece.seams.get(label + "B"))
                if at is not None:
                    crossings.setdefault(label, []).append(((number, index), at))
    found = {}
    for number, piece in enumerate(pieces):
        for index in range(len(piece.drill_lines)):
            if (number, index) in found:
                continue
            found[number, index] = ((number, index), 0)
            reached = [(number, index)]
            for key in reached:
                for pair in crossings.values():
                    for (one, at), (other, there) in (pair, pair[::-1]) if len(pair) == 2 else ():
                        if one == key and other not in found:
                            found[other] = (found[key][0], found[key][1] + at - there)
                            reached.append(other)
    return found


def girths_on_paper(pieces):
    """(part of the strip, girth on its drawn drill line) of each hole."""
    found = {}
    for (number, index), (part, start) in runs(pieces).items():
        line = pieces[number].drill_lines[index]
        for mark, (place, _) in pieces[number].holes.items():
            off, run, _ = foot(place, line)
            if off < 0.05:
                found[mark] = (part, start + run)
    return found
