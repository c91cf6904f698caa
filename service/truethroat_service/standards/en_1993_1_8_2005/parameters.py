"""Partial factors that a country may set; a request may override them, nothing else does."""

GAMMA_M2 = 1.25
"""Recommended partial factor for the resistance of welds, clause 2.2."""
