"""Request of ``/v1/distortion``."""

from functools import partial
from math import radians

from ...application.core.quantities import ANGLE, AREA, CURRENT, ENERGY_PER_LENGTH, FORCE, LENGTH, SECOND_MOMENT
from ...application.distortion.request import (
    Butt,
    Calibration,
    DistortionRequest,
    Groove,
    Lap,
    Member,
    Restraint,
    Tee,
    Tolerances,
)
from ..fields import Choice, Number, Object, Quantity, Variant
from . import ClosedSchema, RequestSchema, seams

LARGEST = 1e5
WELD_AREA = partial(Quantity, AREA, minimum=1.0, maximum=1e4)
LEAST_NOMINAL = 2.0


def _thickness(description: str) -> Quantity:
    return Quantity(LENGTH, description, minimum=0.5, maximum=seams.LARGEST_LENGTH, required=True)


def _opening() -> Quantity:
    return seams.length("Root opening.", maximum=50.0, default="0 mm")


def _runs() -> Choice:
    return Choice(tuple(range(1, 41)), "Runs of a weld from one side.")


class RestraintSchema(ClosedSchema):
    """Plate held on both sides of the weld."""

    makes = Restraint
    span = Quantity(LENGTH, "Span between what holds the plate.", minimum=10.0, maximum=LARGEST, required=True)
    coefficient = Quantity(
        FORCE,
        "Coefficient of angular change: moment for each radian, on each unit of weld length.",
        minimum=1.0,
        maximum=1e9,
        required=True,
    )


def _restraint() -> Object:
    return Object(RestraintSchema(), "What holds the plate; left out, the joint turns freely.")


class SquareGrooveSchema(ClosedSchema):
    """Square edges with an opening."""

    makes = Groove
    title = "SquareGrooveFill"
    groove = Choice(("square",), required=True)
    root_opening = Quantity(LENGTH, "Root opening, which holds all the metal.", maximum=50.0, above=True, required=True)


class _CutSchema(ClosedSchema):
    makes = Groove
    root_opening = _opening()
    land = seams.length("Land left at the root, or between the sides.", maximum=100.0, default="0 mm")


class _VSchema(_CutSchema):
    groove_angle = seams.groove_angle("Included angle of the V; 60 deg when left out.")


class _BevelSchema(_CutSchema):
    groove_angle = Quantity(ANGLE, "Angle of the bevel; 45 deg when left out.", minimum=radians(5), maximum=radians(70))


class SingleVSchema(_VSchema):
    """V from one side."""

    title = "SingleVFill"
    groove = Choice(("single-v",), required=True)


class SingleBevelSchema(_BevelSchema):
    """Bevel from one side."""

    title = "SingleBevelFill"
    groove = Choice(("single-bevel",), required=True)


class DoubleVSchema(_VSchema):
    """V from both sides, alike."""

    title = "DoubleVFill"
    groove = Choice(("double-v",), required=True)


class DoubleBevelSchema(_BevelSchema):
    """Bevel from both sides, alike."""

    title = "DoubleBevelFill"
    groove = Choice(("double-bevel",), required=True)


class ByAreaSchema(ClosedSchema):
    """Weld from one side known by its metal, cap and all."""

    makes = Groove
    title = "FillByArea"
    groove = Choice(("by-area",), required=True)
    area = WELD_AREA("Deposited area.", required=True)
    root_opening = _opening()
    face_width = seams.length("Width of the weld at its face, for its angular change.", maximum=300.0)
    root_width = seams.length("Width of the weld at its root, for its angular change.", maximum=300.0)


GROOVES: dict[str, ClosedSchema] = {
    "square": SquareGrooveSchema(),
    "single-v": SingleVSchema(),
    "single-bevel": SingleBevelSchema(),
    "double-v": DoubleVSchema(),
    "double-bevel": DoubleBevelSchema(),
    "by-area": ByAreaSchema(),
}


class ButtJointSchema(ClosedSchema):
    """Butt weld through a thickness."""

    makes = Butt
    kind = Choice(("butt",), required=True)
    thickness = _thickness("Thickness of the thinner plate.")
    weld = Variant("groove", GROOVES, "The weld: its groove filled flush, or its area.", required=True)
    runs = _runs()
    current = Quantity(CURRENT, "Welding current, for one method along the weld.", minimum=1.0, maximum=3000.0)
    restraint = _restraint()


