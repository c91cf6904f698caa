"""AWS D1.1/D1.1M:2020 Fig. 5.1 and 5.2 as details to choose from: square grooves, bevels, limits of thickness and gap.

Fig. 5.2 (partial) pp. 112 and 114 and Fig. 5.1 pp. 87-88 were read; rows of square grooves with full penetration and of
BC-P2 are from memory, as is the 1/4 in of B-P1b and B-P1c (6 mm was read).
"""

from typing import Any

import pytest
from tests.published.conftest import Ask
from tests.published.fillets import LRFD, steel
from tests.published.grooves import GROOVE_SIZE, aisc_groove, fitting, refused, value

SQUARE = {"kind": "partial", "groove": "square"}


def _thick(thickness: str) -> tuple[dict[str, Any], dict[str, Any]]:
    return steel(thickness), steel(thickness)


def _square(ask: Ask, thickness: str, units: str = "metric") -> dict[str, dict[str, Any]]:
    """Square grooves of a butt of a thickness, by their detail."""
    request = aisc_groove(LRFD, SQUARE, parts=_thick(thickness), process="SMAW", position="1G")
    answer = ask(GROOVE_SIZE, {**request, "units": units})
    return {str(one["id"]): one for one in answer["preparations"]}


def test_b_p1a(ask: Ask) -> None:
    """Fig. 5.2, p. 112, B-P1a: 3 mm plate has T - 1 = 2 mm, under the 1/8 in of AISC Table J2.3, and said so."""
    [detail] = [one for name, one in _square(ask, "3 mm").items() if name == "aws-b-p1a"]
    assert value(detail["throat"]) == pytest.approx(2.0)
    assert detail["enough"] is False
    assert "the least throat" in detail["why"]


def test_b_p1b_and_b_p1c(ask: Ask) -> None:
    """Fig. 5.2, p. 112: 6 mm plate has T/2 = 3 mm from one side (gap T/2) and 3T/4 = 4.5 mm from both.

    Neither is enough by AISC Table J2.3, whose least throat of 1/8 in (3.175 mm) is asked of each side.
    """
    details = _square(ask, "6 mm")
    assert "aws-b-p1a" not in details
    assert value(details["aws-b-p1c"]["throat"]) == pytest.approx(3.0)
    assert value(details["aws-b-p1c"]["gap"]) == pytest.approx(3.0)
    assert value(details["aws-b-p1b"]["throat"]) == pytest.approx(4.5)
    assert [one["enough"] for one in details.values()] == [False, False]


def test_square_edges_of_a_quarter_inch(ask: Ask) -> None:
    """Fig. 5.2, B-P1b and B-P1c, 1/4 in from memory (6 mm read): T/2 = 1/8 in from one side, 3T/4 = 3/16 in from both.

    From one side that is the least throat of AISC Table J2.3, 1/8 in; from both, 3/32 in a side is under it.
    """
    details = _square(ask, "1/4 in", "us")
    assert value(details["aws-b-p1c"]["throat"]) == pytest.approx(1 / 8)
    assert value(details["aws-b-p1c"]["gap"]) == pytest.approx(1 / 8)
    assert value(details["aws-b-p1b"]["throat"]) == pytest.approx(3 / 16)
    assert [one["enough"] for one in details.values()] == [True, False]
    answer = ask(GROOVE_SIZE, aisc_groove(LRFD, SQUARE, parts=_thick("0.26 in"), process="SMAW", position="1G"))
    assert "for thicknesses up to 1/4 in, not" in refused(answer, "aws-b-p1c")


@pytest.mark.parametrize("position", ["1G", "2G", "3G", "4G"])
def test_btc_p4(ask: Ask, position: str) -> None:
    """Fig. 5.2, p. 114, BTC-P4: stick, 45 deg, all positions, no gap, land 3 mm: 8 mm deep has 5 mm.

    The service takes 1/8 in off, 3.175 mm: 0.175 mm on the safe side.
    """
    weld = {"kind": "partial", "groove": "single-bevel", "depth_step": "8 mm"}
    request = aisc_groove(LRFD, weld, joint="tee", parts=_thick("12 mm"), process="SMAW", position=position)
    answer = ask(GROOVE_SIZE, {**request, "units": "metric"})
    made = answer["preparation"]
    assert (made["id"], value(made["depth"]), value(made["gap"])) == ("aws-btc-p4", 8.0, 0.0)
    assert value(made["throat"]) == pytest.approx(5 - 0.175)
    tight = ask(GROOVE_SIZE, {**request, "parts": list(_thick("10.5 mm")), "units": "metric"})
    # 10.5 mm less 8 mm leaves a land of 2.5 mm, under the 3 mm (1/8 in) the detail asks for.
    assert tight["verdict"] == "full-penetration-needed"


@pytest.mark.parametrize(("depth", "thickness"), [("8 mm", "20 mm"), ("12 mm", "25 mm")])
def test_tc_p4_s(ask: Ask, depth: str, thickness: str) -> None:
    """Fig. 5.2, p. 114, TC-P4-S: submerged arc, flat, 60 deg, from 11 mm with a land of 6 mm: size is depth."""
    weld = {"kind": "partial", "groove": "single-bevel", "depth_step": depth}
    request = aisc_groove(LRFD, weld, joint="tee", parts=_thick(thickness), process="SAW", position="1G")
    made = ask(GROOVE_SIZE, request)["preparation"]
    assert made["id"] == "aws-tc-p4-s"
    assert value(made["throat"]) / value(made["depth"]) == pytest.approx(1.0)
    thin = ask(GROOVE_SIZE, {**request, "parts": list(_thick("10 mm"))})
    assert "thicknesses from" in refused(thin, "aws-tc-p4-s")


