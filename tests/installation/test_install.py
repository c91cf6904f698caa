"""What the Makefile installs when newer versions of everything have been published: the locked versions, and they fit.

Its own rules run on its own locks. Instead of an index there is a folder of wheels: of every locked distribution one of
the locked version, with the requirements of the real one but, for speed, none of its code; and one of version 9999.
"""

from __future__ import annotations

import hashlib
import json
import os
import shutil
import subprocess
import sys
import zipfile
from importlib import metadata
from pathlib import Path

from packaging.requirements import Requirement
from packaging.utils import canonicalize_name
from tests.installation.locks import ENTRY, LOCKS, ROOT, applies, pins, text, version

NEWER = "9999"
WITH_CODE = {"setuptools"}
"""What the installation runs: it builds the project."""

WRITTEN_BY_PIP = ("RECORD", "INSTALLER", "REQUESTED")


def wheel(folder: Path, name: str, version: str, files: dict[str, bytes]) -> str:
    """Write a wheel and give its hash."""
    escaped = name.replace("-", "_")
    about = f"{escaped}-{version}.dist-info"
    files = {
        f"{about}/WHEEL": b"Wheel-Version: 1.0\nGenerator: tests\nRoot-Is-Purelib: true\nTag: py3-none-any\n",
        **files,
    }
    path = folder / f"{escaped}-{version}-py3-none-any.whl"
    with zipfile.ZipFile(path, "w") as archive:
        for place, content in files.items():
            archive.writestr(place, content)
        archive.writestr(f"{about}/RECORD", "".join(f"{place},,\n" for place in (*files, f"{about}/RECORD")))
    return hashlib.sha256(path.read_bytes()).hexdigest()


def locked_wheel(folder: Path, pin: Requirement) -> str:
    """Write a wheel of a locked distribution, and one of a newer version, and give the hash of the first."""
    installed = metadata.distribution(pin.name)
    name = pin.name.replace("-", "_")
    newer = f"Metadata-Version: 2.1\nName: {pin.name}\nVersion: {NEWER}\n"
    wheel(folder, pin.name, NEWER, {f"{name}-{NEWER}.dist-info/METADATA": newer.encode()})
    files = {f"{name}-{version(pin)}.dist-info/METADATA": (installed.read_text("METADATA") or "").encode()}
    if pin.name in WITH_CODE:
        own = [file for file in installed.files or () if ".." not in file.parts and file.suffix != ".pyc"]
        files |= {str(file): file.read_binary() for file in own if file.name not in WRITTEN_BY_PIP}
    return wheel(folder, pin.name, version(pin), files)


def test_newer_versions_change_nothing(tmp_path: Path) -> None:
    """Both installations end well, one after the other, and hold exactly the locked versions."""
    project, wheels = tmp_path / "project", tmp_path / "wheels"
    for folder in (project / "service", project / "sdk", wheels):
        folder.mkdir(parents=True)
    for file in ("Makefile", "pyproject.toml", "README.md", "LICENSE"):
        shutil.copy(ROOT / file, project)
    hashes = {str(pin): locked_wheel(wheels, pin) for pin in pins("requirements-test.txt").values()}
    inherited = {name: value for name, value in os.environ.items() if not name.startswith(("PIP_", "MAKE", "MFLAGS"))}
    inherited.pop("PYTHONPATH", None)
    environment = {
        **inherited,
        "PIP_CONFIG_FILE": os.devnull,
        "PIP_NO_INDEX": "1",
        "PIP_FIND_LINKS": str(wheels),
        "PIP_NO_COMPILE": "1",
    }
    for lock, stamp in zip(LOCKS, (".venv/.service", ".venv/.test"), strict=True):
        # The lock itself, but for the hashes, which are of our wheels.
        entries = [(Requirement(entry["pin"]), entry["pin"]) for entry in ENTRY.finditer(text(lock))]
        ours = [f"{line} --hash=sha256:{hashes[str(pin)]}\n" for pin, line in entries if applies(pin)]
        (project / lock).write_text("".join(ours))
        made = subprocess.run(
            ["make", f"PYTHON={sys.executable}", stamp],
            cwd=project,
            env=environment,
            capture_output=True,
            text=True,
            timeout=300,
            check=False,
        )
        assert made.returncode == 0, made.stdout + made.stderr
        listed = subprocess.run(
            [".venv/bin/python", "-m", "pip", "--disable-pip-version-check", "list", "--format=json"],
            cwd=project,
            env=environment,
            capture_output=True,
            check=True,
            timeout=60,
        )
        found = {canonicalize_name(each["name"]): each["version"] for each in json.loads(listed.stdout)}
        beside = {name: found.pop(name) for name in ("pip", "truethroat")}
        assert NEWER not in beside.values()
        assert found == {name: version(pin) for name, pin in pins(lock).items()}
