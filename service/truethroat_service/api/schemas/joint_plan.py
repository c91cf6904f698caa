"""Request of ``/v1/joint-plan``."""

from math import pi

from ...application.core.quantities import ANGLE, FORCE, GAS_FLOW, HYDROGEN, LENGTH, SPEED, TEMPERATURE
from ...application.filler_quantity.request import DEPOSITION_FORMS, Prices
from ...application.joint_plan.request import (
    JointPlanRequest,
    PlanForce,
    PlanIntermittent,
    PlanJoint,
    PlanTolerances,
    Weights,
)
from ...application.joints.quality_sets import QUALITY_SETS
from ...application.joints.rule_sets import ENTRIES
from ...application.joints.throat_chance import Spread
from ...reference.loader import FILLER_METALS
from ...standards.aws_d1_1_2020.s5_preheat import CATEGORIES
from ..derive import schema_of
from ..fields import Choice, ChoiceOrObject, Either, Flag, Number, Object, Pair, Quantity
from . import ClosedSchema, RequestSchema, seams
from .fillet_size import FORCE_LIMIT, LENGTH_LIMIT, PART_FORMS, FillerId, FillerSchema, ParametersSchema
from .heat import ArcEnergySchema, ArcSettingsSchema, HeatInputSchema, WindowSchema
from .steel import CompositionSchema

KINDS = ("tee", "lap", "inside-corner", "outside-corner", "butt")


class PlanJointSchema(ClosedSchema):
    """How the parts meet."""

    makes = PlanJoint
    kind = Choice(
        KINDS,
        "Tee: part 1 runs through. Lap: part 1's face is welded. Outside corner: the end of part 1 meets part 2,"
        " however its edges are then set.",
        required=True,
    )
    angle = seams.plate_angle("Angle between the plates.", 30, 150)
    root_gap = seams.length("Gap between the parts at the root.", maximum=50.0, default="0 mm")


class PlanForceSchema(ClosedSchema):
    """Force on the whole joint."""

    makes = PlanForce
    force = Quantity(
        FORCE, "Force on the joint, all its welds together.", maximum=FORCE_LIMIT, above=True, required=True
    )
    angle = Quantity(
        ANGLE,
        "Angle of the force to the weld's axis: 0 deg along it, 90 deg across it.",
        maximum=pi / 2,
        required=True,
    )


class PlanTolerancesSchema(ClosedSchema):
    """Plus or minus of what the shop makes; the grinder's goes with the finish, penetration's with it."""

    makes = PlanTolerances
    legs = seams.length("Of each leg of a fillet.", maximum=50.0, default="0 mm")
    depth = seams.length("Of a prepared depth.", maximum=50.0, default="0 mm")
    thickness = seams.length("Of the parts.", maximum=50.0, default="0 mm")
    face_height = seams.length("Of a face left standing.", maximum=50.0, default="0 mm")


class SpreadSchema(ClosedSchema):
    """How lengths lie within their tolerances."""

    makes = Spread
    distribution = Choice(
        ("even", "normal"),
        "Evenly between the ends of the tolerance, where nothing more is known; or normally about the middle.",
        default="even",
    )
    deviations = Number(
        "Standard deviations that a tolerance is, of a normal distribution; two by default.", minimum=1.0, maximum=6.0
    )


class PlanIntermittentSchema(ClosedSchema):
    """What an intermittent weld carries, what it makes and where it stands."""

    makes = PlanIntermittent
    loading = Choice(("tension", "compression", "shear"), "What the welded parts carry.", required=True)
    member = Choice(
        ("built-up", "stiffener"),
        "Plates of a built-up member, or a stiffener on its plate.",
        default="built-up",
    )
    exposure = Choice(
        ("protected", "weathering-steel", "corrosive"),
        "Painted or where nothing corrodes; unpainted weathering steel in the open air; or corrosive.",
        default="protected",
    )
    widths = Pair(
        Quantity(LENGTH, "Width of one part.", maximum=LENGTH_LIMIT, above=True),
        "Widths of parts 1 and 2, where the rules go by them.",
    )


def _weight(description: str) -> Number:
    return Number(description, minimum=0.0, maximum=1000.0, default=1)


class WeightsSchema(ClosedSchema):
    """What each cost counts against the others; 0 leaves it out."""

    makes = Weights
    filler = _weight("Weld metal.")
    time = _weight("Time on the clock.")
    heat = _weight("Arc energy put into the joint.")
    distortion = _weight("Angular change.")


