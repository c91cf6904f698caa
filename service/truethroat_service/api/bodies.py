"""Request bodies: JSON read strictly, nothing lost and nothing that is not JSON let through."""

import json
from typing import Any, NoReturn

from flask import Request
from werkzeug.exceptions import BadRequest, UnsupportedMediaType

_MOST_DIGITS = 300
"""Digits, with sign, of a whole number that any float arithmetic can still take."""


class _NotJson(ValueError):
    """Body that a lenient parser would have changed."""


class UnreadableBody(BadRequest):
    """Body that is not JSON; ``faults`` says where."""

    def __init__(self, detail: str) -> None:
        """Keep the fault in the form of a problem document."""
        super().__init__(detail)
        self.faults = [{"pointer": "#", "detail": detail, "code": "not-json"}]


def read(body: bytes) -> Any:
    """Value of a JSON body; raises :class:`UnreadableBody` for NaN, infinity, a name given twice, or no JSON at all."""
    try:
        made = json.loads(
            body.decode("utf-8"), parse_constant=_refuse_constant, parse_int=_whole, object_pairs_hook=_once_each
        )
        if b"\\u" in body:
            json.dumps(made, ensure_ascii=False).encode("utf-8")
        return made
    except UnicodeDecodeError as error:
        raise UnreadableBody("is not UTF-8 text") from error
    except UnicodeEncodeError as error:
        raise UnreadableBody("holds half of a surrogate pair, which is no character") from error
    except json.JSONDecodeError as error:
        raise UnreadableBody(f"is not JSON: {error.msg} at line {error.lineno} column {error.colno}") from error
    except (_NotJson, RecursionError) as error:
        raise UnreadableBody(str(error) if isinstance(error, _NotJson) else "is nested too deeply") from error


def _whole(digits: str) -> int | float:
    """Whole number; one with more digits than a float can hold is read as one, and may be infinite."""
    return int(digits) if len(digits) <= _MOST_DIGITS else float(digits)


def _refuse_constant(name: str) -> NoReturn:
    raise _NotJson(f"holds {name}, which is no JSON number; every number must be finite")


def _once_each(pairs: list[tuple[str, Any]]) -> dict[str, Any]:
    entries = dict(pairs)
    if len(entries) != len(pairs):
        names = [name for name, _ in pairs]
        twice = next(name for place, name in enumerate(names) if name in names[:place])
        raise _NotJson(f"gives {json.dumps(twice)} twice in one object")
    return entries


def body_of(request: Request) -> Any:
    """Value of a request's JSON body; another media type is refused, instead of finding every field missing."""
    if request.mimetype != "application/json":
        raise UnsupportedMediaType(f"Send application/json, not {request.mimetype or 'a body without a media type'}.")
    return read(request.get_data())
