"""Weld throat: how much weld is enough, how much may be ground away, how deep to bevel.

Layers, each importing only from those to its right:
``api -> application -> (standards, practice) -> (engine, reference)``.
"""

from importlib.metadata import version

SERVICE_VERSION = version("truethroat")
API_VERSION = "1.0"
