"""Lengths, limits and outcomes: reading and writing lengths, judging a measured one by ISO 14253-1.

Lengths are mm; errors are those of spotblue.errors. Records are made by keyword; several values in
one field are a tuple of copies, so change them by setting the field again. Enumerations are
enum.StrEnum: a member equals its word, and arguments take either.
"""

from spotblue._numbers.base import (
    LengthUnit,
    Limits,
    Outcome,
    format_length,
    format_size,
    judge,
    margin,
    nearest_word,
    outcome_name,
    parse_length,
    parse_unit,
    path_of_shown,
    shortened,
    shown_name,
    shown_text,
    unit_name,
)

__all__ = [
    "LengthUnit",
    "Limits",
    "Outcome",
    "format_length",
    "format_size",
    "judge",
    "margin",
    "nearest_word",
    "outcome_name",
    "parse_length",
    "parse_unit",
    "path_of_shown",
    "shortened",
    "shown_name",
    "shown_text",
    "unit_name",
]
