"""Costs of a way: filler, time, heat and distortion, each from its own resource, and its risk of cracks.

Without an arc the heat follows from the metal laid, by the rule that relates the leg of a fillet to its energy.
"""

from collections.abc import Callable
from dataclasses import replace

from ...practice import leg_energy
from ...reference.loader import MATERIALS
from ..core.answers import Answered
from ..core.shape import Lacks
from ..crack_risk import crack_risk
from ..crack_risk.request import CrackRiskRequest
from ..distortion import distortion
from ..distortion.request import DistortionRequest, Joint, Tee
from ..filler_quantity import filler_quantity
from ..filler_quantity.answer import FillerQuantityAnswer
from ..filler_quantity.request import FillerQuantityRequest, Weld
from ..heat import heat
from ..heat.answer import HeatAnswer
from ..heat.request import ROOM_TEMPERATURE, HeatRequest, SeamKind
from ..joints.weld_sections import measured
from .answer import PlanCosts
from .asking import Parts, Request, Result, Unworkable
from .request import JointPlanRequest
from .ways.way import Made, common


def costs(request: JointPlanRequest, way: Made, parts: Parts, left_out: dict[str, str]) -> PlanCosts:
    """Filler in kg, time on the clock in s, heat in kJ and angular change in rad; None where not known.

    A resource that cannot answer is put into ``left_out`` with its reason.
    """
    quantity = _asked(parts, left_out, filler_quantity, _quantity(request, way))
    heated = turned = None
    given = (request.arc, request.composition, request.preheat_category)
    if way.laid == "fillet" or any(field is not None for field in given):
        heated = _asked(parts, left_out, heat, _heat(request, way))
    else:
        left_out["heat"] = "needs arc, composition or preheat_category"
    joint = _in_runs(way.joint, quantity)
    if joint is None:
        left_out["distortion"] = "has no method for this joint"
    else:
        turned = _asked(parts, left_out, distortion, DistortionRequest(joint, common=common(request)))
    if way.laid == "fillet":
        _asked(parts, left_out, crack_risk, _crack(request, way))
    else:
        left_out["crack_risk"] = "needs the width and depth of a bead, which do not follow from a groove"
    return PlanCosts(
        filler=None if quantity is None else quantity.totals.deposited,
        time=_time(request, way, quantity),
        heat=_total_heat(request, way, quantity, heated),
        distortion=None if turned is None else turned.angular.high,
    )


def _asked(
    parts: Parts, left_out: dict[str, str], use_case: Callable[[Request], Answered[Result]], request: Request
) -> Result | None:
    """Result of a resource; None, with the reason in ``left_out``, where it refuses."""
    try:
        return parts.ask(use_case, request).result
    except Unworkable as error:
        left_out[use_case.__name__] = str(error)
        return None


def _in_runs(joint: Joint | None, quantity: FillerQuantityAnswer | None) -> Joint | None:
    """Joint with the number of its runs, which a method needs for a fillet on one side of a tee."""
    if isinstance(joint, Tee) and joint.sides == 1 and quantity is not None:
        passes = quantity.welds[0].passes
        return joint if passes is None else replace(joint, runs=passes.most)
    return joint


def _time(request: JointPlanRequest, way: Made, quantity: FillerQuantityAnswer | None) -> float | None:
    """Time on the clock at most, s: welding, and bevelling where its speed is given."""
    if quantity is None or quantity.totals.working_time is None:
        return None
    welding = quantity.totals.working_time.most
    if request.bevelling_speed is None:
        return welding
    return welding + way.cuts * request.length / request.bevelling_speed


def _quantity(request: JointPlanRequest, way: Made) -> FillerQuantityRequest:
    """Welds of the way."""
    filler = None if request.filler is None else request.filler.id
    material = request.parts[0].material
    density = None
    if filler is None and material is not None and MATERIALS[material].family != "carbon-steel":
        density = MATERIALS[material].density_kg_m3 * 1e-9
    welds = tuple(
        Weld(
            shape=shape,
            length=request.length * way.share,
            filler=filler,
            density=density,
            process=request.process,
            position=request.position,
            deposition=request.deposition,
            efficiency=request.efficiency,
            operator_factor=request.operator_factor,
            gas_flow=request.gas_flow,
        )
        for shape in way.shapes
    )
    return FillerQuantityRequest(welds, request.prices, common=common(request))


def _heat(request: JointPlanRequest, way: Made) -> HeatRequest:
    """Request for one pass of the way; the thicker part decides its cooling and its preheat."""
    seam: SeamKind = "butt-fill"
    if way.laid == "fillet":
        seam = "corner-fillet" if "corner" in request.joint.kind else "tee-fillet"
    cools = request.arc is not None or request.composition is not None
    return HeatRequest(
        arc=request.arc,
        process=request.process,
        thickness=request.thinner if cools else None,
        seam=seam,
        preheat=ROOM_TEMPERATURE if request.preheat is None else request.preheat,
        cooling_window=request.cooling_window,
        composition=request.composition,
        hydrogen=request.hydrogen,
        preheat_category=request.preheat_category,
        thickest_part=max(request.thickness) if cools or request.preheat_category is not None else None,
        leg=way.leg if way.laid == "fillet" else None,
        required_leg=way.required_leg,
        common=common(request),
    )


def _crack(request: JointPlanRequest, way: Made) -> CrackRiskRequest:
    """Fillet of the way, by its size against the parts it chills on."""
    return CrackRiskRequest(
        joint="fillet",
        process=request.process,
        thickness=request.thickness,
        leg=way.leg,
        common=common(request),
    )


def _total_heat(
    request: JointPlanRequest, way: Made, quantity: FillerQuantityAnswer | None, heated: HeatAnswer | None
) -> float | None:
    """Arc energy put into the joint, kJ: that of every pass where the arc is given, else by the metal laid."""
    length = request.length * way.share
    if quantity is None:
        return None
    if request.arc is None:
        area = sum(measured(shape).area for shape in way.shapes)
        # A flat fillet of equal legs at 90 deg has half its leg squared as area.
        leg = float(leg_energy.leg_of_area(A_laid=area))
        return float(leg_energy.energy_of_leg(z=leg, h=leg_energy.ENERGY_PER_SQUARE)) * length
    if heated is None or isinstance(heated.energy, Lacks):
        return None
    each = heated.energy.arc_energy
    if isinstance(each, Lacks):
        each = heated.energy.heat_input
    passes = [weld.passes for weld in quantity.welds]
    if isinstance(each, Lacks) or any(count is None for count in passes):
        return None
    return each * sum(count.most for count in passes if count is not None) * length
