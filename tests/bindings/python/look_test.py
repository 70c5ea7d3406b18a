"""A look from Python tells what the program tells."""

from __future__ import annotations

import json
import logging
import unittest

import demo
import numpy as np
import spotblue

PLAN = "ink-disc-plan-b"


class LookTest(unittest.TestCase):
    look: spotblue.Look

    @classmethod
    def setUpClass(cls) -> None:
        cls.look = spotblue.look(demo.step(PLAN))

    def test_json_is_the_programs_own(self) -> None:
        program = demo.without_seconds(demo.said("look", "--json", demo.step(PLAN)))
        self.assertEqual(demo.without_seconds(self.look.to_json()), program)

    def test_text_is_the_programs_own(self) -> None:
        self.assertEqual(self.look.to_text(), demo.said("look", demo.step(PLAN)))
        inches = demo.said("look", "--unit", "in", demo.step(PLAN))
        self.assertEqual(self.look.to_text(unit="in"), inches)

    def test_seats_carry_their_numbers_with_units(self) -> None:
        listed = json.loads(self.look.to_json())["radial_seats"]
        self.assertEqual(len(self.look.seats.radial), len(listed))
        for seat, row in zip(self.look.seats.radial, listed):
            self.assertEqual(self.look.feature_id(seat.hole), row["hole"]["feature"])
            self.assertEqual(seat.clearance_mm, row["clearance_mm"])
            self.assertEqual(seat.coverage_deg, row["coverage_deg"])
            self.assertEqual(seat.tilt_deg, row["tilt_deg"])

    def test_a_job_file_is_looked_at_by_its_model_and_settings(self) -> None:
        self.assertFalse(spotblue.is_model_file(demo.job(PLAN)))
        again = spotblue.look(demo.job(PLAN))
        self.assertEqual(again.seats, self.look.seats)
        none = spotblue.look(demo.job(PLAN), seats=spotblue.SeatSettings(
            radial_gap_mm=0, radial_gap_per_diameter=0,
            radial_overlap_mm=0, radial_overlap_per_diameter=0))  # fmt: skip
        self.assertLess(len(none.seats.radial), len(again.seats.radial))

    def test_what_time_did_not_reach_is_told(self) -> None:
        found = spotblue.look(demo.step(PLAN), seconds=1e-6)
        self.assertEqual(len(found.not_looked_at), 1)
        self.assertFalse(found.machine_lacked)
        self.assertIn("# Not whole", spotblue.draft(found, "press.step"))
        found = spotblue.look_at(self.look.model, memory_mb=1e-6)
        self.assertIn("memory given was used up", found.not_looked_at[0].text)
        self.assertEqual(spotblue.look(demo.step(PLAN), seconds=300, memory_mb=3000).not_looked_at, ())

    def test_bounds_of_nothing_are_refused(self) -> None:
        for bounds in ({"seconds": 0}, {"memory_mb": -1}, {"seconds": float("nan")}):
            with self.assertRaisesRegex(spotblue.BadInputError, "more than 0"):
                spotblue.look(demo.step(PLAN), **bounds)

    def test_a_file_is_reported_in_its_own_unit(self) -> None:
        self.assertEqual(spotblue.unit_of(self.look.model.file), spotblue.LengthUnit.MM)

    def test_values_outlive_the_look_they_are_part_of(self) -> None:
        cylinder = spotblue.look(demo.step(PLAN)).model.products[0].cylinders[0]
        self.assertEqual(cylinder, self.look.model.products[0].cylinders[0])

    def test_repr_says_what_was_found(self) -> None:
        self.assertIn("ink-disc-plan-b.step: ", repr(self.look))
        self.assertIn("clearance_mm=", repr(self.look.seats.radial[0]))

    def test_html_escapes_names(self) -> None:
        self.assertIn("<table>", self.look._repr_html_())
        self.assertNotIn("<script", self.look._repr_html_())

    def test_arrays_have_a_row_a_seat(self) -> None:
        seats = self.look.radial_seats_array()
        self.assertEqual(
            seats["clearance_mm"].tolist(), [seat.clearance_mm for seat in self.look.seats.radial]
        )
        self.assertIsNot(seats, self.look.radial_seats_array())
        axial = self.look.axial_seats_array()
        self.assertEqual(axial["gap_mm"].tolist(), [seat.gap_mm for seat in self.look.seats.axial])
        fouls = self.look.fouls_array()
        self.assertEqual(len(fouls), len(self.look.fouls.found))
        features = self.look.features_array()
        holes = features[(features["kind"] == "cylinder") & (features["side"] == "internal")]
        self.assertTrue(np.all(holes["size_mm"] > 0))

    def test_each_number_of_a_radial_seat_is_a_column(self) -> None:
        seats = self.look.seats.radial
        rows = self.look.radial_seats_array()
        numbers = [name for name in seats[0]._fields if isinstance(getattr(seats[0], name), float)]
        self.assertIn("least_gap_mm", numbers)
        for name in numbers:
            self.assertEqual(rows[name].tolist(), [getattr(seat, name) for seat in seats], name)

    def test_columns_keep_their_names_order_and_types(self) -> None:
        promised = {
            "radial_seats": "hole_occurrence:U hole:U shaft_occurrence:U shaft:U hole_mm:f shaft_mm:f "
            "clearance_mm:f offset_mm:f tilt_deg:f least_gap_mm:f engaged_mm:f coverage_deg:f",
            "axial_seats": "a_occurrence:U a:U b_occurrence:U b:U gap_mm:f inner_mm:f outer_mm:f "
            "area_mm2:f",
            "fouls": "a:U b:U volume_mm3:f depth_mm:f length_mm:f x_mm:f y_mm:f z_mm:f exact:b "
            "cause:U",
            "features": "product:U name:U kind:U side:U size_mm:f coverage_deg:f area_mm2:f",
        }
        for table, columns in promised.items():
            array = getattr(self.look, f"{table}_array")()
            said = [f"{name}:{array.dtype[name].kind}" for name in array.dtype.names]
            self.assertEqual([one for one in said if one in columns.split()], columns.split())

    def test_an_array_without_rows_has_its_columns(self) -> None:
        nothing = spotblue.look_at(spotblue.read(demo.step(PLAN)), seconds=1e-6)
        self.assertEqual(len(nothing.radial_seats_array()), 0)
        self.assertEqual(
            nothing.radial_seats_array().dtype.names, self.look.radial_seats_array().dtype.names
        )

    def test_a_face_on_no_centre_line_has_no_diameters_in_the_array(self) -> None:
        rows = self.look.axial_seats_array()
        on_no_line = [seat.centre_line is None for seat in self.look.seats.axial]
        self.assertIn(True, on_no_line)
        self.assertEqual(np.isnan(rows["inner_mm"]).tolist(), on_no_line)
        self.assertEqual(np.isnan(rows["outer_mm"]).tolist(), on_no_line)

    def test_a_model_that_was_read_is_looked_at_without_its_file(self) -> None:
        model = spotblue.read(demo.step(PLAN))
        self.assertEqual(len(model.products), len(self.look.model.products))
        again = spotblue.look_at(model)
        self.assertEqual(len(again.seats.radial), len(self.look.seats.radial))
        self.assertEqual(spotblue.feature_id(model, again.seats.radial[0].hole),
                         self.look.feature_id(self.look.seats.radial[0].hole))  # fmt: skip

    def test_a_feature_of_no_occurrence_is_refused(self) -> None:
        with self.assertRaises(spotblue.BadInputError):
            self.look.feature_id(spotblue.FeatureRef(occurrence=10_000))

    def test_a_missing_file_is_named(self) -> None:
        with self.assertRaises(spotblue.FileAccessError) as caught:
            spotblue.look("no/such.step", accept_partial=True)
        self.assertEqual(caught.exception.file, "no/such.step")

    def test_the_log_reaches_python(self) -> None:
        with self.assertLogs("spotblue", logging.INFO) as log:
            spotblue.look(demo.step(PLAN))
        self.assertIn("looked at", log.output[0])

    def test_open_cascade_names_its_version(self) -> None:
        self.assertRegex(spotblue.open_cascade_version(), r"^\d+\.\d+")


class RegionTest(unittest.TestCase):
    def test_a_disc_less_a_smaller_one_is_a_ring(self) -> None:
        # Area of a circle, any handbook: pi d^2 / 4.
        whole = spotblue.disc(spotblue.Point2(), 10.0)
        hole = spotblue.disc(spotblue.Point2(), 4.0)
        ring = spotblue.subtract(whole, hole)
        self.assertAlmostEqual(spotblue.area_mm2(ring), np.pi * (100 - 16), places=9)
        self.assertAlmostEqual(spotblue.area_mm2(spotblue.intersect(whole, hole)), np.pi * 16)
        self.assertFalse(spotblue.contains(ring, spotblue.Point2(u=1.0)))
        self.assertEqual(spotblue.reach(ring, spotblue.Point2()).greatest_mm, 10.0)
        self.assertEqual(spotblue.extent(ring).high.u, 10.0)
        self.assertEqual(len(spotblue.inner_points(ring, 3)), 3)
        moved = spotblue.mapped(ring, spotblue.PlaneMap(origin=spotblue.Point2(u=100.0)))
        self.assertEqual(spotblue.extent(moved).high.u, 110.0)


if __name__ == "__main__":
    unittest.main()
