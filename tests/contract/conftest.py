"""Ids of the contract tests."""

import pytest


def pytest_itemcollected(item: pytest.Item) -> None:
    """Name the operation in a test's id; schemathesis names it in the test's name alone, and pytest leaves it there."""
    if label := getattr(item, "operation_label", None):
        item._id = item.id.with_params(label)
