"""One method per operation of the service.

Generated from openapi/openapi.json by openapi/generate_client.py: do not edit.
"""

from __future__ import annotations

from abc import ABC, abstractmethod
from collections.abc import Mapping
from typing import TYPE_CHECKING, Any, TypeVar, Unpack, overload

from truethroat.answer import Answer
from truethroat.transport import Timeout

if TYPE_CHECKING:
    from truethroat._generated import requests, results

__all__ = ["Operations"]

A = TypeVar("A", bound=Answer)


class Operations(ABC):
    """The operations of the service: a method takes an operation's request and gives its answer.

    What is left out of a request is not sent, so the service's own defaults hold. Whatever else a request holds is for
    the service to judge: a refusal is raised as an error.
    """

    @abstractmethod
    def _calculate(self, path: str, kind: type[A], request: Mapping[str, object], timeout: Timeout | None) -> A: ...

    @abstractmethod
    def _look_up(self, path: str, kind: type[A], timeout: Timeout | None) -> A: ...

    def fillet_size(
        self, *, timeout: Timeout | None = None, **request: Unpack[requests.FilletSizeRequest]
    ) -> results.FilletSizeAnswer:
        """Leg and throat of a fillet to specify.

        A calculation: it stores nothing and may be repeated.

        - units: Units of the answer. Default: metric.
        - mark: The caller's own mark for this joint, given back with the answer.
        - working: Whether the answer shows its working. Default: false.
        - rule_set: Rules to size by; see /v1/rule-sets.
        - joint: The joint.
        - parts: Parts 1 and 2. Part 1 is the part that runs through (tee), whose face is welded (lap).
        - basis: What the size is based on.
        - load: Load, with basis "load": a force shared by the welds, components per length, a force on a group
          along and across it, or one balanced about a member's centroid.
        - filler: Filler metal: an id (see /v1/filler-metals) or its strength.
        - parameters: Parameters that replace the rule set's own; Eurocodes only.
        - process: Process: AWS letters or ISO 4063 number.
        - position: Position: AWS or ISO 6947 code.
        - end_loaded: Whether the long-weld reduction applies. Not given: it does for a lap that is loaded along
          its weld.
        - transverse_stiffener: Whether the weld joins a transverse stiffener to a plated member, so that EN
          1993-1-8 4.11(4) reduces it over 1.7 m. Default: false.
        - ends: Whether the weld is full size to its ends; if not, EN 1993-1-8 4.5.1(1) takes two throats off
          its length. Default: full.
        - root_bending: Whether a tee welded from one side is also sized for bending about its root. EN 1993-1-8
          4.12 gives no formula; the model is in the readings of /v1/rule-sets. Default: false.
        - packing: Packing between the parts of a lap, EN 1993-1-8 4.4.
        - intermittent: Segments and gaps, for an intermittent fillet.
        - tension_member: Member to check for shear lag, AISC 360-22 Table D3.1 case 4.
        - unstiffened_flange: Flange to check under the plate, EN 1993-1-8 4.10; with full strength.
        - minimum_throat: National least throat in addition to the 3 mm of EN 1993-1-8: sqrt(t) - 0.5 mm by the
          thicker part.
        - hss_end: Whether the weld ends a rectangular hollow section in tension, so that AISC 360-22 J2.4(a)(2)
          leaves out the directional increase. By default the increase is left out wherever a part is a hollow
          section.
        - edge_of: Part whose edge the welds of a lap run along, which sets their largest size. Not given: part
          2, and part 1 as well where two welds lie across the force.
        - held_from_turning: Whether the joint is held from turning about its weld, so that a pull does not open
          one weld from its root. Default: false.
        - access: Sides that the joint can be welded from; needed for two welds at a hollow section.
        - root_pass: How the root pass is made, where it is not made by hand; AISC 360-22 counts proven
          penetration only then.
        - leg_tolerance: How much smaller than specified a leg may be made; the size covers it. From 0 mm to 50
          mm. Default: 0 mm.
        - penetration: Fusion beyond the root or the prepared depth.
        - size_by: What is rounded up to the step: the throat by default for EN 1993-1-8, the leg otherwise.
        - size_step: Step that the size is rounded up to: by default 1/16 in (us), 1 mm of leg or 0.5 mm of
          throat. From 0.01 mm to 25.4 mm.
        """
        from truethroat._generated.results import FilletSizeAnswer

        return self._calculate("/v1/fillet-size", FilletSizeAnswer, request, timeout)

    def groove_size(
        self, *, timeout: Timeout | None = None, **request: Unpack[requests.GrooveSizeRequest]
    ) -> results.GrooveSizeAnswer:
        """How much groove, plug or slot is enough, and the preparation it needs.

        A calculation: it stores nothing and may be repeated.

        - units: Units of the answer. Default: metric.
        - mark: The caller's own mark for this joint, given back with the answer.
        - working: Whether the answer shows its working. Default: false.
        - rule_set: Rules to size by; see /v1/rule-sets.
        - joint: The joint.
        - parts: Parts 1 and 2. Part 1 is the part that runs through (tee), whose end meets part 2 (corner),
          whose face is welded (lap).
        - weld: The weld.
        - basis: What the size is based on.
        - load: Load, with basis "load": a force on the joint, or components per length.
        - filler: Filler metal: an id (see /v1/filler-metals) or its strength.
        - parameters: Parameters that replace the rule set's own; EN 1993-1-8 only.
        - root_pass: How the root pass is made, where it is not made by hand; AISC 360-22 counts proven
          penetration only then.
        - process: Process: AWS letters or ISO 4063 number.
        - position: Position: AWS or ISO 6947 code.
        """
        from truethroat._generated.results import GrooveSizeAnswer

        return self._calculate("/v1/groove-size", GrooveSizeAnswer, request, timeout)

    def grind_allowance(
        self, *, timeout: Timeout | None = None, **request: Unpack[requests.GrindAllowanceRequest]
    ) -> results.GrindAllowanceAnswer:
        """How much of a seam may be ground away.

        A calculation: it stores nothing and may be repeated.

        - units: Units of the answer. Default: metric.
        - mark: The caller's own mark for this joint, given back with the answer.
        - working: Whether the answer shows its working. Default: false.
        - seam: The seam.
        - required_throat: Throat the finished seam must keep. From 0 mm (exclusive) to 300 mm.
        - finish: What is done to the face. Default: {"to": "as-welded"}.
        - preparation: Prepared edge of a butt, an edge seam or a closed corner.
        - penetration: Fusion beyond the root or the prepared depth.
        - face_height: Height of the face over its plane: the flush plane, or the line between the toes. From 0
          mm to 50 mm. Default: 0 mm.
        - hollow: Depth of a hollow face under its plane, instead of face_height. From 0 mm to 50 mm.
        - face_height_tolerance: Plus or minus; the remaining throat includes it. From 0 mm to 300 mm. Default:
          0 mm.
        - hollow_tolerance: Plus or minus; the remaining throat includes it. From 0 mm to 300 mm. Default: 0 mm.
        - face_width: Width of a flat seam's face; it limits the throat to the distance to the nearer toe.
          Without it the toes of a groove are taken at its edges. From 0 mm (exclusive) to 300 mm.
        - rule_set: Rules whose deduction the budget takes off the prepared depth.
        - root_pass: How the root pass is made, where it is not made by hand; AISC 360-22 counts proven
          penetration only then.
        - process: Process: AWS letters or ISO 4063 number.
        - position: Position: AWS or ISO 6947 code.
        """
        from truethroat._generated.results import GrindAllowanceAnswer

        return self._calculate("/v1/grind-allowance", GrindAllowanceAnswer, request, timeout)

    def bevel_depth(
        self, *, timeout: Timeout | None = None, **request: Unpack[requests.BevelDepthRequest]
    ) -> results.BevelDepthAnswer:
        """How deep to prepare an edge before welding.

        A calculation: it stores nothing and may be repeated.

        - units: Units of the answer. Default: metric.
        - mark: The caller's own mark for this joint, given back with the answer.
        - working: Whether the answer shows its working. Default: false.
        - seam: The seam.
        - required_throat: Throat the finished seam must keep. From 0 mm (exclusive) to 300 mm.
        - finish: What is done to the face. Default: {"to": "flush"}.
        - groove: Form of the groove. Default: single-bevel.
        - groove_angle: Included angle of the groove: by default 45 deg for a bevel, 60 deg for a V, 20 deg for
          a J or U. From 5 deg to 120 deg.
        - bevelled: Part that is cut: 1 for a bevel or J, both for a V or U, by default.
        - root_radius: Root radius of a J (10 mm by default) or U (6 mm). From 1 mm to 25 mm.
        - penetration: Fusion beyond the root or the prepared depth.
        - minimum_land: Least land that must stay. From 0 mm to 50 mm. Default: 1 mm.
        - depth_step: Step that the depth is rounded up to: by default 0.5 mm, or 1/32 in (us). From 0.01 mm to
          25.4 mm.
        - depth_tolerance: Plus or minus; the remaining throat includes it. From 0 mm to 300 mm. Default: 0 mm.
        - rule_set: Rules whose deduction is added to the depth.
        - root_pass: How the root pass is made, where it is not made by hand; AISC 360-22 counts proven
          penetration only then.
        - process: Process: AWS letters or ISO 4063 number.
        - position: Position: AWS or ISO 6947 code.
        """
        from truethroat._generated.results import BevelDepthAnswer

        return self._calculate("/v1/bevel-depth", BevelDepthAnswer, request, timeout)

    def weld_group(
        self, *, timeout: Timeout | None = None, **request: Unpack[requests.WeldGroupRequest]
    ) -> results.WeldGroupAnswer:
        """Lines of weld under any force and moment.

        A calculation: it stores nothing and may be repeated.

        - units: Units of the answer. Default: metric.
        - mark: The caller's own mark for this joint, given back with the answer.
        - working: Whether the answer shows its working. Default: false.
        - rule_set: Rules to size by; see /v1/rule-sets.
        - group: The group: a named pattern, or its lines and arcs.
        - load: Load of all groups together.
        - parts: Parts 1 and 2, for the least size and, with EN 1993, the strength.
        - method: Elastic line method, or instantaneous centre for loads in the plane (AISC). Default: elastic.
        - count: Equal groups that share the load. Default: 1.
        - filler: Filler metal: an id (see /v1/filler-metals) or its strength.
        - parameters: Parameters that replace the rule set's own; EN 1993-1-8 only.
        - leg: Leg of the weld, to find what it carries. From 0.5 mm to 100 mm.
        - throat: Throat of the weld, instead of the leg. From 0.3 mm to 100 mm.
        - end_loaded: Whether the long-weld reduction applies. Not given: it does where a force acts in the
          plane of the group.
        - size_by: What is rounded up to the step: the throat by default for EN 1993-1-8, the leg otherwise.
        - size_step: Step that the size is rounded up to: by default 1/16 in (us), 1 mm of leg or 0.5 mm of
          throat. From 0.01 mm to 25.4 mm.
        """
        from truethroat._generated.results import WeldGroupAnswer

        return self._calculate("/v1/weld-group", WeldGroupAnswer, request, timeout)

    @overload
    def as_welded(
        self, *, timeout: Timeout | None = None, **request: Unpack[requests.FilletAsWelded]
    ) -> results.AsWeldedAnswer: ...

    @overload
    def as_welded(
        self, *, timeout: Timeout | None = None, **request: Unpack[requests.ButtAsWelded]
    ) -> results.AsWeldedAnswer: ...

    def as_welded(self, *, timeout: Timeout | None = None, **request: Any) -> results.AsWeldedAnswer:
        """Whether a weld as gauged has its throat and keeps its quality level.

        A calculation: it stores nothing and may be repeated.

        - units: Units of the answer. Default: metric.
        - mark: The caller's own mark for this joint, given back with the answer.
        - working: Whether the answer shows its working. Default: false.
        - thickness: Thickness of parts 1 and 2.
        - required: What the drawing asks for.
        - quality: Level or code that the weld is checked against; see /v1/rule-sets.
        - loading: Loading, for AWS D1.1: static by default; cyclic with the weld across the tension in a
          primary member; or other cyclic.
        - reading_tolerance: Plus or minus of the gauge. It is applied to every length read, on the unsafe side.
          An imperfection read as zero is taken as absent; a face read as flat may still be hollow by the
          tolerance. From 0 mm to 5 mm. Default: 0 mm.
        - extent: How long imperfections are. Without its length an imperfection is taken to run along the whole
          weld.
        - undercut: Deepest undercut at either toe. From 0 mm to 20 mm.
        - overlap: Widest overlap at either toe. From 0 mm to 20 mm.
        - toe_angle: Least angle between plate and face at a toe, in the air. From 30 deg to 180 deg.
        - incomplete_penetration: Depth to the root that is not fused, by a test or a macro. From 0 mm to 50 mm.
        - lack_of_fusion: Height of lack of fusion inside, by a test or a macro. From 0 mm to 50 mm.
        - surface_pore: Diameter of the widest pore in the surface. From 0 mm to 20 mm.
        - internal_pore: Diameter of the widest single pore inside, by a test or a macro. From 0 mm to 20 mm.
        - end_crater_pipe: Depth of the pipe in an end crater. From 0 mm to 20 mm.
        - crack: Whether there is any crack, craters included; without it cracks are not checked.
        - burn_through: Whether the weld burnt through anywhere; without it burn-through is not checked.
        - kind: Default: fillet.
        - legs: Legs as gauged, along the faces of parts 1 and 2.
        - angle: Angle between the plates. From 60 deg to 120 deg. Default: 90 deg.
        - throat: Throat as gauged; it limits the throat that the legs give. From 0 mm (exclusive) to 100 mm.
        - convexity: Height of the face over the line between its toes. From 0 mm to 50 mm.
        - hollow: Depth of a hollow face under that line, instead of convexity. From 0 mm to 50 mm.
        - root_gap: Gap between the parts at the root; parts that touch have none. From 0 mm to 20 mm. Default:
          0 mm.
        - penetration: Fusion beyond the root or the prepared depth.
        - sides: Sides it was welded from. Default: 1.
        - circumferential: Whether the seam runs round a pipe (ISO 5817). Default: false.
        - face_width: Width of the face, on which the limits of ISO 5817 for reinforcement and overlap depend.
          From 0.5 mm to 300 mm.
        - reinforcement: Height of the face over the plate. From 0 mm to 50 mm.
        - underfill: Depth of the face under the plate, sagging included. From 0 mm to 50 mm.
        - root_width: Width of the root bead, on which the limit of ISO 5817 for excess penetration depends.
          From 0.5 mm to 300 mm.
        - excess_penetration: Height of the root bead over the plate. From 0 mm to 50 mm.
        - root_concavity: Depth of a hollow root under the plate. From 0 mm to 50 mm.
        - shrinkage_groove: Depth of grooves beside the root bead. From 0 mm to 20 mm.
        - misalignment: Offset of the two parts. From 0 mm to 50 mm.
        - flush: Flush finish, where the drawing requires one by AWS D1.1.
        """
        from truethroat._generated.results import AsWeldedAnswer

        return self._calculate("/v1/as-welded", AsWeldedAnswer, request, timeout)

    def heat(self, *, timeout: Timeout | None = None, **request: Unpack[requests.HeatRequest]) -> results.HeatAnswer:
        """Arc energy, heat input, cooling time, preheat and hardness, and the heat that keeps to a cooling window.

        A calculation: it stores nothing and may be repeated.

        - units: Units of the answer. Default: metric.
        - mark: The caller's own mark for this joint, given back with the answer.
        - working: Whether the answer shows its working. Default: false.
        - arc: The arc: its settings, its energy, or its heat input.
        - process: Process: AWS letters or ISO 4063 number.
        - efficiency: Thermal efficiency k; that of the process when left out.
        - thickness: Thickness of the plate itself, not the combined thickness. Where two parts of unequal
          thickness meet, this is the thinner one; send thickest_part too. From 0.1 mm to 300 mm.
        - seam: Seam: a run on plate, a filling run of a butt, or a single-run fillet in a corner or a tee.
        - preheat: Temperature of the plate when the pass begins. From -50 degC to 400 degC. Default: 20 degC.
        - cooling_time: Cooling time t8/5 as measured; send it instead of an arc. From 0.1 s to 1000 s.
        - cooling_window: Cooling times t8/5 to judge against. Common practice: 10 to 25 s for S235 to S355, 5
          to 20 s for quenched and tempered S460 to S690, 5 to 15 s for S700MC.
        - composition: Composition of the parent steel.
        - carbon_equivalents: Carbon equivalents of the parent steel; send them instead of the composition.
        - weld_metal_cet: CET of the weld metal, for method B.
        - hydrogen: Diffusible hydrogen of the weld metal. Sending it requests methods A and B; values outside
          the limits of method B are refused. From 0 ml/100g (exclusive) to 100 ml/100g.
        - combined_thickness: Sum of the thicknesses that meet at the weld, for method A. Each is the mean over
          75 mm. Half the sum counts for fillets on opposite sides that are welded at the same time. It follows
          from seam, thickness and thickest_part when left out. From 0 mm (exclusive) to 1000 mm.
        - preheat_category: Category of AWS D1.1. A: SMAW with other than low-hydrogen electrodes on A36, A53 B,
          A500 and the like. B: low-hydrogen SMAW, SAW, GMAW or FCAW on A36, A572-42 to -55, A588, A992,
          A913-50, A500. C: A572-60 and -65, A633 E, A913-60 and -65, A709 HPS 70W. D: A913 and A710 with H8
          consumables.
        - thickest_part: Thickest part at the weld; thickness when left out. The cooling time and every preheat
          go by it. From 0.1 mm to 300 mm.
        - steel_group: Steel group of ISO/TR 15608, for the hardness limit of ISO 15614-1.
        - heat_treated: Whether the weld is heat treated afterwards. Default: false.
        - leg: Leg of a fillet laid in this one pass. From 0.5 mm to 50 mm.
        - required_leg: Leg that was required of this fillet. From 0.5 mm to 50 mm.
        """
        from truethroat._generated.results import HeatAnswer

        return self._calculate("/v1/heat", HeatAnswer, request, timeout)

    def crack_risk(
        self, *, timeout: Timeout | None = None, **request: Unpack[requests.CrackRiskRequest]
    ) -> results.CrackRiskAnswer:
        """How likely a pass is to crack along its centre or by quick chill, why, and what to change.

        A calculation: it stores nothing and may be repeated.

        - units: Units of the answer. Default: metric.
        - mark: The caller's own mark for this joint, given back with the answer.
        - working: Whether the answer shows its working. Default: false.
        - joint: Joint that the pass is in; corner is an outside corner.
        - bead: Shape of one bead, not of the whole weld.
        - hollow: Depth of a hollow face under the line between its toes. From 0 mm to 50 mm.
        - restrained: Whether the joint is held so that it cannot give as the bead shrinks. Default: false.
        - weld_metal: Composition of the weld metal, for the index UCS.
        - process: Process: AWS letters or ISO 4063 number.
        - thickness: Thickness of parts 1 and 2, for the least fillet.
        - leg: Leg of the first, or only, pass. From 0.5 mm to 100 mm.
        - low_hydrogen: Whether the process is low in hydrogen or the steel is preheated. The thinner part then
          decides the least fillet of AWS D1.1; otherwise the thicker part does. Default: false.
        - crater: How the crater is left.
        """
        from truethroat._generated.results import CrackRiskAnswer

        return self._calculate("/v1/crack-risk", CrackRiskAnswer, request, timeout)

    def filler_quantity(
        self, *, timeout: Timeout | None = None, **request: Unpack[requests.FillerQuantityRequest]
    ) -> results.FillerQuantityAnswer:
        """What welds take in metal, time, gas and money.

        A calculation: it stores nothing and may be repeated.

        - units: Units of the answer. Default: metric.
        - mark: The caller's own mark for this joint, given back with the answer.
        - working: Whether the answer shows its working. Default: false.
        - welds: Welds to estimate, one entry for equal ones.
        - prices: The caller's own prices; the service has none.
        """
        from truethroat._generated.results import FillerQuantityAnswer

        return self._calculate("/v1/filler-quantity", FillerQuantityAnswer, request, timeout)

    def distortion(
        self, *, timeout: Timeout | None = None, **request: Unpack[requests.DistortionRequest]
    ) -> results.DistortionAnswer:
        """How a joint shrinks and turns when welded, by named methods, and what distorts less.

        A calculation: it stores nothing and may be repeated.

        - units: Units of the answer. Default: metric.
        - mark: The caller's own mark for this joint, given back with the answer.
        - working: Whether the answer shows its working. Default: false.
        - joint: The joint.
        - length: Length of the joint, along its welds. From 1 mm to 100000 mm.
        - member: Section of the member that the welds run along.
        - heat_input: Heat input of one run, with the arc efficiency included, for two methods along the weld.
          From 0.01 kJ/mm to 100 kJ/mm.
        - iso_13920: General tolerances to judge the estimates by.
        - calibration: Factors that correct these methods by the shop's own measurements.
        - size_step: Step by which the alternatives grow, of the leg or of the root opening: 1/16 in (us) or 1
          mm by default. From 0.01 mm to 25.4 mm.
        """
        from truethroat._generated.results import DistortionAnswer

        return self._calculate("/v1/distortion", DistortionAnswer, request, timeout)

    def break_test(
        self, *, timeout: Timeout | None = None, **request: Unpack[requests.BreakTestRequest]
    ) -> results.BreakTestAnswer:
        """What opens a coupon from its root, and whether it breaks before its plate bends.

        A calculation: it stores nothing and may be repeated.

        - units: Units of the answer. Default: metric.
        - mark: The caller's own mark for this joint, given back with the answer.
        - working: Whether the answer shows its working. Default: false.
        - coupon: What is opened: a fillet of a tee or inside a corner, or the seam outside a corner.
        - seam: Section of the weld; a fillet needs the thickness of its plates too.
        - weld: Weld metal.
        - plates: The plates, both of one steel.
        - length: Length of weld that is opened, notches included. From 5 mm to 2000 mm.
        - lever: Lever: from the root to the line of the force. From 10 mm to 10000 mm.
        - preparation: Prepared edge of a closed corner.
        - penetration: Fusion beyond the root or the prepared depth.
        - face_height: Height of the face over its plane: the flush plane, or the line between the toes. From 0
          mm to 50 mm. Default: 0 mm.
        - hollow: Depth of a hollow face under its plane, instead of face_height. From 0 mm to 50 mm.
        - finish: What is done to the face. Default: {"to": "as-welded"}.
        - notch: Notches that make the weld break.
        - hand_force: Force that hands can pull on the lever (common practice, no source). From 1 N to 5000 N.
          Default: 250 N.
        - rules: Rules for the coupon, and for what its broken faces show.
        - outcome: How the test ended, to be judged by AWS D1.1; for a tee only.
        """
        from truethroat._generated.results import BreakTestAnswer

        return self._calculate("/v1/break-test", BreakTestAnswer, request, timeout)

    def joint_plan(
        self, *, timeout: Timeout | None = None, **request: Unpack[requests.JointPlanRequest]
    ) -> results.JointPlanAnswer:
        """Every way to make one joint, sized, costed and ranked, with what is refused and why.

        A calculation: it stores nothing and may be repeated.

        - units: Units of the answer. Default: metric.
        - mark: The caller's own mark for this joint, given back with the answer.
        - working: Whether the answer shows its working. Default: false.
        - rule_set: Rules to plan by; see /v1/rule-sets.
        - joint: The joint.
        - parts: Parts 1 and 2.
        - length: Length of the seam. From 0 mm (exclusive) to 100000 mm.
        - basis: What the weld is sized for: a throat for an outside corner, any for a butt, a load or full
          strength for other joints.
        - process: Process: AWS letters or ISO 4063 number.
        - position: Position: AWS or ISO 6947 code.
        - load: Load, with basis "load".
        - required_throat: Throat the finished seam must keep, with basis "throat". From 0 mm (exclusive) to 300
          mm.
        - access: Sides the seam can be welded from. A hollow section needs it said; otherwise both sides by
          default.
        - held_from_turning: Whether the joint is held from turning about the weld, so that a load does not open
          a one-sided weld from its root. Default: false.
        - finish: What is done to the face. Default: {"to": "as-welded"}.
        - filler: Filler metal: an id (see /v1/filler-metals) or its strength.
        - parameters: Parameters that replace the rule set's own; Eurocodes only.
        - intermittent: Intermittent weld; the plan has no such way without it.
        - penetration: Fusion beyond the root or the prepared depth.
        - root_pass: How the root pass is made, where it is not made by hand; AISC 360-22 counts proven
          penetration only then.
        - tolerances: Tolerances of the shop, for the throat budget.
        - spread: How lengths lie within their tolerances, for the chance of a short throat.
        - quality: Level or code that the limits come from; AWS D1.1:2020 with AISC rules and ISO 5817 level C
          with Eurocodes by default.
        - arc: The arc of one pass: its settings, its energy, or its heat input. Without it the heat follows
          from the metal laid.
        - preheat: Temperature of the plate when a pass begins; 20 degC by default. From -50 degC to 400 degC.
        - cooling_window: Cooling times t8/5 to judge against.
        - composition: Composition of the parent steel.
        - hydrogen: Diffusible hydrogen of the weld metal. From 0 ml/100g (exclusive) to 100 ml/100g.
        - preheat_category: Category of AWS D1.1 for preheat, as /v1/heat has it.
        - deposition: Deposition rate, or the wire and its feed; usual rates of the process by default.
        - efficiency: Share of the consumable that is deposited.
        - operator_factor: Share of the clock during which the arc burns.
        - gas_flow: Shielding gas while the arc burns. From 0.6 L/min to 120 L/min.
        - bevelling_speed: Speed at which one face of an edge is cut, averaged over the time on the clock. From
          0 mm/min (exclusive) to 60000 mm/min.
        - prices: The caller's own prices; the service has none.
        - weights: Weights of the costs in the ranking.
        - detail: Whether the full answers of the single resources come for the recommended way only, or for all
          ways. Default: recommended.
        """
        from truethroat._generated.results import JointPlanAnswer

        return self._calculate("/v1/joint-plan", JointPlanAnswer, request, timeout)

    def get_service(self, *, timeout: Timeout | None = None) -> results.ServiceAnswer:
        """Versions of the service, and its rule sets by name."""
        from truethroat._generated.results import ServiceAnswer

        return self._look_up("/v1", ServiceAnswer, timeout)

    def list_rule_sets(self, *, timeout: Timeout | None = None) -> results.RuleSetsAnswer:
        """Rule sets and quality sets with their editions, clauses, parameters and limits of scope."""
        from truethroat._generated.results import RuleSetsAnswer

        return self._look_up("/v1/rule-sets", RuleSetsAnswer, timeout)

    def list_materials(self, *, timeout: Timeout | None = None) -> results.MaterialsAnswer:
        """Base metals with their strengths by thickness, in millimetres and megapascals."""
        from truethroat._generated.results import MaterialsAnswer

        return self._look_up("/v1/materials", MaterialsAnswer, timeout)

    def list_filler_metals(self, *, timeout: Timeout | None = None) -> results.FillerMetalsAnswer:
        """Filler metals with their strength, in megapascals."""
        from truethroat._generated.results import FillerMetalsAnswer

        return self._look_up("/v1/filler-metals", FillerMetalsAnswer, timeout)

    def list_processes(self, *, timeout: Timeout | None = None) -> results.ProcessesAnswer:
        """Processes and positions with every code they answer to, and the published figures of each process."""
        from truethroat._generated.results import ProcessesAnswer

        return self._look_up("/v1/processes", ProcessesAnswer, timeout)

    def list_preparations(self, *, timeout: Timeout | None = None) -> results.PreparationsAnswer:
        """Preparations of grooves with the limits each holds in, in millimetres."""
        from truethroat._generated.results import PreparationsAnswer

        return self._look_up("/v1/preparations", PreparationsAnswer, timeout)
