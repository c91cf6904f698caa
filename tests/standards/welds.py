"""Welds and their loads as the checks state them, turned into what the rules take, by plain trigonometry."""

from math import cos, hypot, radians, sin

from truethroat_service.engine.rule_set import WeldLoad

INCH = 25.4
KIP_PER_INCH = 4448.2216152605 / 25.4
KSI = 4448.2216152605 / 25.4**2


def pull(force: float, theta: float = 90.0, psi: float = 90.0) -> WeldLoad:
    """Load on one weld: a force per length in the plane of part 2, at ``theta`` deg from the weld's axis.

    Part 2 stands at ``psi`` deg on part 1, measured on the weld's side.
    """
    along, across = force * cos(radians(theta)), force * sin(radians(theta))
    return WeldLoad(
        normal=across * sin(radians(psi)),
        transverse=across * cos(radians(psi)),
        longitudinal=along,
        across=abs(across),
        resultant=abs(force),
        theta=radians(theta),
        psi=radians(psi),
    )


def parts_of(normal: float, transverse: float, longitudinal: float, psi: float = 90.0) -> WeldLoad:
    """Load on one weld by its components per length."""
    across = hypot(normal, transverse)
    return WeldLoad(
        normal=normal,
        transverse=transverse,
        longitudinal=longitudinal,
        across=across,
        resultant=hypot(across, longitudinal),
        theta=radians(90.0) if longitudinal == 0.0 else 0.0,
        psi=radians(psi),
    )
