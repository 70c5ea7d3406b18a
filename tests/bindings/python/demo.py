"""The invented demo models, made once for each test file in a folder of their own."""

from __future__ import annotations

import atexit
import json
import os
import shutil
import subprocess
import tempfile
from functools import cache
from pathlib import Path
from typing import Any

import spotblue

PROGRAM = os.environ["SPOTBLUE_PROGRAM"]
SOURCE = Path(os.environ["SPOTBLUE_SOURCE"])


@cache
def folder() -> Path:
    """A copy of models/ with an empty out/ beside the mock-ups."""
    top = Path(tempfile.mkdtemp(prefix="spotblue-test-"))
    atexit.register(shutil.rmtree, top, ignore_errors=True)
    made = top / "models"
    made.mkdir()
    for file in (SOURCE / "models").glob("*.toml"):
        shutil.copy(file, made)
    (made / "out").mkdir()
    return made


@cache
def step(plan: str) -> Path:
    """The STEP model of a plan: "ink-disc-plan-b"."""
    out = folder() / "out" / f"{plan}.step"
    spotblue.model(folder() / f"{plan}.mockup.toml", out)
    return out


def job(plan: str) -> Path:
    """The job file of a plan, its model made."""
    step(plan)
    return folder() / f"{plan}.job.toml"


def said(*arguments: str | Path) -> str:
    """What the program prints."""
    words = [PROGRAM, *map(str, arguments)]
    return subprocess.run(words, check=False, capture_output=True, text=True).stdout


def without_seconds(text: str) -> Any:
    """A result's JSON but for the time it took."""
    result = json.loads(text)
    del result["seconds"]
    return result
