"""Builds the wheel: the Python files, and the two modules as CMake makes them.

The repository is found from this file, or by SPOTBLUE_SOURCE_DIR where this folder was copied out
of it. With SPOTBLUE_BUILD_DIR set to a build directory, the modules already built there are taken.
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
    """The extensions, by the repository's own build."""

    def build_extension(self, ext: Extension) -> None:
        target = Path(self.get_ext_fullpath(ext.name))
        target.parent.mkdir(parents=True, exist_ok=True)
        given = os.environ.get("SPOTBLUE_BUILD_DIR")
        build = Path(given) if given else self._built()
        name = ext.name.rpartition(".")[2]
        module = _module_in(build, name)
        shutil.copy2(module, target)
        shutil.copytree(module.parent / name, target.parent / name, dirs_exist_ok=True)  # its stubs
        shutil.copy2(module.parent / "_names.py", target.parent)

    def _built(self) -> Path:
        source = os.environ.get("SPOTBLUE_SOURCE_DIR")
        top = Path(source) if source else Path(__file__).resolve().parents[2]
        if not (top / "kernel").is_dir():
            sys.exit(f"{top}: not spotblue's repository; set SPOTBLUE_SOURCE_DIR to it")
        build = Path(self.build_temp).resolve() / "cmake"
        # As the preset "dev" builds them.
        options = ["-DCMAKE_BUILD_TYPE=Release", "-DCMAKE_CXX_FLAGS_RELEASE=-O2 -DNDEBUG"]
        options += ["-DCMAKE_UNITY_BUILD=ON", "-DCMAKE_UNITY_BUILD_BATCH_SIZE=8"]
        options += ["-DBUILD_TESTING=OFF", "-DSPOTBLUE_PLUGIN=OFF"]
        options.append(f"-DPython_EXECUTABLE={sys.executable}")
        targets = ["spotblue_python_stubs"]
        jobs = str(os.cpu_count() or 1)
        for words in (["-S", top, "-B", build, *options],
                      ["--build", build, "--parallel", jobs, "--target", *targets]):  # fmt: skip
            if subprocess.run(["cmake", *words], check=False).returncode != 0:
                sys.exit("the modules could not be built; what is missing stands above")
        return build


def _module_in(build: Path, name: str) -> Path:
    found = sorted((build / "python" / "spotblue").glob(f"{name}.*.so"))
    if not found:
        sys.exit(f"{build}: holds no built module {name}; build its target spotblue_python first")
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
    ext_modules=[Extension("spotblue._numbers", []), Extension("spotblue._kernel", [])],
    cmdclass={"build_ext": CMakeModule},
)
