"""What there is to ask about, its tags, and that a caller need not fetch it twice."""

from __future__ import annotations

import itertools
import re

import pytest
from tests.api.exchange import Exchange, paths
from tests.api.sound import AISC, EN, FILLET, GAUGED, SIX, changed

import truethroat_service
from truethroat_service.api import create_app
from truethroat_service.api.settings import Settings

CACHED = paths("get")
RULE_SETS = [
    "aisc-360-22-lrfd",
    "aisc-360-22-asd",
    "en-1993-1-8-2005-directional",
    "en-1993-1-8-2005-simplified",
    "en-1993-1-4-2006-directional",
    "en-1993-1-4-2006-simplified",
    "en-1993-1-12-2007-directional",
    "en-1993-1-12-2007-simplified",
    "en-1999-1-1-2007",
    "thin-part",
]
# Recommended by EN 1993-1-8 2.2 and EN 1993-1-1 6.1; from memory: EN 1993-1-4 5.1 and 6.3, EN 1993-1-12 2.8,
# EN 1999-1-1 8.1.1.
PARAMETERS = {
    "en-1993-1-8-": {"gamma_m2": 1.25, "gamma_m0": 1.0},
    "en-1993-1-4-": {"gamma_m2": 1.25, "gamma_m0": 1.1, "beta_w": 1.0},
    "en-1993-1-12-": {"gamma_m2": 1.25, "gamma_m0": 1.0, "beta_w": 1.0},
    "en-1999-1-1-": {"gamma_mw": 1.25},
}


@pytest.mark.parametrize("path", CACHED)
def test_tags_are_strong_and_stable(service: Exchange, path: str) -> None:
    """The tag is strong, the same each time and in another process's app, and goes with an hour of caching."""
    first, again = service.get(path), Exchange(create_app(Settings())).get(path)
    assert re.fullmatch(r'"[0-9a-f]{32}"', first.headers["ETag"])
    assert again.headers["ETag"] == first.headers["ETag"]
    assert first.headers["Cache-Control"] == "public, max-age=3600"
    assert "Accept" in first.headers["Vary"]


def test_tags_differ_between_resources(service: Exchange) -> None:
    """Each resource has a tag of its own."""
    assert len({service.get(path).headers["ETag"] for path in CACHED}) == len(CACHED)


@pytest.mark.parametrize("path", CACHED)
@pytest.mark.parametrize("form", ["{tag}", "W/{tag}", '"other", {tag}', "*"])
def test_a_caller_that_has_it_is_told_so(service: Exchange, path: str, form: str) -> None:
    """If-None-Match with the tag in it gets 304 with the tag and the caching, and no body (RFC 9110 15.4.5)."""
    tag = service.get(path).headers["ETag"]
    response = service.get(path, headers={"If-None-Match": form.format(tag=tag)})
    assert response.status_code == 304
    assert response.headers["ETag"] == tag
    assert response.headers["Cache-Control"] == "public, max-age=3600"
    assert response.get_data() == b""


@pytest.mark.parametrize("path", CACHED)
def test_a_caller_that_has_another_gets_it(service: Exchange, path: str) -> None:
    """If-None-Match with another tag gets the content."""
    response = service.get(path, headers={"If-None-Match": '"0123"'})
    assert response.status_code == 200
    assert response.json


def test_the_service_says_what_it_is(service: Exchange) -> None:
    """Versions, and every rule set by id and title."""
    answer = service.get("/v1").json
    assert answer["service"] == "truethroat"
    assert answer["service_version"] == truethroat_service.SERVICE_VERSION
    assert answer["api_version"] == truethroat_service.API_VERSION
    assert [rules["id"] for rules in answer["rule_sets"]] == RULE_SETS
    assert all(rules["title"] for rules in answer["rule_sets"])


