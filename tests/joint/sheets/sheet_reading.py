"""What the tests of the drawn sheets share: running the program, and reading its PDFs back
with poppler's programs. Positions are mm from the top left corner of the sheet."""

import json
import os
import re
import shutil
import subprocess
import sys
import tempfile
from decimal import ROUND_HALF_UP, Decimal
from fractions import Fraction

MM = 25.4 / 72  # of a point
A4, A3 = (210, 297), (420, 297)
LETTER, ANSI_B = (215.9, 279.4), (431.8, 279.4)

PROGRAM, FIXTURES = os.path.abspath(sys.argv[1]), os.path.abspath(sys.argv[2])
wrong = []
looked_at = 0


def check(right, message):
    """Notes what is wrong, to be told at the end."""
    global looked_at
    looked_at += 1
    if not right:
        wrong.append(message)


def close(has, wants, within, what):
    check(abs(has - wants) <= within, f"{what}: {has:.3f}, not {wants:.3f} (within {within})")


def finish(about):
    if wrong:
        sys.exit("\n".join(wrong[:40] + [f"{len(wrong)} of {looked_at} are wrong: {about}"]))
    print(f"{about}: {looked_at} things are right")


def output_of(*command):
    done = subprocess.run(command, capture_output=True, text=True)
    if done.returncode != 0 or done.stderr:
        sys.exit(f"{' '.join(command)}: exit {done.returncode}\n{done.stderr}")
    return done.stdout


class Boat:
    """A boat of the fixtures, run through the program in a folder of its own."""

    def __init__(self, name, *options, change=(), environment=None):
        self.title = " ".join([name, *options])
        self.folder = tempfile.mkdtemp()
        for file in ("joint.toml", "sheer.csv"):
            shutil.copy(os.path.join(FIXTURES, name, file), self.folder)
        for before, after in change:
            self._change(before, after)
        done = subprocess.run([PROGRAM, "job", "joint.toml", "--out", "papers", *options],
                              cwd=self.folder, capture_output=True, text=True,
                              env={**os.environ, **(environment or {})})
        if done.returncode not in (0, 1):
            sys.exit(f"{self.title}: exit {done.returncode}\n{done.stderr}")
        with open(self.path("result.json")) as file:
            self.result = json.load(file)

    def _change(self, before, after):
        path = os.path.join(self.folder, "joint.toml")
        with open(path) as file:
            text = file.read()
        if before not in text:
            sys.exit(f"{self.title}: the joint file does not say {before}")
        with open(path, "w") as file:
            file.write(text.replace(before, after, 1))

    def path(self, name):
        return os.path.join(self.folder, "papers", name)

    def bytes(self, name):
        with open(self.path(name), "rb") as file:
            return file.read()

    def holes(self, side):
        return [hole for hole in self.result["schedule"] if hole["side"] == side]

    def __enter__(self):
        return self

    def __exit__(self, *_):
        shutil.rmtree(self.folder)


