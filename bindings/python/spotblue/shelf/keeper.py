"""Keeps one warm worker process and ends it when a file hangs it; one keeper a thread.

Because the bounds are kept here, they hold in whatever executor the files are handed to: threads,
processes, or the workers of a cluster.
"""

from __future__ import annotations

import atexit
import os
import pickle
import select
import signal
import subprocess
import sys
import threading
import time
from collections.abc import Callable
from dataclasses import replace
from pathlib import Path

from spotblue.shelf import folders
from spotblue.shelf.claim import Examined, Task, bad_file, passing
from spotblue.shelf.worker import FOLDER, GRACE_SECONDS, HEADER, stood_still, waited

TRIES = 3
DEFAULT_COMMAND = (sys.executable or "/usr/bin/python3", "-P", "-m", "spotblue.shelf.worker")


class WorkerDied(Exception):
    """The worker process ended before its answer; the text says how."""


class WorkerSlow(Exception):
    """The worker process did not answer in time and was ended; `busy`: CPU seconds meanwhile."""

    def __init__(self, busy: float) -> None:
        super().__init__()
        self.busy = busy


def _busy(process: Path, group: int) -> float:
    """Seconds of CPU that it and its ended children have used; 0 for one of another group."""
    try:
        words = (process / "stat").read_text().rpartition(")")[2].split()
    except OSError:  # it ended in the meantime
        return 0.0
    used = sum(map(int, words[11:15])) if int(words[2]) == group else 0
    return used / os.sysconf("SC_CLK_TCK")


def _environment(folder: str | None) -> dict[str, str]:
    """The worker must find this very package, wherever it was imported from, and its temp folder."""
    environment = dict(os.environ)
    if folder is not None:
        environment |= {"TMPDIR": folder, FOLDER: folder}
    here = str(Path(__file__).absolute().parents[2])
    paths = [here, *environment.get("PYTHONPATH", "").split(os.pathsep)]
    environment["PYTHONPATH"] = os.pathsep.join(path for path in dict.fromkeys(paths) if path)
    return environment


