"""The lines of rows in inches: every quantity of ours, nothing that a person wrote."""

from __future__ import annotations

import unittest

from spotblue.shelf.words import in_unit


class Inches(unittest.TestCase):
    def test_every_quantity_is_exchanged(self) -> None:
        # By hand, 1 in = 25.4 mm exactly: 31.75 is 1.25, 31.6992 is 1.248, 0.0127 is 0.0005.
        cases = {
            "31.75 RC4: 31.6992 to 31.7246 mm": "1.25 in RC4: 1.248 to 1.249 in",
            "50.8 H7/g6": "2 in H7/g6",
            "too small by 0.0127 mm: sleeve it": "too small by 0.0005 in: sleeve it",
            "clearance -0.0254 to 0.0508 mm, offset 0 mm": "clearance -0.001 to 0.002 in, offset 0 in",
            "they share 16387.064 mm3 and 645.16 mm2": "they share 1 in3 and 1 in2",
            "254 mm": "10 in",
        }
        for text, wanted in cases.items():
            with self.subTest(text=text):
                self.assertEqual(in_unit(text, "inch"), wanted)
                self.assertEqual(in_unit(text, "mm"), text)

    def test_what_is_no_length_stays(self) -> None:
        for text in (
            "ANSI B4.1, 1.5 in FN2", "tilt 0.02 deg", "took longer than 120 s", "2 solids",
            "line 3: 4 mmx", "needs more than 6000 MB", "FN2", "v1.2.3 mm2x",
        ):  # fmt: skip
            with self.subTest(text=text):
                self.assertEqual(in_unit(text, "inch"), text)


if __name__ == "__main__":
    unittest.main()
