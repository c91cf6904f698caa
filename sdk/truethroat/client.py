"""The client: one method per operation of the service, named and with the arguments that the service gives them.

What a request may hold is for the service to judge: the client sends it as given and turns the refusal into an error.
"""

from __future__ import annotations

import json
import re
import sys
import warnings
from collections.abc import Mapping, Sequence
from types import TracebackType
from typing import Any, Literal, Self, TypeVar

import requests

from truethroat.decoding import Undecodable, decode
from truethroat.errors import ConnectionFailed, IncompatibleVersion, NotFound, Unexpected, error_for
from truethroat.inputs import (
    BalancedLoad,
    ConcentricLoad,
    Filler,
    Finish,
    GrooveJoint,
    GrooveLoad,
    GrooveWeld,
    GroundFlush,
    Intermittent,
    Joint,
    LineLoad,
    Load,
    Packing,
    Parameters,
    Part,
    Penetration,
    Preparation,
    Prices,
    RequiredWeld,
    Seam,
    TensionMember,
    UnstiffenedFlange,
    Weld,
    WeldExtent,
)
from truethroat.quantity import QuantityInput
from truethroat.results import (
    Answer,
    AsWelded,
    BevelDepth,
    BreakTest,
    Calculation,
    CrackRisk,
    Distortion,
    FillerMetalList,
    FillerQuantity,
    FilletSize,
    GrindAllowance,
    GroovePreparationList,
    GrooveSize,
    Heat,
    JointPlan,
    MaterialList,
    ProcessList,
    RuleSetList,
    Service,
    WeldGroup,
)
from truethroat.transport import Exchange, Timeout, Transport
from truethroat.version import API_MAJOR

__all__ = ["Client"]

Object = Mapping[str, object]
A = TypeVar("A", bound=Answer)
C = TypeVar("C", bound=Calculation)


