"""What an answer says about penetration that is not proven, and about a prepared depth that a test must show.

Strength counts proven penetration only. Penetration that is assumed or measured may be shown beside it, never in it.
"""

from ...engine.rule_set import RuleSet
from ..core.remarks import Remarks
from .seams import Penetration


def remark_on_penetration(
    penetration: Penetration | None, remarks: Remarks, consequence: str = "It does not count."
) -> None:
    """Add the caution that penetration is not proven, with the sentence that says what follows from it."""
    if penetration is not None and penetration.depth > 0.0 and penetration.vouched != "proven":
        remarks.caution(
            penetration.code,
            f"The penetration of {remarks.units.text(penetration.depth)} is {penetration.vouched}; no qualified"
            f" procedure proves it. {consequence}",
        )


def remark_on_root_pass(proven: float, rules: RuleSet, remarks: Remarks) -> None:
    """Add the caution that proven penetration is not credited, because nobody says how the root pass is made."""
    remarks.caution(
        "penetration-not-counted",
        f"The proven penetration of {remarks.units.text(proven)} does not count, because the request does not say that"
        " the root pass is mechanized, automatic or robotic: send root_pass.",
        None if rules.grooves.proven is None else rules.grooves.proven.source,
    )


def remark_on_achieved_depth(rules: RuleSet | None, remarks: Remarks) -> None:
    """Add the caution that tests must show the depth of a groove, where the rules take no fixed amount off it."""
    if rules is not None and rules.groove.by_test is not None:
        remarks.caution(
            "depth-consistently-achieved",
            "No fixed amount is taken off the prepared depth. A procedure test must show that the depth is achieved"
            " consistently.",
            rules.groove.by_test,
        )
