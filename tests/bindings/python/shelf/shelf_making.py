"""Makes shelves of invented parts with planted faults: quickly, by changing sizes in STEP text.

`spotblue model` makes each shape once with sizes that occur nowhere else in its file; every further
part is that text with the numbers exchanged, so that the solid stays whole.
"""

from __future__ import annotations

import csv
import random
import re
import shutil
import subprocess
from dataclasses import dataclass, field
from pathlib import Path

from shelf_damage import BAD, opened
from shelf_shapes import DIAMETERS, LENGTHS, SHAPES, fouling, off_axis

NUMBER = re.compile(r"(?<![#\w.])-?\d+\.\d*(?:E[+-]?\d+)?")
SEED = 20261125


@dataclass
class Shelf:
    """What was made: the manifest, and which files must be flagged with which kinds of row."""

    folder: Path
    manifest: Path
    faults: dict[str, str] = field(default_factory=dict)
    bad: set[str] = field(default_factory=set)
    duplicates: set[str] = field(default_factory=set)
    files: int = 0


class Maker:
    """Holds the shapes' texts; gives parts of any size."""

    def __init__(self, program: Path, folder: Path) -> None:
        self.program = program
        self.folder = folder
        folder.mkdir(parents=True, exist_ok=True)
        self.texts = {name: self.model(text) for name, text in SHAPES.items()}

    def model(self, text: str) -> str:
        """STEP text of a mock-up."""
        mockup, out = self.folder / "shape.toml", self.folder / "shape.step"
        mockup.write_text('title = "Invented part"\nunit = "mm"\n' + text)
        subprocess.run([self.program, "model", mockup, out], check=True, stderr=subprocess.DEVNULL)
        made = out.read_text()
        mockup.unlink()
        out.unlink()
        return made

    def part(self, shape: str, sizes: dict[str, float], scale: float = 1.0) -> str:
        """The shape with other sizes, mm; with `scale`, all of it times that."""
        exchange = {0.5 * DIAMETERS[name]: 0.5 * sizes[name] for name in DIAMETERS if name in sizes}
        exchange |= {LENGTHS[name]: sizes[name] for name in LENGTHS if name in sizes}
        if "long" in sizes and "short" in sizes:
            exchange[sum(LENGTHS.values())] = sizes["long"] + sizes["short"]

        def changed(match: re.Match[str]) -> str:
            value = float(match[0])
            for magic, wanted in exchange.items():
                if abs(abs(value) - magic) < 1e-7:
                    return f"{wanted * scale if value > 0.0 else -wanted * scale!r}"
            return match[0]

        return NUMBER.sub(changed, self.texts[shape])


FIELDS = (
    "file", "feature", "fit", "size", "class", "lower", "upper", "tolerance", "material", "solids",
    "coaxial_with", "within", "notes",
)  # fmt: skip


def _row(file: str, **cells: object) -> dict[str, object]:
    return {"file": file, **{("class" if key == "cls" else key): v for key, v in cells.items()}}


def sizes_of(shape: str, chance: random.Random) -> dict[str, float]:
    """Sizes that hold what claims_of claims."""
    inner = float(chance.randrange(10, 60))
    seat = inner + chance.randrange(8, 20)
    sizes = {"inner": inner, "seat": seat, "head": seat + chance.randrange(6, 20)}
    sizes["long"] = float(chance.randrange(20, 60))
    sizes["short"] = float(chance.randrange(5, 15))
    if shape == "stud":
        sizes["inner"] = seat - 6.0
    return sizes


def actual(shape: str, sizes: dict[str, float], chance: random.Random) -> dict[str, float]:
    """The sizes as made, within what claims_of claims."""
    made = dict(sizes)
    made["inner"] += (
        chance.uniform(0.003, 0.010) if shape != "stud" else -chance.uniform(0.03, 0.04)
    )
    made["seat"] += chance.uniform(0.003, 0.010)
    made["sleeve"] = made["seat"] + chance.uniform(0.036, 0.042)
    made["long"] += chance.uniform(-0.1, 0.1)
    return made


def claims_of(shape: str, file: str, sizes: dict[str, float]) -> list[dict[str, object]]:
    """What the manifest says of a part of these basic sizes."""
    inner, seat = sizes["inner"], sizes["seat"]
    if shape == "pressed":
        pair = f"Hub: bore {seat:g} with Sleeve: outside {seat:g}"
        return [_row(file, fit=pair, lower="-0.045", upper="-0.035", solids=2, notes="pressed")]
    rows = []
    if shape == "bush":
        rows.append(_row(file, feature="outside", size=f"{seat:g}", tolerance="+0.02/0"))
    if shape == "stud":
        rows.append(_row(file, feature=f"outside {seat:g}", cls="k8"))
        rows.append(_row(file, feature=f"outside {inner:g}", tolerance="-0.02/-0.06"))
    else:
        rows.append(_row(file, feature=f"bore {inner:g}", cls="H7", material="grey iron"))
    if shape == "bush":
        rows.append(
            _row(file, feature="bore", size=inner, coaxial_with=f"outside {seat:g}", within=0.02)
        )
    if shape in ("bush", "stud"):
        rows.append(
            _row(
                file, feature="length", size=f"{sizes['long'] + sizes['short']:g}", tolerance="0.2"
            )
        )
    return rows


