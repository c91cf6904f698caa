"""Every way to make a joint of the job, ranked as the shop weighs them, and why the others are refused."""

from __future__ import annotations

from collections.abc import Mapping, Sequence
from itertools import zip_longest
from typing import Any

from page import PAGE, Line, folded, money
from shop import ARCS, BEVELLING_SPEED, PRICES, SAME_WIRE, TOLERANCES, WEIGHTS, WIRES

from truethroat import Client, PlannedWay, Quantity

#: Columns under a planned joint; with two blanks between and five before, they keep to the page.
HEADINGS = ("", "Way", "Size", "Filler", "Time", "Turns", "Chance short")
WIDTHS = (2, 25, 30, 8, 8, 8, 12)
INDENT = " " * 5


def planned(client: Client, request: Mapping[str, Any]) -> Line:
    """Ask for the plan of a joint, as the shop works, and show its ways."""
    answer = client.joint_plan(**{**request, **_shop(request)})
    refused = [line for way in answer.refused for line in _under(f"Refused: {_words(way.way)}: {_first(way.why)}.")]
    if not answer.ways:
        return Line("no way is enough", "", "cannot be made", trouble="other", ways=tuple(refused))
    best = answer.ways[0]
    table = [line for cells in (HEADINGS, *map(_row, answer.ways)) for line in _cells(cells)]
    ways = (*table, *_cost(best), *_one_sided(best), *refused)
    if best.chance_short:
        # The ranking weighs costs alone.
        return Line(_purpose(request), _words(best.way), "enough if exact", trouble="exact", ways=ways)
    return Line(_purpose(request), _words(best.way), "enough", ways=ways)


def _shop(request: Mapping[str, Any]) -> dict[str, Any]:
    """What the shop adds to each request: how it welds, its tolerances, its prices and its weights.

    It has no figures for a process that it does not use, nor tolerances in units it does not know.
    """
    process = request.get("process", "")
    member = request.get("intermittent")
    wire = SAME_WIRE.get(process, process)
    own: Mapping[str, Any] = WIRES.get(wire, {})
    additions = {
        "basis": "load" if "load" in request else "throat" if "required_throat" in request else "full-strength",
        "deposition": own.get("deposition"),
        "operator_factor": own.get("operator_factor"),
        "arc": ARCS.get(wire),
        "tolerances": TOLERANCES.get(request["units"]),
        # The tees of this job are pulled.
        "intermittent": None if member is None else {**member, "loading": "tension"},
        "bevelling_speed": BEVELLING_SPEED,
        "prices": PRICES,
        "weights": WEIGHTS,
    }
    return {name: value for name, value in additions.items() if value is not None}


def _purpose(request: Mapping[str, Any]) -> str:
    """What a joint is planned for."""
    if "required_throat" in request:
        return f"{request['required_throat']} throat, {request.get('finish', {}).get('to', 'as welded')}"
    return f"{request['load']['force']} on {request['length']}" if "load" in request else "full strength"


def _row(way: PlannedWay) -> tuple[str, ...]:
    """Cells of one way."""
    costs = way.costs
    return (
        str(way.rank),
        _words(way.way),
        way.size.partition(" (")[0],
        _rounded(costs.filler, 3),
        "-" if costs.time is None else f"{60.0 * costs.time.value:.1f} min",  # answers give hours
        _rounded(costs.distortion, 1),
        _share(way.chance_short),
    )


def _cost(best: PlannedWay) -> list[str]:
    """Cost of the recommended way, whose parts come whole."""
    estimate = None if best.parts is None else best.parts.filler_quantity
    cost = None if estimate is None else estimate.totals.cost
    if cost is None or cost.total is None:
        return []
    return _under(f"Best way: {_words(best.way)}. Welding costs {money(cost.total)} {cost.currency}.")


def _one_sided(best: PlannedWay) -> list[str]:
    """What its figures leave out when the recommended way is welded from one side."""
    sized = None if best.parts is None else best.parts.fillet_size
    cautions = () if sized is None else sized.cautions
    return [line for caution in cautions if caution.code == "one-sided" for line in _under(caution.text)]


def _under(text: str) -> list[str]:
    """Sentence under the ways."""
    return folded(text, PAGE, INDENT, f"{INDENT}  ")


def _cells(cells: Sequence[str]) -> list[str]:
    """Set cells side by side, each folded to its width."""
    columns = [folded(cell, width) for cell, width in zip(cells, WIDTHS, strict=True)]
    return [
        INDENT + "  ".join(f"{part:<{width}}" for part, width in zip(parts, WIDTHS, strict=True)).rstrip()
        for parts in zip_longest(*columns, fillvalue="")
    ]


def _words(way: str) -> str:
    """Name of a way in plain words."""
    return way.replace("-", " ")


def _first(why: Sequence[str]) -> str:
    """First reason why a way is refused."""
    return why[0].removeprefix("Creditable: ").removesuffix(".")


def _rounded(quantity: Quantity | None, digits: int) -> str:
    """Quantity to so many digits after the point."""
    return "-" if quantity is None else f"{quantity.value:.{digits}f} {quantity.unit}"


def _share(chance: float | None) -> str:
    """Chance in per cent; a small one is not shown as none."""
    if chance is None:
        return "-"
    return "< 1 %" if 0.0 < chance < 0.01 else f"{100.0 * chance:.0f} %"
