"""Clause 5.1: recommended partial factors; a request may override them, nothing else does."""

GAMMA_M0 = 1.1
"""Resistance of cross-sections."""

GAMMA_M2 = 1.25
"""Resistance of welds."""
