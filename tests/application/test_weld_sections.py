"""Areas of weld sections against the same sections drawn as polygons: shapely, on random sizes."""

from __future__ import annotations

from math import cos, pi, radians, sin, tan

import numpy as np
import pytest
import shapely
from shapely import Polygon
from shapely.affinity import rotate, scale, translate

from truethroat_service.application.core.faults import Faults
from truethroat_service.application.core.units import Units
from truethroat_service.application.joints.weld_sections import (
    BackGouge,
    Cap,
    CornerWeld,
    Fillet,
    FlareWeld,
    GrooveKind,
    GrooveWeld,
    Reinforcement,
    Shape,
    check,
    measured,
)

FAR = 500.0
TURNS = 20
GROOVES: tuple[GrooveKind, ...] = (
    "single-bevel", "double-bevel", "single-v", "double-v", "single-j", "double-j", "single-u", "double-u",
)  # fmt: skip


def area(shape: Shape) -> float:
    """Area of a shape that fits together; its parts add up to it."""
    faults = Faults(Units("metric"))
    check(shape, "#", faults)
    assert faults == []
    made = measured(shape)
    assert sum(part for _, part in made.parts) == pytest.approx(made.area, rel=1e-12)
    return made.area


def parabola(width: float, height: float) -> Polygon:
    """Segment of a parabola on the first axis, its middle at the origin."""
    x = np.linspace(-width / 2, width / 2, 2001)
    return Polygon(np.stack([x, height * (1 - (2 * x / width) ** 2)], axis=1))


def opened(form: str, depth: float, beta: float, radius: float) -> Polygon:
    """What is cut off one edge, its root at the origin, the plate to its left: half a V, rounded at its root or not."""
    if form in ("v", "bevel"):
        return Polygon([(0, 0), (depth * tan(beta), depth), (0, depth)])
    wedge = Polygon([(0, 0), (FAR * tan(beta), FAR), (-FAR * tan(beta), FAR)])
    rounded = wedge.buffer(-radius, join_style="mitre", mitre_limit=200).buffer(radius, quad_segs=512)
    lowest = rounded.bounds[1]
    half = rounded.intersection(shapely.box(0, lowest, FAR, lowest + depth))
    return translate(half, 0, -lowest)


def drawn(shape: GrooveWeld, beta: float) -> float:
    """Area of a groove's polygon: cut edges on either side of a strip as wide as the gap."""
    form = shape.kind.rpartition("-")[2]
    depths = shape.depths or (shape.depth,)
    t, g = shape.thickness, shape.root_gap
    through = shape.land is not None
    pieces = [shapely.box(0, 0 if through else t - (depths[0] or 0), g, t)] if g else []
    if not through and len(depths) == 2 and g:
        pieces.append(shapely.box(0, 0, g, depths[1] or 0))
    for side, depth in enumerate(depths):
        edge = translate(opened(form, depth or 0.0, beta, shape.root_radius or 0.0), g, t - (depth or 0.0))
        faces = [edge]
        if form in ("v", "u"):
            faces.append(translate(scale(edge, -1, 1, origin=(0, 0)), g, 0))
        pieces += [scale(face, 1, -1, origin=(0, t / 2)) if side else face for face in faces]
    return float(shapely.union_all(pieces).area)


@pytest.mark.parametrize("kind", GROOVES)
@pytest.mark.parametrize("through", [False, True])
def test_grooves(kind: GrooveKind, through: bool) -> None:
    """Every groove, through with its land or partial, with its gap as deep as it is filled."""
    draw = np.random.default_rng(7)
    double, both, curved = kind.startswith("double"), kind.endswith(("-v", "-u")), kind.endswith(("-j", "-u"))
    for _ in range(TURNS):
        depths = [float(depth) for depth in draw.uniform(4, 16, 2 if double else 1)]
        land = float(draw.uniform(0.5, 4))
        beta = float(draw.uniform(radians(8), radians(35)))
        shape = GrooveWeld(
            kind,
            sum(depths) + land,
            angle=2 * beta if both else beta,
            root_gap=float(draw.uniform(0, 5)),
            land=land if through else None,
            depth=None if double else depths[0],
            depths=(depths[0], depths[1]) if double else None,
            root_radius=float(draw.uniform(3, 9)) if curved else None,
        )
        assert area(shape) == pytest.approx(drawn(shape, beta), rel=2e-4)


