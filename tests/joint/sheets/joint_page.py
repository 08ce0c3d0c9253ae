"""Opens joint.html in a browser and uses it as the yard does, with mouse and with keys.

    joint_page.py PROGRAM FIXTURES

What the page shows is held against result.json of the same run.
"""

import csv
import json
import pathlib
import shutil
import subprocess
import sys
import tempfile
import time

from web_driver import Browser

FIXTURES = pathlib.Path(sys.argv[2])
PRINTED_HULL = "N 12/a"
HOSTILE = "</script><b id='broken'>&amp;\\\" ]]>"


def check(fact, claim):
    if not fact:
        raise AssertionError(claim)


def same(found, expected, claim):
    check(found == expected, f"{claim}: found {found!r}, expected {expected!r}")


class Boat:
    """A boat of fixtures/ worked out, its joint file changed by replacements."""

    def __init__(self, program, work, name, replacements=(), boat="demo-640"):
        folder = work / name
        shutil.copytree(FIXTURES / boat, folder, ignore=shutil.ignore_patterns("golden"))
        joint = folder / "joint.toml"
        text = joint.read_text(encoding="utf-8")
        for old, new in replacements:
            check(old in text, f"{boat} has no {old!r} to replace")
            text = text.replace(old, new, 1)
        joint.write_text(text, encoding="utf-8")
        done = subprocess.run([program, "job", "joint.toml", "--out", "papers", "--quiet"],
                              cwd=folder, capture_output=True, text=True, timeout=60)
        check(done.returncode in (0, 1), f"{name}: {done.stderr}")
        self.page = folder / "papers" / "joint.html"
        self.result = json.loads((folder / "papers" / "result.json").read_text(encoding="utf-8"))
        self.holes = self.result["schedule"]
        self.url = self.page.as_uri()


def quiet(browser, where):
    """Nothing on the console, no report of the content policy, nothing fetched."""
    said = [entry["message"] for entry in browser.log("browser")]
    same(said, [], f"the console is silent {where}")
    for entry in browser.log("performance"):
        message = json.loads(entry["message"])["message"]
        if message["method"] != "Network.requestWillBeSent":
            continue
        url = message["params"]["request"]["url"]
        check(url.startswith(("file:", "data:", "blob:", "about:")), f"{where} fetches {url}")
    same(browser.run("return performance.getEntriesByType('resource').length"), 0,
         f"resources {where}")


def chosen(browser):
    """Where a hole shows as chosen: its mark by plan, charts, schedule, panel and bar."""
    return browser.run("""
      const marks = (parts) => [...document.querySelectorAll(parts)].map((one) => one.dataset.mark);
      return [marks('.plan .hole.chosen[aria-selected=true]'),
        marks('.chart .hole.chosen[aria-selected=true]'), marks('tbody.hole.chosen'),
        [document.getElementById('hole-name').textContent.split(',')[0]],
        [document.getElementById('bar-words').textContent.split(',')[0]],
        [location.hash.slice(1)]];""")


def is_chosen(browser, mark, by):
    same(chosen(browser), [[mark]] * 6, f"a hole chosen {by} shows everywhere")


def holes_stand_where_they_are(browser, boat):
    drawn = browser.run("""return [...document.querySelectorAll('.plan .hole')].map((hole) => {
      const dot = hole.querySelector('.dot');
      return [hole.dataset.mark, dot.cx.baseVal.value, dot.cy.baseVal.value]; })""")
    same([mark for mark, _, _ in drawn], [hole["mark"] for hole in boat.holes], "holes in plan")
    for (mark, x, y), hole in zip(drawn, boat.holes):
        # written to 0.001 mm, kept by the browser as a float of 24 bits: 0.0005 mm each
        check(abs(x - hole["x"]) <= 0.001 and abs(-y - hole["y"]) <= 0.001,
              f"{mark} stands at {x}, {-y} in plan, at {hole['x']}, {hole['y']} in the result")
    ticks = browser.run("""return [...document.querySelectorAll('.chart .hole')].map((one) =>
      one.dataset.mark)""")
    same(ticks, [hole["mark"] for hole in boat.holes], "holes in the charts")


