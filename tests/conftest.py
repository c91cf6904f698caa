"""How the whole suite runs: which examples hypothesis draws, and how the tests are shared among processes."""

from __future__ import annotations

from typing import Any

import pytest
from hypothesis import HealthCheck, settings
from xdist.scheduler import LoadScopeScheduling

# Neither profile watches the clock: on a busy machine a slow example is no fault. The suite draws the same examples in
# every run, so that a run fails for what has changed and for nothing else. `make fuzz` draws others, and more of them.
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

TOGETHER = "tests/published/"
"""Folder whose tests share what they saw, so that one process has to run them all."""


class ByFile(LoadScopeScheduling):
    """Gives a process one file after another, so that what a file's tests share is made once."""

    def _split_scope(self, nodeid: str) -> str:
        """Name what one process runs as a whole: a file, or the folder that stays together."""
        if nodeid.startswith(TOGETHER):
            return TOGETHER
        return nodeid.partition("::")[0]


@pytest.hookimpl(optionalhook=True)
def pytest_xdist_make_scheduler(config: pytest.Config, log: Any) -> ByFile:
    """Share the tests among the processes of `-n`."""
    return ByFile(config, log)


def pytest_collection_finish(session: pytest.Session) -> None:
    """Refuse tests of the same id, of which pytest-xdist would run one and pass over the others."""
    ids = [item.nodeid for item in session.items]
    if len(set(ids)) < len(ids):
        raise pytest.UsageError(f"tests share an id: {sorted({one for one in ids if ids.count(one) > 1})}")