class Pdf:
    def __init__(self, path):
        self.path, self.name = path, os.path.basename(path)
        self.info = output_of("pdfinfo", "-f", "1", "-l", "999", path)
        self.sizes = [(float(wide) * MM, float(high) * MM) for wide, high in
                      re.findall(r"Page +\d+ size: +([\d.]+) x ([\d.]+) pts", self.info)]
        self.text = output_of("pdftotext", "-layout", path, "-")
        self.pages = self.text.split("\f")[:len(self.sizes)]

    def words(self):
        """(page from 0, left, top, right, bottom, word) of every word."""
        found = []
        page = -1
        for line in output_of("pdftotext", "-bbox", self.path, "-").splitlines():
            if "<page " in line:
                page += 1
            place = re.search(r'<word xMin="([-\d.]+)" yMin="([-\d.]+)" xMax="([-\d.]+)" '
                              r'yMax="([-\d.]+)">(.*)</word>', line)
            if place:
                word = place[5].replace("&apos;", "'").replace("&quot;", '"')
                word = word.replace("&lt;", "<").replace("&gt;", ">").replace("&amp;", "&")
                found.append((page, *(float(place[k]) * MM for k in (1, 2, 3, 4)), word))
        return found

    def drawing(self, page):
        """The page as SVG whose paths are in points from the top left corner.

        On huge paper, or thin lines would be moved to the grid of a screen."""
        return output_of("pdftocairo", "-svg", "-f", str(page + 1), "-l", str(page + 1),
                         "-expand", "-nocenter", "-paperw", "60000", "-paperh", "60000",
                         self.path, "-")

    def paths(self, page):
        """Each stroked path of a page as (style, [(x, y) of its points])."""
        found = []
        for path in re.finditer(r'<path style="([^"]*)" d="([^"]*)" '
                                r'transform="matrix\([\d.]+,0,0,[\d.]+,0,0\)"', self.drawing(page)):
            numbers = [float(number) * MM for number in re.findall(r"-?[\d.]+", path[2])]
            found.append((path[1], list(zip(numbers[::2], numbers[1::2]))))
        return found


    def discs(self, page):
        """(x, y, radius) of each filled disc of a page."""
        drawing = self.drawing(page)
        points = float(re.search(r"matrix\(([\d.]+),0,0", drawing)[1])  # drawn for each point
        found = []
        for path in re.findall(r'<path style=" stroke:none[^"]*" d="(M [^"]* C [^"]*)"', drawing):
            # the points on the curve: where it starts, and the last of each three
            numbers = [[float(number) for number in re.findall(r"-?[\d.]+", part)]
                       for part in re.split("[MCLZ]", path)]
            on_curve = [part[-2:] for part in numbers if part]
            across, down = ([point[k] * MM / points for point in on_curve] for k in (0, 1))
            found.append(((max(across) + min(across)) / 2, (max(down) + min(down)) / 2,
                          (max(across) - min(across)) / 2))
        return found


def whole_file_is_right(pdf, size):
    """Sizes of the pages, embedded fonts, the numbers of the sheets, and no date."""
    for number, (wide, high) in enumerate(pdf.sizes, 1):
        close(wide, size[0], 0.01, f"{pdf.name} sheet {number}, width")
        close(high, size[1], 0.01, f"{pdf.name} sheet {number}, height")
        check(f"sheet {number} of {len(pdf.sizes)}" in pdf.pages[number - 1],
              f"{pdf.name}: sheet {number} does not say its number")
    for page, left, top, right, bottom, word in pdf.words():
        wide, high = pdf.sizes[page]
        check(18 < left and right < wide - 8 and 8 < top and bottom < high - 4,
              f"{pdf.name}, sheet {page + 1}: {word[:40]} stands off the sheet's frame")
    fonts = output_of("pdffonts", pdf.path).splitlines()
    column = fonts[0].index("emb")
    check(len(fonts) > 2, f"{pdf.name} has no fonts")
    for font in fonts[2:]:
        check(font[column:column + 7] == "yes yes", f"{pdf.name}: not embedded: {font}")
        check("DejaVu" in font, f"{pdf.name} is lettered in {font}")
    check("CreationDate" not in pdf.info, f"{pdf.name} has a date")


def rounded(value, step):
    """To the nearest step, halves away from zero, as a whole number of steps."""
    return int((Decimal(value) / Decimal(step)).quantize(Decimal(1), ROUND_HALF_UP))


def running(mm, units, round_to=1):
    """A running dimension as an mm or an inch shop writes it."""
    if units == "mm":
        return str(rounded(repr(mm), round_to) * round_to)
    parts = rounded(repr(mm / 25.4), Decimal(1) / 16)
    whole, rest = Fraction(abs(parts) // 16), Fraction(abs(parts) % 16, 16)
    text = "-".join(str(part) for part in (whole, rest) if part) or "0"
    return ("-" if parts < 0 else "") + text


def span(mm, units):
    """A pitch, chord or ordinate."""
    value = Decimal(repr(mm)) / (1 if units == "mm" else Decimal("25.4"))
    text = str(value.quantize(Decimal("0.1") if units == "mm" else Decimal("0.01"), ROUND_HALF_UP))
    return text[1:] if re.fullmatch(r"-0\.0*", text) else text
