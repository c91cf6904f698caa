"""Section geometry against sections drawn as polygons.

Source of every check, unless it says otherwise: geometry, shapely polygon. A section is drawn from its plates; its
metal is a polygon whose outer planes and face are drawn long, not cut at the toes; and the distance of the fused point
to the polygon's edge is measured. Thicknesses, legs and angles are drawn unequal.
"""

from collections.abc import Callable
from typing import Any

import numpy as np
import pytest
import shapely
from hypothesis import given
from hypothesis import strategies as st
from numpy.typing import NDArray
from shapely import LineString, Point, Polygon
from tests.examples import examples

from truethroat_service.engine.section import (
    blend_clearance,
    clearance_for_blend,
    corner_turn,
    equal_leg,
    equal_leg_throat,
    face_width,
    fillet_throat,
    free_radius,
    half_open_clearance,
    half_open_toe_line,
    largest_radius,
    nearer_toe,
    open_corner_clearance,
    open_corner_toe_line,
    tangent_length,
)

Rows = NDArray[np.float64]

SECTIONS = 3000
FAR = 2000.0
"""Length, mm, to which planes are drawn: well beyond any section here."""

ARC_POINTS = 600


@pytest.fixture
def draw(request: pytest.FixtureRequest) -> Callable[[float, float], Rows]:
    """Give a test a source of random columns whose seed is its own name."""
    source = np.random.default_rng(list(request.node.name.encode()))
    return lambda low, high: source.uniform(low, high, SECTIONS)


def _at(angle: Rows) -> Rows:
    """Unit vectors at an angle from the first axis, one a row."""
    return np.stack([np.cos(angle), np.sin(angle)], axis=-1)


def _scale(length: Rows, direction: Rows) -> Rows:
    """Vectors of a length in a direction, row by row."""
    return length[:, np.newaxis] * direction


def _lines(through: Rows, direction: Rows) -> Any:
    """Planes, drawn long both ways."""
    return shapely.linestrings(np.stack([through - FAR * direction, through + FAR * direction], axis=1))


def _corner(u: Rows, v: Rows, psi: Rows) -> tuple[Rows, Rows, Rows]:
    """Sharp outer corner of two plates at ``psi`` about a fused point at the origin, and the way each plate runs off.

    Part 1 runs along the first axis and its outer plane lies ``u`` below the origin; part 2 leaves at ``psi`` and its
    outer plane lies ``v`` on the far side. The corner is where shapely finds the two planes to cross.
    """
    along_1, along_2 = _at(np.zeros_like(psi)), _at(psi)
    outer_1 = _lines(_scale(u, _at(np.full_like(psi, -np.pi / 2))), along_1)
    outer_2 = _lines(_scale(v, _at(psi + np.pi / 2)), along_2)
    crossing = shapely.intersection(outer_1, outer_2)
    return np.stack([shapely.get_x(crossing), shapely.get_y(crossing)], axis=-1), along_1, along_2


def _sharp(u: Rows, v: Rows, psi: Rows) -> Any:
    """Metal of a corner filled out to its sharp edge."""
    corner, along_1, along_2 = _corner(u, v, psi)
    return shapely.polygons(np.stack([corner, corner + FAR * along_1, corner + FAR * along_2], axis=1))


def _blended(u: Rows, v: Rows, psi: Rows, R: Rows) -> Any:
    """Metal of a corner whose edge is an arc of radius ``R``, tangent to both outer planes, by true points of it."""
    corner, along_1, along_2 = _corner(u, v, psi)
    # The centre lies on the bisector, R from either plane; the arc runs from one plane's normal to the other's.
    centre = corner + _scale(R / np.sin(psi / 2), _at(psi / 2))
    angles = np.linspace(psi + np.pi / 2, np.full_like(psi, 3 * np.pi / 2), ARC_POINTS, axis=1)
    arc = centre[:, np.newaxis, :] + R[:, np.newaxis, np.newaxis] * np.stack([np.cos(angles), np.sin(angles)], axis=-1)
    ends = [(corner + FAR * along)[:, np.newaxis, :] for along in (along_1, along_2)]
    return shapely.polygons(np.concatenate([arc, ends[0], ends[1]], axis=1))


def _depth(metal: Any, points: Any = None) -> Rows:
    """Distance of a point (the origin) to the edge of the metal, negative where it lies outside."""
    points = shapely.points(0.0, 0.0) if points is None else points
    distance: Rows = shapely.distance(points, shapely.boundary(metal))
    return np.where(shapely.covers(metal, points), distance, -distance)


