"""Answer of ``/v1/break-test``, in engine units."""

from dataclasses import dataclass, field
from typing import Annotated, Literal

from ..core.codes import Verdict
from ..core.quantities import HAND_FORCE, MOMENT
from ..core.shape import INLINED, OMITTED, Length, LengthUp, Q


@dataclass(frozen=True, slots=True)
class OpenedThroat:
    """Throat under the finish and the face notch: nominal, and at both ends of its tolerances."""

    least: Length
    nominal: Length
    most: Length


@dataclass(frozen=True, slots=True)
class Stages:
    """Moment or force at each stage of opening a root."""

    first_yield: float
    hinge: float
    breaking: float
    breaking_at_most: float


@dataclass(frozen=True, slots=True)
class Opened:
    """What one account of the throat takes to open, and whether weld or plate gives way."""

    throat: OpenedThroat
    moment: Annotated[
        Stages,
        Q(MOMENT),
        "Moment on the coupon at which the root yields and the throat folds (both for the least throat), at which the"
        " nominal throat breaks, and at which it breaks at the latest.",
    ]
    force: Annotated[Stages, Q(HAND_FORCE), "Force on the lever for each of them."]
    governs: Literal["weld", "plate"]


@dataclass(frozen=True, slots=True)
class OpenedAccount:
    """What one account of the throat takes to open."""

    verdict: Verdict
    opened: Annotated[Opened, INLINED]


@dataclass(frozen=True, slots=True)
class CouponCheck:
    """One dimension against its limit."""

    name: str
    value: Length
    least: Annotated[Length | None, OMITTED] = field(default=None, kw_only=True)
    most: Annotated[Length | None, OMITTED] = field(default=None, kw_only=True)
    verdict: Literal["within", "out"]
    source: str

    @property
    def limit(self) -> float:
        """Least or most it may be, mm."""
        return self.least if self.least is not None else self.most or 0.0


@dataclass(frozen=True, slots=True)
class ThroatInBalance:
    """Throat in balance with the plate, and the leg of an equal-leg fillet with that throat."""

    throat: Length
    leg: Length | None


@dataclass(frozen=True, slots=True)
class FoldedPlate:
    """The thinner plate: what folds it, and the throat that breaks at the same moment."""

    moment: Annotated[float, Q(MOMENT)]
    force: Annotated[float, Q(HAND_FORCE)]
    balance: ThroatInBalance


@dataclass(frozen=True, slots=True)
class StandardCoupon:
    """Standard coupon of the rules."""

    plate: Length
    leg: Length
    least_width: Length
    welded_length: Length
    specimen: Length
    source: str


@dataclass(frozen=True, slots=True)
class CouponAcceptance:
    """Whether the outcome is accepted, with each limit."""

    verdict: Verdict
    limits: tuple[CouponCheck, ...]
    source: str


@dataclass(frozen=True, slots=True)
class BreakTestAnswer:
    """What opens a coupon from its root. The main figures count all the throat there may be."""

    opened: Annotated[Opened, INLINED]
    creditable: Annotated[OpenedAccount, "Counting measured and proven penetration."]
    strength: Annotated[OpenedAccount, "Counting proven penetration alone, and no face height."]
    plate: FoldedPlate
    length: Annotated[Length, "Length left between side notches."]
    least_face_width: Annotated[
        LengthUp | None, "Width of the face that the throat needs, where a square edge's face counts; else null."
    ]
    fold: Annotated[str, "Which way to fold it."]
    checks: tuple[CouponCheck, ...]
    standard_coupon: StandardCoupon | None
    acceptance: CouponAcceptance | None
