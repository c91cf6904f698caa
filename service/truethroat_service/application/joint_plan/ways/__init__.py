"""Ways to make one joint: each sized and prepared by the single resources, by the same rules.

A way that its rules, its access or its finish rule out raises ``Unworkable`` with the reasons.
"""

from collections.abc import Mapping
from types import MappingProxyType

from ..answer import WayName
from ..request import Kind
from . import fillets, grooves, seams
from .way import Way

WAYS: Mapping[Kind, Mapping[WayName, Way]] = MappingProxyType(
    {
        "tee": {
            "fillet-one-side": fillets.one_side,
            "fillet-both-sides": fillets.both_sides,
            "fillet-intermittent": fillets.intermittent,
            "partial-groove": grooves.partial,
            "partial-groove-and-fillet": grooves.partial_and_fillet,
            "full-penetration": grooves.full,
        },
        "lap": {
            "fillet-one-side": fillets.one_side,
            "fillet-both-sides": fillets.both_sides,
            "fillet-intermittent": fillets.intermittent,
        },
        "inside-corner": {"fillet-one-side": fillets.one_side},
        "outside-corner": {
            "square-edge": seams.square,
            "face-left": seams.face_left,
            "bevelled-edge": seams.bevelled,
            "half-open-corner": seams.half_open_corner,
            "open-corner": seams.open_corner,
            "fillet-inside": seams.inside_fillet,
        },
        "butt": {
            "square-edge": seams.square,
            "face-left": seams.face_left,
            "bevelled-edge": seams.bevelled,
            "partial-groove": grooves.partial,
            "full-penetration": grooves.full,
        },
    }
)
"""Ways to make each kind of joint, by their names in answers."""
