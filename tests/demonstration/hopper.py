"""A cutting list answered joint by joint: a transfer hopper and its support frame, as a small shop might build them.

Run it as `python tests/demonstration/hopper.py`, or with the path of another list in the same form. It starts the
service on a free port of this machine, asks it about every row through the client, prints what to weld, grind and
bevel, and ends with what would have gone wrong. The hopper, its loads and its habits are invented.

Exit code: 0 when every row was asked, 1 when the service did not start or failed (or nobody reads on), 2 when the list
cannot be read.
"""

from __future__ import annotations

import csv
import os
import signal
import sys
import time
from collections.abc import Callable, Mapping, Sequence
from dataclasses import dataclass
from fractions import Fraction
from pathlib import Path
from types import FrameType
from typing import Any

from estimate import price
from page import PAGE, Line, folded, short
from plans import planned
from serving import NotStarted, service
from shop import USUAL_WIRE, WIRES

from truethroat import (
    BevelDepthAnswer,
    Client,
    FilletSizeAnswer,
    InvalidInput,
    Quantity,
    Remedy,
    ThroatBudget,
    TruethroatError,
    Weld,
)

LIST = Path(__file__).with_name("cutting_list.csv")
WIDTHS = (28, 32, 27, 15)  # the first holds mark and place
MM = {"mm": 1.0, "in": 25.4}
STEEL = 7.85e-6  # kg/mm3
#: The shop's break test of a corner; strengths of an E70 weld on plate like A36, invented for the list.
COUPON: dict[str, Any] = {
    "weld": {"yield_strength": "58 ksi", "tensile_strength": "70 ksi"},
    "plates": {"yield_strength": "36 ksi"},
    "length": "2 in",
    "lever": "12 in",
}
#: What stands above the table.
LEGEND = (
    "The tolerances, prices and habits are those of an invented shop.",
    "Needed: the weld to specify, or the throat that a seam must keep and its finish.",
    "In the shop: what may be ground off, how to cut an edge, or the metal of the leg that the shop lays by habit.",
    "Joints planned: every way to make a joint, the best first. Turns: the angle by which the weld pulls the parts.",
    "Chance short: how likely the throat comes out too small within the shop's tolerances.",
)
CAUTION = "Estimates for planning only: confirm them by the local code, a licensed engineer and a certified inspector."

# --- From a row of the list to a request ---