def _blend(u: Any, v: Any, gamma: Any, R: Any) -> Any:
    """Clearance under a blend, by the two formulas in turn."""
    return blend_clearance(u=u, v=v, gamma=gamma, R=R, R_0=free_radius(u=u, v=v, gamma=gamma))


def _polyline_error(R: Rows) -> Rows:
    """By how much an arc drawn in ``ARC_POINTS`` points stands back from the true one."""
    return R * (np.pi / (ARC_POINTS - 1)) ** 2 / 8 + 1e-8


# Fillet


def test_fillet_throat_is_distance_to_the_long_face(draw: Callable[[float, float], Rows]) -> None:
    """A fillet's throat is the distance of its root to the face drawn long through both toes."""
    z_1, z_2, psi = draw(1, 40), draw(1, 40), draw(np.radians(20), np.radians(160))
    toe_1, toe_2 = _scale(z_1, _at(0 * psi)), _scale(z_2, _at(psi))
    face = (toe_2 - toe_1) / np.linalg.norm(toe_2 - toe_1, axis=1, keepdims=True)
    far_behind = -FAR * _at(psi / 2)
    metal = shapely.polygons(np.stack([toe_1 - FAR * face, toe_2 + FAR * face, far_behind], axis=1))
    np.testing.assert_allclose(_depth(metal), fillet_throat(z_1=z_1, z_2=z_2, psi=psi), rtol=1e-8)


def test_equal_leg_throat_is_height_of_the_drawn_triangle(draw: Callable[[float, float], Rows]) -> None:
    """An equal-leg fillet's throat is the height of the triangle of root and toes: twice its area over its face."""
    z, psi = draw(1, 40), draw(np.radians(20), np.radians(160))
    toes = np.stack([_scale(z, _at(0 * psi)), _scale(z, _at(psi))], axis=1)
    triangle = shapely.polygons(np.concatenate([np.zeros((SECTIONS, 1, 2)), toes], axis=1))
    height = 2 * shapely.area(triangle) / shapely.length(shapely.linestrings(toes))
    np.testing.assert_allclose(height, equal_leg_throat(z=z, psi=psi), rtol=1e-10)


def test_equal_leg_gives_the_throat_asked(draw: Callable[[float, float], Rows]) -> None:
    """A fillet drawn with the leg found has the throat asked, and its toes lie that leg from the root."""
    a, psi = draw(1, 20), draw(np.radians(20), np.radians(160))
    z = equal_leg(a=a, psi=psi)
    toe_1, toe_2 = _scale(z, _at(0 * psi)), _scale(z, _at(psi))
    face = shapely.linestrings(np.stack([toe_1, toe_2], axis=1))
    np.testing.assert_allclose(shapely.distance(shapely.points(0.0, 0.0), face), a, rtol=1e-9)


@pytest.mark.parametrize(("z_1", "z_2", "throat"), [(6.0, 8.0, 4.8), (10.0, 10.0, 7.071), (3.0, 4.0, 2.4)])
def test_square_fillet_by_hand(z_1: float, z_2: float, throat: float) -> None:
    """Throat at 90 deg is z1 z2 / sqrt(z1^2 + z2^2): AISC 360-22 J2.2a; 6 by 8 gives 4.8 (3-4-5 triangle)."""
    assert fillet_throat(z_1=z_1, z_2=z_2, psi=np.pi / 2) == pytest.approx(throat, rel=1e-4)


@pytest.mark.parametrize(
    ("degrees", "factor"),
    # AWS D1.1, equivalent leg factors of skewed fillets (from memory, two digits; 95 deg is remembered 0.013 low).
    list(
        zip(
            range(60, 140, 5),
            (0.71, 0.76, 0.81, 0.86, 0.91, 0.96, 1.0, 1.03, 1.08, 1.12, 1.16, 1.19, 1.23, 1.25, 1.28, 1.31),
            strict=True,
        )
    ),
)
def test_skewed_leg_factors(degrees: int, factor: float) -> None:
    """Leg for the throat of a square fillet, measured square to the other plate: table of AWS D1.1, from memory."""
    psi = np.radians(degrees)
    leg_along_the_face = equal_leg(a=equal_leg_throat(z=1.0, psi=np.pi / 2), psi=psi)
    assert leg_along_the_face * np.sin(psi) == pytest.approx(factor, abs=0.015)


