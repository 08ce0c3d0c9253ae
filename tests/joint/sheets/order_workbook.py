"""Reads the order's workbook back with other programs.

    /usr/bin/python3 order_workbook.py PROGRAM FIXTURES

The workbook is worked out anew by a spreadsheet program and read with a library:
  - what is written with the formulas is what they come to;
  - its totals are those of result.json;
  - with inputs changed in the workbook, its totals are those of a second run of the
    program on a joint file with the same change;
  - user's text stays text, and the same job gives the same bytes.
"""

import json
import os
import re
import shutil
import subprocess
import sys
import tempfile
import zipfile

import openpyxl

PROGRAM, FIXTURES = os.path.abspath(sys.argv[1]), os.path.abspath(sys.argv[2])
SAME = 1e-6  # relative: sums of the same figures in another order
ROUNDING = 1e-9  # relative: a formula against the value written with it

# have every formula worked out at loading, whatever is written with it
ALWAYS = """<?xml version="1.0" encoding="UTF-8"?>
<oor:items xmlns:oor="http://openoffice.org/2001/registry">
<item oor:path="/org.openoffice.Office.Calc/Formula/Load"><prop oor:name="OOXMLRecalcMode"
oor:op="fuse"><value>0</value></prop></item></oor:items>
"""

wrong = []
compared = 0


def same(where, has, wants, tolerance=SAME):
    """Notes a difference between two numbers, or between a number and nothing."""
    global compared
    compared += 1
    has, wants = (None if value in ("", None) else value for value in (has, wants))
    numbers = isinstance(has, (int, float)) and isinstance(wants, (int, float))
    if numbers and abs(has - wants) <= tolerance * max(1, abs(has), abs(wants)):
        return
    if not numbers and has == wants:
        return
    wrong.append(f"{where}: the workbook has {has!r}, not {wants!r}")


def run(*arguments, **environment):
    done = subprocess.run([PROGRAM, *arguments], capture_output=True, text=True,
                          env={**os.environ, **environment})
    if done.returncode not in (0, 1):
        sys.exit(f"{' '.join(arguments)}: exit {done.returncode}\n{done.stderr}")
    return done.stdout


class Boats:
    """Boats of the fixtures in a folder of their own, with keys of their joint files
    changed."""

    def __init__(self, folder):
        self.folder = folder

    def joint(self, name, fixture, changes=(), drop=()):
        boat = os.path.join(self.folder, name)
        shutil.copytree(os.path.join(FIXTURES, fixture), boat)
        path = os.path.join(boat, "joint.toml")
        with open(path, encoding="utf-8") as file:
            text = file.read()
        for key in drop:
            # the first is the joint's own; others are of things to compare it with
            text, count = re.subn(rf"(?m)^{key} *=.*\n", "", text, count=1)
            assert count == 1, f"{fixture}: {key} is not there"
        for table, key, value in changes:
            text = changed(text, table, key, value)
        with open(path, "w", encoding="utf-8") as file:
            file.write(text)
        return path

    def job(self, name, *arguments, **environment):
        out = os.path.join(self.folder, name, "papers")
        run("job", os.path.join(self.folder, name, "joint.toml"), "--out", out,
            "--quiet", *arguments, **environment)
        return os.path.join(out, "order.xlsx")


def changed(text, table, key, value):
    """The joint file with one key of a table (or of none) set."""
    start = text.index(f"[{table}]") if table else 0
    end = text.find("\n[", start + 1)
    end = len(text) if end < 0 else end
    body, count = re.subn(rf"(?m)^{key} *=.*$", lambda _: f"{key} = {value}",
                          text[start:end])
    if count == 0:
        body += f"\n{key} = {value}\n"
    return text[:start] + body + text[end:]


