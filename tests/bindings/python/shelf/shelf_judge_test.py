"""What a claim's words mean, and how it is judged; sizes are worked out by hand."""

from __future__ import annotations

import errno
import os
import resource
import tempfile
import unittest
from collections.abc import Callable
from dataclasses import replace
from pathlib import Path
from typing import Any
from unittest import mock

import spotblue
from spotblue.shelf import judge
from spotblue.shelf.claim import Claim, Limits, Row, Task
from spotblue.shelf.content import beside_digest, referred_by, sha256_of
from spotblue.shelf.features import Feature, axis_offset, find_features, parse_name
from spotblue.shelf.judge import judge_file
from spotblue.shelf.materials import stated_materials

import shelf_making
from shelf_damage import opened

PROGRAM = Path(os.environ["SPOTBLUE_PROGRAM"])
SIZES = {"seat": 40.0, "head": 50.0, "inner": 30.01, "long": 30.0, "short": 12.0, "sleeve": 40.05}
MATERIAL = """#800001=PROPERTY_DEFINITION('material property','material name',#5);
#800002=DESCRIPTIVE_REPRESENTATION_ITEM('grey iron','as stated');
#800003=REPRESENTATION('material name',(#800002),#6);
"""


def feature(name: str, size_mm: float, at: tuple[float, float, float] = (0.0, 0.0, 0.0)) -> Feature:
    """One that has no name but the one by its size and place."""
    return Feature(
        f"Stud: {name}", "Stud", name.split(" ")[0], size_mm, at, (0.0, 0.0, 1.0), (0.0, 9.0),
        names=(name,),
    )  # fmt: skip


def called(name: str, word: str, size_mm: float, *given: str, part: str = "Stud") -> Feature:
    """One as a model has it: its name, then that by its size, then what the file calls its faces."""
    return Feature(
        f"{part}: {name}", part, word, size_mm, (0.0, 0.0, 0.0), (0.0, 0.0, 1.0), (0.0, 9.0),
        names=(f"{word} {size_mm:g}", *given),
    )  # fmt: skip


def task_of(path: Path, claim: Claim = Claim(1, "part.step"), uncertainty_mm: float = 0.0) -> Task:
    return Task(
        str(path), sha256_of(path), (claim,), Limits(60.0, 3000.0), uncertainty_mm, "",
        beside_digest(path, names) if (names := referred_by(path)) else "",
    )  # fmt: skip


