"""What an answer becomes."""

from __future__ import annotations

import copy
import dataclasses
import json
import pickle
from typing import Any

import pytest
from tests.sdk.recording_service import ANSWERS, BUDGET, REMEDIES, RecordingService

import truethroat
from truethroat import (
    Caution,
    Client,
    Heat,
    JointPlan,
    Operand,
    Quantity,
    ReadOnly,
    Remedy,
    SizeStep,
    Unexpected,
)
from truethroat.decoding import decode

CALCULATIONS = ["fillet_size", "grind_allowance", "bevel_depth"]
LISTS = ["list_rule_sets", "list_materials", "list_filler_metals", "list_preparations", "list_processes"]
OPERATIONS = [*CALCULATIONS, "get_service", *LISTS]


def path_of(operation: str) -> str:
    """Give the path of an operation by its name."""
    return "/v1" if operation == "get_service" else "/v1/" + operation.removeprefix("list_").replace("_", "-")


def test_fillet_size_is_decoded(client: Client) -> None:
    """Each field of a fillet size answer is found under its own name and type."""
    answer = client.fillet_size()
    assert answer.required == SizeStep(leg=Quantity(111, "mm"), throat=Quantity(112, "mm"), source="nowhere")
    assert answer.maximum is None
    assert answer.specify is not None
    assert answer.specify.passes == 3
    assert answer.strength is not None
    assert answer.strength.base_metal == (Quantity(118, "N/mm"), Quantity(119, "N/mm"))
    assert answer.length is not None
    assert (answer.length.given.value, answer.length.effective.value, answer.length.factor) == (222, 221, 1)
    assert (answer.governs, answer.utilisation, answer.mark) == ("invented", 0.125, "H-07")


def test_what_every_calculation_has_is_decoded(client: Client) -> None:
    """Verdict, reasons, cautions and provenance are typed; a caution's source may be absent."""
    answer = client.bevel_depth()
    assert answer.verdict == "invented-verdict"
    assert answer.reasons == ("an invented reason",)
    assert answer.cautions[0] == Caution(code="invented", text="An invented caution.", source="nowhere")
    assert answer.cautions[1].source is None
    assert answer.provenance.parameters["gamma"] == 111.5
    assert answer.provenance.clauses == ("clause 0",)
    assert (answer.mark, answer.working) == (None, ())


def test_working_is_decoded(client: Client) -> None:
    """A step of the working keeps its operands by symbol, numbers and yes-or-no alike."""
    (step,) = client.fillet_size().working
    assert (step.symbol, step.expression, step.value, step.unit) == ("a", "z * c", 112, "mm")
    assert dict(step.with_) == {"z": Operand(value=111, unit="mm"), "c": Operand(value=True, unit="")}
    assert step.with_["c"].value is True
    assert [str(operand) for operand in step.with_.values()] == ["111 mm", "True"]
    assert step.to_dict() == ANSWERS["/v1/fillet-size"]["working"][0]


def test_grind_allowance_is_decoded(client: Client) -> None:
    """Budget lines, remedies and the creditable account are typed."""
    answer = client.grind_allowance()
    assert {f.name: getattr(answer.budget, f.name).value for f in dataclasses.fields(answer.budget)} == {
        line: quantity["value"] for line, quantity in BUDGET.items()
    }
    assert answer.creditable.as_welded == answer.budget.as_welded
    assert answer.creditable.verdict == "another-invented-verdict"
    assert answer.creditable.largest_radius == Quantity(204, "mm")
    assert (answer.largest_radius, answer.creditable.leave) == (None, None)
    assert [remedy.do for remedy in answer.remedies] == [remedy["do"] for remedy in REMEDIES]
    assert answer.remedies[1] == Remedy(
        do="leave-face", face_height=Quantity(303, "mm"), remaining=Quantity(304, "mm"), counts=()
    )


def test_bevel_depth_is_decoded(client: Client) -> None:
    """Depth, setback, land, drawing text and alternatives are typed; a deduction stays negative."""
    answer = client.bevel_depth()
    assert (answer.depth, answer.setback, answer.land) == tuple(Quantity(n, "mm") for n in (401, 402, 403))
    assert answer.deduction.value == -404
    assert answer.callout is not None
    assert answer.callout.aws_a2_4 == "invented too"
    assert answer.alternatives[0].filler is None
    assert answer.alternatives[1].filler is not None
    assert answer.alternatives[1].filler.mass_per_length == Quantity(410, "kg/m")