@pytest.mark.parametrize("kind", GROOVES)
def test_a_groove_without_depth_goes_through_to_its_land(kind: GrooveKind) -> None:
    """Without a depth it is cut to the land, from two sides by halves."""
    radius = 6.0 if kind.endswith(("-j", "-u")) else None
    plain = GrooveWeld(kind, 20.0, angle=radians(30), root_gap=2.0, land=2.0, root_radius=radius)
    told = {"depths": (9.0, 9.0)} if kind.startswith("double") else {"depth": 18.0}
    assert area(plain) == pytest.approx(
        area(GrooveWeld(kind, 20.0, angle=radians(30), root_gap=2.0, land=2.0, root_radius=radius, **told))  # type: ignore[arg-type]
    )


def test_caps_and_gouge() -> None:
    """Caps sit on what opens: parabolas over the drawn width of the groove, and one in the gouge."""
    draw = np.random.default_rng(8)
    for _ in range(TURNS):
        t, g, f = 15.0, float(draw.uniform(1, 5)), float(draw.uniform(0, 3))
        half = float(draw.uniform(radians(20), radians(40)))
        up, over, down, width = (float(draw.uniform(0.5, 3)) for _ in range(4))
        bare = GrooveWeld("single-v", t, angle=2 * half, root_gap=g, land=f)
        groove = Polygon([(0, 0), (g, 0), (g, f), (g + (t - f) * tan(half), t), (-(t - f) * tan(half), t), (0, f)])
        wide = groove.bounds[2] - groove.bounds[0]
        shape = GrooveWeld(
            "single-v",
            t,
            angle=2 * half,
            root_gap=g,
            land=f,
            reinforcement=Reinforcement(Cap(up, overlap=over), Cap(down, width=width + 4)),
            back_gouge=BackGouge(5.0, 9.0),
        )
        expected = groove.area + parabola(wide + over, up).area + parabola(width + 4, down).area
        assert area(bare) == pytest.approx(groove.area)
        assert area(shape) == pytest.approx(expected + parabola(9.0, 5.0).area, rel=1e-5)


def test_caps_of_both_sides() -> None:
    """The far side of a double bevel opens as its own depth says; that of a single one only by the gap."""
    caps = Reinforcement(Cap(2.0), Cap(1.0))
    double = GrooveWeld("double-bevel", 20.0, angle=pi / 4, root_gap=2.0, depths=(12.0, 6.0), land=2.0)
    bare = area(double)
    capped = GrooveWeld("double-bevel", 20.0, pi / 4, 2.0, 2.0, depths=(12.0, 6.0), reinforcement=caps)
    # 2 + 12 and 2 + 6 wide, two thirds of the box each (Archimedes).
    assert area(capped) - bare == pytest.approx(2 / 3 * (14 * 2 + 8 * 1))
    single = GrooveWeld("single-bevel", 20.0, pi / 4, 2.0, 2.0, reinforcement=caps)
    bare = area(GrooveWeld("single-bevel", 20.0, pi / 4, 2.0, 2.0))
    assert area(single) - bare == pytest.approx(2 / 3 * (20 * 2 + 2 * 1))


def test_fillets() -> None:
    """Triangle between the plates, and a parabola on its face or off it."""
    draw = np.random.default_rng(9)
    for turn in range(TURNS):
        z_1, z_2 = (float(leg) for leg in draw.uniform(4, 15, 2))
        psi, face = float(draw.uniform(radians(35), radians(145))), float(draw.uniform(0.1, 1.0))
        plain = Polygon([(0, 0), (z_1, 0), (z_2 * cos(psi), z_2 * sin(psi))])
        toes = float(np.hypot(z_1 - z_2 * cos(psi), z_2 * sin(psi)))
        added = parabola(toes, face).area
        more = {"convexity": face} if turn % 2 else {"hollow": face}
        assert area(Fillet("fillet", (z_1, z_2), angle=psi)) == pytest.approx(plain.area)
        expected = plain.area + (added if turn % 2 else -added)
        assert area(Fillet("fillet", (z_1, z_2), angle=psi, **more)) == pytest.approx(expected, rel=1e-5)  # type: ignore[arg-type]


