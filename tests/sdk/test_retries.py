"""How often, how long and with what waits a call is tried."""

from __future__ import annotations

from collections.abc import Callable
from email.utils import formatdate
from typing import Any

import pytest
import requests
from tests.sdk.conftest import Clock
from tests.sdk.recording_service import RecordingService
from tests.sdk.wsgi_transport import WSGITransport

from truethroat import Client, ConnectionFailed, InvalidInput, RateLimited, ServiceUnavailable
from truethroat.transport import Policy


@pytest.mark.parametrize("status", [429, 502, 503, 504])
def test_a_busy_service_is_asked_again(client: Client, service: RecordingService, clock: Clock, status: int) -> None:
    """After a status that means "not now" a calculation is posted again, body and request id alike."""
    service.will_answer(status)
    client.bevel_depth(required_throat="5 mm")
    first, second = service.received
    assert first == second
    assert len(clock.waits) == 1


@pytest.mark.parametrize("status", [301, 400, 401, 404, 405, 413, 418, 422, 500, 501])
def test_a_definite_answer_is_not_asked_for_again(
    client: Client, service: RecordingService, clock: Clock, status: int
) -> None:
    """Every other status ends the call at the first try, a Retry-After header on it or not."""
    service.will_answer(status, Retry_After="1")
    with pytest.raises(Exception, match=str(status)):
        client.bevel_depth()
    assert len(service.received) == 1
    assert clock.waits == []


@pytest.mark.parametrize(("options", "tries"), [({}, 3), ({"retries": 0}, 1), ({"retries": 1}, 2), ({"retries": 5}, 6)])
def test_it_gives_up(
    connect: Callable[..., Client], service: RecordingService, clock: Clock, options: dict[str, Any], tries: int
) -> None:
    """A service that stays down is asked once more than `retries`, twice more by default, under one request id."""
    for _ in range(10):
        service.will_answer(503)
    with pytest.raises(ServiceUnavailable) as caught:
        connect(**options).list_processes()
    assert len(service.received) == tries
    assert len(clock.waits) == tries - 1
    assert {received.headers["x-request-id"] for received in service.received} == {caught.value.request_id}


@pytest.mark.parametrize(
    ("header", "waited"), [("7", 7), (" 7 ", 7), ("0", 0), ("60", 60), ("3600", 60), (formatdate(0, usegmt=True), 0)]
)
def test_retry_after_is_honoured_within_reason(
    client: Client, service: RecordingService, clock: Clock, header: str, waited: float
) -> None:
    """The wait is the one the service asks for, in seconds or as a date, and never more than a minute."""
    service.will_answer(429, Retry_After=header)
    client.get_service()
    assert clock.waits == [waited]


def test_an_unreadable_retry_after_is_ignored(client: Client, service: RecordingService, clock: Clock) -> None:
    """A header that is neither seconds nor a date leaves the usual wait."""
    service.will_answer(429, Retry_After="soon")
    client.get_service()
    assert 0.25 <= clock.waits[0] <= 0.5


def test_a_limit_that_stays_is_reported(connect: Callable[..., Client], service: RecordingService) -> None:
    """The last refusal's Retry-After is handed on, uncut."""
    service.will_answer(429, Retry_After="3600")
    with pytest.raises(RateLimited) as caught:
        connect(retries=0).get_service()
    assert caught.value.retry_after == 3600


def test_waits_grow_and_are_spread(monkeypatch: pytest.MonkeyPatch) -> None:
    """Waits double from half a second up to eight, each cut by up to half."""
    for chance in (0.5, 1.0):
        monkeypatch.setattr("truethroat.transport.random.uniform", lambda low, high, c=chance: c)
        policy = Policy(total=10, backoff_factor=0.5)
        assert policy.get_backoff_time() == 0
        waits = []
        for _ in range(6):
            policy = policy.increment("POST", "/v1", error=OSError())
            waits.append(policy.get_backoff_time())
        assert waits == [chance * longest for longest in (0.5, 1, 2, 4, 8, 8)]


class _Failing(WSGITransport):
    """A transport whose first tries fail."""

    def __init__(self, application: Any, *failures: Exception) -> None:
        super().__init__(application)
        self.failures = list(failures)

    def send(self, request: requests.PreparedRequest, *others: Any, **options: Any) -> requests.Response:
        """Fail as long as there are failures left."""
        if self.failures:
            self.timeouts.append(options["timeout"])
            raise self.failures.pop(0)
        return super().send(request, *others, **options)


