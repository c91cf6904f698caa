"""Requests for groove, plug and slot welds whose depth is told, and what an answer says of them.

A depth is put to the service by a load so small that a step of that depth is the next one up.
"""

from typing import Any

from tests.published.fillets import steel

GROOVE_SIZE = "/v1/groove-size"
LITTLE = {"longitudinal": "1 lbf/in"}


def aisc_groove(
    rules: str,
    weld: dict[str, Any],
    *,
    joint: str = "butt",
    load: dict[str, Any] | None = None,
    parts: tuple[dict[str, Any], dict[str, Any]] | None = None,
    **more: Any,
) -> dict[str, Any]:
    """Request in inches; parts of 50 and 65 ksi, 1 in thick unless told."""
    return {
        "rule_set": rules,
        "basis": "load",
        "joint": {"kind": joint},
        "parts": list(parts or (steel("1 in"), steel("1 in"))),
        "weld": weld,
        "filler": "E70",
        "load": load or LITTLE,
        "units": "us",
        **more,
    }


def en_groove(
    rules: str,
    weld: dict[str, Any],
    *,
    joint: str = "butt",
    thickness: tuple[float, float] = (20.0, 20.0),
    f_u: float = 490.0,
    beta_w: float = 0.9,
    load: dict[str, Any] | None = None,
    **more: Any,
) -> dict[str, Any]:
    """Request in millimetres; parts of 355 MPa unless their tensile strength is told."""
    parts = [
        {
            "thickness": f"{t} mm",
            "yield_strength": f"{min(355.0, f_u)} MPa",
            "tensile_strength": f"{f_u} MPa",
            "beta_w": beta_w,
        }
        for t in thickness
    ]
    return {
        "rule_set": rules,
        "basis": "load",
        "joint": {"kind": joint},
        "parts": parts,
        "weld": weld,
        "load": load or LITTLE,
        **more,
    }


def value(quantity: dict[str, Any]) -> float:
    """Number of a quantity, in its unit."""
    number: float = quantity["value"]
    return number


def refused(answer: dict[str, Any], detail: str) -> str:
    """Why a detail was refused; empty where it fits."""
    whys = [one["why"] for one in answer["refused"] if one["id"] == detail]
    return whys[0] if whys else ""


def fitting(answer: dict[str, Any]) -> list[str | None]:
    """Details that fit the joint."""
    return [one["id"] for one in answer["preparations"]]
