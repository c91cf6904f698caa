"""Request of ``/v1/crack-risk``."""

from ...application.core.quantities import LENGTH
from ...application.crack_risk.request import Bead, CrackRiskRequest, WeldMetal
from ..fields import Choice, Either, Flag, Object, Pair, Quantity
from . import ClosedSchema, RequestSchema, seams
from .steel import share


def _size(description: str, required: bool = True) -> Quantity:
    return Quantity(LENGTH, description, minimum=0.1, maximum=100.0, required=required)


class MeasuredBeadSchema(ClosedSchema):
    """One bead as a macro section shows it."""

    makes = Bead
    title = "MeasuredBead"
    width = _size("Greatest width of the bead.")
    depth = _size("Depth of the bead from its face.")
    face_width = _size("Width of its face, where the bead is wider below.", required=False)


class MitreBeadSchema(ClosedSchema):
    """Flat single-pass fillet of equal legs at 90 deg."""

    makes = Bead
    title = "MitreBead"
    throat = _size("Throat from the root to the face.")
    penetration = seams.length(
        "How deep fusion goes past the root, along the throat line.", maximum=100.0, required=True
    )


class WeldMetalSchema(ClosedSchema):
    """Weld metal as analysed, diluted by the plate."""

    makes = WeldMetal
    title = "WeldMetal"
    C = share(1.0, required=True)
    S = share(0.5, required=True)
    P = share(0.5, required=True)
    Nb = share(1.0, required=True)
    Si = share(5.0, required=True)
    Mn = share(5.0, required=True)


class CrackRiskSchema(RequestSchema):
    """One pass to grade; what is left out is not graded."""

    makes = CrackRiskRequest
    title = "CrackRiskRequest"
    joint = Choice(
        ("butt", "fillet", "corner"), "Joint that the pass is in; corner is an outside corner.", required=True
    )
    bead = Either(
        [(("throat", "penetration"), MitreBeadSchema()), ((), MeasuredBeadSchema())],
        "Shape of the bead, never of the whole weld.",
    )
    hollow = seams.length("Depth of a hollow face under the line between its toes.", maximum=50.0)
    restrained = Flag("Whether the joint is held so that it cannot give as the bead shrinks.", default=False)
    weld_metal = Object(WeldMetalSchema(), "Composition of the weld metal, for the index UCS.")
    process = seams.process()
    thickness = Pair(seams.thickness("Thickness of one part."), "Thickness of parts 1 and 2, for the least fillet.")
    leg = Quantity(LENGTH, "Leg of the first, or only, pass.", minimum=0.5, maximum=100.0)
    low_hydrogen = Flag(
        "Whether the process is low in hydrogen or the steel preheated: AWS D1.1 then goes by the thinner part.",
        default=False,
    )
    crater = Choice(("filled", "unfilled"), "How the crater is left.")
