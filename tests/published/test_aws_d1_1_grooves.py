"""AWS D1.1/D1.1M:2020 Fig. 5.2, prequalified partial penetration, and D1.1:2010 5.24.3.1, welds required flush.

The figures print 1/8 in (3 mm) for what a bevel loses at its root. The service takes 1/8 in, 3.175 mm, so a metric size
of the figure lies 0.175 mm over the service's, on the safe side.
"""

from typing import Any

import pytest
from tests.published.conftest import Ask
from tests.published.fillets import LRFD

IN_3_MM = 25.4 / 8 - 3


def _corner(ask: Ask, depth: str, bevel: str, process: str, position: str, units: str) -> dict[str, Any]:
    """Budget of a closed corner prepared to a depth and filled flush."""
    answer = ask(
        "/v1/grind-allowance",
        {
            "seam": {"kind": "closed-corner", "thickness": ["1 in", "1 in"]},
            "preparation": {"depth": depth, "groove_angle": bevel},
            "required_throat": "3 mm",
            "finish": {"to": "flush"},
            "rule_set": LRFD,
            "process": process,
            "position": position,
            "units": units,
        },
    )
    budget: dict[str, Any] = answer["budget"]
    return budget


@pytest.mark.parametrize("position", ["1G", "2G", "3G", "4G"])
def test_btc_p4(ask: Ask, position: str) -> None:
    """Fig. 5.2, p. 114, BTC-P4: stick, 45 deg, all positions: size is depth less 1/8 in; 8 mm deep gives 5 mm."""
    inches = _corner(ask, "3/8 in", "45 deg", "SMAW", position, "us")
    assert inches["remaining"]["value"] == pytest.approx(1 / 4)
    metric = _corner(ask, "8 mm", "45 deg", "SMAW", position, "metric")
    assert metric["remaining"]["value"] == pytest.approx(5 - IN_3_MM)


@pytest.mark.parametrize(("position", "size"), [("1G", 3 / 8), ("2G", 3 / 8), ("3G", 1 / 4), ("4G", 1 / 4)])
@pytest.mark.parametrize("process", ["GMAW", "FCAW"])
def test_btc_p4_gf(ask: Ask, process: str, position: str, size: float) -> None:
    """Fig. 5.2, p. 114, BTC-P4-GF, 3/8 in deep: size is depth flat and horizontal, 1/8 in less otherwise."""
    budget = _corner(ask, "3/8 in", "45 deg", process, position, "us")
    assert budget["remaining"]["value"] == pytest.approx(size)


@pytest.mark.parametrize("depth", ["6 mm", "12 mm"])
def test_tc_p4_s(ask: Ask, depth: str) -> None:
    """Fig. 5.2, p. 114, TC-P4-S: submerged arc, 60 deg bevel, flat: size is depth."""
    budget = _corner(ask, depth, "60 deg", "SAW", "1G", "metric")
    assert budget["remaining"]["value"] / float(depth.split(maxsplit=1)[0]) == pytest.approx(1.0)


@pytest.mark.parametrize(("below", "beyond"), [("1/64 in", False), ("1/32 in", False), ("3/64 in", True)])
def test_thinning_of_welds_required_flush(ask: Ask, below: str, beyond: bool) -> None:
    """D1.1:2010 5.24.3.1: grinding may thin the part by 1/32 in; deeper is cautioned, the clause named."""
    answer = ask(
        "/v1/grind-allowance",
        {
            "seam": {"kind": "butt", "thickness": ["3/8 in", "3/8 in"]},
            "preparation": {"depth": "1/4 in"},
            "required_throat": "3/16 in",
            "finish": {"to": "flush", "below": below},
            "units": "us",
        },
    )
    sources = [caution["source"] for caution in answer["cautions"] if caution["code"] == "thinning"]
    assert ["5.24.3.1" in source for source in sources] == [True] * beyond
