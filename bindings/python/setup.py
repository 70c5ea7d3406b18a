"""Builds the wheel: the Python files, and the kernel's module as CMake makes it.

The repository is found from this file, or by SPOTBLUE_SOURCE_DIR where this folder was copied out
of it. With SPOTBLUE_BUILD_DIR set to a build directory, the module already built there is taken.
"""

from __future__ import annotations

import os
import re
import shutil
import subprocess
import sys
from pathlib import Path

from setuptools import Extension, setup
from setuptools.command.build_ext import build_ext


class CMakeModule(build_ext):
    """The one extension, by the repository's own build."""

    def build_extension(self, ext: Extension) -> None:
        target = Path(self.get_ext_fullpath(ext.name))
        target.parent.mkdir(parents=True, exist_ok=True)
        given = os.environ.get("SPOTBLUE_BUILD_DIR")
        shutil.copy2(_module_in(Path(given) if given else self._built()), target)

    def _built(self) -> Path:
        source = os.environ.get("SPOTBLUE_SOURCE_DIR")
        top = Path(source) if source else Path(__file__).resolve().parents[2]
        if not (top / "kernel").is_dir():
            sys.exit(f"{top}: not spotblue's repository; set SPOTBLUE_SOURCE_DIR to it")
        build = Path(self.build_temp).resolve() / "cmake"
        options = ["-DCMAKE_BUILD_TYPE=Release", "-DBUILD_TESTING=OFF"]
        options.append(f"-DPython_EXECUTABLE={sys.executable}")
        subprocess.run(["cmake", "-S", top, "-B", build, *options], check=True)
        subprocess.run(["cmake", "--build", build, "--target", "spotblue_python"], check=True)
        return build


def _module_in(build: Path) -> Path:
    found = sorted((build / "python" / "spotblue").glob("_kernel.*.so"))
    if not found:
        sys.exit(f"{build}: holds no built module; build its target spotblue_python first")
    return found[0]


def _version() -> str:
    """The one that CMake's project() states."""
    source = os.environ.get("SPOTBLUE_SOURCE_DIR")
    listing = (Path(source) if source else Path(__file__).resolve().parents[2]) / "CMakeLists.txt"
    text = listing.read_text(encoding="utf-8") if listing.is_file() else ""
    found = re.search(r"^project\(spotblue VERSION ([\d.]+)", text, re.MULTILINE)
    if not found:
        sys.exit(f"{listing}: states no version of spotblue; set SPOTBLUE_SOURCE_DIR to it")
    return found[1]


setup(
    version=_version(),
    ext_modules=[Extension("spotblue._kernel", [])],
    cmdclass={"build_ext": CMakeModule},
)