def test_rule_sets_are_listed_with_what_they_rest_on(service: Exchange) -> None:
    """Every rule set has editions, clauses and limits, each limit with its source; Eurocodes alone have parameters."""
    listed = {rules["id"]: rules for rules in service.get("/v1/rule-sets").json["rule_sets"]}
    assert list(listed) == RULE_SETS
    for name, rules in listed.items():
        assert rules["title"]
        assert rules["editions"]
        assert rules["clauses"]
        assert rules["limits"]
        assert all(limit["text"] and limit["source"] for limit in rules["limits"])
        assert rules["parameters"] == next((own for head, own in PARAMETERS.items() if name.startswith(head)), {})


def test_rule_sets_with_strength_say_how_they_read_clauses(service: Exchange) -> None:
    """Every rule set that claims a strength, and every quality set, has readings: full sentences with their source."""
    answer = service.get("/v1/rule-sets").json
    for rules in [*answer["rule_sets"], *answer["quality_sets"]]:
        assert rules["readings"] or rules["id"] == "thin-part"
        for reading in rules["readings"]:
            assert reading["text"][0].isupper()
            assert reading["text"].endswith(".")
            assert reading["source"]
        assert len({reading["text"] for reading in rules["readings"]}) == len(rules["readings"])


def test_a_root_gap_is_read_by_another_standard(service: Exchange) -> None:
    """EN 1993-1-8 and EN 1999-1-1 have no rule for a root gap: their reading cites 7.21.1 of AWS D1.1."""
    for rules in service.get("/v1/rule-sets").json["rule_sets"]:
        borrowed = [
            reading for reading in rules["readings"] if "D1.1" in reading["source"] and "gap" in reading["text"]
        ]
        assert bool(borrowed) is not rules["id"].startswith("aisc")
        assert all("7.21.1" in reading["source"] for reading in borrowed)


def test_quality_sets_are_listed_with_what_they_rest_on(service: Exchange) -> None:
    """Every level and code that requests know is listed, with its editions, clauses and limits with their sources."""
    listed = service.get("/v1/rule-sets").json["quality_sets"]
    assert [found["id"] for found in listed] == ["iso-5817-b", "iso-5817-c", "iso-5817-d", "aws-d1-1-2020"]
    for found in listed:
        assert found["title"]
        assert found["editions"]
        assert found["clauses"]
        assert all(limit["text"] and limit["source"] for limit in found["limits"])
        assert service.answer(GAUGED, changed(SIX, quality=found["id"]))["verdict"]
    assert "Table 1, 5213" in listed[0]["clauses"]
    assert "Table 8.1(6)" in listed[3]["clauses"]


def test_limits_name_what_refusals_name(service: Exchange) -> None:
    """The limit a request is refused by is one of those the catalogue lists for its rule set."""
    listed = {rules["id"]: rules for rules in service.get("/v1/rule-sets").json["rule_sets"]}
    for request in (changed(EN, parts__0__thickness="2 mm"), changed(AISC, parts__0__thickness="2 mm")):
        [(_, _, detail)] = service.faults(FILLET, request)
        assert any(limit["text"] in detail for limit in listed[request["rule_set"]]["limits"])


def test_every_listed_material_and_filler_is_taken(service: Exchange) -> None:
    """Each id in the catalogue is a word that requests know."""
    for material in service.get("/v1/materials").json["materials"]:
        thick = material["bands"][0]["thickness_to"] or {"value": 10.0, "unit": "mm"}
        part = {"thickness": {"value": min(thick["value"], 10.0), "unit": "mm"}, "material": material["id"]}
        response = service.post(FILLET, changed(EN, parts=[part, part], access="both-sides"))
        codes = {fault["code"] for fault in response.json.get("errors", [])}
        assert codes <= {"out-of-scope"}, material["id"]
    for filler in service.get("/v1/filler-metals").json["filler_metals"]:
        response = service.post(FILLET, changed(AISC, filler=filler["id"]))
        assert {fault["code"] for fault in response.json.get("errors", [])} <= {"out-of-scope"}, filler["id"]