# Flat seams


def test_nearer_toe_caps_a_crowned_seam(draw: Callable[[float, float], Rows]) -> None:
    """Under a crown of any height, the fused point of a flat seam is no deeper than its distance to the nearer toe."""
    u, w, height = draw(0.5, 20), draw(0, 15), draw(0, 40)
    # The plate's face runs off to the right at the toe (w, 0); the crown stands on it, square, and is drawn long.
    crown = np.array([[0, 0], [0, 0], [1, 0], [1, 0], [0, 0], [0, 0]], dtype=float)
    fixed = np.array([[FAR, -FAR], [FAR, 0], [0, 0], [0, 0], [-FAR, 0], [-FAR, -FAR]])
    rises = np.array([[0, 0], [0, 0], [0, 0], [0, 1], [0, 1], [0, 0]], dtype=float)
    metal = shapely.polygons(fixed + w[:, None, None] * crown + height[:, None, None] * rises)
    measured = _depth(metal, shapely.points(np.zeros_like(u), -u))
    np.testing.assert_allclose(measured, np.minimum(u + height, nearer_toe(u=u, w=w)), rtol=1e-9)


def test_a_face_so_wide_reaches_its_throat(draw: Callable[[float, float], Rows]) -> None:
    """Toes half that width from the root line are as far from the fused point as the throat (Pythagoras)."""
    u, throat = draw(0.5, 20), draw(20.5, 40)
    np.testing.assert_allclose(np.hypot(u, face_width(a=throat, u=u) / 2), throat, rtol=1e-9)


# Corners


def test_corner_turn_is_the_angle_between_outward_normals(draw: Callable[[float, float], Rows]) -> None:
    """The outer face turns through the angle between the plates' outward normals."""
    psi = draw(np.radians(15), np.radians(165))
    normal_1, normal_2 = _at(np.full_like(psi, -np.pi / 2)), _at(psi + np.pi / 2)
    turn = np.arccos(np.sum(normal_1 * normal_2, axis=1))
    np.testing.assert_allclose(corner_turn(psi=psi), turn, rtol=1e-9)


def test_sharp_corner_keeps_the_nearer_plane(draw: Callable[[float, float], Rows]) -> None:
    """Filled out to its sharp edge, a corner of unequal parts at any angle keeps the distance to its nearer plane."""
    u, v, psi = draw(0.5, 40), draw(0.5, 40), draw(np.radians(30), np.radians(150))
    expected = _blend(u, v, corner_turn(psi=psi), np.zeros_like(u))
    np.testing.assert_allclose(_depth(_sharp(u, v, psi)), expected, rtol=1e-8)


def test_open_corner_toe_line_is_distance_to_the_long_face(draw: Callable[[float, float], Rows]) -> None:
    """An open corner finished flat keeps the distance of its root to the face drawn long through both toes.

    The root is where the inner edges meet; each part ends square there, so its toe is the foot of the root on its
    outer plane.
    """
    t_1, t_2, psi = draw(0.5, 40), draw(0.5, 40), draw(np.radians(30), np.radians(150))
    corner, along_1, along_2 = _corner(t_1, t_2, psi)
    root = shapely.points(0.0, 0.0)
    planes = [_lines(corner, along) for along in (along_1, along_2)]
    feet = [shapely.line_interpolate_point(plane, shapely.line_locate_point(plane, root)) for plane in planes]
    toes = [np.stack([shapely.get_x(foot), shapely.get_y(foot)], axis=-1) for foot in feet]
    across = toes[1] - toes[0]
    face = _lines(toes[0], across / np.linalg.norm(across, axis=1, keepdims=True))
    throat = open_corner_toe_line(t_1=t_1, t_2=t_2, gamma=corner_turn(psi=psi))
    np.testing.assert_allclose(shapely.distance(root, face), throat, rtol=1e-7)


