"""What every exchange has: a request id, a form of answer, caching, and one shape of problem."""

from __future__ import annotations

import json
import re
from typing import Any

import pytest
from flask import Response
from tests.api.exchange import PROBLEM, Exchange, paths, published
from tests.api.sound import BEVEL, EN, FILLET, GRIND
from werkzeug.exceptions import HTTPException

from truethroat_service.api import create_app
from truethroat_service.api.problems import TYPES
from truethroat_service.api.settings import Settings

CALCULATIONS = [(path, example) for path, _, example in published()]
EVERYWHERE = [*paths("get"), "/livez", "/readyz"]


@pytest.mark.parametrize("given", ["a", "job-17.B_3", "0" * 64])
def test_a_safe_request_id_is_taken(service: Exchange, given: str) -> None:
    """The caller's request id is sent back, and stands in a problem."""
    assert service.get("/v1", headers={"X-Request-Id": given}).headers["X-Request-Id"] == given
    refused = service.post(FILLET, {}, headers={"X-Request-Id": given})
    assert refused.headers["X-Request-Id"] == given
    assert refused.json["request_id"] == given


@pytest.mark.parametrize("given", ["", "0" * 65, "a b", "<b>", "a;b", "caf\u00e9"])
def test_an_unsafe_request_id_is_replaced(service: Exchange, given: str) -> None:
    """A request id that is not safe to print is replaced by one of ours."""
    made = service.get("/livez", headers={"X-Request-Id": given}).headers["X-Request-Id"]
    assert re.fullmatch(r"[0-9a-f]{32}", made)


def test_request_ids_differ(service: Exchange) -> None:
    """Each exchange without an id gets its own."""
    assert len({service.get("/livez").headers["X-Request-Id"] for _ in range(10)}) == 10


@pytest.mark.parametrize(("path", "body"), CALCULATIONS)
def test_calculations_stay_out_of_caches(service: Exchange, path: str, body: Any) -> None:
    """An answer and a refusal of a calculation are not to be stored."""
    assert service.post(path, body).headers["Cache-Control"] == "no-store"
    assert service.post(path, {}).headers["Cache-Control"] == "no-store"


@pytest.mark.parametrize(("path", "body"), CALCULATIONS)
def test_calculations_may_be_repeated(service: Exchange, path: str, body: Any) -> None:
    """The same request gets the same answer to the last bit."""
    assert service.post(path, body).get_data() == service.post(path, body).get_data()


@pytest.mark.parametrize("accept", ["*/*", "application/json", "application/*", "text/html, */*;q=0.1", PROBLEM])
def test_callers_that_take_json_get_it(service: Exchange, accept: str) -> None:
    """A caller that accepts JSON in any way gets it; so does one that says nothing."""
    assert service.post(FILLET, EN, headers={"Accept": accept}).mimetype == "application/json"
    assert service.post(FILLET, EN).mimetype == "application/json"


@pytest.mark.parametrize("path", [*EVERYWHERE, FILLET, "/openapi.json"])
def test_callers_that_take_no_json_are_refused(service: Exchange, path: str) -> None:
    """A caller that accepts no JSON is told that there is nothing else."""
    method = "POST" if path == FILLET else "GET"
    response = service.send(method, path, headers={"Accept": "text/csv"}, json=EN if method == "POST" else None)
    assert response.status_code == 406
    assert response.json["type"] == "/problems/not-acceptable"
    assert response.json["detail"] == "Answers are JSON: accept application/json."


@pytest.mark.parametrize("path", ["/", "/v1/", "/v1/fillet-size/", "/v2", "/v1/FILLET-SIZE", "/problems/no"])
def test_an_unknown_path_is_a_problem(service: Exchange, path: str) -> None:
    """Where nothing is, the problem says so."""
    response = service.get(path)
    assert response.status_code == 404
    assert response.mimetype == PROBLEM
    assert response.json["type"] == "/problems/not-found"


