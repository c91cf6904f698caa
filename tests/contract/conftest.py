"""Ids of the contract tests."""

import pytest
from schemathesis.pytest.plugin import SchemathesisFunction


def pytest_itemcollected(item: pytest.Item) -> None:
    """Name the operation in a test's id, as schemathesis itself did before pytest built ids from parameters alone."""
    if isinstance(item, SchemathesisFunction):
        item._id = item.id.with_params(item.operation_label)
