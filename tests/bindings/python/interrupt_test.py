"""Ctrl-C ends a long read at once and leaves no process behind."""

from __future__ import annotations

import os
import signal
import subprocess
import sys
import tempfile
import time
import unittest
from pathlib import Path

SLOW = """
import sys, spotblue
read = spotblue.read  # loads the kernel: Ctrl-C in the midst of that is another matter
print("begun", flush=True)
try:
    read(sys.argv[1])
    print("read")
except KeyboardInterrupt:
    print("interrupted", flush=True)
    sys.stdin.readline()
"""


def slow_model(folder: Path) -> Path:
    """A STEP file that takes the kernel far longer to read than the test waits."""
    import spotblue

    ring = spotblue.MockupPart(
        name="Ring", shape=spotblue.RingPart(outside_mm=4, inside_mm=2, thickness_mm=1)
    )
    circle = spotblue.PlacingCircle(diameter_mm=90_000, count=10_000)
    places = [
        spotblue.Placement(name=f"Ring {i}", part="Ring", at_mm=5.0 * i, circle=circle)
        for i in range(4)
    ]
    out = folder / "slow.step"
    spotblue.model(spotblue.Mockup(title="slow", parts=[ring], placements=places), out)
    return out


def children_of(process: int) -> list[str]:
    """Names of the process's children, by whichever of its threads."""
    found = []
    for status in Path("/proc").glob("[0-9]*/status"):
        try:
            lines = dict(line.split(":\t", 1) for line in status.read_text().splitlines())
        except OSError:  # it ended in the meantime
            continue
        if int(lines["PPid"]) == process:
            found.append(lines["Name"])
    return found


class InterruptTest(unittest.TestCase):
    def test_ctrl_c_ends_a_read_within_a_second_and_kills_its_child(self) -> None:
        with tempfile.TemporaryDirectory() as folder:
            model = slow_model(Path(folder))
            with subprocess.Popen(
                [sys.executable, "-c", SLOW, str(model)],
                stdin=subprocess.PIPE,
                stdout=subprocess.PIPE,
                text=True,
                env=os.environ,
            ) as process:
                assert process.stdout and process.stdin
                self.assertEqual(process.stdout.readline(), "begun\n")
                for _ in range(600):  # however loaded the machine: until it reads
                    if children_of(process.pid):
                        break
                    time.sleep(0.1)
                start = time.monotonic()
                process.send_signal(signal.SIGINT)
                self.assertEqual(process.stdout.readline(), "interrupted\n")
                self.assertLess(time.monotonic() - start, 1.5)
                self.assertEqual(children_of(process.pid), [])
                process.stdin.write("\n")


if __name__ == "__main__":
    unittest.main()
