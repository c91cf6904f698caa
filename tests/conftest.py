"""How the whole suite runs: which examples hypothesis draws, and how processes share the tests."""

from __future__ import annotations

from collections import Counter
from typing import Any

import pytest
from hypothesis import HealthCheck, settings
from xdist.scheduler import LoadScopeScheduling

# The suite draws the same examples in every run, so that a run fails for what has changed and for nothing else.
# `make fuzz` draws others, and more of them. Neither watches the clock: on a busy machine a slow example is no fault.
SAME_EACH_RUN = settings(
    max_examples=100,
    derandomize=True,
    database=None,
    deadline=None,
    print_blob=True,
    suppress_health_check=[HealthCheck.too_slow],
)
settings.register_profile("suite", SAME_EACH_RUN)
settings.register_profile("fuzz", SAME_EACH_RUN, derandomize=False, max_examples=2000)
settings.load_profile("suite")

TOGETHER, APART = "tests/published/", "tests/contract/"


class ByFile(LoadScopeScheduling):
    """Gives a free process the next file, so that what the tests of a file share is made once."""

    def _split_scope(self, nodeid: str) -> str:
        """Name what one process runs as a whole.

        The last of the published checks needs to have seen all the others. The tests of the contract are few and long.
        """
        if nodeid.startswith(TOGETHER):
            return TOGETHER
        return nodeid if nodeid.startswith(APART) else nodeid.partition("::")[0]


@pytest.hookimpl(optionalhook=True)
def pytest_xdist_make_scheduler(config: pytest.Config, log: Any) -> ByFile:
    """Share the tests among the processes of `-n`."""
    return ByFile(config, log)


def pytest_collection_finish(session: pytest.Session) -> None:
    """Refuse tests of one id: of these a process would run the first, and pass over the others in silence."""
    twice = [nodeid for nodeid, count in Counter(item.nodeid for item in session.items).items() if count > 1]
    if twice:
        raise pytest.UsageError(f"tests share an id: {twice}")
