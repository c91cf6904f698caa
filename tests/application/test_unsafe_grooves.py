"""Readings of the rules of grooves that would be unsafe the other way, each worked by hand."""

from __future__ import annotations

from dataclasses import replace
from math import cos, radians, sin, sqrt
from typing import Any

import pytest
from tests.application.asked import groove_size
from tests.application.joints import mm

from truethroat_service.application.core.faults import Refused
from truethroat_service.application.groove_size.request import (
    FullWeld,
    GrooveForce,
    GrooveJoint,
    GrooveSizeRequest,
    PartialWeld,
)
from truethroat_service.application.joints.loads import ForceComponents
from truethroat_service.application.joints.metals import Filler, Part
from truethroat_service.application.joints.seams import Penetration

INCH, KIP = 25.4, 4448.2216152605
BY_MACHINE: Any = "mechanized"


def _pull(kips: float, degrees: float) -> GrooveForce:
    """Force in kip on a joint 10 in long."""
    return GrooveForce(kips * KIP, 10.0 * INCH, radians(degrees))


BUTT = GrooveSizeRequest(
    rule_set="aisc-360-22-lrfd",
    joint=GrooveJoint("butt"),
    parts=(Part(1.0 * INCH, "A36"), Part(1.0 * INCH, "A36")),
    weld=PartialWeld("partial", groove="single-bevel"),
    basis="load",
    load=_pull(98.0, 0.0),
    filler=Filler("E70"),
    process="GMAW",
    position="1G",
)
EN = GrooveSizeRequest(
    rule_set="en-1993-1-8-2005-directional",
    joint=GrooveJoint("butt"),
    parts=(Part(10.0, "S355"), Part(10.0, "S355")),
    weld=FullWeld("full"),
    basis="load",
    load=ForceComponents(3550.0, 0.0, 0.0),
)


@pytest.mark.parametrize(
    ("force", "degrees", "stress"),
    [
        # J4.2(a): 1.00 x 0.60 x 36 ksi, less than rupture and than the weld metal's 0.75 x 0.60 x 70.
        (98.0, 0.0, 1.00 * 0.60 * 36.0),
        # Table J2.5, base metal in compression: 0.90 x 36 ksi, less than the weld metal's 0.80 x 0.90 x 70.
        (-157.0, 90.0, 0.90 * 36.0),
        # Table J2.5, tension: the weld metal's 0.80 x 0.60 x 70 ksi is less than the base metal's 0.75 x 58.
        (157.0, 90.0, 0.80 * 0.60 * 70.0),
    ],
)
def test_base_metal_is_checked_over_the_effective_area(force: float, degrees: float, stress: float) -> None:
    """A36 under E70 in AISC 360-22: the weaker of weld and base metal decides the throat, not the whole plate."""
    sized = groove_size(replace(BUTT, load=_pull(force, degrees)))
    assert mm(sized["required"]["throat"]) == pytest.approx(abs(force) / 10.0 / stress * INCH, rel=1e-4)
    assert mm(sized["specify"]["throat"]) >= mm(sized["required"]["throat"])


def test_shear_and_tension_use_a_plate_together() -> None:
    """190 kip at 56 deg in a 1/2 in A36 butt 10 in long: Manual Eq. 9-1 on 0.90 and 1.00 x 0.60 of 36 ksi is over 1."""
    plates = (Part(0.5 * INCH, "A36"), Part(0.5 * INCH, "A36"))
    sized = groove_size(replace(BUTT, parts=plates, weld=FullWeld("full"), load=_pull(190.0, 56.0)))
    n = 19.0 * sin(radians(56.0)) / 0.5 / (0.90 * 36.0)
    v = 19.0 * cos(radians(56.0)) / 0.5 / (0.60 * 36.0)
    assert n**2 + v**4 == pytest.approx(1.88, abs=0.01)
    assert (sized["verdict"], sized["governs"]) == ("cannot-be-reached", "base-metal")
    share = 1.0 / sized["utilisation"]
    assert (n * share) ** 2 + (v * share) ** 4 == pytest.approx(1.0, rel=1e-4)