def test_open_corner_ground_flat_as_cut_metal(draw: Callable[[float, float], Rows]) -> None:
    """Where the foot falls between the toes, the metal cut flat between them and its planes gives the same throat."""
    t_1, t_2, psi = draw(2, 20), draw(2, 20), draw(np.radians(40), np.radians(110))
    toe_1, toe_2 = _scale(t_1, _at(np.full_like(psi, -np.pi / 2))), _scale(t_2, _at(psi + np.pi / 2))
    edge = np.stack([toe_1, toe_1 + FAR * _at(0 * psi), toe_2 + FAR * _at(psi), toe_2], axis=1)
    metal = shapely.polygons(edge)
    between = (np.sum(toe_1 * (toe_2 - toe_1), axis=1) < 0) & (np.sum(toe_2 * (toe_2 - toe_1), axis=1) > 0)
    assert between.mean() > 0.5
    throat = open_corner_toe_line(t_1=t_1, t_2=t_2, gamma=corner_turn(psi=psi))
    np.testing.assert_allclose(_depth(metal)[between], throat[between], rtol=1e-8)


def test_open_corner_penetration_runs_along_the_throat_line(draw: Callable[[float, float], Rows]) -> None:
    """Penetration moves the fused point back from the root along the throat line: to the face and to both planes."""
    t_1, t_2, p = draw(2, 20), draw(2, 20), draw(0, 5)
    psi = draw(np.radians(40), np.radians(140))
    gamma = corner_turn(psi=psi)
    a_toes = open_corner_toe_line(t_1=t_1, t_2=t_2, gamma=gamma)
    toe_1, toe_2 = _scale(t_1, _at(np.full_like(psi, -np.pi / 2))), _scale(t_2, _at(psi + np.pi / 2))
    across = (toe_2 - toe_1) / np.linalg.norm(toe_2 - toe_1, axis=1, keepdims=True)
    face, root = _lines(toe_1, across), shapely.points(0.0, 0.0)
    foot = shapely.line_interpolate_point(face, shapely.line_locate_point(face, root))
    to_face = np.stack([shapely.get_x(foot), shapely.get_y(foot)], axis=-1)
    back = -to_face / np.linalg.norm(to_face, axis=1, keepdims=True)
    fused = shapely.points(_scale(p, back))
    for thickness, toe, along in ((t_1, toe_1, _at(0 * psi)), (t_2, toe_2, _at(psi))):
        u = open_corner_clearance(t_1=thickness, p=p, a_toes=a_toes)
        np.testing.assert_allclose(shapely.distance(fused, _lines(toe, along)), np.abs(u), rtol=1e-7, atol=1e-9)
    np.testing.assert_allclose(shapely.distance(fused, face), a_toes + p, rtol=1e-7)


def _half_open(t_1: Rows, t_2: Rows, o: Rows, p: Rows, psi: Rows) -> tuple[Any, Any, Rows, Rows]:
    """Draw a half-open corner: fused point, outer plane of part 1, and both toes.

    Part 2's inner face is the second axis; part 1 comes from the right, its end cut to lie on that face. The origin is
    the inner corner. Part 2 ends square at the root, ``o`` up the face, and the fused point lies ``p`` below the root.
    """
    up = np.stack([0 * o, np.ones_like(o)], axis=-1)
    # Part 1 leaves at psi from part 2, which runs off downwards from the inner corner.
    along_1 = _at(-np.pi / 2 + psi)
    # Its outer plane is its inner one moved by its thickness, square to itself, towards the top.
    outer = _lines(_scale(t_1, _at(psi)), along_1)
    end = shapely.intersection(outer, _lines(0 * up, up))
    toe_1 = np.stack([shapely.get_x(end), shapely.get_y(end)], axis=-1)
    toe_2 = _scale(o, up) - np.stack([t_2, 0 * t_2], axis=-1)
    return shapely.points(_scale(o - p, up)), outer, toe_1, toe_2


def test_half_open_clearance_is_distance_to_the_outer_plane(draw: Callable[[float, float], Rows]) -> None:
    """A half-open corner's fused point keeps part 1's outer plane at the distance drawn, at any angle of the plates."""
    t_1, t_2, o_share, p_share = draw(2, 30), draw(2, 30), draw(0, 1), draw(0, 1)
    psi = draw(np.radians(40), np.radians(140))
    o = o_share * t_1 / np.sin(psi)
    p = p_share * o
    fused, outer, _, _ = _half_open(t_1, t_2, o, p, psi)
    expected = half_open_clearance(t_1=t_1, o=o, p=p, psi=psi)
    np.testing.assert_allclose(shapely.distance(fused, outer), expected, rtol=1e-8, atol=1e-9)


