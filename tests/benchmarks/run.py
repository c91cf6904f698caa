"""What a fillet costs: over HTTP against a bare Flask echo, and in the engine for one joint and for long lists.

Run it as `python tests/benchmarks/run.py`, with `--quick` for a rough look. Both sides of every ratio are measured in
the same run, in turns; each figure is a median. Nothing is asserted: figures depend on the machine.
"""

from __future__ import annotations

import argparse
import gc
import http.client
import json
import math
import os
import platform
import sys
import time
from collections.abc import Callable, Sequence
from dataclasses import dataclass
from functools import partial
from pathlib import Path
from statistics import median
from typing import Any

import numpy as np

sys.path.insert(0, str(Path(__file__).resolve().parents[1] / "demonstration"))
sys.path.insert(0, str(Path(__file__).resolve().parent))

from serving import Serving, service
from weld_groups import RELATION, on_our_unknowns, on_the_centre, random_groups, slowest_of_patterns

from truethroat_service.application.fillet_sizing import Fillets, shared_load, size
from truethroat_service.application.registry import rule_set
from truethroat_service.engine import loads
from truethroat_service.engine.formula import working
from truethroat_service.engine.instantaneous_centre import CHUNK as CHUNK_OF_GROUPS
from truethroat_service.engine.instantaneous_centre import solve
from truethroat_service.engine.numeric import Real
from truethroat_service.engine.rule_set import PartMetal, RuleSet, WeldMetal

CHUNK = 16_000
LONGEST = 1_000_000
RULE_SETS = ("aisc-360-22-lrfd", "en-1993-1-8-2005-directional")
REQUEST = {
    "rule_set": "aisc-360-22-lrfd",
    "basis": "load",
    "joint": {"kind": "tee", "sides": 2},
    "parts": [{"thickness": "3/8 in", "material": "A36"}, {"thickness": "5/16 in", "material": "A36"}],
    "filler": "E70",
    "load": {"force": "40 kip", "length": "8 in", "angle": "60 deg"},
    "units": "us",
    "mark": "rib 12, hopper wall",
}


@dataclass(frozen=True)
class Effort:
    """How often things are measured: rounds, HTTP calls a round, and rows of the longest list."""

    rounds: int
    calls: int
    rows: int


