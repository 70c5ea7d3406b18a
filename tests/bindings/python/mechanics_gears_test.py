"""Gears as Python calls them; source keys of tests/reference/SOURCES.md beside each value."""

from __future__ import annotations

import csv
import math
import pickle
import unittest
from pathlib import Path

from spotblue import errors, mechanics

REFERENCE = Path(__file__).parents[2] / "reference"


def spur(module_mm: float) -> mechanics.ToothForm:
    return mechanics.ToothForm(module_mm=module_mm)


class Forms(unittest.TestCase):
    def test_involute_is_that_of_printed_tables_and_comes_back(self) -> None:
        # Involute tables: inv 20 degrees = 0.014904.
        value = mechanics.involute(math.radians(20))
        self.assertAlmostEqual(value, 0.014904, delta=5e-7)
        self.assertAlmostEqual(mechanics.involute_inverse(value), math.radians(20))
        with self.assertRaises(errors.BadInputError):
            mechanics.involute(2.0)

    def test_a_diametral_pitch_is_a_module(self) -> None:
        form = mechanics.form_of_diametral_pitch(10, 14.5)
        self.assertAlmostEqual(form.module_mm, 2.54)
        self.assertEqual((form.pressure_angle_deg, form.helix_angle_deg), (14.5, 0.0))

    def test_circles_of_the_basic_rack(self) -> None:
        # By hand: m 2, z 20: 40, 44, 35.
        circles = mechanics.gear_circles(spur(2.0), 20)
        self.assertAlmostEqual(circles.reference_mm, 40.0)
        self.assertAlmostEqual(circles.tip_mm, 44.0)
        self.assertAlmostEqual(circles.root_mm, 35.0)
        self.assertAlmostEqual(mechanics.gear_circles(spur(2.0), 20, shift=0.5).tip_mm, 46.0)

    def test_helical_teeth_seen_square_to_the_axis(self) -> None:
        form = mechanics.ToothForm(module_mm=3.0, helix_angle_deg=30.0)
        seen = mechanics.transverse_form(form)
        self.assertAlmostEqual(seen.module_mm, 3.0 / math.cos(math.radians(30)))

    def test_too_few_teeth_are_refused_by_the_argument_s_name(self) -> None:
        mechanics.require_teeth(5, "pinion")
        with self.assertRaisesRegex(errors.BadInputError, "pinion"):
            mechanics.require_teeth(4, "pinion")

    def test_teeth_below_which_a_rack_undercuts(self) -> None:
        # 2 / sin^2(20 degrees) = 17.097.
        self.assertAlmostEqual(mechanics.undercut_below_teeth(spur(1.0)), 17.097, delta=5e-4)


class Thickness(unittest.TestCase):
    def test_a_rack_s_tooth_is_half_the_pitch(self) -> None:
        # [SDP81] table 10-2: m 3: 4.7124; table 10-1: m 10, x 0.3: 17.8918.
        self.assertAlmostEqual(mechanics.standard_thickness_mm(spur(3.0)), 4.7124, delta=5e-5)
        self.assertAlmostEqual(
            mechanics.shift_of_thickness(spur(10.0), 17.8918), 0.3, delta=1e-5
        )

    def test_a_span_is_that_printed_and_gives_the_thickness_back(self) -> None:
        # Base tangent lengths, m 1, z 36, k 5: 13.7888; tables, from memory.
        self.assertEqual(mechanics.teeth_to_span(spur(1.0), 36), 5)
        thickness = math.pi / 2
        span = mechanics.span_mm(spur(1.0), 36, spanned=5, thickness_mm=thickness)
        self.assertAlmostEqual(span, 13.7888, delta=5.1e-5)
        back = mechanics.thickness_from_span_mm(spur(1.0), 36, spanned=5, span_mm=span)
        self.assertAlmostEqual(back, thickness)

    def test_over_pins_is_that_printed_and_gives_the_thickness_back(self) -> None:
        # [KHKREF], from memory: m 1, z 20, pin 1.7: 22.2941.
        pins = mechanics.Pins.TWO
        over = mechanics.over_pins_mm(
            spur(1.0), 20, pin_mm=1.7, thickness_mm=math.pi / 2, pins=pins
        )
        self.assertAlmostEqual(over, 22.2941, delta=5.1e-5)
        back = mechanics.thickness_from_pins_mm(
            spur(1.0), 20, pin_mm=1.7, over_mm=over, pins=pins
        )
        self.assertAlmostEqual(back, math.pi / 2)

    def test_a_span_of_one_tooth_is_refused(self) -> None:
        with self.assertRaises(errors.BadInputError):
            mechanics.span_mm(spur(1.0), 36, spanned=1, thickness_mm=1.5)


class Mesh(unittest.TestCase):
    def mesh(self, centre_mm: float) -> mechanics.GearMesh:
        form = spur(8.0)
        thickness = mechanics.standard_thickness_mm(form)
        a = mechanics.standard_gear(form, 20, thickness_mm=thickness)
        b = mechanics.standard_gear(form, 60, thickness_mm=thickness)
        return mechanics.gear_mesh(form, a, b=b, centre_mm=centre_mm, face_mm=0.0)

    def test_the_path_of_contact_is_that_printed(self) -> None:
        # By hand in gear_mesh_test.cpp: 20 degrees, 20 and 60 teeth, module 8: 39.4588 mm.
        mesh = self.mesh(320.0)
        self.assertAlmostEqual(mesh.path_mm, 39.4588, delta=1e-4)
        self.assertAlmostEqual(mesh.backlash_mm, 0.0)
        self.assertEqual(pickle.loads(pickle.dumps(mesh)), mesh)

    def test_a_wider_centre_opens_the_backlash(self) -> None:
        self.assertGreater(self.mesh(320.5).backlash_mm, 0.0)

    def test_a_centre_under_the_least_is_refused(self) -> None:
        # By hand: m/2 (z1 + z2) cos 20.
        least = mechanics.least_centre_mm(spur(8.0), 20, teeth_b=60)
        self.assertAlmostEqual(least, 320 * math.cos(math.radians(20)))
        with self.assertRaises(errors.BadInputError):
            self.mesh(least - 1)

    def test_least_backlash_is_that_of_the_table(self) -> None:
        with (REFERENCE / "gear_min_backlash_computed.csv").open(newline="", encoding="utf-8") as file:
            for row in csv.DictReader(file):
                found = mechanics.least_backlash(
                    float(row["normal_module_mm"]), float(row["centre_distance_mm"])
                )
                self.assertAlmostEqual(
                    found.iso_mm, float(row["jbn_min_formula_mm"]), delta=5.1e-5
                )
                self.assertAlmostEqual(
                    found.agma_mm, float(row["agma2002_formula_mm"]), delta=5.1e-4
                )


if __name__ == "__main__":
    unittest.main()
