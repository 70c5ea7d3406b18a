"""The progress line: within its terminal, wiped at the end, plain where lines cannot be redrawn."""

from __future__ import annotations

import fcntl
import os
import pty
import select
import struct
import termios
import unittest
from unittest import mock

from spotblue.shelf.progress import Progress


def shown(columns: int, term: str, ends: tuple[int, ...] = (1, 20, 99)) -> str:
    """What a terminal so wide gets of a run, each of whose states is shown."""
    ours, theirs = pty.openpty()
    fcntl.ioctl(theirs, termios.TIOCSWINSZ, struct.pack("HHHH", 24, columns, 0, 0))
    with (
        mock.patch.dict(os.environ, TERM=term),
        mock.patch("spotblue.shelf.progress.TERMINAL_SECONDS", 0.0),
    ):
        progress = Progress(descriptor=theirs)
        for done in ends:
            progress.tell(done, 100)
        progress.end()
        text = b""
        while select.select([ours], [], [], 0.1)[0]:
            text += os.read(ours, 1 << 16)
    os.close(ours)
    os.close(theirs)
    return text.decode()


class ProgressLine(unittest.TestCase):
    def test_it_is_shorter_than_its_terminal_and_wiped(self) -> None:
        for columns in (5, 20, 40, 80, 300):
            with self.subTest(columns=columns):
                text = shown(columns, "xterm")
                pieces = text.split("\r")
                self.assertIn("1 of", text)
                self.assertLess(max(map(len, pieces)), columns)
                self.assertEqual(pieces[-2].strip() + pieces[-1], "")

    def test_it_is_wiped_by_no_more_than_was_shown(self) -> None:
        pieces = shown(300, "xterm", (1,)).split("\r")
        self.assertEqual(len(pieces[2]), len(pieces[1]))

    def test_a_dumb_terminal_gets_whole_lines_and_few(self) -> None:
        self.assertEqual(shown(80, "dumb"), "")  # all within five seconds
        text = shown(80, "dumb", (1, 100))
        self.assertRegex(text, r"\A100 of 100 files, [^\r\n]+\r\n\Z")


if __name__ == "__main__":
    unittest.main()
