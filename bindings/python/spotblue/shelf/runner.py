"""The library runner: a shelf of STEP files against what each is claimed to be."""

from __future__ import annotations

import errno
import hashlib
import json
import math
import os
import stat
import time
from collections.abc import Iterable, Iterator
from concurrent.futures import Executor
from dataclasses import dataclass, replace
from pathlib import Path

import spotblue
from spotblue._kernel import shelf as kernel
from spotblue.base import nearest_word, path_of_shown, shown_name
from spotblue.shelf import folders
from spotblue.shelf.claim import NONCONFORMING, UNDECIDED, Claim, Limits, Row, Task, not_read
from spotblue.shelf.content import CHANGED, beside_digest, referred_by, sha256_of
from spotblue.shelf.executors import dask_executor, usual_workers
from spotblue.shelf.manifest import Manifest, read_manifest
from spotblue.shelf.outputs import refuse_overwriting, true_path
from spotblue.shelf.progress import Progress
from spotblue.shelf.reports import ShelfReport
from spotblue.shelf.schedule import run_tasks
from spotblue.shelf.store import Stamp, Store
from spotblue.shelf.worker import machine_memory_left_mb

# Before a path: the stamp kept there has the names of files that it refers to in place of a hash.
REFERS = "refers: "
NO_REGULAR = "no regular file"
MOST_LETTERS = 255  # of a name on Linux


@dataclass(frozen=True)
class Settings:
    """How files are judged and what each may take; part of every result's key."""

    limits: Limits = Limits()
    uncertainty_mm: float = 0.0


@dataclass
class ShelfFile:
    """One file of the manifest with its claims; `task` is absent when it cannot be read."""

    name: str
    path: Path
    claims: list[Claim]
    task: Task | None = None
    reason: str = ""
    passing: bool = False  # the reason may be gone at the next run


def files_of(manifest: Manifest) -> list[ShelfFile]:
    """The manifest's files in its order, each with all claims on it."""
    claims_of: dict[str, list[Claim]] = {}
    for claim in manifest.claims:
        claims_of.setdefault(claim.file, []).append(claim)
    files: dict[str, ShelfFile] = {}
    for name, claims in claims_of.items():
        path = os.path.abspath(manifest.path.parent / path_of_shown(name))
        files.setdefault(path, ShelfFile(name, Path(path), [])).claims.extend(claims)
    for file in files.values():
        # In an order of their own: a row that moved in the manifest changes no result's key.
        file.claims.sort(key=lambda claim: claim.rule)
    return list(files.values())


def rules_of(claims: Iterable[Claim], settings: Settings, beside: str) -> str:
    """Key of all that a file is judged by; `beside` of the files that it leaves shapes to."""
    said: list[object] = [
        [claim.rule for claim in claims],
        [settings.limits.seconds, settings.limits.memory_mb, settings.uncertainty_mm],
    ]
    if beside:
        said.append(beside)
    return hashlib.sha256(json.dumps(said).encode()).hexdigest()


def make_tasks(files: list[ShelfFile], store: Store, settings: Settings) -> None:
    """Gives each file its task, hashing only what is new or has changed."""
    known = store.stamps()
    fresh: dict[str, Stamp] = {}
    for file in files:
        try:
            _make_task(file, known, fresh, settings)
        except (FileNotFoundError, NotADirectoryError):
            file.reason = "no such file"
        except ValueError:  # of the system's own, for a zero byte
            file.reason = "no file can have a zero byte in its name"
        except OSError as error:
            file.reason = (error.strerror or str(error)).lower()
            file.passing = error.errno != errno.ENAMETOOLONG
    store.keep_stamps(fresh)


def _make_task(
    file: ShelfFile, known: dict[str, Stamp], fresh: dict[str, Stamp], settings: Settings
) -> None:
    path = shown_name(file.path)
    found = file.path.stat()
    if not stat.S_ISREG(found.st_mode):
        file.reason = NO_REGULAR  # a pipe would be waited for until the end of days
        return
    stamp = known.get(path)
    if stamp is None or not stamp.proves(found):
        now = time.time_ns()
        stamp = Stamp.of(found, now, sha256_of(file.path))
        names = referred_by(file.path)
        fresh[path] = stamp
        if names or REFERS + path in known:
            fresh[REFERS + path] = replace(stamp, sha256=names)
    refers = fresh.get(REFERS + path) or known.get(REFERS + path)
    names = refers.sha256 if refers is not None else ""
    beside = beside_digest(file.path, names) if names else ""
    file.task = Task(
        path,
        stamp.sha256,
        tuple(file.claims),
        settings.limits,
        settings.uncertainty_mm,
        rules_of(file.claims, settings, beside),
        beside,
    )


