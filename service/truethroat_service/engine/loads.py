"""Force on one weld, per length of it, in the axes of its joint.

Part 1 runs along the first axis on the side the weld is on, part 2 meets it at the angle ``psi``. ``n`` pulls
part 2 square off part 1, ``t`` pushes it along part 1 towards the weld's side, ``l`` runs along the weld. All in newton
per millimetre, signed; floats or columns.
"""

from math import pi

from .formula import Arg, Source, formula
from .numeric import Real, atan2, cos, hypot, magnitude, maximum, sin

STATICS = Source("", "statics", "geometry")
PER_LENGTH = Arg("N/mm", -2000.0, 2000.0)


@formula(
    "f",
    "P/(m*L)",
    unit="N/mm",
    source=STATICS,
    args={"P": Arg("N", 1e3, 1e6), "m": Arg("", 1, 2), "L": Arg("mm", 20, 1000)},
)
def force_per_length(P: Real, m: Real, L: Real) -> Real:
    """Force per length of one weld, shared by equal welds."""
    return P / (m * L)


@formula("l", "f*cos(theta)", unit="N/mm", source=STATICS, args={"f": PER_LENGTH, "theta": Arg("rad", 0, pi / 2)})
def along(f: Real, theta: Real) -> Real:
    """Part of the force that runs along the weld."""
    return f * cos(theta)


@formula(
    "n",
    "f*sin(theta)*sin(psi)",
    unit="N/mm",
    source=STATICS,
    args={"f": PER_LENGTH, "theta": Arg("rad", 0, pi / 2), "psi": Arg("rad", pi / 3, 2 * pi / 3)},
)
def off_part_1(f: Real, theta: Real, psi: Real) -> Real:
    """Part of a force in the plane of part 2 that pulls square off part 1."""
    return f * sin(theta) * sin(psi)


@formula(
    "t",
    "f*sin(theta)*cos(psi)",
    unit="N/mm",
    source=STATICS,
    args={"f": PER_LENGTH, "theta": Arg("rad", 0, pi / 2), "psi": Arg("rad", pi / 3, 2 * pi / 3)},
)
def towards_weld(f: Real, theta: Real, psi: Real) -> Real:
    """Part of a force in the plane of part 2 that runs along part 1 towards the weld's side."""
    return f * sin(theta) * cos(psi)


@formula("x", "hypot(n, t)", unit="N/mm", source=STATICS, args={"n": PER_LENGTH, "t": PER_LENGTH})
def across(n: Real, t: Real) -> Real:
    """Part of the force across the weld."""
    return hypot(n, t)


@formula("f", "hypot(x, l)", unit="N/mm", source=STATICS, args={"x": PER_LENGTH, "l": PER_LENGTH})
def resultant(x: Real, l: Real) -> Real:  # noqa: E741 - the symbol of the component along the weld
    """Force per length of one weld."""
    return hypot(x, l)


@formula("theta", "atan2(x, abs(l))", unit="rad", source=STATICS, args={"x": Arg("N/mm", 0, 2000), "l": PER_LENGTH})
def angle_to_axis(x: Real, l: Real) -> Real:  # noqa: E741 - the symbol of the component along the weld
    """Angle between the force and the axis of the weld, 0 along it."""
    return atan2(x, magnitude(l))


@formula(
    "U_base",
    "maximum(abs(l)/r_shear, x/r_tension)",
    unit="",
    source=Source("", "each component alone, no interaction", "common practice, no source"),
    args={
        "l": PER_LENGTH,
        "x": Arg("N/mm", 0, 2000),
        "r_shear": Arg("N/mm", 500, 5000),
        "r_tension": Arg("N/mm", 500, 5000),
    },
)
def base_metal_utilisation(l: Real, x: Real, r_shear: Real, r_tension: Real) -> Real:  # noqa: E741
    """Use made of the base metal beside one weld."""
    return maximum(magnitude(l) / r_shear, x / r_tension)


@formula(
    "f_seg",
    "f*(l_seg + e)/l_seg",
    unit="N/mm",
    source=STATICS,
    args={"f": PER_LENGTH, "l_seg": Arg("mm", 20, 300), "e": Arg("mm", 0, 400)},
)
def on_segments(f: Real, l_seg: Real, e: Real) -> Real:
    """Force per length of a segment of an intermittent weld, which carries the force of its pitch."""
    return f * (l_seg + e) / l_seg


@formula(
    "P_1",
    "P*(b - c)/b",
    unit="N",
    source=STATICS,
    args={"P": Arg("N", 1e3, 1e6), "b": Arg("mm", 60, 200), "c": Arg("mm", 10, 50)},
)
def balanced_share(P: Real, b: Real, c: Real) -> Real:
    """Share of a member's force in the side weld at ``c`` from its centroid, the other being ``b`` away from it."""
    return P * (b - c) / b
