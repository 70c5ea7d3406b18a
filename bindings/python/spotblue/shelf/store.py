"""The shelf's database: what was found on which content, by which rules, with which version.

One SQLite file in WAL mode. A result is written whole or not at all, once for each key; several
runs may share the file, each taking a short lease on what it works at.
"""

from __future__ import annotations

import json
import logging
import os
import socket
import sqlite3
import time
from collections.abc import Callable
from dataclasses import astuple, dataclass
from pathlib import Path
from typing import Any, TypeVar

import spotblue
from spotblue.shelf.claim import Examined, Row
from spotblue.shelf.opening import open_database
from spotblue.shelf.salvage import sound_rows
from spotblue.shelf.tables import COLUMNS, insert, is_sound, take_out, unsound

# Of what is in the file, and not of the disk or of another program; a read past its end is the first.
DAMAGE = ("SQLITE_IOERR_SHORT_READ", "SQLITE_CORRUPT", "SQLITE_NOTADB", "SQLITE_ERROR")
BUSY_SECONDS = 60.0  # of waiting for another program while files are in hand
IDLE_SECONDS = 8.0  # and before
T = TypeVar("T")
Key = tuple[str, str]  # content and rules
# A file changed in the clock tick in which it was hashed looks unchanged: such a stamp is no proof.
STAMP_PROOF_NS = 2_000_000_000


@dataclass(frozen=True)
class Stamp:
    """Size and times of a file when it was hashed."""

    size: int
    mtime_ns: int
    ctime_ns: int
    hashed_ns: int
    sha256: str

    @staticmethod
    def of(found: os.stat_result, hashed_ns: int, sha256: str) -> Stamp:
        """Of a file as it was found when it began to be hashed."""
        return Stamp(found.st_size, found.st_mtime_ns, found.st_ctime_ns, hashed_ns, sha256)

    def proves(self, found: os.stat_result) -> bool:
        """Whether the file is surely the one that was hashed."""
        return (
            self.size == found.st_size
            and self.mtime_ns == found.st_mtime_ns
            and self.ctime_ns == found.st_ctime_ns
            and self.hashed_ns - self.mtime_ns > STAMP_PROOF_NS
        )


def _started(pid: int) -> str:
    """When a process of this machine started, in clock ticks; empty when there is none."""
    try:
        return Path(f"/proc/{pid}/stat").read_text().rpartition(")")[2].split()[19]
    except OSError:
        return ""


def _me() -> str:
    return json.dumps([socket.gethostname(), os.getpid(), _started(os.getpid())])


def _alive(owner: str) -> bool:
    host, pid, started = json.loads(owner)
    return bool(host != socket.gethostname() or _started(pid) == started)