def recalculated(paths, folder):
    """The same workbooks, worked out anew, by the names of the old ones."""
    profile = os.path.join(folder, "profile")
    os.makedirs(os.path.join(profile, "user"))
    with open(os.path.join(profile, "user", "registrymodifications.xcu"), "w",
              encoding="utf-8") as file:
        file.write(ALWAYS)
    out = os.path.join(folder, "recalculated")
    flat = os.path.join(folder, "flat")
    os.makedirs(flat)
    for number, path in enumerate(paths):
        shutil.copy(path, os.path.join(flat, f"{number}.xlsx"))
    done = subprocess.run(
        ["soffice", f"-env:UserInstallation=file://{profile}", "--headless",
         "--convert-to", "xlsx", "--outdir", out,
         *(os.path.join(flat, f"{number}.xlsx") for number in range(len(paths)))],
        capture_output=True, text=True)
    result = {}
    for number, path in enumerate(paths):
        made = os.path.join(out, f"{number}.xlsx")
        if not os.path.exists(made):
            sys.exit(f"the spreadsheet program made nothing of {path}\n{done.stderr}")
        result[path] = openpyxl.load_workbook(made, data_only=True)
    return result


def named(book, name):
    """The cell that a name stands for."""
    sheet, cell = book.defined_names[name].attr_text.rsplit("!", 1)
    return book[sheet.strip("'")][cell.replace("$", "")]


def set_inputs(path, target, values):
    book = openpyxl.load_workbook(path)
    for name, value in values.items():
        named(book, name).value = value
    book.save(target)


def table(sheet, heading, column=1):
    """The rows under a heading, up to the first empty one, by their first cell."""
    rows = list(sheet.iter_rows(values_only=True))
    start = next(number for number, row in enumerate(rows) if row[column - 1] == heading)
    result = {}
    for row in rows[start + 1:]:
        if row[0] in ("", None):
            break
        result[row[0]] = row[1:]
    return result


def order_figures(book, result, where):
    """The workbook's order against result.json, or what `order --json` prints."""
    rows = table(book["Order"], "item")
    lines = result["order"]
    names = list(rows)
    if len(names) != len(lines) + 1:
        wrong.append(f"{where}: {len(names) - 1} lines in the order, not {len(lines)}")
    boats = rows[names[0]][4]
    for name, line in zip(names, lines):
        row = rows[name]
        for at, key in ((5, "need"), (7, "pack_size"), (8, "packs"), (10, "price"),
                        (11, "total")):
            same(f"{where}, {name}: {key}", row[at], line[key])
        same(f"{where}, {name}: unit", row[0], line["unit"])
        same(f"{where}, {name}: surplus", row[9],
             line["packs"] * line["pack_size"] - line["need"])
        same(f"{where}, {name}: gross in a boat", row[3], line["need"] / boats)
    total = rows[names[-1]]
    same(f"{where}: total", total[11], result["order_total"])
    same(f"{where}: for each boat", total[12], result["order_per_boat"])
    split = table(book["Purchasing"], "Adhesive, split by its shelf life")
    shelf = result["order_shelf"] or {"boats": None, "packs": None, "deliveries": None}
    for value, key in zip(split.values(), ("boats", "packs", "deliveries")):
        same(f"{where}: shelf life, {key}", value[0], shelf[key])


def allowance_figures(book, result, where):
    rows = table(book["Adhesive"], "line")
    adhesive = result["order"][0]["item"]
    amounts = {line["what"]: line["amount"] for line in result["order_allowances"]
               if line["item"] == adhesive}
    for what, amount in amounts.items():
        row = rows.get(what, rows.get("+ " + what))
        same(f"{where}, {what}", row[5] if row else "no such line", amount)
    boat = result["adhesive"]
    for column, amount in ((1, boat["least"]), (2, boat), (3, boat["most"])):
        for what, key in (("joint volume", "joint_volume"), ("= laid", "bead_volume"),
                          ("= needed", "boat_volume")):
            same(f"{where}, one boat, {what}, column {column}", rows[what][column],
                 amount[key] if amount else "-")
    pieces = table(book["Fasteners"], "item")
    for item, row in zip(pieces, pieces.values()):
        line = result["order"][2 + list(pieces).index(item)]
        amounts = {one["what"]: one["amount"] for one in result["order_allowances"]
                   if one["item"] == line["item"]}
        for at, what in ((1, "in the boats"), (2, "spares"), (6, "box rounding")):
            same(f"{where}, {item}: {what}", row[at], amounts[what])


def cells(book):
    return {(sheet.title, cell.coordinate): cell.value
            for sheet in book for row in sheet.iter_rows() for cell in row
            if cell.value is not None}


