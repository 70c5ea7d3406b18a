"""Which parts of a shelf fit: sizes of the mates, fits wanted and cuts, each worked out by hand."""

from __future__ import annotations

import os
import sqlite3
import tempfile
import unittest
from contextlib import closing
from pathlib import Path

import spotblue
from spotblue._kernel import shelf as kernel
from spotblue.shelf.claim import Examined
from spotblue.shelf.store import Stamp, Store
from spotblue.shelf.which import read_fit, read_size


def cylinder(
    part: str, word: str, size_mm: float, at: tuple[float, float, float]
) -> dict[str, object]:
    return {
        "id": f"{part}: {word} {size_mm:g}", "part": part, "word": word, "size_mm": size_mm,
        "at": at, "along": (0.0, 0.0, 1.0), "ends": (0.0, 20.0), "coverage_deg": 360.0,
    }  # fmt: skip


class Asking(unittest.TestCase):
    def setUp(self) -> None:
        folder = tempfile.TemporaryDirectory()
        self.addCleanup(folder.cleanup)
        self.database = Path(folder.name) / "shelf.db"
        middle = (0.0, 0.0, 0.0)
        self.put(
            "thin",
            [cylinder("Bush", "outside", 38.040, middle), cylinder("Bush", "bore", 29.0, middle)],
        )
        self.put(
            "fat",
            [cylinder("Bush", "outside", 38.300, middle), cylinder("Bush", "bore", 28.8, middle)],
        )
        self.put(
            "crooked",
            [
                cylinder("Plate", "outside", 38.04, middle),
                cylinder("Plate", "bore", 29.0, (5.0, 0.0, 0.0)),
            ],
        )
        self.put(
            "loose",
            [cylinder("Bush", "outside", 37.9, middle), cylinder("Bush", "bore", 29.5, middle)],
        )

    def put(self, name: str, features: list[dict[str, object]]) -> None:
        store = Store(self.database, kernel.version)
        path = self.database.with_name(f"{name}.step")
        path.touch()
        store.keep_stamps({str(path): Stamp(1, 1, 1, 1, name)})
        store.keep([((name, "r"), Examined(name, [], features))])
        store.close()

    def files(self, **asked: object) -> list[str]:
        found = spotblue.which(self.database, **asked)  # type: ignore[arg-type]
        return [Path(item.file).stem for item in found]

    def test_a_shaft_for_a_hole_by_limits_of_the_clearance(self) -> None:
        # 38.012 - 38.040 = -0.028 lies in -0.040 to -0.020; 38.3 and 37.9 do not.
        asked = {"hole": "38.012", "hole_fit": "-0.040 to -0.020"}
        self.assertEqual(self.files(**asked), ["crooked", "thin"])

    def test_what_was_taken_off_the_shelf_is_not_offered(self) -> None:
        self.database.with_name("thin.step").unlink()
        asked = {"hole": "38.012", "hole_fit": "-0.040 to -0.020"}
        self.assertEqual(self.files(**asked), ["crooked"])

    def test_a_cut_brings_a_fat_one_to_the_middle_of_the_limits(self) -> None:
        found = spotblue.which(
            self.database, hole="38.012", hole_fit="-0.040 to -0.020", cut_mm=0.5
        )
        fat = next(item for item in found if item.file.endswith("fat.step"))
        assert fat.in_hole is not None
        self.assertAlmostEqual(fat.in_hole.cut_mm, 38.300 - 38.042)  # 38.012 + 0.030
        self.assertAlmostEqual(fat.in_hole.least_clearance_mm, -0.030)
        self.assertEqual(Path(found[-1].file).stem, "fat")  # what needs no cut comes first

    def test_no_cut_mends_what_is_too_loose(self) -> None:
        asked = {"hole": "38.012", "hole_fit": "-0.040 to -0.020", "cut_mm": 5.0}
        self.assertNotIn("loose", self.files(**asked))

    def test_a_bush_between_a_hub_and_a_journal_must_be_true(self) -> None:
        asked = {
            "hole": "38.012", "hole_fit": "-0.040 to -0.020",
            "shaft": "28.97", "shaft_fit": "0.02 to 0.05",
        }  # fmt: skip
        self.assertEqual(self.files(**asked), ["thin"])

    def test_both_seats_are_cut_where_both_need_it(self) -> None:
        found = spotblue.which(
            self.database, hole="38.012", hole_fit="-0.040 to -0.020",
            shaft="28.97", shaft_fit="0.02 to 0.05", cut_mm=0.3,
        )  # fmt: skip
        fat = found[-1]
        assert fat.on_shaft is not None
        self.assertAlmostEqual(fat.on_shaft.cut_mm, 29.005 - 28.8)  # 28.97 + 0.035
        self.assertAlmostEqual(fat.cut_mm(), 0.258 + 0.205)

    def test_the_uncertainty_makes_a_narrow_fit_undecided(self) -> None:
        found = spotblue.which(
            self.database, hole="38.012", hole_fit="-0.0281 to -0.0279", uncertainty_mm=0.002
        )
        self.assertEqual({item.outcome for item in found}, {"undecided"})

    def test_limits_of_the_mate_widen_the_clearance(self) -> None:
        found = spotblue.which(self.database, hole="38.00 to 38.02", hole_fit="-0.05 to -0.01")
        seat = found[0].in_hole
        assert seat is not None
        self.assertAlmostEqual(seat.least_clearance_mm, -0.04)
        self.assertAlmostEqual(seat.greatest_clearance_mm, -0.02)

    def test_classes_are_those_of_the_standard(self) -> None:
        # Source: ISO 286-2, 38 H7 +0.025/0 and s6 +0.059/+0.043, as in tests/reference.
        self.assertEqual(read_size("38 H7", "mm", hole=True)[:2], (38.0, 38.025))
        least, greatest = read_fit("H7/s6", "mm", 38.012)
        self.assertAlmostEqual(least, -0.059)
        self.assertAlmostEqual(greatest, -0.018)

    def test_asking_for_nothing_is_refused(self) -> None:
        with self.assertRaisesRegex(spotblue.BadInputError, "neither hole nor shaft"):
            spotblue.which(self.database)

    def test_a_size_without_a_fit_is_refused(self) -> None:
        with self.assertRaisesRegex(spotblue.BadInputError, "hole: no fit is given"):
            spotblue.which(self.database, hole="38")

    def test_a_database_that_is_not_there_is_not_made(self) -> None:
        gone = self.database.with_name("gone.db")
        with self.assertRaisesRegex(spotblue.FileAccessError, "no such database"):
            spotblue.which(gone, hole="38", hole_fit="H7/g6")
        self.assertFalse(os.path.exists(gone))

    def test_a_file_that_is_no_shelf_is_refused_and_left_as_it_is(self) -> None:
        other = self.database.with_name("other.db")
        for content in (b"", b"file,feature\n"):
            other.write_bytes(content)
            with self.assertRaises(spotblue.FileAccessError) as caught:
                spotblue.which(other, hole="38", hole_fit="H7/g6")
            self.assertIn("name another that spotblue library has filled", caught.exception.cure)
            self.assertEqual(other.read_bytes(), content)

    def test_a_folder_is_no_database(self) -> None:
        with self.assertRaisesRegex(spotblue.FileAccessError, "no regular file"):
            spotblue.which(self.database.parent, hole="38", hole_fit="H7/g6")

    def test_a_damaged_row_is_not_offered_and_told(self) -> None:
        with closing(sqlite3.connect(self.database)) as base, base:
            base.execute("UPDATE feature SET size_mm=38.041 WHERE sha256='thin' AND word='outside'")
        asked = {"hole": "38.012", "hole_fit": "-0.040 to -0.020"}
        with self.assertLogs("spotblue.shelf", "WARNING") as told:
            self.assertEqual(self.files(**asked), ["crooked"])
        self.assertIn("1 damaged rows are left out", told.output[0])

    def test_a_shelf_that_this_version_has_not_looked_at_is_refused(self) -> None:
        for version, told in (("0.0", "is filled by another version"), ("", "has no results yet")):
            path = self.database.with_name(f"old{version}.db")
            store = Store(path, version)
            if version:
                store.keep([(("a", "r"), Examined("a"))])
            store.close()
            with self.assertRaisesRegex(spotblue.FileAccessError, f"{told}; run spotblue library"):
                spotblue.which(path, hole="38", hole_fit="H7/g6")

    def test_a_class_of_the_other_side_is_refused_with_its_cure(self) -> None:
        for asked, told in (
            ({"hole": "38 h7", "hole_fit": "H7/s6"}, "hole: h7 is a shaft's class.*like H7"),
            ({"hole": "38 js7", "hole_fit": "H7/s6"}, "hole: js7 is a shaft's class.*like JS7"),
            ({"shaft": "29 H7", "shaft_fit": "H7/s6"}, "shaft: H7 is a hole's class.*like h7"),
        ):
            with self.assertRaisesRegex(spotblue.BadInputError, told):
                spotblue.which(self.database, **asked)  # type: ignore[arg-type]

    def test_a_class_of_either_side_is_taken(self) -> None:
        # Source: ANSI B4.1 RC4 has a hole and a shaft; ISO 286-2 h7 at 29, +0/-21 um.
        for size in ("38 RC4", "38 H7"):
            self.files(hole=size, hole_fit="H7/s6")
        self.assertAlmostEqual(read_size("29 h7", "mm", hole=False)[0], 28.979)
        self.files(shaft="29 FN2", shaft_fit="H7/s6")

    def test_what_is_wrong_in_a_size_or_a_fit_names_which(self) -> None:
        for asked, told in (
            ({"hole": "abc", "hole_fit": "H7/s6"}, '^hole: "abc" is not a length'),
            ({"shaft": "38", "shaft_fit": "H7/q"}, "^shaft fit: "),
        ):
            with self.assertRaisesRegex(spotblue.BadInputError, told):
                spotblue.which(self.database, **asked)  # type: ignore[arg-type]


if __name__ == "__main__":
    unittest.main()
