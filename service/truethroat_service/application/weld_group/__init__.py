"""Use case: size and strength of a weld group under any force and moment, by lines or by instantaneous centre."""

from dataclasses import dataclass, replace
from math import hypot, isfinite, pi
from typing import Any

import numpy as np

from ...engine import instantaneous_centre, line_group
from ...engine.formula import Source, about, off_the_sheet, working
from ...engine.line_group import Pieces, Points, Properties
from ...engine.numeric import Column
from ...engine.rounding import at_least, at_most, up
from ...engine.rule_set import RuleSet, WeldLoad, WeldMetal
from ...engine.section import equal_leg, equal_leg_throat
from ...practice import load_deformation, weld_lines
from ...practice.load_deformation import LesikKennedy
from ...practice.weld_patterns import columns, length
from ...practice.weld_runs import shortest_run
from ...reference.loader import MATERIALS
from ..core.answers import Answered, answered
from ..core.codes import Verdict
from ..core.faults import Faults
from ..core.remarks import Remarks
from ..core.units import Units
from ..joints import filler_matching
from ..joints.fillets import fillet_size_of
from ..joints.given import usual_step
from ..joints.metals import EN_1993_1_8, Part, metals
from ..joints.rule_sets import chosen
from .answer import (
    AlongAxes,
    CentroidLoad,
    GroupPlace,
    GroupPoint,
    GroupProperties,
    GroupStrength,
    WeldGroupAnswer,
)
from .request import GroupLoad, Vector, WeldGroupRequest

ALONG_AN_ARC = 181
"""Points looked at along an arc, where the greatest force need not be at an end; a line has it at an end."""

NEGLIGIBLE = 1e-9
"""Share below which a force or moment counts as none."""

RIGHT_ANGLE = pi / 2


@dataclass(frozen=True, slots=True)
class _NeededThroat:
    """Throat needed, the force per length it answers to, and where."""

    throat: float
    force_per_length: float
    critical: GroupPoint | None = None
    points: tuple[GroupPoint, ...] = ()
    centre: GroupPlace | None = None


def weld_group(request: WeldGroupRequest) -> Answered[WeldGroupAnswer]:
    """Lines of weld under any force and moment.

    Lengths are in mm, forces in N, moments in N mm, angles in rad. Raises ``Refused`` with every fault found.
    """
    units = Units(request.common.units)
    remarks, faults = Remarks(units), Faults(units)
    with working() as sheet:
        rules, beta_w = chosen(request.rule_set, request.parameters, faults)
        if any(not length(piece) for piece in request.group):
            # A piece without length has no place and no direction.
            faults.inconsistent("#/group", "must not have a piece that ends where it starts; leave that piece out")
            faults.refuse()
        pieces = columns(request.group)
        shape = line_group.properties(pieces)
        load = _about_centroid(request, shape)
        _check(request, rules, load, shape, faults)
        of_parts = metals(rules, request.parts, request.filler, beta_w, None, faults, remarks)
        faults.refuse()
        filler_matching.remark_on_fillets(rules, request.parts, request.filler, None, remarks)
        request = _filled(request, rules)
        # An elastic resultant does not show how the welds strain together, so it takes no directional increase.
        metal = replace(of_parts.weld, compatible=False)
        if request.method == "elastic":
            needed = _elastic(pieces, shape, load, rules, metal)
        else:
            needed = _centre(pieces, shape, load, rules, metal, faults)
        answer, verdict = _sized(request, rules, needed, load, shape, remarks)
        _remark(request, rules, remarks)
    return answered(
        "weld_group",
        request,
        sheet,
        remarks,
        verdict,
        answer,
        rule_set=rules.id,
        parameters=rules.parameters,
    )


def _about_centroid(request: WeldGroupRequest, shape: Properties) -> GroupLoad:
    """Load of one group, moved to its centroid."""
    share = 1.0 / request.count
    force, at, moment = request.load.force, request.load.at, request.load.moment
    arm_x, arm_y, arm_z = at.x - float(shape.x[0]), at.y - float(shape.y[0]), at.z
    return GroupLoad(
        force=Vector(force.x * share, force.y * share, force.z * share),
        moment=Vector(
            (moment.x + arm_y * force.z - arm_z * force.y) * share,
            (moment.y + arm_z * force.x - arm_x * force.z) * share,
            (moment.z + arm_x * force.y - arm_y * force.x) * share,
        ),
    )