def share_out(files: list[ShelfFile], share_mb: float) -> None:
    """Lets the workers of this machine together take no more memory than it has left."""
    for file in files:
        if file.task is not None:
            file.task = replace(file.task, share_mb=share_mb)


def missing_row(file: ShelfFile, manifest: Manifest) -> Row:
    """The row of a file that cannot be opened; one that is not there has its nearest named."""
    if file.passing:
        return not_read(file.reason, f"see who may read {shown_name(file.path)}, and that its disk is there")
    if file.reason == NO_REGULAR:
        return Row("missing file", NONCONFORMING, "a file", file.reason, advice="name a model file")
    name = shown_name(file.path.name)
    try:
        beside = [shown_name(item.name) for item in file.path.parent.iterdir()]
    except (OSError, ValueError):
        beside = []
    nearest = nearest_word(name, beside) if beside and len(name) <= MOST_LETTERS else ""
    cure = f"the nearest name there is {nearest}" if nearest else f"look in {shown_name(file.path.parent)}"
    return Row("missing file", NONCONFORMING, "a file", file.reason, advice=cure)


def rows_of_file(file: ShelfFile, found: list[Row], first: dict[str, str]) -> list[Row]:
    """The file's rows with names, lines and notes of the manifest, and whether it is a copy."""
    rows = []
    first_claim = min(file.claims, key=lambda claim: claim.line)
    for row in found:
        claim = file.claims[row.claim] if row.claim is not None else first_claim
        rows.append(
            replace(
                row, file=claim.file, line=claim.line, notes=claim.notes or row.notes, claim=None
            )
        )
    if file.task is not None and first.setdefault(file.task.sha256, file.name) != file.name:
        rows.append(
            Row(
                "duplicate",
                UNDECIDED,
                "a part of its own",
                f"same content as {first[file.task.sha256]}",
                advice="one of the two is a copy: look which, or leave it out",
                file=file.name,
                line=first_claim.line,
            )
        )
    rows.sort(key=lambda row: row.line)
    return rows


def examine_files(
    files: list[ShelfFile],
    store: Store,
    progress: Progress,
    *,
    executor: Executor | None,
    scheduler: str | None,
    workers: int,
) -> int:
    """Gets every file a result in the store; the number of files that were worked at."""
    have = store.done()
    tasks: dict[tuple[str, str], Task] = {}
    for file in files:
        if file.task and file.task.key() not in have:
            tasks.setdefault(file.task.key(), file.task)
    if not tasks:
        return 0
    todo = list(tasks.values())

    def told(done: int) -> None:
        progress.tell(done, len(todo))

    if scheduler is not None:
        with dask_executor(scheduler) as (cluster, threads):
            return run_tasks(todo, store, told, executor=cluster, workers=threads)
    return run_tasks(todo, store, told, executor=executor, workers=workers)


def judged_rows(files: list[ShelfFile], store: Store, manifest: Manifest) -> list[Row]:
    """All rows of the shelf, in the manifest's order."""
    results = store.results()
    first: dict[str, str] = {}
    rows: list[Row] = []
    for file in files:
        if file.task is None:
            found = [missing_row(file, manifest)]
        else:
            changed = not_read(CHANGED)
            found = results.get(file.task.key(), [changed])
        rows += rows_of_file(file, found, first)
    return rows


def database_beside(manifest: Path) -> Path:
    """Where a shelf's results are kept when nothing else is said."""
    if os.path.isdir(manifest):
        return manifest / "manifest.shelf.db"
    return manifest.with_suffix(".shelf.db")


def library(
    manifest: Path | str,
    *,
    database: Path | str | None = None,
    workers: int | None = None,
    executor: Executor | None = None,
    scheduler: str | None = None,
    unit: str = "mm",
    uncertainty_mm: float = 0.0,
    seconds: float = 120.0,
    memory_mb: float = 6000.0,
    progress: bool | None = None,
) -> ShelfReport:
    """Judges every file of a shelf by what the manifest claims of it; goes on where it was.

    Args:
        manifest: CSV or TOML file; a folder is surveyed and a manifest drafted in it.
        database: SQLite file of the results; made when missing; beside the manifest when not given.
        workers: processes that read files; as many as cores when not given.
        executor: any concurrent.futures executor to hand files to, in place of own processes.
        scheduler: address of a Dask scheduler, in place of an executor.
        unit: "mm" or "inch": of bare numbers in a manifest that does not say its own, and of the
            report's text.
        uncertainty_mm: expanded uncertainty (k = 2) of the sizes in the files.
        seconds, memory_mb: what one file may take, wall time and address space; of memory no more than
            what the machine has left when the run begins, shared out among its workers.
        progress: show progress on standard error; None: on a terminal.

    Raises BadInputError for what is wrong in the manifest and FileAccessError for the database; a
    bad STEP file raises nothing and is one row.
    """
    shelf = open_shelf(manifest, database=database, unit=unit)
    return judge_shelf(
        shelf,
        Settings(Limits(seconds, memory_mb), uncertainty_mm),
        workers=workers,
        executor=executor,
        scheduler=scheduler,
        progress=progress,
    )


