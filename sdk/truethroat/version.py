"""The installed version of this package and the version of the API it speaks."""

from importlib.metadata import PackageNotFoundError, version

__all__ = ["API_MAJOR", "VERSION"]

#: The `1` of `/v1`: what the client's methods and results are written for.
API_MAJOR = 1

try:
    VERSION = version("truethroat")
except PackageNotFoundError:  # run from a source tree that was never installed
    VERSION = "unknown"
