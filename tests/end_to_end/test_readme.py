"""What the README shows is run as it stands, against a real server."""

from __future__ import annotations

import json
import re
import shutil
import subprocess
import sys
from pathlib import Path

import pytest
from tests.demonstration.serving import Serving

README = (Path(__file__).resolve().parents[2] / "README.md").read_text(encoding="utf-8")
MAKEFILE = (Path(__file__).resolve().parents[2] / "Makefile").read_text(encoding="utf-8")
PRINTED_URL = "http://127.0.0.1:8000"


def _block(language: str, marker: str) -> str:
    """Return the one fenced block of a language that holds a marker."""
    blocks = [block for block in re.findall(rf"```{language}\n(.*?)```", README, flags=re.S) if marker in block]
    assert len(blocks) == 1
    return str(blocks[0])


def _printed(marker: str, serving: Serving) -> list[str]:
    """Lines that a Python block prints when it asks the service."""
    code = _block("python", marker).replace(PRINTED_URL, serving.url)
    ran = subprocess.run([sys.executable, "-c", code], capture_output=True, text=True, timeout=60, check=True)
    return ran.stdout.splitlines()


def test_the_client_example_prints_what_the_readme_says(serving: Serving) -> None:
    """The client example runs, and prints the two lines that the README quotes.

    Nobody vouches for the penetration, so the face of 5/32 in is all the throat, and flush the bevel is all: 1/4 in
    (statics).
    """
    lines = _printed("grind_allowance", serving)
    assert lines == ["short - may come off: 0 in", "instead: bevel 1/4 in"]
    assert all(f"`{line}`" in README for line in lines)


def test_the_example_of_a_refusal_prints_what_the_readme_says(serving: Serving) -> None:
    """The second example prints the line that the README quotes.

    Two fillets have legs of three quarters of the plate: 6 mm for 8 mm (O. W. Blodgett, 6.2-7, second-hand).
    """
    lines = _printed("InvalidInput", serving)
    assert lines == ["6 mm - refused: #/parts/0/thickness"]
    assert f"`{lines[0]}`" in README


def test_no_code_block_is_without_a_test() -> None:
    """The blocks are the two Python examples, the curl example and two commands, which the Makefile has."""
    blocks = re.findall(r"```([a-z]+)\n(.*?)```", README, flags=re.S)
    assert [language for language, _ in blocks] == ["sh", "python", "python", "sh"]
    commands = re.findall(r"^make ([a-z]+)", blocks[0][1], flags=re.M)
    assert commands == ["demo", "test"]
    assert all(f"\n{command}: " in MAKEFILE for command in commands)


@pytest.mark.skipif(shutil.which("curl") is None, reason="curl is not on this machine; .ci/run installs it")
def test_the_curl_example_answers(serving: Serving) -> None:
    """The curl example gets a size."""
    curl = _block("sh", "curl -s").replace(PRINTED_URL, serving.url)
    ran = subprocess.run(["sh", "-c", curl], capture_output=True, text=True, timeout=60, check=True)
    assert json.loads(ran.stdout)["verdict"] == "enough"


@pytest.mark.parametrize("path", re.findall(r"`(?:GET|POST) (/[a-z0-9/.-]*)`", README))
def test_every_resource_named_is_in_the_document(path: str) -> None:
    """Every path in the README's table stands in the committed document, which itself is served beside it."""
    document = json.loads((Path(__file__).resolve().parents[2] / "openapi" / "openapi.json").read_text("utf-8"))
    assert path in document["paths"]


def test_every_resource_of_the_document_is_named() -> None:
    """Every versioned path of the committed document stands in the README."""
    document = json.loads((Path(__file__).resolve().parents[2] / "openapi" / "openapi.json").read_text("utf-8"))
    assert [
        path
        for path in document["paths"]
        if path.startswith("/v1") and f"`{path}`" not in README.replace("POST ", "").replace("GET ", "")
    ] == []
