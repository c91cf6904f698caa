"""Request of ``/v1/fillet-size``."""

from collections.abc import Mapping
from math import pi
from typing import Any

from marshmallow import post_load

from ...application.core.quantities import ANGLE, AREA, FORCE, FORCE_PER_LENGTH, LENGTH, STRESS
from ...application.fillet_size.request import (
    BalancedForce,
    ConcentricForce,
    FilletSizeRequest,
    Joint,
    Packing,
    SharedForce,
    TensionMember,
)
from ...application.joints.loads import ForceComponents
from ...application.joints.metals import Filler, Part
from ...application.joints.rule_sets import ENTRIES
from ...engine.rule_set import Flange, Intermittent
from ...reference.loader import FILLER_METALS, MATERIALS
from ..fields import Choice, ChoiceOrObject, Either, Flag, Number, Object, Pair, Quantity
from . import ClosedSchema, RequestSchema, seams

FORCE_LIMIT, LENGTH_LIMIT, LINE_LIMIT = 1e8, 1e5, 1e6


def _length(description: str, **more: Any) -> Quantity:
    return Quantity(LENGTH, description, maximum=LENGTH_LIMIT, above=True, **more)


def _stress(description: str) -> Quantity:
    return Quantity(STRESS, description, minimum=1.0, maximum=2000.0, required=True)


class JointSchema(ClosedSchema):
    """Joint of two parts."""

    makes = Joint
    kind = Choice(("tee", "lap", "inside-corner"), "Kind of joint.", required=True)
    angle = seams.plate_angle("Angle between the plates on the first weld's side.", 10, 170)
    root_gap = seams.length("Gap between the parts at the root.", maximum=50.0, default="0 mm")
    sides = Choice((1, 2), "Number of sides welded, each by a weld of this size.", default=1)


class MaterialPartSchema(ClosedSchema):
    """Part of a listed material."""

    makes = Part
    thickness = Quantity(LENGTH, "Thickness.", minimum=seams.LEAST_THICKNESS, maximum=300.0, required=True)
    material = Choice(tuple(MATERIALS), "Material by its designation; see /v1/materials.", required=True)
    wall = Choice(
        ("design", "nominal"),
        "Which thickness of a hollow section is sent, with AISC rules: its design wall, as taken when not said, or the"
        " nominal one.",
    )


class StrengthPartSchema(ClosedSchema):
    """Part of given strength."""

    makes = Part
    thickness = Quantity(LENGTH, "Thickness.", minimum=seams.LEAST_THICKNESS, maximum=300.0, required=True)
    yield_strength = _stress("Yield strength.")
    tensile_strength = _stress("Tensile strength.")
    beta_w = Number("Correlation factor of EN 1993-1-8:2005, needed with it.", minimum=0.5, maximum=1.5)


class PlainPartSchema(ClosedSchema):
    """Part known by its thickness alone, for rules that claim no strength."""

    makes = Part
    thickness = Quantity(LENGTH, "Thickness.", minimum=seams.LEAST_THICKNESS, maximum=300.0, required=True)


PART_FORMS = (
    (("material",), MaterialPartSchema()),
    (("yield_strength", "tensile_strength", "beta_w"), StrengthPartSchema()),
    ((), PlainPartSchema()),
)


class ParametersSchema(ClosedSchema):
    """National or contract parameters over the rule set's own."""

    gamma_m2 = Number("Partial factor of welds, EN 1993-1-8.", minimum=1.0, maximum=2.0)
    gamma_m0 = Number("Partial factor of cross-sections, EN 1993-1-1.", minimum=1.0, maximum=2.0)
    gamma_mw = Number("Partial factor of welds, EN 1999-1-1.", minimum=1.0, maximum=2.0)
    beta_w = Number("Correlation factor for both parts, over that of their grades.", minimum=0.5, maximum=1.5)

    @post_load
    def _make(self, data: Mapping[str, Any], **kwargs: Any) -> Any:
        """Pairs of name and value, in a fixed order."""
        return tuple(sorted(data.items()))


