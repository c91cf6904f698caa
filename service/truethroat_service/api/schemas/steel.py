"""Compositions and carbon equivalents in requests."""

from ...application.heat.steel import Composition
from ..fields import Flag, Number
from . import ClosedSchema


def share(maximum: float, **more: object) -> Number:
    """Share of an element in weight %."""
    return Number("Weight %.", minimum=0.0, maximum=maximum, **more)


class CompositionSchema(ClosedSchema):
    """Composition of the parent steel. An element left out is not guessed: what needs it is left out of the answer."""

    makes = Composition
    title = "Composition"
    C = share(1.0, required=True)
    Si = share(5.0)
    Mn = share(5.0)
    Cr = share(30.0)
    Mo = share(10.0)
    Ni = share(40.0)
    Cu = share(5.0)
    V = share(2.0)
    Nb = share(2.0)
    Ti = share(2.0)
    B = share(0.1)
    others_zero = Flag("Whether an element left out is none, as the certificate says.", default=False)
