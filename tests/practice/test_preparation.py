"""Cut and fill of a groove: against sections drawn as polygons, and against printed handbook weights."""

from math import cos, pi, radians, sin, tan
from typing import Any

import numpy as np
import pytest
import shapely
from scipy.integrate import quad
from tests.practice.drawings import FAR, rounded_half

from truethroat_service.practice import preparation
from truethroat_service.practice.deposition import CARBON_STEEL, STEEL, mass_per_length

INCH = 25.4
ESAB_STEEL = 0.283 * 0.45359237 / INCH**3
"""Density behind the handbook's tables: 0.283 lb/in3, in kg/mm3."""

POUNDS_PER_FOOT = 0.45359237 / 304.8
"""A pound per foot in kg/mm."""


def _curved(d: Any, beta: Any, r: Any) -> tuple[Any, Any]:
    """Setback and area of a J through its four formulas."""
    H = preparation.straight_height(d=d, beta=beta, r=r)
    phi = preparation.root_arc(d=d, beta=beta, r=r, H=H)
    return (
        preparation.curved_setback(beta=beta, r=r, H=H, phi=phi),
        preparation.curved_area(beta=beta, r=r, H=H, phi=phi),
    )


def test_bevel_is_a_triangle() -> None:
    """A straight bevel opens a triangle from the edge: geometry, shapely polygon."""
    draw = np.random.default_rng(1)
    d, beta = draw.uniform(0.5, 40, 1000), draw.uniform(radians(5), radians(60), 1000)
    s = np.asarray(preparation.bevel_setback(d=d, beta=beta))
    zero = np.zeros_like(d)
    # The cut face leaves the root at beta from the line square to the face, and meets the face where shapely says.
    face = shapely.linestrings([[(-1, 0), (FAR, 0)]] * 1000)
    root = np.stack([zero, -d], axis=1)
    cut = shapely.linestrings(np.stack([root, root + FAR * np.stack([np.sin(beta), np.cos(beta)], axis=1)], axis=1))
    met = shapely.get_x(shapely.intersection(face, cut))
    np.testing.assert_allclose(s, met, rtol=1e-9)
    triangle = shapely.polygons(np.stack([np.stack([zero, zero], axis=1), np.stack([met, zero], axis=1), root], axis=1))
    np.testing.assert_allclose(preparation.bevel_area(d=d, beta=beta), shapely.area(triangle), rtol=1e-9)


@pytest.mark.parametrize("shallow", [False, True])
def test_j_is_half_a_rounded_v(shallow: bool) -> None:
    """A J's setback and area are those of half a V rounded at its root, shallower than the arc too: shapely polygon."""
    draw = np.random.default_rng(2)
    for _ in range(60):
        beta, r = draw.uniform(radians(5), radians(45)), draw.uniform(3, 12)
        arc = r * (1 - sin(beta))
        d = draw.uniform(0.1, 0.98) * arc if shallow else arc + draw.uniform(0.1, 25)
        drawn = rounded_half(d, beta, r)
        setback, area = _curved(d, beta, r)
        # 256 segments a quarter stand back from the arc by r/200,000, over a shallow width by the root of that.
        assert setback == pytest.approx(drawn.bounds[2], rel=2e-3 if shallow else 1e-4)
        assert area == pytest.approx(drawn.area, rel=5e-4)
        assert preparation.straight_height(d=d, beta=beta, r=r) == pytest.approx(0.0 if shallow else d - arc, abs=1e-9)


def test_j_by_integrating_its_profile() -> None:
    """The area is the integral of the width over the depth, and the width at the face the setback: scipy quad."""
    draw = np.random.default_rng(3)
    for _ in range(100):
        beta, r, d = draw.uniform(radians(5), radians(50)), draw.uniform(3, 12), draw.uniform(0.5, 40)
        tangent = r * (1 - sin(beta))

        def width(y: float, beta: float = beta, r: float = r, tangent: float = tangent) -> float:
            """Half the groove's width at a height above its root."""
            if y <= tangent:
                return float(np.sqrt(r**2 - (r - y) ** 2))
            return r * cos(beta) + (y - tangent) * tan(beta)

        area, _ = quad(width, 0, d, points=[min(tangent, d)], limit=200)
        assert _curved(d, beta, r) == pytest.approx((width(d), area), rel=1e-6)


def test_j_joins_its_shallow_form() -> None:
    """Where the straight face begins, both forms of the root give one groove: geometry."""
    for degrees in (10, 20, 30):
        beta, r = radians(degrees), 8.0
        join = r * (1 - sin(beta))
        below, above = (_curved(join + step, beta, r) for step in (-1e-9, 1e-9))
        assert below == pytest.approx(above, rel=1e-7)
        assert above[0] == pytest.approx(r * cos(beta), rel=1e-7)