#: Where each column of the list goes in the request, by the question asked.
GROOVE = {"rules": "rule_set", "process": "process", "position": "position"}
SEAM = {
    "joint": "seam.kind",
    "throat": "required_throat",
    "finish": "finish.to",
    "radius": "finish.radius",
    "below": "finish.below",
    "grinder": "finish.tolerance",
    "penetration": "penetration.depth",
    "vouched": "penetration.vouched",
    "root_pass": "root_pass",
}
FIELDS: dict[str, dict[str, str]] = {
    "size": {
        **GROOVE,
        "joint": "joint.kind",
        "angle": "joint.angle",
        "sides": "joint.sides",
        "gap": "joint.root_gap",
        "filler": "filler",
        "load": "load.force",
        "direction": "load.angle",
        "edge": "edge_of",
        "held": "held_from_turning",
        "end_loaded": "end_loaded",
    },
    "grind": {
        **GROOVE,
        **SEAM,
        "angle": "seam.angle",
        "overlap": "seam.overlap",
        "face": "face_height",
        "face_tolerance": "face_height_tolerance",
        "cut": "preparation.depth",
        "groove": "preparation.groove",
        "groove_angle": "preparation.groove_angle",
    },
    "bevel": {**GROOVE, **SEAM, "groove": "groove", "groove_angle": "groove_angle"},
    "groove": {
        **GROOVE,
        "joint": "joint.kind",
        "filler": "filler",
        "load": "load.force",
        "length": "load.length",
        "direction": "load.angle",
        "weld": "weld.kind",
        "groove": "weld.groove",
        "groove_angle": "weld.groove_angle",
        "access": "weld.access",
        "diameter": "weld.diameter",
    },
    "group": {
        "rules": "rule_set",
        "filler": "filler",
        "joint": "group.pattern",
        "length": "group.depth",
        "width": "group.width",
        "load": "load.force.y",
        "lever": "load.at.x",
        "reach": "load.at.z",
        "method": "method",
        "plates": "count",
    },
    "plan": {
        **GROOVE,
        "joint": "joint.kind",
        "angle": "joint.angle",
        "gap": "joint.root_gap",
        "filler": "filler",
        "load": "load.force",
        "length": "length",
        "direction": "load.angle",
        "throat": "required_throat",
        "finish": "finish.to",
        "radius": "finish.radius",
        "below": "finish.below",
        "grinder": "finish.tolerance",
        "penetration": "penetration.depth",
        "vouched": "penetration.vouched",
        "root_pass": "root_pass",
        "access": "access",
        "member": "intermittent.member",
    },
    "gauge": {
        "rules": "quality",
        "asked_leg": "required.leg",
        "throat": "required.throat",
        "hollow": "hollow",
        "convexity": "convexity",
        "gauge": "reading_tolerance",
    },
}
#: Columns that a function below places itself; the thicknesses go into lists, the rest depends on other cells.
PLACED: dict[str, dict[str, str]] = {
    "size": {
        "t1": "parts.0.thickness",
        "t2": "parts.1.thickness",
        "material": "parts.0.material",
        "length": "load.length",
        "habit": "",
    },
    "grind": {"t1": "seam.thickness.0", "t2": "seam.thickness.1"},
    "bevel": {"t1": "seam.thickness.0", "t2": "seam.thickness.1"},
    "groove": {"t1": "parts.0.thickness", "t2": "parts.1.thickness", "material": "parts.0.material"},
    "group": {"t1": "parts.0.thickness", "t2": "parts.1.thickness", "material": "parts.0.material"},
    "plan": {"t1": "parts.0.thickness", "t2": "parts.1.thickness", "material": "parts.0.material"},
    "gauge": {"t1": "thickness.0", "t2": "thickness.1", "leg_1": "legs.0", "leg_2": "legs.1"},
}
PATTERNS = {"c": "C shape"}
"""Patterns of a group whose name does not say enough."""
#: Columns that every row has.
ANY_ROW = ("part", "mark", "where", "question", "units")
#: Columns that hold something other than text, and what they may hold.
WORDS: dict[str, dict[str, object]] = {
    "sides": {"1": 1, "2": 2},
    "edge": {"1": 1, "2": 2},
    "end_loaded": {"yes": True, "no": False},
    "held": {"yes": True, "no": False},
    "plates": {"1": 1, "2": 2},
}


class BadList(ValueError):
    """A list that cannot be read, with the place."""


@dataclass(frozen=True)
class Row:
    """One joint of the list: its filled cells by column."""

    cells: Mapping[str, str]

    def __getitem__(self, column: str) -> str:
        return self.cells.get(column, "")

    def request(self) -> dict[str, Any]:
        """Put every cell where the request wants it."""
        request: dict[str, Any] = {"mark": self["mark"], "units": self["units"]}
        for column, path in FIELDS[self["question"]].items():
            if self[column]:
                *folders, name = path.split(".")
                place = request
                for folder in folders:
                    place = place.setdefault(folder, {})
                place[name] = WORDS[column][self[column]] if column in WORDS else self[column]
        return request

    def columns(self, pointer: str) -> list[str]:
        """Columns of the list that a pointer into the request means; the pointer itself when none of them is filled."""
        path = pointer.removeprefix("#/").replace("/", ".")
        places = FIELDS[self["question"]] | PLACED[self["question"]]
        under = f"{path}."
        return [name for name, place in places.items() if self[name] and f"{place}.".startswith(under)] or [pointer]


