"""Works every figure of the result's `explain` blocks again from the numbers shown.

    worked_reasons.py PROGRAM FIXTURES

Each `numbers` text is evaluated by this script's own reading of the formula and held
against `value`. The numbers put in are shown to six significant digits, so a figure can
be off by what the last digits leave open: each number is moved by half of its last
digit, up and down, and the changes of the figure are added. Nothing else is allowed
beyond the rounding of doubles. `such that A = B` must have both sides alike in the same
way. The letters of each formula must be figures or givens of its own block, and the
formula in letters, with their full values, must give the value too.
"""

import ast
import json
import math
import re
import subprocess
import sys
import tempfile
from pathlib import Path

NUMBER = re.compile(r"(?<![A-Za-z_0-9.])\d+(?:\.\d+)?(?:e[-+]?\d+)?(?![A-Za-z_(])")
EXPONENT = re.compile(r"\^\s*$")
SUCH_THAT = "such that "
ROUNDING = 1e-9  # of doubles, over formulas with sums of like size
SLACK = 1.05  # the moves are added to first order


def hyperbolic(of, argument):
    """1/sinh and 1/cosh without overflow."""
    e = math.exp(-abs(argument))
    if of == "sech":
        return 2 * e / (1 + e * e)
    return math.copysign(2 * e / (1 - e * e), argument)


FUNCTIONS = {
    "sqrt": math.sqrt,
    "tan": math.tan,
    "round": lambda x: math.copysign(math.floor(abs(x) + 0.5), x),
    "exp2": lambda x: 2.0**x,
    "exp": math.exp,
    "ln": math.log,
    "sin": math.sin,
    "cos": math.cos,
    "tanh": math.tanh,
    "abs": abs,
    "ceil": math.ceil,
    "floor": math.floor,
    "min": min,
    "max": max,
    "coth": lambda x: 1 / math.tanh(x),
    "sech": lambda x: hyperbolic("sech", x),
    "csch": lambda x: hyperbolic("csch", x),
}


def worked(text, letters=None):
    """The value of a formula: signs, powers, brackets and the functions above."""

    def of(node):
        if isinstance(node, ast.Expression):
            return of(node.body)
        if isinstance(node, ast.Constant):
            return float(node.value)
        if isinstance(node, ast.Name):
            return letters[node.id]
        if isinstance(node, ast.UnaryOp) and isinstance(node.op, ast.USub):
            return -of(node.operand)
        if isinstance(node, ast.BinOp):
            left, right = of(node.left), of(node.right)
            if isinstance(node.op, ast.Add):
                return left + right
            if isinstance(node.op, ast.Sub):
                return left - right
            if isinstance(node.op, ast.Mult):
                return left * right
            if isinstance(node.op, ast.Div):
                return left / right
            if isinstance(node.op, ast.Pow):
                return left**right
        if isinstance(node, ast.Call) and isinstance(node.func, ast.Name):
            return FUNCTIONS[node.func.id](*[of(each) for each in node.args])
        raise ValueError(f"what is {ast.dump(node)}?")

    return of(ast.parse(text.replace("^", "**"), mode="eval"))


def half_of_last_digit(number):
    """What six significant digits leave open; nothing for one of fewer digits, which
    may be exact, unless it is a long one rounded to fewer, ended by zeros."""
    size = float(number)
    if size == 0:
        return 0.0
    return 0.5 * 10.0 ** (math.floor(math.log10(abs(size))) - 5)


def shown_value(text):
    """The value of a text, and how far the digits not shown can move it."""
    value = worked(text)
    spread = 0.0
    for match in NUMBER.finditer(text):
        if EXPONENT.search(text[: match.start()]):
            continue  # a power is part of the formula
        step = half_of_last_digit(match.group())
        most = 0.0
        for moved in (float(match.group()) + step, float(match.group()) - step):
            other = text[: match.start()] + repr(moved) + text[match.end() :]
            try:
                most = max(most, abs(worked(other) - value))
            except (ValueError, ZeroDivisionError):
                continue  # beyond where the formula has a value
        spread += most
    return value, SLACK * spread


def near(value, other, spread):
    return abs(value - other) <= spread + ROUNDING * max(abs(value), abs(other))


def faults_of_step(step, letters):
    numbers, formula, value = step["numbers"], step["formula"], step["value"]
    if formula.startswith(SUCH_THAT):
        left, right = numbers.split(" = ")
        (a, a_spread), (b, b_spread) = shown_value(left), shown_value(right)
        if not near(a, b, a_spread + b_spread):
            yield f"{left} is {a}, {right} is {b}"
        left, right = formula[len(SUCH_THAT) :].split(" = ")
        a, b = worked(left, letters), worked(right, letters)
        # a solver stops at a root good to about half of a double's digits
        if not near(a, b, 1e-6 * max(abs(a), abs(b))):
            yield f"in full, {left} is {a}, {right} is {b}"
        return
    again, spread = shown_value(numbers)
    if not near(again, value, spread):
        yield f"{numbers} is {again}, not {value} (within {spread})"
    in_full = worked(formula, letters)
    # the formula's own constants are shown to six digits too: 3.14159
    _, open_digits = shown_value(
        re.sub(r"[A-Za-z_]\w*(?!\w*\()", lambda each: repr(letters[each.group()])
               if each.group() in letters else each.group(), formula)
    )
    if not near(in_full, value, open_digits):
        yield f"{formula} is {in_full} in full, not {value}"


