"""What a request for the heat of a pass lacks: faults that refuse it, and words for what is left out of the answer."""

from collections.abc import Iterator
from typing import Any

from ...engine.formula import Source
from ...engine.rounding import at_least
from ...reference.loader import process as process_of
from ...standards.en_1011_2_2001 import annex_d_cooling, c_2_method_a
from ..core.faults import Faults
from .cooling import Seam
from .preheat import MethodB, check_method_b
from .request import FILLETS, Energy, HeatRequest, thermal_efficiency, thickest_part
from .steel import LARGEST_ALLOY, Equivalents

LOW_ALLOY = Source(
    "", f"low-alloy steel: alloying elements up to {LARGEST_ALLOY:g} % together", "common practice, no source"
)
Reasons = dict[str, str]
"""Path of a null, and what it needs."""


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
            request.carbon_equivalents not in (None, Equivalents()),
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


def left_out(request: HeatRequest, result: dict[str, Any], reasons: Reasons) -> list[dict[str, str]]:
    """Every null of an answer by its path, and what it needs; ``reasons`` go before the general ones."""
    said = _NEEDS | {"cooling": _cooling_needs(request, result), "limits": _limits_need(request)} | reasons
    return [{"field": path, "reason": said[path]} for path in _nulls(result)]


def _nulls(node: dict[str, Any], path: str = "") -> Iterator[str]:
    """Paths of everything that is null, at any depth."""
    for name, value in node.items():
        if value is None:
            yield f"{path}{name}"
        elif isinstance(value, dict):
            yield from _nulls(value, f"{path}{name}/")


def _cooling_needs(request: HeatRequest, result: dict[str, Any]) -> str:
    """What a cooling time needs that the request does not give."""
    lacks = [name for name in ("thickness", "seam") if getattr(request, name) is None]
    energy = result["energy"]
    if energy is None or energy["heat_input"] is None:
        lacks.append("the heat input: an arc, with its process or efficiency")
    return f"needs {', '.join(lacks)}"


def _limits_need(request: HeatRequest) -> str:
    """What the limits of a window need that the request does not give."""
    lacks = [name for name in ("cooling_window", "thickness", "seam") if getattr(request, name) is None]
    return f"needs {', '.join(lacks)}" if lacks else "the window is narrower than the band of cooling times"


_EFFICIENCY = "needs the process, or its efficiency"
_MEASURED = "the cooling time was measured, not worked out"
_GROUP = "needs steel_group"
_LEG_COOLING = "needs thickness, and the process or its efficiency"
_METHOD_B = "needs hydrogen, thickness, the CET and the heat input"
_NEEDS: Reasons = {
    "energy": "needs an arc with its travel speed, arc_energy or heat_input",
    "energy/arc_energy": _EFFICIENCY,
    "energy/heat_input": _EFFICIENCY,
    "energy/efficiency": _EFFICIENCY,
    "cooling/flow": _MEASURED,
    "cooling/transition_thickness": _MEASURED,
    "limits/arc_energy": _EFFICIENCY,
    "limits/travel_speed": "needs voltage and current, and the process or its efficiency",
    "preheat/method_a": "needs hydrogen",
    "preheat/method_a/without_preheat_to": "needs a CE of up to 0.49 and a heat input of 1 kJ/mm or more; beyond, read"
    f" the charts ({c_2_method_a.CHARTS})",
    "preheat/method_a/free_of_preheat": "needs combined_thickness, and without_preheat_to",
    "preheat/method_b": _METHOD_B,
    "preheat/sew_088": _METHOD_B,
    "preheat/aws_d1_1": "needs preheat_category and thickness",
    "hardness/limit": _GROUP,
    "hardness/standing": _GROUP,
    "hardness/source": _GROUP,
    "fillet": f"needs seam {' or '.join(FILLETS)}, and an arc or a leg",
    "fillet/usual_leg": "needs the arc energy",
    "fillet/bead": "needs deposition_rate in the arc",
    "fillet/usual_arc_energy": "needs leg",
    "fillet/oversize": "needs leg and required_leg",
    "fillet/oversize/cooling_time_required": _LEG_COOLING,
    "fillet/oversize/cooling_time_laid": _LEG_COOLING,
}
"""What each null needs, where that is always the same."""