def read_list(path: Path) -> list[Row]:
    """Read and check a list; whether its values make sense is for the service to say."""
    try:
        with path.open(newline="", encoding="utf-8") as file:
            lines = csv.DictReader(file)
            columns = list(lines.fieldnames or ())
            missing = [column for column in ANY_ROW if column not in columns]
            if missing:
                raise BadList(f"{path.name}: there is no column {', '.join(missing)}")
            rows: dict[str, Row] = {}
            for cells in lines:
                row = _checked(cells, f"{path.name}, line {lines.line_num}")
                if row["mark"] in rows:
                    raise BadList(f"{path.name}, line {lines.line_num}: mark {row['mark']} is there twice")
                rows[row["mark"]] = row
    except (OSError, UnicodeDecodeError, csv.Error) as error:
        raise BadList(f"{path.name}: {error}") from error
    if not rows:
        raise BadList(f"{path.name}: the list holds no joints")
    return list(rows.values())


def _checked(cells: Mapping[str | None, Any], place: str) -> Row:
    """Make a row of a line's cells, or say what is wrong with them and where."""
    if None in cells:
        raise BadList(f"{place}: the line has more cells than there are columns")
    filled = {str(column): cell.strip() for column, cell in cells.items() if cell and cell.strip()}
    empty = [column for column in ANY_ROW if column not in filled]
    if empty:
        raise BadList(f"{place}: the line has no {', '.join(empty)}")
    place = f"{place} ({filled['mark']})"
    question = filled["question"]
    if question not in FIELDS:
        raise BadList(f"{place}: question must be one of {', '.join(FIELDS)}; it is {question!r}")
    known = {*ANY_ROW, *PLACED[question], *FIELDS[question]}
    for column, cell in filled.items():
        if column not in known:
            raise BadList(f"{place}: column {column} does not apply to the question {question}; leave it empty")
        if column in WORDS and cell not in WORDS[column]:
            raise BadList(f"{place}: {column} must be {' or '.join(WORDS[column])}; it is {cell!r}")
    if "habit" in filled and _millimetres(filled["habit"]) is None:
        raise BadList(f"{place}: habit must be a leg such as 6 mm or 1/4 in; it is {filled['habit']!r}")
    if "habit" in filled and _millimetres(filled.get("length", "")) is None:
        raise BadList(f"{place}: habit requires the length of the weld")
    return Row(filled)


def _millimetres(text: str) -> float | None:
    """Length of a text such as "6 mm" or "1 1/2 in", for comparing metal; None when it is none."""
    *numbers, unit = text.split() or [""]
    try:
        return float(sum(map(Fraction, numbers))) * MM[unit] if numbers else None
    except (ValueError, ZeroDivisionError, KeyError):
        return None


# --- From an answer to a line of the table ---


TROUBLES = {
    "ground": "too little throat left after grinding",
    "thin": "too little throat even before grinding",
    "trust": "enough throat only if the assumed penetration is really there",
    "exact": "enough as planned, but short where the shop's tolerances add up",
    "laid": "laid with too little throat",
    "over": "laid far larger than needed",
    "small": "the leg that the shop lays by habit is too small",
    "edge": "the edge has no room for the weld needed",
    "plate": "the plate fails before any weld does",
    "through": "no partial bevel is deep enough",
    "other": "no size of weld is enough",
    "refused": "outside the scope of the rules chosen, so refused",
}


def size(client: Client, row: Row) -> Line:
    """Ask for the size of a fillet, and weigh it against the habit of the shop."""
    request = _with_parts(row)
    if row["rules"] == "thin-part":
        request["basis"] = "thin-part"
    elif row["load"]:
        request["basis"], request["load"]["length"] = "load", row["length"]
    else:
        request["basis"] = "full-strength"
    answer = client.fillet_size(**request)
    if answer.specify is None:
        trouble = "plate" if answer.governs == "base-metal" else "edge" if answer.maximum is not None else "other"
        return Line("no size is enough", "", "cannot be made", answer.reasons, trouble)
    return _sized(row, answer)


