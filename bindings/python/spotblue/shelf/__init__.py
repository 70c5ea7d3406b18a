"""The library runner: a whole shelf of STEP files against what each claims to be."""

from __future__ import annotations

from spotblue.shelf.claim import Row
from spotblue.shelf.reports import ShelfReport
from spotblue.shelf.runner import library
from spotblue.shelf.which import Candidate, which

__all__ = ["Candidate", "Row", "ShelfReport", "library", "which"]