def plan_names(browser, boat):
    names = browser.run("""return [...document.querySelectorAll('.plan .name')].map((one) =>
      [one.textContent, one.getAttribute('transform')])""")
    same([name for name, turned in names if turned is not None], [], "names in plan that are not level")
    written = [name for name, _ in names]
    bend = "tight bend (radius under 150 mm)"  # layout.radius_min of the joint file
    for name in ("stem fitting", "bow cleat", "bulkhead tabbing", "fuel vent", "hull number plate", bend):
        check(name in written, f"{name} is named in plan: {written}")
    same(browser.run("""return [...document.querySelectorAll('.plan g')].filter((one) => one.querySelector('.keepout') &&
      one.querySelector('title').textContent.includes('tight bend')).length"""), 0, "bends hatched as keep-outs")
    legend = browser.run("return document.querySelector('.legend').textContent")
    check(bend in legend and "layout.radius_min" in legend, "the legend tells what a tight bend follows from")
    fit = browser.run("return document.getElementById('checks').textContent")
    check("least 0.60 mm on starboard and port at girth 2926" in fit and "on starboard and port from" in fit,
          "what is the same on both hands is said of both")


def choosing(browser, boat):
    browser.click(".plan [data-mark='S12'] .dot")
    is_chosen(browser, "S12", "in the plan")
    because = boat.holes[11]["because"]
    check(because in browser.run("return document.getElementById('hole-because').textContent"),
          f"the panel says why S12 is there: {because}")
    browser.click("#schedule-table [data-mark='P30'] button")
    is_chosen(browser, "P30", "in the schedule")
    browser.run("""document.querySelector(".chart [data-mark='T04']").dispatchEvent(
      new MouseEvent('click', {bubbles: true}))""")
    is_chosen(browser, "T04", "in a chart")
    browser.click("#bar [data-step='1']")
    is_chosen(browser, "T05", "by the next button")
    section = browser.run("return document.querySelector('#section svg').getAttribute('aria-label')")
    check(section.startswith("Section at T05"), f"the section is that of the chosen hole: {section}")


def shown_rows(browser):
    return browser.run("""return [...document.querySelectorAll('tbody.hole')].filter((row) =>
      row.offsetHeight > 0).map((row) => row.dataset.mark)""")


def set_control(browser, name, value):
    browser.run("""const control = document.getElementById(arguments[0]);
      if (control.type === 'checkbox') control.checked = arguments[1]; else control.value = arguments[1];
      control.dispatchEvent(new Event('input', {bubbles: true}))""", name, value)


def filters(browser, boat):
    marks = [hole["mark"] for hole in boat.holes]
    set_control(browser, "filter-side", "port")
    same(shown_rows(browser), [mark for mark in marks if mark[0] == "P"], "rows of port")
    set_control(browser, "filter-side", "")
    set_control(browser, "filter-jig", "J-S2")
    same(shown_rows(browser), [hole["mark"] for hole in boat.holes
                               if "J-S2" in (hole["jig"], hole["next_jig"])], "rows of a jig")
    set_control(browser, "filter-jig", "")
    browser.type("#filter-text", "fuel fill")
    found = shown_rows(browser)
    check({hole["mark"] for hole in boat.holes if "fuel fill" in hole["because"]} <= set(found)
          and len(found) < len(marks), f"a search finds reasons: {found}")
    set_control(browser, "filter-text", "")
    set_control(browser, "filter-flagged", True)
    ends = {(side["name"], round(girth, 3)) for side in boat.result["layout"]["sides"]
            for bridge in side["bridged"] for girth in (bridge["from"], bridge["to"])}
    same(shown_rows(browser), [hole["mark"] for hole in boat.holes
                               if (hole["side"], round(hole["girth"], 3)) in ends
                               or hole["drill_depth"] is None], "bridged or flagged rows")
    browser.click("#filter button[type=reset]")
    time.sleep(0.1)
    same(shown_rows(browser), marks, "all rows")


def found_by(browser, text):
    browser.type("#filter-text", text)
    return shown_rows(browser)