class Words(unittest.TestCase):
    """Which features a claim means."""

    def means(self, text: str, size_mm: float | None, rivals: tuple[float, ...] = ()) -> list[str]:
        features = [
            feature("outside 30 @ 10", 30.0), feature("outside 29.9 @ 60", 29.9),
            feature("outside 31", 31.0), feature("bore 12", 12.0),
        ]  # fmt: skip
        named = parse_name(text, "mm")
        assert named is not None
        found = find_features(named, size_mm, features, list(rivals))
        return [item.id.removeprefix("Stud: ") for item in found.features] or [found.kind]

    def test_two_journals_of_one_size_are_both_meant(self) -> None:
        self.assertEqual(self.means("outside 30", None), ["outside 30 @ 10", "outside 29.9 @ 60"])

    def test_a_body_is_meant_by_its_part_and_by_what_the_file_calls_it(self) -> None:
        bush = Feature(
            "Pump#2: bore 20", "Pump#2", "bore", 20.0, (0.0, 0.0, 0.0), (0.0, 0.0, 1.0),
            aliases=("Pump", "Bush"),
        )  # fmt: skip
        for text in ("Pump#2: bore", "Pump: bore", "Bush: bore"):
            named = parse_name(text, "mm")
            assert named is not None
            self.assertEqual(find_features(named, None, [bush], []).features, [bush])

    def test_a_whole_name_means_that_one(self) -> None:
        self.assertEqual(self.means("outside 29.9 @ 60", None), ["outside 29.9 @ 60"])

    def test_a_feature_nearer_to_another_claim_is_left_to_it(self) -> None:
        self.assertEqual(self.means("outside", 30.6, (30.0,)), ["outside 31"])

    def test_a_word_that_only_one_feature_has_needs_no_size(self) -> None:
        self.assertEqual(self.means("bore", None), ["bore 12"])

    def test_a_word_that_several_have_is_unclear_without_a_size(self) -> None:
        self.assertEqual(self.means("outside", None), ["unclear feature"])

    def test_a_size_off_by_the_inch_is_named_so(self) -> None:
        self.assertEqual(self.means("bore", 12.0 / 25.4), ["unit"])
        self.assertEqual(self.means("bore", 12.0 * 25.4), ["unit"])

    def test_a_size_that_nothing_has_is_missing(self) -> None:
        self.assertEqual(self.means("bore", 14.0), ["missing feature"])

    def test_a_name_with_colon_and_position_is_taken_apart(self) -> None:
        named = parse_name("Wheel: left: bore 1 3/4 in @ 12.5 #2", "mm")
        assert named is not None
        self.assertEqual((named.part, named.word), ("Wheel: left", "bore"))
        self.assertAlmostEqual(named.size_mm or 0.0, 44.45)
        self.assertEqual((named.at_mm, named.ordinal), (12.5, 2))

    def found(self, text: str, size_mm: float | None = None, unit: str = "mm") -> list[str]:
        features = [
            feature("taper 20/24 @ 12.5", 24.0), feature("face 127x76.2 @ 6", 0.0),
            feature("face 95", 0.0), feature("face 80x45 @ 6", 0.0),
        ]  # fmt: skip
        named = parse_name(text, unit)
        assert named is not None
        found = find_features(named, size_mm, features, [])
        return [item.id.removeprefix("Stud: ") for item in found.features] or [found.reason]

    def test_of_two_sizes_both_are_meant(self) -> None:
        for text in ("taper 20/24", "Stud: taper 20/24 @ 12.5", "taper 24/20", "taper 24"):
            self.assertEqual(self.found(text), ["taper 20/24 @ 12.5"], text)
        for text in ("face 127x76.2", "face 76x127@6", "Stud: face 127x76.2 @ 6"):
            self.assertEqual(self.found(text), ["face 127x76.2 @ 6"], text)
        self.assertEqual(self.found("taper 20/24", 24.0), ["taper 20/24 @ 12.5"])

    def test_what_has_not_both_sizes_is_missing(self) -> None:
        for text, sizes in (
            ("taper 19/24", "19 by 24"), ("taper 20/26 @ 12.5", "20 by 26"), ("taper 1/2", "1 by 2"),
            ("face 999x777 @ 6", "999 by 777"), ("Stud: face 80x95", "80 by 95"),
        ):  # fmt: skip
            self.assertRegex(self.found(text)[0], rf"^the file has no (taper|face) of {sizes} mm")
        self.assertRegex(self.found("taper 20/24", 30.0)[0], "^no taper near 30 mm")

    def test_two_sizes_in_inches_are_those_that_look_shows(self) -> None:
        self.assertEqual(self.found("face 5x3 @ 6", unit="inch"), ["face 127x76.2 @ 6"])
        self.assertEqual(self.found("taper 0.7874/0.9449", unit="inch"), ["taper 20/24 @ 12.5"])

    def test_a_round_face_is_meant_by_its_one_size(self) -> None:
        self.assertEqual(self.found("face 95"), ["face 95"])
        self.assertEqual(self.found("face", 95.0), ["face 95"])
        self.assertRegex(self.found("face 90")[0], "^the file has no face of 90 mm")

    def test_a_tilted_axis_is_judged_at_its_worse_end(self) -> None:
        datum = Feature("a: outside 9", "a", "outside", 9.0, (0, 0, 0), (0.0, 0.0, 1.0), (0.0, 5.0))
        tilted = Feature("a: bore 4", "a", "bore", 4.0, (0, 0, 0), (0.6, 0.0, 0.8), (0.0, 5.0))
        self.assertAlmostEqual(axis_offset(tilted, datum), 3.0)


