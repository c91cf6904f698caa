"""A stand-in for the service: keeps what it is sent and answers what the document says such an answer holds."""

from __future__ import annotations

import json
from collections.abc import Iterable
from dataclasses import dataclass
from typing import Any

from tests.sdk.document import OPERATIONS, stand_in

#: An answer to each path, with every field there may be; only the version is one that the client must know.
ANSWERS: dict[str, dict[str, Any]] = {
    **{operation.path: stand_in(operation.answer, full=True) for operation in OPERATIONS.values()},
    "/livez": {"status": "ok"},
    "/readyz": {"status": "ok"},
}
ANSWERS["/v1"]["api_version"] = "1.0"
#: The same with only the fields that have to be there, null where they may be.
LEAST_ANSWERS = {operation.path: stand_in(operation.answer, full=False) for operation in OPERATIONS.values()}


@dataclass(frozen=True)
class Received:
    """One request as it arrived."""

    method: str
    path: str
    headers: dict[str, str]
    body: bytes

    @property
    def document(self) -> Any:
        """The body, read as JSON."""
        return json.loads(self.body)


class RecordingService:
    """A WSGI application: answers given with `will_answer` come first, in turn, then those of ANSWERS."""

    def __init__(self) -> None:
        self.received: list[Received] = []
        self._next: list[tuple[int, dict[str, str], bytes]] = []

    def will_answer(self, status: int, body: object = b"", **headers: str) -> None:
        """Put one answer into the queue; a body that is no bytes goes out as JSON, `Retry_After` as `Retry-After`."""
        content = body if isinstance(body, bytes) else json.dumps(body).encode()
        self._next.append((status, {name.replace("_", "-"): value for name, value in headers.items()}, content))

    def __call__(self, environ: dict[str, Any], start_response: Any) -> Iterable[bytes]:
        """Keep the request and answer it."""
        headers = {key[5:].replace("_", "-").lower(): value for key, value in environ.items() if key[:5] == "HTTP_"}
        headers["content-type"] = environ.get("CONTENT_TYPE", "")
        path = environ["PATH_INFO"]
        self.received.append(Received(environ["REQUEST_METHOD"], path, headers, environ["wsgi.input"].read()))
        if self._next:
            status, answer_headers, content = self._next.pop(0)
        elif path in ANSWERS:
            status, answer_headers, content = 200, {}, json.dumps(ANSWERS[path]).encode()
        else:
            status, answer_headers, content = 404, {}, b"<h1>nothing here</h1>"
        start_response(f"{status} Status", list(answer_headers.items()))
        return [content]
