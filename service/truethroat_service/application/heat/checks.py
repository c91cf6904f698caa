"""Faults that refuse a request for the heat of a pass."""

from ...engine.formula import Source
from ...engine.rounding import at_least, at_most
from ...reference.loader import process as process_of
from ...standards.en_1011_2_2001 import annex_d_cooling
from ..core.faults import Faults
from . import combined_thickness as combined_of
from .cooling import Seam
from .preheat import MethodB, check_method_b
from .request import FILLETS, Energy, HeatRequest, parts_of, thermal_efficiency, thickest_part
from .steel import LARGEST_ALLOY, CarbonEquivalents

LOW_ALLOY = Source(
    "", f"low-alloy steel: alloying elements up to {LARGEST_ALLOY:g} % together", "common practice, no source"
)


def check(request: HeatRequest, faults: Faults) -> None:
    """Add a fault for each field that contradicts, or needs, another field."""
    if not _asks(request):
        faults.inconsistent(
            "#",
            "holds nothing to calculate from; send arc with its speed or energy, composition, carbon_equivalents,"
            " cooling_time, hydrogen, leg, cooling_window with thickness and seam, or preheat_category with thickness",
        )
    if request.cooling_time is not None and request.arc is not None:
        faults.inconsistent("#/cooling_time", "cannot be sent together with arc; send one of them")
    if request.composition is not None and request.carbon_equivalents is not None:
        faults.inconsistent("#/carbon_equivalents", "follow from the composition; leave them out")
    if request.cooling_window is not None and at_least(request.cooling_window.least, request.cooling_window.most):
        faults.inconsistent("#/cooling_window", "must have a least time that is smaller than its most")
    if request.process is not None and thermal_efficiency(request) is None:
        faults.out_of_scope(
            "#/process",
            f"must be an arc process; EN 1011-1:2009 has no thermal efficiency for {process_of(request.process).id}",
        )
    thickest = thickest_part(request)
    if thickest is not None and request.thickness is not None and not at_least(thickest, request.thickness):
        faults.inconsistent(
            "#/thickest_part",
            f"must be at least the thickness of {faults.units.text(request.thickness)}; it is"
            f" {faults.units.text(thickest)}",
        )
    _check_combined(request, faults)
    _check_companions(request, faults)


def _check_combined(request: HeatRequest, faults: Faults) -> None:
    """Add a fault for a combined thickness that the parts cannot have."""
    parts, given = parts_of(request), request.combined_thickness
    if parts is None or given is None:
        return
    least, most = combined_of.bounds(*parts, request.seam)
    if not (at_least(given, least) and at_most(given, most)):
        text = faults.units.text
        faults.inconsistent(
            "#/combined_thickness",
            f"must be {text(least)} to {text(most)} for parts of {text(parts[0])} and {text(parts[1])}; it is"
            f" {text(given)}; leave it out, and it follows from seam, thickness and thickest_part",
        )


def _check_companions(request: HeatRequest, faults: Faults) -> None:
    """Add a fault for each field that means nothing without another."""
    arc, fillet = request.arc, request.seam in FILLETS
    fillets = f"seam {' or '.join(FILLETS)}; send it too"
    deposition = arc is not None and arc.deposition_rate is not None
    needed = {
        "weld_metal_cet": (
            request.weld_metal_cet is not None,
            request.hydrogen is not None,
            "hydrogen for method B; send it too",
        ),
        "combined_thickness": (
            request.combined_thickness is not None,
            request.hydrogen is not None,
            "hydrogen for method A; send it too",
        ),
        "heat_treated": (request.heat_treated, request.steel_group is not None, "steel_group; send it too"),
        "steel_group": (request.steel_group is not None, request.composition is not None, "composition; send it too"),
        "leg": (request.leg is not None, fillet, fillets),
        "required_leg": (request.required_leg is not None, request.leg is not None, "leg; send it too"),
        "arc/deposition_rate": (deposition, fillet, fillets),
    }
    for field, (given, companion, need) in needed.items():
        if given and not companion:
            faults.inconsistent(f"#/{field}", f"needs {need}")
    if deposition and arc is not None and arc.travel_speed is None:
        faults.inconsistent("#/arc/travel_speed", "is required with deposition_rate")


def _asks(request: HeatRequest) -> bool:
    """Whether the request holds anything to calculate from."""
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
            request.cooling_window is not None and thickest_part(request) is not None and request.seam is not None,
            request.preheat_category is not None and thickest_part(request) is not None,
        )
    )


def check_scope(request: HeatRequest, asked: MethodB | None, seam: Seam | None, energy: Energy, faults: Faults) -> None:
    """Add a fault for each value outside the scope of method B, or of the cooling times."""
    if asked is not None:
        cet = "#/composition" if request.carbon_equivalents is None else "#/carbon_equivalents/cet"
        plate = "#/thickness" if request.thickest_part is None else "#/thickest_part"
        pointers = {"CET": cet, "d": plate, "HD": "#/hydrogen", "Q": "#/arc"}
        check_method_b(asked, request.composition, pointers, faults)
    cools = seam is not None and (energy.heat_input is not None or request.cooling_window is not None)
    if cools and request.composition is not None and request.composition.alloyed() > LARGEST_ALLOY:
        faults.out_of_scope(
            "#/composition",
            f"holds {request.composition.alloyed():.4g} % of alloying elements; cooling times are for unalloyed and"
            f" low-alloy ferritic steel ({annex_d_cooling.FERRITIC}; {LOW_ALLOY})",
        )