class Names(unittest.TestCase):
    """Which features a claim means by a name without its size."""

    STUD = (
        called("journal", "outside", 28.97, "journal"), called("outside 1", "outside", 16.0),
        called("outside 3", "outside", 30.0), called("bore", "bore", 6.8),
        called("keyseat", "slot", 6.0), called("face 1", "face", 0.0), called("face 2", "face", 0.0),
    )  # fmt: skip

    def found(self, text: str, size_mm: float | None, *more: Feature) -> list[str]:
        named = parse_name(text, "mm")
        assert named is not None
        found = find_features(named, size_mm, [*self.STUD, *more], [])
        return [item.id for item in found.features] or [found.kind]

    def test_a_maker_s_name_means_the_feature_whose_face_has_it(self) -> None:
        self.assertEqual(self.found("Stud: journal", None), ["Stud: journal"])
        self.assertEqual(self.found("Stud: journal", 29.0), ["Stud: journal"])
        self.assertEqual(self.found("Stud: keyseat", None), ["Stud: keyseat"])

    def test_a_maker_s_name_may_begin_with_a_word_of_ours(self) -> None:
        end = called("bore end", "bore", 9.0, "bore end")
        self.assertEqual(self.found("Stud: bore end", None, end), ["Stud: bore end"])

    def test_a_maker_s_name_that_the_file_has_not_is_missing(self) -> None:
        self.assertEqual(self.found("Stud: shank", None), ["missing feature"])
        self.assertEqual(self.found("Wheel: journal", None), ["missing feature"])

    def test_a_maker_s_name_of_another_size_is_missing(self) -> None:
        self.assertEqual(self.found("Stud: journal", 40.0), ["missing feature"])

    def test_a_maker_s_name_on_two_features_is_unclear_without_a_size(self) -> None:
        other = called("outside 4", "outside", 20.0, "journal")
        self.assertEqual(self.found("Stud: journal", None, other), ["unclear feature"])
        self.assertEqual(self.found("Stud: journal", 20.0, other), ["Stud: outside 4"])

    def test_one_name_in_two_parts_is_unclear_without_the_part(self) -> None:
        other = called("bore", "bore", 12.0, part="Wheel")
        self.assertEqual(self.found("bore", None, other), ["unclear feature"])
        self.assertEqual(self.found("bore", 12.0, other), ["Wheel: bore"])
        self.assertEqual(self.found("Stud: bore", None, other), ["Stud: bore"])

    def test_a_name_with_a_number_means_that_one_where_its_size_is_given(self) -> None:
        self.assertEqual(self.found("Stud: outside 3", 30.0), ["Stud: outside 3"])
        self.assertEqual(self.found("outside 1", 16.0), ["Stud: outside 1"])

    def test_a_name_with_a_number_in_a_fit_needs_no_size(self) -> None:
        self.assertEqual(self.found("Stud: outside 3", None), ["Stud: outside 3"])

    def test_a_number_that_may_be_a_place_in_the_order_or_a_size_is_unclear(self) -> None:
        of_3 = called("outside 4", "outside", 3.0)
        # A manifest's reader takes the number for the size.
        self.assertEqual(self.found("outside 3", 3.0), ["unclear feature"])
        self.assertEqual(self.found("outside 3", 3.0, of_3), ["unclear feature"])
        self.assertEqual(self.found("outside 3", None, of_3), ["unclear feature"])
        self.assertEqual(self.found("Stud: outside 4", 3.0, of_3), ["Stud: outside 4"])
        self.assertEqual(self.found("outside 3 mm", 3.0, of_3), ["Stud: outside 4"])

    def test_a_face_s_number_may_be_a_size_too(self) -> None:
        of_2 = replace(called("face 3", "face", 0.0), names=("face 2 @ 40",))
        self.assertEqual(self.found("Stud: face 2", None), ["Stud: face 2"])
        self.assertEqual(self.found("Stud: face 2", None, of_2), ["unclear feature"])


