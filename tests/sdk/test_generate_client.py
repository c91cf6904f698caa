"""What the generator of the client makes of a document, on documents small enough to read."""

from __future__ import annotations

import copy
from typing import Any

import pytest
from openapi import generate_client
from openapi.generate_client import generate

TEXT = {"type": "string"}
LENGTH = {"type": "object", "properties": {"value": {"type": "number"}, "unit": TEXT, "text": TEXT}}
SMALL: dict[str, Any] = {
    "paths": {
        "/v1/cut": {
            "post": {
                "operationId": "cut",
                "summary": "How to cut.",
                "requestBody": {
                    "content": {"application/json": {"schema": {"$ref": "#/components/schemas/CutRequest"}}}
                },
                "responses": {
                    "200": {"content": {"application/json": {"schema": {"$ref": "#/components/schemas/CutAnswer"}}}}
                },
            }
        }
    },
    "components": {
        "schemas": {
            "LengthAnswer": LENGTH,
            "CutRequest": {
                "type": "object",
                "properties": {
                    "depth": {"$ref": "#/components/schemas/Length", "description": "How deep.", "default": "1 mm"},
                    "tool": {"oneOf": [{"$ref": "#/components/schemas/Saw"}, {"enum": ["torch"]}]},
                    "saws": {"type": "array", "items": {"$ref": "#/components/schemas/Saw"}},
                    "sizes": {"type": "array", "items": TEXT, "minItems": 2, "maxItems": 2},
                },
                "required": ["tool"],
            },
            "Length": {"anyOf": [{"type": "string", "format": "length"}, {"type": "object"}]},
            "Saw": {"type": "object", "properties": {"kind": {"const": "saw"}, "class": TEXT}, "required": ["kind"]},
            "CutAnswer": {
                "type": "object",
                "description": 'What "cut" gives.',
                "properties": {
                    "width": {"anyOf": [{"$ref": "#/components/schemas/LengthAnswer"}, {"type": "null"}]},
                    "mark": {"type": ["null", "string"]},
                    "edge": {"type": "object", "properties": {"class": TEXT}, "required": ["class"]},
                },
                "required": ["width", "edge"],
            },
        }
    },
}


@pytest.fixture
def document() -> dict[str, Any]:
    """Give a document to change."""
    return copy.deepcopy(SMALL)


def test_requests(document: dict[str, Any]) -> None:
    """What is required has no NotRequired; a name that Python keeps for itself is a key all the same."""
    source = generate(document)["requests"]
    assert """Saw = TypedDict("Saw", {"kind": "Literal['saw']", "class": "NotRequired[str]"})""" in source
    assert "Length: TypeAlias = QuantityInput\n" in source
    assert '    depth: NotRequired[Length]\n    """How deep. Default: 1 mm."""\n' in source
    assert '    tool: Saw | Literal["torch"]\n' in source
    assert "    saws: NotRequired[Sequence[Saw]]\n" in source
    assert "    sizes: NotRequired[list[str] | tuple[str, str]]\n" in source


def test_results(document: dict[str, Any]) -> None:
    """What is required has no default; an object without a name has one by its owner and field."""
    source = generate(document)["results"]
    assert '    """What "cut" gives."""\n' in source
    calculation = source.partition("class Calculation(Answer):")[2].partition("\n@dataclass")[0]
    assert "    width: Quantity | None\n" in calculation
    assert "    mark: str | None = None\n" in calculation
    assert "    edge: CalculationEdge\n" in calculation
    assert "    class_: str\n" in source
    assert "class CutAnswer(Calculation):" in source


def test_operations(document: dict[str, Any]) -> None:
    """A method takes its request's fields by name, says what they are and gives its answer's class."""
    source = generate(document)["operations"]
    head = (
        "def cut(self, *, timeout: Timeout | None = None, **request: Unpack[requests.CutRequest]) -> results.CutAnswer:"
    )
    assert head in source
    assert "\n        - depth: How deep. Default: 1 mm.\n" in source
    assert 'return self._calculate("/v1/cut", CutAnswer, request, timeout)' in source


def test_a_request_of_several_forms(document: dict[str, Any]) -> None:
    """Each form of a request is a way to call the method."""
    forms = {"oneOf": [{"$ref": "#/components/schemas/Saw"}, {"$ref": "#/components/schemas/Torch"}]}
    torch = {"type": "object", "properties": {"kind": {"const": "torch"}}, "required": ["kind"]}
    document["components"]["schemas"] |= {"CutRequest": forms, "Torch": torch}
    source = generate(document)["operations"]
    assert source.count("    @overload\n    def cut(") == 2
    assert "**request: Unpack[requests.Torch]" in source


def test_the_order_of_the_document_is_kept(document: dict[str, Any]) -> None:
    """Fields stand as the document has them, so that the first to read is the first there."""
    source = generate(document)["results"]
    assert source.index("    width: ") < source.index("    mark: ") < source.index("    edge: ")


@pytest.mark.parametrize(
    ("change", "complaint"),
    [
        ({"Saw": {"type": "object", "properties": {"a": {"$ref": "#/components/schemas/CutAnswer"}}}}, "CutAnswer"),
        ({"CalculationEdge": {"type": "object", "properties": {"a": TEXT}}}, "CalculationEdge: two classes"),
    ],
)
def test_no_two_classes_have_one_name(document: dict[str, Any], change: dict[str, Any], complaint: str) -> None:
    """A component that is both taken and answered, or is named like an object without a name, is refused."""
    document["components"]["schemas"] |= change
    with pytest.raises(ValueError, match=complaint):
        generate(document)


def test_parameters_are_not_passed_over(document: dict[str, Any]) -> None:
    """An operation with a parameter in its address needs a method that nobody wrote: it is refused."""
    document["paths"]["/v1/cut"]["post"]["parameters"] = [{"name": "a", "in": "query"}]
    with pytest.raises(ValueError, match="/v1/cut"):
        generate(document)


def test_a_difference_is_told(
    tmp_path: Any, monkeypatch: pytest.MonkeyPatch, capsys: pytest.CaptureFixture[str]
) -> None:
    """The check leaves a file that differs, and one too many, and fails; writing mends both."""
    monkeypatch.setattr(generate_client, "FOLDER", tmp_path / "_generated")
    assert generate_client.main(["--check"]) == 1
    assert generate_client.main([]) == 0
    assert generate_client.main(["--check"]) == 0
    (tmp_path / "_generated" / "more.py").touch()
    assert generate_client.main(["--check"]) == 1
    assert generate_client.main([]) == 0
    assert not (tmp_path / "_generated" / "more.py").exists()
    assert capsys.readouterr().err.count("make openapi") == 2