class FillerSchema(ClosedSchema):
    """Filler metal of given strength."""

    makes = Filler
    tensile_strength = _stress("Tensile strength of the deposited metal.")


class FillerId(Choice):
    """Filler metal by its id."""

    def _deserialize(self, value: Any, attr: str | None, data: Mapping[str, Any] | None, **kwargs: Any) -> Any:
        return Filler(id=str(super()._deserialize(value, attr, data, **kwargs)))


class SharedForceSchema(ClosedSchema):
    """Force shared by the welds of all sides."""

    makes = SharedForce
    force = Quantity(FORCE, "Force on the joint.", maximum=FORCE_LIMIT, above=True, required=True)
    length = _length("Length of each weld.", required=True)
    angle = Quantity(
        ANGLE,
        "Angle of the force to the weld's axis: 0 deg along it, 90 deg across it.",
        maximum=pi / 2,
        required=True,
    )


def _component(description: str) -> Quantity:
    return Quantity(FORCE_PER_LENGTH, description, minimum=-LINE_LIMIT, maximum=LINE_LIMIT, default="0 N/mm")


class ForceComponentsSchema(ClosedSchema):
    """Force per length on one weld."""

    makes = ForceComponents
    normal = _component("Pulls part 2 off part 1 when positive.")
    transverse = _component("Pushes to the side the weld is on when positive.")
    longitudinal = _component("Runs along the weld.")
    length = _length("Length of the weld, where its length rules are to be checked.")


class ConcentricForceSchema(ClosedSchema):
    """Force through the centroid of a group of one size, with welds along it and across it."""

    makes = ConcentricForce
    force = Quantity(FORCE, "Force on the group.", maximum=FORCE_LIMIT, above=True, required=True)
    longitudinal_length = _length("Length of all welds along the force together.", required=True)
    transverse_length = _length("Length of all welds across the force together.", required=True)


class BalancedForceSchema(ClosedSchema):
    """Force along a member held by two side welds whose lengths are shared out about its centroid."""

    makes = BalancedForce
    force = Quantity(FORCE, "Force along the member.", maximum=FORCE_LIMIT, above=True, required=True)
    length = _length("Length of both side welds together.", required=True)
    width = _length("Distance between the two welds, such as the leg of an angle.", required=True)
    centroid = _length("Distance of the member's centroid from the first weld, such as an angle's heel.", required=True)


LOAD_FORMS = (
    (("longitudinal_length", "transverse_length"), ConcentricForceSchema()),
    (("width", "centroid"), BalancedForceSchema()),
    (("force", "angle"), SharedForceSchema()),
    ((), ForceComponentsSchema()),
)


class IntermittentSchema(ClosedSchema):
    """Intermittent fillet."""

    makes = Intermittent
    segment = _length("Length of each segment.", required=True)
    gap = _length("Clear gap between segments on one side; left out, the largest that is allowed.")
    staggered = Flag("Whether the segments of one side stand opposite the gaps of the other.", default=False)
    loading = Choice(("tension", "compression", "shear"), "What the welded parts carry.", required=True)
    member = Choice(
        ("built-up", "stiffener"),
        "What the welds make: plates of a built-up member, or a stiffener on its plate.",
        default="built-up",
    )
    exposure = Choice(
        ("protected", "weathering-steel", "corrosive"),
        "Painted or where nothing corrodes; unpainted weathering steel in the open air; or corrosive.",
        default="protected",
    )
    widths = Pair(
        _length("Width of one part."),
        "Widths of parts 1 and 2: EN 1993-1-8 in compression, in shear and in built-up members.",
    )


class TensionMemberSchema(ClosedSchema):
    """Tension member, part 2, held by longitudinal welds alone."""

    makes = TensionMember
    width = _length("Distance between the two welds: a flat bar's width. With a balanced load, load.width says it.")
    area = Quantity(AREA, "Its area; a flat bar's own when left out.", maximum=1e7, above=True)
    eccentricity = seams.length(
        "Distance of its centroid from the plane of the connection.", maximum=LENGTH_LIMIT, default="0 mm"
    )