class Judging(unittest.TestCase):
    """Rows of one file."""

    @classmethod
    def setUpClass(cls) -> None:
        folder = tempfile.TemporaryDirectory()
        cls.addClassCleanup(folder.cleanup)
        cls.folder = Path(folder.name)
        cls.maker = shelf_making.Maker(PROGRAM, cls.folder / "making")

    def rows(self, text: str, uncertainty_mm: float = 0.0, **said: Any) -> list[Row]:
        path = self.folder / "part.step"
        path.write_text(text)
        claim = Claim(1, "part.step", **said)
        return judge_file(task_of(path, claim, uncertainty_mm)).rows

    def only(self, text: str, uncertainty_mm: float = 0.0, **said: Any) -> tuple[str, str]:
        rows = self.rows(text, uncertainty_mm, **said)
        self.assertEqual(len(rows), 1, rows)
        return rows[0].kind, rows[0].outcome

    def bush(self) -> str:
        return self.maker.part("bush", SIZES)

    def test_a_bore_within_its_class_conforms(self) -> None:
        # ISO 286-2: 30 H7 is +0.021/0; the bore is 30.01.
        said = {"feature": "bore 30", "size_mm": 30.0, "tolerance_class": "H7"}
        self.assertEqual(self.only(self.bush(), **said), ("size", "conforming"))

    def test_a_claim_by_the_maker_s_name_is_judged(self) -> None:
        # ISO 286-2: 40 h11 is 0/-0.16; the seat is 40.
        said = {"feature": "Bush: seat", "size_mm": 40.0}
        bush = self.bush()
        self.assertEqual(self.only(bush, tolerance_class="h11", **said), ("size", "conforming"))
        self.assertEqual(self.only(bush, tolerance_class="r6", **said), ("size", "nonconforming"))

    def test_a_hole_s_class_on_a_shaft_by_its_maker_s_name_is_undecided_and_says_why(self) -> None:
        rows = self.rows(self.bush(), feature="Bush: seat", size_mm=40.0, tolerance_class="H11")
        self.assertEqual([row.outcome for row in rows], ["undecided"])
        self.assertIn("H11 is a hole's class, and Bush: seat, an outside, is a shaft", rows[0].found)

    def test_a_full_temp_folder_is_not_the_file_s_fault(self) -> None:
        path = self.folder / "part.step"
        path.write_text(self.bush())
        task = task_of(path)
        soft, hard = resource.getrlimit(resource.RLIMIT_FSIZE)
        resource.setrlimit(resource.RLIMIT_FSIZE, (100, hard))  # ends writing as a full disk does
        try:
            full = judge_file(task)
        finally:
            resource.setrlimit(resource.RLIMIT_FSIZE, (soft, hard))
        self.assertTrue(full.passing)
        self.assertIn("can not be written", full.rows[0].found)
        self.assertIn("make room", full.rows[0].advice)
        self.assertFalse(judge_file(task).passing)

    def test_the_uncertainty_decides_near_a_limit(self) -> None:
        said = {"feature": "bore", "lower_mm": 30.0, "upper_mm": 30.012}
        self.assertEqual(self.only(self.bush(), 0.001, **said), ("size", "conforming"))
        self.assertEqual(self.only(self.bush(), 0.003, **said), ("size", "undecided"))

    def test_one_side_of_an_inch_fit_is_judged(self) -> None:
        # ANSI B4.1 table 1 (tests/reference/ansi_b41_fits.csv), RC4 at 1 in: hole +0.0012/0 in,
        # so 25.4 to 25.4305 mm.
        text = self.maker.part("bush", SIZES | {"inner": 25.41})
        said = {"feature": "bore", "size_mm": 25.4, "tolerance_class": "RC4"}
        self.assertEqual(self.only(text, **said), ("size", "conforming"))
        text = self.maker.part("bush", SIZES | {"inner": 25.44})
        self.assertEqual(self.only(text, **said), ("size", "nonconforming"))

    def test_a_length_lies_between_faces_that_look_away(self) -> None:
        said = {"feature": "length", "size_mm": 42.0, "lower_mm": 41.9, "upper_mm": 42.1}
        self.assertEqual(self.only(self.bush(), **said), ("length", "conforming"))

    def test_a_face_of_other_sizes_is_missing_and_one_of_its_own_is_there(self) -> None:
        said = {"feature": "Bush: face 999x777 @ 30"}
        self.assertEqual(self.only(self.bush(), **said), ("missing feature", "nonconforming"))
        said = {"feature": "Bush: face 50 @ 30"}
        self.assertEqual(self.only(self.bush(), **said), ("presence", "conforming"))

    def test_a_face_is_not_judged_by_one_size(self) -> None:
        for feature, limits in (("face 40", (30.0, 50.0)), ("face 40", (1.0, 2.0))):
            rows = self.rows(self.bush(), feature=feature, lower_mm=limits[0], upper_mm=limits[1])
            self.assertEqual([(row.kind, row.outcome) for row in rows], [("size", "undecided")])
            self.assertIn("between two faces", rows[0].advice)

    def test_names_in_a_fit_are_in_the_claim_s_unit(self) -> None:
        # ISO 286-2 as below; 40 mm is 1.5748 in.
        pair = {"feature": "Hub: bore 1.5748", "mate": "Sleeve: outside 1.577", "size_mm": 40.0}
        text = self.maker.part("pressed", SIZES)
        said = pair | {"tolerance_class": "H7/s6", "unit": "inch"}
        self.assertEqual(self.only(text, **said), ("fit", "conforming"))

    def test_a_fit_is_judged_by_its_class(self) -> None:
        # ISO 286-2: 40 H7/s6 is interference 0.018 to 0.059; the sleeve is 0.05 over its hub.
        said = {"feature": "Hub: bore 40", "mate": "Sleeve: outside 40.05", "size_mm": 40.0}
        text = self.maker.part("pressed", SIZES)
        self.assertEqual(self.only(text, tolerance_class="H7/s6", **said), ("fit", "conforming"))
        self.assertEqual(self.only(text, tolerance_class="H7/g6", **said), ("fit", "nonconforming"))

    def test_two_features_that_do_not_meet_are_no_fit(self) -> None:
        said = {"feature": "Sleeve: bore", "mate": "Hub: outside", "tolerance_class": "H7/s6"}
        rows = self.rows(self.maker.part("pressed", SIZES), **said)
        self.assertIn("do not bear on each other", rows[0].found)

    def test_a_material_that_the_file_states_is_compared(self) -> None:
        text = self.bush().replace("DATA;\n", "DATA;\n" + MATERIAL, 1)
        path = self.folder / "stated.step"
        path.write_text(text)
        self.assertEqual(stated_materials(path), ["grey iron"])

    def test_a_material_that_no_table_has_is_undecided(self) -> None:
        rows = self.rows(self.bush(), material="gray irn")
        self.assertEqual([(row.kind, row.outcome) for row in rows][1], ("material", "undecided"))

    def test_an_open_shell_is_a_row_of_its_own(self) -> None:
        rows = self.rows(opened(self.bush()))
        self.assertEqual([row.kind for row in rows], ["file", "open shell"])

    def test_what_is_measured_on_an_open_shell_is_undecided_with_the_reason(self) -> None:
        rows = self.rows(opened(self.bush()), feature="bore", size_mm=30.0, tolerance_class="H7")
        sizes = [row for row in rows if row.kind == "size"]
        self.assertEqual([row.outcome for row in sizes], ["undecided"])
        self.assertIn("not closed", sizes[0].notes)


    def test_a_sound_part_is_judged_beside_an_open_one(self) -> None:
        # The bore is the first part's, and only the second is open; 40 H7 is +0.025/0.
        text = opened(self.maker.part("pressed", SIZES), -1)
        for word, outcome in (("bore", "conforming"), ("outside", "undecided")):
            rows = self.rows(text, feature=f"{word} 40", lower_mm=40.0, upper_mm=40.1)
            sizes = [row.outcome for row in rows if row.kind == "size"]
            self.assertEqual(sizes, [outcome], word)

    def test_what_an_open_part_may_hide_is_not_called_missing_beside_a_sound_one(self) -> None:
        text = opened(self.maker.part("pressed", SIZES), -1)
        said = {"feature": "Hub: bore 40", "mate": "width 8", "lower_mm": 0.0, "upper_mm": 0.1}
        found = self.rows(text, **said)[0]
        self.assertEqual((found.kind, found.outcome), ("missing feature", "undecided"))

    def test_what_an_open_part_may_hide_is_not_called_missing(self) -> None:
        rows = self.rows(opened(self.bush()), feature="slot", size_mm=8.0, tolerance_class="H7")
        missing = [row.outcome for row in rows if row.kind == "missing feature"]
        self.assertEqual(missing, ["undecided"])