def searches(browser, boat):
    marks = [hole["mark"] for hole in boat.holes]
    for text in ("P24", "p24", "S5"):
        same(found_by(browser, text), [mark for mark in marks if mark.startswith(text.upper())],
             f"a search for {text}")
    same(found_by(browser, "J-P2"), [hole["mark"] for hole in boat.holes
                                     if "J-P2" in (hole["jig"], hole["next_jig"])], "a search for a jig")
    same(found_by(browser, "uel fill"), [], "a search for the end of a word")
    lengths = sorted({hole["length"] for hole in boat.holes})
    longest = f"{lengths[-1]:g}"
    long = [hole["mark"] for hole in boat.holes if hole["length"] == lengths[-1]]
    check(0 < len(long) < len(marks) and len(lengths) > 1, "some holes take the longest fastener, some do not")
    for text in (f"x {longest}", f"x{longest}", f"× {longest} mm", longest, f"ST4.8 x {longest}"):
        same(found_by(browser, text), long, f"a search for the fastener {text}")
    browser.click("#filter button[type=reset]")
    time.sleep(0.1)
    same(browser.run("return [...document.querySelectorAll('#filter-length option')].map((one) => one.value)"),
         ["", *(f"{length:g}" for length in lengths)], "lengths to choose among")
    set_control(browser, "filter-length", longest)
    same(shown_rows(browser), long, "rows of one length")
    set_control(browser, "filter-length", "")
    nearest = [min((hole for hole in boat.holes if hole["side"] == side), key=lambda hole: abs(hole["girth"] - 2926))
               for side in ("starboard", "port")]  # the transom is not so long
    same(found_by(browser, "2926"), [hole["mark"] for hole in nearest], "a search for a girth")
    said = browser.run("return document.getElementById('filter-count').textContent")
    check("nearest to girth 2926 mm on the drill line: " in said
          and all(f"{hole['mark']} at {hole['girth']:.0f}" in said for hole in nearest), f"it says so: {said}")
    same(found_by(browser, "99999"), [], "a search for a girth beyond all sides")
    set_control(browser, "filter-text", "")


def said_of_reading(browser, top, low):
    browser.type("#gap-top", top)
    browser.type("#gap-low", low)
    browser.click("#reading button[type=submit]")
    return browser.run("return document.getElementById('reading-says').textContent")


def remarks(browser, boat):
    """S40 is drawn 2.1 and 3.9 mm wide; the window is 1 to 8 mm."""
    hull(browser, "16")
    browser.click("#schedule-table [data-mark='S40'] button")
    hole = next(hole for hole in boat.holes if hole["mark"] == "S40")
    same(said_of_reading(browser, "2.5", "3.9"), "Kept at S40, dry.", "a reading as drawn is not remarked")
    for top, low, said in (("0.9", "3.9", "At hull top 0.9 is outside the window of 1 to 8 mm."),
                           ("12", "3.9", "is 9.9 mm more than drawn (2.10)"),
                           ("-1,5", "3.9", "interference, 1.5 mm in each other’s way"),
                           ("touching", "3.9", "is 0: the parts touch"),
                           ("30", "30", "no fastener in stock serves")):
        text = said_of_reading(browser, top, low)
        check(text.startswith("Kept at S40, dry.") and said in text, f"{top} / {low} is remarked: {text}")
    # derived: a screw's point stands beyond the stack by the same of each length in stock
    serves = {length: greatest for length, _, greatest in browser.run("return page.serves")}
    more = serves[f"{hole['length']:g}"] - hole["stack"]
    wider = [f"{gap + more + 0.2:.2f}" for gap in (2.1, 3.9)]
    check("it takes a fastener x " in said_of_reading(browser, *wider), f"a longer fastener for {wider}")
    within = [f"{gap + more - 0.2:.2f}" for gap in (2.1, 3.9)]
    check("fastener" not in said_of_reading(browser, *within), f"the fastener of the schedule for {within}")
    said_of_reading(browser, "7.9", "7.9")
    set_control(browser, "gap-state", "held")
    browser.run("document.getElementById('gap-state').dispatchEvent(new Event('change'))")
    check("is 8.4 mm less than the reading dry (7.9)" in said_of_reading(browser, "-0.5", "3.9"),
          "a reading against another state's is remarked")
    set_control(browser, "gap-state", "dry")
    browser.run("document.getElementById('gap-state').dispatchEvent(new Event('change'))")
    browser.click("#clear")
    browser.click("#clear")