# How many of each fault; 37 in all, of ten kinds.
PLANTED = {
    "bore": 6, "outside": 5, "length": 5, "unit": 4, "missing": 4, "open": 3, "foul": 2, "fit": 3,
    "coaxial": 3, "solids": 2,
}  # fmt: skip
# The kind of row that names each fault.
NAMED = {
    "bore": "size", "outside": "size", "length": "length", "unit": "unit",
    "missing": "missing feature", "open": "open shell", "foul": "foul", "fit": "fit",
    "coaxial": "coaxial", "solids": "solids",
}  # fmt: skip


class ShelfMaker:
    """Fills one folder; each method makes one file and its rows."""

    def __init__(self, program: Path, folder: Path) -> None:
        self.maker = Maker(program, folder)
        self.chance = random.Random(SEED)
        self.shelf = Shelf(folder, folder / "manifest.csv")
        self.rows: list[dict[str, object]] = []

    def write(self, file: str, text: str) -> None:
        self.shelf.folder.joinpath(file).write_text(text)
        self.shelf.files += 1

    def good(self, file: str, shape: str) -> None:
        """A part that is what it claims to be."""
        sizes = sizes_of(shape, self.chance)
        self.write(file, self.maker.part(shape, actual(shape, sizes, self.chance)))
        self.rows += claims_of(shape, file, sizes)

    def faulty(self, file: str, fault: str) -> None:
        """A part with one planted fault."""
        shape = {"length": "stud", "outside": "bush", "fit": "pressed"}.get(fault, "washer")
        sizes = sizes_of(shape, self.chance)
        made = actual(shape, sizes, self.chance)
        scale = 1.0
        text = ""
        if fault == "bore":
            made["inner"] += 0.05
        elif fault == "outside":
            made["seat"] -= 0.03
        elif fault == "length":
            made["long"] += 0.35
        elif fault == "unit":
            scale = 1.0 / 25.4
        elif fault == "fit":
            made["sleeve"] = made["seat"] - 0.02
        elif fault == "coaxial":
            text = self.maker.model(off_axis(sizes["inner"], 0.2))
        elif fault == "foul":
            text = self.maker.model(fouling(sizes["inner"]))
        text = text or self.maker.part(shape, made, scale)
        self.write(file, opened(text) if fault == "open" else text)
        self.shelf.faults[file] = NAMED[fault]
        if fault == "foul":
            self.rows.append(_row(file, solids=2))
        elif fault == "coaxial":
            feature = f"bore {sizes['inner']:g}"
            self.rows.append(_row(file, feature=feature, coaxial_with="outside", within=0.02))
        else:
            self.rows += claims_of(shape, file, sizes)
        if fault == "missing":
            self.rows.append(_row(file, feature="slot 8", cls="P9"))
        elif fault == "solids":
            self.rows.append(_row(file, solids=2))

    def finish(self) -> Shelf:
        """Writes the manifest, rows of one file together, files in no order."""
        with self.shelf.manifest.open("w", newline="") as stream:
            writer = csv.DictWriter(stream, FIELDS, lineterminator="\n")
            writer.writeheader()
            writer.writerows(self.rows)
        return self.shelf


def make_shelf(program: Path, folder: Path, parts: int, *, faults: bool = True) -> Shelf:
    """A shelf of so many files; with faults: 37 planted, 5 bad and 3 duplicates among them."""
    making = ShelfMaker(program, folder)
    if faults:
        for fault, count in PLANTED.items():
            for number in range(count):
                making.faulty(f"{fault}-{number}.step", fault)
        for name, damage in BAD.items():
            file = f"bad-{name}.step"
            making.good(file, "bush")
            path = folder / file
            path.write_text(damage(path.read_text()))
            making.shelf.bad.add(file)
        for number in range(3):
            making.good(f"copied-{number}.step", "bush")
            copied = [row for row in making.rows if row["file"] == f"copied-{number}.step"]
            copy = f"copy-{number}.step"
            shutil.copy(folder / f"copied-{number}.step", folder / copy)
            making.shelf.files += 1
            making.rows += [row | {"file": copy} for row in copied]
            making.shelf.duplicates.add(copy)
    shapes = ("bush", "stud", "washer", "bush", "pressed")
    for number in range(parts - making.shelf.files):
        making.good(f"part-{number:04}.step", shapes[number % len(shapes)])
    return making.finish()
