"""Numbers without HTTP and without unit names: millimetre, newton, megapascal, radian throughout."""

ENGINE_VERSION = "1"
"""Raised whenever an answer to an unchanged request may change."""
