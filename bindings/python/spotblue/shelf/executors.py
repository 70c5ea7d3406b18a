"""Where files are worked at: own threads, an executor that was handed in, or a Dask cluster."""

from __future__ import annotations

import os
import threading
from collections.abc import Callable, Iterator
from concurrent.futures import Executor, ThreadPoolExecutor
from contextlib import contextmanager
from typing import Any

import spotblue
from spotblue.errors import missing_package
from spotblue.shelf import keeper

CONNECT_SECONDS = 15


def usual_workers() -> int:
    """As many as this process may use cores."""
    return len(os.sched_getaffinity(0))


@contextmanager
def own_executor(workers: int) -> Iterator[Executor]:
    """Threads that each keep one warm worker process; all end with the block."""
    executor = ThreadPoolExecutor(workers, thread_name_prefix="spotblue-shelf")
    try:
        yield executor
    finally:
        executor.shutdown(wait=False, cancel_futures=True)
        keeper.close_all()
        executor.shutdown(wait=True)


@contextmanager
def dask_executor(address: str) -> Iterator[tuple[Executor, int]]:
    """A cluster's executor and its number of threads; BadInputError when nothing answers there."""
    try:
        from distributed import Client
    except Exception as error:  # noqa: BLE001: a torn package fails in many ways
        raise missing_package("distributed", "--scheduler", error) from None
    made: Any = Client  # it has no types
    client = made.__new__(made)
    try:
        _in_time(
            lambda: made.__init__(client, address, timeout=CONNECT_SECONDS, set_as_default=False)
        )
    except Exception as error:  # noqa: BLE001: of the network, of the address, of other versions
        client.status = "closed"  # or it would wait for the scheduler once more when it is deleted
        rule = str(error).split("\n")[0] or type(error).__name__
        raise spotblue.BadInputError(
            f"--scheduler {address}: no scheduler answers: {rule}; give the address it printed when "
            "it started, like tcp://127.0.0.1:8786"
        ) from None
    try:
        yield client.get_executor(pure=False), max(1, sum(client.nthreads().values()))
    finally:
        client.close()


def _in_time(connect: Callable[[], object]) -> None:
    """Newer clients wait for ever where something listens and says nothing, whatever their timeout."""
    ended: list[Exception | None] = []

    def run() -> None:
        try:
            connect()
            ended.append(None)
        except Exception as error:  # noqa: BLE001: handed on to who waits
            ended.append(error)

    thread = threading.Thread(target=run, daemon=True)
    thread.start()
    thread.join(CONNECT_SECONDS + 2.0)
    if not ended:
        raise TimeoutError(f"no answer in {CONNECT_SECONDS} s")
    if ended[0] is not None:
        raise ended[0]
