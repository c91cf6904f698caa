"""Throat of a partial-penetration groove by its depth, and the depth for a throat; a fillet may lie on its face.

``D`` is the distance from the root to the flush plane: the depth cut and what is proven to fuse beyond it. ``c`` is
what the rules take off, ``m`` the number of sides welded alike. Millimetres; floats or columns.
"""

from ..engine.formula import Arg, Source, formula
from ..engine.numeric import Real, hypot, maximum, sqrt, where

DEPTH = Source("", "throat square to the face, filled flush", "geometry")
SHORTEST = Source(
    "ANSI/AISC 360-22", "commentary to J2.5: shortest distance from root to face of the finished weld, not the sum"
)
SIDES = Arg("", 1.0, 2.0)
THROAT = Arg("mm", 0.5, 40.0)
LOSS = Arg("mm", 0.0, 6.0)
FILLET = Arg("mm", 2.0, 20.0)


@formula("a_1", "a_req/m", unit="mm", source=DEPTH, args={"a_req": THROAT, "m": SIDES})
def side_throat(a_req: Real, m: Real) -> Real:
    """Throat that the load needs on one side."""
    return a_req / m


@formula("D_req", "a_1 + c", unit="mm", source=DEPTH, args={"a_1": THROAT, "c": LOSS})
def distance_for_throat(a_1: Real, c: Real) -> Real:
    """Distance from the root to the flush plane that the load needs."""
    return a_1 + c


@formula(
    "D_req",
    "where(a_1 + c >= w*sqrt(2), sqrt((a_1 + c)**2 - w**2), (a_1 + c)*sqrt(2) - w)",
    unit="mm",
    source=SHORTEST,
    args={"a_1": THROAT, "c": LOSS, "w": FILLET},
)
def distance_under_fillet(a_1: Real, c: Real, w: Real) -> Real:
    """Distance from the root to the flush plane that the load needs under a fillet on the groove's face."""
    a_r = a_1 + c
    long_way = sqrt(maximum(a_r * a_r - w * w, 0.0 * w))
    return where(a_r >= w * sqrt(2.0), long_way, a_r * sqrt(2.0) - w)


@formula(
    "d_req",
    "maximum(D_req, a_min + c) - p",
    unit="mm",
    source=DEPTH,
    args={"D_req": Arg("mm", 0.0, 40.0), "a_min": Arg("mm", 0.0, 16.0), "c": LOSS, "p": Arg("mm", 0.0, 6.0)},
)
def depth_needed(D_req: Real, a_min: Real, c: Real, p: Real) -> Real:
    """Depth to cut on one side, for the load and for the least throat."""
    return maximum(D_req, a_min + c) - p


@formula(
    "a_e",
    "m*(d + p - c)",
    unit="mm",
    source=DEPTH,
    args={"m": SIDES, "d": Arg("mm", 6.0, 40.0), "p": Arg("mm", 0.0, 6.0), "c": LOSS},
)
def groove_throat(m: Real, d: Real, p: Real, c: Real) -> Real:
    """Throat of all sides together."""
    return m * (d + p - c)


@formula(
    "a_r",
    "where(w >= d + p, (d + p + w)/sqrt(2), hypot(d + p, w))",
    unit="mm",
    source=SHORTEST,
    args={"d": Arg("mm", 0.5, 20.0), "p": Arg("mm", 0.0, 6.0), "w": FILLET},
)
def distance_to_finished_face(d: Real, p: Real, w: Real) -> Real:
    """Shortest distance from the root to the face of a groove with an equal-leg fillet on it."""
    return where(w >= d + p, (d + p + w) / sqrt(2.0), hypot(d + p, w))


@formula("a_e", "m*(a_r - c)", unit="mm", source=SHORTEST, args={"m": SIDES, "a_r": Arg("mm", 6.0, 40.0), "c": LOSS})
def reinforced_throat(m: Real, a_r: Real, c: Real) -> Real:
    """Throat of all sides together, each with a fillet on its face."""
    return m * (a_r - c)