def _sized(row: Row, answer: FilletSizeAnswer) -> Line:
    """Line of a fillet that can be made."""
    assert answer.specify is not None
    leg, throat = answer.specify.leg, answer.specify.throat
    by_throat = row["rules"].startswith("en-")
    specify = f"{throat} throat, {short(leg)} leg" if by_throat else f"{leg} leg"
    specify += ", 2 sides" if row["sides"] == "2" else ""
    specify += f", {answer.specify.passes} passes" if (answer.specify.passes or 1) > 1 else ""
    notes = tuple(caution.text for caution in answer.cautions if caution.code == "one-sided")
    if answer.length is not None and answer.length.factor < 1.0:
        notes += (f"The weld is so long that only {answer.length.effective} of its {answer.length.given} count.",)
    weld = _weld(row, leg)
    if not row["habit"]:
        return Line(specify, "", "enough", notes, weld=weld)

    habit, length = _millimetres(row["habit"]), _millimetres(row["length"])
    assert habit is not None and length is not None  # checked when the list was read
    ours = leg.value * MM[leg.unit]
    metal = length * float(row["sides"] or 1) * STEEL / 2.0
    weighed = (metal * habit**2, metal * ours**2)
    if habit < ours * (1.0 - 1e-9):
        work = f"habit {row['habit']}: too small"
        return Line(specify, work, "enough", notes, "small", weld=weld)
    # Metal grows with the square of the leg.
    ratio = (habit / ours) ** 2
    work = f"habit {row['habit']}: {ratio:.2f} x metal" if ratio > 1.0 + 1e-9 else f"habit {row['habit']}: right"
    return Line(specify, work, "enough", notes, metal=weighed, weld=weld)


def _weld(row: Row, leg: Quantity) -> Weld | None:
    """Weld of a row as it goes into the estimate, with the wire of its process; none without a length."""
    if not row["length"]:
        return None
    return {
        "mark": row["mark"],
        "shape": {"kind": "fillet", "legs": [leg, leg]},
        "length": row["length"],
        "count": int(row["sides"] or 1),
        "excess": 0.1,
        "position": row["position"] or "2F",
        **WIRES[row["process"] or USUAL_WIRE],
    }


def grind(client: Client, row: Row) -> Line:
    """Ask how much of a seam may be ground off."""
    answer = client.grind_allowance(**_with_thickness(row))
    specify = _finish(row)
    if answer.verdict == "enough":
        work = f"{answer.allowance} may come off"
        if answer.largest_radius is not None and row["finish"] == "radius":
            work = f"radius up to {answer.largest_radius}"
        return Line(specify, work, "enough")
    if answer.verdict == "enough-on-trust":
        left = _left(answer.judged_on, answer.budget)
        note = f"What is measured or proven makes {left}. {_instead(answer.remedies)}"
        return Line(specify, f"{answer.allowance} may come off", "enough on trust", (note,), "trust")
    if answer.verdict == "short":
        return Line(specify, "nothing may come off", "short as welded", answer.reasons, "thin")
    work = f"leave {answer.leave} standing" if answer.leave else ""
    if row["finish"] == "radius" and answer.largest_radius is not None:
        work = f"radius up to {answer.largest_radius}"
    note = f"The finish leaves {_left(answer.judged_on, answer.budget)}. {_instead(answer.remedies)}"
    notes = (note, *_opened(client, row)) if row["joint"].endswith("corner") else (note,)
    return Line(specify, work or "nothing may come off", "short if ground", notes, "ground")