def test_j_of_a_list() -> None:
    """A list with shallow and deep grooves gives its rows."""
    d, beta, r = np.array([2.0, 5.0, 9.0, 30.0]), np.radians([20.0, 20.0, 20.0, 35.0]), np.array([10.0, 10.0, 6.0, 6.0])
    columns = _curved(d, beta, r)
    for row in range(4):
        alone = _curved(float(d[row]), float(beta[row]), float(r[row]))
        assert (columns[0][row], columns[1][row]) == pytest.approx(alone, rel=1e-12)


@pytest.mark.parametrize(("included", "share"), [(20, 0.01), (30, 0.02)])
def test_u_against_the_handbook_short_form(included: float, share: float) -> None:
    """The short form pi r^2/2 + 2 r (d - r) + (d - r)^2 tan is about 1 % low at 20 deg, 2 % at 30 (from memory)."""
    d, r, half = 25.0, 6.0, radians(included / 2)
    short = pi * r**2 / 2 + 2 * r * (d - r) + (d - r) ** 2 * tan(half)
    exact = 2 * _curved(d, half, r)[1]
    assert 1 - short / exact == pytest.approx(share, abs=0.006)


@pytest.mark.parametrize(
    ("inches", "degrees", "pounds"),
    # ESAB (N. America) Filler Metal Data Handbook, section 8, p. 8-9: one bevel triangle, lb/ft as printed. The 45 deg
    # column is the flat fillet as well.
    [
        (1 / 2, 10, 0.075),
        (1 / 2, 15, 0.114),
        (1 / 2, 22.5, 0.176),
        (1 / 2, 30, 0.245),
        (1 / 2, 45, 0.425),
        (3 / 4, 10, 0.169),
        (3 / 4, 15, 0.256),
        (3 / 4, 22.5, 0.396),
        (3 / 4, 30, 0.552),
        (3 / 4, 45, 0.956),
        (1, 10, 0.300),
        (1, 15, 0.456),
        (1, 22.5, 0.703),
        (1, 30, 0.981),
        (1, 45, 1.698),
        (1 / 4, 45, 0.106),
        (3 / 8, 45, 0.239),
    ],
)
def test_printed_weights_per_foot(inches: float, degrees: float, pounds: float) -> None:
    """Weight of one bevel triangle: ESAB Filler Metal Data Handbook p. 8-9."""
    area = preparation.bevel_area(d=inches * INCH, beta=radians(degrees))
    weight = mass_per_length(rho=ESAB_STEEL, A=area) / POUNDS_PER_FOOT
    # Rows recompute within a thousandth of a pound or, in the heavier ones, a quarter of a per cent.
    assert weight == pytest.approx(pounds, rel=0.0025, abs=0.001)


@pytest.mark.parametrize(("leg", "weight"), [(6.35, 0.158), (7.94, 0.247), (12.7, 0.632), (14.29, 0.800)])
def test_printed_weights_per_metre(leg: float, weight: float) -> None:
    """Flat fillets in kg/m: ESAB handbook p. 8-10; the row 14.29 is misprinted 0.671 there and here by hand."""
    area = preparation.bevel_area(d=leg, beta=pi / 4)
    assert mass_per_length(rho=ESAB_STEEL, A=area) * 1000 == pytest.approx(weight, abs=0.002)


def test_mass_of_a_six_millimetre_fillet() -> None:
    """A flat 6 mm fillet weighs 0.1413 kg/m (by hand: 18 mm2 at 7850 kg/m3, common practice, no source)."""
    assert pytest.approx(7850e-9) == STEEL
    assert mass_per_length(rho=STEEL, A=18.0) * 1000 == pytest.approx(0.1413, rel=1e-6)
    assert str(CARBON_STEEL) == "carbon steel at 7850 kg/m3, common practice, no source"


def test_setback_of_a_forty_five_degree_bevel() -> None:
    """At 45 deg the setback equals the depth, at 30 deg it is 0.577 of it (tangents by hand)."""
    assert preparation.bevel_setback(d=8.0, beta=radians(45)) == pytest.approx(8.0)
    assert preparation.bevel_setback(d=8.0, beta=radians(30)) == pytest.approx(4.6188, abs=5e-5)


def test_single_v_of_the_printed_table() -> None:
    """Two bevels of 6 mm at 30 deg on a 3 mm gap with a 2 mm land in 8 mm plate: 45 mm2 of groove (by hand 44.8)."""
    assert 3 * 8 + 2 * preparation.bevel_area(d=6.0, beta=radians(30)) == pytest.approx(44.78, abs=0.01)


def test_root_radii() -> None:
    """J grooves have a root radius of 10 mm, U grooves 6 mm: AWS D1.1 (3/8 and 1/4 in), from memory."""
    assert (preparation.J_ROOT_RADIUS, preparation.U_ROOT_RADIUS) == (10.0, 6.0)
    assert str(preparation.ROOT_RADII).endswith(", from memory")
