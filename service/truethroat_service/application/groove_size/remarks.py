"""What is said beside a groove's size: why it is what it is, and what it does not cover."""

from ...engine import loads
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
            remarks.caution("metal-as-carbon-steel", "Deposited metal is weighed as carbon steel, 7850 kg/m3.")
    if isinstance(weld, FlareWeld):
        remarks.caution(
            "flare-radius",
            "The radius is that of the joint's surface; twice the design wall may stand for it only at a hollow"
            " section.",
            Source(AISC, "Table J2.2", "second-hand"),
        )
    opened = isinstance(weld, FlareWeld) or (chosen is not None and chosen.detail.root in ("open", "backing"))
    if isinstance(weld, PartialWeld | FlareWeld) and opened and load.normal > 0.0:
        remarks.caution(
            "one-sided",
            "Welded from one side with its root in tension: bending that opens the root is not in these figures. Keep"
            " the joint from turning or weld the other side.",
            rules.grooves.one_sided,
        )
    if request.part_1_sheared and load.normal != 0.0:
        remarks.caution(
            "bending-of-part-1",
            "The force across part 1 shears it through its thickness beside the weld, and that is checked. It also"
            " bends part 1, and that is not checked. Where a plate stands behind part 1, send joint.stiffened_behind.",
            loads.STATICS,
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
            "Compression goes through bearing and is not in the weld; the surfaces must be finished to bear, and the"
            " splice of a member that is no column still takes the least force of J1.4(b).",
            rules.grooves.bearing,
        )
    if weld.reinforcing_fillet > 0.0:
        remarks.caution(
            "throat-to-finished-face",
            "The throat runs to the finished face at a slant, so every part of the force is taken as shear on it; the"
            " least throat is kept by the groove without its fillet.",
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
                f"No preparation of {standard} listed here fits; the procedure has to be qualified with its own.",
            )
    elif chosen.detail.id is None:
        remarks.caution(
            "not-a-listed-detail",
            f"The preparation goes by its form alone: no detail of {standard} is listed here for it, so the procedure"
            " has to be qualified with it.",
        )
    elif isinstance(weld, FullWeld):
        remarks.caution(
            "gap-and-land",
            "Where the detail allows a range and the request names no value, the middle of gap and land is taken;"
            " the metal goes by them.",
        )


def _about_root(
    request: GrooveSizeRequest, rules: RuleSet, load: GrooveLoad, chosen: SizedDetail, remarks: Remarks
) -> None:
    """Root of a full penetration: open from one side, or on backing that stays."""
    root = chosen.detail.root
    if root == "open":
        remarks.caution(
            "one-side-without-backing",
            "Full penetration from one side without backing has to be shown by the procedure; naval practice counts no"
            " more than 80 % of such a butt.",
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
            f" {remarks.units.text(groove_fill.GOUGE_WIDTH)} wide; gouge to sound metal.",
        )
