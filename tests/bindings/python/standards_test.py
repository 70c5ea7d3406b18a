"""The standards' tables and rules, and the base values, as Python sees them.

Rows are those of tests/reference (source keys: SOURCES.md there); what is worked by hand says so.
"""

from __future__ import annotations

import copy
import csv
import pickle
import unittest
from pathlib import Path

from spotblue import base, errors, standards

REFERENCE = Path(__file__).parents[2] / "reference"
INCH = 25.4
PSI = 0.45359237 * 9.80665 / (INCH * INCH)  # exact by definition


def rows(name: str) -> list[dict[str, str]]:
    with (REFERENCE / name).open(newline="", encoding="utf-8") as file:
        return list(csv.DictReader(file))


class Base(unittest.TestCase):
    def test_lengths_are_read_as_people_write_them(self) -> None:
        # By hand: 1 5/16 in = 1.3125 x 25.4.
        self.assertAlmostEqual(base.parse_length("1 5/16", base.LengthUnit.INCH), 33.3375)
        self.assertAlmostEqual(base.parse_length("44", base.LengthUnit.MM), 44.0)
        self.assertEqual(base.parse_unit("in"), base.LengthUnit.INCH)
        self.assertEqual(base.unit_name(base.LengthUnit.INCH), "in")

    def test_a_text_that_is_no_length_is_refused_with_the_text(self) -> None:
        with self.assertRaises(errors.BadInputError) as caught:
            base.parse_length("about 3", base.LengthUnit.MM)
        self.assertIn("about 3", str(caught.exception))
        self.assertTrue(caught.exception.cure)
        with self.assertRaises(errors.BadInputError):
            base.parse_unit("furlong")

    def test_lengths_are_written_with_the_decimals_asked_for_or_needed(self) -> None:
        self.assertEqual(base.format_length(-0.0001, base.LengthUnit.MM, decimals=2), "0.00")
        self.assertEqual(base.format_length(25.4, base.LengthUnit.INCH, decimals=3), "1.000")
        self.assertEqual(base.format_size(6.6, base.LengthUnit.MM), "6.6")

    def test_a_measured_length_is_judged_by_its_uncertainty(self) -> None:
        limits = base.Limits(lower_mm=44.0, upper_mm=44.025)
        self.assertEqual(base.judge(44.01, 0.005, limits=limits), base.Outcome.CONFORMING)
        self.assertEqual(base.judge(44.023, 0.005, limits=limits), base.Outcome.UNDECIDED)
        self.assertEqual(base.judge(44.04, 0.005, limits=limits), base.Outcome.NONCONFORMING)
        self.assertEqual(base.outcome_name(base.Outcome.UNDECIDED), "undecided")
        possible = base.Limits(lower_mm=44.005, upper_mm=44.015)
        self.assertEqual(base.judge(possible, limits), base.Outcome.CONFORMING)
        self.assertAlmostEqual(base.margin(possible, limits), 0.005)
        with self.assertRaises(errors.BadInputError):
            base.judge(44.0, -0.1, limits=limits)

    def test_the_nearest_word_is_found_letter_case_aside(self) -> None:
        self.assertEqual(base.nearest_word("Borre", ["shaft", "bore"]), "bore")
        self.assertEqual(base.nearest_word("bore", []), "")


class Records(unittest.TestCase):
    def test_a_record_is_shown_compared_copied_and_pickled_by_its_fields(self) -> None:
        fit = standards.fit(44.0, "H7/s6")
        self.assertIn("least_clearance_mm=-0.059", repr(fit))
        for alike in (copy.copy(fit), copy.deepcopy(fit), pickle.loads(pickle.dumps(fit))):
            self.assertEqual(alike, fit)
        self.assertNotEqual(fit, standards.fit(44.0, "H7/p6"))

    def test_texts_of_a_table_outlive_the_python_text_they_came_from(self) -> None:
        found = standards.find_material("C93200")
        assert found is not None
        again = pickle.loads(pickle.dumps(found))
        self.assertEqual(again, found)
        self.assertEqual(standards.Material(name="own " + "alloy").name, "own alloy")

    def test_an_unknown_field_is_a_type_error_that_names_those_there_are(self) -> None:
        with self.assertRaisesRegex(TypeError, "no field 'low'; the nearest is lower_mm; it has"):
            base.Limits(low=1.0)  # type: ignore[call-arg]

    def test_limits_have_a_width(self) -> None:
        self.assertAlmostEqual(base.Limits(lower_mm=1.0, upper_mm=1.5).width_mm, 0.5)