def _leg() -> Quantity:
    return Quantity(LENGTH, "Leg of each fillet.", minimum=0.5, maximum=100.0, required=True)


def _fillet_metal() -> Quantity:
    return WELD_AREA("Deposited area of one fillet; half the square of its leg when left out.")


def _welded_share() -> Number:
    return Number("Share of the length that is welded.", minimum=0.05, maximum=1.0, default=1)


class TeeJointSchema(ClosedSchema):
    """Fillets of a plate that stands on another."""

    makes = Tee
    kind = Choice(("tee",), required=True)
    thickness = _thickness("Thickness of the part that runs through, which the fillets shorten and turn.")
    width = Quantity(LENGTH, "Full width of that part, as a flange.", minimum=5.0, maximum=1e4)
    leg = _leg()
    area = _fillet_metal()
    sides = Choice((1, 2), "Number of sides welded.", default=1)
    welded_share = _welded_share()
    runs = _runs()
    restraint = _restraint()


class LapJointSchema(ClosedSchema):
    """Two fillets of a lap."""

    makes = Lap
    kind = Choice(("lap",), required=True)
    thickness = _thickness("Thickness of the thinner part.")
    leg = _leg()
    area = _fillet_metal()
    welded_share = _welded_share()


JOINTS = {"butt": ButtJointSchema(), "tee": TeeJointSchema(), "lap": LapJointSchema()}


class MemberSchema(ClosedSchema):
    """Section that the welds shorten, and bend where they lie off its axis."""

    makes = Member
    area = Quantity(AREA, "Area of its section.", minimum=10.0, maximum=1e7, required=True)
    second_moment = Quantity(SECOND_MOMENT, "Second moment of its area.", minimum=10.0, maximum=1e13)
    eccentricity = Quantity(LENGTH, "Distance of the welds' centroid from its neutral axis.", maximum=1e4, above=True)


def _nominal(description: str) -> Quantity:
    return Quantity(LENGTH, description, minimum=LEAST_NOMINAL, maximum=LARGEST)


class TolerancesSchema(ClosedSchema):
    """Drawing's general tolerances, ISO 13920:1996."""

    makes = Tolerances
    title = "WeldingTolerances"
    linear_class = Choice(("A", "B", "C", "D"), "Class of lengths and angles to keep.")
    form_class = Choice(("E", "F", "G", "H"), "Class of straightness and flatness to keep.")
    across = _nominal("Dimension across the weld, which it shortens.")
    along = _nominal("Dimension along the weld, which it shortens and bends.")
    shorter_leg = _nominal("Shorter leg of the angle it changes.")


def _factor(description: str) -> Number:
    return Number(description, minimum=0.1, maximum=10.0, default=1)


class CalibrationSchema(ClosedSchema):
    """What the shop measured on like joints over what the methods say: a factor on each."""

    makes = Calibration
    transverse = _factor("Across the weld.")
    longitudinal = _factor("Along the weld.")
    angular = _factor("Of angles, and of the lift of a flange's edges.")
    bowing = _factor("Of bows.")


class DistortionSchema(RequestSchema):
    """Joint whose distortion is asked for."""

    makes = DistortionRequest
    title = "DistortionRequest"
    joint = Variant("kind", JOINTS, "The joint.", required=True)
    length = Quantity(LENGTH, "Length of the joint, along its welds.", minimum=1.0, maximum=LARGEST)
    member = Object(MemberSchema(), "Section of the member that the welds run along.")
    heat_input = Quantity(
        ENERGY_PER_LENGTH,
        "Heat input of one run, net of arc efficiency, for two methods along the weld.",
        minimum=0.01,
        maximum=100.0,
    )
    iso_13920 = Object(TolerancesSchema(), "General tolerances to hold the estimates against.")
    calibration = Object(CalibrationSchema(), "The shop's own measurements over these methods.")
    size_step = Quantity(
        LENGTH,
        "Step by which the alternatives grow, of the leg or of the root opening: 1/16 in (us) or 1 mm by default.",
        minimum=0.01,
        maximum=25.4,
    )
