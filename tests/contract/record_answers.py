"""Record what the service answers, or compare it with a record, byte for byte.

For a change of structure that must change no answer: ``python tests/contract/record_answers.py RECORD`` before it, and
the same with ``--compare`` after it, which prints what differs and fails when anything does. Every published example
and every sound request of the tests is asked in both systems of units, with its working and without, and once more with
each of its fields broken.
"""

from __future__ import annotations

import argparse
import gzip
import json
import sys
from collections.abc import Iterator
from pathlib import Path
from typing import Any

sys.path.insert(0, str(Path(__file__).parents[2]))

from tests.api.test_document import EXAMPLES, HOLDING, ODD, _places, _set

from truethroat_service.api import create_app
from truethroat_service.api.settings import Settings


def requests() -> Iterator[tuple[str, Any]]:
    """Give each path and body that is asked."""
    whole = [*(example.values for example in EXAMPLES), *HOLDING]
    for path, body in whole:
        for units in ("metric", "us"):
            for working in (False, True):
                yield path, {**body, "units": units, "working": working}
    for path, body in whole:
        for number, where in enumerate(_places(body)):
            yield path, _set(body, where, ODD[number % len(ODD)])


def answers() -> Iterator[str]:
    """Give a line for each request: what was asked, and the status and the bytes of the answer."""
    client = create_app(Settings()).test_client()
    for path, body in requests():
        response = client.post(path, json=body, headers={"X-Request-Id": "record"})
        yield json.dumps([path, body, response.status_code, response.get_data(as_text=True)]) + "\n"


def main() -> int:
    """Write a record or compare with one; 1 when something differs."""
    parser = argparse.ArgumentParser(description=__doc__)
    parser.add_argument("record", type=Path, help="file to write, or to compare with")
    parser.add_argument("--compare", action="store_true", help="compare and write nothing")
    options = parser.parse_args()
    if not options.compare:
        with gzip.open(options.record, "wt", encoding="utf-8") as record:
            record.writelines(answers())
        return 0
    with gzip.open(options.record, "rt", encoding="utf-8") as record:
        pairs = list(zip(record, answers(), strict=True))
    different = [(before, after) for before, after in pairs if before != after]
    for before, after in different[:5]:
        sys.stdout.write(f"before {before}after  {after}")
    sys.stdout.write(f"{len(pairs)} answers compared, {len(different)} differ\n")
    return bool(different)


if __name__ == "__main__":
    raise SystemExit(main())
