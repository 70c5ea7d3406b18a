"""What starts up quickly, and what is said when a part of the package is missing."""

from __future__ import annotations

import os
import shutil
import subprocess
import sys
import tempfile
import unittest
from pathlib import Path

BUILD = Path(os.environ["SPOTBLUE_BUILD"])
PROGRAM = os.environ["SPOTBLUE_PROGRAM"]

# Values of both modules, whose names are looked up when they are read back.
KEPT = (
    "import pickle, spotblue\n"
    "kept = [spotblue.base.Limits(lower_mm=1, upper_mm=2), spotblue.Outcome.CONFORMING,\n"
    "        spotblue.standards.limits(44, 'H7'), spotblue.Job(unit='inch'),\n"
    "        spotblue.FeatureKind.CYLINDER]\n"
)
LIBRARIES = "print([line for line in open('/proc/self/maps') if 'libTK' in line][:1])"


def said(code: str) -> str:
    words = [sys.executable, "-c", code]
    return subprocess.run(words, check=True, capture_output=True, text=True).stdout


class Numbers(unittest.TestCase):
    def test_a_number_call_loads_no_cad_library(self) -> None:
        call = (
            "import spotblue\n"
            "spotblue.standards.limits(44, 'H7'); spotblue.mechanics.elastic_of\n"
            "spotblue.base.parse_length('5/16', 'inch')\n"
        )
        self.assertEqual(said(call + LIBRARIES), "[]\n")

    def test_a_look_does_load_them(self) -> None:
        self.assertIn("libTK", said("import spotblue; spotblue.look\n" + LIBRARIES))

    def test_every_public_name_is_listed_and_there(self) -> None:
        code = (
            "import spotblue\n"
            "print(set(spotblue.__all__) - set(dir(spotblue)))\n"
            "print([n for n in spotblue.__all__ if getattr(spotblue, n) is None])\n"
            "from spotblue import library, look\n"
        )
        self.assertEqual(said(code), "set()\n[]\n")

    def test_a_number_call_imports_no_logging(self) -> None:
        code = "import sys, spotblue; spotblue.standards.limits(44, 'H7')\n"
        self.assertEqual(said(code + "print('logging' in sys.modules)"), "False\n")

    def test_pickled_values_of_both_modules_are_read_by_a_new_process(self) -> None:
        written = said(KEPT + "print(pickle.dumps(kept).hex())")
        read = f"found = pickle.loads(bytes.fromhex('{written.strip()}'))\n"
        first = f"import pickle\n{read}"
        self.assertEqual(said(first + KEPT + "print(found == kept)"), "True\n")

    def test_a_name_that_is_not_there_is_an_attribute_error(self) -> None:
        code = "import spotblue\ntry:\n  spotblue.lock\nexcept AttributeError as e: print(e)"
        self.assertEqual(said(code), "module 'spotblue' has no attribute 'lock'\n")

    def test_values_and_errors_cross_between_the_two_modules(self) -> None:
        code = (
            "import pickle, spotblue\n"
            "job = spotblue.Job(unit='inch')\n"
            "print(repr(job.unit), job.unit is spotblue.LengthUnit.INCH)\n"
            "print(pickle.loads(pickle.dumps(job)) == job)\n"
            "for call in (lambda: spotblue.standards.limits(5000, 'H7'),\n"
            "             lambda: spotblue.look('none.step')):\n"
            "  try:\n    call()\n"
            "  except spotblue.Error as e: print(type(e).__name__)\n"
        )
        self.assertEqual(
            said(code).splitlines(),
            ["LengthUnit.INCH True", "True", "NotInStandardError", "FileAccessError"],
        )


class EmptyEntry(unittest.TestCase):
    def test_nothing_is_loaded_from_the_users_folder(self) -> None:
        with tempfile.TemporaryDirectory() as folder:
            for name in ("re", "json", "csv", "sqlite3", "argparse", "tomllib"):
                (Path(folder) / f"{name}.py").write_text("raise SystemExit('loaded from here')\n")
            ours = os.environ["PYTHONPATH"]
            for paths in ("", ":", f":{ours}", f"{ours}:", f"{ours}::{ours}"):
                for verb in (["which", "none.db", "--hole", "38"], ["library", "none.csv"]):
                    with self.subTest(paths=paths, verb=verb[0]):
                        done = subprocess.run(
                            [PROGRAM, *verb], capture_output=True, text=True, check=False,
                            cwd=folder, env=os.environ | {"PYTHONPATH": paths},
                        )  # fmt: skip
                        self.assertEqual(done.returncode, 2)
                        self.assertRegex(done.stderr, r"\Aspotblue: none\.(db|csv)")


class Missing(unittest.TestCase):
    def setUp(self) -> None:
        top = tempfile.TemporaryDirectory()
        self.addCleanup(top.cleanup)
        self.folder = Path(top.name)
        (self.folder / "bin").mkdir()
        shutil.copy(PROGRAM, self.folder / "bin" / "spotblue")
        shutil.copytree(BUILD / "python" / "spotblue", self.folder / "python" / "spotblue")

    def which(self) -> str:
        words = [self.folder / "bin" / "spotblue", "which", "shelf.db", "--hole", "38"]
        plain = {key: value for key, value in os.environ.items() if key != "PYTHONPATH"}
        done = subprocess.run(words, capture_output=True, text=True, check=False, env=plain)
        self.assertEqual(done.returncode, 2, done.stdout + done.stderr)
        self.assertRegex(done.stderr, r"\Aspotblue: [^\n]+\n\Z")
        return done.stderr

    def test_a_module_that_is_not_built_is_one_line(self) -> None:
        for name in ("_kernel", "_numbers"):
            with self.subTest(name=name):
                module = next((self.folder / "python" / "spotblue").glob(f"{name}.*.so"))
                kept = module.read_bytes()
                module.unlink()
                self.assertIn("build spotblue's Python package for Python 3.", self.which())
                module.write_bytes(kept)

    def test_a_module_of_another_python_is_one_line(self) -> None:
        module = next((self.folder / "python" / "spotblue").glob("_kernel.*.so"))
        module.rename(module.with_name("_kernel.cpython-36m-x86_64-linux-gnu.so"))
        self.assertIn("build spotblue's Python package for Python 3.", self.which())

    def test_a_module_that_is_torn_is_one_line(self) -> None:
        for name in ("_kernel", "_numbers"):
            module = next((self.folder / "python" / "spotblue").glob(f"{name}.*.so"))
            whole = module.read_bytes()
            for size in (0, 1000, len(whole) // 2, len(whole) - 1):
                with self.subTest(name=name, size=size):
                    module.write_bytes(whole[:size])
                    self.assertIn("is torn; build spotblue's Python package", self.which())
            module.write_bytes(whole)

    def test_a_package_of_python_that_is_missing_is_one_line(self) -> None:
        (self.folder / "python" / "sqlite3.py").write_text("raise ImportError('no sqlite3')\n")
        self.assertIn("no sqlite3; install it for /usr/bin/python3", self.which())


if __name__ == "__main__":
    unittest.main()
