"""The client on a machine that has nothing of the service."""

from __future__ import annotations

import importlib.metadata
import os
import shutil
import subprocess
import sys
from pathlib import Path

from tests.demonstration.serving import ROOT, Serving

#: Refuses what the service is made of, then asks the service at the address given.
ALONE = """
import importlib.abc
import sys

class Refuse(importlib.abc.MetaPathFinder):
    def find_spec(self, name, path=None, target=None):
        if name.partition(".")[0] in {"flask", "marshmallow", "numpy", "orjson", "pint", "werkzeug", "gunicorn",
                                      "truethroat_service"}:
            raise ModuleNotFoundError(f"No module named {name!r}: refused")

sys.meta_path.insert(0, Refuse())
try:
    import truethroat_service
except ModuleNotFoundError:
    pass
else:
    raise SystemExit("nothing is refused")

import truethroat
with truethroat.Client(sys.argv[1]) as client:
    client.session.trust_env = False
    print(client.fillet_size(rule_set="thin-part", basis="thin-part", joint={"kind": "tee"},
                             parts=[{"thickness": "5 mm"}, {"thickness": "3 mm"}]).specify.leg)
"""


def test_it_is_installed_with_requests_alone(tmp_path: Path) -> None:
    """The metadata of a wheel built from these sources asks for requests; all else belongs to an extra."""
    sources = tmp_path / "sources"
    sources.mkdir()
    for name in ("pyproject.toml", "README.md", "LICENSE"):
        shutil.copy(ROOT / name, sources)
    for name in ("sdk", "service"):
        shutil.copytree(ROOT / name, sources / name, ignore=shutil.ignore_patterns("*.egg-info", "__pycache__"))
    script = f"import setuptools.build_meta as backend; backend.prepare_metadata_for_build_wheel({str(tmp_path)!r})"
    subprocess.run([sys.executable, "-c", script], cwd=sources, capture_output=True, timeout=60, check=True)
    (folder,) = tmp_path.glob("truethroat-*.dist-info")
    made = importlib.metadata.PathDistribution(folder)
    asked = [wanted for wanted in made.requires or [] if "extra ==" not in wanted]
    assert len(asked) == 1
    assert asked[0].startswith("requests")
    assert {"service", "test"} <= set(made.metadata.get_all("Provides-Extra") or [])


def test_it_works_without_the_service_s_packages(serving: Serving) -> None:
    """With the service's packages out of reach the client is imported and gets its answer over HTTP."""
    done = subprocess.run(
        [sys.executable, "-W", "error", "-c", ALONE, serving.url],
        env={**os.environ, "PYTHONPATH": ""},
        capture_output=True,
        text=True,
        timeout=30,
        check=False,
    )
    assert (done.returncode, done.stdout, done.stderr) == (0, "3 mm\n", "")  # common practice, no source