def _check(request: WeldGroupRequest, rules: RuleSet, load: GroupLoad, shape: Properties, faults: Faults) -> None:
    """Find what does not fit together and what the method does not cover."""
    if request.leg is not None and request.throat is not None:
        faults.inconsistent("#/throat", "must not be sent with a leg; send one of the two")
    size = float(np.sqrt(shape.j[0] / shape.length[0]))
    scale = hypot(load.force.x, load.force.y, load.force.z) + hypot(load.moment.x, load.moment.y, load.moment.z) / max(
        size, NEGLIGIBLE
    )
    if scale == 0.0:
        faults.inconsistent("#/load", "must have a force or a moment that is not zero")
        return
    if request.method == "instantaneous-centre":
        if not rules.options.instantaneous_centre:
            faults.out_of_scope(
                "#/method",
                f"must be elastic with {rules.id}; the instantaneous centre applies to the AISC rule sets only",
            )
        elif any(_is_hollow(part) for part in request.parts):
            faults.out_of_scope(
                "#/method",
                "must be elastic for a hollow section: the instantaneous centre depends on the directional increase,"
                " which the end of a rectangular hollow section does not have (AISC 360-22 J2.4(a)(2))",
            )
        out = abs(load.force.z) + hypot(load.moment.x, load.moment.y) / size
        if out > NEGLIGIBLE * scale:
            faults.out_of_scope(
                "#/load",
                "must lie in the plane of the group for the instantaneous centre; for a load out of the plane use"
                " method"
                ' "elastic"',
            )
    elif _slopes(load, shape) is None:
        faults.inconsistent(
            "#/load", "must not bend a group on one straight line about that line, where it has no strength"
        )


def _is_hollow(part: Part) -> bool:
    """Whether a part is of a listed hollow section."""
    return part.material is not None and MATERIALS[part.material].form == "hollow-section"


def _filled(request: WeldGroupRequest, rules: RuleSet) -> WeldGroupRequest:
    """Request with the defaults that hang on its rule set and units."""
    size_by = request.size_by or rules.size_by
    step = request.size_step or usual_step(request.common.units, size_by)
    return replace(request, size_by=size_by, size_step=step)


def _slopes(load: GroupLoad, shape: Properties) -> tuple[float, float] | None:
    """Rise of the out-of-plane force with x and y; None where a straight group is bent about itself."""
    i_x, i_y, i_xy = float(shape.i_x[0]), float(shape.i_y[0]), float(shape.i_xy[0])
    m_x, m_y = load.moment.x, load.moment.y
    if i_x * i_y - i_xy * i_xy > NEGLIGIBLE * (i_x + i_y) ** 2:
        bent = {"M_x": m_x, "M_y": m_y, "I_x": i_x, "I_y": i_y, "I_xy": i_xy}
        return float(weld_lines.slope_along_x(**bent)), float(weld_lines.slope_along_y(**bent))
    # A straight group: only bending along the line meets resistance.
    matrix = np.array([[i_y, i_xy], [i_xy, i_x]])
    wanted = np.array([-m_y, m_x])
    slopes = np.linalg.pinv(matrix, rcond=NEGLIGIBLE) @ wanted
    if float(np.abs(matrix @ slopes - wanted).max()) > NEGLIGIBLE * max(abs(m_x), abs(m_y), 1.0):
        return None
    return float(slopes[0]), float(slopes[1])


def _elastic(pieces: Pieces, shape: Properties, load: GroupLoad, rules: RuleSet, metal: WeldMetal) -> _NeededThroat:
    """Throat by the elastic line method: the greatest need of all ends, and of all of every arc."""
    points = line_group.even_points(pieces, ALONG_AN_ARC if bool(pieces.arcs.any()) else 2)
    x, y = points.x[0] - shape.x[0], points.y[0] - shape.y[0]
    with off_the_sheet():
        forces = _forces(x, y, shape, load)
        needed = _needed(forces, points.axis[0], rules, metal)
    worst = int(np.argmax(needed))
    with about("critical point"):
        at_worst = _forces(float(x[worst]), float(y[worst]), shape, load)
        throat = float(_needed(at_worst, float(points.axis[0][worst]), rules, metal))
    ends = range(x.size) if x.size <= 2 * len(pieces.x_1[0]) else [worst]
    listed = tuple(_point(points, forces, index) for index in ends)
    return _NeededThroat(throat, float(at_worst[3]), _point(points, forces, worst), listed)


