"""The kernel's errors: each names the file, the place in it, the rule that was broken and the cure."""

from __future__ import annotations


class Error(Exception):
    """Every error of spotblue; str() is one line with file, place, rule and cure."""

    def __init__(
        self, message: str, file: str = "", place: str = "", rule: str = "", cure: str = ""
    ) -> None:
        super().__init__(message)
        self.message = message
        self.file = file
        self.place = place
        self.rule = rule
        self.cure = cure

    def __str__(self) -> str:
        return self.message

    def __reduce__(self) -> tuple[type[Error], tuple[str, str, str, str, str]]:
        return type(self), (self.message, self.file, self.place, self.rule, self.cure)


class BadInputError(Error, ValueError):
    """A value, a name or a file's content breaks a stated rule."""


class NotInStandardError(BadInputError):
    """The standard defines no such class, size or symbol."""


class FileAccessError(Error, OSError):
    """A file is missing, unreadable or cannot be written."""


class UnreadableError(Error, OSError):
    """A file was opened, but no true model can be had from it."""


class IncompleteError(UnreadableError):
    """A file reads, yet less arrives than its text declares."""


class KernelFailureError(Error, RuntimeError):
    """The CAD kernel failed at an operation it should be able to do."""