def read_of(browser, mark):
    return browser.run("return document.querySelector(`tbody[data-mark=${arguments[0]}] .read`).textContent", mark)


def bar_says(browser):
    return browser.run("return document.getElementById('bar-says').textContent")


def typed_and_left(browser, boat):
    """What is typed and not kept by its button is never lost without a word."""
    hull(browser, "15")
    browser.click("#schedule-table [data-mark='S20'] button")
    browser.type("#gap-top", "2,4")
    browser.click("#bar [data-step='1']")
    same([read_of(browser, "S20"), read_of(browser, "S21"), bar_says(browser)],
         ["; gap read dry 2.4 / –", "", "Reading kept at S20, dry: 2.4 / – mm."], "a reading typed and left")
    browser.click("#hole [data-step='-1']")
    same(bar_says(browser), "", "the word is gone at the next hole")
    browser.type("#gap-low", "3.x")
    browser.click("#schedule-table [data-mark='P30'] button")
    check("S20 is not kept, it waits there" in bar_says(browser), f"no reading, left: {bar_says(browser)}")
    same(read_of(browser, "S20"), "; gap read dry 2.4 / –; dry typed, not kept: 2.4 / 3.x", "a draft in the schedule")
    browser.type("#gap-low", "4.4")
    browser.go(boat.url)
    same(read_of(browser, "P30"), "; dry typed, not kept: – / 4.4", "typed, and the page loaded again")
    browser.click("#schedule-table [data-mark='S20'] button")
    same(browser.run("return document.getElementById('gap-low').value"), "3.x", "a draft comes back")
    browser.type("#gap-low", "4.1")
    hull(browser, "14")
    same(browser.run("return [Object.keys(record.read), loadRecord('15').read.S20.dry]"),
         [[], {"top": "2.4", "low": "4.1"}], "a reading typed before another hull stays with its own")
    hull(browser, "15")
    browser.click("#clear")
    browser.click("#clear")
    hull(browser, "")


def ticks_and_readings(browser, boat):
    """Ticked and read on hull 17; left as S01 and P05 drilled, S01 read twice."""
    browser.click("#schedule-table [data-mark='P05'] input")
    hull(browser, "17")
    browser.click(".plan [data-mark='S01'] .dot")
    browser.click("#hole-drilled")
    for state, top, low in (("dry", "3,25", "4.5"), ("after", "", "0.9")):
        set_control(browser, "gap-state", state)
        browser.run("document.getElementById('gap-state').dispatchEvent(new Event('change'))")
        browser.type("#gap-top", top)
        browser.type("#gap-low", low)
        browser.click("#reading button[type=submit]")
    browser.type("#gap-top", "two")
    browser.click("#reading button[type=submit]")
    check("not a gap" in browser.run("return document.getElementById('reading-says').textContent"),
          "a reading that is no number is refused")
    browser.type("#gap-top", "")
    browser.click("#reading button[type=submit]")
    set_control(browser, "filter-open", True)
    check("S01" not in shown_rows(browser) and "S02" in shown_rows(browser), "rows not yet drilled")
    browser.go(boat.url)
    is_kept(browser, "after a reload")


def hull(browser, number):
    browser.run("""const field = document.getElementById('hull-number');
      field.value = arguments[0]; field.dispatchEvent(new Event('change'))""", number)


def is_kept(browser, when):
    state = browser.run("""const row = (mark) => document.querySelector(`tbody[data-mark=${mark}]`);
      return [document.getElementById('hull-number').value,
        [...document.querySelectorAll('tbody.drilled')].map((one) => one.dataset.mark),
        [...document.querySelectorAll('.plan .drilled')].map((one) => one.dataset.mark),
        row('S01').querySelector('.read').textContent]""")
    # drawn 2.1 and 3.9 mm wide with a stack of 14.1 mm, which leaves 0.6 mm to the next length
    same(state, ["17", ["S01", "P05"], ["S01", "P05"],
                 "; gap read dry 3.25 / 4.5 ! fastener; after – / 0.9 !"], f"ticks and readings {when}")


def saved_file(browser, downloads):
    browser.click("#save")
    for _ in range(100):
        files = list(downloads.glob("*.csv"))
        if files:
            return files[0]
        time.sleep(0.05)
    raise AssertionError("no file of readings was saved")