@pytest.mark.parametrize(
    "failure",
    [
        requests.ConnectionError("reset"),
        requests.ConnectTimeout("no route"),
        requests.ReadTimeout("silence"),
        requests.exceptions.ChunkedEncodingError("cut off"),
    ],
)
def test_a_lost_connection_is_tried_again(
    client: Client, service: RecordingService, clock: Clock, failure: Exception
) -> None:
    """Refused, reset, silent and cut-off connections are all tried again, POST too."""
    client.session.mount("http://", _Failing(service, failure))
    client.bevel_depth()
    assert len(service.received) == 1
    assert len(clock.waits) == 1


@pytest.mark.parametrize(
    "failure", [requests.exceptions.SSLError("bad certificate"), requests.exceptions.InvalidProxyURL("bad proxy")]
)
def test_what_does_not_heal_is_not_tried_again(
    client: Client, service: RecordingService, clock: Clock, failure: Exception
) -> None:
    """A certificate or a setting that is wrong stays wrong: the call fails at once."""
    client.session.mount("http://", _Failing(service, failure))
    with pytest.raises(ConnectionFailed, match=r"in 1 try: bad"):
        client.bevel_depth()
    assert clock.waits == []


def test_connections_that_keep_failing(client: Client, service: RecordingService, clock: Clock) -> None:
    """When no try brings an answer the error says where, how often and why."""
    client.session.mount("http://", _Failing(service, *[requests.ReadTimeout("silence") for _ in range(5)]))
    with pytest.raises(ConnectionFailed, match=r"no answer from http://service\.example in 3 tries: silence") as caught:
        client.bevel_depth()
    assert caught.value.status is None
    assert caught.value.request_id is not None
    assert isinstance(caught.value.__cause__, requests.ReadTimeout)


def test_after_a_lost_connection_the_definite_answer_counts(
    client: Client, service: RecordingService, clock: Clock
) -> None:
    """A refusal on the second try is raised as what it is."""
    client.session.mount("http://", _Failing(service, requests.ConnectionError("reset")))
    service.will_answer(422)
    with pytest.raises(InvalidInput):
        client.bevel_depth()


def test_no_wait_goes_beyond_the_deadline(
    connect: Callable[..., Client], service: RecordingService, clock: Clock
) -> None:
    """A wait that would outlast the deadline is not begun: the service's refusal is raised at once."""
    service.will_answer(503, Retry_After="3")
    service.will_answer(503, Retry_After="3")
    with pytest.raises(ServiceUnavailable):
        connect(deadline=5).get_service()
    assert clock.waits == [3]
    assert len(service.received) == 2


def test_timeouts_are_cut_to_the_deadline(
    connect: Callable[..., Client], service: RecordingService, clock: Clock
) -> None:
    """No try waits longer for the service than the deadline leaves."""
    client = connect(deadline=10)
    service.will_answer(503, Retry_After="3")
    service.will_answer(503, Retry_After="6")
    client.get_service()
    adapter = client.session.get_adapter("http://service.example")
    assert isinstance(adapter, WSGITransport)
    assert adapter.timeouts == [(3.05, 10), (3.05, 7), (1, 1)]


def test_the_deadline_ends_lost_connections_too(
    connect: Callable[..., Client], service: RecordingService, clock: Clock
) -> None:
    """With a deadline shorter than any wait there is one try."""
    client = connect(deadline=0.2)
    client.session.mount("http://", _Failing(service, requests.ConnectionError("reset")))
    with pytest.raises(ConnectionFailed, match="in 1 try"):
        client.get_service()
    assert clock.waits == []


@pytest.mark.parametrize("question", ["alive", "ready"])
def test_health_is_asked_once(client: Client, service: RecordingService, clock: Clock, question: str) -> None:
    """A health question is answered by the first try: yes, no, or nobody there."""
    assert getattr(client, question)() is True
    service.will_answer(503)
    assert getattr(client, question)() is False
    assert {received.path for received in service.received} == {"/livez" if question == "alive" else "/readyz"}
    client.session.mount("http://", _Failing(service, requests.ConnectionError("refused")))
    assert getattr(client, question)() is False
    assert clock.waits == []


def test_health_of_something_else(client: Client, service: RecordingService) -> None:
    """An answer that is neither yes nor no, from another service perhaps, is an error."""
    service.will_answer(404)
    with pytest.raises(Exception, match="404"):
        client.ready()
