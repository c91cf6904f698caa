"""Fixtures for checks against published figures: every check asks the service as a client would.

``ask`` posts a request, expects an answer, and notes which formulas the answer's working names, so that the last test
of the folder can say which formulas no published check has used yet.

Published examples that the resources of today cannot answer, and why:

CANNOT_BE_ANSWERED

- AISC Design Examples v16.0: US-012 (II.A-16, unstiffened seat): its neutral axis at a third of the height is the
  Manual's own assumption, not the line method's. US-013 (II.A-17A), its rule of 5/8 of the plate: not a rule of any
  rule set; the rest is checked.
- AISC Manual Table 8-8: US-T8-8: the row a = 0 is no instantaneous-centre result; the rest is checked.
- AASHTO LRFD 6.13.3.2.4b: US-066: no rule set of that code.
- EN 1993-1-9: EN-FAT-01, EN-FAT-02: fatigue is in no rule set.
- EN-HSS-01, its second model (parent and filler metal mixed, factors by filler class): the factors are doubtful, and
  no edition that has them was read.
- Rosenthal's cooling rate at 550 degC: H-rosenthal-thin, H-rosenthal-thick: a second theory with constants and an arc
  efficiency of its own; cooling is told as t8/5.
- AWS D1.1 Table 5.1, submerged arc: P-single-pass-max-horizontal, parallel and multiple electrodes: no process names
  them. P-fill-pass-thickness: its root pass has no limit, so no count comes to a fill pass. The rest is checked.
- NAVEDTRA and AISC on the split of cost: Q-cost-split, shares of labour: of others' books; power under 1 % is checked.
- Limits on the ground surface and time to grind it: J-gouge-limits, J-grind-rate, J-grind-cap-time: no field for them;
  hours of an estimate are of welding alone.
- Advice without a figure to compute: J-corner-types. J-square-edge-MIG: square edges by transfer of the wire, which no
  request names. J-penetration-Jackson: penetration is never worked out from current.
"""

from collections.abc import Callable
from pathlib import Path
from typing import Any

import pytest
from flask.testing import FlaskClient

from truethroat_service.api import create_app

Ask = Callable[[str, dict[str, Any]], dict[str, Any]]
Refusal = Callable[[str, dict[str, Any]], list[dict[str, str]]]
Read = Callable[[str], dict[str, Any]]

HERE = Path(__file__).parent
LAST = "test_coverage_of_formulas.py"
WHOLE_FOLDER = pytest.StashKey[bool]()


@pytest.hookimpl(trylast=True)
def pytest_collection_modifyitems(config: pytest.Config, items: list[pytest.Item]) -> None:
    """Put the coverage of formulas last, and note whether every check of the folder is going to run."""
    checks = [item for item in items if item.path.parent == HERE and item.path.name != LAST]
    last = [item for item in items if item.path.parent == HERE and item.path.name == LAST]
    items[:] = [item for item in items if item not in last] + last
    files = {path.name for path in HERE.glob("test_*.py")} - {LAST}
    narrowed = any("::" in argument for argument in config.args) or any(
        config.getoption(name, default=None) for name in ("keyword", "markexpr", "deselect", "lf")
    )
    config.stash[WHOLE_FOLDER] = not narrowed and {item.path.name for item in checks} == files


@pytest.fixture(scope="session")
def client() -> FlaskClient:
    """Client of the service, in process."""
    return create_app().test_client()


@pytest.fixture(scope="session")
def named() -> set[tuple[str, str]]:
    """Symbol and expression of every formula that the working of an answer has shown."""
    return set()


@pytest.fixture(scope="session")
def ask(client: FlaskClient, named: set[tuple[str, str]]) -> Ask:
    """Post a request, its working asked for, and give the answer."""

    def post(path: str, body: dict[str, Any]) -> dict[str, Any]:
        response = client.post(path, json={**body, "working": True})
        assert response.status_code == 200, response.get_data(as_text=True)
        answer: dict[str, Any] = response.get_json()
        named.update((step["symbol"], step["expression"]) for step in answer["working"])
        return answer

    return post


@pytest.fixture(scope="session")
def refusal(client: FlaskClient) -> Refusal:
    """Post a request that is beyond the rules, and give the faults found."""

    def post(path: str, body: dict[str, Any]) -> list[dict[str, str]]:
        response = client.post(path, json=body)
        assert response.status_code == 422, response.get_data(as_text=True)
        faults: list[dict[str, str]] = response.get_json()["errors"]
        return faults

    return post


@pytest.fixture(scope="session")
def read(client: FlaskClient) -> Read:
    """Get reference data."""

    def get(path: str) -> dict[str, Any]:
        response = client.get(path)
        assert response.status_code == 200, response.get_data(as_text=True)
        data: dict[str, Any] = response.get_json()
        return data

    return get