def round_trip(browser, boat, downloads):
    file = saved_file(browser, downloads)
    with open(file, encoding="utf-8", newline="") as text:
        rows = list(csv.DictReader(text))
    girth = {hole["mark"]: hole["girth"] for hole in boat.holes}
    same([[row[key] for key in ("side", "mark", "gap_top", "gap_low", "state", "drilled", "hull")]
          for row in rows],
         [["starboard", "S01", "3.25", "4.5", "dry", "yes", "17"],
          ["starboard", "S01", "", "0.9", "after", "yes", "17"],
          ["port", "P05", "", "", "", "yes", "17"]], "the saved file")
    check(all(abs(float(row["girth"]) - girth[row["mark"]]) < 0.001 for row in rows),
          "girths of the saved file")
    browser.click("#clear")
    browser.click("#clear")
    same(browser.run("return [document.querySelectorAll('tbody.drilled').length, localStorage.getItem("
                     "recordKey('17'))]"), [0, None], "a cleared hull")
    load(browser, file)
    is_kept(browser, "loaded from the file")
    return file


def load(browser, file):
    browser.run("document.getElementById('message').textContent = ''")
    browser.type("#load", str(file))
    for _ in range(100):
        message = browser.run("return document.getElementById('message').textContent")
        if message:
            return message
        time.sleep(0.05)
    raise AssertionError(f"nothing is said of {file}")


def wrong_files(browser, good, work):
    text = good.read_text(encoding="utf-8")
    for old, new, said in (("side,girth", "x,y", "no side, girth"), ("S01", "S99", "no hole “S99”"),
                           ("4.5", "wide", "not a gap"), (",dry", ",wet", "state"),
                           ("starboard", "port", "is on starboard")):
        file = work / "wrong.csv"
        file.write_text(text.replace(old, new, 1), encoding="utf-8")
        message = load(browser, file)
        check("not loaded" in message and said in message, f"a file with {new}: {message}")
        is_kept(browser, f"after a refused file with {new}")
    layout = browser.run("return page.layout")
    (work / "wrong.csv").write_text(text.replace(layout, "0" * 16), encoding="utf-8")
    check("another layout" in load(browser, work / "wrong.csv"), "a file of another layout is refused")


def other_boats(browser, program, work, boat):
    hull(browser, "18")
    same(browser.run("return document.querySelectorAll('tbody.drilled').length"), 0, "another hull's ticks")
    changed = Boat(program, work, "changed", [("pitch_max = 150", "pitch_max = 140")])
    browser.go(changed.url)
    check("another layout" in browser.run("return document.getElementById('message').textContent"),
          "the page says that ticks of another layout exist")
    hull(browser, "17")
    same(browser.run("return document.querySelectorAll('tbody.drilled').length"), 0,
         "ticks of the same hull in a changed layout")
    quiet(browser, "a changed layout")
    browser.go(boat.url)
    hull(browser, "17")
    is_kept(browser, "after another boat")
    return changed


def focused(browser):
    return browser.run("""const part = document.activeElement;
      return [part.closest('.hole')?.dataset.mark ?? part.id, part.closest('.roving')?.tagName ?? '',
        getComputedStyle(part.querySelector('.ring') ?? part).strokeDasharray !== 'none' ||
        getComputedStyle(part).outlineStyle !== 'none']""")


def keyboard(browser, boat):
    browser.go(boat.url)
    for _ in range(60):
        browser.press("Tab")
        if focused(browser)[1] == "g":
            break
    same(focused(browser), ["S01", "g", True], "Tab comes to the first hole in plan, seen to be there")
    browser.press("Right", "Down", "Right", "Left")
    same(focused(browser)[0], "S03", "arrow keys go from hole to hole")
    browser.press("Enter")
    is_chosen(browser, "S03", "by Enter")
    browser.press("End", "Space")
    same(focused(browser)[0], boat.holes[-1]["mark"], "End goes to the last hole")
    same(browser.run("return document.querySelector('.plan .hole:last-child').getAttribute('aria-checked')"),
         "true", "Space ticks")
    browser.press("Space", "Home")
    for _ in range(80):
        browser.press("Tab")
        if focused(browser)[1] == "TABLE":
            break
    same(focused(browser), ["S03", "TABLE", True], "Tab comes to the schedule, at the chosen hole")
    browser.press("PageDown", "Enter")
    is_chosen(browser, "S13", "by Enter in the schedule")
    for _ in range(80):
        browser.press("Shift+Tab")
        if focused(browser)[0] == "gap-top":
            break
    browser.press("2", ".", "5", "Enter")
    check("dry 2.5" in browser.run("return document.querySelector('tbody[data-mark=S13] .read').textContent"),
          "a reading is typed and kept by keys alone")
    reached = browser.run("""return [...document.querySelectorAll('button, a[href], input, select')].filter(
      (one) => one.tabIndex < 0 && !one.closest('.roving')).length""")
    same(reached, 0, "controls that Tab does not come to")


