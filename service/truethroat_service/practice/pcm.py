"""Parameter Pcm of low-carbon steels."""

from ..engine.formula import Arg, Source, formula
from ..engine.numeric import Real

PCM = Source("Y. Ito and K. Bessyo", "parameter Pcm", "from memory")
SHARE, SMALL = Arg("", 0, 2), Arg("", 0, 0.01)


@formula(
    "Pcm",
    "C + Si/30 + (Mn + Cu + Cr)/20 + Ni/60 + Mo/15 + V/10 + 5*B",
    unit="",
    source=PCM,
    args={
        "C": SHARE,
        "Si": SHARE,
        "Mn": SHARE,
        "Cu": SHARE,
        "Cr": SHARE,
        "Ni": SHARE,
        "Mo": SHARE,
        "V": SHARE,
        "B": SMALL,
    },
)
def parameter(C: Real, Si: Real, Mn: Real, Cu: Real, Cr: Real, Ni: Real, Mo: Real, V: Real, B: Real) -> Real:
    """Parameter Pcm, of shares in weight %."""
    return C + Si / 30.0 + (Mn + Cu + Cr) / 20.0 + Ni / 60.0 + Mo / 15.0 + V / 10.0 + 5.0 * B
