"""Every calculation and every list, asked through the client over HTTP."""

from __future__ import annotations

import math

import pytest

from truethroat import Client, InvalidInput, NotFound, Quantity


def test_fillet_size_from_a_load(client: Client) -> None:
    """A fillet is sized in inches and rounded up to the sixteenth; the answer carries its provenance and working."""
    answer = client.fillet_size(
        rule_set="aisc-360-22-lrfd",
        basis="load",
        joint={"kind": "lap", "sides": 2},
        parts=[{"thickness": "1/2 in", "material": "A36"}, {"thickness": "1/2 in", "material": "A36"}],
        filler="E70",
        load={"force": "60 kip", "length": "6 in", "angle": "0 deg"},
        units="us",
        working=True,
        mark="plate 7",
    )
    # AISC 360-22 J2.4: 0.75 x 0.60 x 70 ksi on 0.7071 of the leg; 60 kip on 12 in.
    assert answer.required.leg.value == pytest.approx(60 / 12 / (0.75 * 0.60 * 70 * math.sqrt(0.5)), rel=1e-6)
    assert answer.specify is not None
    assert answer.specify.leg == Quantity(0.25, "in")
    assert str(answer.specify.leg) == "1/4 in"
    assert (answer.verdict, answer.governs, answer.mark) == ("enough", "load", "plate 7")
    assert answer.provenance.rule_set == "aisc-360-22-lrfd"
    assert answer.working
    assert "estimate-for-planning" in {caution.code for caution in answer.cautions}


def test_grind_allowance_of_a_square_closed_corner(client: Client) -> None:
    """Ground flush, a closed corner with square edges keeps its penetration."""
    answer = client.grind_allowance(
        seam={"kind": "closed-corner", "thickness": ["6 mm", "6 mm"]},
        penetration={"depth": "1.5 mm", "vouched": "measured"},
        face_height="3 mm",
        required_throat="4 mm",
        finish={"to": "flush"},
    )
    # common practice, no source
    assert answer.budget.remaining == Quantity(1.5, "mm")
    assert answer.budget.as_welded == Quantity(4.5, "mm")
    assert answer.verdict == "short-when-finished"
    assert answer.physical.remaining == Quantity(1.5, "mm")


def test_bevel_depth_with_what_the_root_loses(client: Client) -> None:
    """A 45 deg bevel made with stick is cut 1/8 in deeper than the throat."""
    answer = client.bevel_depth(
        seam={"kind": "closed-corner", "thickness": ["1/2 in", "1/2 in"]},
        required_throat="1/4 in",
        rule_set="aisc-360-22-lrfd",
        process="111",
        position="PA",
        units="us",
    )
    # AISC 360-22 Table J2.1, SMAW, 45 deg bevel
    assert answer.deduction == Quantity(0.125, "in")
    assert answer.depth == Quantity(0.375, "in")
    assert answer.land == Quantity(0.125, "in")


def test_an_answer_can_be_sent_back(client: Client) -> None:
    """A depth from one answer goes unchanged into the next request, which finds the throat kept."""
    seam = {"kind": "closed-corner", "thickness": ["12 mm", "12 mm"]}
    rules = {"rule_set": "aisc-360-22-lrfd", "process": "SMAW", "position": "1G"}
    cut = client.bevel_depth(seam=seam, required_throat="6 mm", finish={"to": "flush"}, **rules)  # type: ignore[arg-type]
    assert cut.depth is not None
    kept = client.grind_allowance(
        seam=seam,
        required_throat="6 mm",
        finish={"to": "flush"},
        preparation={"depth": cut.depth},
        **rules,  # type: ignore[arg-type]
    )
    assert kept.verdict == "enough"
    assert kept.verdict == "enough"


def test_any_operation_by_its_path(client: Client) -> None:
    """What has no method of its own can still be called, and gives the plain answer."""
    answer = client.call(
        "/v1/fillet-size",
        {
            "rule_set": "thin-part",
            "basis": "thin-part",
            "joint": {"kind": "tee"},
            "parts": [{"thickness": "5 mm"}, {"thickness": "3 mm"}],
        },
    )
    # common practice, no source: from one side, a leg of the thinner part
    assert answer["specify"]["leg"] == {"value": 3.0, "unit": "mm", "text": "3 mm"}


