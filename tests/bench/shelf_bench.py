"""How the library runner's time goes: two workers against one, and a second run against the first.

Workers are compared on parts without faults; the second run is that of the acceptance's shelf, with
its planted faults, bad files and copies. Two runs of one worker each, at once, say what this machine
gives two at this moment: other work on it takes from both alike. Prints each figure beside what it
must be; ends with 1 when one is not.
"""

from __future__ import annotations

import os
import subprocess
import sys
import tempfile
import time
from pathlib import Path

sys.path.insert(0, str(Path(__file__).parents[1] / "bindings" / "python"))
import shelf_making  # noqa: E402

PROGRAM = Path(os.environ["SPOTBLUE_PROGRAM"])
PARTS = int(os.environ.get("SPOTBLUE_SHELF_PARTS", "2000"))
GAIN_ON_IDLE_CORES, LEAST_SHARE, MOST_PART = 1.7, 0.85, 0.05


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


def main() -> int:
    with tempfile.TemporaryDirectory() as folder:
        place = Path(folder)
        made = shelf_making.make_shelf(PROGRAM, place / "shelf", PARTS, faults=False)
        one = seconds_of(made.manifest, [place / "one.db"], 1)
        two = seconds_of(made.manifest, [place / "two.db"], 2)
        apart = seconds_of(made.manifest, [place / "a.db", place / "b.db"], 1)
        full = shelf_making.make_shelf(PROGRAM, place / "full", min(PARTS, 1000))
        first = seconds_of(full.manifest, [place / "full.db"], 2, 1)
        again = min(seconds_of(full.manifest, [place / "full.db"], 2, 1) for _ in range(3))
    gain, most, part = one / two, 2 * one / apart, again / first
    cores = len(os.sched_getaffinity(0))
    print(
        f"{PARTS} parts, {cores} cores: one worker {one:.2f} s, two {two:.2f} s, "
        f"two runs at once {apart:.2f} s; with faults {first:.2f} s, again {again:.2f} s"
    )
    print(
        f"two workers against one: {gain:.2f}, on idle cores at least {GAIN_ON_IDLE_CORES}; "
        f"two runs at once: {most:.2f}, of which at least {LEAST_SHARE:g} is due"
    )
    print(f"the unchanged second run: {100 * part:.1f} % of the first, under {100 * MOST_PART:g} %")
    enough = gain >= min(GAIN_ON_IDLE_CORES, LEAST_SHARE * most)
    return 0 if (enough or cores < 2) and part < MOST_PART else 1


if __name__ == "__main__":
    sys.exit(main())
