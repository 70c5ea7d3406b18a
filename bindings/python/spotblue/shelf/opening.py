"""Opening a shelf's database: its own format and whole, or refused; made where there is none."""

from __future__ import annotations

import sqlite3
from pathlib import Path

from spotblue.shelf.copying import is_writable, read_only_copy
from spotblue.shelf.tables import APPLICATION_ID, PAGE_BYTES, SCHEMA, create_tables, has_tables

STEP_SECONDS = 0.25  # of waiting for another program, between which Ctrl-C is heard


def open_database(path: Path, *, filled: bool) -> tuple[sqlite3.Connection, bool]:
    """The database, and whether it keeps what is written: one that may only be read is in memory.

    `filled`: an empty one is none, and none is made. sqlite3.Error or OSError say what is wrong.
    """
    if path.exists():
        if not path.is_file():
            raise sqlite3.DatabaseError("no regular file, so no shelf of this spotblue")
        if not all(is_writable(place) for place in (path, path.absolute().parent)):
            return _ready(read_only_copy(path), filled), False
    return _ready(sqlite3.connect(path, timeout=STEP_SECONDS, isolation_level=None), filled), True


def _ready(base: sqlite3.Connection, filled: bool) -> sqlite3.Connection:
    # Text that is none any more shall be missed by its checksum, and not end the run.
    base.text_factory = lambda data: data.decode("utf-8", "replace")
    try:
        if base.execute("PRAGMA schema_version").fetchone()[0]:
            _refuse_other(base)
        elif filled:
            raise sqlite3.DatabaseError("it is empty, and no shelf of this spotblue")
        else:
            _begin(base)
        if (found := base.execute("PRAGMA integrity_check(1)").fetchone()[0]) != "ok":
            raise sqlite3.DatabaseError(f"malformed: {' '.join(found.split())}")
    except BaseException:
        base.close()
        raise
    base.execute("PRAGMA synchronous=NORMAL")
    return base


def _refuse_other(base: sqlite3.Connection) -> None:
    ours = base.execute("PRAGMA application_id").fetchone()[0] == APPLICATION_ID
    made_by = base.execute("PRAGMA user_version").fetchone()[0]
    if ours and made_by != SCHEMA:
        raise sqlite3.DatabaseError(f"it has format {made_by} of another spotblue, this has {SCHEMA}")
    if not ours:
        raise sqlite3.DatabaseError("it is SQLite, but no shelf of this spotblue")
    if not has_tables(base):
        raise sqlite3.DatabaseError("malformed: its tables are not those that were made")


def _begin(base: sqlite3.Connection) -> None:
    base.execute(f"PRAGMA page_size={PAGE_BYTES}")
    base.execute("PRAGMA journal_mode=WAL")
    base.execute("BEGIN IMMEDIATE")
    create_tables(base)
    base.execute("COMMIT")
