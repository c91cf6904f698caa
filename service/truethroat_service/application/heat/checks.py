"""Faults that refuse a request for the heat of a pass."""

from ...engine.formula import Source
from ...engine.rounding import at_least
from ...reference.loader import process as process_of
from ...standards.en_1011_2_2001 import annex_d_cooling
from ..core.faults import Faults
from .cooling import Seam
from .preheat import MethodB, check_method_b
from .request import FILLETS, Energy, HeatRequest, thermal_efficiency, thickest_part
from .steel import LARGEST_ALLOY, CarbonEquivalents

LOW_ALLOY = Source(
    "", f"low-alloy steel: alloying elements up to {LARGEST_ALLOY:g} % together", "common practice, no source"
)


def check(request: HeatRequest, faults: Faults) -> None:
    """Refuse what contradicts, or needs, another field."""
    if not _asks(request):
        faults.inconsistent(
            "#",
            "nothing can be worked out of this: send an arc, a composition, a cooling time, a hydrogen content, a leg,"
            " a window with thickness and seam, or a preheat category with a thickness",
        )
    if request.cooling_time is not None and request.arc is not None:
        faults.inconsistent("#/cooling_time", "the time is measured, or worked out of the arc: leave one of them out")
    if request.composition is not None and request.carbon_equivalents is not None:
        faults.inconsistent("#/carbon_equivalents", "they follow from the composition; leave them out")
    if request.cooling_window is not None and at_least(request.cooling_window.least, request.cooling_window.most):
        faults.inconsistent("#/cooling_window", "its least time is not under its most")
    if request.process is not None and thermal_efficiency(request) is None:
        faults.out_of_scope(
            "#/process",
            f"EN 1011-1:2009 has no thermal efficiency for {process_of(request.process).id}; send an arc process",
        )
    thickest = thickest_part(request)
    if thickest is not None and request.thickness is not None and not at_least(thickest, request.thickness):
        faults.inconsistent("#/thickest_part", "it is thinner than the thickness given")
    _check_companions(request, faults)


def _check_companions(request: HeatRequest, faults: Faults) -> None:
    """Refuse fields that say nothing without another."""
    arc, fillet = request.arc, request.seam in FILLETS
    fillets = f"a fillet: seam {' or '.join(FILLETS)}"
    deposition = arc is not None and arc.deposition_rate is not None
    needed = {
        "weld_metal_cet": (request.weld_metal_cet is not None, request.hydrogen is not None, "hydrogen, for method B"),
        "combined_thickness": (
            request.combined_thickness is not None,
            request.hydrogen is not None,
            "hydrogen, for method A",
        ),
        "thickest_part": (request.thickest_part is not None, request.preheat_category is not None, "preheat_category"),
        "heat_treated": (request.heat_treated, request.steel_group is not None, "steel_group"),
        "steel_group": (request.steel_group is not None, request.composition is not None, "composition"),
        "leg": (request.leg is not None, fillet, fillets),
        "required_leg": (request.required_leg is not None, request.leg is not None, "the leg that is laid: leg"),
        "arc/deposition_rate": (deposition, fillet, fillets),
        "arc/travel_speed": (deposition, arc is not None and arc.travel_speed is not None, "deposition_rate: send it"),
    }
    for field, (given, companion, said) in needed.items():
        if given and not companion:
            faults.inconsistent(f"#/{field}", f"goes with {said}")


def _asks(request: HeatRequest) -> bool:
    """Whether anything at all can be answered."""
    arc = request.arc
    return any(
        (
            arc is not None
            and (arc.travel_speed is not None or arc.arc_energy is not None or arc.heat_input is not None),
            request.composition is not None,
            request.carbon_equivalents not in (None, CarbonEquivalents()),
            request.cooling_time is not None,
            request.hydrogen is not None,
            request.leg is not None,
            request.cooling_window is not None and request.thickness is not None and request.seam is not None,
            request.preheat_category is not None and thickest_part(request) is not None,
        )
    )


def check_scope(request: HeatRequest, asked: MethodB | None, seam: Seam | None, energy: Energy, faults: Faults) -> None:
    """Refuse what lies beyond the rules that are asked."""
    if asked is not None:
        cet = "#/composition" if request.carbon_equivalents is None else "#/carbon_equivalents/cet"
        pointers = {"CET": cet, "d": "#/thickness", "HD": "#/hydrogen", "Q": "#/arc"}
        check_method_b(asked, request.composition, pointers, faults)
    cools = seam is not None and (energy.heat_input is not None or request.cooling_window is not None)
    if cools and request.composition is not None and request.composition.alloyed() > LARGEST_ALLOY:
        faults.out_of_scope(
            "#/composition",
            f"cooling times are for unalloyed and low-alloy ferritic steel ({annex_d_cooling.FERRITIC}); {LOW_ALLOY}",
        )
