"""HTTP over the use cases: the application factory."""

from flask import Flask

from .. import API_VERSION
from ..application.core.faults import Refused
from . import http
from .apispec_fields import FieldPlugin
from .blueprints import (
    as_welded,
    bevel_depth,
    break_test,
    catalogue,
    crack_risk,
    distortion,
    filler_quantity,
    fillet_size,
    grind_allowance,
    groove_size,
    health,
    heat,
    joint_plan,
    weld_group,
)
from .problems import ProblemApi, handle_refused
from .schemas.answers import COMPONENTS
from .settings import Settings

_BLUEPRINTS = (
    fillet_size.blueprint,
    groove_size.blueprint,
    grind_allowance.blueprint,
    bevel_depth.blueprint,
    weld_group.blueprint,
    as_welded.blueprint,
    heat.blueprint,
    crack_risk.blueprint,
    filler_quantity.blueprint,
    distortion.blueprint,
    break_test.blueprint,
    joint_plan.blueprint,
    catalogue.blueprint,
    health.blueprint,
)

_DESCRIPTION = (
    "Sizes welds by their throat. Every answer is an estimate for planning, to be confirmed by the governing local"
    " code,"
    " the welding procedure and a licensed engineer or certified inspector."
)


def create_app(settings: Settings | None = None) -> Flask:
    """Application with the given settings, or those of the environment; open to all when they name no token."""
    settings = Settings.from_environment() if settings is None else settings
    app = Flask(__name__, static_folder=None)
    app.config.update(
        API_TITLE="truethroat",
        API_VERSION=API_VERSION,
        OPENAPI_VERSION="3.1.0",
        OPENAPI_URL_PREFIX="/",
        OPENAPI_JSON_PATH="openapi.json",
        MAX_CONTENT_LENGTH=settings.largest_body,
        JSON_SORT_KEYS=False,
    )
    app.url_map.strict_slashes = True
    http.install(app, settings)
    info = {"description": _DESCRIPTION, "license": {"name": "Apache-2.0", "identifier": "Apache-2.0"}}
    api = ProblemApi(app, spec_kwargs={"marshmallow_plugin": FieldPlugin(), "info": info})
    for name, component in COMPONENTS.items():
        api.spec.components.schema(name, component)
    api.spec.components.security_scheme("bearer", {"type": "http", "scheme": "bearer"})
    api.spec.components.security_scheme("key", {"type": "apiKey", "in": "header", "name": "X-API-Key"})
    for blueprint in _BLUEPRINTS:
        api.register_blueprint(blueprint)
    app.register_error_handler(Refused, handle_refused)
    return app
