"""The client's command line against a real service."""

from __future__ import annotations

import json
import os
import subprocess
import sys
from pathlib import Path

from tests.demonstration.serving import Serving


def run(*arguments: str, text: str | None = None) -> subprocess.CompletedProcess[str]:
    """Run the command line."""
    return subprocess.run(
        [sys.executable, "-m", "truethroat", *arguments],
        env={**os.environ, "NO_PROXY": "127.0.0.1"},
        input=text,
        capture_output=True,
        text=True,
        timeout=30,
        check=False,
    )


def test_a_file_is_answered(serving: Serving, tmp_path: Path) -> None:
    """A request from a file is answered as JSON on standard output."""
    path = tmp_path / "rib.json"
    path.write_text(
        json.dumps(
            {
                "rule_set": "thin-part",
                "basis": "thin-part",
                "joint": {"kind": "tee", "sides": 2},
                "parts": [{"thickness": "8 mm"}, {"thickness": "8 mm"}],
            }
        ),
        encoding="utf-8",
    )
    done = run("fillet-size", str(path), "--url", serving.url)
    assert (done.returncode, done.stderr) == (0, "")
    # O. W. Blodgett, Design of Weldments, 6.2-7, second-hand: three quarters of the plate
    assert json.loads(done.stdout)["required"]["leg"]["value"] == 6.0


def test_a_refusal_goes_to_standard_error(serving: Serving) -> None:
    """A refused request prints its faults and nothing else."""
    done = run("bevel-depth", "-", "--url", serving.url, text='{"required_throat": "5"}')
    assert (done.returncode, done.stdout) == (1, "")
    assert "#/required_throat" in done.stderr
    assert "#/seam" in done.stderr