class JointPlanSchema(RequestSchema):
    """Joint to plan."""

    makes = JointPlanRequest
    title = "JointPlanRequest"
    rule_set = Choice(tuple(ENTRIES), "Rules to plan by; see /v1/rule-sets.", required=True)
    joint = Object(PlanJointSchema(), "The joint.", required=True)
    parts = Pair(Either(PART_FORMS), "Parts 1 and 2.", required=True)
    length = Quantity(LENGTH, "Length of the seam.", maximum=LENGTH_LIMIT, above=True, required=True)
    basis = Choice(
        ("load", "full-strength", "throat"),
        "What the weld is sized for; an outside corner for a throat, a butt for any, other joints for a load or full"
        " strength.",
        required=True,
    )
    # Marshmallow takes fields out of the class, so this one does not hide Schema.load.
    load = Object(PlanForceSchema(), 'Load, with basis "load".')  # type: ignore[assignment]
    required_throat = Quantity(
        LENGTH, 'Throat the finished seam must keep, with basis "throat".', maximum=seams.LARGEST_LENGTH, above=True
    )
    process = seams.process(required=True)
    position = seams.position(required=True)
    access = Choice(("one-side", "both-sides"), "Sides the seam can be welded from.", default="both-sides")
    held_from_turning = Flag(
        "Whether the joint is held from turning about the weld, so that a load does not open one side from its root.",
        default=False,
    )
    finish = seams.finish(default={"to": "as-welded"})
    filler = ChoiceOrObject(
        FillerId(tuple(FILLER_METALS)), FillerSchema(), "Filler metal: an id (see /v1/filler-metals) or its strength."
    )
    parameters = Object(ParametersSchema(), "Parameters over the rule set's own; Eurocodes only.")
    intermittent = Object(PlanIntermittentSchema(), "For an intermittent weld, which is left out without it.")
    penetration = seams.penetration()
    tolerances = Object(PlanTolerancesSchema(), "Tolerances of the shop, for the throat budget.")
    spread = Object(SpreadSchema(), "How lengths lie within their tolerances, for the chance of a short throat.")
    quality = Choice(
        tuple(QUALITY_SETS),
        "Level or code of the hold values: AWS D1.1:2020 with AISC rules, ISO 5817 level C with Eurocodes, by default.",
    )
    arc = Either(
        [
            (("arc_energy",), ArcEnergySchema()),
            (("heat_input",), HeatInputSchema()),
            (("voltage", "current", "travel_speed", "deposition_rate"), ArcSettingsSchema()),
        ],
        "The arc of one pass: its settings, its energy, or its heat input. Without it heat goes by the metal laid.",
    )
    preheat = Quantity(
        TEMPERATURE,
        "Temperature of the plate when a pass begins; 20 degC by default.",
        minimum=-50.0,
        maximum=400.0,
    )
    cooling_window = Object(WindowSchema(), "Cooling times t8/5 to judge against.")
    composition = Object(CompositionSchema(), "Composition of the parent steel.")
    hydrogen = Quantity(HYDROGEN, "Diffusible hydrogen of the weld metal.", maximum=100.0, above=True)
    preheat_category = Choice(tuple(CATEGORIES), "Category of AWS D1.1 for preheat, as /v1/heat has it.")
    deposition = Either(
        [(names, schema_of(kind)) for names, kind in DEPOSITION_FORMS],
        "Deposition rate, or the wire and its feed; usual rates of the process by default.",
    )
    efficiency = Number("Share of the consumable that is deposited.", minimum=0.05, maximum=1.0)
    gas_flow = Quantity(GAS_FLOW, "Shielding gas while the arc burns.", minimum=1e4, maximum=2e6)
    operator_factor = Number("Share of the clock during which the arc burns.", minimum=0.01, maximum=1.0)
    bevelling_speed = Quantity(
        SPEED, "Speed at which one face of an edge is cut, its share of the clock in it.", maximum=1000.0, above=True
    )
    prices = Object(schema_of(Prices), "The caller's own prices; there are no others.")
    weights = Object(WeightsSchema(), "What each cost counts in the ranking.")
    detail = Choice(
        ("recommended", "all"),
        "Whether the single resources' answers come whole for the recommended way alone, or for all.",
        default="recommended",
    )