class Store:
    """An open database; every failure is one Error that names it and the cure.

    `filled`: for one that is only asked, so an empty file is none and nothing is made of it. One that
    may not be written to is read into memory. The log "spotblue.shelf" has a line for what is left out.
    """

    def __init__(self, path: Path, version: str, *, filled: bool = False) -> None:
        self.path = path
        self.filled = filled
        self.version = version
        self.owner = _me()
        self.leased: set[Key] = set()
        self.passing: dict[Key, list[Row]] = {}
        self.base = self._guarded(self._open)
        self._sift()

    def _guarded(self, work: Callable[[], T]) -> T:
        """Waits for a file that another run holds, in short steps so that Ctrl-C is heard."""
        end = time.monotonic() + (BUSY_SECONDS if self.leased else IDLE_SECONDS)
        while True:
            try:
                return work()
            except sqlite3.Error as error:
                if "locked" not in str(error) or time.monotonic() > end:
                    raise self._error(str(error), self._salvaged(error)) from None
                time.sleep(0.05)
            except (OSError, ValueError) as error:  # the latter for a zero byte in its name
                raise self._error(getattr(error, "strerror", None) or str(error)) from None

    def _error(self, rule: str, saved: str = "") -> spotblue.Error:
        another = "another that spotblue library has filled" if self.filled else "another with --database"
        cures = {
            "is full": "make room; what was written before is kept, and the next run goes on there",
            "i/o error": "make room or mend the disk; what was written before is kept",
            "readonly": f"make it writable, or name {another}",
            "read-only": f"make it writable, or name {another}",
            "unable to open": f"make its folder and make it writable, or name {another}",
            "not a database": f"name {another}; this one is left as it is",
            "malformed": "move it away and run spotblue library again",
            "no shelf": f"name {another}; this one is left as it is",
            "format": f"move it away, or name {another}; this one is left as it is",
            "null byte": f"name {another}",
            "locked": "another program holds it: wait until it is done",
        }
        found = (cure for key, cure in cures.items() if key in rule.lower())
        cure = saved or next(found, "look at the disk")
        text = f"{self.path}: database: {rule}; {cure}"
        kind = spotblue.MachineError if "is full" in rule.lower() else spotblue.FileAccessError
        return kind(text, str(self.path), "", rule, cure)

    def _salvaged(self, error: sqlite3.Error) -> str:
        """Puts what is sound in a damaged database into a new one beside it; empty for nothing."""
        name = getattr(error, "sqlite_errorname", "SQLITE_CORRUPT")
        if ".salvaged" in self.path.name or not name.startswith(DAMAGE):
            return ""
        try:
            sound = sound_rows(self.path)
            if not sound["result"]:
                return ""
            beside = self.path.with_name(f"{self.path.stem}.salvaged{self.path.suffix}")
            store = Store(beside, self.version)
        except (OSError, ValueError):  # of a file that is gone, or a folder that is read-only
            return ""
        try:
            store._change(lambda base: [insert(base, "IGNORE", *rows) for rows in sound.items()])
        except spotblue.Error:
            return ""
        finally:
            store.close()
        number = len(sound["result"])
        return f"its {number} sound results are in {beside.name}: name that one, or put it in its place"

    def _open(self) -> sqlite3.Connection:
        base, kept = open_database(self.path, filled=self.filled)
        if not kept and not self.filled:
            self._tell("it may only be read, so nothing new is kept")
        return base

    def _sift(self) -> None:
        """Takes out what is not as it was written, so that it is worked out anew."""
        if self.filled or not self._guarded(lambda: unsound(self.base)):
            return
        taken = self._change(lambda base: take_out(base, unsound(base)))
        self._tell(f"{taken} damaged rows are not believed and are worked out anew")

    def _tell(self, what: str) -> None:
        logging.getLogger("spotblue.shelf").warning("%s: database: %s", self.path, what)

    def _change(self, work: Callable[[sqlite3.Connection], T]) -> T:
        def whole() -> T:
            self.base.execute("BEGIN IMMEDIATE")
            try:
                value = work(self.base)
                self.base.execute("COMMIT")
                return value
            except BaseException:
                if self.base.in_transaction:
                    self.base.execute("ROLLBACK")
                raise

        return self._guarded(whole)

    def stamps(self) -> dict[str, Stamp]:
        """What is known of each file, by its path."""
        rows = self._guarded(
            lambda: self.base.execute(
                "SELECT path, size, mtime_ns, ctime_ns, hashed_ns, sha256 FROM file"
            ).fetchall()
        )
        return {row[0]: Stamp(*row[1:]) for row in rows}

    def keep_stamps(self, stamps: dict[str, Stamp]) -> None:
        """Remembers the content of files."""
        rows = [(path, *astuple(stamp)) for path, stamp in stamps.items()]
        if rows:
            self._change(lambda base: insert(base, "REPLACE", "file", rows))

    def forget_stamp(self, path: str) -> None:
        """The file was not to be had, or changed while it was read: the next run hashes it again."""
        self._change(lambda base: base.execute("DELETE FROM file WHERE path=?", (path,)))

    def done(self) -> set[Key]:
        """Content and rules of every result of this version."""
        rows = self._guarded(
            lambda: self.base.execute(
                "SELECT sha256, rules FROM result WHERE version=?", (self.version,)
            ).fetchall()
        )
        return set(rows)

    def refuse_unfilled(self) -> None:
        """FileAccessError when this version has looked at nothing: no answer could be had of it."""
        found = self._guarded(
            lambda: self.base.execute(
                "SELECT DISTINCT version=? FROM result", (self.version,)
            ).fetchall()
        )
        if (1,) not in found:
            rule = "is filled by another version" if found else "has no results yet"
            cure = "run spotblue library MANIFEST first"
            text = f"{self.path}: {rule}; {cure}"
            raise spotblue.FileAccessError(text, str(self.path), "", rule, cure)

    def results(self) -> dict[Key, list[Row]]:
        """Every result of this version and the passing ones of this run, by content and rules."""
        rows = self._guarded(
            lambda: self.base.execute(
                "SELECT sha256, rules, rows FROM result WHERE version=?", (self.version,)
            ).fetchall()
        )
        return self.passing | {(row[0], row[1]): _rows(row[2]) for row in rows}

    def result(self, key: Key) -> list[Row] | None:
        """One result, for example of another run that shares the file."""
        found = self._guarded(
            lambda: self.base.execute(
                "SELECT rows FROM result WHERE sha256=? AND rules=? AND version=?",
                (*key, self.version),
            ).fetchall()
        )
        return _rows(found[0][0]) if found else None

    def lease(self, keys: list[Key], seconds: float) -> set[Key]:
        """Takes the work on these contents and rules, less what a living run has or has done."""

        def take(base: sqlite3.Connection) -> set[Key]:
            return {key for key in keys if self._take(base, (*key, self.version), seconds)}

        taken = self._change(take)
        self.leased |= taken
        return taken

    def _take(self, base: sqlite3.Connection, key: tuple[str, str, str], seconds: float) -> bool:
        where = "WHERE sha256=? AND rules=? AND version=?"
        if base.execute(f"SELECT 1 FROM result {where}", key).fetchone():
            return False
        row = base.execute(f"SELECT owner, until FROM lease {where}", key).fetchone()
        if row and row[0] != self.owner and row[1] > time.time() and _alive(row[0]):
            return False
        insert(base, "REPLACE", "lease", [(*key, self.owner, time.time() + seconds)])
        return True

    def keep(self, results: list[tuple[Key, Examined]]) -> None:
        """Writes results and ends their leases; a second one for the same key is left out.

        Passing ones are held for this run only: the next, or one that shares, does the work.
        """
        lasting = [(key, done) for key, done in results if not done.passing]
        self.passing |= {key: done.rows for key, done in results if done.passing}

        def write(base: sqlite3.Connection) -> None:
            for key, done in lasting:
                self._write(base, key, done)

        self._change(write)
        self.leased -= {key for key, _ in lasting}

    def _write(self, base: sqlite3.Connection, key: Key, done: Examined) -> None:
        rows = json.dumps([row.to_dict() for row in done.rows])
        features = {
            f["id"]: (
                done.sha256, self.version, f["id"], f["part"], f["word"], f["size_mm"],
                json.dumps({name: f[name] for name in ("at", "along", "ends", "coverage_deg")}),
            )
            for f in done.features
        }  # fmt: skip
        result = (done.sha256, key[1], self.version, rows, done.seconds, len(features))
        if insert(base, "IGNORE", "result", [result]):
            insert(base, "REPLACE", "feature", features.values())
        base.execute(
            "DELETE FROM lease WHERE sha256=? AND rules=? AND version=?",
            (*key, self.version),
        )

    def features(self, word: str, least_mm: float, most_mm: float) -> list[dict[str, Any]]:
        """Features of one kind and a range of sizes with the files that have them; mm."""
        found = self._guarded(
            lambda: self.base.execute(
                "SELECT file.*, feature.* FROM feature JOIN file ON file.sha256 = feature.sha256 "
                "WHERE version=? AND word=? AND size_mm BETWEEN ? AND ? ORDER BY file.path, id",
                (self.version, word, least_mm, most_mm),
            ).fetchall()
        )
        stamp = COLUMNS["file"].count(",") + 2
        sound = [
            row for row in found if is_sound("file", row[:stamp]) and is_sound("feature", row[stamp:])
        ]
        if len(sound) < len(found):
            lost = len(found) - len(sound)
            self._tell(f"{lost} damaged rows are left out; spotblue library MANIFEST works them out anew")
        return [
            {"file": row[0], "id": row[stamp + 2], "part": row[stamp + 3], "size_mm": row[stamp + 5],
             **json.loads(row[stamp + 6])}
            for row in sound
        ]  # fmt: skip

    def features_of(self, sha256: str) -> list[tuple[str, str, str, float]]:
        """Id, part, kind and size of each feature of size of one content."""
        return self._guarded(
            lambda: self.base.execute(
                "SELECT id, part, word, size_mm FROM feature WHERE sha256=? AND version=? ORDER BY id",
                (sha256, self.version),
            ).fetchall()
        )

    def close(self) -> None:
        """Gives up what was leased and not done, and closes the file."""
        try:
            for sha256, rules in list(self.leased):
                self._change(
                    lambda base, key=(sha256, rules): base.execute(  # type: ignore[misc]
                        "DELETE FROM lease WHERE sha256=? AND rules=? AND owner=?",
                        (*key, self.owner),
                    )
                )
        except spotblue.Error:
            pass  # a full disk: the leases end by themselves with this process
        self.base.close()


def _rows(text: str) -> list[Row]:
    return [Row(**fields) for fields in json.loads(text)]