def _opened(client: Client, row: Row) -> tuple[str, ...]:
    """What opens a coupon of a corner so ground, where hands can."""
    request = _with_thickness(row)
    for field in ("required_throat", "face_height_tolerance", "rule_set", "process", "position"):
        request.pop(field, None)
    if "preparation" in request:
        request["preparation"] = {"depth": request["preparation"]["depth"]}
    answer = client.break_test(coupon="outside-corner", **request, **COUPON)
    if answer.verdict != "opens-by-hand":
        return ()
    force = answer.force.breaking_at_most
    pull = f"at most {force.value:.0f} {force.unit} at the end of a {COUPON['lever']} lever"
    return (f"A coupon of it {COUPON['length']} long breaks open by hand: {pull}.",)


def bevel(client: Client, row: Row) -> Line:
    """Ask how deep to bevel an edge."""
    answer = client.bevel_depth(**_with_thickness(row))
    if answer.depth is None:
        return Line(_finish(row), "", "full depth only", (*answer.reasons, *_cheapest(answer)), "through")
    if answer.depth.value == 0.0:
        return Line(_finish(row), "leave the edge square", "enough", answer.reasons)
    work = f"cut {answer.depth} deep, {short(answer.setback)} back"
    work += f", {short(answer.land)} land" if answer.land is not None else ""
    notes = (
        (f"Of the depth {answer.deduction} does not count, because the weld may not reach the root.",)
        if answer.deduction.value
        else ()
    )
    return Line(_finish(row), work, "enough", notes)


def groove(client: Client, row: Row) -> Line:
    """Ask for a groove, or for plugs, and the preparation with the least metal."""
    answer = client.groove_size(basis="load", **_with_parts(row))
    if answer.holes is not None:
        each = f"{answer.holes.needed} {row['weld']}s of {answer.holes.width}"
        return Line(each, f"{answer.holes.strength} each in shear", answer.verdict)
    if answer.specify is None:
        if answer.verdict == "full-penetration-needed":
            return Line("no partial groove is enough", "", "full depth only", answer.reasons, "through")
        trouble = "plate" if answer.governs == "base-metal" else "other"
        return Line("no groove is enough", "", "cannot be made", answer.reasons, trouble)
    best = answer.preparation
    if best is None:
        return Line(f"{answer.specify.throat} throat", "no detail listed", "enough", answer.reasons)
    specify = f"{answer.specify.throat} throat, {best.form.replace('-', ' ')}, {best.root}"
    work = f"cut {short(best.depth)} deep at {short(best.angle)}, {short(best.gap)} gap"
    work += f", {short(best.land)} land" if best.land is not None else ""
    notes = tuple(caution.text for caution in answer.cautions if caution.code.startswith("one-side"))
    enough = [preparation for preparation in answer.preparations if preparation.enough]
    if len(enough) > 1:
        ratio = enough[1].area.value / best.area.value
        second = f"preparation {enough[1].ref} takes {ratio:.2f} times as much"
        notes += (
            f"{len(enough)} standard preparations are enough. Preparation {best.ref} takes the least metal, {second}.",
        )
    return Line(specify, work, "enough", notes)


def group(client: Client, row: Row) -> Line:
    """Ask what size a group of welds needs."""
    answer = client.weld_group(**_with_parts(row))
    by_throat = row["rules"].startswith("en-")
    size = f"{answer.specify.throat} throat" if by_throat else f"{answer.specify.leg} leg"
    pattern = PATTERNS.get(row["joint"], row["joint"].replace("-", " "))
    if answer.critical is not None:
        place = f"worst at x {short(answer.critical.x)}, y {short(answer.critical.y)}"
    else:
        centre = answer.centre
        place = f"turns about x {short(centre.x)}, y {short(centre.y)}" if centre else "moves without turning"
    return Line(f"{size}, {pattern}, {answer.properties.length} long", place, "enough")


def plan(client: Client, row: Row) -> Line:
    """Ask for every way to make a joint."""
    return planned(client, _with_parts(row))


