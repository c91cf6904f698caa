"""EN 1993-1-4:2006 and EN 1993-1-12:2007 (from memory): what they change of EN 1993-1-8."""

import numpy as np
import pytest

from truethroat_service.application.joints.rule_sets import rule_set
from truethroat_service.standards.en_1993_1_4_2006 import s5_1_partial_factors, s6_3_welds
from truethroat_service.standards.en_1993_1_12_2007 import s2_8_fillet_welds


def test_stainless_factors() -> None:
    """EN 1993-1-4 5.1 and 6.3: gamma_M0 1.1, gamma_M2 1.25, beta_w 1.0."""
    assert s5_1_partial_factors.GAMMA_M0 == pytest.approx(1.1)
    assert s5_1_partial_factors.GAMMA_M2 == pytest.approx(1.25)
    assert s6_3_welds.CORRELATION.own == pytest.approx(1.0)
    assert str(s6_3_welds.CORRELATION.source) == "EN 1993-1-4:2006, 6.3, from memory"


@pytest.mark.parametrize(
    ("part", "filler", "counts"), [(770.0, 560.0, 560.0), (770.0, 770.0, 770.0), (590.0, 770.0, 590.0)]
)
def test_lesser_strength_counts(part: float, filler: float, counts: float) -> None:
    """EN 1993-1-12 2.8: f_u of the parent metal, or of the filler metal where that is less."""
    assert s2_8_fillet_welds.strength(f_u_part=part, f_u_filler=filler) == counts
    column = s2_8_fillet_welds.strength(f_u_part=np.array([part, 500.0]), f_u_filler=filler)
    assert list(column) == [counts, min(500.0, filler)]


@pytest.mark.parametrize(
    ("name", "words"),
    [
        ("en-1993-1-4-2006-directional", "up to 480 MPa"),
        ("en-1993-1-12-2007-simplified", "over S460, up to S700"),
        ("en-1999-1-1-2007", "Table 8.8"),
    ],
)
def test_scope_is_told_and_marked(name: str, words: str) -> None:
    """The limit of metals is among those listed, marked from memory."""
    [limit] = [limit for limit in rule_set(name).limits if words in limit.text]
    assert limit.source.mark == "from memory"
