"""Readiness: a published result recomputed, and what is said when it does not come out."""

from __future__ import annotations

from dataclasses import replace
from typing import Any

import pytest
from tests.api.exchange import Exchange

from truethroat_service.api import create_app
from truethroat_service.api.settings import Settings
from truethroat_service.application import readiness
from truethroat_service.application.core.codes import Verdict
from truethroat_service.standards.aisc_360_22 import j2_4_fillet_strength
from truethroat_service.standards.aisc_360_22.chapter_b3_available_strength import Factors


def test_a_sound_engine_is_ready(service: Exchange) -> None:
    """The published strength comes out within its last digit: AISC Design Examples v16.0, J.1 prints 206 kips."""
    response = service.get("/readyz")
    assert response.status_code == 200
    assert response.json["status"] == "ready"
    assert "206" in response.json["checks"]["known_result"]
    assert response.headers["Cache-Control"] == "no-store"


def test_a_wrong_factor_is_noticed(service: Exchange, monkeypatch: pytest.MonkeyPatch) -> None:
    """With a resistance factor of 0.80 for 0.75 the service says it is not ready, and what it found."""
    monkeypatch.setattr(j2_4_fillet_strength, "FILLET_SHEAR", Factors(phi=0.80, omega=2.00))
    response = service.get("/readyz")
    assert response.status_code == 503
    assert response.json["status"] == "not-ready"
    assert "printed 206" in response.json["checks"]["known_result"]


def test_another_verdict_is_noticed(service: Exchange, monkeypatch: pytest.MonkeyPatch) -> None:
    """With the right strength but another verdict the service is not ready."""
    real = readiness.fillet_size

    def wrong(request: Any) -> Any:
        return replace(real(request), verdict=Verdict.CANNOT_BE_REACHED)

    monkeypatch.setattr(readiness, "fillet_size", wrong)
    assert service.get("/readyz").status_code == 503


def test_an_engine_that_breaks_is_not_ready(service: Exchange, monkeypatch: pytest.MonkeyPatch) -> None:
    """An engine that raises makes the service not ready, rather than fail."""

    def broken(request: Any) -> Any:
        raise ArithmeticError("no")

    monkeypatch.setattr(readiness, "fillet_size", broken)
    app = create_app(Settings())
    monkeypatch.setattr(app.logger, "disabled", True)
    response = Exchange(app).get("/readyz")
    assert response.status_code == 503
    assert response.json == {"status": "not-ready", "checks": {"known_result": "could not be recomputed"}}
