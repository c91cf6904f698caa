"""The service against its document: requests made from it, allowed and forbidden, and every answer held against it.

A request that the document allows may still be refused for its values: out of a range, not fitting together, or beyond
the limits of the rules. Such a refusal is excused from one check alone, that what is allowed is answered. So that a
service that refuses everything does not pass, at least 30 % of the allowed requests of each calculation must be
answered.
"""

from __future__ import annotations

from collections import Counter
from collections.abc import Iterator
from contextlib import suppress

import pytest
import schemathesis
from hypothesis import HealthCheck
from schemathesis.specs.openapi.checks import positive_data_acceptance
from tests.api.exchange import request_validator
from tests.contract import mending, strategies
from tests.examples import examples

from truethroat_service.api import create_app
from truethroat_service.api.settings import Settings
from truethroat_service.application.capabilities import CAPABILITIES

LIMITS = {"out-of-range", "inconsistent", "out-of-scope"}
LEAST_SHARE = 0.30
CALCULATIONS = tuple(f"/v1/{capability.path}" for capability in CAPABILITIES)

strategies.register()
schema = schemathesis.openapi.from_wsgi("/openapi.json", create_app(Settings()))

asked, allowed, answered = Counter[str](), Counter[str](), Counter[str]()


def _is_positive(case: schemathesis.Case) -> bool:
    """Whether a request was made to be one that the document allows."""
    return case.meta is not None and case.meta.generation.mode.is_positive


@schema.hook
def map_case(context: schemathesis.HookContext, case: schemathesis.Case) -> schemathesis.Case:
    """Mend most of the requests of calculations; a forbidden one only as far as it stays forbidden.

    What is left wrong with a forbidden request is then what it was made wrong by, and nothing else refuses it.
    """
    path = case.operation.path
    if path in CALCULATIONS and isinstance(case.body, dict):
        if _is_positive(case):
            case.body = mending.mended(path, case.body)
        else:
            # A request that lacks what mending goes by stays as it is.
            with suppress(AttributeError, IndexError, KeyError, TypeError):
                made = mending.mended(path, case.body)
                if not request_validator(path).is_valid(made):
                    case.body = made
    return case


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
    response = case.call()
    path = case.operation.path
    excused = []
    asked[path] += 1
    if path in CALCULATIONS and _is_positive(case):
        request_validator(path).validate(case.body)
        allowed[path] += 1
        answered[path] += response.status_code == 200
        if response.status_code != 200:
            codes = {fault["code"] for fault in response.json()["errors"]}
            assert response.status_code == 422, response.text
            assert codes, response.text
            assert codes <= LIMITS, response.text
            excused = [positive_data_acceptance]
    case.validate_response(response, excluded_checks=excused)


def test_every_calculation_is_named() -> None:
    """The document has the calculations of the table and no others, so that each one is held to its share."""
    documented = {result.ok().path for result in schema.get_all_operations() if result.ok().method == "post"}
    assert documented == set(CALCULATIONS)