class Passing(unittest.TestCase):
    """What says nothing of the file is shown and told as passing, never as a finding about it."""

    @classmethod
    def setUpClass(cls) -> None:
        folder = tempfile.TemporaryDirectory()
        cls.addClassCleanup(folder.cleanup)
        cls.text = shelf_making.Maker(PROGRAM, Path(folder.name)).part("bush", SIZES)

    def setUp(self) -> None:
        folder = tempfile.TemporaryDirectory()
        self.addCleanup(folder.cleanup)
        self.path = Path(folder.name) / "part.step"
        self.path.write_text(self.text)

    def passing(self, task: Task) -> str:
        done = judge_file(task)
        self.assertTrue(done.passing, done.rows)
        self.assertEqual([(row.kind, row.outcome) for row in done.rows], [("not read", "undecided")])
        self.assertEqual(done.features, [])
        self.assertIn("run again", done.rows[0].advice)
        return done.rows[0].found

    def meanwhile(self, act: Callable[[], object]) -> mock._patch[Any]:
        """What happens to the file while the kernel reads it."""

        def look(*given: Any, **named: Any) -> Any:
            act()
            return look_within(*given, **named)

        look_within = judge.kernel.look_within
        return mock.patch.object(judge.kernel, "look_within", look)

    def test_a_file_at_rest_is_not(self) -> None:
        self.assertFalse(judge_file(task_of(self.path)).passing)

    def test_a_bad_file_at_rest_is_not(self) -> None:
        self.path.write_text(self.text[:2000])
        done = judge_file(task_of(self.path))
        self.assertEqual((done.passing, done.rows[0].kind), (False, "bad file"))

    def test_a_file_that_is_gone(self) -> None:
        task = task_of(self.path)
        self.path.unlink()
        self.assertIn("no such file", self.passing(task))

    def test_a_file_that_goes_while_it_is_read(self) -> None:
        task = task_of(self.path)
        with self.meanwhile(self.path.unlink):
            self.assertIn("no such file", self.passing(task))

    def test_a_file_that_fails_to_be_read(self) -> None:
        task = task_of(self.path)
        for error in (
            OSError(errno.EIO, os.strerror(errno.EIO)),
            spotblue.FileAccessError("x: the file can not be read; check the disk", task.path, "",
                                     "the file can not be read", "check the disk"),
        ):  # fmt: skip
            with mock.patch.object(judge.kernel, "look_within", side_effect=error):
                self.assertRegex(self.passing(task), "input/output error|can not be read")

    def test_a_file_that_has_changed_since_it_was_hashed(self) -> None:
        task = task_of(self.path)
        for text in (self.text.replace("Invented", "Invented,"), self.text[:2000], ""):
            self.path.write_text(text)
            self.assertEqual(self.passing(task), "it changed while it was looked at")

    def test_a_file_that_is_taken_away_and_put_back_while_it_is_read(self) -> None:
        def away() -> None:
            aside = self.path.with_suffix(".aside")
            self.path.rename(aside)
            aside.rename(self.path)

        task = task_of(self.path)
        with self.meanwhile(away):
            self.assertEqual(self.passing(task), "it changed while it was looked at")

    def test_a_file_beside_that_changes_or_goes_since_it_was_hashed(self) -> None:
        other = self.path.with_name("other.stp")
        refers = "#800001=DOCUMENT_FILE('other.stp','',$,$,'',$);\n"
        self.path.write_text(self.text.replace("DATA;\n", "DATA;\n" + refers, 1))
        other.write_text("one")
        task = task_of(self.path)
        self.assertNotEqual(task.beside, "")
        self.assertNotEqual(judge_file(task).rows[0].kind, "not read")
        other.write_text("two")
        self.assertEqual(self.passing(task), "it changed while it was looked at")
        other.unlink()
        self.assertEqual(self.passing(task), "it changed while it was looked at")

    def test_a_file_whose_material_cannot_be_read(self) -> None:
        task = task_of(self.path, Claim(1, "part.step", material="grey iron"))
        gone = OSError(errno.ESTALE, os.strerror(errno.ESTALE))
        with mock.patch.object(judge, "stated_materials", side_effect=gone):
            self.assertIn("stale file handle", self.passing(task))

    def test_a_failure_of_the_machine_on_one_claim(self) -> None:
        error = spotblue.OpenCascadeError("no child process", rule="no child process")
        claim = Claim(1, "part.step", feature="bore", size_mm=30.0, tolerance_class="H7")
        with mock.patch.object(judge.kernel, "findings_of", side_effect=error):
            self.assertEqual(self.passing(task_of(self.path, claim)), "no child process")


if __name__ == "__main__":
    unittest.main()
