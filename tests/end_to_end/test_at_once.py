"""Many callers at once: each gets the answer to its own question."""

from __future__ import annotations

import math
import threading
from collections.abc import Callable
from concurrent.futures import ThreadPoolExecutor

import pytest
from tests.demonstration.serving import Serving

from truethroat import Client

CALLERS, ROUNDS = 20, 8


def ask_aisc(client: Client, number: int) -> tuple[float, float]:
    """Size a lap by AISC 360-22 for a load of its own; give the leg found and the leg there should be, in inches."""
    method = ("lrfd", "asd")[number % 2]
    answer = client.fillet_size(
        rule_set=f"aisc-360-22-{method}",
        basis="load",
        joint={"kind": "lap", "sides": 2},
        parts=[{"thickness": "1 in", "material": "A36"}, {"thickness": "1 in", "material": "A36"}],
        filler="E70",
        load={"force": f"{200 + number} kip", "length": "10 in", "angle": "0 deg"},
        units="us",
        mark=f"aisc {number}",
    )
    assert answer.mark == f"aisc {number}"
    assert answer.provenance.rule_set == f"aisc-360-22-{method}"
    # AISC 360-22 B3.2 and J2.4: 0.60 x 70 ksi on 0.7071 of the leg, times 0.75 or over 2.00
    strength = 0.60 * 70 * math.sqrt(0.5) * (0.75 if method == "lrfd" else 1 / 2.00)
    return answer.required.leg.value, (200 + number) / 20 / strength


def ask_en(client: Client, number: int) -> tuple[float, float]:
    """Size a tee by EN 1993-1-8 with a partial factor of its own; give the throat found and the one expected, in mm."""
    method = ("directional", "simplified")[number % 2]
    factor = 1.25 + number / 1000
    part = {"thickness": "20 mm", "yield_strength": "355 MPa", "tensile_strength": "470 MPa", "beta_w": 0.9}
    answer = client.fillet_size(
        rule_set=f"en-1993-1-8-2005-{method}",
        basis="load",
        joint={"kind": "tee", "sides": 2},
        parts=[part, part],
        load={"force": f"{300 + number} kN", "length": "200 mm", "angle": "90 deg"},
        parameters={"gamma_m2": factor},
        mark=f"en {number}",
    )
    assert answer.mark == f"en {number}"
    assert answer.provenance.rule_set == f"en-1993-1-8-2005-{method}"
    assert answer.provenance.parameters["gamma_m2"] == factor
    force = (300 + number) * 1000 / 400
    limit = 470 / (0.9 * factor)
    # EN 1993-1-8:2005 4.5.3.2, across at 90 deg: the stress is sqrt(2) F/a against the limit; 4.5.3.3: F/a against the
    # limit over sqrt(3).
    return answer.required.throat.value, force * (math.sqrt(2) if method == "directional" else math.sqrt(3)) / limit


@pytest.mark.parametrize("shared", [False, True])
def test_answers_do_not_mix(serving: Serving, shared: bool) -> None:
    """Twenty callers, with a client each or one for all, ask by different rules at once: no answer is another's."""
    begin = threading.Barrier(CALLERS)
    common = Client(serving.url)
    common.session.trust_env = False

    def call(caller: int) -> list[tuple[float, float]]:
        ask: Callable[[Client, int], tuple[float, float]] = (ask_aisc, ask_en)[caller % 2]
        client = common if shared else Client(serving.url)
        client.session.trust_env = False
        begin.wait(30)
        try:
            return [ask(client, caller // 2 + CALLERS * step) for step in range(ROUNDS)]
        finally:
            if not shared:
                client.close()

    with common, ThreadPoolExecutor(CALLERS) as pool:
        found = [pair for pairs in pool.map(call, range(CALLERS)) for pair in pairs]
    assert len(found) == CALLERS * ROUNDS
    for value, expected in found:
        assert value == pytest.approx(expected, rel=1e-6)
    assert len({round(value, 6) for value, _ in found}) == len(found)