def cached_are_recalculated(path, again, where):
    """What is written with the formulas against what they come to."""
    formulas = {at for at, value in cells(openpyxl.load_workbook(path)).items()
                if isinstance(value, str) and value.startswith("=")}
    before = cells(openpyxl.load_workbook(path, data_only=True))
    after = cells(again)
    if len(formulas) < 100:
        wrong.append(f"{where}: only {len(formulas)} formulas")
    for at in sorted(formulas):
        value = after.get(at, "")
        if isinstance(value, str) and value.startswith("#"):
            wrong.append(f"{where}, {at}: {value}")
        same(f"{where}, {at}", before.get(at, ""), value, ROUNDING)


def result_of(path):
    with open(os.path.join(os.path.dirname(path), "result.json"), encoding="utf-8") as file:
        return json.load(file)


# inputs changed in the workbook, and the same in the joint file
CHANGES = {
    "allowances": ({"squeeze_out": 0.07, "waste_share": 0.08, "spare_share": 0.031},
                   [("adhesive", "squeeze_out", "0.07"), ("adhesive", "waste", "0.08"),
                    ("order", "spare", "0.031")]),
    "boats": ({"boats": 37, "boats_a_month": 0.4, "guns": 3},
              [("shop", "guns", "3"), ("order", "boats", "37"), ("order", "boats_a_month", "0.4")]),
    "prices": ({"pack_price": 29.45, "box_price": 12.5, "nozzle_price": None},
               [("adhesive", "pack_price", "29.45"), ("fastener", "box_price", "12.5"),
                ("adhesive", "nozzle_price", None)]),
    "packs": ({"pack_ml": 400, "pack_usable_ml": 380, "nozzle_purge_ml": 45,
               "box_size": 250, "shelf_life_days": 180, "squeeze_out": 0.31},
              [("adhesive", "pack", "400"), ("adhesive", "pack_usable", "380"),
               ("adhesive", "nozzle_purge", "45"), ("fastener", "box", "250"),
               ("adhesive", "shelf_life", "180"), ("adhesive", "squeeze_out", "0.31")]),
}
# on boats that keep their own: unit inches, bolts with nuts and washers
SMALL = ({"boats": 7, "waste_share": 0.11, "squeeze_out": 0.16},
         [("order", "boats", "7"), ("adhesive", "waste", "0.11"),
          ("adhesive", "squeeze_out", "0.16")])
HOSTILE = {"title": '=1+2', "name": "@SUM(A1:A9)", "long": "-" + "x & <y> " * 120}


def hostile_texts(path):
    book = openpyxl.load_workbook(path)
    text = cells(book)
    if text[("Order", "A1")] != f"{HOSTILE['title']}: what to buy for the run of boats":
        wrong.append(f"a title that starts with =: {text[('Order', 'A1')]!r}")
    item = next(cell for row in book["Order"].iter_rows() for cell in row
                if cell.value == HOSTILE["name"])
    if item.data_type != "s":
        wrong.append(f"a name that starts with @ is written as {item.data_type!r}")


# inputs that the program refuses: no total may be left standing
REFUSED = {"no box": {"box_size": None}, "half a boat": {"boats": 1.5},
           "more out than in": {"pack_ml": 400}, "no boats": {"boats": None},
           "words": {"boats": "many"}}


def refused(book, where):
    """A workbook with inputs that cannot be worked with says so and has no totals."""
    for page in ("Inputs", "Order", "Purchasing"):
        words = [cell.value for row in book[page].iter_rows() for cell in row
                 if isinstance(cell.value, str)
                 and cell.value.startswith(("STOP: these inputs", "STOP: boats and"))]
        if not words:
            wrong.append(f"{where}: the page {page} does not say STOP")
    rows = table(book["Order"], "item")
    rows.update(table(book["Order"], "how the lip stands"))
    for name, row in rows.items():
        for value in (row[8], *row[11:14]) if len(row) > 12 and row[0] else row[1:6]:
            same(f"{where}, {name}: packs and totals", value, None)
    for name, row in table(book["Purchasing"], "item").items():
        same(f"{where}, {name}: packs to buy", row[0], None)


def protected(path):
    """Only the cells to fill in can be typed into."""
    for sheet in openpyxl.load_workbook(path):
        if not sheet.protection.sheet or sheet.protection.password:
            wrong.append(f"{sheet.title} is not protected, or with a password")
        for row in sheet.iter_rows():
            for cell in row:
                if str(cell.value).startswith("=") and not cell.protection.locked:
                    wrong.append(f"{sheet.title} {cell.coordinate} is not locked")
    book = openpyxl.load_workbook(path)
    if named(book, "boats").protection.locked:
        wrong.append("the boats are locked")