def test_half_open_toe_line_is_distance_to_the_long_face(draw: Callable[[float, float], Rows]) -> None:
    """A half-open corner finished flat keeps its fused point as far off the face drawn long through its toes."""
    t_1, t_2, o_share, p_share = draw(2, 30), draw(2, 30), draw(0, 0.98), draw(0, 1)
    psi = draw(np.radians(40), np.radians(140))
    o = o_share * t_1 / np.sin(psi)
    p = p_share * o
    fused, _, toe_1, toe_2 = _half_open(t_1, t_2, o, p, psi)
    face = (toe_2 - toe_1) / np.linalg.norm(toe_2 - toe_1, axis=1, keepdims=True)
    expected = half_open_toe_line(t_1=t_1, t_2=t_2, o=o, p=p, psi=psi)
    np.testing.assert_allclose(shapely.distance(fused, _lines(toe_1, face)), expected, rtol=1e-7)


def test_half_open_section_cut_flat(draw: Callable[[float, float], Rows]) -> None:
    """The least of plane, plane and face is the depth of the fused point in the half-open metal cut flat."""
    t_1, t_2, o_share, p_share = draw(4, 30), draw(4, 30), draw(0.05, 0.9), draw(0, 0.9)
    psi = draw(np.radians(60), np.radians(120))
    o = o_share * t_1 / np.sin(psi)
    p = p_share * o
    fused, outer, toe_1, toe_2 = _half_open(t_1, t_2, o, p, psi)
    left = shapely.linestrings(np.stack([toe_2 + np.array([0, FAR]), toe_2 - np.array([0, FAR])], axis=1))
    face = (toe_2 - toe_1) / np.linalg.norm(toe_2 - toe_1, axis=1, keepdims=True)
    long = _lines(toe_1, face)
    measured = np.min([shapely.distance(fused, plane) for plane in (outer, left, long)], axis=0)
    u = half_open_clearance(t_1=t_1, o=o, p=p, psi=psi)
    expected = np.minimum(np.minimum(u, t_2), half_open_toe_line(t_1=t_1, t_2=t_2, o=o, p=p, psi=psi))
    np.testing.assert_allclose(measured, expected, rtol=1e-7)


@pytest.mark.parametrize(("radius", "sign"), [("small", 1), ("large", 1), ("any", 0)])
def test_blend_is_depth_in_the_rounded_metal(draw: Callable[[float, float], Rows], radius: str, sign: int) -> None:
    """Under a blend, small or large, the throat is the depth of the fused point in the metal drawn with its arc.

    Once the arc has passed the fused point the clearance is negative, as is the depth of a point outside.
    """
    u, v, psi = draw(1, 30), draw(1, 30), draw(np.radians(40), np.radians(150))
    gamma = corner_turn(psi=psi)
    free = free_radius(u=u, v=v, gamma=gamma)
    R = {"small": draw(0.02, 1) * free, "large": free * draw(1, 1.1), "any": draw(0.1, 80)}[radius]
    measured = _depth(_blended(u, v, psi, R))
    assert not sign or np.all(measured > 0)
    np.testing.assert_array_less(np.abs(measured - _blend(u, v, gamma, R)), _polyline_error(R))


def test_blend_by_opening_the_sharp_metal(draw: Callable[[float, float], Rows]) -> None:
    """The same, the rounded metal now made by shrinking the sharp one by the radius and growing it again."""
    u, v, psi, R = (
        column[:250] for column in (draw(2, 20), draw(2, 20), draw(np.radians(50), np.radians(140)), draw(1, 30))
    )
    metal = _sharp(u, v, psi)
    rounded = shapely.buffer(shapely.buffer(metal, -R, join_style="mitre", mitre_limit=100), R, quad_segs=400)
    difference = _depth(rounded) - _blend(u, v, corner_turn(psi=psi), R)
    assert np.max(np.abs(difference)) < 1e-3


def test_free_radius_is_where_the_arc_begins_to_cost(draw: Callable[[float, float], Rows]) -> None:
    """Up to the free radius the rounded metal keeps the sharp one's throat; a twentieth beyond, it has lost some."""
    u, v, psi = draw(1, 30), draw(1, 30), draw(np.radians(50), np.radians(140))
    free = free_radius(u=u, v=v, gamma=corner_turn(psi=psi))
    sharp = _depth(_sharp(u, v, psi))
    at, beyond = _depth(_blended(u, v, psi, free)), _depth(_blended(u, v, psi, free * 1.05))
    np.testing.assert_array_less(np.abs(at - sharp), _polyline_error(free))
    np.testing.assert_array_less(beyond, sharp - 1e-4 * free)


