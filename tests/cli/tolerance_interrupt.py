#!/usr/bin/env python3
"""Ctrl-C while boats are made up: what is done is told, and the terminal is left clean.

    tolerance_interrupt.py PROGRAM FIXTURES
"""

import json
import os
import pty
import re
import select
import signal
import subprocess
import sys
import time
from pathlib import Path

PATIENCE = 120  # seconds for one run, on a machine that is busy with others
BOATS = 1_000_000  # more than are done before they are stopped


def fail(message):
    sys.exit(f"tolerance_interrupt: {message}")


def start(program, folder, options, terminal=None):
    """The program with SIGINT as a shell leaves it, standard error on the terminal."""
    return subprocess.Popen(
        [program, "tolerance", "joint.toml", "--boats", str(BOATS), *options],
        cwd=folder,
        stdin=subprocess.DEVNULL,
        stdout=subprocess.PIPE,
        stderr=terminal if terminal is not None else subprocess.PIPE,
        preexec_fn=lambda: signal.signal(signal.SIGINT, signal.SIG_DFL),
    )


def read_until(controller, pattern, deadline):
    """What stands on the terminal up to and with the pattern."""
    text = ""
    while not re.search(pattern, text):
        left = deadline - time.monotonic()
        ready = select.select([controller], [], [], max(0, left))[0]
        if not ready:
            fail(f"no {pattern!r} on the terminal in {PATIENCE} s, only {text!r}")
        text += os.read(controller, 4096).decode()
    return text


def stopped_at_progress(program, folder, options):
    """A run that gets Ctrl-C once it tells that some boats are done: its status, what it
    printed, and what stood on the terminal."""
    controller, terminal = pty.openpty()
    run = start(program, folder, options, terminal)
    os.close(terminal)
    deadline = time.monotonic() + PATIENCE
    seen = read_until(controller, rf"[1-9]\d* of {BOATS} boats", deadline)
    run.send_signal(signal.SIGINT)
    seen += read_until(controller, r"told of them alone", deadline)
    out = run.communicate(timeout=PATIENCE)[0].decode()
    os.close(controller)
    return run.returncode, out, seen


def judge_text(program, folder):
    status, out, seen = stopped_at_progress(program, folder, [])
    if status != 1:
        fail(f"a run that was stopped ends with {status}, not with 1")
    done = re.search(r"stopped after (\d+) of 1000000 boats", seen)
    if not done:
        fail(f"the terminal does not say where it stopped: {seen!r}")
    boats = int(done.group(1))
    if not 0 < boats < BOATS:
        fail(f"it was stopped after {boats} boats")
    words = " ".join(out.split())
    for part in (
        f"{boats} boats made up from seed 640",
        "It was stopped before all 1000000 were done.",
        "FAIL tolerance.boats",
    ):
        if part not in words:
            fail(f"the report does not say {part!r}")
    if "\x1b[Kstopped after" not in seen:
        fail(f"the line on the terminal was not cleared: {seen[-200:]!r}")
    return boats


def judge_same_boats(program, folder):
    """A stopped run tells what the same boats tell that were asked for."""
    status, out, _ = stopped_at_progress(program, folder, ["--json"])
    stopped = json.loads(out)["tolerance"]
    if status != 1 or stopped["asked"] != BOATS:
        fail(f"JSON of a stopped run: status {status}, asked {stopped['asked']}")
    whole = subprocess.run(
        [program, "tolerance", "joint.toml", "--json", "--boats", str(stopped["boats"])],
        cwd=folder,
        capture_output=True,
        timeout=PATIENCE,
        check=False,
    )
    asked = json.loads(whole.stdout)["tolerance"]
    for key in ("shares", "margin", "stretches", "adhesive", "lengths"):
        if stopped[key] != asked[key]:
            fail(f"{key} of {stopped['boats']} boats is another when they were asked for")


def judge_second(program, folder):
    """A second Ctrl-C ends it as any other program."""
    controller, terminal = pty.openpty()
    run = start(program, folder, [], terminal)
    os.close(terminal)
    read_until(controller, rf"[1-9]\d* of {BOATS} boats", time.monotonic() + PATIENCE)
    for _ in range(1000):
        if run.poll() is not None:
            break
        run.send_signal(signal.SIGINT)
    run.communicate(timeout=PATIENCE)
    os.close(controller)
    if run.returncode != -signal.SIGINT and run.returncode != 1:
        fail(f"many Ctrl-C end it with {run.returncode}")


def judge_no_terminal(program, folder):
    """Where standard error is no terminal nothing is told on the way."""
    run = subprocess.run(
        [program, "tolerance", "joint.toml", "--boats", "200"],
        cwd=folder,
        capture_output=True,
        timeout=PATIENCE,
        check=False,
    )
    if run.stderr:
        fail(f"standard error has {run.stderr!r}")


def main():
    program, fixtures = Path(sys.argv[1]).resolve(), Path(sys.argv[2]).resolve()
    folder = fixtures / "demo-640"
    boats = judge_text(program, folder)
    judge_same_boats(program, folder)
    judge_second(program, folder)
    judge_no_terminal(program, folder)
    print(f"tolerance_interrupt: stopped after {boats} boats, and told of them")


if __name__ == "__main__":
    main()