@dataclass(frozen=True)
class Shelf:
    """What is to be judged, read and refused where it makes no sense; nothing is written yet."""

    path: Path  # the manifest, or the folder in place of one
    manifest: Manifest
    files: list[ShelfFile]
    database: Path

    def parts(self) -> list[Path]:
        """What SQLite has beside the database at times."""
        true = true_path(self.database)
        return [Path(true + end) for end in ("-wal", "-shm", "-journal")]

    def kept(self) -> Iterator[tuple[str, Path]]:
        """What no result may be written over: what it is and where."""
        yield "the manifest", self.manifest.path  # of a folder: the draft
        yield "the database", self.database
        for part in self.parts():
            yield "a part of the database", part
        for file in self.files:
            yield "a model of the shelf", file.path


def open_shelf(manifest: Path | str, *, database: Path | str | None, unit: str) -> Shelf:
    """Reads the manifest or looks through the folder; raises as library()."""
    path = Path(manifest)
    if "\0" in str(path):
        rule, cure = "no file can have a zero byte in its name", "name the manifest"
        raise spotblue.FileAccessError(f"{path}: {rule}; {cure}", str(path), "", rule, cure)
    if os.path.isdir(path):
        from spotblue.shelf.survey import refuse_overwriting as refuse_draft
        from spotblue.shelf.survey import survey_manifest

        refuse_draft(path)
        wanted = survey_manifest(path, unit)
    else:
        wanted = read_manifest(path, unit)
    shelf = Shelf(
        path, wanted, files_of(wanted), Path(database) if database else database_beside(path)
    )
    inputs = [item for item in shelf.kept() if "database" not in item[0]]
    for part in (shelf.database, *shelf.parts()):
        refuse_overwriting({"--database": str(part)}, inputs)
    return shelf


def judge_shelf(
    shelf: Shelf,
    settings: Settings,
    *,
    workers: int | None,
    executor: Executor | None = None,
    scheduler: str | None = None,
    progress: bool | None = None,
) -> ShelfReport:
    """Judges every file; arguments and errors as of library()."""
    workers = usual_workers() if workers is None else workers
    limits = settings.limits
    for name, value, most in (
        ("workers", workers, 10_000), ("seconds", limits.seconds, 1e6),
        ("memory", limits.memory_mb, 1e9),
    ):  # fmt: skip
        if not 0 < value <= most:
            wrong = "not more than 0" if value <= 0 else f"more than {most:g}"
            raise spotblue.BadInputError(f"{name}: {value:g} is {wrong}; leave it out for the usual")
    if not 0.0 <= settings.uncertainty_mm < 1e6:
        raise spotblue.BadInputError(
            f"uncertainty: {settings.uncertainty_mm:g} mm makes no sense; give what the sizes were "
            "measured to, or 0"
        )
    folders.sweep()
    store = Store(shelf.database, kernel.version)
    shown = Progress(progress)
    start = time.monotonic()
    share_mb = math.inf if scheduler is not None else machine_memory_left_mb() / workers
    try:
        make_tasks(shelf.files, store, settings)
        share_out(shelf.files, share_mb)
        worked = examine_files(
            shelf.files, store, shown, executor=executor, scheduler=scheduler, workers=workers
        )
        rows = judged_rows(shelf.files, store, shelf.manifest)
        drafted = None
        if os.path.isdir(shelf.path):
            from spotblue.shelf.survey import draft

            drafted = draft(shelf.path, shelf.files, store, rows, shelf.manifest.unit)
    finally:
        shown.end()
        store.close()
    return ShelfReport(
        shown_name(shelf.path),
        rows,
        len(shelf.files),
        worked,
        time.monotonic() - start,
        store.path,
        drafted,
        shelf.manifest.unit,
    )