class Fits(unittest.TestCase):
    def test_grades_are_those_printed(self) -> None:
        for row in rows("iso286_it.csv")[::7]:
            with self.subTest(row=row):
                found = standards.it_value(float(row["upto_mm"]), row["grade"])
                self.assertAlmostEqual(found * 1000, float(row["value_um"]), 6)

    def test_deviations_are_those_printed(self) -> None:
        for row in rows("iso286_limits_examples.csv")[::11]:
            with self.subTest(row=row):
                found = standards.deviations(float(row["example_nominal_mm"]), row["class"])
                self.assertAlmostEqual(found.upper_mm * 1000, float(row["upper_um"]), 6)
                self.assertAlmostEqual(found.lower_mm * 1000, float(row["lower_um"]), 6)

    def test_limits_and_size_kind_of_a_class(self) -> None:
        # ISO 286-2: H7 at 44 mm is 0/+25 um.
        limits = standards.limits(44.0, "H7")
        self.assertAlmostEqual(limits.lower_mm, 44.0)
        self.assertAlmostEqual(limits.upper_mm, 44.025)
        self.assertEqual(standards.size_kind("js6"), standards.SizeKind.SHAFT)

    def test_a_fit_says_what_it_promises(self) -> None:
        # ISO 286-2 at 44 mm: H7 0/+25, s6 +43/+59 um.
        fit = standards.fit(44.0, "H7/s6")
        self.assertAlmostEqual(fit.least_clearance_mm, -0.059)
        self.assertAlmostEqual(fit.greatest_clearance_mm, -0.018)
        self.assertEqual(fit.kind, standards.FitKind.INTERFERENCE)
        self.assertEqual(standards.fit_kind(-0.01, 0.02), standards.FitKind.TRANSITION)
        self.assertEqual(standards.fit_kind_name(standards.FitKind.CLEARANCE), "clearance")

    def test_a_class_the_standard_lacks_is_refused_with_a_cure(self) -> None:
        with self.assertRaises(errors.NotInStandardError) as caught:
            standards.limits(4000.0, "H7")
        self.assertIn("3150", str(caught.exception))
        with self.assertRaises(errors.BadInputError):
            standards.fit(44.0, "H7-s6")

    def test_inch_fits_are_those_printed(self) -> None:
        for row in rows("ansi_b41_fits.csv")[::23]:
            with self.subTest(row=row):
                nominal_mm = float(row["upto_in"]) * INCH
                fit = standards.b4_1_fit(nominal_mm, row["class"])
                upper = (fit.hole.upper_mm - nominal_mm) / INCH * 1000
                lower = (fit.shaft.lower_mm - nominal_mm) / INCH * 1000
                self.assertAlmostEqual(upper, float(row["hole_upper_thou"]), 6)
                self.assertAlmostEqual(lower, float(row["shaft_lower_thou"]), 6)

    def test_a_class_of_ansi_is_told_by_its_letters(self) -> None:
        self.assertTrue(standards.has_b4_1_letters("RC4"))
        self.assertFalse(standards.has_b4_1_letters("H7/g6"))

    def test_common_fits_allow_the_clearance_they_are_offered_for(self) -> None:
        metric = standards.common_fits_with_clearance(44.0, -0.04)
        self.assertIn("H7/s6", [common.name for common in metric])
        inch = standards.common_b4_1_fits_with_clearance(25.4, 0.02)
        self.assertTrue(inch)
        for common in metric:
            self.assertLessEqual(common.fit.least_clearance_mm, -0.04)
            self.assertGreaterEqual(common.fit.greatest_clearance_mm, -0.04)
        for common in inch:
            self.assertEqual(standards.b4_1_fit(25.4, common.name), common.fit)


