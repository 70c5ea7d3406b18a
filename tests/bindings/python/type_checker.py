"""mypy and its stubtest on the package as built, with one cache: numpy's types alone take long to read."""

from __future__ import annotations

import os
import subprocess
import sys
import tempfile
from pathlib import Path

BUILD = Path(os.environ["SPOTBLUE_BUILD"])
# That the stubs name what is there needs none of these, which stubtest would read anew each time.
WITHOUT_OTHERS = """[mypy-numpy.*,dask.*,distributed.*,jinja2.*]
follow_imports = skip
follow_imports_for_stubs = True
"""


def _said(*words: str) -> subprocess.CompletedProcess[str]:
    # Found by MYPYPATH, from a folder of no package: else the package would shadow its own stubs.
    with tempfile.TemporaryDirectory() as folder:
        return subprocess.run(
            [sys.executable, "-m", *words],
            cwd=folder,
            env=os.environ
            | {"MYPYPATH": str(BUILD / "python"), "MYPY_CACHE_DIR": str(BUILD / "mypy-cache")},
            capture_output=True,
            text=True,
            check=False,
        )


def strict(*words: str) -> subprocess.CompletedProcess[str]:
    """`mypy --strict`."""
    return _said("mypy", "--strict", *words)


def stubtest(*words: str) -> subprocess.CompletedProcess[str]:
    """`stubtest`: do the stubs name what the modules have?"""
    with tempfile.NamedTemporaryFile("w", suffix=".ini") as config:
        config.write(WITHOUT_OTHERS)
        config.flush()
        return _said("mypy.stubtest", "--mypy-config-file", config.name, *words)
