"""What an answer becomes."""

from __future__ import annotations

import dataclasses
import json
import pickle
from typing import Any

import pytest
from tests.sdk.document import OPERATIONS, Operation, fields
from tests.sdk.guard import lost, notices
from tests.sdk.recording_service import ANSWERS, LEAST_ANSWERS, RecordingService

import truethroat
from truethroat import Client, Quantity, ReadOnly, Unexpected
from truethroat.decoding import Undecodable, decode

UNKNOWN = {"unheard_of": {"a": [1]}}
EVERY_OPERATION = pytest.mark.parametrize("operation", OPERATIONS.values(), ids=OPERATIONS)


@pytest.mark.parametrize("answers", [ANSWERS, LEAST_ANSWERS], ids=["all-there-may-be", "only-what-must-be"])
@EVERY_OPERATION
def test_an_answer_is_carried_whole(
    client: Client, service: RecordingService, operation: Operation, answers: dict[str, dict[str, Any]]
) -> None:
    """Every field that the document knows is found under its own name, at any depth, as it was sent."""
    sent = answers[operation.path]
    service.will_answer(200, sent)
    answer = getattr(client, operation.name)()
    assert list(lost(sent, answer)) == []
    assert json.loads(json.dumps(answer.to_dict())) == sent


def kind_of(operation: Operation) -> Any:
    """Give the class of an operation's answer."""
    return getattr(truethroat, operation.answer["$ref"].rpartition("/")[2])


FIELDS = fields((operation, ANSWERS[operation.path]) for operation in OPERATIONS.values())


def test_a_missing_field_is_named_at_any_depth() -> None:
    """An answer without a field that the document requires, wherever it stands, is refused with the field's name."""
    required = [field for field in FIELDS if field.required]
    assert len(required) > 500
    for field in required:
        with pytest.raises(Undecodable, match=f"^{field.pointer} is missing$"):
            decode(kind_of(field.operation), field.changed(None))


def test_no_field_can_be_renamed_unnoticed() -> None:
    """A field under another name than the document's, required or not, is missed or found to be lost."""
    for field in FIELDS:
        assert notices(kind_of(field.operation), field.changed(f"{field.name}_renamed")), field.pointer


@EVERY_OPERATION
def test_an_answer_that_lacks_a_field_is_an_error(
    client: Client, service: RecordingService, operation: Operation
) -> None:
    """What cannot be decoded is an error of the call, with the id of the request."""
    sent = dict(list(LEAST_ANSWERS[operation.path].items())[1:])
    service.will_answer(200, sent, X_Request_Id="abc")
    with pytest.raises(Unexpected, match="is missing") as caught:
        getattr(client, operation.name)()
    assert caught.value.request_id == "abc"


@EVERY_OPERATION
def test_unknown_fields_are_kept_and_break_nothing(
    client: Client, service: RecordingService, operation: Operation
) -> None:
    """Fields of a newer service, at any depth, are ignored by the types and kept in `raw`."""

    def grown(value: Any) -> Any:
        if isinstance(value, dict):
            return {**{key: grown(item) for key, item in value.items()}, **({} if "invented" in value else UNKNOWN)}
        return [grown(item) for item in value] if isinstance(value, list) else value

    sent = grown(ANSWERS[operation.path])
    service.will_answer(200, sent)
    answer = getattr(client, operation.name)()
    assert answer.raw["unheard_of"]["a"] == (1,)
    assert answer.to_dict() == sent
    assert {pointer.rpartition("/")[2] for pointer in lost(sent, answer)} == {"unheard_of"}


def test_unknown_words_break_nothing(client: Client, service: RecordingService) -> None:
    """A word that a newer service says where this version knows a few is taken as it is."""
    service.will_answer(200, {**ANSWERS["/v1/fillet-size"], "verdict": "unheard-of", "governs": "unheard-of"})
    answer: Any = client.fillet_size()  # type: ignore[call-arg]
    assert (answer.verdict, answer.governs) == ("unheard-of", "unheard-of")


def test_an_answer_reads_like_python(client: Client) -> None:
    """Arrays are tuples, quantities are `Quantity`, and names that Python keeps for itself have an underscore."""
    answer = client.distortion(joint={"kind": "tee"})  # type: ignore[typeddict-item]
    sent = ANSWERS["/v1/distortion"]
    assert isinstance(answer.alternatives, tuple)
    angular = sent["angular"]["high"]
    assert answer.angular.high == Quantity(angular["value"], angular["unit"])
    assert answer.iso_13920[0].classes[0].class_ == sent["iso_13920"][0]["classes"][0]["class"]
    assert answer.working is not None
    assert list(answer.working[0].with_) == ["invented"]
    assert answer.working[0].to_dict() == sent["working"][0]


def test_a_yes_or_no_may_stand_for_a_number(client: Client, service: RecordingService) -> None:
    """An argument of the working that is true or false stays so."""
    (step, *_) = ANSWERS["/v1/heat"]["working"]
    service.will_answer(200, {**ANSWERS["/v1/heat"], "working": [{**step, "with": {"x": {"value": True, "unit": ""}}}]})
    answer = client.heat()
    assert answer.working is not None
    assert answer.working[0].with_["x"].value is True


