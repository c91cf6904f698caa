"""How gunicorn serves truethroat, in the container and under `make serve`.

The environment decides what differs between places: BIND, or PORT alone, and WEB_CONCURRENCY. Anything else can be
overridden with GUNICORN_CMD_ARGS, which gunicorn reads after this file.
"""

import gc
import os

# A container is reached from outside itself, so it listens on every address; what publishes it decides who gets in.
bind = os.environ.get("BIND") or f"0.0.0.0:{os.environ.get('PORT') or '8000'}"

# Answers are short computations: processes use the cores, threads keep a slow client from holding up a whole process.
worker_class = "gthread"
workers = int(os.environ.get("WEB_CONCURRENCY") or "2")
threads = 4
# Tables, unit factors and rule sets are read once, before the fork; a fault in them stops the start at once.
preload_app = True


def when_ready(_server: object) -> None:
    """Before the first worker: keep the collector of every worker away from what all of them share.

    A collection writes into each object it looks at, and a page once written is a worker's own. Measured: 32 MB of a
    worker were its own after 4,000 calls, and 13 MB with this.
    """
    gc.collect()
    gc.freeze()


# Workers report that they are alive by touching a file here. On a slow disk that touch can block, in memory it cannot.
_shared_memory = "/dev/shm"  # noqa: S108 - gunicorn makes an unlinked file of its own in it
worker_tmp_dir = _shared_memory if os.access(_shared_memory, os.W_OK | os.X_OK) else None

# A worker is replaced after this many requests, so that a slow leak cannot grow for ever; jitter keeps the workers from
# being replaced together.
max_requests = 10_000
max_requests_jitter = 1_000

# A stop lets running requests end; whatever stops the container must wait a little longer than this.
graceful_timeout = 25
# For gthread this watches the worker, not one request: what a request may cost is bounded by the application's limits.
timeout = 30
# Longer than the 60 s for which balancers commonly keep a connection, so that they never send into one just closed.
keepalive = 65

# No address of this service is long and no query is: refuse early what cannot be meant for it.
limit_request_line = 2048
limit_request_fields = 64

# Nobody manages this server through a socket in the home folder, and a read-only file system has no place for one.
control_socket_disable = True

# Requests are not logged here: `GUNICORN_CMD_ARGS="--access-logfile -"` turns that on. Faults go to standard error.
accesslog = None
errorlog = "-"
