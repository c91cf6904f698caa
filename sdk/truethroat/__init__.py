"""Client for the weld throat service: sizes welds, says how much may be ground off and how deep to bevel.

Each operation of the service is a method of the client:

    from truethroat import Client

    with Client("http://127.0.0.1:8000") as shop:
        answer = shop.bevel_depth(seam={"kind": "butt", "thickness": ["8 mm", "8 mm"]}, required_throat="5 mm")
        print(answer.depth, answer.verdict)
"""

from importlib import import_module
from typing import TYPE_CHECKING

from truethroat import answer, errors, quantity
from truethroat._generated import MODULES
from truethroat.answer import *
from truethroat.client import Client
from truethroat.decoding import ReadOnly
from truethroat.errors import *
from truethroat.quantity import *
from truethroat.transport import Timeout
from truethroat.version import VERSION

__all__ = ["Client", "ReadOnly", "Timeout", "__version__"]
__all__ += answer.__all__
__all__ += errors.__all__
__all__ += quantity.__all__

__version__ = VERSION

# To make the classes of requests and answers takes as long as all the rest, so they wait until one is asked for.
if TYPE_CHECKING:
    from truethroat._generated import requests, results
    from truethroat._generated.requests import *
    from truethroat._generated.results import *

    __all__ += requests.__all__
    __all__ += results.__all__
else:
    __all__ += list(MODULES)

    def __getattr__(name: str) -> object:
        if name in MODULES:
            return getattr(import_module(f"truethroat._generated.{MODULES[name]}"), name)
        raise AttributeError(f"module {__name__!r} has no attribute {name!r}")
