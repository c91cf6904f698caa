"""Settings of a process, from the environment: ``TRUETHROAT_SERVICE_*``. An unknown one stops the start."""

import os
import re
from collections.abc import Mapping
from dataclasses import dataclass

PREFIX = "TRUETHROAT_SERVICE_"


class UnknownSetting(ValueError):
    """Environment variable with our prefix that is no setting of ours, or has no value it can have."""


@dataclass(frozen=True, slots=True)
class Settings:
    """Settings; the defaults make an open service, fit for loopback alone.

    ``token_hashes`` are SHA-256 digests of the tokens a request may carry; none means no token is asked for.
    ``largest_body`` is in bytes.
    """

    token_hashes: tuple[str, ...] = ()
    largest_body: int = 524288
    log_requests: bool = False

    @classmethod
    def from_environment(cls, environment: Mapping[str, str] = os.environ) -> "Settings":
        """Read the environment; raises :class:`UnknownSetting`."""
        given = {name[len(PREFIX) :]: value for name, value in environment.items() if name.startswith(PREFIX)}
        hashes = tuple(entry for entry in given.pop("TOKEN_HASHES", "").split(",") if entry)
        for entry in hashes:
            if not re.fullmatch(r"[0-9a-f]{64}", entry):
                raise UnknownSetting(f"{PREFIX}TOKEN_HASHES: SHA-256 digests in hexadecimal, separated by commas")
        body = given.pop("LARGEST_BODY", "524288")
        if not re.fullmatch(r"[1-9][0-9]{0,8}", body):
            raise UnknownSetting(f"{PREFIX}LARGEST_BODY: a number of bytes")
        log = given.pop("LOG_REQUESTS", "false")
        if log not in ("true", "false"):
            raise UnknownSetting(f"{PREFIX}LOG_REQUESTS: true or false")
        if given:
            raise UnknownSetting(f"unknown settings: {', '.join(PREFIX + name for name in sorted(given))}")
        return cls(hashes, int(body), log == "true")