def test_reference_data_is_decoded(client: Client) -> None:
    """Each list holds its entries by id; properties without a field of their own are in `raw`."""
    assert client.get_service().rule_sets[0].id == "invented-rules"
    assert client.list_rule_sets().rule_sets[0].limits[0].text == "up to nothing"
    assert client.list_rule_sets().quality_sets[0].limits[0].text == "down to nothing"
    assert client.list_materials().materials[0].raw["bands"][0]["yield_strength"]["value"] == 111
    assert client.list_filler_metals().filler_metals[0].processes == ("GMAW",)
    assert client.list_processes().processes[0].title == "an invented title"


@pytest.mark.parametrize("operation", OPERATIONS)
def test_unknown_fields_are_kept_and_break_nothing(client: Client, service: RecordingService, operation: str) -> None:
    """Fields of a newer service, at any depth, are ignored by the types and kept in `raw`."""

    def grown(value: Any) -> Any:
        if isinstance(value, dict):
            return {**{key: grown(item) for key, item in value.items()}, "unheard_of": {"a": [1]}}
        return [grown(item) for item in value] if isinstance(value, list) else value

    # `with` and `parameters` take any name, so nothing in them is unknown
    document = grown(ANSWERS[path_of(operation)])
    for step in document.get("working", []):
        del step["with"]["unheard_of"]
    service.will_answer(200, document)
    answer = getattr(client, operation)()
    assert answer.raw["unheard_of"]["a"] == (1,)
    assert answer.to_dict() == document


def required_fields(kind: Any) -> list[str]:
    """Name the fields that a result class cannot do without."""
    return [f.name for f in dataclasses.fields(kind) if f.default is dataclasses.MISSING and f.name != "raw"]


@pytest.mark.parametrize("operation", OPERATIONS)
def test_a_missing_field_is_named(client: Client, service: RecordingService, operation: str) -> None:
    """An answer without a field that the types need is an error that names the field."""
    names = required_fields(type(getattr(client, operation)()))
    assert names
    for name in names:
        document = copy.deepcopy(ANSWERS[path_of(operation)])
        del document[name]
        service.will_answer(200, document, X_Request_Id="abc")
        with pytest.raises(Unexpected, match=f"#/{name} is missing") as caught:
            getattr(client, operation)()
        assert caught.value.request_id == "abc"


def pointers(value: Any, pointer: str = "#") -> list[str]:
    """Name every field of a document, at any depth."""
    found = []
    for key, item in value.items() if isinstance(value, dict) else enumerate(value):
        found.append(f"{pointer}/{key}")
        if isinstance(item, dict | list):
            found += pointers(item, found[-1])
    return found


#: What an answer may do without: by the name of the field, wherever it stands.
MAY_BE_ABSENT = (
    "mark working source rule_set maximum specify utilisation strength length passes text depth face_height radius "
    "throat leave largest_radius setback land budget area filler callout "
    "process consumable arc_time working_time gas energy cost passes labour power total efficiency deposition_rate "
    "operator_factor gas_flow bead_area source_efficiency packing"
)


@pytest.mark.parametrize("operation", CALCULATIONS)
def test_a_missing_field_is_named_at_any_depth(client: Client, service: RecordingService, operation: str) -> None:
    """Each field that an answer cannot do without is missed, by its pointer, wherever it stands."""
    missed = set()
    for pointer in pointers(ANSWERS[path_of(operation)]):
        *way, last = pointer.removeprefix("#/").split("/")
        # through JSON, so that what two fields share becomes two
        document = place = json.loads(json.dumps(ANSWERS[path_of(operation)]))
        for part in way:
            place = place[int(part)] if isinstance(place, list) else place[part]
        # parameters and operands have names of their own, and an array may be shorter
        if isinstance(place, list) or last in MAY_BE_ABSENT.split() or (way and way[-1] in ("parameters", "with")):
            continue
        del place[last]
        service.will_answer(200, document)
        with pytest.raises(Unexpected, match=f"{pointer} is missing"):
            getattr(client, operation)()
        missed.add(pointer)
    assert len(missed) >= 15


