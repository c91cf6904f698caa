"""What the fillets of the job take and cost as sized, and with every leg one size larger."""

from __future__ import annotations

from collections.abc import Sequence

from page import PAGE, folded, from_to, money
from shop import PRICES

from truethroat import Band, Client, EstimateTotals, Quantity, Weld, WorkingTimeBand

#: One leg size more, by the unit legs are in.
STEP = {"mm": 1.0, "in": 1 / 16}


def price(welds: Sequence[Weld], client: Client) -> None:
    """Print what the fillets as sized take and cost, by filler and process; the wires and prices are invented."""
    if not welds:
        return
    answer = client.filler_quantity(welds=welds, prices=PRICES)
    print(f"\nThe fillets as sized: {len(welds)} joints, with 10 % more metal than drawn, at the shop's prices")
    print(
        "".join(
            f"  {heading:<19}" for heading in ("Process and filler", "Weld metal", "Filler to buy", "Time", "Cost")
        ).rstrip()
    )
    for group in answer.groups:
        _priced(f"{group.process}, {group.filler}", group)
    _priced("all", answer.totals)
    larger = client.filler_quantity(welds=[_one_size_up(weld) for weld in welds], prices=PRICES)
    _compare(answer.totals, larger.totals)


def _one_size_up(weld: Weld) -> Weld:
    """Weld with legs one step larger."""
    shape = weld["shape"]
    legs = shape["legs"]
    assert isinstance(legs, list)  # as the fillets of the list are built
    return {**weld, "shape": {**shape, "legs": [Quantity(leg.value + STEP[leg.unit], leg.unit) for leg in legs]}}


def _compare(sized: EstimateTotals, up: EstimateTotals) -> None:
    """Print what the sizes save against legs that are all one size larger."""
    less = up.deposited.value - sized.deposited.value
    saved = [f"{less:.2f} {sized.deposited.unit} of metal ({100.0 * less / up.deposited.value:.0f} %)"]
    if sized.working_time is not None and up.working_time is not None:
        saved.append(f"{from_to(_less(up.working_time, sized.working_time))} of time")
    if sized.cost is not None and up.cost is not None and sized.cost.total is not None and up.cost.total is not None:
        least, most = (getattr(up.cost.total, end) - getattr(sized.cost.total, end) for end in ("least", "most"))
        saved.append(f"{money(Band(least=least, most=most))} {sized.cost.currency}")
    metal = f"{up.deposited.value:.2f} {up.deposited.unit} of weld metal"
    text = f"With every leg one size larger (1 mm or 1/16 in), they would take {metal}. The sizes above save"
    print("\n" + "\n".join(folded(f"{text} {', '.join(saved)}.", PAGE)))


def _less(up: WorkingTimeBand, sized: WorkingTimeBand) -> WorkingTimeBand:
    """Difference end by end: both rest on the same rates."""
    least, most = (
        Quantity(larger.value - smaller.value, larger.unit)
        for larger, smaller in ((up.least, sized.least), (up.most, sized.most))
    )
    return WorkingTimeBand(least=least, most=most)


def _priced(name: str, took: EstimateTotals) -> None:
    """Print one line of the estimate."""
    cost = took.cost
    cells = (
        name,
        f"{took.deposited.value:.2f} {took.deposited.unit}",
        from_to(took.consumable),
        from_to(took.working_time),
        "-" if cost is None else f"{money(cost.total)} {cost.currency}",
    )
    print("".join(f"  {cell:<19}" for cell in cells).rstrip())