def test_largest_radius_leaves_the_throat_asked(draw: Callable[[float, float], Rows]) -> None:
    """The metal rounded to the largest radius keeps just the throat asked, and loses some of it a hundredth beyond."""
    u, v, share, psi = draw(1, 30), draw(1, 30), draw(0, 1), draw(np.radians(50), np.radians(140))
    q, gamma = share * np.minimum(u, v), corner_turn(psi=psi)
    R = largest_radius(u=u, v=v, q=q, gamma=gamma)
    np.testing.assert_array_less(np.abs(_depth(_blended(u, v, psi, R)) - q), _polyline_error(R))
    assert np.all(_depth(_blended(u, v, psi, R * 1.01)) < q - 1e-4)


def test_largest_radius_without_loss_is_the_free_radius(draw: Callable[[float, float], Rows]) -> None:
    """Asked for all there is, the largest radius is the one that costs nothing."""
    u, v, gamma = draw(1, 30), draw(1, 30), draw(np.radians(30), np.radians(140))
    expected = free_radius(u=u, v=v, gamma=gamma)
    np.testing.assert_allclose(largest_radius(u=u, v=v, q=np.minimum(u, v), gamma=gamma), expected, rtol=1e-9)


def test_clearance_for_blend_keeps_the_throat_at_a_right_angle(draw: Callable[[float, float], Rows]) -> None:
    """A corner drawn at 90 deg with the depth found has, once rounded, just the throat asked."""
    v, share, R = draw(2, 20), draw(0.05, 1), draw(0.5, 40)
    q = share * v
    u = clearance_for_blend(R=R, q=q, v=v)
    square = np.full_like(v, np.pi / 2)
    np.testing.assert_array_less(np.abs(_depth(_blended(u, v, square, R)) - q), _polyline_error(R))
    assert np.all(u >= q - 1e-12)
    arc_counts = v < R
    assert np.all(_depth(_blended(u * 0.999, v, square, R))[arc_counts] < q[arc_counts])


def test_tangent_length_is_where_the_arc_leaves_the_plane(draw: Callable[[float, float], Rows]) -> None:
    """The arc runs out where its centre, found by shrinking the metal by the radius, stands over the outer plane."""
    u, v, psi, R = (
        column[:500] for column in (draw(2, 20), draw(2, 20), draw(np.radians(40), np.radians(140)), draw(1, 30))
    )
    corner, along_1, _ = _corner(u, v, psi)
    inside = shapely.buffer(_sharp(u, v, psi), -R, join_style="mitre", mitre_limit=100)
    for index, shrunk in enumerate(inside):
        points = shapely.get_coordinates(shrunk)
        centre = points[np.argmin(np.hypot(*(points - corner[index]).T))]
        assert (centre - corner[index]) @ along_1[index] == pytest.approx(
            tangent_length(R=float(R[index]), gamma=corner_turn(psi=float(psi[index]))), rel=1e-7
        )


# By hand


def test_closed_corner_rounded_beyond_its_plate() -> None:
    """Closed corner, t2 5, depth 3, rounded to 8 mm: 2.17 mm are left (hand: 8 - sqrt(5^2 + 3^2) = 2.169)."""
    assert _blend(3.0, 5.0, np.pi / 2, 8.0) == pytest.approx(2.17, abs=0.002)


def test_equal_corner_breaks_through_at_3_41_thicknesses() -> None:
    """Equal plates at 90 deg are ground through at R = t (2 + sqrt 2) = 3.41 t (hand: R = sqrt 2 (R - t))."""
    assert largest_radius(u=10.0, v=10.0, q=0.0, gamma=np.pi / 2) == pytest.approx(34.14, abs=0.005)
    assert _blend(10.0, 10.0, np.pi / 2, 34.142) == pytest.approx(0.0, abs=1e-3)


@pytest.mark.parametrize(("o", "share"), [(0.0, 0.707), (0.5, 0.447)])
def test_equal_corner_ground_flat(o: float, share: float) -> None:
    """Equal plates at 90 deg, ground flat: 0.707 t open, 0.447 t half-open by half a plate (hand: right triangle)."""
    assert half_open_toe_line(t_1=1.0, t_2=1.0, o=o, p=0.0, psi=np.pi / 2) == pytest.approx(share, abs=0.001)


