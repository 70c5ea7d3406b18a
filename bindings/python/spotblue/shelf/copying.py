"""A database that may not be written to, in memory: everything can be done with that but keep."""

from __future__ import annotations

import os
import shutil
import sqlite3
from contextlib import closing
from pathlib import Path
from urllib.parse import quote

from spotblue.shelf import folders


def _copied(source: str) -> sqlite3.Connection:
    memory = sqlite3.connect(":memory:", isolation_level=None)
    try:
        with closing(sqlite3.connect(source, uri=True)) as base:
            base.backup(memory)
    except BaseException:
        memory.close()
        raise
    return memory


def _address(path: Path, how: str) -> str:
    return f"file:{quote(os.fsencode(path))}?{how}"


def is_writable(place: Path) -> bool:
    """Whether this process may write there, as far as can be told without doing it."""
    return os.access(place, os.W_OK, effective_ids=True)


def read_only_copy(path: Path) -> sqlite3.Connection:
    """A copy in memory that can be changed; sqlite3.Error or OSError when it cannot be read."""
    true = Path(os.path.realpath(path))
    try:
        return _copied(_address(true, "mode=ro"))
    except sqlite3.OperationalError as error:
        if "locked" in str(error):
            raise
    # SQLite makes a file beside it even to read: where none can be made, nobody writes there either.
    log = true.with_name(true.name + "-wal")
    if not log.exists() or log.stat().st_size == 0:
        return _copied(_address(true, "mode=ro&immutable=1"))
    folder, _ = folders.make()
    try:
        copy = Path(folder) / "copy"
        for source, end in ((true, ""), (log, "-wal")):
            shutil.copyfile(source, f"{copy}{end}")
        return _copied(_address(copy, "mode=rw"))
    finally:
        folders.remove(folder)