def faults(explanations):
    for one in explanations:
        # a root stands in the formulas that lead to its equation, before its own line
        letters = {step["letters"]: step["value"] for step in one["steps"]
                   if step.get("formula", "").startswith(SUCH_THAT)}
        for step in one["steps"]:
            place = f"{one['figure']}, {step['letters']}"
            if step["value"] is None:
                continue
            letters[step["letters"]] = step["value"]
            if "found" in step:
                continue
            if "formula" not in step:
                if not step.get("from"):
                    yield f"{place}: nothing says where it is from"
                continue
            try:
                for fault in faults_of_step(step, letters):
                    yield f"{place}: {fault}"
            except (KeyError, SyntaxError, ValueError, ZeroDivisionError) as error:
                yield f"{place}: {step['numbers']} cannot be worked: {error!r}"


# The demo boat's joint file is changed so that other formulas are used: what yields in an
# even gap, edges that are held, a wide strip of deck, bolts.
EVEN = ('file = "sheer.csv"', 'file = "even.csv"')
VARIANTS = {
    "an even gap": [EVEN],
    "an even gap, no yielding": [EVEN, ("plastic_strain = 0.3", "plastic_strain = 0")],
    "edges held, a wide strip of deck": [("[strength]", '[strength]\nedges = "held"'),
                                         ("length = 1400\n", "")],
    "bolts": [('kind = "tapping screw"', 'kind = "bolt"'), ('"ST4.8"', '"M6"'),
              ("lengths = [16, 19, 22, 25]", "lengths = [20, 25, 30, 35, 40]"),
              ("lip_hole = 5.3", ""), ("hull_pilot = 3.9", "")],
}


def changed(text, changes):
    for old, new in changes:
        if old in text:
            text = text.replace(old, new, 1)
        else:
            sys.exit(f"the demo boat's joint file has no {old!r} to change")
    return text


def result_of(program, command, folder):
    run = subprocess.run(
        [program, *command, "--json"],
        cwd=folder, capture_output=True, text=True, timeout=60, check=False,
    )
    if run.returncode > 1:
        sys.exit(f"{command}: {run.stderr}")
    return json.loads(run.stdout)


def runs_of(fixtures, folder):
    """The commands that are tried, by name: all boats, and one boat as it was read."""
    for name, boat in boats_of(fixtures, folder):
        yield name, ["job", str(boat)]
    demo = fixtures / "demo-640"
    for command in ("fit", "adhesive", "schedule"):
        yield f"{command} of a boat as read", [
            command, str(demo / "joint.toml"), "--readings", str(demo / "hull-31.csv")]


def boats_of(fixtures, folder):
    """The boats of the fixtures, and the variants of the demo boat, by name."""
    for boat in sorted(fixtures.glob("*/joint.toml")):
        if boat.parent.name != "faulty":
            yield boat.parent.name, boat
    demo = fixtures / "demo-640"
    for name, changes in VARIANTS.items():
        there = Path(folder) / name.replace(" ", "-")
        there.mkdir()
        table = (demo / "sheer.csv").read_text()
        (there / "sheer.csv").write_text(table)
        # the demo's last two columns are the lip's offsets at its top and low edge
        (there / "even.csv").write_text(
            re.sub(r"(\d),[-\d.]+,[-\d.]+$", r"\1,2,2", table, flags=re.MULTILINE))
        boat = there / "joint.toml"
        boat.write_text(changed((demo / "joint.toml").read_text(), changes))
        yield name, boat


def main():
    program, fixtures = Path(sys.argv[1]).resolve(), Path(sys.argv[2]).resolve()
    worked_steps = solved = 0
    found = []
    with tempfile.TemporaryDirectory() as folder:
        for name, command in runs_of(fixtures, folder):
            explanations = result_of(program, command, folder).get("explain", [])
            formulas = [step["formula"] for one in explanations for step in one["steps"]
                        if "formula" in step]
            worked_steps += len(formulas)
            solved += sum(formula.startswith(SUCH_THAT) for formula in formulas)
            found += [f"{name}: {fault}" for fault in faults(explanations)]
    if worked_steps < 50 or solved < 1:
        sys.exit(f"only {worked_steps} figures, {solved} solved: too little is tried")
    if found:
        sys.exit("\n".join(found))
    print(f"{worked_steps} figures come out as their formulas and numbers say, {solved} "
          "of them roots")


if __name__ == "__main__":
    main()
