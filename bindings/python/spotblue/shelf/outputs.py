"""Where results go: nothing that a run reads or keeps is written over, a device is written to as it is.

A file appears whole or not at all.
"""

from __future__ import annotations

import errno
import os
import re
import secrets
import stat
from collections.abc import Iterable, Iterator
from pathlib import Path

import spotblue
from spotblue._kernel import shelf as kernel
from spotblue.base import shown_name

STANDARD_OUTPUT = "-"
_NO_ROOM = (errno.ENOSPC, errno.EDQUOT, errno.EFBIG)
_NULL = os.makedev(1, 3)
SQLITE = b"SQLite format 3\0"  # how every database of it begins
reader_has_gone = False  # of standard output
_drafts: set[str] = set()

Key = str | tuple[int, int]


def _stat(path: str | Path | int) -> os.stat_result | None:
    """None for what is not there, or can be nowhere."""
    try:
        return os.stat(path)
    except (OSError, ValueError):
        return None


def true_path(path: str | Path) -> str:
    """Without links and ups, as far as it is there."""
    try:
        return os.path.realpath(path)
    except ValueError:  # a zero byte, which no file's name has
        return str(path)


def _keys(path: str | Path | int) -> Iterator[Key]:
    """What tells a file by whatever spelling, link or descriptor it is named."""
    found = _stat(path)
    if found is not None and stat.S_ISCHR(found.st_mode) and found.st_rdev == _NULL:
        return  # what keeps nothing can lose nothing
    if not isinstance(path, int):
        yield true_path(path)
    if found is not None:
        yield found.st_dev, found.st_ino


def _refused(option: str, target: str, rule: str, cure: str) -> spotblue.BadInputError:
    shown = shown_name(target)
    return spotblue.BadInputError(
        f"{option} {shown}: {rule}; {cure}", shown, option, rule, cure
    )


def refuse_overwriting(targets: dict[str, str], kept: Iterable[tuple[str, Path]]) -> None:
    """Refuses results that would be written over each other or over what is kept.

    `targets` has what is written by its option, "-" for standard output; `kept` what each file of
    the run is ("the manifest") and where. BadInputError names both.
    """
    taken: dict[Key, tuple[str, str]] = {}
    for option, target in targets.items():
        keys = [*_keys(1), STANDARD_OUTPUT] if target == STANDARD_OUTPUT else [*_keys(target)]
        for other, its in (taken[key] for key in keys if key in taken):
            rule = f"{other} {shown_name(its)} goes there too, and one would spoil the other"
            raise _refused(option, target, rule, "give each a file of its own")
        taken |= dict.fromkeys(keys, (option, target))
    if not taken:
        return
    for what, path in kept:
        option, target = taken.get(_key(path), ("", STANDARD_OUTPUT))
        if target != STANDARD_OUTPUT:  # what the shell sent there is lost already
            rule = f"this is {what} {shown_name(path)}, which would be lost"
            raise _refused(option, target, rule, "give another name")


def _key(path: Path) -> Key:
    """One of _keys, at the price of one look: a shelf has many files."""
    found = _stat(path)
    return true_path(path) if found is None else (found.st_dev, found.st_ino)


def refuse_precious(option: str, target: str) -> None:
    """Refuses to put a report in place of a database or a model, whoever uses that."""
    try:
        if target == STANDARD_OUTPUT or not stat.S_ISREG(os.stat(target).st_mode):
            return
        with open(target, "rb") as opened:
            head = opened.read(len(SQLITE))
        what = "a database" if head == SQLITE else ""
        if not what and head and spotblue.is_model_file(target):
            what = "a model"
    except (OSError, ValueError, spotblue.Error):
        return  # not there, or not to be read: writing tells
    if what:
        raise _refused(option, target, f"this is {what}, which would be lost", "give another name")