@pytest.mark.parametrize(
    ("change", "named"),
    [
        ({"required": {"leg": {"value": 1, "unit": "mm"}, "source": "x"}}, "#/required/throat is missing"),
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


@pytest.mark.parametrize("operation", OPERATIONS)
def test_answers_are_frozen_and_can_be_pickled(client: Client, operation: str) -> None:
    """No field of an answer can be set, and an answer comes whole out of another process."""
    answer = getattr(client, operation)()
    with pytest.raises(dataclasses.FrozenInstanceError):
        answer.raw = None
    assert not hasattr(answer, "__dict__")
    again = pickle.loads(pickle.dumps(answer))  # noqa: S301 - our own bytes
    assert again == answer
    assert again.raw == answer.raw


def test_raw_can_only_be_read(client: Client) -> None:
    """Everything the service sent is in `raw`, and neither it nor what is inside it can be changed."""
    raw = client.fillet_size().raw
    assert set(raw) == set(ANSWERS["/v1/fillet-size"])
    assert len(raw) == len(ANSWERS["/v1/fillet-size"])
    assert isinstance(raw["required"], ReadOnly)
    assert raw["working"][0]["with"]["z"]["value"] == 111
    places: list[Any] = [raw, raw["required"], raw["working"][0]]
    for place in places:
        with pytest.raises(TypeError):
            place["source"] = "changed"
    copied = raw.to_dict()
    copied["required"]["source"] = "changed"
    assert raw["required"]["source"] == "nowhere"
    assert "nowhere" in repr(raw)


@pytest.mark.parametrize("operation", OPERATIONS)
def test_to_dict_gives_json_again(client: Client, operation: str) -> None:
    """An answer turned back into plain data is what the service sent, ready to be written as JSON."""
    document = getattr(client, operation)().to_dict()
    assert json.loads(json.dumps(document)) == ANSWERS[path_of(operation)]


def test_parts_of_an_answer_have_to_dict_too(client: Client) -> None:
    """A part of an answer turns into plain data by the names of the wire."""
    answer = client.grind_allowance()
    assert answer.budget.to_dict() == BUDGET
    assert {key: value for key, value in answer.remedies[0].to_dict().items() if value is not None} == REMEDIES[0]


def test_an_answers_quantity_can_be_sent_back(client: Client, service: RecordingService) -> None:
    """A quantity goes back with the value and unit it came with."""
    client.grind_allowance(required_throat=client.fillet_size().required.throat)
    assert service.received[1].document == {"required_throat": {"value": 112, "unit": "mm"}}


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


def test_a_weld_as_gauged_is_typed(client: Client) -> None:
    """Limits and actions of a fillet are typed; what is not permitted has no allowed value, some actions no leg."""
    answer = client.as_welded(quality="iso-5817-b")
    assert answer.throat.worst_case == Quantity(603, "mm")
    assert [limit.allowed for limit in answer.limits] == [None, Quantity(608, "mm")]
    assert [limit.extent for limit in answer.limits] == [None, Quantity(617, "mm")]
    assert not answer.quality_kept
    assert answer.overweld is not None
    assert answer.overweld.extra_mass == Quantity(612, "kg/m")
    assert [action.leg for action in answer.actions] == [Quantity(613, "mm"), None]


def test_the_heat_of_a_pass_is_typed(client: Client) -> None:
    """Bands, preheats and hardness are typed; what is not answered is None."""
    answer = client.heat(process="invented")
    assert answer.cooling is not None
    assert answer.cooling.time.most == Quantity(703, "s")
    assert answer.limits is not None
    assert (answer.limits.arc_energy, answer.limits.travel_speed is None) == (None, False)
    assert answer.preheat.method_b is None
    assert answer.preheat.aws_d1_1 is not None
    assert answer.preheat.aws_d1_1.printed.celsius == Quantity(714, "degC")
    assert answer.hardness is not None
    assert answer.hardness.band.most == 730
    assert answer.fillet is not None
    assert answer.fillet.oversize is not None
    assert answer.fillet.oversize.heat_ratio == 737
    assert answer.left_out[0].field == "energy/heat_input"


def test_a_crack_risk_is_typed(client: Client) -> None:
    """Shape, index, least sizes and factors are typed."""
    answer = client.crack_risk(joint="butt")
    assert answer.shape is not None
    assert answer.shape.depth == Quantity(752, "mm")
    assert answer.index is not None
    assert answer.index.critical == 757
    assert answer.least_sizes[0].throat == Quantity(761, "mm")
    assert [factor.change for factor in answer.factors] == [None, "what"]


def test_a_weld_group_is_typed(client: Client) -> None:
    """Places, components and the points of a group are typed; a centre may be missing."""
    answer = client.weld_group(rule_set="invented")
    assert answer.properties.centroid.y == Quantity(503, "mm")
    assert answer.load_per_group.moment.z == Quantity(513, "kN*m")
    assert answer.points[0].force.x == Quantity(516, "N/mm")
    assert (answer.critical, answer.centre is None) == (None, False)
    assert answer.strength.factor == 529


def test_a_groove_is_typed(client: Client) -> None:
    """Sizes, preparations, holes and the T-butt of a groove are typed; what is not there is None."""
    answer = client.groove_size(rule_set="invented")
    assert answer.specify is not None
    assert (answer.specify.throat, answer.specify.depth) == (Quantity(702, "mm"), Quantity(703, "mm"))
    assert answer.strength is not None
    assert (answer.strength.weld, answer.strength.base_metal[1]) == (None, Quantity(706, "N/mm"))
    assert answer.preparation is not None
    assert answer.preparation.filler.mass_per_length == Quantity(715, "kg/m")
    assert [one.enough for one in answer.preparations] == [True, False]
    assert answer.refused[0].why == "an invented reason"
    assert answer.holes is not None
    assert (answer.holes.needed, answer.holes.limits.largest_width) == (721, None)
    assert answer.tee is not None
    assert answer.tee.full_strength is True


def test_an_estimate_is_typed(client: Client) -> None:
    """Spans, costs, passes and what they rest on are typed; what is not known is None."""
    answer = client.filler_quantity(welds=[])
    (weld,) = answer.welds
    assert weld.consumable is not None
    assert (weld.consumable.least, weld.consumable.most) == (Quantity(706, "kg"), Quantity(707, "kg"))
    assert (weld.working_time, weld.energy) == (None, None)
    assert weld.passes is not None
    assert weld.passes.counts[0].most == 3
    assert weld.cost is not None
    assert weld.cost.labour is not None
    assert (weld.cost.labour.most, weld.cost.total, weld.cost.missing) == (722, None, ("gas",))
    assert weld.rests_on.efficiency is not None
    assert (weld.rests_on.efficiency.least, weld.rests_on.density.value) == (713, Quantity(712, "kg/m3"))
    assert answer.totals.deposited == Quantity(718, "kg")
    assert (answer.groups[0].process, answer.groups[0].count) == (None, 5)


def test_a_distortion_is_typed(client: Client) -> None:
    """Bands, classes and alternatives are typed; a band without a method has no ends."""
    answer = client.distortion(joint={"kind": "invented"})
    assert answer.transverse.low == Quantity(701, "mm")
    assert answer.angular.methods[0].value == Quantity(703, "deg")
    assert (answer.bowing.high, answer.bowing.left_out[0].method) == (None, "any")
    (check,) = answer.iso_13920
    assert (check.keeps, check.classes[0].class_, check.classes[0].printed_rise) == (None, "A", 709)
    (way,) = answer.alternatives
    assert way.transverse is not None
    assert way.transverse.ratio is not None
    assert (way.steps, way.leg, way.depth, way.transverse.ratio.high) == (1, Quantity(710, "mm"), None, 716)
    assert way.to_dict()["angular"] is None
    assert check.to_dict()["classes"][0]["class"] == "A"


def test_a_break_test_is_typed(client: Client) -> None:
    """Accounts, the plate and what a test is worth are typed."""
    answer = client.break_test(coupon="tee")
    assert answer.force.breaking == Quantity(810, "N")
    assert answer.strength.verdict == "another-invented-verdict"
    assert answer.creditable.throat.nominal == Quantity(822, "mm")
    assert (answer.plate.balance.leg, answer.checks[0].least) == (None, Quantity(866, "mm"))
    assert answer.standard_coupon is None
    assert answer.acceptance is not None
    assert answer.acceptance.limits[0].most == Quantity(868, "mm")


def test_a_joint_plan_is_typed(client: Client) -> None:
    """Ways, their costs and what they are held to are typed; a way shown short has no parts."""
    answer = client.joint_plan(basis="throat")
    (way,) = answer.ways
    assert (answer.recommended, answer.quality, way.rank, way.chance_short) == ("invented-way", None, 1, 0.25)
    assert (way.costs.filler, way.costs.time, way.parts) == (Quantity(901, "kg"), None, None)
    assert (way.hold.least_leg, way.left_out[0].field) == (Quantity(902, "mm"), "heat")
    assert answer.refused[0].why == ("invented",)


def test_the_parts_of_a_plan_are_the_single_answers(client: Client) -> None:
    """What a single resource answers is of its own class inside a plan, with all that was sent in `raw`."""
    part = client.heat(process="SAW").to_dict()
    document = client.joint_plan().to_dict()
    document["ways"][0]["parts"] = {"heat": part}
    decoded = decode(JointPlan, document).ways[0].parts
    assert decoded is not None
    assert isinstance(decoded.heat, Heat)
    assert decoded.heat.to_dict() == part
    assert decoded.fillet_size is None
