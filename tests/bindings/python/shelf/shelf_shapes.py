"""The invented shapes of a test shelf, as mock-ups with sizes that occur nowhere else in a file."""

from __future__ import annotations

SHAPES = {
    "bush": """
[[part]]
name = "Bush"
kind = "turned"
outside = [{ name = "seat", diameter = 40.0246, length = 30.0864 }, { name = "head", diameter = 50.0468, length = 12.1352 }]
inside = [{ diameter = 30.1112, through = true }]
""",
    "stud": """
[[part]]
name = "Stud"
kind = "turned"
outside = [{ diameter = 40.0246, length = 30.0864 }, { diameter = 30.1112, length = 12.1352 }]
""",
    "washer": """
[[part]]
name = "Washer"
kind = "turned"
outside = [{ diameter = 50.0468, length = 12.1352 }]
inside = [{ diameter = 30.1112, through = true }]
""",
    "pressed": """
[[part]]
name = "Hub"
kind = "turned"
outside = [{ diameter = 50.0468, length = 30.0864 }]
inside = [{ diameter = 40.0246, through = true }]
[[part]]
name = "Sleeve"
kind = "turned"
outside = [{ diameter = 40.1358, length = 30.0864 }]
inside = [{ diameter = 30.1112, through = true }]
[[place]]
name = "hub"
part = "Hub"
at = 0
[[place]]
name = "sleeve"
part = "Sleeve"
at = 0
""",
}
# Magic sizes by what they are; a file holds the halves of diameters and the sums of lengths.
DIAMETERS = {"seat": 40.0246, "head": 50.0468, "inner": 30.1112, "sleeve": 40.1358}
LENGTHS = {"long": 30.0864, "short": 12.1352}


def off_axis(inner: float, off: float) -> str:
    """A flange with its bore beside the centre line."""
    return f"""
[[part]]
name = "Flange"
kind = "turned"
outside = [{{ diameter = {inner + 30}, length = 12 }}]
bores = [{{ at = [{off}, 0], diameter = {inner}, through = true }}]
"""


def fouling(seat: float) -> str:
    """Two washers a millimetre and a half into each other."""
    part = f"""
[[part]]
name = "Washer"
kind = "turned"
outside = [{{ diameter = {seat + 20}, length = 10 }}]
inside = [{{ diameter = {seat}, through = true }}]
"""
    places = "".join(
        f'[[place]]\nname = "{name}"\npart = "Washer"\nat = {at}\n'
        for name, at in (("first", 0), ("second", 8.5))
    )
    return part + places
