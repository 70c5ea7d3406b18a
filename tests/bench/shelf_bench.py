"""How the library runner's time goes: two workers against one, and a second run against the first.

Prints each figure beside what it must be; ends with 1 when one is not.
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
PARTS = int(os.environ.get("SPOTBLUE_SHELF_PARTS", "500"))
LEAST_GAIN, MOST_PART = 1.7, 0.05


def seconds_of_run(manifest: Path, database: Path, workers: int) -> float:
    """Wall time of the whole command, as a person waits for it."""
    start = time.monotonic()
    words = [PROGRAM, "library", manifest, "--database", database, "--workers", str(workers)]
    subprocess.run([*map(str, words)], check=True, stdout=subprocess.DEVNULL)
    return time.monotonic() - start


def main() -> int:
    with tempfile.TemporaryDirectory() as folder:
        place = Path(folder)
        made = shelf_making.make_shelf(PROGRAM, place / "shelf", PARTS, faults=False)
        one = seconds_of_run(made.manifest, place / "one.db", 1)
        two = seconds_of_run(made.manifest, place / "two.db", 2)
        again = seconds_of_run(made.manifest, place / "two.db", 2)
    gain, part = one / two, again / two
    cores = len(os.sched_getaffinity(0))
    print(
        f"{PARTS} parts, {cores} cores: one worker {one:.2f} s, two {two:.2f} s, again {again:.2f} s"
    )
    print(f"two workers against one: {gain:.2f}, at least {LEAST_GAIN} on two cores")
    print(f"the unchanged second run: {100 * part:.1f} % of the first, under {100 * MOST_PART:g} %")
    return 0 if (gain >= LEAST_GAIN or cores < 2) and part < MOST_PART else 1


if __name__ == "__main__":
    sys.exit(main())
