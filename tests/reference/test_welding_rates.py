"""Rates of processes: units converted exactly, bands that are bands, and what a process's usual figures are."""

import pytest

from truethroat_service.reference.loader import PROCESSES, RATE_ROWS, DataFault
from truethroat_service.reference.loader_welding_rates import QUANTITIES, RATES, UNSHIELDED, _rate, usual


def _row(id_: str, **changes: str) -> dict[str, str]:
    """Give a row of the file with cells changed."""
    (found,) = [row for row in RATE_ROWS if row["id"] == id_]
    return {**found, **changes}


@pytest.mark.parametrize(
    ("id_", "low", "high"),
    [
        # 1 lb = 0.45359237 kg, 1 ft = 304.8 mm, exactly.
        ("rate-saw", 10 * 0.45359237 / 3600, 30 * 0.45359237 / 3600),
        ("gas-solid", 25 * 304.8**3 / 3600, 30 * 304.8**3 / 3600),
        ("gas-gtaw", 8e6 / 60, 12e6 / 60),
        ("eff-gtaw", 0.98, 1.0),
        ("bead-saw", 35.0, 80.0),
    ],
)
def test_figures_in_engine_units(id_: str, low: float, high: float) -> None:
    """Every unit of the file comes out in kg/s, mm3/s, mm2 or as a share."""
    (rate,) = [rate for rate in RATES if rate.id == id_]
    assert (rate.low, rate.high) == pytest.approx((low, high), rel=1e-14)


def test_every_row_is_of_known_processes() -> None:
    """Processes are named by their ids; only stick efficiencies have an electrode; shares are at most all."""
    for rate in RATES:
        assert set(rate.processes) <= set(PROCESSES), rate.id
        assert (rate.electrode is not None) == (rate.quantity == "efficiency" and rate.processes == ("SMAW",)), rate.id
        if rate.quantity in ("efficiency", "operator-factor"):
            assert rate.high <= 1.0, rate.id
        if rate.quantity == "gas-flow":
            assert not set(rate.processes) & set(UNSHIELDED), rate.id


@pytest.mark.parametrize(
    "cells", [{"unit": "lb"}, {"usual": "often"}, {"quantity": "speed"}, {"low": "99", "high": "9"}, {"low": "0"}]
)
def test_a_row_that_is_no_band_is_refused(cells: dict[str, str]) -> None:
    """Units, quantities and words are closed lists, and a band runs from least to most above nothing."""
    with pytest.raises(DataFault, match="rate-gtaw"):
        _rate(_row("rate-gtaw", **cells))


def test_metal_cored_wire_has_its_own_rows_where_there_are_any() -> None:
    """138 and 133 have the efficiency and gas of cored wire, and the deposition rates of the process."""
    assert [rate.id for rate in usual("efficiency", "138")] == ["eff-metal-cored"]
    assert all(rate.metal_cored for rate in usual("gas-flow", "133"))
    assert usual("deposition-rate", "138") == usual("deposition-rate", "135")
    assert not any(rate.metal_cored for quantity in QUANTITIES for rate in usual(quantity, "GMAW"))


def test_automatic_welding_is_not_usual() -> None:
    """The band of arc time is that of work by gun or hand: at most 60 % for a gun (Hughes and Matthews)."""
    assert max(rate.high for rate in usual("operator-factor", "GMAW")) == 0.60
