"""Gets every task done by an executor, whatever happens to its workers or to other runs."""

from __future__ import annotations

import time
from collections import deque
from collections.abc import Callable
from concurrent.futures import FIRST_COMPLETED, BrokenExecutor, Executor, Future, wait

from spotblue.shelf import keeper
from spotblue.shelf.claim import Examined, Task, bad_file
from spotblue.shelf.executors import own_executor, usual_workers
from spotblue.shelf.store import Store
from spotblue.shelf.worker import GRACE_SECONDS

TRIES = 3
POLL_SECONDS = 0.1


def lease_seconds(task: Task) -> float:
    """Longer than a file can take with all its tries; a dead run's leases end with its process."""
    return (task.limits.seconds + 2.0 * GRACE_SECONDS) * keeper.TRIES * TRIES + 60.0


class Schedule:
    """One run's tasks on their way through an executor into the store."""

    def __init__(self, tasks: list[Task], store: Store, told: Callable[[int], None]) -> None:
        self.waiting = deque(tasks)
        self.elsewhere: deque[Task] = deque()  # a run that shares the store works at these
        self.running: dict[Future[Examined], Task] = {}
        self.lost: dict[Task, int] = {}
        self.store = store
        self.told = told
        self.done = 0
        self.kept = 0

    def run(self, executor: Executor, window: int) -> bool:
        """Works until nothing is left; False when the executor broke and tasks are left."""
        try:
            while self.waiting or self.running or self.elsewhere:
                self._fill(executor, window)
                self._collect()
                self._look_elsewhere()
        except BrokenExecutor:
            self._take_back()
            return False
        except BaseException:
            for future in self.running:
                future.cancel()
            raise
        return True

    def _fill(self, executor: Executor, window: int) -> None:
        while self.waiting and len(self.running) < window:
            task = self.waiting.popleft()
            if not self.store.lease(task.sha256, task.rules, lease_seconds(task)):
                self.elsewhere.append(task)
                continue
            try:
                self.running[executor.submit(keeper.examine, task)] = task
            except RuntimeError as error:
                self.waiting.appendleft(task)
                raise BrokenExecutor(str(error)) from None

    def _collect(self) -> None:
        if not self.running:
            return
        ended, _ = wait(self.running, timeout=None, return_when=FIRST_COMPLETED)
        for future in ended:
            task = self.running.pop(future)
            error = future.exception() if not future.cancelled() else RuntimeError("cancelled")
            if error is None:
                self._keep(task, future.result())
            else:
                self._lost(task, error)

    def _keep(self, task: Task, done: Examined) -> None:
        self.store.keep(task.sha256, task.rules, done)
        if done.sha256 != task.sha256:
            self.store.forget_stamp(task.path)
        self.kept += 1
        self._count()

    def _count(self) -> None:
        self.done += 1
        self.told(self.done)

    def _lost(self, task: Task, error: BaseException) -> None:
        """The executor's own worker went away under the file, not the process that reads it."""
        self.lost[task] = self.lost.get(task, 0) + 1
        if isinstance(error, BrokenExecutor):
            self.waiting.appendleft(task)
            raise error
        if self.lost[task] < TRIES:
            self.waiting.append(task)
            return
        reason = f"the worker it was given to was lost {TRIES} times: {type(error).__name__}"
        self._keep(task, Examined(task.sha256, [bad_file(reason, "look at it by itself")]))

    def _look_elsewhere(self) -> None:
        for _ in range(len(self.elsewhere)):
            task = self.elsewhere.popleft()
            if self.store.result(task.sha256, task.rules) is not None:
                self._count()
            else:
                self.waiting.append(task)
        if self.waiting and not self.running and not self._any_free():
            time.sleep(POLL_SECONDS)

    def _any_free(self) -> bool:
        task = self.waiting[0]
        return self.store.lease(task.sha256, task.rules, lease_seconds(task))

    def _take_back(self) -> None:
        self.waiting.extend(self.running.values())
        self.running.clear()


def run_tasks(
    tasks: list[Task],
    store: Store,
    told: Callable[[int], None],
    *,
    executor: Executor | None,
    workers: int,
) -> int:
    """Works off all tasks; what a broken executor leaves is done by processes of this machine.

    Gives the number of files that were not left to another run.
    """
    schedule = Schedule(tasks, store, told)
    if executor is not None and schedule.run(executor, 2 * workers):
        return schedule.kept
    with own_executor(workers if executor is None else usual_workers()) as own:
        schedule.run(own, 2 * workers)
    return schedule.kept