@pytest.mark.parametrize(
    ("change", "named"),
    [
        ({"required": {"leg": {"value": 1, "unit": "mm", "text": ""}, "source": "x"}}, "#/required/throat is missing"),
        ({"governs": 5}, "#/governs is 5, not a string"),
        ({"governs": None}, "#/governs is None, not a string"),
        ({"utilisation": "0.5"}, "#/utilisation is '0.5', not a number"),
        ({"utilisation": True}, "#/utilisation is True, not a number"),
        ({"reasons": {}}, "#/reasons is {}, not an array"),
        ({"reasons": ["a", 1]}, "#/reasons/1 is 1, not a string"),
        ({"strength": []}, "#/strength is [], not an object"),
        ({"strength": {"weld": {"value": 1}, "base_metal": []}}, "#/strength/weld/unit is missing"),
    ],
)
def test_a_field_of_another_kind_is_named(
    client: Client, service: RecordingService, change: dict[str, Any], named: str
) -> None:
    """An answer that has something else in a field is an error that says where and what."""
    service.will_answer(200, {**ANSWERS["/v1/fillet-size"], **change})
    with pytest.raises(Unexpected) as caught:
        client.fillet_size()
    assert named in str(caught.value)


@EVERY_OPERATION
def test_answers_are_frozen_and_can_be_pickled(client: Client, operation: Operation) -> None:
    """No field of an answer can be set, and an answer comes whole out of another process."""
    answer = getattr(client, operation.name)()
    with pytest.raises(dataclasses.FrozenInstanceError):
        answer.raw = None
    assert not hasattr(answer, "__dict__")
    again = pickle.loads(pickle.dumps(answer))  # noqa: S301 - our own bytes
    assert again == answer
    assert again.raw == answer.raw


def test_results_compare_by_their_fields(client: Client) -> None:
    """Results of one class with equal fields are equal, of another class or with another field they are not."""
    caution, other = client.bevel_depth().cautions
    assert caution == dataclasses.replace(caution)
    assert hash(caution) == hash(dataclasses.replace(caution))
    assert caution != other
    assert caution != client.bevel_depth().provenance
    assert repr(caution).startswith("Caution(")
    assert f"code={caution.code!r}" in repr(caution)
    assert "raw" not in repr(client.get_service())


def test_raw_can_only_be_read(client: Client) -> None:
    """Everything the service sent is in `raw`, and neither it nor what is inside it can be changed."""
    sent = ANSWERS["/v1/fillet-size"]
    raw = client.fillet_size().raw  # type: ignore[call-arg]
    assert set(raw) == set(sent)
    assert len(raw) == len(sent)
    assert isinstance(raw["required"], ReadOnly)
    assert raw["working"][0]["with"]["invented"]["value"] == sent["working"][0]["with"]["invented"]["value"]
    places: list[Any] = [raw, raw["required"], raw["working"][0]]
    for place in places:
        with pytest.raises(TypeError):
            place["source"] = "changed"
    copied = raw.to_dict()
    copied["required"]["source"] = "changed"
    assert raw["required"]["source"] == sent["required"]["source"]
    assert sent["required"]["source"] in repr(raw)


def test_parts_of_an_answer_have_to_dict_too(client: Client) -> None:
    """A part of an answer turns into plain data by the names of the wire, an answer inside it too."""
    sent = ANSWERS["/v1/joint-plan"]["ways"][0]
    way = client.joint_plan().ways[0]  # type: ignore[call-arg]
    assert way.to_dict() == sent
    assert way.parts is not None
    assert way.parts.heat is not None
    assert way.parts.heat.to_dict() == sent["parts"]["heat"]


def test_an_answers_quantity_can_be_sent_back(client: Client, service: RecordingService) -> None:
    """A quantity goes back with the value and unit it came with."""
    throat = client.fillet_size().required.throat  # type: ignore[call-arg]
    client.grind_allowance(required_throat=throat)  # type: ignore[call-arg]
    sent = ANSWERS["/v1/fillet-size"]["required"]["throat"]
    assert service.received[1].document == {"required_throat": {"value": sent["value"], "unit": sent["unit"]}}


@pytest.mark.parametrize(
    ("quantity", "text"),
    [
        (Quantity(6.35, "mm", "1/4 in"), "1/4 in"),
        (Quantity(6.35, "mm"), "6.35 mm"),
        (Quantity(6.0, "mm"), "6 mm"),
        (Quantity(6, "mm"), "6 mm"),
        (Quantity(0.1 + 0.2, "mm"), "0.30000000000000004 mm"),
        (Quantity(2.5, ""), "2.5"),
    ],
)
def test_quantity_as_text(quantity: Quantity, text: str) -> None:
    """A quantity shows the service's wording, or its value in full with the unit."""
    assert str(quantity) == text


def test_quantity_is_a_plain_value() -> None:
    """A quantity is frozen and slotted, and compares by value and unit alone."""
    quantity = Quantity(6, "mm", "6 mm")
    assert quantity == Quantity(6.0, "mm")
    assert quantity != Quantity(6, "in")
    assert len({quantity, Quantity(6, "mm")}) == 1
    assert quantity.to_dict() == {"value": 6, "unit": "mm", "text": "6 mm"}
    with pytest.raises(dataclasses.FrozenInstanceError):
        quantity.value = 7  # type: ignore[misc]
    assert not hasattr(quantity, "__dict__")


def test_every_result_is_frozen_and_slotted() -> None:
    """No result class has a field that can be set or a dictionary to grow."""
    kinds = [getattr(truethroat, name) for name in truethroat.__all__]
    results = [kind for kind in kinds if isinstance(kind, type) and dataclasses.is_dataclass(kind)]
    assert len(results) >= 25
    for kind in results:
        assert kind.__dataclass_params__.frozen, kind  # type: ignore[attr-defined]
        assert "__dict__" not in dir(kind), kind
