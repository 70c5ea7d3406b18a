"""The worker process: takes one file after another from its keeper, within bounds on memory.

Speaks over its standard input and output: a length of 8 bytes, then a pickle. Ends when its keeper
goes away, whatever it is at.

It reads files in itself, since a child for each would cost more than most reads do, and the making
of processes is what two workers get in each other's way with. A file that fails so is read again in
a child, and the worker then asks to be replaced: the failure may have left it damaged.
"""

from __future__ import annotations

import os
import pickle
import resource
import select
import shutil
import signal
import struct
import sys
import threading
import time
from dataclasses import replace
from pathlib import Path
from typing import Any, BinaryIO

from spotblue.shelf.claim import UNREAD, Examined, Limits, Task, bad_file, passing
from spotblue.shelf.judge import judge_file

HEADER = struct.Struct("<Q")
GRACE_SECONDS = 5.0
LAST_SECONDS = 0.3  # for a worker's own way out, when its keeper has gone
FOLDER = "SPOTBLUE_WORKER_FOLDER"  # the environment's name for the worker's own temp folder
LEAST_BUSY = 0.05  # of the time that a file took too long: less, and it only waited
MOST_GROWTH = 0.25  # of the bound on memory; a worker that leaked more is replaced


def send(stream: BinaryIO, value: Any) -> None:
    """Writes one value; BrokenPipeError when nobody listens."""
    data = pickle.dumps(value)
    stream.write(HEADER.pack(len(data)) + data)
    stream.flush()


def receive(stream: BinaryIO) -> Any:
    """Reads one value; EOFError when the other side has gone."""
    head = stream.read(HEADER.size)
    if len(head) < HEADER.size:
        raise EOFError
    return pickle.loads(stream.read(HEADER.unpack(head)[0]))


def address_space() -> int:
    """Bytes of it that this process has."""
    return int(Path("/proc/self/statm").read_text().split()[0]) * resource.getpagesize()


def bound_memory(memory_mb: float) -> None:
    """Lets the process grow by so much beyond what it has now; cuts also what its children get."""
    limit = address_space() + int(memory_mb * 1e6)
    _, hard = resource.getrlimit(resource.RLIMIT_AS)
    if hard != resource.RLIM_INFINITY:
        limit = min(limit, hard)
    resource.setrlimit(resource.RLIMIT_AS, (limit, hard))


def machine_memory_left_mb() -> float:
    """What the machine has left without taking it from others, 10^6 bytes."""
    lines = Path("/proc/meminfo").read_text().splitlines()
    left_kb = {name: int(rest.split()[0]) for name, _, rest in (line.partition(":") for line in lines)}
    return (left_kb.get("MemAvailable", 0) + left_kb.get("SwapFree", 0)) * 1024 / 1e6


def machine_lacks(memory_mb: float) -> bool:
    """Whether the machine itself has not that much left: what failed for it says nothing of the file."""
    return machine_memory_left_mb() < memory_mb


def crowded_out(task: Task) -> Examined:
    """What is shown of a file that its worker's share of the machine's memory was too little for."""
    return passing(
        task.sha256, f"takes more than the {task.share_mb:.0f} MB that the machine has for each worker",
        "let fewer work at a time (--workers 1), or end other programs",
    )  # fmt: skip


def judged(task: Task) -> Examined:
    """One file within its bounds; what goes wrong in Python is a row that says so."""
    try:
        return judge_file(task)
    except MemoryError:
        memory_mb = task.limits.memory_mb
        if task.is_cramped():
            return crowded_out(task)
        if machine_lacks(memory_mb):
            return passing(task.sha256, "the machine has no memory left for it", "end other programs")
        return Examined(task.sha256, [bad_file(f"needs more than {memory_mb:g} MB", "raise --memory")])
    except Exception as error:  # noqa: BLE001: whatever it is, it costs this row only
        return passing(
            task.sha256, f"{type(error).__name__}: {error}".split("\n")[0],
            "this is a fault of spotblue, please report it",
        )  # fmt: skip


def stood_still(wall: float, busy: float, limits: Limits) -> bool:
    """Whether a file that ran out of time did so by waiting: for its disk, or for other programs."""
    return wall > 0.9 * limits.seconds and busy < LEAST_BUSY * wall


def waited(task: Task) -> Examined:
    """What is shown of such a file."""
    return passing(
        task.sha256, f"took longer than {task.limits.seconds:g} s, and waited for most of it",
        "see that its disk answers and the machine has time for it",
    )  # fmt: skip


def _busy() -> float:
    """Seconds of CPU that this process and its children have used."""
    used = os.times()
    return used.user + used.system + used.children_user + used.children_system


def examine(task: Task) -> tuple[Examined, bool]:
    """What was found of one file, and whether this process is spent: too damaged for another."""
    start, busy = time.monotonic(), _busy()
    done = judged(task)
    spent = not task.apart and any(row.kind in UNREAD for row in done.rows)
    if spent:
        start, busy = time.monotonic(), _busy()
        done = judged(replace(task, apart=True))
    wall = time.monotonic() - start
    if any(row.kind == "bad file" for row in done.rows):
        done = waited(task) if stood_still(wall, _busy() - busy, task.limits) else done
    done.seconds = wall
    return done, spent


def remove_own_folder() -> None:
    """That of its temporary files, where its keeper has given it one."""
    if folder := os.environ.get(FOLDER):
        shutil.rmtree(folder, ignore_errors=True)


def end_with_keeper(keeper: int) -> None:
    """Waits until the keeper has gone, whatever ended it, and ends this process and all it started."""
    hung_up = select.poll()
    hung_up.register(0, 0)
    while not hung_up.poll(1000.0) and os.getppid() == keeper:
        pass
    time.sleep(LAST_SECONDS)  # one that has nothing to do ends by itself
    remove_own_folder()
    if os.getpgrp() == os.getpid():
        os.killpg(0, signal.SIGKILL)
    os.kill(os.getpid(), signal.SIGKILL)


def serve() -> None:
    """Answers tasks until the keeper goes away, then removes its own temp folder."""
    threading.Thread(target=end_with_keeper, args=(os.getppid(),), daemon=True).start()
    try:
        answer_tasks()
    finally:
        remove_own_folder()


def answer_tasks() -> None:
    """Answers tasks until the keeper goes away."""
    answers = os.fdopen(os.dup(1), "wb")
    quiet = os.open(os.devnull, os.O_WRONLY)
    os.dup2(quiet, 1)  # what a library prints must not get between the answers
    tasks = sys.stdin.buffer
    signal.signal(signal.SIGINT, signal.SIG_IGN)
    bounded = 0.0
    begun_with = address_space()
    while True:
        try:
            task: Task = receive(tasks)
        except EOFError:
            return
        if bounded != task.memory_mb():
            bound_memory(task.memory_mb())
            bounded = task.memory_mb()
        # The keeper ends a file that takes too long; this does where the keeper has been killed.
        signal.setitimer(signal.ITIMER_REAL, task.limits.seconds + 3.0 * GRACE_SECONDS)
        done, spent = examine(task)
        spent = spent or address_space() - begun_with > MOST_GROWTH * bounded * 1e6
        signal.setitimer(signal.ITIMER_REAL, 0.0)
        try:
            send(answers, (done, spent))
        except BrokenPipeError:
            return


if __name__ == "__main__":
    serve()
