"""Estimates of distortion: each quantity by every method that covers the joint, and why the others do not cover it."""

from collections.abc import Callable
from dataclasses import dataclass, field, replace
from math import pi
from typing import Any

from ...engine.formula import Formula, Source, about, cite
from ...engine.rounding import SAME, at_most
from ...practice import shrinkage, warping
from .answer import DistortionBand, DistortionEstimate, MethodLeftOut
from .cases import Case
from .request import Member, Restraint

BY_HEAT = ("tendon-force", "heat-strain")
BY_SECTION = ("by-metal", *BY_HEAT)
NOT_BENT = "needs second_moment and eccentricity of the member"
QUANTITIES = ("transverse", "longitudinal", "angular", "edge_lift", "bowing")
V_OF_THE_ALLOWANCE = pi / 3
"""Included angle of the single V that TWI's allowance is for."""


@dataclass(slots=True)
class Band:
    """One quantity by its methods, in mm or rad, and the methods that do not cover the joint."""

    estimates: list[DistortionEstimate] = field(default_factory=list)
    left_out: list[MethodLeftOut] = field(default_factory=list)

    def add(self, method: str, formula: Formula[Any], source: Source | None = None, /, **arguments: float) -> None:
        """Add the value of a formula; ``source`` is that of the method where the last formula is only geometry."""
        with about(method):
            self.put(method, float(formula(**arguments)), source or formula.source)

    def put(self, method: str, value: float, source: Source) -> None:
        """Add a value."""
        self.estimates.append(DistortionEstimate(method, value, str(source), source.mark))

    def leave(self, reason: str, *methods: str) -> None:
        """Leave methods out for a reason: what they need, or what they cover."""
        self.left_out += [MethodLeftOut(method, reason) for method in methods]

    @property
    def low(self) -> float | None:
        """Least value."""
        return min((estimate.value for estimate in self.estimates), default=None)

    @property
    def high(self) -> float | None:
        """Greatest value."""
        return max((estimate.value for estimate in self.estimates), default=None)

    @property
    def judged_high(self) -> float | None:
        """Greatest value that a tolerance is held against; one method alone may be out by a factor of two."""
        high = self.high
        return shrinkage.SCATTER * high if high is not None and len(self.estimates) == 1 else high

    def answer(self) -> DistortionBand:
        """Band as an answer has it."""
        return DistortionBand(self.low, self.high, tuple(self.estimates), tuple(self.left_out))


def estimates(case: Case) -> dict[str, Band]:
    """Every quantity of ``QUANTITIES`` for a joint."""
    bands = {name: Band() for name in QUANTITIES}
    _ACROSS[case.kind](case, bands["transverse"])
    _along(case, bands["longitudinal"], bands["bowing"])
    _turned(case, bands["angular"], bands["edge_lift"])
    # The lift of a flange's edges follows from its angle.
    own = case.setting.calibration
    for name, band in bands.items():
        factor = own.angular if name == "edge_lift" else getattr(own, name)
        band.estimates = [replace(estimate, value=estimate.value * factor) for estimate in band.estimates]
    return bands


def restrained(case: Case, restraint: Restraint, free: Band) -> Band:
    """Angular change between stiffeners, for each method of the free one."""
    held = Band(left_out=list(free.left_out))
    stiffness = warping.plate_stiffness(E=shrinkage.MODULUS, t=case.thickness, nu=warping.POISSON)
    for estimate in free.estimates:
        held.add(
            estimate.method,
            warping.restrained_angle,
            phi_0=estimate.value,
            R=float(stiffness),
            l=restraint.span,
            C=restraint.coefficient,
        )
    return held


def _across_butt(case: Case, band: Band) -> None:
    """Shrinkage across a butt."""
    band.add("tenth-of-mean-width", shrinkage.tenth_of_mean_width, A=case.area, t=case.thickness)
    band.add("fifth-with-opening", shrinkage.fifth_with_opening, A=case.area, t=case.thickness, g=case.opening)
    if case.form == "single-v" and abs((case.groove_angle or 0.0) - V_OF_THE_ALLOWANCE) <= SAME:
        least, most = shrinkage.BUTT_ACROSS
        band.add("least-allowance", shrinkage.allowance_across, n=1.0, s_1=least)
        band.add("most-allowance", shrinkage.allowance_across, n=1.0, s_1=most)
    else:
        band.leave("covers a single V of 60 deg only", "least-allowance", "most-allowance")


