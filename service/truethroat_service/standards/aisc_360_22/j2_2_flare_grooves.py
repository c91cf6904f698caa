"""Table J2.2: throat of a flare groove filled flush, by the radius of the joint's surface and the process."""

from collections.abc import Mapping
from types import MappingProxyType

from ...engine.formula import Arg, formula
from ...engine.numeric import Real
from ...engine.rounding import at_least
from ...engine.rule_set import Unlisted
from ...engine.units import INCH
from . import clause

LEAST_BEVEL_RADIUS = 3 * INCH / 8
"""Least radius of a flare bevel that counts without a procedure; below it only a reinforcing fillet does."""

_ROWS: Mapping[tuple[str, str], float] = MappingProxyType(
    {
        ("flare-bevel", "GMAW"): 5 / 8,
        ("flare-bevel", "FCAW-G"): 5 / 8,
        ("flare-bevel", "SMAW"): 5 / 16,
        ("flare-bevel", "FCAW-S"): 5 / 16,
        ("flare-bevel", "SAW"): 5 / 16,
        ("flare-v", "GMAW"): 3 / 4,
        ("flare-v", "FCAW-G"): 3 / 4,
        ("flare-v", "SMAW"): 5 / 8,
        ("flare-v", "FCAW-S"): 5 / 8,
        ("flare-v", "SAW"): 1 / 2,
    }
)


@formula(
    "a_e",
    "k_R*R",
    unit="mm",
    source=clause("Table J2.2", "second-hand"),
    args={"k_R": Arg("", 5 / 16, 3 / 4), "R": Arg("mm", 5.0, 60.0)},
)
def flare_throat(k_R: Real, R: Real) -> Real:
    """Effective throat of a flare groove filled flush."""
    return k_R * R


def radius_share(form: str, process: str | None, radius: float) -> float:
    """Share of the radius that is throat; raises :class:`Unlisted` for a process or a radius the table leaves out."""
    if process is None:
        raise Unlisted(("process", "Table J2.2 goes by process: send one of GMAW, FCAW-G, SMAW, FCAW-S, SAW"))
    if (form, process) not in _ROWS:
        raise Unlisted(("process", f"Table J2.2 lists GMAW, FCAW-G, SMAW, FCAW-S and SAW, not {process}"))
    if form == "flare-bevel" and not at_least(radius, LEAST_BEVEL_RADIUS):
        raise Unlisted(
            (
                "weld/radius",
                "Table J2.2 wants a radius of 3/8 in (10 mm) for a flare bevel; below it only a fillet counts",
            )
        )
    return _ROWS[form, process]


@formula(
    "a_f",
    "a_e - b",
    unit="mm",
    source=clause("Table J2.2, note", "second-hand"),
    args={"a_e": Arg("mm", 5.0, 40.0), "b": Arg("mm", 0.0, 4.0)},
)
def below_flush(a_e: Real, b: Real) -> Real:
    """Throat of a flare groove whose face lies below flush."""
    return a_e - b
