"""Manifests: what they may say, and how each mistake is named."""

from __future__ import annotations

import tempfile
import unittest
from pathlib import Path

import spotblue
from spotblue.shelf.manifest import read_manifest


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

    def test_a_toml_manifest_in_inches_has_inch_tolerances(self) -> None:
        text = 'unit = "inch"\n[[claim]]\nfile = "a.step"\nfeature = "bore"\nsize = 1\ntolerance = "+0.001/0"\n'
        claim = read_manifest(self.written(text, "shelf.toml")).claims[0]
        self.assertAlmostEqual(claim.upper_mm or 0.0, 25.4254)

    def test_a_size_may_stand_in_the_feature(self) -> None:
        claim = read_manifest(self.written("file,feature,class\na.step,bore 44,H7\n")).claims[0]
        self.assertEqual(claim.size_mm, 44.0)

    def test_a_mistyped_column_names_the_nearest(self) -> None:
        error = self.mistake("file,featur\na.step,bore 44\n")
        self.assertEqual(error.place, "line 1, featur")
        self.assertIn("feature", error.cure)

    def test_a_mistyped_key_names_the_line_of_its_claim(self) -> None:
        error = self.mistake(
            '[[claim]]\nfile = "a"\n\n[[claim]]\nfile = "b"\nclas = "H7"\n', "s.toml"
        )
        self.assertEqual(error.place, "line 4, clas")
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

    def test_bytes_that_are_no_text_are_refused(self) -> None:
        path = self.written("")
        path.write_bytes(b"file\n\xff\xfe\n")
        with self.assertRaisesRegex(spotblue.BadInputError, "UTF-8"):
            read_manifest(path)

    def test_a_manifest_that_is_not_there_is_named(self) -> None:
        with self.assertRaisesRegex(spotblue.FileAccessError, "gone.csv: no such file"):
            read_manifest(Path(self.folder.name) / "gone.csv")


if __name__ == "__main__":
    unittest.main()
