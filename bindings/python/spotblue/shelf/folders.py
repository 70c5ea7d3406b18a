"""Folders for temporary files: gone with whoever made them, or swept by a later run.

A folder's name has its maker's process, and a lock is held on it by the maker, and by the worker that
was given it, for as long as either lives: a name alone could be another machine's or another time's.
"""

from __future__ import annotations

import fcntl
import os
import re
import shutil
import tempfile
from pathlib import Path

_NAME = re.compile(r"spotblue-shelf-([0-9]{1,9})-\w+")
_made: dict[str, int] = {}  # this process's, with the descriptors that lock them


def _place() -> str:
    """Where the kernel, too, has its temporary files; tempfile would write one there to find out."""
    return os.path.abspath(os.environ.get("TMPDIR") or "/tmp")


def make() -> tuple[str, int]:
    """A new one and the descriptor that locks it, which a child may be given; OSError for none."""
    folder = tempfile.mkdtemp(prefix=f"spotblue-shelf-{os.getpid()}-", dir=_place())
    handle = os.open(folder, os.O_RDONLY | os.O_DIRECTORY | os.O_CLOEXEC)
    _made[folder] = handle
    _locked(handle)
    return folder, handle


def remove(folder: str) -> None:
    """It and what is in it, as far as it can be; twice does no harm."""
    shutil.rmtree(folder, ignore_errors=True)
    handle = _made.pop(folder, None)
    if handle is not None:
        os.close(handle)


def remove_all() -> None:
    """All that this process has made, where it ends there and then."""
    for folder in list(_made):
        remove(folder)


def sweep() -> None:
    """Removes what processes of this user have left that were killed."""
    for folder in Path(_place()).glob("spotblue-shelf-*"):
        name = _NAME.fullmatch(folder.name)
        if name is None or str(folder) in _made or _is_another(int(name[1])):
            continue
        try:
            handle = os.open(folder, os.O_RDONLY | os.O_DIRECTORY | os.O_NOFOLLOW | os.O_CLOEXEC)
        except OSError:
            continue
        try:
            if os.fstat(handle).st_uid == os.geteuid() and _locked(handle):
                shutil.rmtree(folder, ignore_errors=True)
        finally:
            os.close(handle)


def _is_another(process: int) -> bool:
    return process != os.getpid() and os.path.exists(f"/proc/{process}")


def _locked(handle: int) -> bool:
    try:
        fcntl.flock(handle, fcntl.LOCK_EX | fcntl.LOCK_NB)
    except OSError:  # it is held, or there are no locks in this file system
        return False
    return True
