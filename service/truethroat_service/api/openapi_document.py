"""The OpenAPI document, written to a file, or compared with one.

``python -m truethroat_service.api.openapi_document openapi/openapi.json`` writes it;
with ``--check`` it changes nothing and fails when the file differs.
"""

import argparse
import json
import sys
from pathlib import Path

from .document import document


def dump() -> str:
    """Document as the committed file holds it."""
    return json.dumps(document(), indent=1, ensure_ascii=False) + "\n"


def main(arguments: list[str] | None = None) -> int:
    """Write or check the file; 1 when a check finds a difference."""
    parser = argparse.ArgumentParser(prog="openapi_document", description=__doc__)
    parser.add_argument("file", type=Path)
    parser.add_argument("--check", action="store_true", help="fail when the file differs, and leave it as it is")
    options = parser.parse_args(arguments)
    text = dump()
    if not options.check:
        options.file.write_text(text, encoding="utf-8")
        return 0
    if options.file.exists() and options.file.read_text(encoding="utf-8") == text:
        return 0
    sys.stderr.write(f"{options.file} differs from what the code says; run `make openapi` and read the difference\n")
    return 1


if __name__ == "__main__":
    raise SystemExit(main())
