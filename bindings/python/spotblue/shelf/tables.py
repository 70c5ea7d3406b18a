"""The tables of the shelf's database; each row ends with a checksum of its table, key and content."""

from __future__ import annotations

import hashlib
import sqlite3
from collections.abc import Iterable, Sequence
from typing import Any

APPLICATION_ID = 0x5B0B100E
SCHEMA = 2
PAGE_BYTES = 4096
COLUMNS = {
    "file": "path TEXT, size INTEGER, mtime_ns INTEGER, ctime_ns INTEGER, hashed_ns INTEGER, "
    "sha256 TEXT",
    # `features`: how many of its content's there are, so that a lost one is missed.
    "result": "sha256 TEXT, rules TEXT, version TEXT, rows TEXT, seconds REAL, features INTEGER",
    "feature": "sha256 TEXT, version TEXT, id TEXT, part TEXT, word TEXT, size_mm REAL, form TEXT",
    "lease": "sha256 TEXT, rules TEXT, version TEXT, owner TEXT, until REAL",
}
KEYS = {
    "file": "path",
    "result": "sha256, rules, version",
    "feature": "sha256, version, id",
    "lease": "sha256, rules, version",
}


def _statement(table: str) -> str:
    columns = COLUMNS[table].replace(",", " NOT NULL,")
    return f"{table} ({columns} NOT NULL, checksum TEXT NOT NULL, PRIMARY KEY ({KEYS[table]}))"


_INDEX = "feature_size ON feature (word, size_mm)"


def create_tables(base: sqlite3.Connection) -> None:
    """Within a transaction of an empty database, or of one that another run has begun as well."""
    base.execute(f"PRAGMA application_id={APPLICATION_ID}")
    base.execute(f"PRAGMA user_version={SCHEMA}")
    for table in COLUMNS:
        base.execute(f"CREATE TABLE IF NOT EXISTS {_statement(table)}")
    base.execute(f"CREATE INDEX IF NOT EXISTS {_INDEX}")


def has_tables(base: sqlite3.Connection) -> bool:
    """Whether they are there as they were created, to the letter."""
    found = {row[0] for row in base.execute("SELECT sql FROM sqlite_master WHERE sql NOT NULL")}
    return {f"CREATE TABLE {_statement(table)}" for table in COLUMNS} <= found


_REAL = {
    table: [column.endswith(" REAL") for column in said.split(", ")]
    for table, said in COLUMNS.items()
}


def checksum(table: str, values: Sequence[Any]) -> str:
    """Of a row without its last column; 64 bits as 16 hex digits. A real number may be given whole."""
    typed = (float(v) if real and isinstance(v, int) else v for v, real in zip(values, _REAL[table]))
    said = "\0".join(map(str, (table, *typed)))
    return hashlib.sha256(said.encode("utf-8", "surrogatepass")).hexdigest()[:16]


def is_sound(table: str, row: Sequence[Any]) -> bool:
    """Whether a whole row is the one that was written."""
    return bool(row[-1] == checksum(table, row[:-1]))


Unsound = dict[str, list[int]]  # row numbers by table


def unsound(base: sqlite3.Connection) -> Unsound:
    """Rows that are not as they were written, and results that have lost features; empty for none."""
    found: Unsound = {}
    counts: dict[tuple[str, str], int] = {}
    for table in ("feature", "file", "lease", "result"):
        for number, *row in base.execute(f"SELECT rowid, * FROM {table}"):
            sound = is_sound(table, row)
            if table == "feature" and sound:
                counts[row[0], row[1]] = counts.get((row[0], row[1]), 0) + 1
            elif table == "result":
                sound = sound and row[5] == counts.get((row[0], row[2]), 0)
            if not sound:
                found.setdefault(table, []).append(number)
    return found


def take_out(base: sqlite3.Connection, rows: Unsound) -> int:
    """Deletes them; how many they were."""
    for table, numbers in rows.items():
        base.executemany(f"DELETE FROM {table} WHERE rowid=?", [(number,) for number in numbers])
    return sum(map(len, rows.values()))


def insert(
    base: sqlite3.Connection, how: str, table: str, rows: Iterable[Sequence[Any]]
) -> int:
    """Writes rows without their checksums; `how` is "IGNORE" or "REPLACE". The number written."""
    marks = ",".join("?" * (COLUMNS[table].count(",") + 2))
    return base.executemany(
        f"INSERT OR {how} INTO {table} VALUES ({marks})",
        [(*row, checksum(table, row)) for row in rows],
    ).rowcount
