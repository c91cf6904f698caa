"""Faults of a seam, its finish or its penetration, all found before anything is computed."""

from math import pi, sin

from ...engine.rounding import SAME, at_least, at_most
from ...engine.rule_set import RuleSet
from ...reference.loader import process as process_of
from ..core.faults import Faults
from .seams import FINISHES, Finish, Penetration, Seam, tangent_run


def check_tolerance(
    pointer: str, tolerance: float, length: float, name: str, faults: Faults, *, leaves_some: bool = False
) -> None:
    """Add a tolerance that is over its own length; with ``leaves_some`` also one that may leave nothing of it."""
    if tolerance > length or (leaves_some and at_least(tolerance, length)):
        text, least = faults.units.text, "smaller than" if leaves_some else "at most"
        faults.inconsistent(pointer, f"must be {least} the {name} of {text(length)}; it is {text(tolerance)}")


def counts_proven(rules: RuleSet | None, root_pass: str | None) -> bool:
    """Whether proven penetration of a seam counts: AISC 360-22 asks for a root pass that no hand makes."""
    return rules is None or rules.grooves.proven is None or root_pass is not None


def check_root_pass(rules: RuleSet | None, root_pass: str | None, process: str | None, faults: Faults) -> None:
    """Refuse a root pass that the rules do not ask for, or that the process does not make."""
    if root_pass is None:
        return
    if rules is None or rules.grooves.proven is None:
        name = "a request without rule_set" if rules is None else rules.id
        faults.inconsistent("#/root_pass", f"root_pass belongs to AISC 360-22, not to {name}; leave it out")
    elif process is not None and process_of(process).id == "SMAW":
        faults.inconsistent("#/root_pass", f"{process} is welding by hand, not {root_pass}; leave it out")


def check_seam(seam: Seam, faults: Faults) -> None:
    """Add what is wrong with a seam's own lengths."""
    if seam.kind == "closed-corner" and abs(seam.angle - pi / 2) > SAME:
        faults.out_of_scope(
            "#/seam/angle",
            "must be 90 deg for a closed corner; at another angle its edge is cut, so send an open corner",
        )
    if seam.kind == "half-open-corner" and seam.thickness is not None:
        most = seam.thickness[0] / sin(seam.angle)
        if not at_most(seam.overlap, most):
            faults.out_of_range(
                "#/seam/overlap",
                f"must be at most the {faults.units.text(most)} of part 1's end along the overlap; it is"
                f" {faults.units.text(seam.overlap)}",
            )
    if seam.thickness is not None:
        pointer, thinner = "#/seam/thickness_tolerance", min(seam.thickness)
        check_tolerance(pointer, seam.thickness_tolerance, thinner, "thickness", faults, leaves_some=True)
    if seam.legs is not None:
        pointer, shorter = "#/seam/legs_tolerance", min(seam.legs)
        check_tolerance(pointer, seam.legs_tolerance, shorter, "leg", faults, leaves_some=True)
    check_tolerance("#/seam/overlap_tolerance", seam.overlap_tolerance, seam.overlap, "overlap", faults)


def check_throat(seam: Seam, required: float, thinner_by: float, faults: Faults) -> None:
    """Add a throat that is greater than the thinner part, whose thickness may fall short: the part would part first."""
    room = min(seam.thickness or (0.0, 0.0)) - thinner_by
    if not at_most(required, room):
        faults.out_of_range(
            "#/required_throat",
            f"must be at most the {faults.units.text(room)} of the thinner part"
            f"{' at its least thickness' if thinner_by else ''}; it is {faults.units.text(required)}",
        )


def check_finish(seam: Seam, finish: Finish, faults: Faults) -> None:
    """Add a finish the seam cannot have, and a blend that runs off its faces."""
    possible = FINISHES[seam.kind]
    if finish.to not in possible:
        faults.inconsistent("#/finish/to", f"must be {' or '.join(possible)} for a {seam.kind}; it is {finish.to}")
    elif finish.radius is not None and seam.width is not None:
        run = tangent_run(finish.radius, seam.angle)
        if not at_most(run, min(seam.width)):
            faults.out_of_range(
                "#/finish/radius",
                f"must leave the blend within the {faults.units.text(min(seam.width))} of the narrower face; it runs"
                f" {faults.units.text(run)} onto each face",
            )


def check_penetration(seam: Seam, penetration: Penetration, faults: Faults) -> None:
    """Add a penetration that the seam has no room for."""
    if seam.kind == "half-open-corner" and not at_most(penetration.depth, seam.overlap):
        faults.out_of_range(
            "#/penetration/depth",
            f"must be at most the overlap of {faults.units.text(seam.overlap)}, along which it is measured; it is"
            f" {faults.units.text(penetration.depth)}",
        )
    check_tolerance("#/penetration/tolerance", penetration.tolerance, penetration.depth, "depth", faults)