@pytest.mark.parametrize(
    ("detail", "joint", "process", "largest", "over", "gap"),
    [
        ("aws-b-l1a", "butt", "SMAW", "1/4 in", "17/64 in", 1 / 4),
        ("aws-b-l1a", "corner", "SMAW", "1/4 in", "17/64 in", 1 / 4),
        ("aws-b-l1a-gf", "butt", "GMAW", "3/8 in", "25/64 in", 3 / 8),
        ("aws-b-l1a-gf", "corner", "FCAW", "3/8 in", "25/64 in", 3 / 8),
        ("aws-b-l1b", "butt", "SMAW", "1/4 in", "17/64 in", 1 / 8),
        ("aws-b-l1b-gf", "butt", "GMAW", "3/8 in", "25/64 in", 1 / 8),
        ("aws-b-l1-s", "butt", "SAW", "3/8 in", "25/64 in", 0.0),
        ("aws-b-l1a-s", "butt", "SAW", "5/8 in", "41/64 in", 0.0),
        ("aws-tc-l1b", "tee", "SMAW", "1/4 in", "17/64 in", 1 / 8),
        ("aws-tc-l1-gf", "corner", "GMAW", "3/8 in", "25/64 in", 1 / 8),
    ],
)
def test_square_grooves_of_full_penetration(
    ask: Ask, detail: str, joint: str, process: str, largest: str, over: str, gap: float
) -> None:
    """Fig. 5.1, square grooves (from memory): largest thickness, and gap T, T/2, up to 1/8 in, or none."""
    weld = {"kind": "full", "groove": "square", "gap": f"{gap} in"}
    request = aisc_groove(LRFD, weld, joint=joint, parts=_thick(largest), process=process, position="1G")
    assert detail in fitting(ask(GROOVE_SIZE, request))
    wide = ask(GROOVE_SIZE, {**request, "weld": {**weld, "gap": f"{gap + 1 / 16} in"}})
    assert "for a gap" in refused(wide, detail)
    thick = ask(GROOVE_SIZE, {**request, "parts": list(_thick(over)), "weld": {"kind": "full", "groove": "square"}})
    assert "for thicknesses up to" in refused(thick, detail)


@pytest.mark.parametrize("joint", ["butt", "tee"])
def test_b_u4b(ask: Ask, joint: str) -> None:
    """Fig. 5.1, pp. 87-88, B-U4b and TC-U4b: 45 deg, gap and land up to 1/8 in each, back-gouged."""
    weld = {"kind": "full", "groove": "single-bevel", "root": "back-gouge"}
    request = aisc_groove(LRFD, weld, joint=joint, process="GMAW", position="2G")

    def asked(**more: str) -> dict[str, Any]:
        return ask(GROOVE_SIZE, {**request, "weld": {**weld, **more}})

    made = asked(gap="1/8 in", land="1/8 in")["preparation"]
    assert (made["id"], value(made["angle"])) == ("aws-u4b", pytest.approx(45.0))
    assert (value(made["gap"]), value(made["land"])) == pytest.approx((1 / 8, 1 / 8))
    assert "for a gap" in refused(asked(gap="3/16 in"), "aws-u4b")
    assert "for a land" in refused(asked(land="3/16 in"), "aws-u4b")
    assert "angle of 45 deg" in refused(asked(groove_angle="40 deg"), "aws-u4b")


@pytest.mark.parametrize(
    ("detail", "process", "angle", "gap"),
    [
        ("aws-tc-u4a-45", "SMAW", 45, 1 / 4),
        ("aws-tc-u4a-45", "GMAW", 45, 1 / 4),
        ("aws-tc-u4a-30", "SMAW", 30, 3 / 8),
        ("aws-tc-u4a-30-gf", "GMAW", 30, 3 / 16),
    ],
)
def test_tc_u4a(ask: Ask, detail: str, process: str, angle: int, gap: float) -> None:
    """Fig. 5.1, pp. 87-88, TC-U4a on backing: 1/4 in at 45 deg, 3/8 at 30 deg, 3/16 at 30 deg gas-shielded."""
    weld = {"kind": "full", "groove": "single-bevel", "root": "backing", "groove_angle": f"{angle} deg"}
    request = aisc_groove(LRFD, weld, joint="tee", process=process, position="1G", load={"normal": "10 kip/in"})
    answer = ask(GROOVE_SIZE, request)
    [made] = [one for one in answer["preparations"] if one["id"] == detail]
    assert value(made["gap"]) == pytest.approx(gap)
    # AISC 360-22 J2.6: backing left in at a tee in tension wants notch-tough filler metal.
    assert "backing-left-in" in [caution["code"] for caution in answer["cautions"]]


def test_one_side_without_backing(ask: Ask) -> None:
    """MIL-STD-1689A(SH), second-hand: one side without backing counts for 80 % at most; said, not applied."""
    request = {
        "rule_set": "en-1993-1-8-2005-simplified",
        "basis": "full-strength",
        "joint": {"kind": "butt"},
        "parts": [{"thickness": "8 mm", "material": "S355"}] * 2,
        "weld": {"kind": "full", "access": "one-side", "root": "open"},
        "process": "141",
    }
    answer = ask(GROOVE_SIZE, request)
    [caution] = [one for one in answer["cautions"] if one["code"] == "one-side-without-backing"]
    assert "80 %" in caution["text"]
    assert {one["root"] for one in answer["preparations"]} == {"open"}
