"""Sections drawn as polygons, apart from every closed form. Millimetres and radians."""

from __future__ import annotations

from math import tan

import shapely
from shapely import Polygon

FAR = 400.0


def rounded_half(d: float, beta: float, r: float) -> Polygon:
    """Section of a J of depth ``d`` opening in the plane y = 0: half a V, its root rounded to ``r`` by opening it."""
    # A V about the second axis with its point down; opened by a disc it has the disc's radius at its root.
    wedge = Polygon([(0, 0), (FAR * tan(beta), FAR), (-FAR * tan(beta), FAR)])
    rounded = wedge.buffer(-r, join_style="mitre", mitre_limit=200).buffer(r, quad_segs=256)
    lowest = rounded.bounds[1]
    half = shapely.box(0, lowest, FAR, lowest + d)
    return shapely.transform(rounded.intersection(half), lambda points: points - [0, lowest + d])


def half_groove(form: str, beta: float, depth: float, radius: float) -> Polygon:
    """Section that one cut edge of a groove opens, from the joint's line outwards, its face in the plane y = 0."""
    if form.endswith(("-j", "-u")):
        return rounded_half(depth, beta, radius)
    return Polygon([(0, 0), (0, -depth), (depth * tan(beta), 0)])
