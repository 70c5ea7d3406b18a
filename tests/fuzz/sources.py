"""The sound files that attacks begin with, made by spotblue from invented mock-ups."""

from __future__ import annotations

from pathlib import Path

from attack import ROOT, spotblue

MOCKUPS = ROOT / "tests/fuzz/corpus/mockup"

# A bush pressed in a plate, and a stud that runs in it.
PAIR = """title = "Pair"
unit = "{unit}"
protocol = "{protocol}"
[[line]]
name = "bore line"
at = [20, 15, 0]
[[part]]
name = "Plate"
kind = "plate"
size = [40, 30, 8]
bores = [{{ name = "bore", at = [20, 15], diameter = 16, through = true }}]
[[part]]
name = "Bush"
kind = "ring"
outside = 16.03
inside = 10
thickness = 8
[[part]]
name = "Stud"
kind = "turned"
outside = [{{ name = "journal", diameter = 9.97, length = 9 }}, {{ diameter = 14, length = 3 }}]
[[place]]
part = "Plate"
on = "bore"
at = 0
[[place]]
part = "Bush"
at = 0
[[place]]
part = "Stud"
at = 0
"""

JOB = """schema = 1
title = "Pair"
model = "pair.step"
unit = "mm"
[settings]
default_uncertainty = 0.001
[conditions]
running_c = 60
[[parts]]
part = "Plate"
material = "carbon steel 1045"
state = "as found"
[[parts]]
part = "Bush"
state = "to make"
drawn = "at the size wanted"
stock = { form = "tube", diameter = 20, inner_diameter = 8, length = 12 }
[[fits]]
hole = "Plate: bore 16"
shaft = "Bush: outside 16.03"
class = "H7/s6"
nominal = 16
[[fits]]
hole = "Bush: bore 10"
shaft = "Stud: journal"
clearance = [0.02, "1/16 in"]
[[measured]]
feature = "Plate: bore 16"
size = 16.002
uncertainty = 0.004
[[wants]]
between = ["Plate: face 40x30 @ 8", "Stud: face 14 @ 9"]
kind = "touch"
within = 1.5
[[turning]]
part = "Stud"
rpm = 90
duty = "no load, slow"
[[surfaces]]
feature = "Bush: bore 10"
rz_um = 4
[[fixed]]
parts = ["Plate", "Bush"]
by = "the press"
"""

CSV = '''file,feature,fit,size,class,lower,upper,tolerance,material,solids,coaxial_with,within,notes
pair.step,,,,,,,,,3,,,the file
pair.step,Plate: bore 16,,16,H7,,,,,,,,
pair.step,Stud: outside 9.97,,10,,9.9,10.0,,carbon steel 1045,,Bush: bore 10,0.05,"a, ""b"""
pair.step,,Bush: bore 10 with Stud: outside 9.97,10,,0.01,0.05,,,,,,
pair.step,Bush: outside 16.03,,16,s6,,,,,,,,
pair.step,Plate: bore 16,,16,,,,+0.025/0,,,,,
'''

TOML = """unit = "mm"
[[claim]]
file = "pair.step"
solids = 3
notes = "the file"
[[claim]]
file = "pair.step"
feature = "Plate: bore 16"
size = 16
class = "H7"
[[claim]]
file = "pair.step"
fit = "Bush: bore 10 with Stud: outside 9.97"
size = "10 mm"
lower = 0.01
upper = 0.05
[[claim]]
file = "pair.step"
feature = "Stud: outside 9.97"
size = 10
tolerance = "0/-0.05"
material = "carbon steel 1045"
coaxial_with = "Bush: bore 10"
within = 0.05
"""


def make(folder: Path, mockup: str, name: str) -> Path:
    """The STEP file of a mock-up's text."""
    (folder / f"{name}.toml").write_text(mockup)
    ended = spotblue(folder, "model", f"{name}.toml", f"{name}.step")
    if ended.code:
        raise SystemExit(f"{name}: {ended.err!r}")
    return folder / f"{name}.step"


def pair(folder: Path) -> Path:
    """pair.step, which JOB, CSV and TOML speak of."""
    return make(folder, PAIR.format(unit="mm", protocol="AP214"), "pair")


def step_texts(folder: Path, demo: bool) -> list[str]:
    """Sound STEP files of all protocols, small ones; with `demo` one of the demo's too."""
    made = [pair(folder)]
    for protocol, unit in (("AP203", "mm"), ("AP242", "inch")):
        made.append(make(folder, PAIR.format(unit=unit, protocol=protocol), protocol.lower()))
    for name in ("block", "key", "ring", "turned"):
        made.append(make(folder, (MOCKUPS / f"{name}.toml").read_text(), name))
    (folder / "pair.job.toml").write_text(JOB)
    ended = spotblue(folder, "check", "pair.job.toml", "--with-sizes", "sized.step")
    if not (folder / "sized.step").exists():
        raise SystemExit(f"sized.step: {ended.err!r}")
    made.append(folder / "sized.step")
    if demo:
        crank = ROOT / "models/hand-pump-crank.mockup.toml"
        made.append(make(folder, crank.read_text(), "crank"))
    return [file.read_text() for file in made]