class Keeper:
    """Starts, feeds, times and ends one worker process."""

    def __init__(self, command: tuple[str, ...] = DEFAULT_COMMAND) -> None:
        self.command = command
        self.process: subprocess.Popen[bytes] | None = None
        self.folder: str | None = None  # what a killed worker leaves behind goes with it
        self.ended = False
        self.busy_before = 0.0  # what the worker had used of the CPU when it got its file
        self.maker: int | None = None  # the thread that is making folder and process just now

    def examine(self, task: Task) -> Examined:
        """One file; a crash is tried again, a hang is not. Raises for nothing a file does.

        Of a worker that died nothing is kept: a crash of the reader would have been its child's.
        """
        reason = ""
        start = time.monotonic()
        for _ in range(TRIES):
            try:
                return self._ask(task)
            except WorkerSlow as slow:
                if stood_still(time.monotonic() - start, slow.busy, task.limits):
                    return waited(task)
                row = bad_file(
                    f"took longer than {task.limits.seconds:g} s", "simplify it, or raise --seconds"
                )
                return Examined(task.sha256, [row], seconds=time.monotonic() - start)
            except WorkerDied as death:
                reason = str(death)
                task = replace(task, apart=True)
        return passing(
            task.sha256, f"its worker died {TRIES} times: {reason}",
            "see what ended it; if nothing did, export the file again or report it",
        )  # fmt: skip

    def _ask(self, task: Task) -> Examined:
        if self.ended:
            raise WorkerDied("the run was broken off")
        process = self._running()
        assert process.stdin is not None
        data = pickle.dumps(task)
        deadline = time.monotonic() + task.limits.seconds + GRACE_SECONDS
        self.busy_before = _busy(Path(f"/proc/{process.pid}"), process.pid)
        try:
            process.stdin.write(HEADER.pack(len(data)) + data)
            process.stdin.flush()
            head = self._read(process, HEADER.size, deadline)
            done, spent = pickle.loads(self._read(process, HEADER.unpack(head)[0], deadline))
        except (OSError, ValueError, EOFError, ImportError, AttributeError, pickle.UnpicklingError):
            raise WorkerDied(self._how_it_ended()) from None
        assert isinstance(done, Examined)
        if spent:
            self.close()
        return done

    def _read(self, process: subprocess.Popen[bytes], size: int, deadline: float) -> bytes:
        assert process.stdout is not None
        handle = process.stdout.fileno()
        chunks = bytearray()
        while len(chunks) < size:
            left = deadline - time.monotonic()
            poll = select.poll()
            poll.register(handle, select.POLLIN | select.POLLHUP)
            if left <= 0.0 or not poll.poll(left * 1000.0):
                every = Path("/proc").glob("[0-9]*")
                busy = sum(_busy(one, process.pid) for one in every) - self.busy_before
                self.close()
                raise WorkerSlow(busy)
            chunk = os.read(handle, size - len(chunks))
            if not chunk:
                raise EOFError
            chunks += chunk
        return bytes(chunks)

    def _running(self) -> subprocess.Popen[bytes]:
        if self.process is None or self.process.poll() is not None:
            self.close()
            self.maker = threading.get_ident()
            try:
                _refuse_when_ending()
                self.process = self._make()
            except OSError as error:
                raise WorkerDied(f"it cannot be started: {error.strerror or error}") from None
            finally:
                self.maker = None
            _refuse_when_ending(self)
        return self.process

    def _make(self) -> subprocess.Popen[bytes]:
        held: tuple[int, ...] = ()
        try:
            self.folder, lock = folders.make()
            held = (lock,)
        except OSError:
            self.folder = None  # the kernel says what is wrong with the temp folder, per file
        return subprocess.Popen(
            self.command,
            stdin=subprocess.PIPE,
            stdout=subprocess.PIPE,
            stderr=subprocess.DEVNULL,
            env=_environment(self.folder),
            bufsize=0,
            pass_fds=held,
            start_new_session=True,
        )

    def _how_it_ended(self) -> str:
        process = self.process
        if process is None:
            return "it was ended"
        try:
            code = process.wait(1.0)
        except subprocess.TimeoutExpired:
            code = 0
        self.close()
        if code < 0:
            return signal.strsignal(-code) or f"signal {-code}"
        return f"it ended with {code}"

    def end(self) -> None:
        """Ends the worker for good: a thread that still waits for it starts no other."""
        self.ended = True
        self.close()

    def kill(self) -> None:
        """Sends the worker and all it started to their end; takes no lock and waits for nothing."""
        process = self.process
        if process is not None and process.returncode is None:
            try:
                os.killpg(process.pid, signal.SIGKILL)
            except (ProcessLookupError, PermissionError):
                pass

    def close(self) -> None:
        """Ends the worker and all it started."""
        process = self.process
        if process is None:
            return
        self.kill()
        self.process = None
        process.wait()
        for stream in (process.stdin, process.stdout):
            if stream is not None:
                stream.close()
        self.remove_folder()

    def remove_folder(self) -> None:
        """What the worker had for its temporary files."""
        if self.folder is not None:
            folders.remove(self.folder)

    def has_folder_left(self) -> bool:
        """Removes it; whether something came into it meanwhile."""
        self.remove_folder()
        return self.folder is not None and os.path.exists(self.folder)


_of_thread = threading.local()
_all: list[Keeper] = []
_ending = False


def _refuse_when_ending(keeper: Keeper | None = None) -> None:
    """A thread that was about to start a worker, or has just done so, when the process ends."""
    if _ending:
        if keeper is not None:
            keeper.kill()
        raise WorkerDied("the run was broken off")


def close_all() -> None:
    """Ends every worker that this process keeps."""
    while _all:  # one that is being ended is still there for kill_all()
        _all[0].end()
        del _all[0]
    _of_thread.__dict__.clear()


def kill_all() -> None:
    """The same for a process that ends there and then: also from a signal's handler, also twice."""
    global _ending
    _ending = True
    # A thread that was past _refuse_when_ending() still makes its folder and its worker.
    here = threading.get_ident()
    _wait_while(lambda: any(keeper.maker not in (None, here) for keeper in list(_all)))
    for keeper in list(_all):
        keeper.ended = True
        keeper.kill()
    for keeper in list(_all):
        # A worker may write until its end has reached it.
        _wait_while(keeper.has_folder_left)


def _wait_while(holds: Callable[[], bool]) -> None:
    """Asks again each millisecond, for no longer than anyone would wait for the end of a program."""
    end = time.monotonic() + 2.0
    while holds() and time.monotonic() < end:
        time.sleep(0.001)


def examine(task: Task) -> Examined:
    """What is handed to an executor: one file, in this thread's own worker."""
    keeper: Keeper | None = getattr(_of_thread, "keeper", None)
    if keeper is None or keeper not in _all:
        keeper = Keeper()
        _of_thread.keeper = keeper
        if not _all:
            folders.sweep()  # a cluster's machines judge no shelf of their own
            atexit.register(close_all)
        _all.append(keeper)
    return keeper.examine(task)
