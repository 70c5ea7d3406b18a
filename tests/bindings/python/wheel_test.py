"""A wheel of the package installs and works away from the repository."""

from __future__ import annotations

import os
import shutil
import subprocess
import sys
import tempfile
import unittest
from pathlib import Path

import demo

LOOK = """
import sys, spotblue
assert spotblue.__file__.startswith(sys.argv[2]), spotblue.__file__
print(len(spotblue.look(sys.argv[1]).seats.radial))
"""


class WheelTest(unittest.TestCase):
    def test_an_installed_wheel_looks_at_a_model(self) -> None:
        with tempfile.TemporaryDirectory() as name:
            folder = Path(name)
            package = folder / "package"
            shutil.copytree(  # without what README's own wheel left there
                demo.SOURCE / "bindings" / "python",
                package,
                ignore=shutil.ignore_patterns("build", "*.egg-info", "__pycache__"),
            )
            pip = [sys.executable, "-m", "pip", "--disable-pip-version-check"]
            built = os.environ | {
                "SPOTBLUE_BUILD_DIR": os.environ["SPOTBLUE_BUILD"],
                "SPOTBLUE_SOURCE_DIR": str(demo.SOURCE),
            }
            wheels = [*pip, "wheel", package, "--no-build-isolation", "--no-deps", "-w", folder]
            subprocess.run(wheels, check=True, capture_output=True, env=built)
            wheel = next(folder.glob("spotblue-*.whl"))
            place = folder / "installed"
            install = [*pip, "install", wheel, "--no-deps", "--target", place]
            subprocess.run(install, check=True, capture_output=True)
            self.assertTrue((place / "spotblue" / "py.typed").exists())
            for module in ("_kernel", "_numbers"):
                self.assertTrue((place / "spotblue" / module / "__init__.pyi").exists())
            model = demo.step("ink-disc-plan-b")
            found = subprocess.run(
                [sys.executable, "-c", LOOK, model, place],
                check=True,
                capture_output=True,
                text=True,
                env=os.environ | {"PYTHONPATH": str(place)},
                cwd=folder,
            )
            self.assertGreater(int(found.stdout), 0)


if __name__ == "__main__":
    unittest.main()
