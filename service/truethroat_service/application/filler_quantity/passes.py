"""Number of passes of a weld: the least by the limits of a code, and the range by layers and by the area of a pass."""

from math import isfinite

from ...engine.formula import cite
from ...engine.rounding import SAME, at_most
from ...practice import passes as practice
from ...standards.aws_d1_1_2020 import s5_pass_limits
from ..joints.usual_rates import Figure
from ..joints.weld_sections import Section
from .answer import PassCount, PassCounts


def passes(
    section: Section, excess: float, process: str | None, orientation: str | None, bead: Figure | None
) -> PassCounts | None:
    """Passes of a section, from least to most, with every way to count them; None where there is no way to count.

    ``process`` is an id. ``least`` is never smaller than AWS D1.1 Table 5.1 requires. ``most`` comes from horizontal
    layers and the range of the area of a pass; layers are left out where the request gives that area. The count of the
    AISC Manual by leg is from memory: it is shown, and used only where there is no other count.
    """
    counts = _limits(section, process, orientation)
    if bead is not None:
        counts.append(_by_area(section, excess, bead))
        if not bead.given and process is not None and orientation == "horizontal":
            counts += _layers(section.leg, process)
    used = list(counts)
    if section.leg is not None and at_most(section.leg, practice.LARGEST_LISTED):
        by_leg = int(float(practice.passes_by_table(z=section.leg)))
        counts.append(PassCount("handbook", by_leg, by_leg, str(practice.MANUAL)))
        used = used or counts
    if not used:
        return None
    # Layers describe how a shop builds a weld, not how few passes suffice.
    low = max(count.least for count in used if count.by != "layers")
    return PassCounts(low, max(count.most for count in used), tuple(counts))


def _limits(section: Section, process: str | None, orientation: str | None) -> list[PassCount]:
    """Least passes of a prequalified procedure; empty for what its table does not list."""
    if process is None or orientation is None:
        return []
    if section.leg is not None:
        limit = s5_pass_limits.single_pass_leg(process, orientation)
        if limit is None:
            return []
        least = 1
        if isfinite(limit):
            least = int(float(s5_pass_limits.least_passes(z=section.leg, z_pass=limit, same=SAME)))
        cite(s5_pass_limits.TABLE_5_1)
        return [PassCount("single-pass-limit", least, least, str(s5_pass_limits.TABLE_5_1))]
    thickness = s5_pass_limits.pass_thickness(process, orientation)
    if thickness is None or not section.depths:
        return []
    root, fill = thickness
    least = sum(
        int(float(s5_pass_limits.least_groove_passes(d=depth, t_root=root, t_fill=fill, same=SAME)))
        if isfinite(root)
        else 1
        for depth in section.depths
    )
    cite(s5_pass_limits.TABLE_5_1)
    return [PassCount("pass-thickness", least, least, str(s5_pass_limits.TABLE_5_1))]


def _layers(leg: float | None, process: str) -> list[PassCount]:
    """Passes of a horizontal fillet built up in layers."""
    limit = s5_pass_limits.single_pass_leg(process, "horizontal")
    if leg is None or limit is None:
        return []
    number = practice.layers(z=leg, z_pass=limit, same=SAME)
    built = int(float(practice.passes_in_layers(n_l=number)))
    return [PassCount("layers", built, built, str(practice.LAYERS))]


def _by_area(section: Section, excess: float, bead: Figure) -> PassCount:
    """Passes by the area that one fills."""

    def filled(area: float) -> int:
        return int(float(practice.passes_by_area(A=section.area, x=excess, A_b=area, same=SAME)))

    low = filled(bead.most)
    return PassCount("bead-area", low, low if bead.least == bead.most else filled(bead.least), str(practice.BEADS))
