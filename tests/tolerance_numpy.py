"""Makes up, seats and counts the boats of tests/tolerance_model.cpp once more, with NumPy
and SciPy: random numbers, fields, gaps and the linear programmes, from the same model.

    tolerance_numpy.py PROGRAM JOINT.toml BOATS [--time]

PROGRAM is sheerlap_tolerance_model. With --time it also prints the seconds a boat, wall
and processor. Everything but the programmes is worked out for all boats at once; each
programme is HiGHS's, by scipy.optimize.linprog, in its dual form, with few rows and many
columns (the other form takes it as long).
"""

import json
import subprocess
import sys
import time

import numpy
import scipy.optimize
import scipy.special

LOW_WORD = numpy.uint64(0xFFFFFFFF)
HALF = numpy.uint64(32)


def philox(counter, key):
    """Philox4x32-10 of arrays of counters: J. K. Salmon and others, SC11 (2011)."""
    counter = [numpy.asarray(word, numpy.uint64) for word in counter]
    key = list(key)
    for _ in range(10):
        first = numpy.uint64(0xD2511F53) * counter[0]
        second = numpy.uint64(0xCD9E8D57) * counter[2]
        counter = [
            (second >> HALF) ^ counter[1] ^ numpy.uint64(key[0]),
            second & LOW_WORD,
            (first >> HALF) ^ counter[3] ^ numpy.uint64(key[1]),
            first & LOW_WORD,
        ]
        key = [(key[0] + 0x9E3779B9) & 0xFFFFFFFF, (key[1] + 0xBB67AE85) & 0xFFFFFFFF]
    return counter


