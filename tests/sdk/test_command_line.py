"""The command line: what it prints and how it ends."""

from __future__ import annotations

import io
import json
import subprocess
import sys
from pathlib import Path
from typing import Any

import pytest
from tests.sdk.recording_service import ANSWERS, RecordingService
from tests.sdk.wsgi_transport import WSGITransport

import truethroat
from truethroat import Client
from truethroat.command_line import main


@pytest.fixture
def joined(monkeypatch: pytest.MonkeyPatch, service: RecordingService) -> list[str]:
    """Join the command line's client to the stand-in service; give the addresses it was told."""
    addresses = []

    def make(url: str, *arguments: Any, **options: Any) -> Client:
        addresses.append(url)
        client = Client(url, *arguments, **{**options, "retries": 0})
        client.session.mount("http://", WSGITransport(service))
        return client

    monkeypatch.setattr("truethroat.command_line.Client", make)
    monkeypatch.delenv("TRUETHROAT_TOKEN", raising=False)
    return addresses


@pytest.fixture
def request_file(tmp_path: Path) -> Path:
    """Write a request to a file."""
    path = tmp_path / "request.json"
    path.write_text('{"required_throat": "5 mm", "mark": "Ø 5"}', encoding="utf-8")
    return path


def test_an_answer_is_printed(
    joined: list[str], service: RecordingService, request_file: Path, capsys: pytest.CaptureFixture[str]
) -> None:
    """A file is posted to the operation named and the answer printed as JSON."""
    assert main(["bevel-depth", str(request_file), "--url", "http://there.example"]) == 0
    assert joined == ["http://there.example"]
    assert service.received[0].path == "/v1/bevel-depth"
    assert service.received[0].document == {"required_throat": "5 mm", "mark": "Ø 5"}
    output = capsys.readouterr()
    assert json.loads(output.out) == ANSWERS["/v1/bevel-depth"]
    assert output.err == ""


def test_standard_input(
    joined: list[str], service: RecordingService, monkeypatch: pytest.MonkeyPatch, capsys: pytest.CaptureFixture[str]
) -> None:
    """A dash reads the request from standard input; the address is the local service's unless given."""
    monkeypatch.setattr("sys.stdin", io.StringIO('{"a": 1}'))
    assert main(["fillet-size", "-"]) == 0
    assert joined == ["http://127.0.0.1:8000"]
    assert service.received[0].document == {"a": 1}


def test_token_comes_from_the_environment(
    joined: list[str], service: RecordingService, request_file: Path, monkeypatch: pytest.MonkeyPatch
) -> None:
    """The token is taken from the environment, where a list of processes does not show it."""
    monkeypatch.setenv("TRUETHROAT_TOKEN", "s3cret-token")
    assert main(["bevel-depth", str(request_file)]) == 0
    assert service.received[0].headers["authorization"] == "Bearer s3cret-token"


def test_a_refused_request(
    joined: list[str], service: RecordingService, request_file: Path, capsys: pytest.CaptureFixture[str]
) -> None:
    """Faults go to standard error, one a line; nothing is printed and the exit code is 1."""
    service.will_answer(
        422,
        {
            "title": "Refused",
            "errors": [
                {"pointer": "#/seam", "detail": "Missing.", "code": "required"},
                {"pointer": "#/colour", "detail": "Unknown field.", "code": "unknown"},
            ],
        },
    )
    assert main(["bevel-depth", str(request_file)]) == 1
    output = capsys.readouterr()
    assert output.out == ""
    assert output.err.splitlines() == ["#/seam: Missing. (required)", "#/colour: Unknown field. (unknown)"]


def test_a_refused_request_without_faults(
    joined: list[str], service: RecordingService, request_file: Path, capsys: pytest.CaptureFixture[str]
) -> None:
    """A refusal that names no field is shown whole."""
    service.will_answer(400, {"title": "Refused", "detail": "Unreadable."}, X_Request_Id="abc")
    assert main(["bevel-depth", str(request_file)]) == 1
    assert capsys.readouterr().err == "400 Refused: Unreadable. [request abc]\n"


@pytest.mark.parametrize("status", [401, 404, 429, 500, 503])
def test_service_trouble(
    joined: list[str],
    service: RecordingService,
    request_file: Path,
    capsys: pytest.CaptureFixture[str],
    status: int,
) -> None:
    """What is not the request's fault ends with 2 and a line that says what."""
    service.will_answer(status)
    assert main(["bevel-depth", str(request_file)]) == 2
    assert str(status) in capsys.readouterr().err


@pytest.mark.parametrize("content", ["", "{", "[1]", "null", '{"a": NaN}'])
def test_a_file_that_is_no_request(
    joined: list[str],
    service: RecordingService,
    tmp_path: Path,
    capsys: pytest.CaptureFixture[str],
    content: str,
) -> None:
    """A file without a JSON object ends with 2, and nothing is sent."""
    path = tmp_path / "bad.json"
    path.write_text(content)
    assert main(["bevel-depth", str(path)]) == 2
    assert len(capsys.readouterr().err.splitlines()) == 1
    assert service.received == []


def test_a_file_that_is_not_there(joined: list[str], tmp_path: Path, capsys: pytest.CaptureFixture[str]) -> None:
    """A missing file ends with 2 and its name."""
    assert main(["bevel-depth", str(tmp_path / "none.json")]) == 2
    assert "none.json" in capsys.readouterr().err


@pytest.mark.parametrize(
    "arguments", [[], ["bevel-depth"], ["Bevel Depth", "-"], ["../x", "-"], ["bevel-depth", "-", "--colour", "red"]]
)
def test_wrong_usage(arguments: list[str], capsys: pytest.CaptureFixture[str]) -> None:
    """Wrong usage ends with 2 and says what is wanted."""
    with pytest.raises(SystemExit) as caught:
        main(arguments)
    assert caught.value.code == 2
    assert "usage: python -m truethroat" in capsys.readouterr().err


def test_an_address_that_is_none(request_file: Path, capsys: pytest.CaptureFixture[str]) -> None:
    """A wrong address ends with 2."""
    assert main(["bevel-depth", str(request_file), "--url", "there.example"]) == 2
    assert "base_url" in capsys.readouterr().err


def test_it_runs_as_a_module() -> None:
    """The package runs with `python -m` and knows its version."""
    run = subprocess.run(
        [sys.executable, "-m", "truethroat", "--version"], capture_output=True, text=True, timeout=60, check=True
    )
    assert run.stdout == f"{truethroat.__version__}\n"