def test_materials_have_bands_that_follow_on_one_another(service: Exchange) -> None:
    """A material's bands run upwards without a gap, in millimetres and megapascals, and say where they are from."""
    for material in service.get("/v1/materials").json["materials"]:
        bands = material["bands"]
        for lower, higher in itertools.pairwise(bands):
            assert lower["thickness_to"] == higher["thickness_over"]
        for band in bands:
            assert band["thickness_over"]["unit"] == "mm"
            assert band["yield_strength"]["unit"] == band["tensile_strength"]["unit"] == "MPa"
            assert band["yield_strength"]["value"] <= band["tensile_strength"]["value"]
        assert material["source"]


def test_some_listed_figures_are_those_of_their_standards(service: Exchange) -> None:
    """S355 up to 40 mm: 355 and 490 MPa (EN 1993-1-1 Table 3.1 with AC:2009), beta_w 0.9 (EN 1993-1-8 Table 4.1)."""
    listed = {material["id"]: material for material in service.get("/v1/materials").json["materials"]}
    band = listed["S355"]["bands"][0]
    assert (band["yield_strength"]["value"], band["tensile_strength"]["value"]) == (355.0, 490.0)
    assert listed["S355"]["beta_w"] == 0.9
    fillers = {filler["id"]: filler for filler in service.get("/v1/filler-metals").json["filler_metals"]}
    # 70 ksi by its name; a ksi is 6.894757 MPa (NIST SP 811).
    assert fillers["E70"]["tensile_strength"]["value"] == pytest.approx(70 * 6.894757, rel=1e-6)


def test_processes_and_positions_come_in_both_codings(service: Exchange) -> None:
    """AWS letters and ISO 4063 numbers, AWS A3.0 and ISO 6947 positions, each with its counterparts (from memory)."""
    answer = service.get("/v1/processes").json
    processes = {process["id"]: process["iso_4063"] for process in answer["processes"]}
    assert "111" in processes["SMAW"]
    assert "135" in processes["GMAW"]
    assert "136" in processes["FCAW-G"]
    assert "141" in processes["GTAW"]
    positions = {position["id"]: position for position in answer["positions"]}
    assert positions["2F"]["equivalents"] == ["PB"]
    assert positions["PB"]["equivalents"] == ["2F"]
    assert positions["1G"]["orientation"] == positions["PA"]["orientation"] == "flat"


@pytest.mark.parametrize(("aws", "iso"), [("SMAW", "111"), ("GMAW", "135"), ("FCAW-G", "136"), ("SAW", "121")])
def test_either_coding_gets_the_same_answer(service: Exchange, aws: str, iso: str) -> None:
    """A process by its letters or its number, a position by either code: the same size and passes."""
    by_aws = service.answer(FILLET, changed(EN, process=aws, position="2F"))
    by_iso = service.answer(FILLET, changed(EN, process=iso, position="PB"))
    assert by_aws["specify"] == by_iso["specify"]


def test_every_listed_code_is_taken(service: Exchange) -> None:
    """Each process and position code in the catalogue is a word that requests know."""
    answer = service.get("/v1/processes").json
    for process in answer["processes"]:
        for code in (process["id"], *process["iso_4063"]):
            assert service.answer(FILLET, changed(EN, process=code, position="PB"))
    for position in answer["positions"]:
        for code in (position["id"], *position["equivalents"]):
            assert service.answer(FILLET, changed(EN, process="GMAW", position=code))


def test_preparations_have_their_limits(service: Exchange) -> None:
    """A single V from one side: 3 to 10 mm, 40 to 60 deg included (ISO 9692-1 reference 1.3, from memory)."""
    listed = {entry["id"]: entry for entry in service.get("/v1/preparations").get_json()["preparations"]}
    v = listed["iso-1.3"]
    assert (v["thickness"]["least"]["value"], v["thickness"]["most"]["value"]) == (3.0, 10.0)
    assert (v["angle"]["least"]["text"], v["angle"]["most"]["text"]) == ("40 deg", "60 deg")
    assert (v["gap"]["most"]["value"], v["land"]["most"]["value"]) == (4.0, 2.0)
    assert v["source"].endswith("from memory")
    square = listed["iso-1.2"]
    assert (square["gap"], square["gap_share_of_thickness"], square["angle"], square["land"]) == (None, 1.0, None, None)
    assert all(entry["source"] for entry in listed.values())