def uniforms(seed, boats, purpose, count):
    """boats x count numbers between 0 and 1: two of each counter's four words."""
    blocks = numpy.arange((count + 1) // 2, dtype=numpy.uint64)[None, :]
    numbers = numpy.arange(boats, dtype=numpy.uint64)[:, None]
    shape = numpy.broadcast_shapes(blocks.shape, numbers.shape)
    words = philox(
        [
            numpy.broadcast_to(blocks, shape),
            numpy.full(shape, purpose, numpy.uint64),
            numpy.broadcast_to(numbers & LOW_WORD, shape),
            numpy.broadcast_to(numbers >> HALF, shape),
        ],
        (seed & 0xFFFFFFFF, seed >> 32),
    )
    found = numpy.empty((boats, 2 * shape[1]))
    for half in (0, 1):
        bits = (words[2 * half] << HALF) | words[2 * half + 1]
        found[:, half::2] = ((bits >> numpy.uint64(12)).astype(float) + 0.5) * 2.0**-52
    return found[:, :count]


class Boats:
    """All boats at once, the lids not moved."""

    def __init__(self, model, count):
        holes = model["holes"]
        self.gaps = numpy.tile(numpy.array(model["gaps"]), (count, 1))
        self.volume = numpy.full(count, model["volume"])
        self.hole_gaps = numpy.tile(numpy.array(holes["gaps"]), (count, 1))
        self.hole_ways = numpy.tile(numpy.array(holes["ways"]), (count, 1))
        for error in model["errors"]:
            if "basis" in error:
                self.add_along(model, error, count)
            else:
                self.add_whole(model, error, count)

    def add_whole(self, model, error, count):
        number = uniforms(model["seed"], count, 2 * error["number"], 1)
        number = 2 * number - 1 if error["even"] else scipy.special.ndtri(number)
        amount = error["mean"] + error["spread"] * number
        self.gaps += amount * numpy.array(error["gaps"])
        self.volume += amount[:, 0] * error["volume"]
        self.hole_gaps += amount * numpy.array(error["holes"])
        self.hole_ways += amount * numpy.array(error["holes"])

    def add_along(self, model, error, count):
        basis = numpy.array(error["basis"])
        normals = scipy.special.ndtri(
            uniforms(model["seed"], count, 2 * error["number"], basis.shape[0])
        )
        field = normals @ basis
        if error["even"]:
            field = scipy.special.erf(field / numpy.sqrt(2))
        amounts = error["mean"] + error["spread"] * field
        self.gaps[:, 0::2] += amounts * numpy.array(error["top"])
        self.gaps[:, 1::2] += amounts * numpy.array(error["low"])
        self.volume += amounts @ numpy.array(error["volume"])
        holes = model["holes"]
        share = numpy.array(holes["share"])
        at_holes = (1 - share) * amounts[:, holes["before"]]
        at_holes += share * amounts[:, holes["after"]]
        self.hole_gaps += error["hole_gap"] * at_holes
        self.hole_ways += error["hole_way"] * at_holes


class Programme:
    """A window programme: `aim` "margin" or "reach", in the first `unknowns`.

    The unknowns' parts above and below 0 and the aim x have, with c x greatest, rows
    A x <= b and bounds; the dual is min b y with A'y >= c made equal by the bounds.
    """

    def __init__(self, model, aim, unknowns):
        self.model, self.n = model, unknowns
        self.margin = aim == "margin"
        slopes = numpy.array(model["slopes"])[:, :unknowns]
        most = numpy.full(unknowns, model["furthest"])
        squeezes = unknowns - 3
        most[3:] = model["most"][:squeezes]
        self.most = most.copy()
        if not self.margin:
            self.most[3:] *= model["greatest_reach"]
        price = numpy.array(model["price"])[:unknowns]
        one = numpy.ones((len(slopes), 1)) if self.margin else numpy.zeros((len(slopes), 1))
        rows = [
            numpy.hstack([-slopes, slopes, one]),
            numpy.hstack([slopes, -slopes, one]),
        ]
        if not self.margin:
            share = numpy.zeros((squeezes, 2 * unknowns + 1))
            for k in range(squeezes):
                share[k, 3 + k] = share[k, unknowns + 3 + k] = 1
                share[k, -1] = -model["most"][k]
            rows.append(share)
        self.shares = 0 if self.margin else squeezes
        self.rows = numpy.vstack(rows)
        self.objective = numpy.concatenate([-price, -price, [1.0 if self.margin else -1.0]])
        greatest = (model["greatest"] - model["least"]) / 2
        self.high = numpy.concatenate(
            [self.most, self.most, [greatest if self.margin else model["greatest_reach"]]]
        )
        self.low = numpy.zeros(2 * unknowns + 1)
        self.low[-1] = -1e4 if self.margin else 0
        identity = numpy.eye(2 * unknowns + 1)
        self.columns = numpy.hstack([self.rows.T, identity, -identity])

    def solve(self, gaps):
        """The aim and the unknowns; None if no unknowns have it."""
        limits = numpy.concatenate(
            [
                gaps - self.model["least"],
                self.model["greatest"] - gaps,
                numpy.zeros(self.shares),
                self.high,
                -self.low,
            ]
        )
        found = scipy.optimize.linprog(
            limits, A_eq=self.columns, b_eq=self.objective, bounds=(0, None), method="highs"
        )
        if found.status in (3, 4):  # the dual runs away: there is no unknown that does
            return None
        if found.status != 0:
            sys.exit(f"tolerance_numpy: HiGHS says {found.message}")
        at = found.eqlin.marginals
        return at[-1], at[: self.n] - at[self.n : 2 * self.n]


NONE, WITHIN, BEYOND, NEVER = range(4)
KEEPS = 1e-9


class Seating:
    def __init__(self, model):
        unknowns = len(model["slopes"][0])
        self.best = Programme(model, "margin", unknowns)
        self.spreaders = unknowns - 3
        if self.spreaders:
            self.unsqueezed = Programme(model, "margin", 3)
            self.reach = Programme(model, "reach", unknowns)

    def seat(self, gaps):
        """margin, need, squeeze, unknowns as joined"""
        margin, best = self.best.solve(gaps)
        fits = margin >= -KEEPS
        if not self.spreaders:
            return margin, NONE if fits else NEVER, 0.0, best
        if fits:
            unsqueezed, at = self.unsqueezed.solve(gaps)
            if unsqueezed >= -KEEPS:
                return margin, NONE, 0.0, numpy.concatenate([at, numpy.zeros(self.spreaders)])
        reach = self.reach.solve(gaps)
        if reach is None:
            return margin, NEVER, 0.0, best
        squeeze = numpy.abs(reach[1][3:]).max()
        return margin, WITHIN if fits else BEYOND, squeeze, reach[1] if fits else best


def judged(model, count):
    """What each boat comes to."""
    boats = Boats(model, count)
    seating = Seating(model)
    hole_slopes = numpy.array(model["holes"]["slopes"])
    served = numpy.array(model["served"]) + 1e-9
    outcomes = []
    for boat in range(count):
        margin, need, squeeze, at = seating.seat(boats.gaps[boat])
        moved = hole_slopes @ at
        gap = boats.hole_gaps[boat] + moved
        stack = boats.hole_ways[boat] + moved + numpy.maximum(0, -gap)
        lengths = numpy.bincount(
            numpy.searchsorted(served, stack), minlength=len(served) + 1
        )
        outcomes.append(
            {
                "margin": margin,
                "need": need,
                "squeeze": squeeze,
                "volume": boats.volume[boat] + numpy.dot(model["volume_slope"], at),
                "lengths": lengths.tolist(),
            }
        )
    return outcomes


def differences(ours, others):
    """Lines that say where two programs differ."""
    found = []
    for number, (our, other) in enumerate(zip(ours, others)):
        # HiGHS keeps rows within 1e-7; the unknowns move by more where the margin is flat
        for key, within in (("margin", 1e-6), ("squeeze", 1e-4), ("volume", 1e-3 * our["volume"])):
            if not abs(our[key] - other[key]) <= within:
                found.append(f"boat {number}: {key} {our[key]:.7f} and {other[key]:.7f}")
        if our["need"] != other["need"] and abs(our["margin"]) > 1e-6:
            found.append(f"boat {number}: need {our['need']} and {other['need']}")
        apart = sum(abs(a - b) for a, b in zip(our["lengths"], other["lengths"]))
        if apart > 4:
            found.append(f"boat {number}: lengths {our['lengths']} and {other['lengths']}")
    return found


def main():
    if len(sys.argv) < 4:
        sys.exit(__doc__)
    program, joint, boats = sys.argv[1:4]
    printed = subprocess.run(
        [program, "model", joint, boats], check=True, capture_output=True, text=True
    ).stdout
    model = json.loads(printed)
    count = len(model["boats"])
    wall, processor = time.perf_counter(), time.process_time()
    others = judged(model, count)
    wall, processor = time.perf_counter() - wall, time.process_time() - processor
    found = differences(model["boats"], others)
    for line in found[:20]:
        print(line)
    if found:
        sys.exit(f"tolerance_numpy: {len(found)} differences in {count} boats")
    print(f"tolerance_numpy: {count} boats alike")
    if "--time" in sys.argv[4:]:
        print(f"seconds a boat {wall / count:.6f} {processor / count:.6f}")


if __name__ == "__main__":
    main()
