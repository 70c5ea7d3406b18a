"""Locales of other lands, made for the tests so that a bare machine has them too."""

from __future__ import annotations

import os
import subprocess
from functools import cache
from pathlib import Path

NAMES = ("C", "de_DE.UTF-8", "tr_TR.UTF-8", "ja_JP.UTF-8")


@cache
def folder() -> Path:
    """Where the C library finds them by LOCPATH; made from Debian's package `locales`, once."""
    made = Path(os.environ["SPOTBLUE_BUILD"]) / "locales"
    made.mkdir(exist_ok=True)
    for name in NAMES[1:]:
        if not (made / name).is_dir():
            land, letters = name.split(".")
            draft = made / f"{name}.{os.getpid()}"
            subprocess.run(["localedef", "-i", land, "-f", letters, str(draft)], check=True)
            try:
                draft.rename(made / name)
            except OSError:
                assert (made / name).is_dir()  # another test was quicker
    return made


def environment(name: str) -> dict[str, str]:
    """This process's own, in the locale."""
    kept = {key: value for key, value in os.environ.items() if not key.startswith(("LC_", "LANG"))}
    return kept | {"LOCPATH": str(folder()), "LC_ALL": name}
