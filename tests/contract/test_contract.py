"""The service against its document: requests made from it, allowed and forbidden, and every answer held against it.

A request that the document allows may still be refused for its values: out of a range, not fitting together, or beyond
the limits of the rules. Such a refusal is excused from one check alone, that what is allowed is answered. The request
is then mended by the faults told, and asked again. So that a service that refuses everything does not pass, at least
30 % of the allowed requests of each calculation must be answered in the end.
"""

from __future__ import annotations

from collections import Counter
from collections.abc import Iterator

import pytest
import schemathesis
from hypothesis import HealthCheck
from schemathesis.specs.openapi.checks import positive_data_acceptance
from tests.api.exchange import FIT, paths, request_validator
from tests.contract import mending, strategies
from tests.examples import examples

from truethroat_service.api import create_app
from truethroat_service.api.settings import Settings

LIMITS = {"out-of-range", "inconsistent", "out-of-scope"}
LEAST_SHARE = 0.30
ROUNDS = 5
CALCULATIONS = paths("post")

strategies.register()
schema = schemathesis.openapi.from_wsgi("/openapi.json", create_app(Settings()))

asked, allowed, answered = Counter[str](), Counter[str](), Counter[str]()


@pytest.fixture(autouse=True)
def _share() -> Iterator[None]:
    """Hold a calculation to the least share of allowed requests that are answered, once all of them were sent."""
    for counter in (asked, allowed, answered):
        counter.clear()
    yield
    for path in CALCULATIONS:
        if asked[path]:
            print(f"{path}: {answered[path]} of {allowed[path]} allowed requests answered")  # noqa: T201
            assert allowed[path]
            assert answered[path] >= LEAST_SHARE * allowed[path]


@schema.parametrize()
@examples(
    50,
    # What is allowed is drawn from patterns and formats, and much of it filtered; slowness alone is no fault.
    suppress_health_check=[HealthCheck.too_slow, HealthCheck.filter_too_much, HealthCheck.data_too_large],
)
def test_the_service_keeps_to_its_document(case: schemathesis.Case) -> None:
    """Every answer has a documented status, form and headers; what is forbidden is refused, what is allowed is not."""
    path = case.operation.path
    asked[path] += 1
    if path not in CALCULATIONS:
        case.validate_response(case.call())
        return
    is_allowed = case.meta is not None and case.meta.generation.mode.is_positive
    response = _asked(case, is_allowed)
    for _ in range(ROUNDS):
        # A few that count as forbidden are allowed by the document: mended, they would be answered.
        if _codes(response) - LIMITS or request_validator(path).is_valid(case.body) is not is_allowed:
            break
        body = mending.mended(path, case.body, response.json()["errors"])
        case = case.operation.Case(body=body, media_type="application/json")
        response = _asked(case, is_allowed)
        assert is_allowed or response.status_code != 200, response.text
    if is_allowed:
        allowed[path] += 1
        answered[path] += response.status_code == 200


def _codes(response: schemathesis.Response) -> set[str]:
    """Give the codes of the faults of a refused request; its status in place of them for any other answer."""
    if response.status_code != 422:
        return {str(response.status_code)}
    return {fault["code"] for fault in response.json()["errors"]}


def _asked(case: schemathesis.Case, is_allowed: bool) -> schemathesis.Response:
    """Send a request to a calculation, and hold the answer against the document."""
    response = case.call()
    excused = []
    if is_allowed:
        request_validator(case.operation.path).validate(case.body)
        if response.status_code != 200:
            assert response.status_code == 422, response.text
            assert _codes(response), response.text
            assert _codes(response) <= LIMITS, response.text
            excused = [positive_data_acceptance]
    elif _codes(response) <= FIT:
        assert request_validator(case.operation.path).is_valid(case.body), response.text
    case.validate_response(response, excluded_checks=excused)
    return response