def gauge(client: Client, row: Row) -> Line:
    """Ask whether a fillet, as gauged, is enough."""
    answer = client.as_welded(**row.request(), thickness=[row["t1"], row["t2"]], legs=[row["leg_1"], row["leg_2"]])
    asked = f"{row['asked_leg']} leg" if row["asked_leg"] else f"{row['throat']} throat"
    throat = f"{short(answer.throat.worst_case)} of throat; {short(answer.throat.required)} needed"
    steps = [f"{_action(action.do)} until the legs are {action.leg}" for action in answer.actions if action.leg]
    notes = (f"To do: {'; '.join(steps)}.",) if steps else ()
    if answer.verdict == "over" and answer.overweld is not None:
        notes += (f"The weld has {answer.overweld.metal_ratio:.2f} times the metal of the size asked for.",)
    quality = "" if answer.quality_kept else "; quality level not met"
    return Line(asked, throat + quality, answer.verdict, notes, {"short": "laid", "over": "over"}.get(answer.verdict))


QUESTIONS: dict[str, Callable[[Client, Row], Line]] = {
    "size": size,
    "grind": grind,
    "bevel": bevel,
    "groove": groove,
    "group": group,
    "plan": plan,
    "gauge": gauge,
}


def ask(client: Client, row: Row) -> Line:
    """Ask a row's question; a refusal is a line too."""
    try:
        return QUESTIONS[row["question"]](client, row)
    except InvalidInput as error:
        columns: dict[str, list[str]] = {}
        for fault in error.errors:
            columns.setdefault(fault.detail, []).extend(row.columns(fault.pointer))
        faults = tuple(f"{', '.join(names)}: {detail}" for detail, names in columns.items())
        return Line("no answer", "", "refused", faults or (str(error),), "refused")


def _with_parts(row: Row) -> dict[str, Any]:
    """Request about two parts of one metal."""
    request = row.request()
    metal = {"material": row["material"]} if row["material"] else {}
    request["parts"] = [{"thickness": row["t1"], **metal}, {"thickness": row["t2"], **metal}]
    return request


def _with_thickness(row: Row) -> dict[str, Any]:
    """Request about a seam."""
    request = row.request()
    request["seam"]["thickness"] = [row["t1"], row["t2"]]
    return request


def _finish(row: Row) -> str:
    """What a seam must keep, under which finish."""
    finish = {"flush": "flush", "flat": "flat", "radius": f"radius {row['radius']}"}.get(row["finish"], "as welded")
    return f"{row['throat']} throat, {finish}"


def _left(judged_on: str, budget: ThroatBudget) -> str:
    """Throat left of what is required."""
    left = budget.remaining_worst_case if judged_on == "worst-case" else budget.remaining
    case = " at the worst" if judged_on == "worst-case" else ""
    return f"{short(left)} of throat{case}; {budget.required} is needed"


def _instead(remedies: Sequence[Remedy]) -> str:
    """Remedies in words."""
    words = [_remedy(remedy) for remedy in remedies]
    return f"Instead: {', or '.join(words)}." if words else ""


def _remedy(remedy: Remedy) -> str:
    """One remedy in words."""
    return {
        "bevel": f"bevel {remedy.depth} deep before welding",
        "leave-face": f"leave the face {remedy.face_height} high",
        "smaller-radius": f"blend to a radius of {remedy.radius}",
        "weld-second-side": f"add {remedy.throat} of throat on the second side",
    }.get(remedy.do, remedy.do)


def _action(do: str) -> str:
    """What to do about a weld, in words."""
    return {"add-pass": "add a pass"}.get(do, do.replace("-", " "))


def _cheapest(answer: BevelDepthAnswer) -> tuple[str, ...]:
    """Way to the same throat that takes the least metal."""
    if not answer.alternatives:
        return ()
    first = answer.alternatives[0]
    words = {"single-v": "a V groove", "single-u": "a U groove", "single-j": "a J groove", "single-bevel": "a bevel"}
    way = words.get(first.do, first.do.replace("-", " "))
    return (f"The way to this throat with the least metal is {way} of {short(first.size)}.",)


# --- The table and what it comes to ---