def _forces(x: Any, y: Any, shape: Properties, load: GroupLoad) -> tuple[Any, Any, Any, Any]:
    """Components and resultant of the force per length at places from the centroid, scalars or columns."""
    length, j = float(shape.length[0]), float(shape.j[0])
    slopes = _slopes(load, shape)
    assert slopes is not None  # noqa: S101 - refused before
    f_x = weld_lines.along_x(P_x=load.force.x, M_z=load.moment.z, L=length, J=j, y=y)
    f_y = weld_lines.along_y(P_y=load.force.y, M_z=load.moment.z, L=length, J=j, x=x)
    f_z = weld_lines.out_of_plane(P_z=load.force.z, L=length, g_x=slopes[0], g_y=slopes[1], x=x, y=y)
    return f_x, f_y, f_z, weld_lines.resultant(f_x=f_x, f_y=f_y, f_z=f_z)


def _needed(forces: tuple[Any, Any, Any, Any], axis: Any, rules: RuleSet, metal: WeldMetal) -> Any:
    """Throat needed at each place, whichever side of its line the weld is on."""
    assert rules.weld is not None  # noqa: S101 - practice without strength is not among the rule sets offered
    f_x, f_y, f_z, resultant = forces
    cos, sin = np.cos(axis), np.sin(axis)
    along, across = f_x * cos + f_y * sin, f_y * cos - f_x * sin
    theta = np.arctan2(np.hypot(across, f_z), np.abs(along))
    one, other = (
        rules.weld.required_throat(
            WeldLoad(f_z, side * across, along, np.hypot(across, f_z), resultant, theta, RIGHT_ANGLE), metal
        )
        for side in (1.0, -1.0)
    )
    return np.maximum(one, other)


def _point(points: Points, forces: tuple[Any, Any, Any, Any], index: int) -> GroupPoint:
    """Place and force per length of one point."""
    f_x, f_y, f_z, resultant = (np.broadcast_to(force, points.x[0].shape) for force in forces)
    return GroupPoint(
        x=float(points.x[0][index]),
        y=float(points.y[0][index]),
        force=AlongAxes(float(f_x[index]), float(f_y[index]), float(f_z[index])),
        resultant=float(resultant[index]),
    )


def _centre(
    pieces: Pieces,
    shape: Properties,
    load: GroupLoad,
    rules: RuleSet,
    metal: WeldMetal,
    faults: Faults,
) -> _NeededThroat:
    """Throat by the instantaneous-centre method; raises ``Refused`` where no centre is found."""
    assert rules.weld is not None  # noqa: S101 - as above
    placed = line_group.gauss_points(pieces)
    points = replace(placed, x=placed.x - shape.x[:, None], y=placed.y - shape.y[:, None])
    rho: Column = np.sqrt(shape.j / shape.length)
    in_plane = instantaneous_centre.Loads(np.array([load.force.x]), np.array([load.force.y]), np.array([load.moment.z]))
    found = instantaneous_centre.solve(points, rho, in_plane, LesikKennedy())
    if not bool(found.converged[0]):
        faults.out_of_scope("#/load", 'has no instantaneous centre that the method finds; use method "elastic"')
        faults.refuse()
    with about("bit of weld at its limit"):
        theta = float(found.worst_angle[0])
        limit = load_deformation.at_rupture(theta=theta)
        load_deformation.force(theta=theta, d=limit, d_m=load_deformation.at_greatest_force(theta=theta))
    # The force per length that a weld along its own axis would carry in the same share of its strength.
    per_length = 1.0 / float(found.strength[0])
    load_along = WeldLoad(0.0, 0.0, per_length, 0.0, per_length, 0.0, RIGHT_ANGLE)
    throat = float(rules.weld.required_throat(load_along, metal))
    x, y = float(found.centre_x[0] + shape.x[0]), float(found.centre_y[0] + shape.y[0])
    # A centre on an axis of symmetry is found to the last bits of a float.
    x, y = (0.0 if abs(place) < NEGLIGIBLE * float(rho[0]) else place for place in (x, y))
    return _NeededThroat(throat, per_length, centre=GroupPlace(x, y) if isfinite(x) and isfinite(y) else None)


