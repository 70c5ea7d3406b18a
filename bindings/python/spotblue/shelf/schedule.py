"""Gets every task done by an executor, whatever happens to its workers or to other runs."""

from __future__ import annotations

import time
from collections import deque
from collections.abc import Callable
from concurrent.futures import FIRST_COMPLETED, BrokenExecutor, Executor, Future, wait

from spotblue.shelf import keeper
from spotblue.shelf.claim import Examined, Task, passing
from spotblue.shelf.executors import own_executor, usual_workers
from spotblue.shelf.store import Store
from spotblue.shelf.worker import GRACE_SECONDS

TRIES = 3
POLL_SECONDS = 0.1
# A transaction costs as much as many results: so many leases, and what came in so long, share one.
LEASES = 32
KEEP_SECONDS = 0.25


def lease_seconds(task: Task) -> float:
    """Longer than a file can take with all its tries; a dead run's leases end with its process."""
    return (task.limits.seconds + 2.0 * GRACE_SECONDS) * keeper.TRIES * TRIES + 60.0


class Schedule:
    """One run's tasks on their way through an executor into the store."""

    def __init__(self, tasks: list[Task], store: Store, told: Callable[[int], None]) -> None:
        self.waiting = deque(tasks)
        self.elsewhere: deque[Task] = deque()  # a run that shares the store works at these
        self.mine: deque[Task] = deque()  # leased
        self.running: dict[Future[Examined], Task] = {}
        self.unkept: list[tuple[Task, Examined]] = []
        self.kept_at = 0.0
        self.overdue_at: dict[Future[Examined], float] = {}
        self.lost: dict[Task, int] = {}
        self.store = store
        self.told = told
        self.done = 0
        self.kept = 0

    def run(self, executor: Executor, window: int) -> bool:
        """Works until nothing is left; False when the executor broke and tasks are left."""
        try:
            while self.waiting or self.mine or self.running or self.unkept or self.elsewhere:
                self._fill(executor, window)
                self._collect()
                self._keep()
                self._look_elsewhere()
        except BrokenExecutor:
            self._take_back()
            return False
        except BaseException:
            for future in self.running:
                future.cancel()
            raise
        finally:
            if self.unkept:
                self._keep_all()
        return True

    def _fill(self, executor: Executor, window: int) -> None:
        while len(self.running) < window and (self.mine or self._lease()):
            task = self.mine.popleft()
            try:
                future = executor.submit(keeper.examine, task)
            except RuntimeError as error:
                self.mine.appendleft(task)
                raise BrokenExecutor(str(error)) from None
            self.running[future] = task
            self.overdue_at[future] = time.monotonic() + lease_seconds(task)

    def _lease(self) -> bool:
        """Takes some of what waits for this run; False when other runs have all of it."""
        while self.waiting and not self.mine:
            tasks = [self.waiting.popleft() for _ in range(min(LEASES, len(self.waiting)))]
            keys = [task.key() for task in tasks]
            taken = self.store.lease(keys, max(map(lease_seconds, tasks)))
            for task, key in zip(tasks, keys):
                (self.mine if key in taken else self.elsewhere).append(task)
        return bool(self.mine)

    def _collect(self) -> None:
        if not self.running:
            return
        left = max(0.0, min(self.overdue_at.values()) - time.monotonic())
        timeout = min(left, KEEP_SECONDS) if self.unkept else left
        ended, _ = wait(self.running, timeout=timeout, return_when=FIRST_COMPLETED)
        for future in ended:
            task = self._taken(future)
            error = future.exception() if not future.cancelled() else RuntimeError("cancelled")
            if error is None:
                self.unkept.append((task, future.result()))
            else:
                self._lost(task, error)
        self._give_up_overdue()

    def _taken(self, future: Future[Examined]) -> Task:
        del self.overdue_at[future]
        return self.running.pop(future)

    def _give_up_overdue(self) -> None:
        """A cluster's future may never end when a worker goes at an unlucky moment."""
        now = time.monotonic()
        for future in [one for one, due in self.overdue_at.items() if due <= now]:
            future.cancel()
            self._lost(self._taken(future), TimeoutError())

    def _keep(self) -> None:
        if self.unkept and not (
            self.running and time.monotonic() - self.kept_at < KEEP_SECONDS
        ):
            self._keep_all()

    def _keep_all(self) -> None:
        results, self.unkept = self.unkept, []
        self.store.keep([(task.key(), done) for task, done in results])
        for task, done in results:
            if done.passing:
                self.store.forget_stamp(task.path)
            self.kept += 1
            self._count()
        self.kept_at = time.monotonic()

    def _count(self) -> None:
        self.done += 1
        self.told(self.done)

    def _lost(self, task: Task, error: BaseException) -> None:
        """The executor's own worker went away under the file, not the process that reads it."""
        self.lost[task] = self.lost.get(task, 0) + 1
        if isinstance(error, BrokenExecutor):
            self.mine.appendleft(task)
            raise error
        if self.lost[task] < TRIES:
            self.mine.append(task)
            return
        reason = f"the worker it was given to was lost {TRIES} times: {type(error).__name__}"
        self.unkept.append((task, passing(task.sha256, reason, "see what ended it")))

    def _look_elsewhere(self) -> None:
        for _ in range(len(self.elsewhere)):
            task = self.elsewhere.popleft()
            if self.store.result(task.key()) is not None:
                self._count()
            else:
                self.waiting.append(task)
        if self.waiting and not self.running and not self.mine and not self._lease():
            time.sleep(POLL_SECONDS)

    def _take_back(self) -> None:
        self.mine.extend(self.running.values())
        self.running.clear()
        self.overdue_at.clear()


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