def use_words(use):
    return f"{use:.3f}" + (" !" if use > 1 else "")


def strength(browser, boat):
    """The section's figures are those of the result; its rows are chosen, filtered and put in
    order as holes are; the reasons fold."""
    result = boat.result["strength"]
    bond, rows = result["bond"]["worst"], result["fasteners"]
    hole = max(rows, key=lambda row: row["utilisation"])
    boxes = browser.run("return [...document.querySelectorAll('.use-box')].map((one) => one.textContent)")
    for text, one, more in zip(boxes, (bond, hole), (bond["mode"], hole["mark"])):
        state = "PASS" if one["utilisation"] <= 1 else "FAIL"
        check(f"{state}: use {one['utilisation']:.3f} of 1" in text and more in text, f"the verdict says {text}")
    same(len(boxes), 2, "verdicts")
    drawn = """return [...document.querySelectorAll('#use-table tr.hole')].filter((row) => row.offsetHeight > 0)
      .map((row) => [row.dataset.mark, row.cells[1].textContent, row.cells[13].textContent])"""
    wants = [[row["mark"], use_words(row["utilisation"]), row["governing"]] for row in rows]
    same(browser.run(drawn), wants, "rows of the fasteners' use")
    browser.click("#use-order")
    # uses that differ by rounding only are alike, and keep the order of the schedule
    uses = {row["mark"]: round(row["utilisation"], 6) for row in rows}
    ordered = sorted(wants, key=lambda row: -uses[row[0]])
    same(browser.run(drawn), ordered, "the worst first")
    browser.click("#use-order")
    same(browser.run(drawn), wants, "in the order of the schedule again")
    browser.click("#use-table [data-mark='T02'] button")
    is_chosen(browser, "T02", "in the table of use")
    same(browser.run("return [...document.querySelectorAll('#use-table .chosen')].map((one) => one.dataset.mark)"),
         ["T02"], "the row of use that is chosen")
    browser.click(".plan [data-mark='S12'] .dot")
    same(browser.run("return [...document.querySelectorAll('#use-table .chosen')].map((one) => one.dataset.mark)"),
         ["S12"], "a hole chosen in the plan")
    set_control(browser, "filter-side", "transom")
    same([row[0] for row in browser.run(drawn)], [row[0] for row in wants if row[0][0] == "T"], "filtered rows")
    set_control(browser, "filter-side", "")
    same(browser.run("return document.querySelectorAll('.chart.use').length"),
         len({point["side"] for point in result["bond"]["along"]}), "charts of use")
    check(f"worst, {bond['utilisation']:.3f}" in browser.run(
        "return [...document.querySelectorAll('.chart.use')].map((one) => one.textContent).join()"),
          "the worst place is marked")
    worked = browser.run("""return [...document.querySelectorAll('#strength details')].map((one) =>
      [one.querySelector('summary code').textContent, one.open, one.textContent])""")
    reasons = [one for one in boat.result["explain"] if one["figure"].startswith("strength.")]
    same([figure for figure, _, _ in worked], [one["figure"] for one in reasons], "reasons")
    for (figure, is_open, text), one in zip(worked, reasons):
        check(not is_open, f"the reason of {figure} is folded")
        for step in one["steps"]:
            check(step.get("formula", step.get("found", step.get("from"))) in text,
                  f"the reason of {figure} does not show {step['letters']}")
    same(browser.run("return document.querySelectorAll('#rules-table tbody tr').length"), len(result["rules"]),
         "rows of rules")
    browser.click("#strength details summary")
    same(browser.run("return document.querySelector('#strength details').open"), True, "a reason unfolds")


