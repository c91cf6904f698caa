"""Cautions of a groove's size: what the figures rest on, and what they do not cover."""

from ...engine.formula import Source
from ...engine.rule_set import GrooveLoad, RuleSet
from ...practice import groove_fill
from ..core.remarks import Remarks
from ..joints.metals import AISC
from ..joints.penetration_remarks import remark_on_achieved_depth, remark_on_penetration
from .preparations import SizedDetail
from .request import FlareWeld, FullWeld, GrooveSizeRequest, PartialWeld


def remark(
    request: GrooveSizeRequest, rules: RuleSet, load: GrooveLoad, chosen: SizedDetail | None, remarks: Remarks
) -> None:
    """Say what a groove's figures rest on and leave out."""
    weld = request.weld
    if isinstance(weld, PartialWeld):
        _about_partial(weld, rules, remarks)
    if isinstance(weld, PartialWeld | FullWeld):
        _about_preparation(weld, rules, chosen, remarks)
        if rules.scope.families != ("carbon-steel",):
            remarks.caution("metal-as-carbon-steel", "The mass of deposited metal is that of carbon steel, 7850 kg/m3.")
    if isinstance(weld, FlareWeld):
        remarks.caution(
            "flare-radius",
            "The radius is that of the joint's surface. Only at a hollow section may twice the design wall be sent as"
            " the radius.",
            Source(AISC, "Table J2.2", "second-hand"),
        )
    opened = isinstance(weld, FlareWeld) or (chosen is not None and chosen.detail.root in ("open", "backing"))
    if isinstance(weld, PartialWeld | FlareWeld) and opened and load.normal > 0.0:
        remarks.caution(
            "one-sided",
            "These figures leave out the bending that opens the root of a weld from one side. Keep the joint from"
            " turning, or weld the other side.",
            rules.grooves.one_sided,
        )
    if isinstance(weld, FullWeld) and chosen is not None:
        _about_root(request, rules, load, chosen, remarks)


def _about_partial(weld: PartialWeld, rules: RuleSet, remarks: Remarks) -> None:
    """Penetration, depth achieved, bearing and reinforcement of a partial penetration."""
    remark_on_penetration(weld.penetration, remarks)
    proven = rules.grooves.proven
    if weld.proven > 0.0 and proven is not None:
        remarks.caution("proven-penetration", f"Proven penetration counts {proven.text}.", proven.source)
    remark_on_achieved_depth(rules, remarks)
    if weld.bears:
        remarks.caution(
            "designed-to-bear",
            "The parts carry compression by bearing, and the weld carries none of it. The surfaces must be finished to"
            " bear. Where the member is not a column, its splice must also carry the least force of J1.4(b).",
            rules.grooves.bearing,
        )
    if weld.reinforcing_fillet > 0.0:
        remarks.caution(
            "throat-to-finished-face",
            "The throat runs to the finished face at an angle, so the whole force is taken as shear on it. The groove"
            " without its fillet must have the least throat.",
        )


def _about_preparation(
    weld: PartialWeld | FullWeld, rules: RuleSet, chosen: SizedDetail | None, remarks: Remarks
) -> None:
    """Where the preparation comes from."""
    standard = rules.grooves.details or "any standard"
    if chosen is None:
        if isinstance(weld, FullWeld):
            remarks.caution(
                "no-listed-preparation",
                f"No listed preparation of {standard} fits. The procedure must be qualified with a preparation of its"
                " own.",
            )
    elif chosen.detail.id is None:
        remarks.caution(
            "not-a-listed-detail",
            f"No listed detail of {standard} fits, so the preparation is sized by its form alone. The procedure must be"
            " qualified with it.",
        )
    elif isinstance(weld, FullWeld):
        remarks.caution(
            "gap-and-land",
            "A gap or a land that the request leaves open is taken in the middle of the range that the detail allows."
            " The metal deposited depends on both; send them for a figure of your own.",
        )


def _about_root(
    request: GrooveSizeRequest, rules: RuleSet, load: GrooveLoad, chosen: SizedDetail, remarks: Remarks
) -> None:
    """Root of a full penetration: open from one side, or on backing that stays."""
    root = chosen.detail.root
    if root == "open":
        remarks.caution(
            "one-side-without-backing",
            "The procedure must show full penetration from one side without backing. Naval practice counts at most 80 %"
            " of such a butt.",
            Source("MIL-STD-1689A(SH)", "one-side butt without backing", "second-hand"),
        )
    backing = rules.grooves.backing
    if root == "backing" and request.joint.kind in ("tee", "corner") and load.normal > 0.0 and backing is not None:
        remarks.caution(
            "backing-left-in",
            f"With backing left in at a tee or corner in tension the filler metal must be {backing.text}.",
            backing.source,
        )
    if root == "back-gouge":
        remarks.caution(
            "back-gouge",
            f"The metal of the gouge is that of a groove {remarks.units.text(groove_fill.GOUGE_DEPTH)} deep and"
            f" {remarks.units.text(groove_fill.GOUGE_WIDTH)} wide. Gouge to sound metal.",
        )
