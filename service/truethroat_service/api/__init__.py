"""HTTP over the use cases: the application factory."""

from typing import Any

from flask import Flask, Response

from . import http, problems, resources
from .document import document
from .settings import Settings


class _App(Flask):
    """Application without coroutines, so that no request pays for looking out for them."""

    def ensure_sync(self, func: Any) -> Any:
        """Every function here is a plain one."""
        return func


def create_app(settings: Settings | None = None) -> Flask:
    """Application with the given settings, or those of the environment; open to all when they name no token."""
    settings = Settings.from_environment() if settings is None else settings
    app = _App(__name__, static_folder=None)
    app.config["MAX_CONTENT_LENGTH"] = settings.largest_body
    app.url_map.strict_slashes = True
    http.install(app, settings)
    problems.install(app)
    resources.install(app)

    @app.get("/openapi.json")
    def openapi() -> Response:
        """Document of the service."""
        return resources.json_response(document())

    return app
