"""Names and numbers that nobody would write by hand: each costs its row or is refused, never the shelf."""

from __future__ import annotations

import json
import os
import tempfile
import unittest
from pathlib import Path
from unittest import mock

import shelf_making
from spotblue.shelf import command

PROGRAM = Path(os.environ["SPOTBLUE_PROGRAM"])
SIZES = {"seat": 40.0, "head": 50.0, "inner": 30.01, "long": 30.0, "short": 12.0}
MANY = "5" * 5000
NUMBERS = ("²", "٣", "nan", "inf", "-inf", "1e999", "0x10", "1_0", MANY, "-" + MANY, "1" * 400 + ".5", "")
LONG_NAMES = ("x" * 300 + ".step", "y/" * 3000 + "z.step", "/" + "d" * 254 + "/" + "e" * 300)
ZERO_NAMES = ("a\0b.step", "\0", "sub\0/bush.step")


class Hostile(unittest.TestCase):
    @classmethod
    def setUpClass(cls) -> None:
        folder = tempfile.TemporaryDirectory()
        cls.addClassCleanup(folder.cleanup)
        cls.folder = Path(folder.name)
        text = shelf_making.Maker(PROGRAM, cls.folder / "making").part("bush", SIZES)
        (cls.folder / "bush.step").write_text(text)
        cls.code, _, said = cls.main("library", cls.manifest("good.csv", "file\nbush.step\n"))
        assert cls.code == 0, said

    @classmethod
    def manifest(cls, name: str, text: str | bytes) -> str:
        path = cls.folder / name
        path.write_bytes(text.encode() if isinstance(text, str) else text)
        return f"={path}"

    @classmethod
    def main(cls, *words: str) -> tuple[int, str, str]:
        """Exit code, and what was written to standard output and standard error."""
        saved = [os.dup(stream) for stream in (1, 2)]
        with tempfile.TemporaryFile() as out, tempfile.TemporaryFile() as err:
            for stream, file in ((1, out), (2, err)):
                os.dup2(file.fileno(), stream)
            try:
                code = command.main(list(words))
            finally:
                for stream, copy in zip((1, 2), saved):
                    os.dup2(copy, stream)
                    os.close(copy)
            said = []
            for file in (out, err):
                file.seek(0)
                said.append(file.read().decode())
        return code, said[0], said[1]

    def refused(self, *words: str) -> str:
        """One line, and no fault of the program's own."""
        code, out, err = self.main(*words)
        self.assertEqual((code, out), (2, ""), err[:500])
        self.assertRegex(err, r"\Aspotblue: [^\n]+\n\Z")
        self.assertNotIn("fault of spotblue", err)
        return err

    def judged(self, *words: str) -> list[dict[str, object]]:
        code, out, err = self.main(*words, "--json=-")
        self.assertIn(code, (0, 1, 3), err[:500])
        self.assertEqual(err, "")
        rows: list[dict[str, object]] = json.loads(out)["rows"]
        return rows

    def test_names_that_no_file_can_have_cost_their_rows(self) -> None:
        names = [*ZERO_NAMES, r"shown\x00.step", *LONG_NAMES]
        text = "file\n" + "".join(f"{name}\n" for name in names) + "bush.step\n"
        rows = self.judged("library", self.manifest("names.csv", text))
        kinds = [row["kind"] for row in rows]
        self.assertEqual(kinds, ["missing file"] * len(names) + ["file"])

    def test_names_with_bytes_that_are_no_text_are_found(self) -> None:
        name = os.fsdecode(b"caf\xe9 \xff.step")
        (self.folder / name).write_bytes((self.folder / "bush.step").read_bytes())
        rows = self.judged("library", self.manifest("bytes.csv", "file\ncaf\\xE9 \\xFF.step\n"))
        self.assertEqual([row["kind"] for row in rows], ["file"])
        self.assertIn("UTF-8", self.refused("library", self.manifest("raw.csv", b"file\ncaf\xe9.step\n")))

    def test_a_manifest_and_a_database_with_such_names_work(self) -> None:
        name = os.fsdecode(b"m\xffn.csv")
        (self.folder / name).write_text("file\nbush.step\n")
        self.assertEqual(len(self.judged("library", f"={self.folder / name}")), 1)
        asked = ("--hole=40.02", "--hole-fit=H7/g6")
        code, _, err = self.main("which", f"={self.folder / os.fsdecode(bytes([109, 255, 110]))}.shelf.db", *asked)
        self.assertIn(code, (0, 1, 3), err)

    def test_manifests_and_databases_that_no_file_can_be(self) -> None:
        for name in (*ZERO_NAMES, *LONG_NAMES):
            with self.subTest(name=name[:20]):
                self.refused("library", f"={name}")
                self.refused("library", f"={self.folder}/good.csv", f"--database={name}")
                self.refused("library", f"={self.folder}/good.csv", f"--csv={name}")
                self.refused("which", f"={name}", "--hole=38", "--hole-fit=H7/g6")

    def test_numbers_in_cells_are_refused_or_read_by_their_row(self) -> None:
        for column in ("size", "lower", "upper", "tolerance", "solids", "within", "class", "material"):
            for number in filter(None, NUMBERS):
                cells = {"size": "30", "feature": "bore 30", column: number}
                if column in ("lower", "upper"):
                    cells |= {"lower" if column == "upper" else "upper": "30"}
                if column == "within":
                    cells["coaxial_with"] = "outside 40"
                head = ",".join(["file", *cells])
                text = f"{head}\n" + ",".join(["bush.step", *cells.values()]) + "\n"
                with self.subTest(column=column, number=number[:9]):
                    words = ("library", self.manifest("number.csv", text))
                    if column == "material":
                        self.judged(*words)
                    else:
                        self.assertIn("number.csv, line 2, ", self.refused(*words))

    def test_numbers_in_toml_are_refused_by_their_line(self) -> None:
        for key in ("size", "tolerance", "solids", "lower"):
            for number in ("inf", "nan", "-inf", "1e999", MANY, "1" * 400, f'"{MANY}"', '"²"', "true", "[]"):
                text = f'[[claim]]\nfile = "bush.step"\nfeature = "bore"\n{key} = {number}\n'
                with self.subTest(key=key, number=number[:9]):
                    self.assertIn("line 4", self.refused("library", self.manifest("n.toml", text)))

    def test_names_of_features_with_such_numbers_are_refused(self) -> None:
        for number in filter(None, NUMBERS):
            for name in (f"bore {number}", f"bore 30 @ {number}", f"face {number}x{number}"):
                text = f"file,feature\nbush.step,{name}\n"
                with self.subTest(name=name[:16]):
                    words = ("library", self.manifest("feature.csv", text))
                    code, _, err = self.main(*words)
                    if code == 2:
                        self.refused(*words)
                    else:
                        self.assertIn(self.judged(*words)[0]["kind"], ("missing feature", "unclear feature"))

    def test_words_that_no_program_reads_are_one_line(self) -> None:
        for words in ([], ["library"], ["library", "x"], ["library", "=\ud800"], ["look", "="]):
            code, out, err = self.main(*words)
            self.assertEqual((code, out), (2, ""))
            self.assertRegex(err, r"\Aspotblue: [^\n]+\n\Z")
        with mock.patch.object(command, "run_which", side_effect=RuntimeError("\ud800")):
            code, _, err = self.main("which", "=x")
        self.assertRegex(err, r"\Aspotblue: [^\n]+fault of spotblue[^\n]+\n\Z")

    def test_options_are_refused(self) -> None:
        good = f"={self.folder}/good.csv"
        for option in ("--workers", "--seconds", "--memory", "--uncertainty"):
            for number in NUMBERS:
                if (option, number) in (("--workers", "٣"), ("--seconds", "٣")):
                    continue
                with self.subTest(option=option, number=number[:9]):
                    self.assertIn(option.strip("-"), self.refused("library", good, f"{option}={number}"))

    def test_sizes_and_fits_that_are_asked_for_are_refused(self) -> None:
        base = f"={self.folder}/good.shelf.db"
        for number in NUMBERS:
            for words in (
                (f"--hole={number}", "--hole-fit=H7/g6"), (f"--shaft={number} h7", "--shaft-fit=H7/g6"),
                ("--hole=40", f"--hole-fit={number}"), ("--hole=40", f"--hole-fit={number} to 1"),
                (f"--hole={number} to 40", "--hole-fit=H7/g6"), (f"--hole=40 H{number}", "--hole-fit=H7/g6"),
                ("--hole=40", "--hole-fit=H7/g6", f"--cut={number}"),
                ("--hole=40", "--hole-fit=H7/g6", f"--uncertainty={number}"),
            ):  # fmt: skip
                with self.subTest(words=[word[:20] for word in words]):
                    self.refused("which", base, *words)


if __name__ == "__main__":
    unittest.main()