def _across_fillets(case: Case, band: Band) -> None:
    """Shrinkage across the fillets of a tee or lap."""
    assert case.leg is not None  # noqa: S101 - fillets have one
    if not at_most(case.leg, shrinkage.LARGEST_LEG * case.thickness):
        band.leave("covers legs up to three quarters of the thickness only", "two-fillets", "allowance")
        return
    if case.welds < 2.0:
        band.leave("covers two fillets, one on each side, only", "two-fillets")
    else:
        full = shrinkage.LAP if case.kind == "lap" else shrinkage.TEE
        band.add("two-fillets", shrinkage.two_fillets, s_0=full, r_w=case.share, z=case.leg, t=case.thickness)
    band.add("allowance", shrinkage.allowance_across, n=case.welds, s_1=shrinkage.FILLET_ACROSS)


def _across_bevelled_tee(case: Case, band: Band) -> None:
    """Shrinkage across a bevelled tee."""
    band.leave("does not cover a bevelled tee", "any")


_ACROSS: dict[str, Callable[[Case, Band], None]] = {
    "butt": _across_butt,
    "tee": _across_fillets,
    "lap": _across_fillets,
    "bevelled-tee": _across_bevelled_tee,
}


def _along(case: Case, shortening: Band, bow: Band) -> None:
    """Shortening along the welds, and the bow of a member whose welds lie off its axis."""
    length, member = case.setting.length, case.setting.member
    if length is None:
        shortening.leave("needs length", "allowance", "by-current", *BY_SECTION)
        bow.leave("needs length", *BY_SECTION)
        return
    _allowed_along(case, length, shortening)
    if member is None:
        for band in (shortening, bow):
            band.leave("needs member", *BY_SECTION)
        return
    _by_metal(case, length, member, shortening, bow)
    _by_heat(case, length, member, shortening, bow)


def _allowed_along(case: Case, length: float, band: Band) -> None:
    """Shortening by the methods that need no section."""
    if case.kind == "bevelled-tee":
        band.leave("covers butts and fillets only", "allowance")
    else:
        each = shrinkage.BUTT_ALONG if case.kind == "butt" else shrinkage.FILLET_ALONG
        band.add("allowance", shrinkage.allowance_along, n=case.welds, s_1=each, L=length, l_1=shrinkage.ALLOWED_LENGTH)
    if case.kind != "butt":
        band.leave("covers butts only", "by-current")
    elif case.current is None:
        band.leave("needs current", "by-current")
    else:
        band.add(
            "by-current",
            shrinkage.by_current,
            c_K=shrinkage.KING_COEFFICIENT,
            I=case.current,
            L=length,
            t=case.thickness,
        )


def _by_metal(case: Case, length: float, member: Member, shortening: Band, bow: Band) -> None:
    """Shortening and bow by the area of the weld metal and the member's section."""
    metal = {"n": case.welds, "r_w": case.share, "A": case.area}
    if case.welds * case.area * shrinkage.LEAST_SECTION < member.area * (1.0 - SAME):
        shortening.add("by-metal", shrinkage.by_cross_sections, **metal, L=length, A_p=member.area)
    else:
        shortening.leave("covers weld metal of less than a twentieth of the member's section only", "by-metal")
    if member.second_moment is None or member.eccentricity is None:
        bow.leave(NOT_BENT, "by-metal")
    else:
        second, off = member.second_moment, member.eccentricity
        _bend(bow, "by-metal", length, warping.bow_by_area, warping.BOW, **metal, d=off, I=second)


