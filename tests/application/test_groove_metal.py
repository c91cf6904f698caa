"""Metal and throats of groove preparations against sections drawn as shapely polygons, edge by edge."""

from __future__ import annotations

from math import pi
from typing import Any

import pytest
import shapely
from hypothesis import assume
from shapely import LineString, Point, affinity
from tests.application.asked import groove_size
from tests.application.grooves import flares, partial, whole
from tests.application.joints import given, mm
from tests.practice.drawings import half_groove

from truethroat_service.application.groove_size.request import GrooveSizeRequest

ROOT_RADIUS = {"j": 10.0, "u": 6.0}
"""Usual root radii of AWS D1.1 (from memory), which the answer cites."""


def _section(one: dict[str, Any], thickness: float) -> Any:
    """Section of a preparation's metal, without what is gouged behind: gap and cut edges, side by side."""
    form, gap = one["form"], mm(one["gap"])
    sides = 2 if form.startswith("double-") else 1
    both = form.endswith(("-v", "-u"))
    depth = mm(one["depth"])
    beta = one["angle"]["value"] * pi / 180 / (2 if both else 1)
    edge = affinity.translate(half_groove(form, beta, depth, ROOT_RADIUS.get(form[-1], 0.0)), gap / 2)
    pieces = [edge, *([affinity.scale(edge, -1, 1, origin=(0, 0))] if both else [])]
    if sides == 2:
        pieces += [affinity.scale(piece, 1, -1, origin=(0, -thickness / 2)) for piece in pieces]
    return shapely.union_all(pieces)


def _gap(one: dict[str, Any], thickness: float, filled: float) -> Any:
    """Gap of a preparation, from both faces as deep as it is filled."""
    gap = mm(one["gap"])
    top = shapely.box(-gap / 2, -filled, gap / 2, 0)
    if not one["form"].startswith("double-"):
        return top
    return shapely.union(top, shapely.box(-gap / 2, -thickness, gap / 2, -thickness + filled))


@given(request=whole())
def test_metal_of_a_full_penetration(request: GrooveSizeRequest) -> None:
    """Every preparation that fits has the area of its section, and 36 mm2 where it is gouged from behind."""
    answer = groove_size(request)
    for one in answer["preparations"]:
        gouged = 36.0 if one["root"] == "back-gouge" else 0.0
        metal = _gap(one, request.through, request.through / (2 if one["form"].startswith("double-") else 1)).area
        if one["form"] != "square":
            metal = shapely.union(_section(one, request.through), _gap(one, request.through, request.through)).area
        assert one["area"]["value"] - gouged == pytest.approx(metal, rel=1e-3, abs=1e-6)
        assert one["filler"]["mass_per_length"]["value"] == pytest.approx(one["area"]["value"] * 0.00785)


@given(request=partial("single-bevel", "double-bevel", "single-v", "double-v", "single-j", "double-j", "single-u"))
def test_metal_of_a_partial_penetration(request: GrooveSizeRequest) -> None:
    """The groove chosen has the area of its section with its gap filled as deep as it is cut, and leaves its land."""
    one = groove_size(request)["preparation"]
    assume(one is not None and mm(one["depth"]) > 0.0)
    metal = shapely.union(_section(one, request.through), _gap(one, request.through, mm(one["depth"])))
    fillet = request.weld.reinforcing_fillet  # type: ignore[union-attr]
    sides = 2 if one["form"].startswith("double-") else 1
    assert one["area"]["value"] == pytest.approx(metal.area + sides * fillet**2 / 2, rel=1e-3)
    # The setback is where the cut meets the face.
    assert mm(one["setback"]) == pytest.approx(metal.bounds[2] - mm(one["gap"]) / 2, rel=2e-3)
    assert mm(one["land"]) == pytest.approx(request.through - sides * mm(one["depth"]))


@given(request=partial("single-bevel", fillet=True))
def test_throat_to_the_finished_face(request: GrooveSizeRequest) -> None:
    """With a fillet on its face the throat is the distance of the root to the drawn face, less the deduction."""
    one = groove_size(request)["preparation"]
    assume(one is not None)
    depth, leg = mm(one["depth"]), request.weld.reinforcing_fillet  # type: ignore[union-attr]
    # Part 1 is the plane y = 0, the flush face x = 0, the root lies in part 2; the face bends where the fillet ends.
    face = LineString([(leg, 0), (0, leg), (0, 400)])
    assert mm(one["throat"]) + mm(one["deduction"]) == pytest.approx(Point(-depth, 0).distance(face), rel=1e-9)
    assert mm(one["throat"]) < depth + leg


@given(request=flares("flare-bevel", "flare-v"))
def test_metal_of_a_flare_groove(request: GrooveSizeRequest) -> None:
    """Between a drawn circle and the plane it touches, up to the face; twice that between two circles."""
    [one] = groove_size(request)["preparations"]
    radius, below = request.weld.radius, request.weld.below_flush  # type: ignore[union-attr]
    corner = shapely.box(0, 0, radius, radius - below)
    metal = corner.difference(Point(radius, 0).buffer(radius, quad_segs=512)).area
    halves = 2 if request.weld.kind == "flare-v" else 1
    assert one["area"]["value"] == pytest.approx(halves * metal, rel=2e-3, abs=1e-3)
