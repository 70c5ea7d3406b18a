"""What every enumeration of spotblue is: words with a name each."""

from __future__ import annotations

from enum import StrEnum
from typing import NoReturn

from spotblue.errors import BadInputError


class Choice(StrEnum):
    """A word out of a fixed few: a member equals its word and goes wherever the word goes."""

    def __repr__(self) -> str:
        return f"{type(self).__name__}.{self.name}"

    @classmethod
    def _missing_(cls, value: object) -> NoReturn:
        from spotblue._numbers.base import nearest_word  # made after this class

        words = [member.value for member in cls]
        rule = f"{cls.__name__} has no {value!r}"
        cure = f"use one of {', '.join(map(repr, words))}"
        if isinstance(value, str):
            cure = f"the nearest is {nearest_word(value, words)!r}; " + cure
        raise BadInputError(f"{rule}; {cure}", rule=rule, cure=cure)
