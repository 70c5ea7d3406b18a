"""What is sound in a damaged database: rows are taken from its pages, past all that leads to them.

Each row's own checksum says whether it is whole, so that neither the header nor a tree of pages, nor
the log beside the database, has to be. Pages and records: "Database File Format" and "WAL-mode File
Format", sqlite.org.
"""

from __future__ import annotations

import os
import struct
from collections.abc import Iterator
from pathlib import Path
from typing import Any

from spotblue.shelf.tables import COLUMNS, PAGE_BYTES, is_sound

_LEAF = 0x0D  # first byte of a page with a table's rows
_WAL_HEAD, _FRAME_HEAD = 32, 24
_MOST_LOCAL = PAGE_BYTES - 35
_LEAST_LOCAL = (PAGE_BYTES - 12) * 32 // 255 - 23
_KEPT = ("file", "result", "feature")  # a lease is of no use to anyone else
_WHOLE = {1: 1, 2: 2, 3: 3, 4: 4, 5: 6, 6: 8}  # bytes of a whole number by its type


class _Torn(ValueError):
    """What looked like a row is none."""


def _varint(data: bytes, at: int) -> tuple[int, int]:
    value = 0
    for step in range(9):
        byte = data[at + step]
        if step == 8:
            return (value << 8) | byte, at + 9
        value = (value << 7) | (byte & 0x7F)
        if byte < 0x80:
            return value, at + step + 1
    raise _Torn


def _record(data: bytes) -> list[Any]:
    head, at = _varint(data, 0)
    if head > len(data):
        raise _Torn
    values: list[Any] = []
    body = head
    while at < head:
        kind, at = _varint(data, at)
        size = _WHOLE.get(kind, 8 if kind == 7 else max(0, kind - 12) // 2)
        cell = data[body : body + size]
        body += size
        if len(cell) < size:
            raise _Torn
        if kind in _WHOLE:
            values.append(int.from_bytes(cell, "big", signed=True))
        elif kind == 7:
            values.append(struct.unpack(">d", cell)[0])
        elif kind in (8, 9):
            values.append(kind - 8)
        elif kind >= 13 and kind % 2:
            values.append(cell.decode("utf-8"))
        else:
            raise _Torn  # no column of these is empty or binary
    return values


class _Pages:
    """All pages that there are: the database's own, and those in its log, the newest first."""

    def __init__(self, path: Path) -> None:
        self.main = path.read_bytes() if path.is_file() else b""  # a pipe would be waited for
        self.logged: list[tuple[int, bytes]] = []
        wal = Path(os.path.realpath(path) + "-wal")
        log = wal.read_bytes() if wal.is_file() else b""
        step = _FRAME_HEAD + PAGE_BYTES
        for at in range(_WAL_HEAD, len(log) - step + 1, step):
            (number,) = struct.unpack_from(">I", log, at)
            self.logged.append((number, log[at + _FRAME_HEAD : at + step]))
        self.newest = dict(self.logged)
        self.bytes = len(self.main) + len(log)

    def leaves(self) -> Iterator[tuple[bytes, int]]:
        """Pages that may have rows, and where their head begins."""
        for _, page in reversed(self.logged):
            yield page, 0
        for at in range(0, len(self.main), PAGE_BYTES):
            yield self.main[at : at + PAGE_BYTES], 100 if at == 0 else 0

    def numbered(self, number: int) -> bytes:
        """A page by its number, which begins with 1."""
        at = (number - 1) * PAGE_BYTES
        page = self.newest.get(number) or self.main[at : at + PAGE_BYTES]
        if number < 1 or len(page) < PAGE_BYTES:
            raise _Torn
        return page


def _payload(pages: _Pages, page: bytes, at: int) -> bytes:
    size, at = _varint(page, at)
    _, at = _varint(page, at)
    if size > pages.bytes:
        raise _Torn
    if size <= _MOST_LOCAL:
        return page[at : at + size]
    local = _LEAST_LOCAL + (size - _LEAST_LOCAL) % (PAGE_BYTES - 4)
    local = local if local <= _MOST_LOCAL else _LEAST_LOCAL
    data = bytearray(page[at : at + local])
    (following,) = struct.unpack_from(">I", page, at + local)
    while len(data) < size and following:
        page = pages.numbered(following)
        (following,) = struct.unpack_from(">I", page, 0)
        data += page[4 : 4 + size - len(data)]
    return bytes(data)


def _rows(pages: _Pages) -> Iterator[list[Any]]:
    for page, head in pages.leaves():
        if len(page) <= head + 8 or page[head] != _LEAF:
            continue
        (count,) = struct.unpack_from(">H", page, head + 3)
        for place in range(head + 8, min(head + 8 + 2 * count, len(page) - 1), 2):
            try:
                yield _record(_payload(pages, page, struct.unpack_from(">H", page, place)[0]))
            except (ValueError, IndexError, struct.error):
                continue  # also of text that is no UTF-8


def sound_rows(path: Path) -> dict[str, list[list[Any]]]:
    """Rows by table, each once and without its checksum, of results all of whose features are there.

    OSError when the file cannot be read.
    """
    found: dict[str, dict[tuple[Any, ...], list[Any]]] = {table: {} for table in _KEPT}
    for row in _rows(_Pages(path)):
        for table in _KEPT:
            if len(row) == COLUMNS[table].count(",") + 2 and is_sound(table, row):
                found[table].setdefault(tuple(row[:-1]), row[:-1])
    stamps: dict[str, list[Any]] = {}
    for path_, *rest in sorted(found["file"].values(), key=lambda row: int(row[4])):
        stamps[path_] = [path_, *rest]  # the last that was hashed
    features = list(found["feature"].values())
    counts: dict[tuple[str, str], int] = {}
    for sha256, version, *_ in features:
        counts[sha256, version] = counts.get((sha256, version), 0) + 1
    results = [row for row in found["result"].values() if counts.get((row[0], row[2]), 0) == row[5]]
    whole = {(row[0], row[2]) for row in results}
    features = [row for row in features if (row[0], row[1]) in whole]
    return {"file": list(stamps.values()), "result": results, "feature": features}
