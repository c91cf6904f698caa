"""Request of ``/v1/groove-size``."""

from collections.abc import Mapping
from functools import partial
from math import pi
from typing import Any

from marshmallow import post_load

from ...application.core.quantities import ANGLE, FORCE, FORCE_PER_LENGTH, LENGTH
from ...application.groove_size.request import (
    FORMS,
    ROOTS,
    FlareWeld,
    FullWeld,
    GrooveForce,
    GrooveJoint,
    GrooveSizeRequest,
    Holes,
    PartialWeld,
    TeeButt,
)
from ...application.joints.loads import ForceComponents
from ...application.joints.rule_sets import ENTRIES
from ...application.joints.rule_sets import rule_set as rules_of
from ...reference.loader import FILLER_METALS
from ..fields import Choice, ChoiceOrObject, Either, Flag, Object, Pair, Quantity, Variant
from . import ClosedSchema, RequestSchema, seams
from .fillet_size import FORCE_LIMIT, LENGTH_LIMIT, LINE_LIMIT, PART_FORMS, FillerId, FillerSchema, ParametersSchema

MOST_HOLES = 200

_hole = partial(Quantity, LENGTH, minimum=1.0, maximum=500.0)


def _access() -> Choice:
    return Choice(("one-side", "both-sides"), "Sides the seam can be welded from.", default="both-sides")


def _form() -> Choice:
    return Choice(
        FORMS, "Form of the groove; of all that fit the one with the least metal is chosen where none is given."
    )


def _angle() -> Quantity:
    return seams.groove_angle("Included angle of the groove named; of a bevel or J that of its one face.")


def _gap() -> Quantity:
    return seams.length("Root gap; the middle of what the detail allows by default.", maximum=50.0)


class GrooveJointSchema(ClosedSchema):
    """Joint of two parts."""

    makes = GrooveJoint
    kind = Choice(
        ("butt", "tee", "corner", "lap"),
        "Kind of joint, its plates square to each other; a lap for welds in holes and slots alone.",
        required=True,
    )


class PartialWeldSchema(ClosedSchema):
    """Partial-penetration groove."""

    makes = PartialWeld
    kind = Choice(("partial",), required=True)
    groove = _form()
    groove_angle = _angle()
    gap = _gap()
    access = _access()
    penetration = seams.penetration()
    reinforcing_fillet = seams.length(
        "Leg of an equal-leg fillet on the groove's face, tee only.", maximum=50.0, default="0 mm"
    )
    minimum_land = seams.length("Least land that must stay; a detail may ask for more.", maximum=50.0, default="1 mm")
    depth_step = Quantity(
        LENGTH, "Step the depth is rounded up to: 0.5 mm, or 1/32 in (us), by default.", minimum=0.01, maximum=25.4
    )
    depth_tolerance = seams.length(
        "How much shallower an edge may be cut than specified; the depth makes up for it.",
        maximum=50.0,
        default="0 mm",
    )
    bears = Flag("Whether the parts are finished to bear, so that they take the compression; AISC only.", default=False)


class FullWeldSchema(ClosedSchema):
    """Full-penetration groove."""

    makes = FullWeld
    kind = Choice(("full",), required=True)
    groove = _form()
    groove_angle = _angle()
    root = Choice(ROOTS, "How the root is made; chosen where none is given.")
    gap = _gap()
    land = seams.length("Land; the middle of what the detail allows by default.", maximum=50.0)
    access = _access()


class _FlareSchema(ClosedSchema):
    makes = FlareWeld
    radius = Quantity(LENGTH, "Radius of the joint's surface.", minimum=1.0, maximum=500.0, required=True)
    below_flush = seams.length("How far the face lies below flush.", maximum=100.0, default="0 mm")


class FlareBevelSchema(_FlareSchema):
    """Flare bevel: a round surface on a flat one."""

    kind = Choice(("flare-bevel",), required=True)


class FlareVSchema(_FlareSchema):
    """Flare V: two round surfaces."""

    kind = Choice(("flare-v",), required=True)


class TeeButtSchema(ClosedSchema):
    """T-butt welded from both sides, to be judged by EN 1993-1-8 4.7.3."""

    makes = TeeButt
    kind = Choice(("tee-butt",), required=True)
    throats = Pair(
        Quantity(LENGTH, minimum=0.1, maximum=300.0), "Throat of each side, fillets on it included.", required=True
    )
    unwelded = seams.length("Unwelded gap between the two sides, through part 2.", required=True)


def _filling() -> Quantity:
    return _hole(description="Height of the filling; the thickness of part 2, which has the hole, by default.")


def _count() -> Choice:
    return Choice(tuple(range(1, MOST_HOLES + 1)), "How many there are; how many are needed, where none is given.")


def _round(data: Mapping[str, Any]) -> Holes:
    rest = {name: value for name, value in data.items() if name != "diameter"}
    return Holes(width=data["diameter"], length=data["diameter"], **rest)


