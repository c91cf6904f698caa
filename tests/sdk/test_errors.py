"""What a refusal becomes."""

from __future__ import annotations

import pickle
import warnings
from collections.abc import Callable
from pathlib import Path
from typing import Any

import pytest
from tests.sdk.recording_service import ANSWERS, RecordingService

import truethroat
from truethroat import (
    Client,
    ConnectionFailed,
    FieldError,
    IncompatibleVersion,
    InvalidInput,
    NotAuthorised,
    NotFound,
    RateLimited,
    ServiceError,
    ServiceUnavailable,
    TruethroatError,
    Unexpected,
)

PROBLEM = {
    "type": "/problems/invented",
    "title": "The request cannot be used",
    "status": 422,
    "detail": "2 faults.",
    "instance": "/v1/bevel-depth",
    "request_id": "from-the-body",
    "errors": [
        {"pointer": "#/parts/0/thickness", "detail": "Not a length.", "code": "quantity"},
        {"pointer": "#/basis", "detail": "Not a choice.", "code": "choice"},
    ],
}


def refused(client: Client) -> ServiceError:
    """Make a call that is refused and give its error."""
    with pytest.raises(ServiceError) as caught:
        client.bevel_depth()
    return caught.value


@pytest.mark.parametrize(
    ("status", "kind"),
    [
        (301, Unexpected),
        (400, InvalidInput),
        (401, NotAuthorised),
        (403, NotAuthorised),
        (404, NotFound),
        (405, Unexpected),
        (406, Unexpected),
        (410, NotFound),
        (413, InvalidInput),
        (415, Unexpected),
        (422, InvalidInput),
        (429, RateLimited),
        (500, Unexpected),
        (502, ServiceUnavailable),
        (503, ServiceUnavailable),
        (504, ServiceUnavailable),
        (204, Unexpected),
        (599, Unexpected),
    ],
)
@pytest.mark.parametrize("body", [PROBLEM, b"", b"<html>", b"[1]", b'{"errors": [1, {}]}', b"\xff\xfe", b"[" * 100_000])
def test_status_decides_the_error_whatever_the_body(
    connect: Callable[..., Client], service: RecordingService, status: int, kind: type[ServiceError], body: object
) -> None:
    """Each status has its error, with a problem document, with something else or with nothing for a body."""
    service.will_answer(status, body)
    error = refused(connect(retries=0))
    assert type(error) is kind
    assert error.status == status
    assert str(status) in str(error)


def test_faults_are_listed(client: Client, service: RecordingService) -> None:
    """The error holds every fault, and its text gives each a line with its pointer, after the request id."""
    service.will_answer(422, PROBLEM, X_Request_Id="from-the-header")
    error = refused(client)
    assert isinstance(error, InvalidInput)
    assert error.errors == (
        FieldError("#/parts/0/thickness", "Not a length.", "quantity"),
        FieldError("#/basis", "Not a choice.", "choice"),
    )
    assert error.problem == PROBLEM
    assert str(error).splitlines() == [
        "422 The request cannot be used: 2 faults. [request from-the-header]",
        "  #/parts/0/thickness: Not a length. (quantity)",
        "  #/basis: Not a choice. (choice)",
    ]


def test_request_id_is_the_services_or_the_one_sent(client: Client, service: RecordingService) -> None:
    """The id comes from the answer's header, else from the problem, else it is the one that was sent."""
    service.will_answer(422, PROBLEM, X_Request_Id="from-the-header")
    service.will_answer(422, PROBLEM)
    service.will_answer(422)
    ids = [refused(client).request_id for _ in range(3)]
    assert ids == ["from-the-header", "from-the-body", service.received[2].headers["x-request-id"]]


def test_a_proxys_page_is_no_problem_document(connect: Callable[..., Client], service: RecordingService) -> None:
    """An HTML page from something in between leaves an error without a problem, and without the page in its text."""
    service.will_answer(502, b"<html><body>Bad gateway</body></html>", Content_Type="text/html")
    error = refused(connect(retries=0))
    assert error.problem is None
    assert str(error).startswith("502 Bad Gateway, without a problem document [request ")


def test_a_redirect_is_not_followed(client: Client, service: RecordingService) -> None:
    """A redirect would turn a POST into a GET and carry the token along; it is an error that says where to."""
    service.will_answer(301, Location="https://service.example/v1/bevel-depth")
    assert "https://service.example/v1/bevel-depth" in str(refused(client))
    assert len(service.received) == 1


