"""Test pieces: least thickness, notches and temperature."""

from . import clause

PIECES = clause("test pieces and notches")

LEAST_THICKNESS = 2.0
"""Thinnest part tested, mm."""

DEEPEST_SIDE_NOTCH = 20.0
"""Deepest notch in each side, mm."""

SECTION_LEFT = 0.8
"""Share of the weld's section that a notch along its face must leave."""

TEMPERATURE = 23.0
"""Room temperature of the test, degC."""
