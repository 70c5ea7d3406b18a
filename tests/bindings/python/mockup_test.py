"""Mock-ups made in code become models whose seats are known beforehand."""

from __future__ import annotations

import copy
import pickle
import tempfile
import unittest
from pathlib import Path

import demo
import spotblue


def bush_on_pin(bore_mm: float, pin_mm: float) -> spotblue.Mockup:
    """A bush 20 long over a pin 30 long with a collar at its end."""
    bush = spotblue.TurnedPart(
        outside=[spotblue.Step(length_mm=20, diameter_mm=40, end_diameter_mm=40)],
        inside=[spotblue.Step(length_mm=20, diameter_mm=bore_mm, end_diameter_mm=bore_mm)],
    )
    pin = spotblue.TurnedPart(
        outside=[
            spotblue.Step(length_mm=5, diameter_mm=50, end_diameter_mm=50),
            spotblue.Step(start_mm=5, length_mm=25, diameter_mm=pin_mm, end_diameter_mm=pin_mm),
        ]
    )
    return spotblue.Mockup(
        title="bush on pin",
        parts=[
            spotblue.MockupPart(name="Bush", shape=bush),
            spotblue.MockupPart(name="Pin", shape=pin),
        ],
        placements=[
            spotblue.Placement(name="Pin", part="Pin", at_mm=0.0),
            spotblue.Placement(name="Bush", part="Bush", against="Pin",
                               against_face="outside 2 start", gap_mm=0.25),
        ],
    )  # fmt: skip


