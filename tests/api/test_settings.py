"""Settings from the environment: what each does, and that a wrong one stops the start."""

from __future__ import annotations

import pytest
from tests.api.exchange import Exchange

from truethroat_service.api import create_app
from truethroat_service.api.settings import Settings, UnknownSetting

DIGESTS = ("a" * 64, "0123456789abcdef" * 4)


def test_an_empty_environment_makes_an_open_quiet_service() -> None:
    """No variable of ours: no token, 512 KiB bodies, no log; others' variables do not matter."""
    assert Settings.from_environment({"PATH": "/bin", "TRUETHROAT_TOKEN": "the client's own"}) == Settings()
    assert Settings() == Settings(token_hashes=(), largest_body=524288, log_requests=False)


def test_every_setting_is_read() -> None:
    """Each variable sets its own field."""
    found = Settings.from_environment(
        {
            "TRUETHROAT_SERVICE_TOKEN_HASHES": ",".join(DIGESTS),
            "TRUETHROAT_SERVICE_LARGEST_BODY": "1000",
            "TRUETHROAT_SERVICE_LOG_REQUESTS": "true",
        }
    )
    assert found == Settings(token_hashes=DIGESTS, largest_body=1000, log_requests=True)


@pytest.mark.parametrize(
    ("name", "value", "message"),
    [
        ("TOKEN_HASHES", "secret", "TOKEN_HASHES: SHA-256 digests in hexadecimal, separated by commas"),
        ("TOKEN_HASHES", "A" * 64, "TOKEN_HASHES: SHA-256 digests in hexadecimal, separated by commas"),
        ("TOKEN_HASHES", "a" * 64 + ", " + "b" * 64, "TOKEN_HASHES: SHA-256 digests in hexadecimal"),
        ("LARGEST_BODY", "0", "LARGEST_BODY: a number of bytes"),
        ("LARGEST_BODY", "64k", "LARGEST_BODY: a number of bytes"),
        ("LARGEST_BODY", "", "LARGEST_BODY: a number of bytes"),
        ("LARGEST_BODY", "\u0661", "LARGEST_BODY: a number of bytes"),
        ("LOG_REQUESTS", "yes", "LOG_REQUESTS: true or false"),
        ("LOG_REQUESTS", "True", "LOG_REQUESTS: true or false"),
        ("LARGEST_BODDY", "1", "unknown settings: TRUETHROAT_SERVICE_LARGEST_BODDY"),
        ("", "1", "unknown settings: TRUETHROAT_SERVICE_"),
    ],
)
def test_a_wrong_setting_stops_the_start(monkeypatch: pytest.MonkeyPatch, name: str, value: str, message: str) -> None:
    """A setting there is none of, or a value it cannot have, stops the start with its name; no value is repeated."""
    monkeypatch.setenv(f"TRUETHROAT_SERVICE_{name}", value)
    with pytest.raises(UnknownSetting) as caught:
        create_app()
    assert message in str(caught.value)
    if name == "TOKEN_HASHES":
        assert value not in str(caught.value)


def test_every_unknown_setting_is_named() -> None:
    """Several wrong names come in one message, in order."""
    with pytest.raises(UnknownSetting, match=r"TRUETHROAT_SERVICE_A, TRUETHROAT_SERVICE_B$"):
        Settings.from_environment({"TRUETHROAT_SERVICE_B": "1", "TRUETHROAT_SERVICE_A": "1"})


def test_an_app_takes_its_settings_from_the_environment(monkeypatch: pytest.MonkeyPatch) -> None:
    """Without settings of its own an app reads the environment when it is made."""
    monkeypatch.setenv("TRUETHROAT_SERVICE_TOKEN_HASHES", DIGESTS[0])
    assert Exchange(create_app()).get("/v1").status_code == 401
    assert Exchange(create_app(Settings())).get("/v1").status_code == 200