class Tolerances(unittest.TestCase):
    def test_general_deviations_are_those_printed(self) -> None:
        for row in rows("iso2768_1.csv"):
            if not row["deviation_mm"] or not row["up_to_mm"]:
                continue
            of = standards.broken_edge_deviation
            if row["table"] == "1":
                of = standards.general_deviation
            with self.subTest(row=row):
                tolerance = standards.parse_general_tolerance(row["class"])
                self.assertEqual(standards.general_tolerance_letter(tolerance), row["class"])
                found = of(float(row["up_to_mm"]), tolerance)
                self.assertAlmostEqual(found, float(row["deviation_mm"]))

    def test_steps_say_where_the_standard_gives_nothing(self) -> None:
        first = standards.general_tolerance_steps()[0]
        # ISO 2768-1, table 1: 0.5 up to 3 mm: f 0.05, m 0.1, c 0.2, v none.
        self.assertEqual(list(first.deviation_mm), [0.05, 0.1, 0.2, None])
        self.assertGreater(len(standards.broken_edge_steps()), 1)
        with self.assertRaises(errors.NotInStandardError):
            standards.general_deviation(0.3, standards.GeneralTolerance.FINE)

    def test_clearance_holes_are_those_printed(self) -> None:
        printed = rows("clearance_holes_iso273.csv")
        sizes = {float(row["thread_mm"]) for row in printed}
        self.assertLessEqual(sizes, {hole.thread_mm for hole in standards.clearance_holes()})
        for row in printed:
            hole = standards.clearance_hole(float(row["thread_mm"]))
            assert hole is not None
            if not row["medium_mm"]:
                continue
            self.assertAlmostEqual(hole.medium_mm, float(row["medium_mm"]))
        self.assertIsNone(standards.clearance_hole(9.7))


class Keys(unittest.TestCase):
    def test_metric_keys_are_those_printed(self) -> None:
        printed = rows("keys_din6885_parallel.csv")
        self.assertEqual(len(standards.parallel_keys()), len(printed))
        for row in printed:
            key = standards.parallel_key(float(row["shaft_upto_mm"]))
            self.assertAlmostEqual(key.width_mm, float(row["key_b_mm"]))
            self.assertAlmostEqual(key.shaft_depth_mm, float(row["shaft_depth_t1_mm"]))

    def test_free_keyseats_are_h9_and_d10(self) -> None:
        # ISO 286 at 8 mm: H9 0/+36, D10 +40/+98 um.
        widths = standards.key_widths(standards.parallel_key(25.0), standards.KeyFit.FREE)
        self.assertAlmostEqual(widths.shaft_keyseat.upper_mm, 8.036)
        self.assertAlmostEqual(widths.hub_keyseat.upper_mm, 8.098)

    def test_inch_keys_are_those_printed(self) -> None:
        printed = rows("keys_ansi_b17_1.csv")
        self.assertEqual(len(standards.inch_keys()), len(printed))
        for row in printed:
            key = standards.inch_key(float(row["shaft_upto_in"]) * INCH)
            self.assertAlmostEqual(key.width_mm / INCH, float(row["key_width_in"]))
            self.assertEqual(key.rectangular_height_mm is None, row["rect_h_in"] == "")
            depth = standards.inch_keyseat_depth(key.square_height_mm)
            self.assertAlmostEqual(depth / INCH, float(row["square_keyseat_depth_in"]))

    def test_class_1_of_an_inch_key_is_free(self) -> None:
        # ASME B17.1, table 4, from memory: key 1/4 in +0/-0.002, keyseat +0.002/-0.
        widths = standards.inch_key_widths(0.25 * INCH, standards.InchKeyFit.CLASS_1)
        self.assertAlmostEqual(widths.hub_keyseat.upper_mm / INCH, 0.252)

    def test_a_shaft_outside_the_table_has_no_key(self) -> None:
        for of in (standards.parallel_key, standards.inch_key):
            with self.assertRaises(errors.NotInStandardError):
                of(3.0)