class MockupTest(unittest.TestCase):
    look: spotblue.Look

    @classmethod
    def setUpClass(cls) -> None:
        out = demo.folder() / "bush.step"
        spotblue.model(bush_on_pin(30.05, 30.0), out)
        cls.look = spotblue.look(out)

    def test_a_mock_up_made_in_code_has_the_clearance_it_was_given(self) -> None:
        (seat,) = self.look.seats.radial
        self.assertAlmostEqual(seat.clearance_mm, 0.05, places=9)
        self.assertAlmostEqual(seat.engaged_mm, 20.0, places=6)
        (axial,) = self.look.seats.axial
        self.assertAlmostEqual(axial.gap_mm, 0.25, places=9)

    def test_walls_are_those_of_the_parts(self) -> None:
        (seat,) = self.look.seats.radial
        hub = spotblue.wall_of_hub(self.look.model, seat)
        self.assertAlmostEqual(hub.stretches[0].outer_mm, 40.0, places=9)
        shaft = spotblue.wall_of_shaft(self.look.model, seat)
        self.assertEqual(shaft.stretches[0].inner_mm, 0.0)

    def test_stages_one_by_one_find_what_the_look_found(self) -> None:
        model = self.look.model
        seats = spotblue.find_seats(model)
        self.assertEqual(seats, self.look.seats)
        fouls = spotblue.find_fouls(model, seats).found
        self.assertEqual(fouls, self.look.fouls.found)
        stops = spotblue.find_axial_stops(model, seats, [0, 1])
        self.assertAlmostEqual(stops[0][0].gap_mm, 0.25, places=9)
        (way,) = spotblue.ways_in(model, seats)
        self.assertEqual([step.how for step in way.steps], ["slide"])

    def test_faces_square_to_the_line_tell_where_they_cross_it(self) -> None:
        model, (seat,) = self.look.model, self.look.seats.radial
        faces = spotblue.faces_square_to(model, seat.hole.occurrence, seat.axis)
        stations = [spotblue.station_of_face(model, face, seat.axis) for face in faces]
        self.assertEqual({face.kind for face in faces}, {spotblue.FeatureKind.PLANE})
        self.assertAlmostEqual(max(stations) - min(stations), 20.0, places=9)

    def test_a_face_that_never_crosses_the_line_is_refused(self) -> None:
        model, (seat,) = self.look.model, self.look.seats.radial
        face = spotblue.faces_square_to(model, seat.hole.occurrence, seat.axis)[0]
        across = spotblue.Line(at=seat.axis.at, along=seat.axis.along.any_square())
        with self.assertRaises(spotblue.BadInputError):
            spotblue.station_of_face(model, face, across)
        with self.assertRaises(spotblue.BadInputError):
            spotblue.station_of_face(model, seat.hole, seat.axis)
        with self.assertRaises(spotblue.BadInputError):
            spotblue.faces_square_to(model, 99, seat.axis)

    def test_surfaces_are_seen_piece_by_piece(self) -> None:
        (bush,) = [one for one in self.look.model.products if one.name == "Bush"]
        (hole,) = [one for one in bush.cylinders if one.side == spotblue.Side.INTERNAL]
        (patch,) = hole.patches
        self.assertAlmostEqual(patch.end_mm - patch.start_mm, 20.0, places=9)
        self.assertAlmostEqual(sum(arc.sweep_deg for arc in patch.arcs), 360.0, places=9)
        self.assertAlmostEqual(hole.zero.dot(hole.axis.along), 0.0, places=12)
        self.assertEqual(bush.others, ())

    def test_a_group_for_every_occurrence_is_asked_for(self) -> None:
        with self.assertRaises(spotblue.BadInputError):
            spotblue.find_axial_stops(self.look.model, self.look.seats, [0])

    def test_places_are_told_before_anything_is_written(self) -> None:
        mockup = bush_on_pin(30.05, 30.0)
        spotblue.check_parts(mockup)
        placed = spotblue.place_parts(mockup)
        self.assertEqual([one.name for one in placed], ["Pin", "Bush"])
        self.assertAlmostEqual(placed[1].frame.rows[2][3], 5.25)
        self.assertIn("outside 2 start", [one.name for one in spotblue.faces_of(mockup.parts[1])])

    def test_a_part_of_no_size_is_refused_by_name(self) -> None:
        with self.assertRaisesRegex(spotblue.BadInputError, "Pin"):
            spotblue.model(bush_on_pin(30.05, 0.0), demo.folder() / "none.step")
        self.assertFalse((demo.folder() / "none.step").exists())

    def test_a_model_never_goes_over_what_its_mock_up_was_read_from(self) -> None:
        with tempfile.TemporaryDirectory() as folder:
            plan, ring = Path(folder) / "plan.toml", Path(folder) / "ring.toml"
            plan.write_text('title = "Plan"\ninclude = "ring.toml"\n')
            ring.write_text(
                '[[part]]\nname = "Ring"\nkind = "ring"\noutside = 2\ninside = 1\nthickness = 1\n'
            )
            hard = Path(folder) / "hard.step"
            hard.hardlink_to(ring)
            mockup = spotblue.read_mockup(plan)
            self.assertEqual(mockup.read_from, (plan, ring))
            for out in (plan, ring, hard):
                for given in (plan, mockup):
                    with self.assertRaisesRegex(spotblue.BadInputError, "would be overwritten"):
                        spotblue.model(given, out)
            ring.rename(Path(folder).parent / "spotblue-ring-elsewhere.toml")
            self.addCleanup((Path(folder).parent / "spotblue-ring-elsewhere.toml").unlink)
            plan.write_text('title = "Plan"\ninclude = "../spotblue-ring-elsewhere.toml"\n')
            with self.assertRaisesRegex(spotblue.BadInputError, "allow_outside=True"):
                spotblue.read_mockup(plan)
            self.assertEqual(len(spotblue.read_mockup(plan, allow_outside=True).parts), 1)
            made = Path(folder) / "made.step"
            spotblue.model(plan, made, allow_outside=True)
            self.assertEqual(spotblue.read(made).file.files, (str(made),))

    def test_a_mock_up_file_comes_back_from_json_and_pickle(self) -> None:
        for file in sorted(Path(demo.folder()).glob("*.mockup.toml")):
            mockup = spotblue.read_mockup(file)
            self.assertEqual(pickle.loads(pickle.dumps(mockup)), mockup)
            self.assertEqual(copy.deepcopy(mockup), mockup)
            again = spotblue.from_json(spotblue.to_json(mockup))
            self.assertEqual(again.parts[0].name, mockup.parts[0].name)
            self.assertEqual(
                [part.name for part in again.parts], [part.name for part in mockup.parts]
            )


if __name__ == "__main__":
    unittest.main()