def _sized(
    request: WeldGroupRequest,
    rules: RuleSet,
    needed: _NeededThroat,
    load: GroupLoad,
    shape: Properties,
    remarks: Remarks,
) -> tuple[WeldGroupAnswer, Verdict]:
    """Sizes, and the strength at the size asked about or specified."""
    units = remarks.units
    assert rules.weld is not None and request.size_step is not None  # noqa: S101 - as above, and filled in before
    thinner = min(part.thickness for part in request.parts)
    minimum, minimum_source = rules.weld.minimum_leg(thinner, RIGHT_ANGLE)
    required = float(equal_leg(a=needed.throat, psi=RIGHT_ANGLE))
    unrounded = max(required, float(minimum))
    if request.size_by == "throat":
        throat = float(up(equal_leg_throat(z=unrounded, psi=RIGHT_ANGLE), request.size_step))
        specified = float(equal_leg(a=throat, psi=RIGHT_ANGLE))
    else:
        specified = float(up(unrounded, request.size_step))
    asked = request.leg
    if request.throat is not None:
        asked = float(equal_leg(a=request.throat, psi=RIGHT_ANGLE))
    leg = specified if asked is None else asked
    run = shortest_run(request.group)
    most = float(rules.weld.largest_counted_leg(run, RIGHT_ANGLE))
    with off_the_sheet():
        reached = at_least(float(rules.weld.counted_leg(specified, run, RIGHT_ANGLE)), required)
    with about("shortest run"):
        counted = float(rules.weld.counted_leg(leg, run, RIGHT_ANGLE))
    factor = counted / required
    enough = at_least(counted, required) and at_least(leg, minimum)
    force = hypot(load.force.x, load.force.y, load.force.z)
    verdict = Verdict.ENOUGH if enough else Verdict.CANNOT_BE_REACHED if asked is None else Verdict.SHORT
    remarks.because(
        f"The needed leg is {units.text(required)}; "
        + (
            f"the leg sent is {units.text(leg)}."
            if asked is not None
            else f"the specified leg is {units.text(leg)}."
            if reached
            else f"the next step up is {units.text(leg)}."
        )
    )
    if not at_most(leg, most):
        remarks.because(
            f"The shortest run of weld, {units.text(run)}, is too short for that leg; "
            + (f"at most {units.text(most)} of it counts" if most else "it may not carry load at any size")
            + f" ({rules.weld.least_length_source})."
        )
    if not at_most(minimum, leg):
        remarks.because(f"The least leg is {units.text(float(minimum))} ({minimum_source}).")

    force_per_length = needed.force_per_length
    answer = WeldGroupAnswer(
        properties=_properties(shape),
        load_per_group=CentroidLoad(_along_axes(load.force), _along_axes(load.moment)),
        method=request.method,
        critical=needed.critical,
        points=needed.points,
        centre=needed.centre,
        required=fillet_size_of(required, RIGHT_ANGLE, f"{rules.id}, weld metal"),
        minimum=fillet_size_of(float(minimum), RIGHT_ANGLE, str(minimum_source)),
        specify=fillet_size_of(specified, RIGHT_ANGLE, f"rounded up to the next {units.text(request.size_step)}")
        if reached
        else None,
        utilisation=required / counted if counted else None,
        strength=GroupStrength(factor, force * request.count * factor, abs(load.moment.z) * request.count * factor),
        equivalent_force=force_per_length,
        efficiency=force / (force_per_length * float(shape.length[0])),
    )
    return answer, verdict


def _properties(shape: Properties) -> GroupProperties:
    """Properties of one group."""
    return GroupProperties(
        length=float(shape.length[0]),
        centroid=GroupPlace(float(shape.x[0]), float(shape.y[0])),
        i_x=float(shape.i_x[0]),
        i_y=float(shape.i_y[0]),
        i_xy=float(shape.i_xy[0]),
        j=float(shape.j[0]),
    )


def _along_axes(vector: Vector) -> AlongAxes:
    """Vector of the answer."""
    return AlongAxes(vector.x, vector.y, vector.z)


def _remark(request: WeldGroupRequest, rules: RuleSet, remarks: Remarks) -> None:
    """Say what the figures leave out."""
    remarks.caution(
        "parts-not-checked", "The parts beside the welds are not checked, nor is the bracket that brings the load."
    )
    if request.method == "elastic" and rules.options.instantaneous_centre:
        remarks.caution(
            "elastic-method",
            "The elastic method takes no directional increase. For eccentric loads in the plane of the group it gives"
            " much less strength than the instantaneous centre.",
            Source("AISC Steel Construction Manual", "Part 8"),
        )
    if EN_1993_1_8 in rules.editions:
        remarks.caution(
            "full-size-length",
            "Every line is taken as full size from end to end. Where its ends taper, take two throats off the length.",
            Source("EN 1993-1-8:2005", "4.5.1(1)"),
        )