class UnstiffenedFlangeSchema(ClosedSchema):
    """Unstiffened flange, part 1, under a plate, part 2."""

    makes = Flange
    web_thickness = _length("Thickness of the section's web, or of each of a box's.", required=True)
    plate_width = _length("Width of the plate across the flange.", required=True)
    section = Choice(("i", "box"), "I or H section; or box or channel about as wide as the plate.", default="i")
    root_radius = _length("Root radius of a rolled I section.")
    weld_throat = _length("Throat of the welds between web and flange of a welded I section.")


class PackingSchema(ClosedSchema):
    """Packing between the parts of a lap, flush with the edge that is welded."""

    makes = Packing
    thickness = Quantity(LENGTH, "Thickness.", maximum=100.0, above=True, required=True)


class FilletSizeSchema(RequestSchema):
    """Fillet to size."""

    makes = FilletSizeRequest
    title = "FilletSizeRequest"
    rule_set = Choice(tuple(ENTRIES), "Rules to size by; see /v1/rule-sets.", required=True)
    joint = Object(JointSchema(), "The joint.", required=True)
    parts = Pair(
        Either(PART_FORMS),
        "Parts 1 and 2. Part 1 is the part that runs through (tee), whose face is welded (lap).",
        required=True,
    )
    parameters = Object(ParametersSchema(), "Parameters over the rule set's own; Eurocodes only.")
    filler = ChoiceOrObject(
        FillerId(tuple(FILLER_METALS)), FillerSchema(), "Filler metal: an id (see /v1/filler-metals) or its strength."
    )
    process = seams.process()
    position = seams.position()
    basis = Choice(("load", "full-strength", "thin-part"), "What the size is based on.", required=True)
    # Marshmallow takes fields out of the class, so this one does not hide Schema.load.
    load = Either(  # type: ignore[assignment]
        LOAD_FORMS,
        'Load, with basis "load": a force shared by the welds, components per length, a force on a group along and'
        " across it, or one balanced about a member's centroid.",
    )
    end_loaded = Flag("Whether the long-weld reduction applies.", default=False)
    transverse_stiffener = Flag(
        "Whether the weld joins a transverse stiffener to a plated member, so that EN 1993-1-8 4.11(4) reduces it over"
        " 1.7 m.",
        default=False,
    )
    ends = Choice(
        ("full", "craters"),
        "Whether the weld is full size to its ends; if not, EN 1993-1-8 4.5.1(1) takes two throats off its length.",
        default="full",
    )
    root_bending = Flag(
        "Whether a tee welded from one side is sized for bending about its root too, by a model of our own beside"
        " EN 1993-1-8 4.12.",
        default=False,
    )
    packing = Object(PackingSchema(), "Packing between the parts of a lap, EN 1993-1-8 4.4.")
    intermittent = Object(IntermittentSchema(), "Segments and gaps, for an intermittent fillet.")
    tension_member = Object(TensionMemberSchema(), "Member to check for shear lag, AISC 360-22 Table D3.1 case 4.")
    unstiffened_flange = Object(
        UnstiffenedFlangeSchema(), "Flange to check under the plate, EN 1993-1-8 4.10; with full strength."
    )
    minimum_throat = Choice(
        ("din-na",), "National least throat beside the 3 mm of EN 1993-1-8: sqrt(t)-0.5 mm by the thicker part."
    )
    hss_end = Flag(
        "Whether the weld ends a rectangular hollow section in tension, so that AISC 360-22 J2.4(a)(2) leaves out the"
        " directional increase. Not said: left out wherever a part is a hollow section."
    )
    leg_tolerance = seams.length(
        "How much smaller a leg may be laid than specified; the size makes up for it.", maximum=50.0, default="0 mm"
    )
    edge_of = Choice((1, 2), "Part whose edge the weld of a lap runs along, so that the maximum size applies.")
    penetration = seams.penetration()
    size_by = Choice(("leg", "throat"), "What is rounded up to the step; throat for EN 1993-1-8, leg otherwise.")
    size_step = Quantity(
        LENGTH,
        "Step of the size: 1/16 in (us), 1 mm of leg or 0.5 mm of throat by default.",
        minimum=0.01,
        maximum=25.4,
    )
