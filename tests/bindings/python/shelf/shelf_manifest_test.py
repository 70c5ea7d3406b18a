"""Manifests: what they may say, and how each mistake is named."""

from __future__ import annotations

import tempfile
import time
import unittest
from pathlib import Path

import spotblue
from spotblue.base import shown_name
from spotblue.shelf.manifest import read_manifest
from spotblue.shelf.words import no_formula


class Reading(unittest.TestCase):
    def setUp(self) -> None:
        self.folder = tempfile.TemporaryDirectory()
        self.addCleanup(self.folder.cleanup)

    def written(self, text: str, name: str = "shelf.csv") -> Path:
        path = Path(self.folder.name) / name
        path.write_bytes(text.encode())
        return path

    def mistake(self, text: str, name: str = "shelf.csv") -> spotblue.Error:
        with self.assertRaises(spotblue.BadInputError) as caught:
            read_manifest(self.written(text, name))
        error = caught.exception
        self.assertEqual(error.file, str(Path(self.folder.name) / name))
        self.assertNotIn("\n", str(error))
        self.assertTrue(error.cure)
        return error

    def test_csv_and_toml_of_the_same_claims_read_alike(self) -> None:
        by_csv = read_manifest(self.written("file,feature,size,class\na.step,bore 44,44,H7\n"))
        text = '[[claim]]\nfile = "a.step"\nfeature = "bore 44"\nsize = 44\nclass = "H7"\n'
        by_toml = read_manifest(self.written(text, "shelf.toml"))
        self.assertEqual(by_csv.claims[0].rule, by_toml.claims[0].rule)

    def test_semicolons_stand_for_commas(self) -> None:
        claims = read_manifest(self.written("file;size;feature\na.step;44;bore\n")).claims
        self.assertEqual(claims[0].size_mm, 44.0)

    def test_comments_and_empty_lines_keep_the_line_numbers(self) -> None:
        claims = read_manifest(self.written("# ours\nfile\n\na.step\n")).claims
        self.assertEqual(claims[0].line, 4)

    def test_lengths_bring_their_own_unit(self) -> None:
        text = "file,feature,size,tolerance\na.step,bore,1 1/2 in,0.05\n"
        claim = read_manifest(self.written(text)).claims[0]
        self.assertAlmostEqual(claim.size_mm or 0.0, 38.1)
        self.assertAlmostEqual(claim.upper_mm or 0.0, 38.15)

    def test_a_claim_keeps_the_unit_of_the_sizes_in_its_names(self) -> None:
        text = '[[claim]]\nfile = "a.step"\nfeature = "face 5x3"\n'
        for said, unit in (("", "mm"), ('unit = "in"\n', "inch")):
            self.assertEqual(read_manifest(self.written(said + text, "a.toml")).claims[0].unit, unit)

    def test_a_toml_manifest_in_inches_has_inch_tolerances(self) -> None:
        text = 'unit = "inch"\n[[claim]]\nfile = "a.step"\nfeature = "bore"\nsize = 1\ntolerance = "+0.001/0"\n'
        claim = read_manifest(self.written(text, "shelf.toml")).claims[0]
        self.assertAlmostEqual(claim.upper_mm or 0.0, 25.4254)

    def test_an_apostrophe_before_a_formula_is_no_part_of_the_cell(self) -> None:
        for cell in ("=a.step", "+a.step", "-a.step", "@a.step", "'=a.step", "a.step", "'a.step"):
            claim = read_manifest(self.written(f"file\n{no_formula(cell)}\n")).claims[0]
            self.assertEqual(claim.file, cell)

    def test_a_features_name_may_be_written_as_it_is_shown(self) -> None:
        for part in ("a\u202eb", "\x9b31m", "=a", r"\x41", " a", "a\nb"):
            cell = no_formula(shown_name(f"{part}: bore 44"))
            self.assertTrue(cell.isprintable())
            claim = read_manifest(self.written(f"file,feature\na.step,{cell}\n")).claims[0]
            self.assertEqual(claim.feature, f"{part}: bore 44")

    def test_a_size_may_stand_in_the_feature(self) -> None:
        claim = read_manifest(self.written("file,feature,class\na.step,bore 44,H7\n")).claims[0]
        self.assertEqual(claim.size_mm, 44.0)

    def test_a_mistyped_column_names_the_nearest(self) -> None:
        error = self.mistake("file,featur\na.step,bore 44\n")
        self.assertEqual(error.place, "line 1, featur")
        self.assertIn("feature", error.cure)

    def test_a_mistyped_key_names_its_own_line(self) -> None:
        error = self.mistake(
            '[[claim]]\nfile = "a"\n\n[[claim]]\nfile = "b"\nclas = "H7"\n', "s.toml"
        )
        self.assertEqual(error.place, "line 6, clas")
        self.assertIn("class", error.cure)

    def test_a_mistyped_feature_names_the_nearest_word(self) -> None:
        error = self.mistake("file,feature\na.step,boer 44\n")
        self.assertEqual(error.place, "line 2, feature")
        self.assertIn("bore", error.cure)

    def test_a_class_that_does_not_exist_is_refused_with_its_cell(self) -> None:
        error = self.mistake("file,feature,class\na.step,bore 44,HH7\n")
        self.assertEqual(error.place, "line 2, class")

    def test_each_mistake_is_one_line_with_its_place(self) -> None:
        cases = {
            "file,size\na.step,abc\n": "line 2, size",
            "file,feature,size\na.step,bore,-3\n": "line 2, size",
            "file,feature,fit\na.step,bore 4,x with y\n": "line 2, fit",
            "file,fit\na.step,bore 4 and outside 4\n": "line 2, fit",
            "file,feature,lower\na.step,bore 4,4\n": "line 2, upper",
            "file,feature,lower,upper\na.step,bore 4,5,4\n": "line 2, lower",
            "file,feature,tolerance\na.step,bore,0.1\n": "line 2, tolerance",
            "file,feature,size,tolerance\na.step,bore,4,much\n": "line 2, tolerance",
            "file,feature,size,class,tolerance\na.step,bore,4,H7,0.1\n": "line 2, tolerance",
            "file,class\na.step,H7\n": "line 2, feature",
            "file,feature,class\na.step,bore,H7\n": "line 2, size",
            "file,solids\na.step,none\n": "line 2, solids",
            "file,feature,coaxial_with\na.step,bore 4,outside 9\n": "line 2, within",
            "feature\nbore 4\n": "line 2, file",
            "file\na.step,more\n": "line 2",
            "file,file\na.step,b.step\n": "line 1, file",
            "file\n": "line 1",
            "": "line 1",
        }
        for text, place in cases.items():
            with self.subTest(text=text):
                self.assertEqual(self.mistake(text).place, place)

    def test_toml_that_does_not_parse_names_its_line(self) -> None:
        self.assertEqual(self.mistake("unit = \n", "s.toml").place, "line 1")

    def test_a_quote_that_is_not_closed_names_the_line_where_it_opens(self) -> None:
        cases = {
            'file,feature\n"h.step,Bush: bore\n': "line 2",
            'file,feature\nh.step,bore 4\n"h.step,Bush: bore\ng.step,bore 4\n': "line 3",
            'file,feature\n"h.step,bore\n"g.step",bore\n': "line 2",
            'file,feature\n"h.step"x,bore\n': "line 2",
            'file,notes\n"h ""x"".step","two\nlines"\ng.step,"a"\nk.step,"b\n': "line 5",
            'file,feature,notes\nh.step,"bore\n4",a\n': "line 2, feature",
            "file\n" + '"' + "a.step\n" * 30000: "line 2",
        }
        for text, place in cases.items():
            with self.subTest(text=text[:60]):
                self.assertEqual(self.mistake(text).place, place)

    def test_quotes_and_line_breaks_in_notes_are_taken(self) -> None:
        text = 'file,feature,notes\n"a, b.step",bore,"two\n""lines"""\n\nc.step,bore,5/16" bolt\n'
        claims = read_manifest(self.written(text)).claims
        self.assertEqual([claim.line for claim in claims], [2, 5])
        self.assertEqual([claim.file for claim in claims], ["a, b.step", "c.step"])
        self.assertEqual([claim.notes for claim in claims], ['two\n"lines"', '5/16" bolt'])

    def test_a_class_of_the_other_side_is_refused_with_its_cell(self) -> None:
        for feature, text, told in (
            ("bore 4", "h7", "h7 is a shaft's class, and a bore is a hole; .* like H7"),
            ("slot 4", "js7", "js7 is a shaft's class, and a slot is a hole"),
            ("outside 4", "H7", "H7 is a hole's class, and an outside is a shaft"),
            ("width 4", "P9", "P9 is a hole's class"),
        ):
            with self.subTest(feature=feature):
                error = self.mistake(f"file,feature,class\na.step,{feature},{text}\n")
                self.assertEqual(error.place, "line 2, class")
                self.assertRegex(str(error), told)
        good = "file,feature,class\na,bore 4,JS7\na,outside 4,h6\na,length 4,H9\na,length 4,h9\na,bore 4,RC4\na,outside 4,RC4\n"
        self.assertEqual(len(read_manifest(self.written(good)).claims), 6)

    def test_a_decimal_comma_in_toml_is_told_as_in_csv(self) -> None:
        by_csv = self.mistake('file,feature,size\na.step,bore,"31,77"\n')
        by_toml = self.mistake('[[claim]]\nfile = "a.step"\nsize = 31,77  # mm\n', "s.toml")
        self.assertEqual((by_toml.rule, by_toml.cure), (by_csv.rule, by_csv.cure))
        self.assertEqual(by_toml.place, "line 3")

    def test_a_mistake_in_toml_names_the_line_of_its_key(self) -> None:
        head = '[[claim]]\nfile = "a.step"\nfeature = "bore 44"\n'
        for last in ('size = "abc"', 'class = "HH7"', "notes = 3", "material = true"):
            with self.subTest(last=last):
                key = last.split(" ")[0]
                self.assertEqual(self.mistake(head + last + "\n", "s.toml").place, f"line 4, {key}")

    def test_a_number_is_no_file(self) -> None:
        error = self.mistake("[[claim]]\nfile = 3\n", "s.toml")
        self.assertEqual((error.place, error.rule), ("line 2, file", "3 is no text"))

    def test_what_is_no_manifest_is_told_as_what_it_is(self) -> None:
        step = "ISO-10303-21;\nHEADER;\nENDSEC;\nDATA;\nENDSEC;\nEND-ISO-10303-21;\n"
        cases = {
            "a.step": (step, "is a model, no manifest; spotblue look .*a.step"),
            "model.csv": (step, "is a model, no manifest"),
            "job.toml": ('schema = 1\nmodel = "a.step"\n', "a job file, .*; spotblue check .*job.toml"),
            "mockup.toml": ('title = "a"\n[[part]]\nname = "A"\n', "a mock-up, .*; spotblue model"),
            "shelf.db": ("SQLite format 3\0", "is a database, no manifest"),
        }
        for name, (text, told) in cases.items():
            with self.subTest(name=name):
                self.assertRegex(str(self.mistake(text, name)), told)

    def test_many_toml_claims_take_no_longer_than_many_rows(self) -> None:
        text = '[[claim]]\nfile = "a.step"\nnotes = "n"\n' * 5000
        start = time.monotonic()
        claims = read_manifest(self.written(text, "s.toml")).claims
        self.assertLess(time.monotonic() - start, 10.0)
        self.assertEqual(claims[-1].line, 3 * 4999 + 1)

    def test_the_line_of_bytes_that_are_no_text_is_told(self) -> None:
        for before, place in ((b"file\n", "line 2"), (b"\xef\xbb\xbffile\r\na\r\nbb", "line 3")):
            path = self.written("")
            path.write_bytes(before + b"\xff.step\n")
            with self.assertRaises(spotblue.BadInputError) as caught:
                read_manifest(path)
            self.assertEqual(caught.exception.place, place)
            self.assertIn(f"byte {1 if place == 'line 2' else 3} of the line", str(caught.exception))

    def test_bytes_that_are_no_text_are_refused(self) -> None:
        path = self.written("")
        path.write_bytes(b"file\n\xff\xfe\n")
        with self.assertRaisesRegex(spotblue.BadInputError, "UTF-8"):
            read_manifest(path)

    def test_a_manifest_that_is_not_there_is_named(self) -> None:
        with self.assertRaisesRegex(spotblue.FileAccessError, "gone.csv: there is no such file"):
            read_manifest(Path(self.folder.name) / "gone.csv")


if __name__ == "__main__":
    unittest.main()