def terminal_width(descriptor: int) -> int:
    """Columns of the terminal that it is, else by COLUMNS, else 80; 0 for none."""
    if not os.isatty(descriptor):
        return 0
    try:
        told = os.get_terminal_size(descriptor).columns
    except OSError:
        told = 0
    columns = os.environ.get("COLUMNS", "")
    return told or (int(columns) if re.fullmatch("[0-9]{1,6}", columns) else 0) or 80


def _write_all(descriptor: int, data: bytes) -> None:
    while data:
        data = data[os.write(descriptor, data) :]


def say(text: str, option: str = "") -> None:
    """Writes a result to standard output, UTF-8 whatever the locale.

    That its reader has gone away is no error, and ends nothing else that is to be written.
    """
    global reader_has_gone
    try:
        _write_all(1, text.encode("utf-8", "backslashreplace"))
    except BrokenPipeError:
        reader_has_gone = True
    except OSError as error:
        raise _cannot(error, f"{option} -" if option else "standard output") from None


def write_result(path: Path | str, text: str, option: str = "") -> None:
    """Writes a file that appears whole or not at all; when it cannot, an error names `option`.

    A link stays and what it leads to is replaced; a device or a pipe is written to.
    """
    data = text.encode("utf-8", "replace")
    place = f"{option} {shown_name(path)}".strip()
    try:
        try:
            there = os.stat(path)
        except FileNotFoundError:
            there = None
        stream = _standard_stream(there)
        if stream is not None:
            _write_all(stream, data)  # it may have been begun: >> log
        elif there is None or stat.S_ISREG(there.st_mode):
            kernel.write_whole(true_path(path), data)
        else:
            kernel.write_whole(path, data)
    except spotblue.Error as error:
        raise _failed(type(error), place, error.rule, error.cure) from None
    except (OSError, ValueError) as error:
        raise _cannot(error, place) from None


def _standard_stream(found: os.stat_result | None) -> int | None:
    """Standard output or error, where an ordinary file is that."""
    for stream in (1, 2):
        try:
            if found and stat.S_ISREG(found.st_mode) and os.path.samestat(found, os.fstat(stream)):
                return stream
        except OSError:
            continue  # it is closed
    return None


def write_new(path: Path, text: str) -> None:
    """The same for a file that must not be there yet: FileAccessError when it is."""
    draft = str(path.with_name(f".spotblue-{secrets.token_hex(6)}"))
    _drafts.add(draft)
    try:
        kernel.write_whole(draft, text.encode("utf-8", "replace"))
        _put_beside(draft, path)
    except spotblue.Error as error:
        raise _failed(type(error), shown_name(path), error.rule, error.cure) from None
    except OSError as error:
        raise _cannot(error, shown_name(path)) from None
    finally:
        _remove(draft)
        _drafts.discard(draft)


def _put_beside(draft: str, path: Path) -> None:
    try:
        os.link(draft, path)
    except FileExistsError:
        raise
    except OSError:  # a file system without links
        os.close(os.open(path, os.O_WRONLY | os.O_CREAT | os.O_EXCL | os.O_CLOEXEC))
        os.replace(draft, path)


def _remove(draft: str) -> None:
    try:
        os.unlink(draft)
    except OSError:
        pass  # it is in its place


def remove_drafts() -> None:
    """Takes away what was begun and not put in its place, where the process ends in between."""
    for draft in list(_drafts):
        _remove(draft)


def _cannot(error: OSError | ValueError, place: str) -> spotblue.Error:
    number = error.errno if isinstance(error, OSError) else None
    rule = (getattr(error, "strerror", None) or str(error)).lower()
    if number in _NO_ROOM:
        cure = "make room, or name another place"
        return _failed(spotblue.MachineError, place, "no room is left there", cure)
    if number == errno.EBADF:
        rule, cure = "it is closed", "give it a reader, or name a file"
    else:
        cure = "name a place that can be written"
    return _failed(spotblue.FileAccessError, place, rule, cure)


def _failed(kind: type[spotblue.Error], place: str, rule: str, cure: str) -> spotblue.Error:
    return kind(f"{place}: {rule}; {cure}", place, "", rule, cure)
