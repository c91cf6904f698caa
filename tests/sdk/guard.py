"""Whether a decoded answer carries all that was sent."""

from __future__ import annotations

import dataclasses
from collections.abc import Iterator, Mapping
from typing import Any

from truethroat.decoding import Undecodable, decode


def lost(sent: Any, carried: Any, pointer: str = "#") -> Iterator[str]:
    """Name what a decoded answer does not carry as it was sent, at any depth."""
    if isinstance(sent, dict) and dataclasses.is_dataclass(carried):
        fields = [field.name for field in dataclasses.fields(carried) if field.name != "raw"]
        places = {name.rstrip("_"): getattr(carried, name) for name in fields}
        yield from (f"{pointer}/{name}" for name in sent if name not in places)
        for name, value in places.items():
            yield from lost(sent.get(name), value, f"{pointer}/{name}")
    elif isinstance(sent, dict) and isinstance(carried, Mapping):
        for name in sent.keys() | carried.keys():
            yield from lost(sent.get(name), carried.get(name), f"{pointer}/{name}")
    elif isinstance(sent, list) and isinstance(carried, tuple) and len(sent) == len(carried):
        for index, (item, value) in enumerate(zip(sent, carried, strict=True)):
            yield from lost(item, value, f"{pointer}/{index}")
    elif sent != carried or isinstance(sent, bool) is not isinstance(carried, bool):
        yield pointer


def notices(kind: type[Any], answer: dict[str, Any]) -> bool:
    """Say whether the client refuses an answer, or loses some of it."""
    try:
        return any(True for _ in lost(answer, decode(kind, answer)))
    except Undecodable:
        return True