def main(folder):
    boats = Boats(folder)
    options = {"demo-640": [], "double-ender": [], "pram": ["--units", "in"],
               "whole": ["--units", "in"]}
    plain = {}
    for fixture, units in options.items():
        boats.joint(fixture, fixture)
        plain[fixture] = boats.job(fixture, *units)

    tasks = {}  # path: (words, result)
    for name, (inputs, changes) in CHANGES.items():
        target = os.path.join(folder, f"{name}.xlsx")
        set_inputs(plain["demo-640"], target, inputs)
        drop = [key for _, key, value in changes if value is None]
        joint = boats.joint(name, "demo-640",
                            [change for change in changes if change[2] is not None], drop)
        tasks[target] = (name, json.loads(run("order", joint, "--json")))
    for fixture in ("double-ender", "whole"):
        target = os.path.join(folder, f"{fixture}-changed.xlsx")
        set_inputs(plain[fixture], target, SMALL[0])
        joint = boats.joint(f"{fixture}-changed", fixture, SMALL[1])
        tasks[target] = (f"{fixture}, changed", json.loads(run("order", joint, "--json")))
    stopped = {}
    for name, inputs in REFUSED.items():
        target = os.path.join(folder, f"{name}.xlsx")
        set_inputs(plain["demo-640"], target, inputs)
        stopped[target] = name
    protected(plain["demo-640"])
    between = os.path.join(folder, "between.xlsx")
    set_inputs(plain["demo-640"], between, {"squeeze_out": 0.125})
    laid = [json.loads(run("adhesive", boats.joint(
        f"squeeze-{share}", "demo-640", [("adhesive", "squeeze_out", share)]),
        "--json"))["adhesive"]["bead_volume"] for share in ("0.125", "0.13")]

    boats.joint("hostile", "demo-640", [(None, "title", json.dumps(HOSTILE["title"])),
                                        ("adhesive", "name", json.dumps(HOSTILE["name"]))])
    hostile = boats.job("hostile")
    hostile_texts(hostile)
    boats.joint("long", "demo-640", [(None, "title", json.dumps(HOSTILE["long"])),
                                     ("adhesive", "name", json.dumps("\ufffe" + "+1" * 400))])
    long = boats.job("long", "--units", "in", SOURCE_DATE_EPOCH="1714521600")
    with zipfile.ZipFile(long) as parts:
        if b"2024-05-01T12:00:00Z" not in parts.read("docProps/core.xml"):
            wrong.append("the workbook is not dated as the reports are")

    again = recalculated([*plain.values(), *tasks, *stopped, between, hostile, long], folder)
    for fixture, path in plain.items():
        cached_are_recalculated(path, again[path], fixture)
        for book, how in ((again[path], "recalculated"),
                          (openpyxl.load_workbook(path, data_only=True), "as written")):
            order_figures(book, result_of(path), f"{fixture}, {how}")
            allowance_figures(book, result_of(path), f"{fixture}, {how}")
    cached_are_recalculated(long, again[long], "a long title")
    for path, (words, result) in tasks.items():
        order_figures(again[path], result, words)
        allowance_figures(again[path], result, words)
    for path, words in stopped.items():
        refused(again[path], words)
    has = table(again[between]["Adhesive"], "line")["= laid"][2]
    if not laid[0] <= has <= laid[1] * (1 + SAME):
        wrong.append(f"squeeze-out 12.5 %: {has} ml is not between {laid[0]} and {laid[1]}")

    with open(plain["demo-640"], "rb") as file:
        first = file.read()
    with open(boats.job("demo-640", TZ="Pacific/Auckland"), "rb") as file:
        if file.read() != first:
            wrong.append("the same job gives other bytes")


if __name__ == "__main__":
    with tempfile.TemporaryDirectory() as temporary:
        main(temporary)
    for line in wrong[:40]:
        print(line)
    if wrong:
        sys.exit(f"the workbook: {len(wrong)} of {compared} figures are wrong")
    print(f"the workbook: {compared} figures agree")
