"""What a type checker says of a program that uses the client: nothing, or each mistake at its own line."""

from __future__ import annotations

import re
import subprocess
import sys
from pathlib import Path

import pytest

SDK = Path(__file__).parents[2] / "sdk"
HEAD = """\
from truethroat import Client, FilletSizeRequest, MaterialPart, NotFound, Quantity

shop = Client("http://127.0.0.1:8000")
thick: MaterialPart = {"thickness": Quantity(12, "mm"), "material": "S355"}
thin: MaterialPart = {"thickness": {"value": 10, "unit": "mm"}, "material": "S355"}
request: FilletSizeRequest = {
    "rule_set": "en-1993-1-8-2005-directional",
    "basis": "load",
    "joint": {"kind": "tee", "sides": 2},
    "parts": [thick, thin],
    "load": {"force": "240 kN", "length": "200 mm", "angle": "90 deg"},
}
"""
#: Calls without a mistake: every kind of request, quantities in every form, what answers hold.
SOUND = """\
answer = shop.fillet_size(**request, timeout=5)
throat: Quantity = answer.required.throat
specify = answer.specify
leg: Quantity | None = specify.leg if specify is not None else None
sure: bool = answer.verdict == "enough"
words: tuple[str, ...] = answer.reasons + tuple(caution.text for caution in answer.cautions)
rules: str | None = answer.provenance.rule_set
steps: list[str] = [step.with_["a"].unit for step in answer.working or ()]
shop.bevel_depth(seam={"kind": "butt", "thickness": ["8 mm", throat]}, required_throat="5 mm", finish={"to": "flush"})
shop.grind_allowance(
    seam={"kind": "closed-corner", "thickness": ("6 mm", "6 mm")}, penetration={"depth": "1 mm", "vouched": "proven"},
    face_height=Quantity(3, "mm"), required_throat=throat, finish={"to": "radius", "radius": "5 mm"},
)
shop.as_welded(legs=["6 mm", "6 mm"], thickness=["9 mm", "9 mm"], required={"leg": "6 mm"}, quality="iso-5817-b")
shop.as_welded(kind="butt", thickness=["9 mm", "9 mm"], required={"penetration": "full"}, quality="iso-5817-c")
shop.heat(process="GMAW", arc={"current": "260 A", "voltage": "28 V", "travel_speed": "40 cm/min"})
shop.joint_plan(
    rule_set="thin-part", joint={"kind": "tee"}, parts=[{"thickness": "5 mm"}, {"thickness": "3 mm"}],
    length="500 mm", basis="throat", required_throat="3 mm", process="135", position="PB", weights={"time": 2},
)
print([material.bands[0].yield_strength for material in shop.list_materials().materials])
"""
#: What stands for `SIZE` and `CUT` in the lines below: all that a fillet's size, or a bevel's depth, needs.
NEEDED = {
    "SIZE": 'rule_set="thin-part", basis="thin-part", joint={"kind": "tee"}, parts=[thick, thin]',
    "CUT": 'seam={"kind": "butt", "thickness": ["8 mm", "8 mm"]}, required_throat="5 mm"',
}
#: One mistake a line, and some of what is said of it.
MISTAKES = {
    # in what is asked
    'shop.fillet_size(SIZE, leg_tolerence="1 mm")': 'did you mean "leg_tolerance"',
    'shop.fillet_size(SIZE, working="yes")': 'Argument "working"',
    "shop.fillet_size(SIZE, leg_tolerance=1)": 'Argument "leg_tolerance"',
    'shop.fillet_size(SIZE, timeout="5 s")': 'Argument "timeout"',
    'shop.fillet_size(SIZE, filler="E71")': 'Argument "filler"',
    'shop.fillet_size(SIZE, penetration={"depth": "1 mm", "vouched": "hoped"})': '"vouched"',
    'shop.fillet_size(SIZE, penetration={"depth": {"value": 1, "units": "mm"}, "vouched": "proven"})': 'item "depth"',
    'shop.fillet_size(SIZE, load={"force": "1 kN", "length": "1 m", "angel": "0 deg"})': 'Argument "load"',
    'shop.fillet_size(rule_set="thin-part", joint={"kind": "tee"}, parts=[thick])': 'Missing named argument "basis"',
    'shop.fillet_size(rule_set="en-1993", basis="load", joint={"kind": "tee"}, parts=[thick])': 'Argument "rule_set"',
    'shop.fillet_size(rule_set="thin-part", basis="load", joint={"knid": "tee"}, parts=[thick])': '"knid"',
    'shop.fillet_size(rule_set="thin-part", basis="load", joint={"kind": "tee", "sides": 3}, parts=[thick])': '"sides"',
    'shop.fillet_size(rule_set="thin-part", basis="load", joint={"kind": "tee"}, parts=thick)': 'Argument "parts"',
    'shop.bevel_depth(seam={"kind": "but", "thickness": ["8 mm", "8 mm"]}, required_throat="5 mm")': "TypedDict",
    'shop.bevel_depth(seam={"kind": "butt", "thicknes": ["8 mm", "8 mm"]}, required_throat="5 mm")': 'Argument "seam"',
    'shop.bevel_depth(seam={"kind": "butt"}, required_throat="5 mm")': 'Argument "seam"',
    'shop.bevel_depth(seam={"kind": "butt", "thickness": "8 mm"}, required_throat="5 mm")': 'Argument "seam"',
    'shop.bevel_depth(seam={"kind": "butt", "thickness": ("8 mm",)}, required_throat="5 mm")': 'Argument "seam"',
    'shop.bevel_depth(seam={"kind": "butt", "thickness": [8, 8]}, required_throat="5 mm")': "seam",
    'shop.bevel_depth(CUT, finish={"to": "radius", "radius": 5})': 'item "radius"',
    'shop.as_welded(kind="butt", thickness=["9 mm", "9 mm"], required={"leg": "6 mm"}, quality="iso-5817-b")': "No ",
    'shop.as_welded(thickness=["9 mm", "9 mm"], required={"leg": "6 mm"}, quality="iso-5817-b")': "overload",
    'shop.filler_quantity(welds=[{"length": "1 m", "shape": {"kind": "fillet", "legs": ["6 mm"], "leg": 1}}])': "shape",
    "shop.fillet_size(request)": "Too many positional arguments",
    "shop.filet_size(**request)": 'has no attribute "filet_size"',
    # in what is done with the answer
    "shop.fillet_size(SIZE).verdikt": 'maybe "verdict"',
    'shop.fillet_size(SIZE).verdict == "enuogh"': "Non-overlapping equality check",
    "shop.fillet_size(SIZE).specify.leg": '"None"',
    "shop.fillet_size(SIZE).required.leg + 1": "Unsupported operand types",
    "shop.fillet_size(SIZE).cautions[0].txt": 'has no attribute "txt"',
    'shop.fillet_size(SIZE).mark = "A1"': "read-only",
    "shop.list_materials().materials[0].yield_strength": 'has no attribute "yield_strength"',
}