THOROUGH, QUICK = Effort(rounds=9, calls=400, rows=LONGEST), Effort(rounds=3, calls=100, rows=LONGEST // 10)


def in_turns(rounds: int, *tasks: Callable[[], object]) -> list[float]:
    """Time tasks one after the other, round by round, so that a slow moment meets all; give each one's median in s."""
    taken: list[list[float]] = [[] for _ in tasks]
    for task in tasks:
        task()
    gc.collect()
    gc.disable()
    try:
        for _ in range(rounds):
            for times, task in zip(taken, tasks, strict=True):
                started = time.perf_counter()
                task()
                times.append(time.perf_counter() - started)
    finally:
        gc.enable()
    return [median(times) for times in taken]


# --- Over HTTP ---


def over_http(effort: Effort) -> None:
    """Compare a fillet with an echo of the same request: same gunicorn settings, one kept connection each."""
    body = json.dumps(REQUEST).encode()
    with service() as ours, service("echo:create_app()", folder=Path(__file__).parent) as bare:
        fillet, echo = _connected(ours), _connected(bare)
        try:
            answer = _post(fillet, "/v1/fillet-size", body)
            contenders = {
                "fillet-size": partial(_post, fillet, "/v1/fillet-size", body),
                "bare echo of the request": partial(_post, echo, "/echo", body),
                "bare echo of the answer": partial(_post, echo, "/echo", answer),
            }
            taken = in_turns(effort.rounds, *(repeated(effort.calls, call) for call in contenders.values()))
        finally:
            fillet.close()
            echo.close()
    sizes = f"request {len(body):,} bytes, answer {len(answer):,} bytes"
    heading(f"One fillet over HTTP, {sizes}, {effort.rounds} rounds of {effort.calls} calls")
    for name, seconds in zip(contenders, taken, strict=True):
        per_call = seconds / effort.calls
        ratio = "" if name == "fillet-size" else f"fillet-size takes {taken[0] / seconds:.2f} x as long"
        line(name, f"{per_call * 1e6:,.0f} us a call", f"{1 / per_call:,.0f} calls/s", ratio)


def _connected(serving: Serving) -> http.client.HTTPConnection:
    """Open the connection that all calls go over."""
    connection = http.client.HTTPConnection("127.0.0.1", serving.port, timeout=30)
    connection.connect()
    return connection


def _post(connection: http.client.HTTPConnection, path: str, body: bytes) -> bytes:
    """Post once; anything but 200 ends the benchmark."""
    connection.request("POST", path, body, {"Content-Type": "application/json"})
    response = connection.getresponse()
    content = response.read()
    if response.status != 200:
        raise SystemExit(f"{path}: {response.status} {content.decode(errors='replace')}")
    return content


# --- In the engine ---


@dataclass(frozen=True)
class Joints:
    """Numbers of one joint, or columns of many: thicknesses, strengths, force, length and its angle."""

    t_1: Real
    t_2: Real
    f_y: Real
    f_u: Real
    force: Real
    length: Real
    theta: Real

    def columns(self) -> tuple[Real, ...]:
        """Give the numbers in a fixed order."""
        return (self.t_1, self.t_2, self.f_y, self.f_u, self.force, self.length, self.theta)


ONE = Joints(10.0, 8.0, 250.0, 400.0, 180e3, 200.0, 1.0)


def many(rows: int) -> Joints:
    """Draw joints evenly from what a shop welds; always the same ones."""
    draw = np.random.default_rng(7).uniform
    return Joints(
        draw(5, 25, rows),
        draw(5, 25, rows),
        draw(235, 355, rows),
        draw(360, 490, rows),
        draw(20e3, 300e3, rows),
        draw(100, 600, rows),
        draw(0, math.pi / 2, rows),
    )


def sized(rules: RuleSet, joints: Joints) -> Real:
    """Size joints from their loads up, as the service does for one; give the legs."""
    per_length = loads.force_per_length(P=joints.force, m=2.0, L=joints.length)
    part_1 = PartMetal(joints.t_1, joints.f_y, joints.f_u, 0.9)
    part_2 = PartMetal(joints.t_2, joints.f_y, joints.f_u, 0.9)
    return size(
        Fillets(
            rules=rules,
            kind="tee",
            sides=2,
            basis="load",
            psi=math.pi / 2,
            parts=(part_1, part_2),
            metal=WeldMetal(filler=482.633, base=joints.f_u, beta_w=0.9),
            side_loads=shared_load("tee", 2, math.pi / 2, per_length, joints.theta),
            length=joints.length,
            end_loaded=False,
            edge=None,
            gap=0.0,
            penetration=0.0,
            by_throat=rules.family == "en",
            step=0.5,
        )
    ).leg


def chunks(joints: Joints, rows: int) -> list[Joints]:
    """Cut columns into pieces that stay in the processor's cache; views, nothing is copied."""
    return [
        Joints(*(np.asarray(column)[start : start + CHUNK] for column in joints.columns()))
        for start in range(0, rows, CHUNK)
    ]


def list_sized(rules: RuleSet, pieces: Sequence[Joints]) -> None:
    """Size a whole list, piece by piece."""
    for piece in pieces:
        sized(rules, piece)


def copied(pieces: Sequence[Joints]) -> None:
    """Copy every column once, piece by piece: the least that any use of them costs."""
    for piece in pieces:
        for column in piece.columns():
            np.array(column)


def repeated(times: int, task: Callable[[], object]) -> Callable[[], None]:
    """Make a task of many, for what is too short to be timed alone."""

    def run() -> None:
        for _ in range(times):
            task()

    return run


def in_the_engine(effort: Effort) -> None:
    """Time the sizing of one joint on floats and of lists on columns, against copying the columns."""
    heading(f"Sizing in the engine, tee welded on both sides, lists in chunks of {CHUNK:,} rows")
    for name in RULE_SETS:
        rules = rule_set(name)
        times = 200 * effort.rounds
        (one,) = in_turns(effort.rounds, repeated(times, partial(sized, rules, ONE)))
        line(name, "1 joint", f"{one / times * 1e9:,.0f} ns/joint", "on floats")
        for rows, times in ((1_000, 50), (effort.rows, 1)):
            pieces = chunks(many(rows), rows)
            ours, copy = in_turns(
                min(effort.rounds, 5),
                repeated(times, partial(list_sized, rules, pieces)),
                repeated(times, partial(copied, pieces)),
            )
            per_joint = ours / times / rows * 1e9
            ratio = f"{ours / copy:,.0f} x copying its {len(ONE.columns())} columns"
            line("", f"{rows:,} joints", f"{per_joint:,.0f} ns/joint", ratio)


def weld_groups(effort: Effort) -> None:
    """Instantaneous centres of many random groups at once, against scipy group by group; the slowest named pattern."""
    count, alone = (10_000, 100) if effort.rows == LONGEST else (1_000, 30)
    groups = random_groups(count)
    found = solve(*groups, RELATION)
    scipys = {"our unknowns": on_our_unknowns, "the centre's coordinates": on_the_centre}
    settled = [by_scipy(groups, alone) for by_scipy in scipys.values()]
    ours, *others = in_turns(
        min(effort.rounds, 5),
        lambda: solve(*groups, RELATION),
        *(partial(by_scipy, groups, alone) for by_scipy in scipys.values()),
    )
    per_group = ours / count
    heading(
        f"Weld groups of one to five random lines by instantaneous centre, {count:,} at once, {CHUNK_OF_GROUPS} a chunk"
    )
    line("truethroat", f"{count:,} groups", f"{per_group * 1e6:,.0f} us/group", f"{found.converged.mean():.1%} settled")
    for name, share, seconds in zip(scipys, settled, others, strict=True):
        by_scipy = seconds / alone
        line(
            f"scipy, {name}",
            f"{alone:,}, one by one",
            f"{by_scipy * 1e6:,.0f} us/group",
            f"{share:.0%} at a true root; {by_scipy / per_group:.1f} x as long",
        )
    slowest, which, tried = slowest_of_patterns()
    line("slowest of named patterns", f"{tried:,}, one by one", f"{slowest * 1e3:,.1f} ms of CPU", which)


def timed(task: Callable[[], Any]) -> tuple[Any, float]:
    """Result of a task and the seconds it took."""
    started = time.perf_counter()
    result = task()
    return result, time.perf_counter() - started


def recording(effort: Effort) -> None:
    """Time one joint with the working sheet open and without."""
    heading("The working sheet, one joint on floats")
    times = 200 * effort.rounds
    for name in RULE_SETS:
        rules = rule_set(name)
        without, with_sheet = in_turns(
            effort.rounds, repeated(times, partial(sized, rules, ONE)), repeated(times, partial(on_a_sheet, rules))
        )
        off, on = without / times * 1e6, with_sheet / times * 1e6
        line(name, f"off {off:.1f} us", f"on {on:.1f} us", f"{on / off:.2f} x")


def on_a_sheet(rules: RuleSet) -> None:
    """Size one joint with every step noted."""
    with working():
        sized(rules, ONE)


# --- On paper ---


def heading(text: str) -> None:
    """Print what follows is about."""
    print(f"\n{text}")


def line(*cells: str) -> None:
    """Print one measurement."""
    print(
        "  ".join(f"{cell:<{width}}" for cell, width in zip(cells, (30, 22, 18, 30), strict=True)).rstrip(), flush=True
    )


def main() -> None:
    """Measure everything."""
    parser = argparse.ArgumentParser(description="Measure what a fillet costs.")
    parser.add_argument("--quick", action="store_true", help="a rough look, in a few seconds")
    effort = QUICK if parser.parse_args().quick else THOROUGH
    started = time.perf_counter()
    print(f"Python {platform.python_version()}, NumPy {np.__version__}, {os.cpu_count()} processors")
    over_http(effort)
    in_the_engine(effort)
    recording(effort)
    weld_groups(effort)
    print(f"\nMeasured in {time.perf_counter() - started:.0f} s.")


if __name__ == "__main__":
    main()
