"""Wrong uses, one a line, each of which the type checker must refuse."""

from __future__ import annotations

from spotblue import base, mechanics, standards

base.Limits(1.0, 2.0)  # fields go by keyword
base.Limits(lower=1.0)  # the name says its unit
base.judge(1.0, 0.1, base.Limits())  # the third argument goes by keyword
standards.find_material("steel").name  # there may be none
standards.fit("44", "H7/s6")  # a size is a number
mechanics.gear_circles(mechanics.ToothForm(), 20, 0.5)  # the shift goes by keyword
