"""The kernel's errors: each names the file, the place in it, the rule that was broken and the cure."""

from __future__ import annotations

import sys


_MOST_BYTES = 2000  # of a message, as the kernel's own have


def _shown(text: str, most_bytes: int) -> str:
    if text.isprintable() and 4 * len(text) <= most_bytes:
        return text
    from spotblue._numbers.base import shortened, shown_text  # made after these classes

    return shortened(shown_text(text), most_bytes)


class Error(Exception):
    """Every error of spotblue; str() is one line with file, place, rule and cure.

    `file` is in its shown form: base.path_of_shown(error.file) is what open() takes.
    """

    def __init__(
        self, message: str, file: str = "", place: str = "", rule: str = "", cure: str = ""
    ) -> None:
        self.message = _shown(message, _MOST_BYTES)
        super().__init__(self.message)
        self.file = _shown(file, sys.maxsize)
        self.place = _shown(place, _MOST_BYTES)
        self.rule = _shown(rule, _MOST_BYTES)
        self.cure = _shown(cure, _MOST_BYTES)

    def __str__(self) -> str:
        return self.message

    def __reduce__(self) -> tuple[type[Error], tuple[str, str, str, str, str]]:
        return type(self), (self.message, self.file, self.place, self.rule, self.cure)


class BadInputError(Error, ValueError):
    """A value, a name or a file's content breaks a stated rule."""


class NotInStandardError(BadInputError):
    """The standard defines no such class, size or symbol."""


class FileAccessError(Error, OSError):
    """A file is missing, may not be read or cannot be written."""


class MissingPackageError(FileAccessError):
    """A Python package that is needed for this alone is not installed, or does not load."""


def missing_package(name: str, needed_for: str, why: Exception) -> MissingPackageError:
    """The error of an import that failed: what it is for, and how it is mended."""
    if isinstance(why, ModuleNotFoundError) and why.name == name:
        rule = f"the Python package {name} is not installed, and {needed_for} needs it"
        cure = f"apt-get install python3-{name}"
    else:
        # numpy tells its reason in a page of advice; the last line is the loader's own.
        lines = [line.strip() for line in str(why).splitlines() if line.strip()]
        said = lines[-1] if lines else type(why).__name__
        rule = f"the Python package {name} does not load, and {needed_for} needs it: {said}"
        cure = f"apt-get install --reinstall python3-{name}, or take away what stands before it"
    return MissingPackageError(f"{rule}; {cure}", rule=rule, cure=cure)


class UnreadableError(Error, OSError):
    """A file was opened, but no true model can be had from it."""


class IncompleteError(UnreadableError):
    """A file reads, yet less arrives than its text declares."""


class OpenCascadeError(Error, RuntimeError):
    """Open CASCADE failed at an operation it should be able to do."""


class StoppedError(Error, RuntimeError):
    """It ended before it was done: the time or memory that it was given was up, or it was asked to."""


class MachineError(Error, OSError):
    """The machine lacked memory, disk, processes or what else it takes, which is no file's fault."""