@pytest.mark.parametrize(
    ("method", "path", "allowed"),
    [
        ("GET", FILLET, {"POST", "OPTIONS"}),
        ("PUT", GRIND, {"POST", "OPTIONS"}),
        ("DELETE", BEVEL, {"POST", "OPTIONS"}),
        ("POST", "/v1", {"GET", "HEAD", "OPTIONS"}),
        ("POST", "/v1/materials", {"GET", "HEAD", "OPTIONS"}),
        ("PATCH", "/readyz", {"GET", "HEAD", "OPTIONS"}),
    ],
)
def test_another_method_is_refused_with_those_there_are(
    service: Exchange, method: str, path: str, allowed: set[str]
) -> None:
    """A method that a path does not take is refused; Allow lists those it takes (RFC 9110 15.5.6)."""
    response = service.send(method, path)
    assert response.status_code == 405
    assert response.mimetype == PROBLEM
    assert response.json["type"] == "/problems/method-not-allowed"
    assert set(response.headers["Allow"].split(", ")) == allowed


def test_the_types_of_problems_are_explained(service: Exchange) -> None:
    """Each type that a problem may have is a path that says what it means."""
    for slug, (title, description) in TYPES.items():
        answer = service.get(f"/problems/{slug}").json
        assert answer == {"type": f"/problems/{slug}", "title": title, "description": description}


def test_an_unknown_type_of_problem_is_told_those_there_are(service: Exchange) -> None:
    """A type there is none of gets the list."""
    assert service.get("/problems/no").json["detail"] == f"The problem types are {', '.join(TYPES)}."


def test_a_failure_tells_nothing_of_the_inside(monkeypatch: pytest.MonkeyPatch) -> None:
    """An error of ours is a problem with its request id, and not a word of the code or of what went wrong."""

    def fail() -> Any:
        raise RuntimeError("secret-inside")

    app = create_app(Settings())
    monkeypatch.setitem(app.view_functions, "fillet-size", fail)
    monkeypatch.setattr(app.logger, "disabled", True)
    response = Exchange(app).post(FILLET, EN, headers={"X-Request-Id": "job-9"})
    assert response.status_code == 500
    assert response.mimetype == PROBLEM
    assert response.headers["Cache-Control"] == "no-store"
    assert response.json["type"] == "/problems/failure"
    assert response.json["title"] == "The service failed"
    assert response.json["request_id"] == "job-9"
    text = response.get_data(as_text=True)
    assert not re.search(r"secret|RuntimeError|Traceback|\.py|truethroat_service", text)


def test_what_is_no_error_is_no_problem() -> None:
    """An exchange broken off with a status under 400 is answered as it stands."""

    class Unchanged(HTTPException):
        """Nothing new."""

        code = 304

    def unchanged() -> Response:
        raise Unchanged

    app = create_app(Settings())
    app.add_url_rule("/unchanged", view_func=unchanged)
    response = app.test_client().get("/unchanged")
    assert response.status_code == 304
    assert response.mimetype != PROBLEM


def test_liveness(service: Exchange) -> None:
    """A process that answers is alive."""
    assert service.get("/livez").json == {"status": "alive"}


@pytest.mark.parametrize("path", ["/v1", "/v1/materials", "/livez", "/readyz"])
def test_head_is_get_without_a_body(service: Exchange, path: str) -> None:
    """HEAD has GET's headers and no body."""
    response = service.send("HEAD", path)
    assert response.status_code == 200
    assert response.get_data() == b""
    assert response.headers["Content-Length"] == str(len(service.get(path).get_data()))


def test_requests_are_logged_as_json_lines(capsys: pytest.CaptureFixture[str]) -> None:
    """With the setting each exchange but a health check is one line: what was asked, how it went, its id."""
    service = Exchange(create_app(Settings(log_requests=True)))
    service.get("/livez")
    service.get("/readyz")
    service.post(FILLET, EN, headers={"X-Request-Id": "job-1"})
    service.post(FILLET, {}, headers={"X-Request-Id": "job-2"})
    lines = [json.loads(line) for line in capsys.readouterr().out.splitlines()]
    assert [(line["method"], line["path"], line["status"], line["request_id"]) for line in lines] == [
        ("POST", FILLET, 200, "job-1"),
        ("POST", FILLET, 422, "job-2"),
    ]
    assert all(line["ms"] >= 0 for line in lines)


def test_requests_are_not_logged_without_the_setting(service: Exchange, capsys: pytest.CaptureFixture[str]) -> None:
    """Without the setting nothing is written."""
    service.post(FILLET, EN)
    assert capsys.readouterr().out == ""
