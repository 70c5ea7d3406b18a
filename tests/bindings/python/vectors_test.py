"""Points, lines, frames, boxes and regions reckon as school geometry does."""

from __future__ import annotations

import math
import unittest

import spotblue
from spotblue import Box, Frame, Line, Point, Point2

X, Y, Z = Point(x=1), Point(y=1), Point(z=1)
# A quarter turn about z, then 10 mm along x.
TURNED = Frame(rows=[[0, -1, 0, 10], [1, 0, 0, 0], [0, 0, 1, 0]])


class VectorTest(unittest.TestCase):
    def test_points_add_subtract_and_scale(self) -> None:
        self.assertEqual(X + 2 * Y - Z * 3.0, Point(x=1, y=2, z=-3))
        self.assertEqual(-X, Point(x=-1))
        with self.assertRaises(TypeError):
            X + 1  # type: ignore[operator]

    def test_products_and_lengths_of_vectors(self) -> None:
        self.assertEqual(X.cross(Y), Z)
        self.assertEqual((3 * X + 4 * Y).norm(), 5.0)
        self.assertEqual((3 * X + 4 * Y).dot(Y), 4.0)
        self.assertAlmostEqual((X + Y).unit().x, math.sqrt(0.5), places=15)
        self.assertAlmostEqual((X + Z).any_square().dot(X + Z), 0.0, places=15)
        self.assertAlmostEqual(X.angle_deg(-X - Y), 45.0, places=12)

    def test_zero_has_no_direction(self) -> None:
        with self.assertRaises(spotblue.BadInputError):
            Point().unit()

    def test_a_line_measures_along_and_across(self) -> None:
        line = Line(at=X, along=Z)
        self.assertEqual(line.station_mm(Point(x=4, y=4, z=7)), 7.0)
        self.assertEqual(line.distance_mm(Point(x=4, y=4, z=7)), 5.0)
        self.assertEqual(line.at_station(7.0), Point(x=1, z=7))

    def test_a_frame_places_and_its_inverse_puts_back(self) -> None:
        self.assertEqual(TURNED.place_point(X), Point(x=10, y=1))
        self.assertEqual(TURNED.place_direction(X), Y)
        self.assertEqual(TURNED.place_line(Line(at=X, along=X)), Line(at=Point(x=10, y=1), along=Y))
        self.assertEqual(TURNED.compose(TURNED.inverse()), Frame())
        self.assertFalse(TURNED.is_mirror())
        self.assertTrue(Frame(rows=[[-1, 0, 0, 0], [0, 1, 0, 0], [0, 0, 1, 0]]).is_mirror())

    def test_a_box_grows_about_what_it_holds(self) -> None:
        self.assertTrue(Box().is_empty())
        box = Box().extended(Point()).extended(Point(x=3, y=4))
        self.assertEqual(box, Box(low=Point(), high=Point(x=3, y=4)))
        self.assertEqual(box.diagonal_mm(), 5.0)
        self.assertEqual(box.grown(1.0).low, Point(x=-1, y=-1, z=-1))
        self.assertTrue(box.overlaps(Box(low=X, high=Point(x=9, y=9, z=9))))
        self.assertFalse(box.overlaps(Box(low=Z, high=2 * Z)))
        self.assertEqual(box.extended(Box(low=Z, high=Z)).high, Point(x=3, y=4, z=1))
        self.assertEqual(TURNED.place_box(box).high, Point(x=10, y=3))


class RegionTest(unittest.TestCase):
    def test_a_disc_less_a_disc_is_a_ring(self) -> None:
        centre = Point2()
        ring = spotblue.subtract(spotblue.disc(centre, 10.0), spotblue.disc(centre, 6.0))
        self.assertAlmostEqual(spotblue.area_mm2(ring), math.pi * 64.0, places=9)
        self.assertFalse(spotblue.contains(ring, centre))
        reach = spotblue.reach(ring, centre)
        self.assertAlmostEqual(reach.least_mm, 6.0, places=9)
        self.assertAlmostEqual(reach.greatest_mm, 10.0, places=9)
        self.assertAlmostEqual(spotblue.extent(ring).high.u, 10.0, places=9)
        for point in spotblue.inner_points(ring, 8):
            self.assertTrue(spotblue.contains(ring, point))

    def test_what_two_discs_apart_share_is_empty(self) -> None:
        shared = spotblue.intersect(
            spotblue.disc(Point2(), 1.0), spotblue.disc(Point2(u=5), 1.0)
        )
        self.assertTrue(shared.is_empty())

    def test_a_region_seen_from_another_origin_has_moved(self) -> None:
        moved = spotblue.mapped(
            spotblue.disc(Point2(), 1.0), spotblue.PlaneMap(origin=Point2(u=5.0))
        )
        self.assertAlmostEqual(abs(spotblue.extent(moved).low.u), 4.0, places=9)


if __name__ == "__main__":
    unittest.main()