def no_strength(browser, program, work):
    boat = Boat(program, work, "pram", boat="pram")
    check("strength" not in boat.result, "the pram has no strength")
    browser.go(boat.url)
    same(browser.run("return document.querySelectorAll('#strength, a[href=\"#strength\"]').length"), 0,
         "a section of the strength without one")
    quiet(browser, "without a strength")


def prints(browser, boat, work):
    hull(browser, PRINTED_HULL)
    browser.click("#schedule-table [data-mark='S13'] input")
    browser.click("#schedule-table [data-mark='S13'] button")
    said_of_reading(browser, "2.1", "")
    set_control(browser, "filter-side", "transom")
    pdf = work / "page.pdf"
    pdf.write_bytes(browser.print())
    text = subprocess.run(["pdftotext", "-layout", pdf, "-"], capture_output=True, text=True,
                          timeout=30, check=True).stdout
    pages = text.rstrip("\f").split("\f")
    for number, page in enumerate(pages, 1):
        check(f"page {number} of {len(pages)}" in page and "Demo 640, layout " in page,
              f"printed page {number} does not say which it is and whose")
        check(f"hull number {PRINTED_HULL}: 1 of {len(boat.holes)} drilled, gaps read at 1" in page,
              f"printed page {number} does not say of which hull it is and how far")
        lines = [line for line in page.splitlines() if line.strip() != ""]
        check(len(lines) > 15, f"printed page {number} is mostly empty: {lines}")
    # one each of checks, plan, charts and chosen hole; 20 holes at least a page of schedule;
    # of the strength two of verdict and charts, one a 40 holes, three of rules and notes
    most = 4 + -(-len(boat.holes) // 20) + 2 + -(-len(boat.holes) // 40) + 3
    check(len(pages) <= most, f"{len(pages)} pages are printed, not {most} at most")
    check(f"use {boat.result['strength']['bond']['worst']['utilisation']:.3f} of 1" in text, "the use is printed")
    schedule = text[text.index("Drilling schedule"):]
    check("are on the drill sheets" in schedule, "what paper leaves out is told of")
    check("chord, mm" not in schedule and "skew, degrees" not in schedule, "columns for the screen are printed")
    words = set(text.split())
    lacking = [hole["mark"] for hole in boat.holes if hole["mark"] not in words]
    same(lacking, [], "holes that the printed schedule lacks, a filter set")
    heads = sum("below each: why the hole is there" in page for page in pages)
    rows = sum("nearest keep-out" in page and "clear of" in page or "equal space" in page for page in pages)
    check(heads >= 3 and heads >= rows - 1, f"the heading is on each page: {heads} of {rows}")
    check("Show all" not in text and "Not yet drilled" not in text, "controls are printed")
    check("50 mm when printed full size" in text, "the check bar is printed")
    check("S13, starboard" in text, "the chosen hole is printed")
    set_control(browser, "filter-side", "")


def rests(browser):
    same(browser.run("return getComputedStyle(document.documentElement).scrollBehavior"), "auto",
         "scrolling where motion is not wanted")


def desk(browser, boat):
    browser._ask("POST", "/goog/cdp/execute", {"cmd": "Emulation.setDeviceMetricsOverride", "params": {
        "width": 1280, "height": 900, "deviceScaleFactor": 1, "mobile": False}})
    browser.go(boat.url)
    wider = """const sheet = document.getElementById('schedule-sheet');
      return sheet.scrollWidth > sheet.clientWidth"""
    same(browser.run(wider), False, "the schedule is wider than a desk's screen")
    shown = """return [...document.getElementById('schedule-table').tHead.rows[0].cells].filter((cell) =>
      cell.offsetWidth > 0).map((cell) => cell.querySelector('b').textContent)"""
    check("girth" in browser.run(shown) and "X" not in browser.run(shown), "the short schedule's columns")
    browser.click("#all-columns")
    check(len(browser.run(shown)) == 25 and "skew" in browser.run(shown), "all columns")


def narrow(browser, boat):
    browser._ask("POST", "/goog/cdp/execute", {"cmd": "Emulation.setDeviceMetricsOverride", "params": {
        "width": 390, "height": 800, "deviceScaleFactor": 1, "mobile": True}})
    browser.go(boat.url)
    same(browser.run("return [innerWidth, document.documentElement.scrollWidth]"), [390, 390],
         "a phone's page is as wide as the phone")
    head, sheet = browser.run("""return [document.getElementById('schedule-table').tHead,
      document.getElementById('schedule-sheet')].map((one) => one.offsetHeight)""")
    check(head < sheet / 6, f"the heading takes {head} of {sheet} pixels of the schedule")
    small = browser.run("""return [...document.querySelectorAll('button, select, input, nav a, #bar a, .plan .reach')]
      .filter((one) => one.getClientRects().length > 0)
      .map((one) => [one.id || one.className.baseVal || one.textContent, one.getBoundingClientRect()])
      .filter(([, box]) => Math.min(box.width, box.height) < 24).map(([name]) => name)""")
    same(small, [], "targets less than 24 pixels for a finger")
    same(browser.run("""const box = document.querySelector('tbody.hole input').getBoundingClientRect();
      return [box.width, box.height]"""), [40, 40], "the box to tick a hole by")
    top, hole = browser.run("""return [document.getElementById('plan-sheet'),
      document.querySelector('.plan .dot')].map((one) => one.getBoundingClientRect().top)""")
    check(0 < hole - top < 400, f"the first hole is seen in the plan, {hole - top} pixels down")
    browser._ask("POST", "/goog/cdp/execute", {"cmd": "Emulation.clearDeviceMetricsOverride", "params": {}})


def hostile(browser, program, work):
    toml = json.dumps(HOSTILE)
    boat = Boat(program, work, "hostile", [('"Demo 640"', toml), ('"fuel fill"', toml),
                                           ('"outboard well"', toml), ('"two-part methacrylate paste"', toml)])
    browser.go(boat.url)
    same(browser.run("return [document.querySelector('h1').textContent, page.title, "
                     "document.querySelectorAll('#broken, main b b').length]"),
         [HOSTILE, HOSTILE, 0], "a title that looks like markup")
    check(HOSTILE + ", layout" in browser.run("""return [...document.styleSheets[0].cssRules].map(
      (rule) => rule.cssText).join('').replaceAll('\\\\"', '"').replaceAll('\\\\\\\\', '\\\\')"""),
          "the foot of the printed pages holds the hostile title as text")
    browser.click(".plan [data-mark='S35'] .dot")
    is_chosen(browser, "S35", "on a boat with a hostile title")
    quiet(browser, "with a hostile title")


def main(program):
    with tempfile.TemporaryDirectory() as folder:
        work = pathlib.Path(folder)
        downloads = work / "downloads"
        downloads.mkdir()
        boat = Boat(program, work, "boat")
        # a third of it the strength with all its workings
        check(boat.page.stat().st_size < 550_000, f"the page has {boat.page.stat().st_size} bytes")
        same(Boat(program, work, "again").page.read_bytes(), boat.page.read_bytes(), "the page of a second run")
        browser = Browser(downloads)
        try:
            browser.go(boat.url)
            holes_stand_where_they_are(browser, boat)
            plan_names(browser, boat)
            choosing(browser, boat)
            filters(browser, boat)
            searches(browser, boat)
            strength(browser, boat)
            remarks(browser, boat)
            typed_and_left(browser, boat)
            ticks_and_readings(browser, boat)
            quiet(browser, "the page in use")
            good = round_trip(browser, boat, downloads)
            wrong_files(browser, good, work)
            other_boats(browser, program, work, boat)
            keyboard(browser, boat)
            rests(browser)
            prints(browser, boat, work)
            desk(browser, boat)
            narrow(browser, boat)
            quiet(browser, "the page by keys")
            hostile(browser, program, work)
            no_strength(browser, program, work)
        finally:
            browser.close()
    print("joint.html: holes, choice, filters, ticks, readings, keys, print and hostile text as they should be")


if __name__ == "__main__":
    try:
        main(str(pathlib.Path(sys.argv[1]).resolve()))
    except AssertionError as error:
        sys.exit(f"joint.html: {error}")
