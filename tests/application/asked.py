"""Use cases, each answering what a caller is sent."""

from __future__ import annotations

from collections.abc import Callable
from functools import wraps
from typing import Any

from truethroat_service.application.as_welded import as_welded as _as_welded
from truethroat_service.application.crack_risk import crack_risk as _crack_risk
from truethroat_service.application.fillet_size import fillet_size as _fillet_size
from truethroat_service.application.groove_size import groove_size as _groove_size
from truethroat_service.application.heat import heat as _heat
from truethroat_service.application.joint_plan import joint_plan as _joint_plan
from truethroat_service.application.weld_group import weld_group as _weld_group

Asked = Callable[[Any], dict[str, Any]]


def _sent(use_case: Callable[[Any], Any]) -> Asked:
    """Give a use case that answers what is sent."""

    @wraps(use_case)
    def asked(request: Any) -> dict[str, Any]:
        answer: dict[str, Any] = use_case(request).wire()
        return answer

    return asked


as_welded, crack_risk, fillet_size = _sent(_as_welded), _sent(_crack_risk), _sent(_fillet_size)
heat, joint_plan = _sent(_heat), _sent(_joint_plan)
groove_size, weld_group = _sent(_groove_size), _sent(_weld_group)
