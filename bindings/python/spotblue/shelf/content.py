"""What the bytes of a model are known by, and whether they stayed the same while they were read."""

from __future__ import annotations

import errno
import hashlib
import os
import re
from dataclasses import dataclass
from pathlib import Path

CHUNK = 1 << 20
CHANGED = "it changed while it was looked at"


def sha256_of(path: Path) -> str:
    """Of a file's bytes, lower-case hex."""
    digest = hashlib.sha256()
    with path.open("rb") as stream:
        while chunk := stream.read(CHUNK):
            digest.update(chunk)
    return digest.hexdigest()


def referred_by(path: Path) -> str:
    """Names of STEP files that a file may leave shapes to, a line each; empty for most files."""
    text = path.read_bytes()
    if b"DOCUMENT_FILE" not in text:
        return ""
    names = re.findall(rb"'([^'/\\\\:\r\n]+\.(?:stp|step|p21))'", text, re.IGNORECASE)
    return "\n".join(sorted({name.decode("utf-8", "replace") for name in names}))


def _is_plain_file(path: Path) -> bool:
    try:
        return not path.is_symlink() and path.is_file()
    except OSError as error:
        if error.errno == errno.ENAMETOOLONG:
            return False  # no file can have this name
        raise


def beside_digest(path: Path, names: str, met: dict[str, Path] | None = None) -> str:
    """Of the files of these names beside it, and of those that they refer to in turn.

    `met` gets each of them; OSError for one that is there and cannot be read.
    """
    met = {path.name: path} if met is None else met
    digest = hashlib.sha256()
    for name in filter(None, names.split("\n")):
        other = path.parent / name
        if name in met or not _is_plain_file(other):
            continue
        met[name] = other
        digest.update(os.fsencode(name) + b"\0" + sha256_of(other).encode())
        digest.update(beside_digest(other, referred_by(other), met).encode())
    return digest.hexdigest()


@dataclass(frozen=True)
class State:
    """A model and what lies beside it at one moment: two that are equal had nothing in between.

    `places` has device, inode, size and both times of each file: one that was taken away and put
    back has another time of change.
    """

    beside: str  # empty for a model that refers to no other
    places: tuple[tuple[int, ...], ...]


def state_of(path: Path, *, refers: bool) -> State:
    """The state now; OSError for a file that is not to be had. `refers`: look beside it, too."""
    found = {path.name: path}
    beside = beside_digest(path, referred_by(path), found) if refers else ""
    stats = [os.stat(each) for each in found.values()]
    return State(
        beside,
        tuple((s.st_dev, s.st_ino, s.st_size, s.st_mtime_ns, s.st_ctime_ns) for s in stats),
    )