def test_full_open_corner_flat_is_a_square_fillet() -> None:
    """An open corner of equal plates at 90 deg, flat, has the throat of a fillet of leg t: 0.707 t."""
    assert open_corner_toe_line(t_1=1.0, t_2=1.0, gamma=np.pi / 2) == pytest.approx(0.7071, abs=5e-5)


def test_tangent_points_lie_a_radius_off_at_a_right_angle() -> None:
    """At 90 deg the arc runs out one radius from the sharp corner."""
    assert tangent_length(R=7.0, gamma=np.pi / 2) == pytest.approx(7.0, rel=1e-12)


# Which way things go


LENGTHS = st.floats(0.5, 40)
TURNS = st.floats(np.radians(30), np.radians(150))
SLACK = 1e-9


@examples(200)
@given(LENGTHS, LENGTHS, TURNS, st.floats(0, 80), st.floats(0, 20))
def test_more_depth_never_lowers_a_blended_throat(u: float, v: float, gamma: float, R: float, more: float) -> None:
    """Moving the fused point away from one outer plane never lowers the throat under a blend."""
    assert _blend(u + more, v, gamma, R) >= _blend(u, v, gamma, R) - SLACK


@examples(200)
@given(LENGTHS, LENGTHS, TURNS, st.floats(0, 80), st.floats(0, 20))
def test_larger_radius_never_raises_the_throat(u: float, v: float, gamma: float, R: float, more: float) -> None:
    """A rounder corner never has more throat."""
    assert _blend(u, v, gamma, R + more) <= _blend(u, v, gamma, R) + SLACK


@examples(200)
@given(st.floats(4, 40), st.floats(4, 40), st.floats(0, 1), st.floats(0, 1), st.floats(0, 1), TURNS, st.floats(0, 40))
def test_more_penetration_never_lowers_a_half_open_throat(
    t_1: float, t_2: float, overlap: float, p: float, more: float, psi: float, R: float
) -> None:
    """However a half-open corner is finished, penetrating further along the interface never lowers its throat."""
    o = 0.99 * overlap * t_1 / np.sin(psi)
    little, much = p * o, (p + (1 - p) * more) * o

    def throat(penetration: float) -> float:
        """Least of the planes under the blend and the line between the toes."""
        u = half_open_clearance(t_1=t_1, o=o, p=penetration, psi=psi)
        flat = half_open_toe_line(t_1=t_1, t_2=t_2, o=o, p=penetration, psi=psi)
        return float(min(_blend(u, t_2, corner_turn(psi=psi), R), flat))

    assert throat(much) >= throat(little) - SLACK


@examples(200)
@given(LENGTHS, LENGTHS, TURNS, st.floats(0, 1), st.floats(0, 1))
def test_more_throat_asked_never_allows_a_larger_radius(
    u: float, v: float, gamma: float, share: float, more: float
) -> None:
    """The more throat must stay, the smaller the largest radius."""
    least = min(u, v)
    q, higher = share * least, (share + (1 - share) * more) * least
    larger, smaller = (largest_radius(u=u, v=v, q=throat, gamma=gamma) for throat in (q, higher))
    assert smaller <= larger * (1 + SLACK)


@examples(200)
@given(st.floats(1, 40), st.floats(1, 40), st.floats(np.radians(30), np.radians(150)))
def test_fillet_throat_never_exceeds_a_leg(z_1: float, z_2: float, psi: float) -> None:
    """The throat is at most the shorter leg, and legs may change places."""
    throat = fillet_throat(z_1=z_1, z_2=z_2, psi=psi)
    assert throat <= min(z_1, z_2) * (1 + SLACK)
    assert throat == pytest.approx(fillet_throat(z_1=z_2, z_2=z_1, psi=psi), rel=1e-12)


def test_polygon_tools_measure_a_known_depth() -> None:
    """The measure itself: a point 3 mm inside a square is 3 deep, one 2 mm outside is 2 mm short."""
    square = Polygon([(-3, -3), (FAR, -3), (FAR, FAR), (-3, FAR)])
    assert float(_depth(square)) == pytest.approx(3.0)
    assert float(_depth(square, Point(-5, 0))) == pytest.approx(-2.0)
    assert LineString([(0, 0), (3, 4)]).length == pytest.approx(5.0)
