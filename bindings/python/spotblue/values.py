"""Values and results as JSON text and back.

A Look and a CheckResult become schema 2 (tests/reference/schema-2.json), as the program writes it;
every other value becomes an object whose "is" names its class, with its fields.
"""

from __future__ import annotations

import json
import re
from collections.abc import Mapping
from pathlib import Path
from typing import Any

from spotblue import _kernel
from spotblue.base import path_of_shown, shown_name
from spotblue.errors import BadInputError

_IS = "is"
# What a terminal acts on, as base.shown_text has it; JSON's own text has control letters coded.
_UNSHOWN = re.compile("[\x7f-\x9f\u061c\u200e\u200f\u2028-\u202e\u2066-\u2069]")


def _plain(value: Any) -> Any:
    if isinstance(value, (_kernel.Look, _kernel.CheckResult)):
        return json.loads(value.to_json())
    names = getattr(type(value), "_fields", None)
    if names is not None:
        return {_IS: type(value).__name__, **{name: _plain(getattr(value, name)) for name in names}}
    if isinstance(value, Mapping):
        return {str(key): _plain(item) for key, item in value.items()}
    if isinstance(value, (list, tuple)):
        return [_plain(item) for item in value]
    if isinstance(value, Path):
        return shown_name(value)
    return value


def to_json(value: Any) -> str:
    """JSON text of a result, a record, or lists and dicts of them; every number reads back alike.

    ValueError for numbers that are not finite, TypeError for what has no place in JSON.
    """
    if isinstance(value, (_kernel.Look, _kernel.CheckResult)):
        return value.to_json()
    text = json.dumps(_plain(value), ensure_ascii=False, allow_nan=False)
    return _UNSHOWN.sub(lambda letter: f"\\u{ord(letter[0]):04x}", text)


def _class_of(name: str) -> type[Any] | None:
    found = getattr(_kernel, name, None)
    return found if isinstance(found, type) and hasattr(found, "__match_args__") else None


def _typed(value: Any) -> Any:
    if isinstance(value, list):
        return [_typed(item) for item in value]
    if not isinstance(value, dict):
        return value
    fields = {key: _typed(item) for key, item in value.items()}
    kind = _class_of(fields[_IS]) if isinstance(fields.get(_IS), str) else None
    if kind is None:
        return fields
    del fields[_IS]
    if kind is _kernel.Job and "model" in fields:
        fields["model"] = path_of_shown(fields["model"])
    return kind(**fields)


def from_json(text: str) -> Any:
    """What to_json wrote: records as records of their class, results as dicts.

    A result cannot be made without its model, so a Look, a CheckResult or a Finding comes back as
    the dict of its JSON. BadInputError when the text is no JSON.
    """
    try:
        return _typed(json.loads(text))
    except json.JSONDecodeError as error:
        raise BadInputError(
            f"line {error.lineno}: no JSON: {error.msg}; give what to_json returned",
            place=f"line {error.lineno}",
            rule=f"no JSON: {error.msg}",
            cure="give what to_json returned",
        ) from error
