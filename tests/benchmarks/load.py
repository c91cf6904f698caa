"""Load on a server of this machine, and the processor time that its workers spend on it.

The load comes from a process of its own, which `under_load` starts as `python load.py PORT PATH CONNECTIONS SECONDS`
with the body on standard input: one thread, and connections that each ask again as soon as they are answered.
"""

from __future__ import annotations

import re
import selectors
import socket
import subprocess
import sys
import time
from pathlib import Path

LENGTH = re.compile(rb"\r\nContent-Length: *(\d+)\r\n", re.IGNORECASE)


def under_load(port: int, path: str, body: bytes, connections: int, seconds: float) -> tuple[int, float]:
    """Calls answered, and the seconds they took, while so many connections ask for so long."""
    command = [sys.executable, __file__, str(port), path, str(connections), str(seconds)]
    printed = subprocess.run(command, input=body, stdout=subprocess.PIPE, check=True, timeout=seconds + 60.0).stdout
    calls, taken = printed.split()
    return int(calls), float(taken)


def processor_time(master: int) -> float:
    """Seconds that the workers of a gunicorn have spent on a processor, all threads together; NaN without Linux."""
    try:
        workers = [child for task in _tasks(master) for child in (task / "children").read_text().split()]
        spent = [int((task / "schedstat").read_text().split()[0]) for worker in workers for task in _tasks(worker)]
    except FileNotFoundError:
        return float("nan")
    return sum(spent) / 1e9


def _tasks(process: int | str) -> list[Path]:
    """Threads of a process, as Linux shows them."""
    return list(Path(f"/proc/{process}/task").iterdir())


def _asked(port: int, request: bytes, connections: int, seconds: float) -> tuple[int, float]:
    """Ask over every connection, again as soon as it is answered; when the time is over, wait for what is left."""
    selector, calls = selectors.DefaultSelector(), 0
    for _ in range(connections):
        connection = socket.create_connection(("127.0.0.1", port), timeout=30.0)
        connection.setsockopt(socket.IPPROTO_TCP, socket.TCP_NODELAY, 1)
        selector.register(connection, selectors.EVENT_READ, bytearray())
    started = time.perf_counter()
    for key in selector.get_map().values():
        key.fileobj.sendall(request)
    while selector.get_map():
        for key, _ in selector.select(timeout=30.0) or sys.exit("no answer within 30 s"):
            connection, answer = key.fileobj, key.data
            answer += connection.recv(65536) or sys.exit("the server closed a connection")
            if not _whole(answer):
                continue
            calls += 1
            answer.clear()
            if time.perf_counter() - started < seconds:
                connection.sendall(request)
            else:
                selector.unregister(connection)
                connection.close()
    return calls, time.perf_counter() - started


def _whole(answer: bytearray) -> bool:
    """Whether an answer has come in full; ends the load when it is none that was hoped for."""
    head = answer.find(b"\r\n\r\n")
    if head < 0:
        return False
    length = LENGTH.search(answer, 0, head + 2)
    if length is None or not answer.startswith(b"HTTP/1.1 200 "):
        sys.exit(answer.decode(errors="replace"))
    return len(answer) >= head + 4 + int(length[1])


def main(port: str, path: str, connections: str, seconds: str) -> None:
    """Ask, and print how many answers came in how many seconds."""
    body = sys.stdin.buffer.read()
    head = (
        f"POST {path} HTTP/1.1\r\nHost: 127.0.0.1\r\nContent-Type: application/json\r\nContent-Length: {len(body)}\r\n"
    )
    print(*_asked(int(port), f"{head}\r\n".encode() + body, int(connections), float(seconds)))


if __name__ == "__main__":
    main(*sys.argv[1:])