@pytest.mark.parametrize("body", [b"", b"not json", b"[1]", b"\xff", b"[" * 100_000])
def test_an_answer_that_cannot_be_read(client: Client, service: RecordingService, body: bytes) -> None:
    """A 200 whose body is no JSON object is an error with the request id."""
    service.will_answer(200, body, X_Request_Id="abc")
    error = refused(client)
    assert isinstance(error, Unexpected)
    assert (error.status, error.request_id) == (200, "abc")


@pytest.mark.parametrize(
    "error",
    [
        InvalidInput("no", status=422, problem=PROBLEM, request_id="a", errors=(FieldError("#/x", "bad", "code"),)),
        RateLimited("no", status=429, request_id="b", retry_after=2.5),
        *(
            kind("no", status=503, problem=None, request_id="c")
            for kind in (
                ConnectionFailed,
                IncompatibleVersion,
                NotAuthorised,
                NotFound,
                ServiceError,
                ServiceUnavailable,
                Unexpected,
            )
        ),
    ],
)
def test_errors_can_be_pickled(error: ServiceError) -> None:
    """An error comes whole out of another process, all it carries with it."""
    copy = pickle.loads(pickle.dumps(error))  # noqa: S301 - our own bytes
    assert type(copy) is type(error)
    assert vars(copy) == vars(error)
    assert str(copy) == str(error)


def test_one_base_for_all() -> None:
    """Every exception the package offers is a TruethroatError, so one except clause is enough."""
    offered = [getattr(truethroat, name) for name in truethroat.__all__]
    exceptions = [thing for thing in offered if isinstance(thing, type) and issubclass(thing, BaseException)]
    assert len(exceptions) >= 10
    assert all(issubclass(kind, TruethroatError) for kind in exceptions)


def versions(**changed: str) -> dict[str, Any]:
    """Give the service's description with some versions changed."""
    return {**ANSWERS["/v1"], **changed}


@pytest.mark.parametrize("version", ["1", "1.0", "1.7.2", "v1", "v1.3"])
def test_a_service_of_the_same_major_version_will_do(client: Client, service: RecordingService, version: str) -> None:
    """Within one major version the API only grows."""
    service.will_answer(200, versions(api_version=version))
    assert client.check_version().api_version == version


@pytest.mark.parametrize("version", ["2", "2.0", "0.9", "v11", "latest", ""])
def test_another_major_version_is_refused(client: Client, service: RecordingService, version: str) -> None:
    """Another major version is an error that names both."""
    service.will_answer(200, versions(api_version=version))
    with pytest.raises(IncompatibleVersion, match=f"API version {version}, this client version 1"):
        client.check_version()


def test_a_service_without_this_version(client: Client, service: RecordingService) -> None:
    """A service that has no /v1 at all speaks another version."""
    service.will_answer(404, PROBLEM)
    with pytest.raises(IncompatibleVersion, match="no API version 1"):
        client.check_version()


def test_the_version_is_checked_once_and_only_when_asked(
    connect: Callable[..., Client], service: RecordingService
) -> None:
    """With `check_version` the first calculation is preceded by one question; without it there is none."""
    checking = connect(check_version=True)
    checking.list_processes()
    checking.bevel_depth()
    checking.call("/v1/bevel-depth", {})
    connect().bevel_depth()
    assert [received.path for received in service.received] == [
        "/v1/processes",
        "/v1",
        "/v1/bevel-depth",
        "/v1/bevel-depth",
        "/v1/bevel-depth",
    ]


def test_a_wrong_version_stops_every_calculation(connect: Callable[..., Client], service: RecordingService) -> None:
    """A check that failed is made again: no calculation slips through after it."""
    client = connect(check_version=True)
    for _ in range(2):
        service.will_answer(200, versions(api_version="2"))
        assert isinstance(refused(client), IncompatibleVersion)
    assert [received.path for received in service.received] == ["/v1", "/v1"]


@pytest.mark.parametrize("through", ["method", "call"])
def test_deprecation_is_passed_on(client: Client, service: RecordingService, through: str) -> None:
    """A Deprecation header becomes a warning at the caller's own line, with the end and the successor in it."""
    service.will_answer(
        200,
        ANSWERS["/v1/bevel-depth"],
        Deprecation="@1700000000",
        Sunset="Sat, 01 Jan 2050 00:00:00 GMT",
        Link='</problems/old>; rel="deprecation"',
    )
    with warnings.catch_warnings(record=True) as caught:
        warnings.simplefilter("always")
        if through == "method":
            client.bevel_depth()
        else:
            client.call("/v1/bevel-depth", {})
    (warning,) = caught
    assert warning.category is DeprecationWarning
    assert Path(warning.filename) == Path(__file__)
    for part in ("POST /v1/bevel-depth", "@1700000000", "2050", "/problems/old"):
        assert part in str(warning.message)