def line_of(mistake: str) -> str:
    """Say where a mistake stands."""
    return f"mistaken.py:{HEAD.count(chr(10)) + 1 + list(MISTAKES).index(mistake)}"


@pytest.fixture(scope="module")
def checked(tmp_path_factory: pytest.TempPathFactory) -> dict[str, str]:
    """Run the type checker once, over the sound program and the one with the mistakes; give what it says by line."""
    folder = tmp_path_factory.mktemp("programs")
    (folder / "sound.py").write_text(HEAD + SOUND, encoding="utf-8")
    mistaken = "\n".join(re.sub("SIZE|CUT", lambda word: NEEDED[word[0]], mistake) for mistake in MISTAKES)
    (folder / "mistaken.py").write_text(f"{HEAD}{mistaken}\n", encoding="utf-8")
    (folder / "mypy.ini").write_text(f"[mypy]\nmypy_path = {SDK}\nstrict = True\n", encoding="utf-8")
    command = [sys.executable, "-m", "mypy", "--python-version", "3.11", "sound.py", "mistaken.py"]
    run = subprocess.run(command, cwd=folder, capture_output=True, text=True, timeout=300, check=False)
    assert run.stderr == ""
    errors: dict[str, str] = {}
    for place, text in re.findall(r"^(\S+\.py:\d+): error: (.*)$", run.stdout, re.MULTILINE):
        errors[place] = f"{errors.get(place, '')}{text}\n"
    return errors


def test_a_sound_program_is_sound(checked: dict[str, str]) -> None:
    """Requests and answers used as the document says give no error."""
    assert [f"{place}: {text}" for place, text in checked.items() if not place.startswith("mistaken")] == []


@pytest.mark.parametrize("mistake", MISTAKES)
def test_a_mistake_is_caught(checked: dict[str, str], mistake: str) -> None:
    """A field that is misspelt, missing or of the wrong type, nested ones too, is an error before the program runs."""
    assert MISTAKES[mistake] in checked.get(line_of(mistake), "")


def test_nothing_but_the_mistakes_is_found(checked: dict[str, str]) -> None:
    """There are twenty mistakes at least, and what stands before them has none."""
    assert len(MISTAKES) >= 20
    assert {place for place in checked if place.startswith("mistaken")} == set(map(line_of, MISTAKES))
