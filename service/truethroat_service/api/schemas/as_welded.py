"""Request of ``/v1/as-welded``."""

from ...application.as_welded import QUALITIES, AsWeldedRequest, Required
from ...application.quantities import LENGTH
from ..fields import Choice, Either, Number, Pair, Quantity
from . import ClosedSchema, RequestSchema, seams


def _size(description: str) -> Quantity:
    return Quantity(LENGTH, description, minimum=0.5, maximum=100.0, required=True)


class RequiredLegSchema(ClosedSchema):
    """A leg on the drawing."""

    makes = Required
    title = "RequiredLeg"
    leg = _size("Equal leg required.")


class RequiredThroatSchema(ClosedSchema):
    """A throat on the drawing."""

    makes = Required
    title = "RequiredThroat"
    throat = _size("Throat required.")


class AsWeldedSchema(RequestSchema):
    """Fillet as it was gauged."""

    makes = AsWeldedRequest
    title = "AsWeldedRequest"
    legs = Pair(
        Quantity(LENGTH, "Leg along one face.", minimum=0.5, maximum=100.0),
        "Legs as gauged, along the faces of parts 1 and 2.",
        required=True,
    )
    angle = seams.plate_angle("Angle between the plates.", 60, 120)
    throat = Quantity(LENGTH, "Throat as gauged; caps what the legs give.", maximum=100.0, above=True)
    convexity = seams.length("Height of the face over the line between its toes.", maximum=50.0)
    hollow = seams.length("Depth of a hollow face under that line, instead of convexity.", maximum=50.0)
    root_gap = seams.length("Gap between the parts at the root.", maximum=20.0, default="0 mm")
    undercut = seams.length("Deepest undercut at either toe.", maximum=20.0)
    thickness = Pair(seams.thickness("Thickness of one part."), "Thickness of parts 1 and 2.", required=True)
    required = Either(
        [(("leg",), RequiredLegSchema()), (("throat",), RequiredThroatSchema())], "What was asked for.", required=True
    )
    quality = Choice(QUALITIES, "Level or code that the weld is held to.", required=True)
    reading_tolerance = seams.length(
        "Plus or minus of the gauge, on legs, throat, hollow and gap.", maximum=5.0, default="0 mm"
    )
    short_share = Number(
        "Share of the length where the weld is as small as read; the whole when left out.", minimum=0.0, maximum=1.0
    )
    penetration = seams.penetration()
