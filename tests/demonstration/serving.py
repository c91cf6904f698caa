"""The service under gunicorn on a free port of this machine, for as long as a `with` block runs."""

from __future__ import annotations

import http.client
import os
import signal
import socket
import subprocess
import sys
import tempfile
import threading
import time
from collections.abc import Iterator
from contextlib import contextmanager
from dataclasses import dataclass
from pathlib import Path
from typing import IO

ROOT = Path(__file__).resolve().parents[2]
CONFIGURATION = ROOT / "docker" / "gunicorn.conf.py"
APPLICATION = "truethroat_service.api:create_app()"

#: Seconds that a start and a stop may take; running requests have their own, shorter, limit in the configuration.
START_WITHIN, STOP_WITHIN = 30.0, 28.0


class NotStarted(RuntimeError):
    """The service did not get ready; the text holds its log."""


@dataclass(frozen=True)
class Serving:
    """A service that answers: where, and its process, whose log `log` reads."""

    port: int
    process: subprocess.Popen[bytes]
    output: IO[bytes]

    @property
    def url(self) -> str:
        """Address that a client takes."""
        return f"http://127.0.0.1:{self.port}"

    def log(self) -> str:
        """Everything the service has printed so far."""
        size = os.fstat(self.output.fileno()).st_size
        # Read by position: the service writes through the same open file, whose place must not be moved.
        return os.pread(self.output.fileno(), size, 0).decode(errors="replace")


@contextmanager
def service(
    application: str = APPLICATION, *, folder: Path = ROOT, environment: dict[str, str] | None = None
) -> Iterator[Serving]:
    """Start gunicorn, wait until it is ready, and stop it however the block ends; raises NotStarted.

    `folder` is where the application is found when it is not installed; `environment` adds to the process's own, from
    which settings of another service are taken out.
    """
    inherited = {
        name: value
        for name, value in os.environ.items()
        if not name.startswith("TRUETHROAT_SERVICE_") and name not in ("BIND", "PORT", "GUNICORN_CMD_ARGS")
    }
    process = None
    with tempfile.TemporaryFile() as output:
        try:
            # The socket is bound here and handed over, so that no other program can take the port in between.
            with socket.create_server(("127.0.0.1", 0)) as listener, _signals_wait():
                port = listener.getsockname()[1]
                process = subprocess.Popen(
                    [
                        *(sys.executable, "-m", "gunicorn", "-c", str(CONFIGURATION)),
                        *("--bind", f"fd://{listener.fileno()}", "--chdir", str(folder), application),
                    ],
                    env={**inherited, **(environment or {})},
                    stdin=subprocess.DEVNULL,
                    stdout=output,
                    stderr=subprocess.STDOUT,
                    pass_fds=[listener.fileno()],
                    # Ctrl-C in a terminal goes to a whole group of processes: this one is stopped by us, in order.
                    start_new_session=True,
                )
            serving = Serving(port, process, output)
            _wait_until_ready(serving)
            yield serving
        finally:
            if process is not None:
                with _signals_wait():
                    _stop(process)


def _wait_until_ready(serving: Serving) -> None:
    """Ask until the service says that it is ready."""
    latest = time.monotonic() + START_WITHIN
    said = "no answer"
    while time.monotonic() < latest:
        if serving.process.poll() is not None:
            raise NotStarted(
                f"the service ended at once, with exit code {serving.process.returncode}:\n{serving.log()}"
            )
        ready, said = _readiness(serving.port)
        if ready:
            return
        time.sleep(0.05)
    raise NotStarted(f"the service was not ready within {START_WITHIN:.0f} s ({said}):\n{serving.log()}")


def _readiness(port: int) -> tuple[bool, str]:
    """Say whether the readiness check is answered with 200, and what it answered."""
    # Without a proxy: http.client takes none from the environment.
    connection = http.client.HTTPConnection("127.0.0.1", port, timeout=5.0)
    try:
        connection.request("GET", "/readyz")
        response = connection.getresponse()
        return response.status == 200, f"/readyz: {response.status} {response.read().decode(errors='replace').strip()}"
    except (OSError, http.client.HTTPException) as error:
        return False, f"no answer: {error}"
    finally:
        connection.close()


def _stop(process: subprocess.Popen[bytes]) -> None:
    """Stop gunicorn, letting running requests end; if it does not, end it and its workers."""
    process.terminate()
    try:
        process.wait(STOP_WITHIN)
    except subprocess.TimeoutExpired:
        os.killpg(process.pid, signal.SIGKILL)
        process.wait()


@contextmanager
def _signals_wait() -> Iterator[None]:
    """Hold back Ctrl-C and a request to end while a process is being started or stopped, then let them through."""
    if threading.current_thread() is not threading.main_thread():
        yield
        return
    caught: list[int] = []
    before = {
        wanted: signal.signal(wanted, lambda number, _: caught.append(number))
        for wanted in (signal.SIGINT, signal.SIGTERM)
    }
    try:
        yield
    finally:
        for held, handler in before.items():
            signal.signal(held, handler)
        for number in caught[:1]:
            signal.raise_signal(number)