def test_a_pull_off_part_1_of_a_tee_shears_it() -> None:
    """8 kip/in off a 1/4 in A36 plate: J4.2 allows 1.00 x 0.60 x 36 x 1/4 = 5.4 in shear, J4.1 8.1 in its plane."""
    tee = replace(
        BUTT,
        joint=GrooveJoint("tee"),
        parts=(Part(0.25 * INCH, "A36"), Part(0.75 * INCH, "A36")),
        weld=FullWeld("full"),
        load=_pull(80.0, 90.0),
    )
    sized = groove_size(tee)
    assert (sized["verdict"], sized["governs"]) == ("cannot-be-reached", "base-metal")
    assert sized["utilisation"] == pytest.approx(8.0 / 5.4, rel=1e-4)
    assert "bending-of-part-1" in {caution["code"] for caution in sized["cautions"]}
    stiff = groove_size(replace(tee, joint=GrooveJoint("tee", stiffened_behind=True)))
    assert stiff["verdict"] == "enough"
    assert stiff["utilisation"] == pytest.approx(8.0 / 8.1, rel=1e-4)


def test_a_full_penetration_carries_shear_and_pull_together() -> None:
    """819 kN at 60 deg on 200 x 10 mm of S355: EN 1993-1-1 6.2.1(5) has sqrt(354.6^2 + 3 x 204.75^2) over 355 MPa."""
    sized = groove_size(replace(EN, load=GrooveForce(819e3, 200.0, radians(60.0))))
    sigma, tau = 819e3 * sin(radians(60.0)) / 2000.0, 819e3 * cos(radians(60.0)) / 2000.0
    assert sized["verdict"] == "cannot-be-reached"
    assert sized["utilisation"] >= sqrt(sigma**2 + 3.0 * tau**2) / 355.0 > 1.4


@pytest.mark.parametrize("grades", [("S355", "S460N"), ("S460N", "S355"), ("S355", "S355")])
def test_a_stronger_second_plate_makes_no_smaller_groove(grades: tuple[str, str]) -> None:
    """EN 1993-1-8 4.5.3.2(6), (7): 4000 N/mm of pull against 0.9 x 490 MPa / 1.25, the lower grade's."""
    asked = replace(
        EN,
        parts=(Part(20.0, grades[0]), Part(20.0, grades[1])),
        weld=PartialWeld("partial", groove="double-v"),
        load=ForceComponents(4000.0, 0.0, 0.0),
    )
    assert mm(groove_size(asked)["required"]["throat"]) == pytest.approx(4000.0 * 1.25 / (0.9 * 490.0))


def test_no_preparation_is_no_weld() -> None:
    """AWS D1.1 details no full penetration of a 1/2 in butt from one side by GMAW without backing a square edge."""
    plates = (Part(0.5 * INCH, "A36"), Part(0.5 * INCH, "A36"))
    asked: Any = replace(BUTT, parts=plates, weld=FullWeld("full", access="one-side"), basis="full-strength", load=None)
    sized = groove_size(asked)
    assert sized["preparation"] is None
    assert (sized["verdict"], sized["governs"], sized["specify"]) == ("cannot-be-reached", "preparation", None)


@pytest.mark.parametrize("root_pass", [None, BY_MACHINE])
def test_proven_penetration_counts_for_a_root_pass_that_no_hand_makes(root_pass: Any) -> None:
    """AISC 360-22 J2.1a: 1/16 in proven stands in for the 1/8 in of a vertical bevel where a machine makes the root.

    9.8 kip/in take 9.8/(0.60 x 36) = 0.454 in of A36: 0.454 + 1/8 = 0.579 in, or 0.454 - 1/16 = 0.391 in, to a 1/16.
    """
    fused = Penetration(1 / 16 * INCH, "proven")
    weld = PartialWeld("partial", groove="single-bevel", groove_angle=radians(45.0), penetration=fused)
    sized = groove_size(replace(BUTT, weld=replace(weld, depth_step=INCH / 16), position="3G", root_pass=root_pass))
    by_hand = 9.8 / 21.6 + (1 / 8 if root_pass is None else -1 / 16)
    assert by_hand <= mm(sized["specify"]["depth"]) / INCH < by_hand + 1 / 16
    counted = "penetration-not-counted" not in {caution["code"] for caution in sized["cautions"]}
    assert counted == (root_pass is not None)


def test_a_stick_welder_makes_no_mechanized_root() -> None:
    """SMAW is welding by hand (AWS A3.0), so it is not asked for with a root pass that a machine makes."""
    with pytest.raises(Refused, match="SMAW is welding by hand"):
        groove_size(replace(BUTT, process="SMAW", root_pass=BY_MACHINE))