class Client:
    """A connection to the service at `base_url`; close it, or use it in a `with` statement.

    `token` is sent as a bearer token. `timeout` is in seconds, to connect and between two bytes of an answer; each
    method takes its own. A call is repeated up to `retries` times after 429, 502, 503, 504 or a failed connection,
    calculations too, since they change nothing. `deadline` bounds a call with all its tries and waits, in seconds: no
    wait or try begins that could not end before it, and timeouts are cut to what is left. `app` is added to the user
    agent, such as "nesting/2.1". With `check_version` the first calculation is preceded by the method of that name.

    `session` is the `requests.Session` in use, for proxies, certificates or another adapter.
    """

    def __init__(
        self,
        base_url: str,
        token: str | None = None,
        *,
        timeout: Timeout = (3.05, 30),
        retries: int = 2,
        deadline: float | None = None,
        app: str | None = None,
        check_version: bool = False,
    ) -> None:
        self._transport = Transport(base_url, token=token, timeout=timeout, retries=retries, deadline=deadline, app=app)
        self._check_due = check_version

    def __repr__(self) -> str:
        return f"Client({self._transport.base_url!r})"

    def __enter__(self) -> Self:
        return self

    def __exit__(
        self, kind: type[BaseException] | None, error: BaseException | None, traceback: TracebackType | None
    ) -> None:
        self.close()

    @property
    def session(self) -> requests.Session:
        """The session that every request goes through."""
        return self._transport.session

    def close(self) -> None:
        """Close the connections to the service."""
        self._transport.close()

    # Calculations

    def fillet_size(
        self,
        *,
        rule_set: str | None = None,
        joint: Joint | Object | None = None,
        parts: Sequence[Part | Object] | None = None,
        parameters: Parameters | Object | None = None,
        filler: str | Filler | Object | None = None,
        process: str | None = None,
        position: str | None = None,
        basis: Literal["load", "full-strength", "thin-part"] | None = None,
        load: Load | LineLoad | ConcentricLoad | BalancedLoad | Object | None = None,
        end_loaded: bool | None = None,
        transverse_stiffener: bool | None = None,
        ends: Literal["full", "craters"] | None = None,
        root_bending: bool | None = None,
        packing: Packing | Object | None = None,
        intermittent: Intermittent | Object | None = None,
        tension_member: TensionMember | Object | None = None,
        unstiffened_flange: UnstiffenedFlange | Object | None = None,
        minimum_throat: Literal["din-na"] | None = None,
        hss_end: bool | None = None,
        edge_of: Literal[1, 2] | None = None,
        leg_tolerance: QuantityInput | None = None,
        penetration: Penetration | Object | None = None,
        size_by: Literal["leg", "throat"] | None = None,
        size_step: QuantityInput | None = None,
        units: Literal["metric", "us"] | None = None,
        working: bool | None = None,
        mark: str | None = None,
        timeout: Timeout | None = None,
    ) -> FilletSize:
        """Size a fillet weld, as leg and throat, from a load, from the plate's full strength or from the thin part.

        Arguments left out are not sent, so the service's own defaults hold.
        """
        return self._calculate(
            "/v1/fillet-size",
            FilletSize,
            {
                "rule_set": rule_set,
                "joint": joint,
                "parts": parts,
                "parameters": parameters,
                "filler": filler,
                "process": process,
                "position": position,
                "basis": basis,
                "load": load,
                "end_loaded": end_loaded,
                "transverse_stiffener": transverse_stiffener,
                "ends": ends,
                "root_bending": root_bending,
                "packing": packing,
                "intermittent": intermittent,
                "tension_member": tension_member,
                "unstiffened_flange": unstiffened_flange,
                "minimum_throat": minimum_throat,
                "hss_end": hss_end,
                "edge_of": edge_of,
                "leg_tolerance": leg_tolerance,
                "penetration": penetration,
                "size_by": size_by,
                "size_step": size_step,
                "units": units,
                "working": working,
                "mark": mark,
            },
            timeout,
        )

    def groove_size(
        self,
        *,
        rule_set: str | None = None,
        joint: GrooveJoint | Object | None = None,
        parts: Sequence[Part | Object] | None = None,
        weld: GrooveWeld | Object | None = None,
        parameters: Parameters | Object | None = None,
        filler: str | Filler | Object | None = None,
        process: str | None = None,
        position: str | None = None,
        basis: Literal["load", "full-strength"] | None = None,
        load: GrooveLoad | Object | None = None,
        units: Literal["metric", "us"] | None = None,
        working: bool | None = None,
        mark: str | None = None,
        timeout: Timeout | None = None,
    ) -> GrooveSize:
        """Size a groove, flare, plug or slot weld, and choose the preparation that takes the least metal.

        Arguments left out are not sent, so the service's own defaults hold.
        """
        return self._calculate(
            "/v1/groove-size",
            GrooveSize,
            {
                "rule_set": rule_set,
                "joint": joint,
                "parts": parts,
                "weld": weld,
                "parameters": parameters,
                "filler": filler,
                "process": process,
                "position": position,
                "basis": basis,
                "load": load,
                "units": units,
                "working": working,
                "mark": mark,
            },
            timeout,
        )

    def grind_allowance(
        self,
        *,
        seam: Seam | Object | None = None,
        preparation: Preparation | Object | None = None,
        penetration: Penetration | Object | None = None,
        face_height: QuantityInput | None = None,
        face_height_tolerance: QuantityInput | None = None,
        hollow: QuantityInput | None = None,
        hollow_tolerance: QuantityInput | None = None,
        face_width: QuantityInput | None = None,
        required_throat: QuantityInput | None = None,
        rule_set: str | None = None,
        process: str | None = None,
        position: str | None = None,
        finish: Finish | Object | None = None,
        units: Literal["metric", "us"] | None = None,
        working: bool | None = None,
        mark: str | None = None,
        timeout: Timeout | None = None,
    ) -> GrindAllowance:
        """Ask how much of a weld may be ground off, how much must stay and the largest corner radius.

        Arguments left out are not sent, so the service's own defaults hold.
        """
        return self._calculate(
            "/v1/grind-allowance",
            GrindAllowance,
            {
                "seam": seam,
                "preparation": preparation,
                "penetration": penetration,
                "face_height": face_height,
                "face_height_tolerance": face_height_tolerance,
                "hollow": hollow,
                "hollow_tolerance": hollow_tolerance,
                "face_width": face_width,
                "required_throat": required_throat,
                "rule_set": rule_set,
                "process": process,
                "position": position,
                "finish": finish,
                "units": units,
                "working": working,
                "mark": mark,
            },
            timeout,
        )

    def bevel_depth(
        self,
        *,
        seam: Seam | Object | None = None,
        required_throat: QuantityInput | None = None,
        finish: Finish | Object | None = None,
        groove: Literal["single-bevel", "single-v", "single-j", "single-u"] | None = None,
        groove_angle: QuantityInput | None = None,
        process: str | None = None,
        position: str | None = None,
        rule_set: str | None = None,
        penetration: Penetration | Object | None = None,
        bevelled: Literal[1, 2, "both"] | None = None,
        root_radius: QuantityInput | None = None,
        minimum_land: QuantityInput | None = None,
        depth_step: QuantityInput | None = None,
        depth_tolerance: QuantityInput | None = None,
        units: Literal["metric", "us"] | None = None,
        working: bool | None = None,
        mark: str | None = None,
        timeout: Timeout | None = None,
    ) -> BevelDepth:
        """Ask how deep to bevel an edge so that the finished seam keeps its throat.

        Arguments left out are not sent, so the service's own defaults hold.
        """
        return self._calculate(
            "/v1/bevel-depth",
            BevelDepth,
            {
                "seam": seam,
                "required_throat": required_throat,
                "finish": finish,
                "groove": groove,
                "groove_angle": groove_angle,
                "process": process,
                "position": position,
                "rule_set": rule_set,
                "penetration": penetration,
                "bevelled": bevelled,
                "root_radius": root_radius,
                "minimum_land": minimum_land,
                "depth_step": depth_step,
                "depth_tolerance": depth_tolerance,
                "units": units,
                "working": working,
                "mark": mark,
            },
            timeout,
        )

    def weld_group(
        self,
        *,
        rule_set: str | None = None,
        group: Object | None = None,
        load: Object | None = None,
        parts: Sequence[Part | Object] | None = None,
        method: Literal["elastic", "instantaneous-centre"] | None = None,
        count: int | None = None,
        filler: str | Filler | Object | None = None,
        parameters: Parameters | Object | None = None,
        leg: QuantityInput | None = None,
        throat: QuantityInput | None = None,
        size_by: Literal["leg", "throat"] | None = None,
        size_step: QuantityInput | None = None,
        units: Literal["metric", "us"] | None = None,
        working: bool | None = None,
        mark: str | None = None,
        timeout: Timeout | None = None,
    ) -> WeldGroup:
        """Ask what size a weld group needs under any force and moment, or what a size of it carries.

        Arguments left out are not sent, so the service's own defaults hold.
        """
        return self._calculate(
            "/v1/weld-group",
            WeldGroup,
            {
                "rule_set": rule_set,
                "group": group,
                "load": load,
                "parts": parts,
                "method": method,
                "count": count,
                "filler": filler,
                "parameters": parameters,
                "leg": leg,
                "throat": throat,
                "size_by": size_by,
                "size_step": size_step,
                "units": units,
                "working": working,
                "mark": mark,
            },
            timeout,
        )

    def as_welded(
        self,
        *,
        kind: Literal["fillet", "butt"] | None = None,
        thickness: Sequence[QuantityInput] | None = None,
        required: RequiredWeld | Object | None = None,
        quality: Literal["iso-5817-b", "iso-5817-c", "iso-5817-d", "aws-d1-1-2020"] | None = None,
        loading: Literal["static", "cyclic-transverse", "cyclic-other"] | None = None,
        reading_tolerance: QuantityInput | None = None,
        extent: WeldExtent | Object | None = None,
        undercut: QuantityInput | None = None,
        overlap: QuantityInput | None = None,
        toe_angle: QuantityInput | None = None,
        incomplete_penetration: QuantityInput | None = None,
        lack_of_fusion: QuantityInput | None = None,
        surface_pore: QuantityInput | None = None,
        internal_pore: QuantityInput | None = None,
        end_crater_pipe: QuantityInput | None = None,
        crack: bool | None = None,
        burn_through: bool | None = None,
        legs: Sequence[QuantityInput] | None = None,
        angle: QuantityInput | None = None,
        throat: QuantityInput | None = None,
        convexity: QuantityInput | None = None,
        hollow: QuantityInput | None = None,
        root_gap: QuantityInput | None = None,
        penetration: Penetration | Object | None = None,
        sides: Literal[1, 2] | None = None,
        circumferential: bool | None = None,
        face_width: QuantityInput | None = None,
        reinforcement: QuantityInput | None = None,
        underfill: QuantityInput | None = None,
        root_width: QuantityInput | None = None,
        excess_penetration: QuantityInput | None = None,
        root_concavity: QuantityInput | None = None,
        shrinkage_groove: QuantityInput | None = None,
        misalignment: QuantityInput | None = None,
        flush: GroundFlush | Object | None = None,
        units: Literal["metric", "us"] | None = None,
        working: bool | None = None,
        mark: str | None = None,
        timeout: Timeout | None = None,
    ) -> AsWelded:
        """Ask whether a weld, as gauged, has the throat it needs and keeps its quality level, and what to do if not.

        A fillet has `legs` to `penetration`, a butt `sides` to `flush`; the rest is read of either. Arguments left out
        are not sent, so the service's own defaults hold.
        """
        return self._calculate(
            "/v1/as-welded",
            AsWelded,
            {
                "kind": kind,
                "thickness": thickness,
                "required": required,
                "quality": quality,
                "loading": loading,
                "reading_tolerance": reading_tolerance,
                "extent": extent,
                "undercut": undercut,
                "overlap": overlap,
                "toe_angle": toe_angle,
                "incomplete_penetration": incomplete_penetration,
                "lack_of_fusion": lack_of_fusion,
                "surface_pore": surface_pore,
                "internal_pore": internal_pore,
                "end_crater_pipe": end_crater_pipe,
                "crack": crack,
                "burn_through": burn_through,
                "legs": legs,
                "angle": angle,
                "throat": throat,
                "convexity": convexity,
                "hollow": hollow,
                "root_gap": root_gap,
                "penetration": penetration,
                "sides": sides,
                "circumferential": circumferential,
                "face_width": face_width,
                "reinforcement": reinforcement,
                "underfill": underfill,
                "root_width": root_width,
                "excess_penetration": excess_penetration,
                "root_concavity": root_concavity,
                "shrinkage_groove": shrinkage_groove,
                "misalignment": misalignment,
                "flush": flush,
                "units": units,
                "working": working,
                "mark": mark,
            },
            timeout,
        )

    def filler_quantity(
        self,
        *,
        welds: Sequence[Weld | Object] | None = None,
        prices: Prices | Object | None = None,
        units: Literal["metric", "us"] | None = None,
        working: bool | None = None,
        mark: str | None = None,
        timeout: Timeout | None = None,
    ) -> FillerQuantity:
        """Ask what welds take in weld metal, consumable, passes, hours, gas and energy, and what that costs.

        Arguments left out are not sent, so the service's own defaults hold.
        """
        return self._calculate(
            "/v1/filler-quantity",
            FillerQuantity,
            {"welds": welds, "prices": prices, "units": units, "working": working, "mark": mark},
            timeout,
        )

    def heat(
        self,
        *,
        arc: Object | None = None,
        process: str | None = None,
        efficiency: float | None = None,
        thickness: QuantityInput | None = None,
        seam: Literal["plate", "butt-fill", "corner-fillet", "tee-fillet"] | None = None,
        preheat: QuantityInput | None = None,
        cooling_time: QuantityInput | None = None,
        cooling_window: Object | None = None,
        composition: Object | None = None,
        carbon_equivalents: Object | None = None,
        weld_metal_cet: float | None = None,
        hydrogen: QuantityInput | None = None,
        combined_thickness: QuantityInput | None = None,
        preheat_category: Literal["A", "B", "C", "D"] | None = None,
        thickest_part: QuantityInput | None = None,
        steel_group: Literal[1, 2, 3] | None = None,
        heat_treated: bool | None = None,
        leg: QuantityInput | None = None,
        required_leg: QuantityInput | None = None,
        units: Literal["metric", "us"] | None = None,
        working: bool | None = None,
        mark: str | None = None,
        timeout: Timeout | None = None,
    ) -> Heat:
        """Ask for energy, cooling time, preheat and hardness of a pass, and for the heat that keeps to a window.

        Arguments left out are not sent, so the service's own defaults hold.
        """
        return self._calculate(
            "/v1/heat",
            Heat,
            {
                "arc": arc,
                "process": process,
                "efficiency": efficiency,
                "thickness": thickness,
                "seam": seam,
                "preheat": preheat,
                "cooling_time": cooling_time,
                "cooling_window": cooling_window,
                "composition": composition,
                "carbon_equivalents": carbon_equivalents,
                "weld_metal_cet": weld_metal_cet,
                "hydrogen": hydrogen,
                "combined_thickness": combined_thickness,
                "preheat_category": preheat_category,
                "thickest_part": thickest_part,
                "steel_group": steel_group,
                "heat_treated": heat_treated,
                "leg": leg,
                "required_leg": required_leg,
                "units": units,
                "working": working,
                "mark": mark,
            },
            timeout,
        )

    def crack_risk(
        self,
        *,
        joint: Literal["butt", "fillet", "corner"] | None = None,
        bead: Object | None = None,
        hollow: QuantityInput | None = None,
        restrained: bool | None = None,
        weld_metal: Object | None = None,
        process: str | None = None,
        thickness: Sequence[QuantityInput] | None = None,
        leg: QuantityInput | None = None,
        low_hydrogen: bool | None = None,
        crater: Literal["filled", "unfilled"] | None = None,
        units: Literal["metric", "us"] | None = None,
        working: bool | None = None,
        mark: str | None = None,
        timeout: Timeout | None = None,
    ) -> CrackRisk:
        """Ask how likely a pass is to crack along its centre or by quick chill, why, and what to change.

        Arguments left out are not sent, so the service's own defaults hold.
        """
        return self._calculate(
            "/v1/crack-risk",
            CrackRisk,
            {
                "joint": joint,
                "bead": bead,
                "hollow": hollow,
                "restrained": restrained,
                "weld_metal": weld_metal,
                "process": process,
                "thickness": thickness,
                "leg": leg,
                "low_hydrogen": low_hydrogen,
                "crater": crater,
                "units": units,
                "working": working,
                "mark": mark,
            },
            timeout,
        )

    def distortion(
        self,
        *,
        joint: Object | None = None,
        length: QuantityInput | None = None,
        member: Object | None = None,
        heat_input: QuantityInput | None = None,
        iso_13920: Object | None = None,
        calibration: Object | None = None,
        size_step: QuantityInput | None = None,
        units: Literal["metric", "us"] | None = None,
        working: bool | None = None,
        mark: str | None = None,
        timeout: Timeout | None = None,
    ) -> Distortion:
        """Ask how a joint shrinks and turns when welded, by several methods, and what would do less.

        Arguments left out are not sent, so the service's own defaults hold.
        """
        return self._calculate(
            "/v1/distortion",
            Distortion,
            {
                "joint": joint,
                "length": length,
                "member": member,
                "heat_input": heat_input,
                "iso_13920": iso_13920,
                "calibration": calibration,
                "size_step": size_step,
                "units": units,
                "working": working,
                "mark": mark,
            },
            timeout,
        )

    def break_test(
        self,
        *,
        coupon: Literal["tee", "inside-corner", "outside-corner"] | None = None,
        seam: Seam | Object | None = None,
        preparation: Object | None = None,
        penetration: Penetration | Object | None = None,
        face_height: QuantityInput | None = None,
        hollow: QuantityInput | None = None,
        finish: Finish | Object | None = None,
        weld: Object | None = None,
        plates: Object | None = None,
        length: QuantityInput | None = None,
        lever: QuantityInput | None = None,
        notch: Object | None = None,
        hand_force: QuantityInput | None = None,
        rules: Literal["aws-d1-1-2010", "iso-9017"] | None = None,
        outcome: Object | None = None,
        units: Literal["metric", "us"] | None = None,
        working: bool | None = None,
        mark: str | None = None,
        timeout: Timeout | None = None,
    ) -> BreakTest:
        """Ask what force on a lever opens a coupon from its root, and what its broken faces are worth.

        Arguments left out are not sent, so the service's own defaults hold.
        """
        return self._calculate(
            "/v1/break-test",
            BreakTest,
            {
                "coupon": coupon,
                "seam": seam,
                "preparation": preparation,
                "penetration": penetration,
                "face_height": face_height,
                "hollow": hollow,
                "finish": finish,
                "weld": weld,
                "plates": plates,
                "length": length,
                "lever": lever,
                "notch": notch,
                "hand_force": hand_force,
                "rules": rules,
                "outcome": outcome,
                "units": units,
                "working": working,
                "mark": mark,
            },
            timeout,
        )

    def joint_plan(
        self,
        *,
        rule_set: str | None = None,
        joint: Object | None = None,
        parts: Sequence[Part | Object] | None = None,
        length: QuantityInput | None = None,
        basis: Literal["load", "full-strength", "throat"] | None = None,
        load: Object | None = None,
        required_throat: QuantityInput | None = None,
        process: str | None = None,
        position: str | None = None,
        access: Literal["one-side", "both-sides"] | None = None,
        held_from_turning: bool | None = None,
        finish: Finish | Object | None = None,
        filler: str | Filler | Object | None = None,
        parameters: Parameters | Object | None = None,
        intermittent: Object | None = None,
        penetration: Penetration | Object | None = None,
        tolerances: Object | None = None,
        spread: Object | None = None,
        quality: str | None = None,
        arc: Object | None = None,
        preheat: QuantityInput | None = None,
        cooling_window: Object | None = None,
        composition: Object | None = None,
        hydrogen: QuantityInput | None = None,
        preheat_category: Literal["A", "B", "C", "D"] | None = None,
        deposition: Object | None = None,
        efficiency: float | None = None,
        gas_flow: QuantityInput | None = None,
        operator_factor: float | None = None,
        bevelling_speed: QuantityInput | None = None,
        prices: Prices | Object | None = None,
        weights: Mapping[str, float] | None = None,
        detail: Literal["recommended", "all"] | None = None,
        units: Literal["metric", "us"] | None = None,
        working: bool | None = None,
        mark: str | None = None,
        timeout: Timeout | None = None,
    ) -> JointPlan:
        """Ask for every way to make one joint: sized, budgeted, costed and ranked, with what is refused and why.

        Arguments left out are not sent, so the service's own defaults hold.
        """
        return self._calculate(
            "/v1/joint-plan",
            JointPlan,
            {
                "rule_set": rule_set,
                "joint": joint,
                "parts": parts,
                "length": length,
                "basis": basis,
                "load": load,
                "required_throat": required_throat,
                "process": process,
                "position": position,
                "access": access,
                "held_from_turning": held_from_turning,
                "finish": finish,
                "filler": filler,
                "parameters": parameters,
                "intermittent": intermittent,
                "penetration": penetration,
                "tolerances": tolerances,
                "spread": spread,
                "quality": quality,
                "arc": arc,
                "preheat": preheat,
                "cooling_window": cooling_window,
                "composition": composition,
                "hydrogen": hydrogen,
                "preheat_category": preheat_category,
                "deposition": deposition,
                "efficiency": efficiency,
                "gas_flow": gas_flow,
                "operator_factor": operator_factor,
                "bevelling_speed": bevelling_speed,
                "prices": prices,
                "weights": weights,
                "detail": detail,
                "units": units,
                "working": working,
                "mark": mark,
            },
            timeout,
        )

    # Reference data

    def get_service(self, *, timeout: Timeout | None = None) -> Service:
        """Ask what is answering, in which versions and with which rule sets."""
        return self._look_up("/v1", Service, timeout)

    def list_rule_sets(self, *, timeout: Timeout | None = None) -> RuleSetList:
        """List the rule sets: editions, clauses, parameters and where their scope ends."""
        return self._look_up("/v1/rule-sets", RuleSetList, timeout)

    def list_materials(self, *, timeout: Timeout | None = None) -> MaterialList:
        """List the parent metals the service knows by name."""
        return self._look_up("/v1/materials", MaterialList, timeout)

    def list_filler_metals(self, *, timeout: Timeout | None = None) -> FillerMetalList:
        """List the filler metals the service knows by name."""
        return self._look_up("/v1/filler-metals", FillerMetalList, timeout)

    def list_processes(self, *, timeout: Timeout | None = None) -> ProcessList:
        """List the welding processes the service knows."""
        return self._look_up("/v1/processes", ProcessList, timeout)

    def list_preparations(self, *, timeout: Timeout | None = None) -> GroovePreparationList:
        """List the preparations of grooves the service knows, with the limits each holds in."""
        return self._look_up("/v1/preparations", GroovePreparationList, timeout)

    # Around them

    def call(
        self, operation_path: str, body: Object | None = None, *, timeout: Timeout | None = None
    ) -> dict[str, Any]:
        """Call any operation by its path, such as "/v1/fillet-size", and give the answer as a plain dictionary.

        For what this version has no method for. With a body it is a POST, without one a GET; the body goes out as it
        is, quantities aside.
        """
        if body is None:
            return self._document("GET", operation_path, None, timeout)[0]
        self._check_once()
        return self._document("POST", operation_path, body, timeout)[0]

    def alive(self, *, timeout: Timeout | None = None) -> bool:
        """Say whether the service answers at all; asked once, without retries."""
        return self._healthy("/livez", timeout)

    def ready(self, *, timeout: Timeout | None = None) -> bool:
        """Say whether the service is ready to calculate; asked once, without retries."""
        return self._healthy("/readyz", timeout)

    def check_version(self, *, timeout: Timeout | None = None) -> Service:
        """Ask for the service's versions; raise IncompatibleVersion when its API is not the one this client speaks."""
        try:
            service = self.get_service(timeout=timeout)
        except NotFound as error:
            raise IncompatibleVersion(
                f"the service has no API version {API_MAJOR}, which this client speaks",
                status=error.status,
                problem=error.problem,
                request_id=error.request_id,
            ) from error
        major = re.match(r"v?([0-9]+)", service.api_version)
        if major is None or int(major[1]) != API_MAJOR:
            raise IncompatibleVersion(
                f"the service speaks API version {service.api_version}, this client version {API_MAJOR}", status=200
            )
        self._check_due = False
        return service

    def _calculate(self, path: str, kind: type[C], arguments: Object, timeout: Timeout | None) -> C:
        self._check_once()
        given = {name: value for name, value in arguments.items() if value is not None}
        return self._typed(kind, *self._document("POST", path, given, timeout))

    def _look_up(self, path: str, kind: type[A], timeout: Timeout | None) -> A:
        return self._typed(kind, *self._document("GET", path, None, timeout))

    def _check_once(self) -> None:
        if self._check_due:
            self.check_version()

    def _document(
        self, method: str, path: str, body: Object | None, timeout: Timeout | None
    ) -> tuple[dict[str, Any], Exchange]:
        exchange = self._transport.send(method, path, body, timeout=timeout)
        response = exchange.response
        _warn_if_deprecated(method, path, response)
        if response.status_code != 200:
            raise error_for(response.status_code, response.headers, response.content, exchange.request_id)
        try:
            document = json.loads(response.content)
        except (ValueError, RecursionError) as error:
            raise _unexpected("the answer is not JSON", exchange) from error
        if not isinstance(document, dict):
            raise _unexpected("the answer is no JSON object", exchange)
        return document, exchange

    def _typed(self, kind: type[A], document: dict[str, Any], exchange: Exchange) -> A:
        try:
            return decode(kind, document)
        except Undecodable as error:
            raise _unexpected(f"the answer is not what this client expects: {error}", exchange) from error

    def _healthy(self, path: str, timeout: Timeout | None) -> bool:
        try:
            exchange = self._transport.send("GET", path, timeout=timeout, retry=False)
        except ConnectionFailed:
            return False
        response = exchange.response
        if response.status_code in (200, 503):
            return response.status_code == 200
        raise error_for(response.status_code, response.headers, response.content, exchange.request_id)


def _unexpected(message: str, exchange: Exchange) -> Unexpected:
    response = exchange.response
    return Unexpected(
        message,
        status=response.status_code,
        request_id=response.headers.get("X-Request-Id") or exchange.request_id,
    )


def _warn_if_deprecated(method: str, path: str, response: requests.Response) -> None:
    """Pass a Deprecation header on to whoever called, with what the service says about the end and the successor."""
    since = response.headers.get("Deprecation")
    if since is None:
        return
    more = [f"{name}: {response.headers[name]}" for name in ("Sunset", "Link") if name in response.headers]
    warnings.warn(
        f"{method} {path} is deprecated ({'; '.join([f'Deprecation: {since}', *more])})",
        DeprecationWarning,
        stacklevel=_callers_level(),
    )


def _callers_level() -> int:
    """Count the frames from a warning up to the code that called into this package."""
    package = __name__.partition(".")[0]
    level = 1
    frame = sys._getframe(1)
    while frame.f_back is not None and str(frame.f_globals.get("__name__")).partition(".")[0] == package:
        frame = frame.f_back
        level += 1
    return level
