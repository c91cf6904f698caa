"""Structural Steel Designer's Handbook, Tables 5.4 and 5.6, after AISC: least throat of grooves, least fillet."""

from fractions import Fraction

import pytest
from tests.published.conftest import Ask
from tests.published.fillets import FILLET_SIZE, LRFD, aisc_fillet, leg, steel

BELOW = "below-minimum-throat"


def _caution(ask: Ask, thinner: str, throat: Fraction) -> list[str]:
    """What a groove of a throat is told about its least throat, on a joint of a thickness."""
    answer = ask(
        "/v1/bevel-depth",
        {
            "seam": {"kind": "butt", "thickness": ["8 in", thinner]},
            "required_throat": f"{throat} in",
            "finish": {"to": "flush"},
            "rule_set": LRFD,
            "process": "GMAW",
            "position": "1G",
            "minimum_land": "0 mm",
            "units": "us",
        },
    )
    return [caution["text"] for caution in answer["cautions"] if caution["code"] == BELOW]


@pytest.mark.parametrize(
    ("thinner", "least"),
    [
        ("3/16 in", "1/8"),
        ("1/4 in", "1/8"),
        ("3/8 in", "3/16"),
        ("1/2 in", "3/16"),
        ("3/4 in", "1/4"),
        ("1 1/2 in", "5/16"),
        ("2 1/4 in", "3/8"),
        ("6 in", "1/2"),
        ("7 in", "5/8"),
    ],
)
def test_least_throat_of_partial_penetration(ask: Ask, thinner: str, least: str) -> None:
    """Table 5.4, p. 5.41: by the thinner part; a sixty-fourth less is cautioned, naming the least throat."""
    assert _caution(ask, thinner, Fraction(least)) == []
    [text] = _caution(ask, thinner, Fraction(least) - Fraction(1, 64))
    assert f" {least} in " in text


@pytest.mark.parametrize(
    ("thinner", "least"), [("1/4 in", 1 / 8), ("1/2 in", 3 / 16), ("3/4 in", 1 / 4), ("7/8 in", 5 / 16)]
)
def test_least_fillet(ask: Ask, thinner: str, least: float) -> None:
    """Table 5.6, p. 5.42: least single-pass fillet by the thinner part."""
    answer = ask(FILLET_SIZE, aisc_fillet(LRFD, "1/16 in", length="10 in", parts=(steel("1 in"), steel(thinner))))
    assert leg(answer, "minimum") == pytest.approx(least)
