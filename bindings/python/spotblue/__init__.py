"""Fit-aware checks of parts and assemblies modelled as STEP solids.

Lengths are mm, angles degrees, unless a name says otherwise; clearance is positive and interference
negative, on the diameter.
"""

from spotblue._kernel import CheckResult, Look, check, look
from spotblue.errors import (
    BadInputError,
    Error,
    FileAccessError,
    IncompleteError,
    KernelFailureError,
    NotInStandardError,
    UnreadableError,
)
from spotblue.shelf.runner import library
from spotblue.shelf.which import which

__all__ = [
    "BadInputError",
    "CheckResult",
    "Error",
    "FileAccessError",
    "IncompleteError",
    "KernelFailureError",
    "Look",
    "NotInStandardError",
    "UnreadableError",
    "check",
    "library",
    "look",
    "which",
]
