"""How the library runner's time goes: two workers against one, and a second run against the first.

Workers are compared on plates with 200 bores each, files as large as real parts have, so that not the
start of Python is compared. The second run is that of the acceptance's shelf, with its planted
faults, bad files and copies. Two runs of one worker each, at once, say what this machine gives two at
this moment: other work on it takes from both alike. It also comes and goes between the three, so that
one round in three is enough. Prints each figure beside what it must be; ends with 1 when one is not.
"""

from __future__ import annotations

import os
import subprocess
import sys
import tempfile
import time
from pathlib import Path

sys.path.insert(0, str(Path(__file__).parents[1] / "bindings" / "python" / "shelf"))
import shelf_making  # noqa: E402
import spotblue  # noqa: E402

PROGRAM = Path(os.environ["SPOTBLUE_PROGRAM"])
PARTS, PLATES = 1000, 40
GAIN_ON_IDLE_CORES, LEAST_SHARE, MOST_PART = 1.7, 0.85, 0.05
ROUNDS = 3


def make_plates(folder: Path) -> Path:
    """A manifest of so many plates, alike but for their names."""
    bores = [
        spotblue.Bore(diameter_mm=6 + 0.01 * i, u_mm=15 + 10 * (i % 20), v_mm=15 + 10 * (i // 20))
        for i in range(200)
    ]
    shape = spotblue.BlockPart(size=spotblue.Point(x=220, y=120, z=12), bores=bores)
    plate = spotblue.MockupPart(name="Plate", shape=shape)
    place = spotblue.Placement(name="Plate", part="Plate", at_mm=0)
    folder.mkdir()
    one = folder / "plate.step"
    spotblue.model(spotblue.Mockup(title="plate", parts=[plate], placements=[place]), one)
    text = one.read_text()
    rows = ["file,feature,size,class"]
    for number in range(PLATES):
        name = f"plate-{number}.step"
        (folder / name).write_text(text.replace("'Plate'", f"'Plate {number}'"))
        rows.append(f"{name},Plate {number}: bore 6,6,H7")
    manifest = folder / "manifest.csv"
    manifest.write_text("\n".join(rows) + "\n")
    return manifest


def begun(manifest: Path, database: Path, workers: int) -> subprocess.Popen[bytes]:
    words = [PROGRAM, "library", manifest, "--database", database, "--workers", workers]
    words += ["--seconds", 12, "--memory", 3000]
    # As a user's Python does: compiled once and kept.
    environment = {key: os.environ[key] for key in os.environ if key != "PYTHONDONTWRITEBYTECODE"}
    return subprocess.Popen([*map(str, words)], stdout=subprocess.DEVNULL, env=environment)


def seconds_of(manifest: Path, databases: list[Path], workers: int, status: int = 0) -> float:
    """Wall time of whole commands, one for each database, run at once."""
    start = time.monotonic()
    runs = [begun(manifest, database, workers) for database in databases]
    if {run.wait() for run in runs} != {status}:
        raise SystemExit(f"a run did not end with {status}")
    return time.monotonic() - start


def workers_are_worth_it(plates: Path, place: Path) -> bool:
    """One round: prints what two workers gain, and whether that is what the machine gives two."""
    place.mkdir()
    one = seconds_of(plates, [place / "one.db"], 1)
    two = seconds_of(plates, [place / "two.db"], 2)
    apart = seconds_of(plates, [place / "a.db", place / "b.db"], 1)
    gain, most = one / two, 2 * one / apart
    print(
        f"{PLATES} plates: one worker {one:.2f} s, two {two:.2f} s, two runs at once {apart:.2f} s\n"
        f"two workers against one: {gain:.2f}, on idle cores at least {GAIN_ON_IDLE_CORES}; "
        f"two runs at once: {most:.2f}, of which at least {LEAST_SHARE:g} is due"
    )
    return gain >= min(GAIN_ON_IDLE_CORES, LEAST_SHARE * most)


def second_run_is_short(place: Path) -> bool:
    """Prints what part of the first run a second one of an unchanged shelf takes."""
    full = shelf_making.make_shelf(PROGRAM, place / "full", PARTS)
    first = seconds_of(full.manifest, [place / "full.db"], 2, 1)
    again = min(seconds_of(full.manifest, [place / "full.db"], 2, 1) for _ in range(3))
    part = again / first
    print(
        f"{PARTS} parts with faults {first:.2f} s, again {again:.2f} s: "
        f"{100 * part:.1f} % of the first, under {100 * MOST_PART:g} %"
    )
    return part < MOST_PART


def main() -> int:
    cores = len(os.sched_getaffinity(0))
    print(f"{cores} cores")
    with tempfile.TemporaryDirectory() as folder:
        place = Path(folder)
        plates = make_plates(place / "plates")
        enough = cores < 2 or any(
            workers_are_worth_it(plates, place / f"round-{number}") for number in range(ROUNDS)
        )
        return 0 if second_run_is_short(place) and enough else 1


if __name__ == "__main__":
    sys.exit(main())
