"""Error messages that carry a code beside their text, through marshmallow to the problem document."""

from collections.abc import Iterator, Mapping
from typing import Any

from ..application.core.codes import FaultCode


class Message(str):
    """Text of a fault with its code; a plain string to everything in between."""

    __slots__ = ("code",)
    code: FaultCode

    def __new__(cls, text: str, code: FaultCode) -> "Message":
        """Keep the code beside the text."""
        message = super().__new__(cls, text)
        message.code = code
        return message

    def __getnewargs__(self) -> tuple[str, FaultCode]:  # type: ignore[override]
        """Copy with the code: schemas are deep-copied with their messages."""
        return str(self), self.code

    def format(self, *args: object, **kwargs: object) -> "Message":
        """Fill in the text and keep the code."""
        return Message(super().format(*args, **kwargs), self.code)


MISSING = Message("is missing", "missing")
NULL = Message("is null; leave the field out instead", "null")
NOT_FINITE = Message("is not a finite number", "not-finite")
NOT_AN_OBJECT = Message("must be an object", "wrong-type")


def unknown(fields: Mapping[str, Any]) -> Message:
    """Message for a field a schema does not have."""
    return Message(f"is not a field here; the fields are {', '.join(fields)}", "unknown-field")


def faults(messages: Any, path: tuple[str, ...] = ()) -> Iterator[dict[str, str]]:
    """Every fault in marshmallow's nested messages, as ``{pointer, detail, code}``."""
    if isinstance(messages, Mapping):
        for key, inner in messages.items():
            yield from faults(inner, path if key == "_schema" else (*path, str(key)))
    elif isinstance(messages, list | tuple):
        for message in messages:
            yield from faults(message, path)
    else:
        yield {"pointer": pointer(path), "detail": str(messages), "code": getattr(messages, "code", "invalid")}


def pointer(path: tuple[str, ...]) -> str:
    """JSON pointer of a path, as a URI fragment (RFC 6901)."""
    return "#" + "".join("/" + step.replace("~", "~0").replace("/", "~1") for step in path)
