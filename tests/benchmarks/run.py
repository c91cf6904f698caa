"""What the service costs: over HTTP against a bare Flask echo, each resource in process, and the engine.

Run it as `python tests/benchmarks/run.py`, with `--quick` for a rough look. Both sides of every ratio are measured in
the same run, in turns; each figure is the median of the rounds, each ratio the median of the rounds' own ratios.
Nothing is asserted: figures depend on the machine.

- Under load: one fillet, asked for by 8 connections at once (`load.py`), from gunicorn as it is shipped; only that no
  worker is replaced meanwhile. `calls/s` is what the caller gets, `CPU` the processor time of the workers a call, which
  other programs of the machine disturb least.
- One connection: the same call after call, as one caller feels it; the caller's own time is in all of them.
- The echo sends back the request, or a body as long as the answer: the least that any such service costs.
- In process: every published example through the whole application, without a server: processor time a call, and how
  many times that of an echo of the same request.
- Engine: processor time a joint, for one on floats and for lists on columns. The floor of a list is copying every
  column that sizing it reads and every column that it writes.
- Weld groups: random groups at once, against scipy's root finding; then the named patterns alone, one load after the
  other, as a request asks, of which the slowest counts.
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
from contextlib import ExitStack, closing
from dataclasses import dataclass, fields
from functools import partial
from io import BytesIO
from pathlib import Path
from statistics import median
from typing import TypeVar

import numpy as np
from flask import Flask
from werkzeug.test import EnvironBuilder

sys.path.insert(0, str(Path(__file__).resolve().parents[1] / "demonstration"))
sys.path.insert(0, str(Path(__file__).resolve().parent))

import echo
from load import processor_time, under_load
from serving import ROOT, Serving, service
from weld_groups import RELATION, on_our_unknowns, on_the_centre, random_groups, slowest_of_patterns

from truethroat_service.api import create_app
from truethroat_service.api.settings import Settings
from truethroat_service.application.fillet_size.sizing import Fillets, Sizes, shared_load, size
from truethroat_service.application.joints.rule_sets import rule_set
from truethroat_service.engine import loads
from truethroat_service.engine.formula import working
from truethroat_service.engine.instantaneous_centre import CHUNK as CHUNK_OF_GROUPS
from truethroat_service.engine.instantaneous_centre import solve
from truethroat_service.engine.numeric import Real
from truethroat_service.engine.rule_set import PartMetal, RuleSet, WeldMetal

T = TypeVar("T")
CHUNK = 16_000
LONGEST = 1_000_000
CONNECTIONS = 8
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
    """How often things are measured: rounds, seconds of load and HTTP calls a round, and rows of the longest list."""

    rounds: int
    seconds: float
    calls: int
    rows: int


THOROUGH = Effort(rounds=9, seconds=1.5, calls=300, rows=LONGEST)
QUICK = Effort(rounds=3, seconds=0.5, calls=100, rows=LONGEST // 10)


def in_turns(
    rounds: int, *tasks: Callable[[], object], clock: Callable[[], float] = time.process_time
) -> list[list[float]]:
    """Time tasks one after the other, round by round, so that a slow moment meets all; give the seconds of each."""
    taken: list[list[float]] = [[] for _ in tasks]
    for task in tasks:
        task()
    gc.collect()
    gc.disable()
    try:
        for _ in range(rounds):
            for times, task in zip(taken, tasks, strict=True):
                started = clock()
                task()
                times.append(clock() - started)
    finally:
        gc.enable()
    return taken


def ratio(ours: Sequence[float], other: Sequence[float]) -> float:
    """Give what one measurement is of another, round by round."""
    return median(one / two for one, two in zip(ours, other, strict=True))


# --- Over HTTP ---


@dataclass(frozen=True)
class Contender:
    """One call to one server."""

    name: str
    server: Serving
    path: str
    body: bytes


def over_http(effort: Effort) -> None:
    """Compare a fillet with an echo of the request and of the answer, under load and alone."""
    body, lasting = json.dumps(REQUEST).encode(), {"GUNICORN_CMD_ARGS": "--max-requests 0"}
    with (
        service(environment=lasting) as ours,
        service("echo:create_app()", folder=Path(__file__).parent, environment=lasting) as bare,
    ):
        fillet = Contender("fillet-size", ours, "/v1/fillet-size", body)
        with _connected(fillet) as connection:
            answer = _post(connection, fillet)
        contenders = (
            fillet,
            Contender("echo of the request", bare, "/echo", body),
            Contender("echo of the answer", bare, "/echo", answer),
        )
        heading(f"One fillet over HTTP, request {len(body):,} bytes, answer {len(answer):,} bytes")
        loaded(effort, contenders)
        alone(effort, contenders)


def loaded(effort: Effort, contenders: Sequence[Contender]) -> None:
    """Ask over many connections at once, each contender in turn."""
    rates: list[list[float]] = [[] for _ in contenders]
    costs: list[list[float]] = [[] for _ in contenders]
    for _ in range(effort.rounds):
        for one, per_second, per_call in zip(contenders, rates, costs, strict=True):
            before = processor_time(one.server.process.pid)
            calls, seconds = under_load(one.server.port, one.path, one.body, CONNECTIONS, effort.seconds)
            per_second.append(calls / seconds)
            per_call.append((processor_time(one.server.process.pid) - before) / calls)
    line(f"- under load, {CONNECTIONS} connections", f"{effort.rounds} rounds of {effort.seconds} s")
    for one, rate, cost in zip(contenders, rates, costs, strict=True):
        shares = (
            f"fillet-size has {ratio(rates[0], rate):.2f} of its calls/s, takes {ratio(costs[0], cost):.2f} x its CPU"
        )
        cells = f"{median(rate):,.0f} calls/s", f"{median(cost) * 1e6:,.0f} us CPU"
        line(one.name, *cells, "" if one is contenders[0] else shares)


def alone(effort: Effort, contenders: Sequence[Contender]) -> None:
    """Ask call after call over one connection, each contender in turn."""
    with ExitStack() as stack:
        calls = [partial(_post, stack.enter_context(_connected(one)), one) for one in contenders]
        tasks = [repeated(effort.calls, call) for call in calls]
        taken = in_turns(effort.rounds, *tasks, clock=time.perf_counter)
    line("- one connection", f"{effort.rounds} rounds of {effort.calls} calls")
    for one, seconds in zip(contenders, taken, strict=True):
        each = median(seconds) / effort.calls
        share = "" if one is contenders[0] else f"fillet-size takes {ratio(taken[0], seconds):.2f} x as long"
        line(one.name, f"{1 / each:,.0f} calls/s", f"{each * 1e6:,.0f} us", share)


def _connected(one: Contender) -> closing[http.client.HTTPConnection]:
    """Connection that is closed at the end of a block."""
    return closing(http.client.HTTPConnection("127.0.0.1", one.server.port, timeout=30))


def _post(connection: http.client.HTTPConnection, one: Contender) -> bytes:
    """Post once; anything but 200 ends the benchmark."""
    connection.request("POST", one.path, one.body, {"Content-Type": "application/json"})
    response = connection.getresponse()
    content = response.read()
    if response.status != 200:
        raise SystemExit(f"{one.path}: {response.status} {content.decode(errors='replace')}")
    return content


# --- In process ---


def resources(effort: Effort) -> None:
    """Answer every published example in process, beside an echo of the same request."""
    heading("Every resource in process, its published examples, CPU a call")
    ours, bare = create_app(Settings()), echo.create_app()
    document = json.loads((ROOT / "openapi" / "openapi.json").read_text(encoding="utf-8"))
    for path, operations in document["paths"].items():
        if "post" not in operations:
            continue
        examples = operations["post"]["requestBody"]["content"]["application/json"]["examples"]
        bodies = [json.dumps(example["value"]).encode() for example in examples.values()]
        apart = [(app, where, body) for body in bodies for app, where in ((ours, path), (bare, "/echo"))]
        taken = in_turns(effort.rounds, *(repeated(5, in_process(*one)) for one in apart))
        calls = [median(seconds) / 5 * 1e6 for seconds in taken[::2]]
        ratios = [ratio(our, echoed) for our, echoed in zip(taken[::2], taken[1::2], strict=True)]
        cells = f"{len(calls)} examples", f"{min(calls):,.0f} to {max(calls):,.0f} us"
        line(path.removeprefix("/v1/"), *cells, f"{min(ratios):.1f} to {max(ratios):.1f} x an echo")


def in_process(app: Flask, path: str, body: bytes) -> Callable[[], None]:
    """Give a call of an application as a server makes it, with nothing of a server or a client around it."""
    environ = EnvironBuilder(path, method="POST", data=body, content_type="application/json").get_environ()

    def status(said: str, _headers: object, _error: object = None) -> None:
        if said != "200 OK":
            raise SystemExit(f"{path}: {said}")

    def call() -> None:
        b"".join(app({**environ, "wsgi.input": BytesIO(body)}, status))

    return call


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


def sized(rules: RuleSet, joints: Joints) -> Sizes:
    """Size joints from their loads up, as the service does for one."""
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
    )


def written(sizes: Sizes) -> list[np.ndarray]:
    """Columns among what sizing gives."""
    values = [getattr(sizes, field.name) for field in fields(sizes)]
    flat = [one for value in values for one in (value if isinstance(value, tuple) else (value,))]
    return [one for one in flat if isinstance(one, np.ndarray)]


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


def copied(columns: Sequence[Sequence[np.ndarray]], into: Sequence[Sequence[np.ndarray]]) -> None:
    """Copy every column once, piece by piece, to where it may stay: the least that reading and writing them costs."""
    for sources, targets in zip(columns, into, strict=True):
        for source, target in zip(sources, targets, strict=True):
            np.copyto(target, source)


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
        line(name, "1 joint", f"{median(one) / times * 1e9:,.0f} ns/joint", "on floats")
        for rows, times in ((1_000, 50), (effort.rows, 1)):
            pieces = chunks(many(rows), rows)
            columns = [[*map(np.asarray, piece.columns()), *written(sized(rules, piece))] for piece in pieces]
            into = [[np.empty_like(column) for column in piece] for piece in columns]
            ours, copy = in_turns(
                min(effort.rounds, 5),
                repeated(times, partial(list_sized, rules, pieces)),
                repeated(times, partial(copied, columns, into)),
            )
            per_joint, read = median(ours) / times / rows * 1e9, len(pieces[0].columns())
            floor = f"{ratio(ours, copy):,.1f} x copying {read} columns read and {len(columns[0]) - read} written"
            line("", f"{rows:,} joints", f"{per_joint:,.0f} ns/joint", floor)


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


def timed(task: Callable[[], T]) -> tuple[T, float]:
    """Result of a task and the processor time it took, s."""
    started = time.process_time()
    result = task()
    return result, time.process_time() - started


def recording(effort: Effort) -> None:
    """Time one joint with the working sheet open and without."""
    heading("The working sheet, one joint on floats")
    times = 200 * effort.rounds
    for name in RULE_SETS:
        rules = rule_set(name)
        without, with_sheet = in_turns(
            effort.rounds, repeated(times, partial(sized, rules, ONE)), repeated(times, partial(on_a_sheet, rules))
        )
        off, on = median(without) / times * 1e6, median(with_sheet) / times * 1e6
        line(name, f"off {off:.1f} us", f"on {on:.1f} us", f"{ratio(with_sheet, without):.2f} x")


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
        "  ".join(f"{cell:<{width}}" for cell, width in zip(cells, (30, 22, 18, 30), strict=False)).rstrip(), flush=True
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
    resources(effort)
    weld_groups(effort)
    print(f"\nMeasured in {time.perf_counter() - started:.0f} s.")


if __name__ == "__main__":
    main()
