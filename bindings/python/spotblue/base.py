"""Lengths, limits and outcomes: reading and writing lengths, judging a measured one by ISO 14253-1.

Lengths are mm; errors are those of spotblue.errors. Records are made by keyword; several values in
one field are a tuple of copies, so change them by setting the field again. Enumerations are
enum.StrEnum: a member equals its word, and arguments take either.
"""

from spotblue._numbers.base import *  # noqa: F403

__all__ = [name for name in dir() if not name.startswith("_")]