def test_the_catalogue(client: Client) -> None:
    """The service says what it is and lists rule sets, materials, filler metals and processes, each with its source."""
    service = client.check_version()
    assert service.service == "truethroat"
    rule_sets = client.list_rule_sets().rule_sets
    assert [entry.id for entry in rule_sets] == [entry.id for entry in service.rule_sets]
    assert all(entry.editions and entry.limits for entry in rule_sets)
    materials = {entry.id: entry for entry in client.list_materials().materials}
    assert {"A36", "S355"} <= materials.keys()
    fillers = {entry.id: entry for entry in client.list_filler_metals().filler_metals}
    assert "E70" in fillers
    processes = {entry.id: entry for entry in client.list_processes().processes}
    assert {"SMAW", "GMAW", "SAW"} <= processes.keys()
    assert all(entry.source for entry in materials.values())
    assert all(entry.source for entry in fillers.values())
    assert all(entry.source for entry in processes.values())


def test_alive_and_ready(client: Client) -> None:
    """Both health checks are passed."""
    assert client.alive()
    assert client.ready()


def test_faults_of_form_come_all_at_once(client: Client) -> None:
    """A request with several faults is refused with a pointer to each and the id the service knows it by."""
    with pytest.raises(InvalidInput) as caught:
        client.bevel_depth(
            seam={"kind": "butt", "thickness": ["8", "8 furlong"]},
            required_throat="5 mm",
            groove="round",  # type: ignore[arg-type]
            process="x",
        )
    error = caught.value
    assert error.status == 422
    assert {fault.pointer for fault in error.errors} == {
        "#/seam/thickness/0",
        "#/seam/thickness/1",
        "#/groove",
        "#/process",
    }
    assert all(fault.detail and fault.code for fault in error.errors)
    assert error.request_id
    assert error.problem is not None
    assert error.problem["request_id"] == error.request_id
    assert error.request_id in str(error)


def test_what_the_rules_do_not_cover_is_refused(client: Client) -> None:
    """A sound request that leaves a clause's scope names the field and the clause."""
    with pytest.raises(InvalidInput) as caught:
        client.fillet_size(
            rule_set="en-1993-1-8-2005-directional",
            basis="full-strength",
            joint={"kind": "tee", "sides": 2},
            parts=[{"thickness": "3 mm", "material": "S235"}, {"thickness": "8 mm", "material": "S235"}],
        )
    (fault,) = caught.value.errors
    assert (fault.pointer, fault.code) == ("#/parts/0/thickness", "out-of-scope")
    assert "EN 1993-1-8:2005, 4.1" in fault.detail  # 4.1(1): from 4 mm


def test_no_such_operation(client: Client) -> None:
    """A path that is not there is an error of its own."""
    with pytest.raises(NotFound):
        client.call("/v1/no-such-thing", {})


def test_as_welded_fillet_and_butt(client: Client) -> None:
    """A 1/4 in fillet of 3/16 in over a tenth of its length is accepted (AWS D1.1 8.1(6)); a 3 mm cap 8 wide is not.

    ISO 5817 level B allows 1 + 0.1 x 8 = 1.8 mm of cap (EN ISO 5817:2007, No. 1.9).
    """
    fillet = client.as_welded(
        legs=["3/16 in", "3/16 in"],
        thickness=["1/2 in", "1/2 in"],
        required={"leg": "1/4 in"},
        extent={"of_weld": "10 in", "throat": "1 in"},
        quality="aws-d1-1-2020",
        units="us",
    )
    assert fillet.verdict == "enough"
    assert fillet.size == Quantity(3 / 16, "in")
    butt = client.as_welded(
        kind="butt",
        thickness=["10 mm", "10 mm"],
        required={"penetration": "full"},
        face_width="8 mm",
        reinforcement="3 mm",
        quality="iso-5817-b",
    )
    (cap,) = [limit for limit in butt.limits if limit.name == "reinforcement"]
    assert (butt.verdict, cap.allowed) == ("over", Quantity(1.8, "mm"))
    assert (butt.throat.effective, butt.size) == (Quantity(10, "mm"), None)
    assert {found.id for found in client.list_rule_sets().quality_sets} >= {"iso-5817-b", "aws-d1-1-2020"}