def _by_heat(case: Case, length: float, member: Member, shortening: Band, bow: Band) -> None:
    """Shortening and bow by the heat input."""
    heat = case.setting.heat_input
    if heat is None:
        for band in (shortening, bow):
            band.leave("needs heat_input", *BY_HEAT)
        return
    welded = {"n": case.welds, "r_w": case.share, "A_p": member.area}
    with about("tendon-force"):
        force = shrinkage.tendon_force(k_J=shrinkage.NEWTON_MILLIMETRES, Q=heat)
        stress = float(shrinkage.mean_stress(**welded, F=force))
    if not at_most(stress, shrinkage.LEAST_YIELD):
        for band in (shortening, bow):
            band.leave("covers an elastic member only, and this section yields", *BY_HEAT)
        return
    with about("heat-strain"):
        strain = float(
            shrinkage.strain_by_heat(**welded, Q=heat, alpha=shrinkage.EXPANSION, c_rho=shrinkage.HEAT_CAPACITY)
        )
    shortening.add(
        "tendon-force", shrinkage.by_mean_stress, shrinkage.WHITE, sigma=stress, L=length, E=shrinkage.MODULUS
    )
    shortening.add("heat-strain", shrinkage.by_strain, eps=strain, L=length)
    if member.second_moment is None or member.eccentricity is None:
        bow.leave(NOT_BENT, *BY_HEAT)
        return
    bent = {"A_p": member.area, "d": member.eccentricity, "I": member.second_moment}
    _bend(
        bow, "tendon-force", length, warping.bow_by_stress, shrinkage.WHITE, sigma=stress, E=shrinkage.MODULUS, **bent
    )
    _bend(bow, "heat-strain", length, warping.bow_by_strain, shrinkage.OKERBLOM, eps=strain, **bent)


def _bend(bow: Band, method: str, length: float, formula: Formula[Any], source: Source, **arguments: float) -> None:
    """Add a bow, unless it is larger than an elastic member allows."""
    if at_most(float(formula.body(L=length, **arguments)), warping.LARGEST_BOW * length):
        bow.add(method, formula, source, L=length, **arguments)
    else:
        bow.leave("covers an elastic member only, and this bow is over a tenth of the length", method)


def _turned(case: Case, angle: Band, lift: Band) -> None:
    """Angular change, and the lift of a flange's edges."""
    if case.kind == "tee" and case.welds >= 2.0:
        _flange(case, angle, lift)
        return
    if case.kind in ("lap", "bevelled-tee"):
        angle.leave(f"does not cover a {case.kind.replace('-', ' ')}", "any")
        lift.leave("covers the flange of a tee with two fillets only", "flange")
        return
    lift.leave("covers the flange of a tee with two fillets only", "flange")
    if case.form in ("double-v", "double-bevel"):
        angle.put("sides-in-turn", 0.0, warping.EVEN)
        cite(warping.EVEN)
    _wedge(case, angle)
    if case.form in ("square", "double-v", "double-bevel"):
        angle.leave("covers a single V or a single fillet only", "degree-per-run")
    elif case.runs is None:
        angle.leave("needs runs", "degree-per-run")
    else:
        angle.add("degree-per-run", warping.angle_by_runs, n_r=float(case.runs), phi_1=warping.DEGREE)


def _wedge(case: Case, angle: Band) -> None:
    """Angular change of a groove by its widths; with two sides, as if the first side were welded out alone."""
    if case.kind != "butt":
        angle.leave("covers grooves only", "wedge")
    elif case.wedge is None:
        square = case.form == "square"
        angle.leave("does not cover a square edge" if square else "needs face_width and root_width", "wedge")
    else:
        face, root, depth = case.wedge
        method = "first-side-alone" if case.form in ("double-v", "double-bevel") else "wedge"
        if at_most(face - root, warping.WIDEST_WEDGE * depth):
            angle.add(method, warping.wedge_angle, W_f=face, W_r=root, d=depth)
        else:
            angle.leave("covers faces up to that of a V of 120 deg only", method)


def _flange(case: Case, angle: Band, lift: Band) -> None:
    """Flange of a tee that two fillets turn."""
    assert case.leg is not None  # noqa: S101 - fillets have one
    angle.leave("covers a single V or a single fillet only", "degree-per-run")
    if not at_most(case.leg, case.thickness):
        for band in (angle, lift):
            band.leave("covers legs up to the thickness of the flange only", "flange")
        return
    drawn = {"c_B": warping.FLANGE_COEFFICIENT, "z": case.leg, "t": case.thickness}
    angle.add("flange", warping.flange_angle, **drawn)
    if case.width is None:
        lift.leave("needs width", "flange")
    else:
        lift.add("flange", warping.edge_lift, W=case.width, **drawn)
