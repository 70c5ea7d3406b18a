"""How far a run is, its rate and the time left: on a terminal, or where it is asked for."""

from __future__ import annotations

import os
import time
from spotblue.shelf.outputs import terminal_width

TERMINAL_SECONDS = 0.2
PLAIN_SECONDS = 5.0


def time_text(seconds: float) -> str:
    """ "8 s", "3 min 20 s", "2 h 5 min"."""
    whole = int(seconds + 0.5)
    if whole < 60:
        return f"{whole} s"
    if whole < 3600:
        return f"{whole // 60} min {whole % 60} s"
    return f"{whole // 3600} h {whole % 3600 // 60} min"


class Progress:
    """Shows files done; on a terminal in one line that is wiped at the end."""

    def __init__(self, show: bool | None = None, descriptor: int = 2) -> None:
        self.descriptor = descriptor
        seen = os.isatty(descriptor)
        self.terminal = seen and os.environ.get("TERM", "dumb") != "dumb"
        self.show = seen if show is None else show
        self.start = self.said = time.monotonic()
        self.width = 0

    def line(self, done: int, total: int) -> str:
        """What is shown after so many files."""
        seconds = time.monotonic() - self.start
        rate = done / seconds if seconds > 0.0 else 0.0
        left = f", {time_text((total - done) / rate)} left" if done and rate else ""
        return f"{done} of {total} files, {rate:.1f} a second{left}"

    def tell(self, done: int, total: int) -> None:
        """Shows the state, not more often than anyone reads it."""
        pause = TERMINAL_SECONDS if self.terminal else PLAIN_SECONDS
        if not self.show or (time.monotonic() - self.said < pause and done < total):
            return
        self.said = time.monotonic()
        line = self.line(done, total)
        if not self.terminal:
            self._show(line + "\n")
            return
        # One column is left free: a terminal may break the line after its last.
        columns = max(1, terminal_width(self.descriptor) - 1)
        line = line[:columns]
        self._show("\r" + line.ljust(min(self.width, columns)))
        self.width = len(line)

    def end(self) -> None:
        """Wipes the line on a terminal."""
        if self.width:
            columns = max(1, terminal_width(self.descriptor) - 1)
            self._show("\r" + " " * min(self.width, columns) + "\r")
            self.width = 0

    def _show(self, text: str) -> None:
        global _shown
        _shown = self
        try:
            os.write(self.descriptor, text.encode())  # a stream could not be written to by wipe()
        except OSError:
            self.show = False  # what cannot be shown is not worth failing for


_shown: Progress | None = None


def wipe() -> None:
    """Wipes whatever line is shown, from wherever the process is at."""
    if _shown is not None:
        _shown.end()
