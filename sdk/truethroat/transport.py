"""How a request reaches the service: the session, its headers, and how often and how long it is tried."""

from __future__ import annotations

import json
import platform
import random
import re
from time import monotonic, sleep
from typing import NamedTuple, TypeAlias
from urllib.parse import urlsplit
from uuid import uuid4

import requests
from requests.auth import AuthBase
from urllib3.exceptions import MaxRetryError
from urllib3.util import Retry

from truethroat.errors import ConnectionFailed, seconds_asked_for
from truethroat.quantity import to_wire
from truethroat.version import VERSION

__all__ = ["Exchange", "Policy", "Timeout", "Transport"]

#: Seconds: one number for both, or (to connect, between two bytes of the answer).
Timeout: TypeAlias = float | tuple[float, float]

#: The longest wait taken on a Retry-After header's word, in seconds.
RETRY_AFTER_MAX = 60.0
#: Statuses that say "not now" rather than "no". Calculations change nothing, so POST is repeated like GET.
RETRIED_STATUSES = frozenset({429, 502, 503, 504})

_NOT_HEADER_TEXT = re.compile(r"[^\x20-\x7e]")
_NOT_TOKEN = re.compile(r"[^\x21-\x7e]")
_NOT_PATH = re.compile(r"[^\x21-\x7e]|[\\#]")


class Policy(Retry):
    """urllib3's retry bookkeeping, with a wait before the first retry too and with a spread in every wait.

    urllib3 tries the first time again at once. Clients refused together would then come back together.
    """

    def get_backoff_time(self) -> float:
        """Give the growing wait: half a second, doubled each time up to eight, less up to half of it by chance."""
        if not self.history:
            return 0.0
        longest = min(8.0, self.backoff_factor * 2.0 ** (len(self.history) - 1))
        return longest * random.uniform(0.5, 1.0)  # noqa: S311 - a spread, no secret

    def wait(self, response: requests.Response | None) -> float:
        """Give the wait before the next try: what the service asked for, within reason, or the growing one."""
        asked = None if response is None else seconds_asked_for(response.headers.get("Retry-After"))
        return self.get_backoff_time() if asked is None else min(asked, RETRY_AFTER_MAX)


class Exchange(NamedTuple):
    """One request's answer, and the id all its tries carried."""

    response: requests.Response
    request_id: str


class _Bearer(AuthBase):
    """Puts the token into each request.

    As the session's authentication rather than one of its headers: so it shows in no repr, and requests does not
    replace it, or fill its absence, with what a netrc file holds for the host.
    """

    def __init__(self, token: str | None) -> None:
        self._token = token

    def __call__(self, request: requests.PreparedRequest) -> requests.PreparedRequest:
        if self._token is not None:
            request.headers["Authorization"] = f"Bearer {self._token}"
        return request


class Transport:
    """One session with the service.

    The tries are counted here and not in the session's adapter, for three reasons: a deadline has to span tries and
    waits alike, an answer cut off half-way is tried again too, and any adapter may be mounted on the session.
    """

    def __init__(
        self,
        base_url: str,
        *,
        token: str | None,
        timeout: Timeout,
        retries: int,
        deadline: float | None,
        app: str | None,
    ) -> None:
        self.base_url = _base_url(base_url)
        if token is not None and (not token or _NOT_TOKEN.search(token)):
            raise ValueError("token: only visible ASCII characters fit into a header")  # without showing it
        if app is not None and _NOT_HEADER_TEXT.search(app):
            raise ValueError("app: only ASCII text fits into a header")
        if retries < 0:
            raise ValueError("retries: not negative")
        if deadline is not None and not deadline > 0:
            raise ValueError("deadline: more than 0 seconds")
        self.timeout = timeout
        self.deadline = deadline
        self.policy = Policy(
            total=retries,
            allowed_methods=None,
            status_forcelist=RETRIED_STATUSES,
            backoff_factor=0.5,
            raise_on_status=False,
        )
        self.session = requests.Session()
        self.session.auth = _Bearer(token)
        self.session.headers["Accept"] = "application/json, application/problem+json"
        self.session.headers["User-Agent"] = " ".join(
            [
                f"truethroat/{VERSION}",
                f"python/{platform.python_version()}",
                f"requests/{requests.__version__}",
                *([app] if app else []),
            ]
        )

    def send(
        self, method: str, path: str, body: object = None, *, timeout: Timeout | None = None, retry: bool = True
    ) -> Exchange:
        """Send one request, as often as the policy allows, and give the last answer whatever its status.

        Raises ConnectionFailed when the last try brought none.
        """
        if not path.startswith("/") or _NOT_PATH.search(path):
            raise ValueError(f"path: {path!r} is not one below the service's address, such as '/v1/materials'")
        request_id = uuid4().hex
        headers = {"X-Request-Id": request_id}
        content = None
        if body is not None:
            content = json.dumps(to_wire(body), allow_nan=False).encode()
            headers["Content-Type"] = "application/json"

        policy = self.policy if retry else self.policy.new(total=0)
        expires = None if self.deadline is None else monotonic() + self.deadline
        tries = 0
        while True:
            tries += 1
            response: requests.Response | None = None
            failure: Exception | None = None
            allowed = _within(timeout or self.timeout, None if expires is None else expires - monotonic())
            try:
                response = self.session.request(
                    method, self.base_url + path, data=content, headers=headers, timeout=allowed, allow_redirects=False
                )
                if not policy.is_retry(method, response.status_code):
                    return Exchange(response, request_id)
            except requests.exceptions.SSLError as error:  # a certificate is no better a second later
                raise _failed(self.base_url, tries, error, request_id) from error
            except (requests.ConnectionError, requests.Timeout, requests.exceptions.ChunkedEncodingError) as error:
                failure = error
            except requests.RequestException as error:
                raise _failed(self.base_url, tries, error, request_id) from error
            try:
                policy = policy.increment(method, path, error=failure)
                wait = policy.wait(response)
                again = expires is None or monotonic() + wait < expires
            except MaxRetryError:
                again = False
            if not again:
                if response is not None:
                    return Exchange(response, request_id)
                raise _failed(self.base_url, tries, failure, request_id) from failure
            sleep(wait)

    def close(self) -> None:
        """Close the session and its connections."""
        self.session.close()


def _base_url(url: str) -> str:
    """Check what every address begins with; credentials in it would end up in messages and logs."""
    parts = urlsplit(url)
    if parts.username is not None or parts.password is not None:
        raise ValueError("base_url: give credentials as a token, not in the address")
    if (
        parts.scheme not in ("http", "https")
        or not parts.hostname
        or parts.query
        or parts.fragment
        or _NOT_PATH.search(url)
    ):
        raise ValueError(f"base_url: {url!r} is no address such as 'https://calc.example'")
    return url.rstrip("/")


def _within(timeout: Timeout, left: float | None) -> Timeout:
    """Cut the timeouts of one try to what is left of the deadline."""
    if left is None:
        return timeout
    connect, read = timeout if isinstance(timeout, tuple) else (timeout, timeout)
    left = max(left, 0.001)  # zero would be refused as "no timeout"
    return min(connect, left), min(read, left)


def _failed(base_url: str, tries: int, failure: Exception | None, request_id: str) -> ConnectionFailed:
    cause: object = failure
    if failure is not None and failure.args:
        # requests wraps urllib3's error, whose own text speaks of retries that are not the ones made here
        cause = getattr(failure.args[0], "reason", None) or failure
    return ConnectionFailed(
        f"no answer from {base_url} in {tries} {'try' if tries == 1 else 'tries'}: {cause}", request_id=request_id
    )
