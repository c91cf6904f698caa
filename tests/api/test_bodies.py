"""Bodies as bytes: what is read as JSON, what is not, and what is too much."""

from __future__ import annotations

import json

import pytest
from tests.api.exchange import Exchange
from tests.api.sound import EN, FILLET, changed

from truethroat_service.api import create_app
from truethroat_service.api.settings import Settings

JSON = "application/json"


def _refused(service: Exchange, body: bytes) -> str:
    """Send bytes that must not be read, and give the message."""
    response = service.send("POST", FILLET, data=body, content_type=JSON)
    assert response.status_code == 400
    assert response.json["type"] == "/problems/not-json"
    [fault] = response.json["errors"]
    assert (fault["pointer"], fault["code"]) == ("#", "not-json")
    assert response.json["detail"] == f"#: {fault['detail']}"
    detail: str = fault["detail"]
    return detail


@pytest.mark.parametrize(
    ("body", "message"),
    [
        (b"", "is not JSON: Expecting value at line 1 column 1"),
        (b"   ", "is not JSON: Expecting value at line 1 column 4"),
        (b"{", "is not JSON: Expecting property name enclosed in double quotes at line 1 column 2"),
        (b"{} {}", "is not JSON: Extra data at line 1 column 4"),
        (b"{\n'a': 1}", "is not JSON: Expecting property name enclosed in double quotes at line 2 column 1"),
        (b'{"units": "us", "units": "us"}', 'gives "units" twice in one object'),
        (b'{"joint": {"kind": "tee", "kind": "lap"}}', 'gives "kind" twice in one object'),
        (b'{"a": 1, "b": {}, "\\u0061": 1}', 'gives "a" twice in one object'),
        (b"\xff\xfe{\x00}\x00", "is not UTF-8 text"),
        (b'{"mark": "\xe9"}', "is not UTF-8 text"),
        (b'{"mark": "\\ud800"}', "holds half of a surrogate pair, which is no character"),
        (b"[" * 60_000, "is nested too deeply"),
    ],
    ids=lambda value: repr(value)[:30],
)
def test_what_is_no_json_is_refused(service: Exchange, body: bytes, message: str) -> None:
    """Bytes that are no JSON text in UTF-8, or give a name twice, are refused with the reason and its place."""
    assert _refused(service, body) == message


@pytest.mark.parametrize("body", [b"[]", b'"6 mm"', b"6", b"true", b"null", b'[{"rule_set": "thin-part"}]'])
def test_json_that_is_no_object_is_refused(service: Exchange, body: bytes) -> None:
    """A body of another JSON type is told that an object is wanted."""
    response = service.send("POST", FILLET, data=body, content_type=JSON)
    assert response.status_code == 422
    assert response.json["errors"] == [{"pointer": "#", "detail": "must be an object", "code": "wrong-type"}]
    assert response.json["detail"] == "#: must be an object"


@pytest.mark.parametrize("content_type", [JSON, "application/json; charset=utf-8", "Application/JSON"])
def test_json_may_be_called_so_in_several_ways(service: Exchange, content_type: str) -> None:
    """Parameters and capitals in the media type do not matter."""
    response = service.send("POST", FILLET, data=json.dumps(EN).encode(), content_type=content_type)
    assert response.status_code == 200


@pytest.mark.parametrize(
    ("content_type", "said"),
    [
        (None, "a body without a media type"),
        ("text/plain", "text/plain"),
        ("application/x-www-form-urlencoded", "application/x-www-form-urlencoded"),
        ("application/problem+json", "application/problem+json"),
        ("text/csv; charset=utf-8", "text/csv"),
    ],
)
def test_another_media_type_is_refused(service: Exchange, content_type: str | None, said: str) -> None:
    """A body of another media type, or of none, is told which one to send."""
    response = service.send("POST", FILLET, data=json.dumps(EN).encode(), content_type=content_type)
    assert response.status_code == 415
    assert response.json["type"] == "/problems/unsupported-media-type"
    assert response.json["detail"] == f"Send application/json, not {said}."
    assert response.json["errors"] == []


def test_a_body_over_the_limit_is_refused() -> None:
    """One byte over the setting is too large; the limit itself is read."""
    body = json.dumps(EN).encode()
    fits = Exchange(create_app(Settings(largest_body=len(body))))
    assert fits.send("POST", FILLET, data=body, content_type=JSON).status_code == 200
    tight = Exchange(create_app(Settings(largest_body=len(body) - 1)))
    response = tight.send("POST", FILLET, data=body, content_type=JSON)
    assert response.status_code == 413
    assert response.json["type"] == "/problems/too-large"


def test_the_usual_limit_is_512_kib(service: Exchange) -> None:
    """Without a setting a body may have 524,288 bytes."""
    body = json.dumps(EN).encode()
    at_the_limit = service.send("POST", FILLET, data=body.ljust(524_288), content_type=JSON)
    assert at_the_limit.status_code == 200
    assert service.send("POST", FILLET, data=body.ljust(524_289), content_type=JSON).status_code == 413


def test_any_unicode_mark_comes_back(service: Exchange) -> None:
    """A mark is given back as it came, escaped or not, in any script."""
    mark = "Tr\u00e4ger \u2116 7 \u6a2a\u6881 \U0001f529"
    assert service.answer(FILLET, changed(EN, mark=mark))["mark"] == mark
    escaped = json.dumps(changed(EN, mark=mark)).encode()
    assert service.send("POST", FILLET, data=escaped, content_type=JSON).json["mark"] == mark
    raw = json.dumps(changed(EN, mark=mark), ensure_ascii=False).encode()
    assert service.send("POST", FILLET, data=raw, content_type=JSON).json["mark"] == mark
