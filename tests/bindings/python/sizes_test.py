"""Sizes a job has decided are written onto a copy of its model and read back."""

from __future__ import annotations

import unittest

import demo
import spotblue

PLAN = "ink-disc-plan-b"


class SizesTest(unittest.TestCase):
    def test_decided_sizes_are_stated_by_the_copy(self) -> None:
        job = spotblue.read_job(demo.job(PLAN))
        look = spotblue.look(job.model)
        self.assertEqual(look.model.semantic_sizes, ())
        decided = spotblue.decided_sizes(job, look)
        out = demo.folder() / "out" / "with-sizes.step"
        remarks = spotblue.write_semantic_sizes(job.model, out, decided.sizes)
        self.assertEqual(remarks, [])
        stated = spotblue.read(out).semantic_sizes
        self.assertEqual(len(stated), len(decided.sizes))
        self.assertEqual(
            sorted(size.tolerance_class for size in stated),
            sorted(size.tolerance_class for size in decided.sizes),
        )
        self.assertTrue(all(size.usable for size in stated), [size.doubt for size in stated])
        self.assertEqual(stated[0].features[0].kind, "cylinder")

    def test_a_size_for_no_feature_is_refused(self) -> None:
        size = spotblue.SizeToWrite(
            product="Wheel", feature="bore 1", nominal_mm=1.0, tolerance_class="H7"
        )
        with self.assertRaises(spotblue.BadInputError):
            spotblue.write_semantic_sizes(demo.step(PLAN), demo.folder() / "no.step", [size])

    def test_deviations_are_a_pair(self) -> None:
        size = spotblue.SizeToWrite(nominal_mm=10.0, deviations_mm=(-0.1, 0.2))
        self.assertEqual(size.deviations_mm, (-0.1, 0.2))
        self.assertIsNone(spotblue.SizeToWrite().deviations_mm)


if __name__ == "__main__":
    unittest.main()