def test_a_fillet_by_its_throat() -> None:
    """An equal-leg fillet drawn about its throat: the face is square to it, half the angle from each plate."""
    for degrees in (60, 90, 120):
        half = radians(degrees) / 2
        face = Polygon([(0, 0), (5 * tan(half), 5), (-5 * tan(half), 5)])
        assert area(Fillet("fillet", throat=5.0, angle=2 * half)) == pytest.approx(face.area)


@pytest.mark.parametrize("kind", ["flare-bevel", "flare-v"])
def test_flares(kind: str) -> None:
    """A square of the radius without the quarter disc, once or twice, and the gap between."""
    draw = np.random.default_rng(10)
    for _ in range(TURNS):
        r, g, h = (float(draw.uniform(low, high)) for low, high in ((3, 20), (0, 4), (0.5, 3)))
        corner = shapely.box(0, 0, r, r).difference(shapely.Point(r, 0).buffer(r, quad_segs=2000))
        edges = 1 if kind == "flare-bevel" else 2
        expected = edges * corner.area + g * r + parabola(edges * r + g, h).area
        shape = FlareWeld(kind, r, g, Reinforcement(Cap(h)))  # type: ignore[arg-type]
        assert area(shape) == pytest.approx(expected, rel=1e-5)


def corner(u: float, v: float, gamma: float) -> tuple[Polygon, Polygon]:
    """Notch of an outside corner to its outer planes, and all that lies inside these planes; root at the origin."""
    first, second = np.array([0.0, 1.0]), np.array([sin(gamma), cos(gamma)])
    sharp = np.linalg.solve(np.stack([first, second]), np.array([u, v]))
    notch = Polygon([(0, 0), tuple(u * first), tuple(sharp), tuple(v * second)])
    inside = shapely.box(-FAR, -FAR, FAR, u).intersection(
        rotate(shapely.box(-FAR, -FAR, FAR, v), -np.degrees(gamma), origin=(0, 0))
    )
    return notch, inside


@pytest.mark.parametrize("fill", ["flat", "sharp", "rounded"])
def test_corners(fill: str) -> None:
    """Open corners at any angle: to the toes, to the outer planes, or to a blend of them."""
    draw = np.random.default_rng(11)
    done = 0
    while done < TURNS:
        u, v = (float(side) for side in draw.uniform(4, 15, 2))
        gamma = float(draw.uniform(radians(40), radians(140)))
        room = min((v - u * cos(gamma)) / sin(gamma), (u - v * cos(gamma)) / sin(gamma))
        if room < 0.5:
            continue
        done += 1
        notch, inside = corner(u, v, gamma)
        radius = None
        expected = notch.area
        if fill == "flat":
            expected = Polygon([(0, 0), (0, u), (v * sin(gamma), v * cos(gamma))]).area
        elif fill == "rounded":
            radius = 0.9 * room / tan(gamma / 2)
            blended = inside.buffer(-radius, join_style="mitre").buffer(radius, quad_segs=1000)
            expected = notch.intersection(blended).area
        shape = CornerWeld("open-corner", (u, v), fill, pi - gamma, radius=radius)  # type: ignore[arg-type]
        assert area(shape) == pytest.approx(expected, rel=1e-4)


def test_half_open_corners() -> None:
    """Part 2 covers 3 of the 9 mm of part 1: a notch of 6 by 5 mm, flat or full, and a crown on the flat one."""
    covered = CornerWeld("half-open-corner", (9.0, 5.0), overlap=3.0)
    assert area(covered) == pytest.approx(15.0)
    assert area(CornerWeld("half-open-corner", (9.0, 5.0), "sharp", overlap=3.0)) == pytest.approx(30.0)
    crowned = CornerWeld("half-open-corner", (9.0, 5.0), overlap=3.0, crown=1.0)
    assert area(crowned) == pytest.approx(15.0 + parabola(float(np.hypot(6, 5)), 1.0).area, rel=1e-5)