class Threads(unittest.TestCase):
    def test_minor_diameters_are_those_printed(self) -> None:
        for row in rows("threads_minor_diameter.csv"):
            if row["unit"] != "mm":
                continue
            thread = standards.find_thread(row["designation"].lower())
            assert thread is not None, row
            self.assertAlmostEqual(
                thread.minor_diameter_mm, float(row["minor_diameter"]), delta=float(row["rounding"])
            )

    def test_a_screw_in_its_tap_drill_is_known(self) -> None:
        self.assertEqual(standards.thread_of(8.5, 10.0), "M10")
        self.assertIsNone(standards.thread_of(10.0, 10.02))
        self.assertIn("M10x1", [thread.designation for thread in standards.threads()])
        self.assertIsNone(standards.find_thread("M11.3"))

    def test_the_pitches_that_iso_262_selects_are_usual(self) -> None:
        usual = {thread.designation for thread in standards.threads() if thread.usual}
        self.assertLess({"M20", "M20x1.5"}, usual)
        self.assertNotIn("M20x1", usual)

    def test_every_possible_thread_is_named_the_likeliest_first(self) -> None:
        possible = standards.possible_threads(8.65, 10.0)
        self.assertEqual(possible[0], standards.thread_of(8.65, 10.0))
        self.assertLessEqual({"M10", "M10x1.25"}, set(possible))

    def test_iron_needs_more_thread_than_steel(self) -> None:
        self.assertEqual(standards.usual_engagement("steel"), 1.0)
        self.assertEqual(standards.usual_engagement("iron"), 1.5)


class Materials(unittest.TestCase):
    def test_materials_are_those_printed(self) -> None:
        self.assertIn("grey iron", standards.material_names())
        found = {(row.name, row.condition): row for row in standards.materials()}
        # materials.csv [PHILPOT]: carbon steel 1020, cold rolled, E 207 GPa, yield 427 MPa.
        steel = found["carbon steel 1020", "cold rolled"]
        self.assertEqual((steel.youngs_modulus_gpa, steel.yield_mpa), (207.0, 427.0))
        self.assertIsNone(standards.find_material("unobtainable"))

    def test_soft_materials_are_known_by_name(self) -> None:
        self.assertIn("felt", standards.soft_materials())
        self.assertTrue(standards.is_soft_material("Cork"))
        self.assertFalse(standards.is_soft_material("steel"))

    def test_no_metal_is_suggested_for_a_plastic(self) -> None:
        names = standards.material_names()
        self.assertEqual(base.likely_word("gunmetl", names), "gunmetal")
        self.assertEqual(base.likely_word("PTFE", names), "")

    def test_bearing_limits_are_those_printed(self) -> None:
        # As bush makers print, from memory: C93200 bears 3000 psi.
        bronze = standards.find_bearing_material("C93200")
        assert bronze is not None and bronze.limits.pressure_mpa is not None
        self.assertAlmostEqual(bronze.limits.pressure_mpa / PSI, 3000, delta=0.003)
        self.assertIn(bronze, standards.bearing_materials())
        self.assertIsNone(standards.find_bearing_material("mild steel"))
        self.assertTrue(standards.is_journal_material("mild steel"))

    def test_the_weaker_of_two_has_the_lesser_of_each_limit(self) -> None:
        one = standards.BearingLimits(pressure_mpa=4.0, speed_m_s=2.0)
        other = standards.BearingLimits(pressure_mpa=8.0, pressure_speed_mpa_m_s=3.0)
        both = standards.weaker(one, other)
        self.assertEqual(
            both,
            standards.BearingLimits(pressure_mpa=4.0, speed_m_s=2.0, pressure_speed_mpa_m_s=3.0),
        )

    def test_proportions_and_clearances_of_shop_practice_are_given(self) -> None:
        guides = standards.clearance_guides()
        self.assertEqual([g.least for g in guides], sorted(g.least for g in guides))
        self.assertEqual(standards.bearing_proportions().wall_floor_mm, 1.5)


if __name__ == "__main__":
    unittest.main()