class PlugSchema(ClosedSchema):
    """Plug welds in round holes through part 2."""

    kind = Choice(("plug",), required=True)
    diameter = _hole(description="Diameter of the hole.", required=True)
    filling = _filling()
    count = _count()
    pitch = _hole(description="Least distance between centres.")

    @post_load
    def _make(self, data: Mapping[str, Any], **kwargs: Any) -> Holes:
        """Holes as long as they are wide."""
        return _round(data)


class SlotSchema(ClosedSchema):
    """Slot welds, their ends half round, through part 2."""

    makes = Holes
    kind = Choice(("slot",), required=True)
    width = _hole(description="Width of the slot.", required=True)
    length = _hole(description="Length over all.", required=True)
    filling = _filling()
    count = _count()
    pitch = _hole(description="Least distance between lines of slots, across them.")
    pitch_along = _hole(description="Least distance between centres along a line of slots.")


def _leg() -> Quantity:
    return _hole(description="Leg of the fillet, the same on wall and face.", required=True)


class FilletInHoleSchema(ClosedSchema):
    """Fillets all round the inside of round holes through part 2."""

    kind = Choice(("fillet-in-hole",), required=True)
    diameter = _hole(description="Diameter of the hole.", required=True)
    leg = _leg()
    count = _count()

    @post_load
    def _make(self, data: Mapping[str, Any], **kwargs: Any) -> Holes:
        """Holes as long as they are wide."""
        return _round(data)


class FilletInSlotSchema(ClosedSchema):
    """Fillets all round the inside of slots, their ends half round, through part 2."""

    makes = Holes
    kind = Choice(("fillet-in-slot",), required=True)
    width = _hole(description="Width of the slot.", required=True)
    length = _hole(description="Length over all.", required=True)
    leg = _leg()
    count = _count()


WELDS: dict[str, ClosedSchema] = {
    "partial": PartialWeldSchema(),
    "full": FullWeldSchema(),
    "flare-bevel": FlareBevelSchema(),
    "flare-v": FlareVSchema(),
    "tee-butt": TeeButtSchema(),
    "plug": PlugSchema(),
    "slot": SlotSchema(),
    "fillet-in-hole": FilletInHoleSchema(),
    "fillet-in-slot": FilletInSlotSchema(),
}


class GrooveForceSchema(ClosedSchema):
    """Force on the joint."""

    makes = GrooveForce
    force = Quantity(
        FORCE,
        "Force on the joint, all sides together; one that presses the parts together is negative.",
        minimum=-FORCE_LIMIT,
        maximum=FORCE_LIMIT,
        required=True,
    )
    length = Quantity(
        LENGTH, "Length of the weld; those in holes and slots have none.", maximum=LENGTH_LIMIT, above=True
    )
    angle = Quantity(
        ANGLE,
        "Angle of the force to the weld's axis: 0 deg along it, 90 deg across it; those in holes have none.",
        maximum=pi / 2,
    )


def _component(description: str) -> Quantity:
    return Quantity(FORCE_PER_LENGTH, description, minimum=-LINE_LIMIT, maximum=LINE_LIMIT, default="0 N/mm")


class GrooveComponentsSchema(ClosedSchema):
    """Force per length on the joint, all sides together."""

    makes = ForceComponents
    normal = _component("Square to the throat: pulls the parts apart when positive, presses them when negative.")
    transverse = _component("Across the weld, shearing the throat.")
    longitudinal = _component("Along the weld, shearing the throat.")


LOAD_FORMS = ((("force",), GrooveForceSchema()), ((), GrooveComponentsSchema()))


class GrooveSizeSchema(RequestSchema):
    """Groove, flare, plug or slot weld to size."""

    makes = GrooveSizeRequest
    title = "GrooveSizeRequest"
    rule_set = Choice(
        tuple(name for name in ENTRIES if rules_of(name).groove_weld is not None),
        "Rules to size by; see /v1/rule-sets.",
        required=True,
    )
    joint = Object(GrooveJointSchema(), "The joint.", required=True)
    parts = Pair(
        Either(PART_FORMS),
        "Parts 1 and 2. Part 1 is the part that runs through (tee), whose end meets part 2 (corner), whose face is"
        " welded (lap).",
        required=True,
    )
    weld = Variant("kind", WELDS, "The weld.", required=True)
    parameters = Object(ParametersSchema(), "Parameters over the rule set's own; EN 1993-1-8 only.")
    filler = ChoiceOrObject(
        FillerId(tuple(FILLER_METALS)), FillerSchema(), "Filler metal: an id (see /v1/filler-metals) or its strength."
    )
    process = seams.process()
    position = seams.position()
    basis = Choice(("load", "full-strength"), "What the size is based on.", required=True)
    # Marshmallow takes fields out of the class, so this one does not hide Schema.load.
    load = Either(  # type: ignore[assignment]
        LOAD_FORMS, 'Load, with basis "load": a force on the joint, or components per length.'
    )
