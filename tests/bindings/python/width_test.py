"""On a terminal no line of a report is wider than it, and nothing that tells rows apart is cut."""

from __future__ import annotations

import fcntl
import json
import os
import pty
import re
import struct
import subprocess
import termios
import unicodedata
import unittest
from collections.abc import Callable
from pathlib import Path

import demo
import spotblue

PLANS = ("hand-pump-crank", "ink-disc-plan-a", "ink-disc-plan-b")
COLOUR = re.compile(r"\x1b\[[0-9;]*m")


def on_terminal(columns: int, *words: str | Path, **environment: str) -> str:
    """What a program writes to a terminal so wide."""
    ours, theirs = pty.openpty()
    fcntl.ioctl(theirs, termios.TIOCSWINSZ, struct.pack("HHHH", 24, columns, 0, 0))
    process = subprocess.Popen(
        [demo.PROGRAM, *map(str, words)], stdin=subprocess.DEVNULL, stdout=theirs,
        stderr=subprocess.PIPE, env=os.environ | {"TERM": "xterm"} | environment,
    )  # fmt: skip
    os.close(theirs)
    text = b""
    try:
        while chunk := os.read(ours, 1 << 16):
            text += chunk
    except OSError:
        pass  # the terminal's other end is closed
    os.close(ours)
    process.communicate()
    assert process.returncode in (0, 1, 3), process.returncode
    return text.decode("utf-8").replace("\r\n", "\n")


def width(line: str) -> int:
    """By Unicode's own tables (UAX 11), not by the program's."""
    return sum(
        0 if unicodedata.combining(letter) else 2 if unicodedata.east_asian_width(letter) in "WF" else 1
        for letter in COLOUR.sub("", line)
    )


def squeezed(text: str) -> str:
    return re.sub(r"\s+", "", COLOUR.sub("", text))


class Width(unittest.TestCase):
    def fits(self, columns: int, *words: str | Path) -> str:
        text = on_terminal(columns, *words)
        self.assertEqual([line for line in text.splitlines() if width(line) > columns], [])
        self.assertGreater(len(text.splitlines()), 3)
        return text

    def has_all(self, text: str, names: list[str]) -> None:
        self.assertGreater(len(names), 1)
        squeezed_text = squeezed(text)
        self.assertEqual([name for name in names if squeezed(name) not in squeezed_text], [])

    def test_look_keeps_every_name_and_number(self) -> None:
        for plan in PLANS:
            for columns in (60, 100):
                with self.subTest(plan=plan, columns=columns):
                    narrow = self.fits(columns, "look", demo.step(plan))
                    whole = demo.said("look", demo.step(plan))
                    cells = [c for line in whole.splitlines() for c in re.split(r"\s{2,}", line)]
                    self.has_all(narrow, cells)

    def test_check_keeps_every_finding(self) -> None:
        for plan in PLANS:
            with self.subTest(plan=plan):
                narrow = self.fits(60, "check", demo.job(plan))
                whole = demo.said("check", demo.job(plan))
                self.has_all(narrow, [c for x in whole.splitlines() for c in re.split(r"\s{2,}", x)])

    def test_compare_keeps_every_finding(self) -> None:
        plans = [demo.job(f"ink-disc-plan-{letter}") for letter in "abc"]
        narrow = self.fits(60, "compare", *plans)
        whole = demo.said("compare", *plans)
        self.has_all(narrow, [c for x in whole.splitlines() for c in re.split(r"\s{2,}", x)])

    def test_the_shelf_keeps_every_row(self) -> None:
        manifest = demo.folder() / "all.csv"
        rows = [f"{demo.step(plan).relative_to(demo.folder())}" for plan in PLANS]
        manifest.write_text("\n".join(["file", *rows, ""]))
        narrow = self.fits(60, "library", manifest)
        found = json.loads(demo.said("library", manifest, "--json", "-"))["rows"]
        self.has_all(narrow, [r["feature"] for r in found if r["outcome"] != "conforming"])
        database = manifest.with_suffix(".shelf.db")
        self.fits(60, "which", database, "--hole", "38.012", "--hole-fit", "H7/s6", "--cut", "0.5")

    def test_wide_letters_and_combining_marks_count_by_their_columns(self) -> None:
        names = ["歯車" * 8, "Bu\u0308chse " * 9 + "x"]
        ring = spotblue.RingPart(outside_mm=40, inside_mm=20, thickness_mm=8)
        mockup = spotblue.Mockup(
            title="wide", parts=[spotblue.MockupPart(name=name, shape=ring) for name in names],
            placements=[spotblue.Placement(name=n, part=n, at_mm=20 * i) for i, n in enumerate(names)],
        )  # fmt: skip
        spotblue.model(mockup, demo.folder() / "out" / "wide.step")
        self.has_all(self.fits(60, "look", demo.folder() / "out" / "wide.step"), names)

    def test_files_and_pipes_get_the_same_whatever_the_terminal(self) -> None:
        out = demo.folder() / "out" / "look.txt"
        step = demo.step(PLANS[0])
        on_terminal(60, "look", step, "--output", out, COLUMNS="40")
        self.assertEqual(out.read_text(encoding="utf-8"), demo.said("look", step))
        self.assertEqual(spotblue.look(step).to_text(), demo.said("look", step))
        narrow = spotblue.look(step).to_text(width=60)
        self.assertEqual(narrow, on_terminal(60, "look", step, NO_COLOR="1"))

    def test_columns_counts_where_the_terminal_does_not_tell(self) -> None:
        text = on_terminal(0, "look", demo.step(PLANS[0]), COLUMNS="60")
        self.assertLessEqual(max(map(width, text.splitlines())), 60)

    def test_colour_is_left_out_where_it_is_not_wanted(self) -> None:
        looked: list[Callable[[], str]] = [
            lambda: on_terminal(80, "look", demo.step(PLANS[0]), NO_COLOR="1"),
            lambda: on_terminal(80, "look", demo.step(PLANS[0]), TERM="dumb"),
        ]
        for text in looked:
            self.assertNotIn("\x1b", text())
        self.assertIn("\x1b", on_terminal(80, "look", demo.step(PLANS[0])))


if __name__ == "__main__":
    unittest.main()