def show(row: Row, line: Line, mark_width: int) -> None:
    """Print a joint: its cells side by side, each folded to its width, and its notes and ways under them."""
    cells = (row["mark"], row["where"], line.specify, line.work, line.verdict)
    widths = (mark_width, WIDTHS[0] - mark_width, *WIDTHS[1:])
    lines = [folded(cell, width) or [""] for cell, width in zip(cells, widths, strict=True)]
    for number in range(max(map(len, lines))):
        parts = [cell[number] if number < len(cell) else "" for cell in lines]
        print("  ".join(f"{part:<{width}}" for part, width in zip(parts, widths, strict=True)).rstrip())
    for note in line.notes:
        indent = " " * (mark_width + 2)
        print("\n".join(folded(note, PAGE, f"{indent}- ", f"{indent}  ")))
    for way in line.ways:
        print(way)


def summarise(lines: Mapping[str, Line], client: Client) -> None:
    """Print what would have gone wrong, what metal is saved, what the fillets cost, and the caution."""
    print(f"\n{'-' * PAGE}\nWHAT WOULD HAVE GONE WRONG")
    for trouble, text in TROUBLES.items():
        marks = [mark for mark, line in lines.items() if line.trouble == trouble]
        if marks:
            print("\n".join(folded(f"{len(marks):>3}  {text}: {', '.join(marks)}", PAGE, others="     ")))
    weighed = [line.metal for line in lines.values() if line.metal is not None]
    habit, sized = (sum(kilograms) for kilograms in zip(*weighed, strict=True)) if weighed else (0.0, 0.0)
    if habit:
        less = f"{sized:.2f} kg, {100.0 * (1.0 - sized / habit):.0f} % less"
        print(
            f"\nWeld metal: by habit {len(weighed)} joints take {habit:.2f} kg; with the sizes above they take {less}."
        )
    price([line.weld for line in lines.values() if line.weld is not None], client)
    print(f"\n{CAUTION}")


def run(rows: Sequence[Row]) -> None:
    """Ask about every row and print the answers as they come."""
    started = time.monotonic()
    lines: dict[str, Line] = {}
    with service() as serving, Client(serving.url, app="demonstration", deadline=60) as client:
        client.session.trust_env = False  # the service is on this machine: no proxy stands between
        about = client.check_version()
        ready = f"{time.monotonic() - started:.1f} s"
        print(f"{about.service} {about.service_version} runs on {serving.url}; it was ready in {ready}.")
        for text in (f"It is asked about {len(rows)} joints.", *LEGEND):
            print("\n".join(folded(text, PAGE, others="  ")))
        print()
        mark_width = min(max(len(row["mark"]) for row in rows), WIDTHS[0] // 2)
        show(Row({"where": "Joint"}), Line("Needed", "In the shop", "Verdict"), mark_width)
        part = None
        for row in rows:
            if row["part"] != part:
                part = row["part"]
                print(f"\n{part.upper()}")
            lines[row["mark"]] = line = ask(client, row)
            show(row, line, mark_width)
            sys.stdout.flush()
        summarise(lines, client)


def main(arguments: list[str]) -> int:
    """Run the demonstration; give the exit code."""
    path = Path(arguments[0]) if arguments else LIST
    try:
        rows = read_list(path)
        run(rows)
    except BadList as error:
        print(error, file=sys.stderr)
        return 2
    except (NotStarted, TruethroatError) as error:
        print(error, file=sys.stderr)
        return 1
    except BrokenPipeError:  # whoever read the table, such as a pager, has enough
        os.dup2(os.open(os.devnull, os.O_WRONLY), sys.stdout.fileno())
        return 1
    except KeyboardInterrupt:
        print("\nStopped.", file=sys.stderr)
        return 130
    return 0


def _end(number: int, _: FrameType | None) -> None:
    """End on a request to, through every `finally`."""
    sys.exit(128 + number)


if __name__ == "__main__":
    signal.signal(signal.SIGTERM, _end)
    sys.exit(main(sys.argv[1:]))
