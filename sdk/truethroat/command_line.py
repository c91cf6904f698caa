"""Post a request from a file and print the answer: `python -m truethroat fillet-size request.json`."""

from __future__ import annotations

import argparse
import json
import os
import re
import sys
from collections.abc import Sequence
from typing import Any

from truethroat.client import Client
from truethroat.errors import InvalidInput, TruethroatError
from truethroat.version import VERSION

__all__ = ["main"]

#: Exit codes.
ANSWERED, REFUSED, TROUBLE = 0, 1, 2


def main(arguments: Sequence[str] | None = None) -> int:
    """Run the command line; give the exit code: 0 answered, 1 request refused, 2 usage or connection trouble."""
    options = _parser().parse_args(arguments)
    try:
        body = _read(options.request)
        with Client(
            options.url, os.environ.get("TRUETHROAT_TOKEN") or None, timeout=(3.05, options.timeout), app="command-line"
        ) as client:
            answer = client.call(f"/v1/{options.operation}", body)
    except InvalidInput as error:
        _complain(*(error.errors or [error]))
        return REFUSED
    except (TruethroatError, OSError, ValueError) as error:
        _complain(error)
        return TROUBLE
    sys.stdout.write(json.dumps(answer, indent=2, ensure_ascii=False) + "\n")
    return ANSWERED


def _parser() -> argparse.ArgumentParser:
    parser = argparse.ArgumentParser(
        prog="python -m truethroat",
        description="Post a request to the weld throat service and print its answer as JSON.",
        epilog="A token is taken from the environment variable TRUETHROAT_TOKEN. "
        "Exit code: 0 answered, 1 request refused (its faults on standard error), 2 usage or connection trouble.",
    )
    parser.add_argument("operation", type=_operation, help='what to calculate, such as "fillet-size"')
    parser.add_argument("request", help='file with the request as JSON, "-" for standard input')
    parser.add_argument("--url", default="http://127.0.0.1:8000", help="address of the service (default: %(default)s)")
    parser.add_argument(
        "--timeout", type=float, default=30, help="seconds to wait for an answer (default: %(default)s)"
    )
    parser.add_argument("--version", action="version", version=VERSION)
    return parser


def _operation(word: str) -> str:
    """Take a word that can stand in an address; which operations there are is for the service to say."""
    if not re.fullmatch(r"[a-z0-9]+(-[a-z0-9]+)*", word):
        raise argparse.ArgumentTypeError(f"{word!r} is no operation")
    return word


def _read(name: str) -> dict[str, Any]:
    if name == "-":
        text = sys.stdin.read()
    else:
        with open(name, encoding="utf-8") as file:
            text = file.read()
    try:
        body = json.loads(text)
    except ValueError as error:
        raise ValueError(f"{name}: not JSON: {error}") from error
    if not isinstance(body, dict):
        raise ValueError(f"{name}: a request is a JSON object")
    return body


def _complain(*faults: object) -> None:
    for fault in faults:
        sys.stderr.write(f"{fault}\n")
