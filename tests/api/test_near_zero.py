"""Sizes that are not 0, and nearer to 0 than any shop can mean."""

from __future__ import annotations

from typing import Any

import pytest
from tests.api.exchange import Exchange
from tests.api.sound import AISC, EN, FILLET, changed


@pytest.mark.parametrize(
    ("request_", "pointer"),
    [
        (changed(EN, load__force={"value": 1e-200, "unit": "N"}), "#/load/force"),
        (changed(EN, load__length={"value": 1e-320, "unit": "mm"}), "#/load/length"),
        (changed(EN, joint__root_gap={"value": 1e-200, "unit": "mm"}), "#/joint/root_gap"),
        (changed(AISC, load={"longitudinal": {"value": -1e-200, "unit": "kip/in"}}), "#/load/longitudinal"),
    ],
)
def test_a_size_next_to_nothing_is_refused(service: Exchange, request_: Any, pointer: str) -> None:
    """Its square is no number any more, so a strength of it would be none either."""
    [(found, code, text)] = service.faults(FILLET, request_)
    assert (found, code) == (pointer, "out-of-range")
    assert text.startswith("must be ")
    assert text.endswith("this is too close to 0 for a real size")
