"""A requests adapter that calls a WSGI application in process, so that the client meets it without a socket."""

from __future__ import annotations

import io
from typing import Any
from urllib.parse import unquote, urlsplit
from wsgiref.util import setup_testing_defaults

import requests
from requests.adapters import BaseAdapter
from requests.structures import CaseInsensitiveDict


class WSGITransport(BaseAdapter):
    """Answers every request from `application`; `timeouts` keeps what each try was given."""

    def __init__(self, application: Any) -> None:
        super().__init__()
        self.application = application
        self.timeouts: list[Any] = []
        self.closed = False

    def send(self, request: requests.PreparedRequest, *_: Any, timeout: Any = None, **__: Any) -> requests.Response:
        """Call the application and hand its answer back as requests would."""
        self.timeouts.append(timeout)
        parts = urlsplit(request.url or "")
        body = request.body.encode() if isinstance(request.body, str) else request.body or b""
        environ: dict[str, Any] = {
            "REQUEST_METHOD": request.method,
            "PATH_INFO": unquote(parts.path),
            "QUERY_STRING": parts.query,
            "HTTP_HOST": parts.netloc,
            "wsgi.input": io.BytesIO(body),
        }
        setup_testing_defaults(environ)
        for name, value in request.headers.items():
            key = name.upper().replace("-", "_")
            environ[key if key in ("CONTENT_TYPE", "CONTENT_LENGTH") else f"HTTP_{key}"] = value
        response = requests.Response()

        def start_response(status: str, headers: list[tuple[str, str]], exc_info: Any = None) -> None:
            response.status_code, response.reason = int(status[:3]), status[4:]
            response.headers = CaseInsensitiveDict(headers)

        chunks = self.application(environ, start_response)
        try:
            response.raw = io.BytesIO(b"".join(chunks))
        finally:
            getattr(chunks, "close", lambda: None)()
        response.url, response.request = request.url or "", request
        return response

    def close(self) -> None:
        """Note that the session was closed."""
        self.closed = True
