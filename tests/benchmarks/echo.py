"""The least a Flask service can do with a request: read its JSON and send it back. What is over this is ours."""

from __future__ import annotations

from flask import Flask, Response, jsonify, request


def create_app() -> Flask:
    """Make the application; it answers the readiness check too, so that it is started like the service."""
    app = Flask(__name__, static_folder=None)

    @app.get("/readyz")
    def ready() -> Response:
        return jsonify(status="ready")

    @app.post("/echo")
    def echo() -> Response:
        return jsonify(request.get_json())

    return app
