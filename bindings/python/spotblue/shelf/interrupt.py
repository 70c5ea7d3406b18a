"""Ctrl-C while a shelf is judged: its workers end, one line is said, the program ends by the signal.

At whatever moment, and however often: nothing is raised that could come up in the wrong place. The
database needs no care; what a transaction has not written is looked at again by the next run.
"""

from __future__ import annotations

import os
import signal
from types import FrameType

from spotblue.shelf import folders, keeper, outputs, progress

_LINE = b"spotblue: interrupted; what was done is kept, and the next run goes on there\n"
_said = False


def end_by_signal(number: int) -> None:
    """Ends the process as other programs end by it."""
    signal.signal(number, signal.SIG_DFL)
    signal.raise_signal(number)


def _end(number: int, _frame: FrameType | None) -> None:
    global _said
    keeper.kill_all()
    folders.remove_all()
    outputs.remove_drafts()
    progress.wipe()
    if not _said:
        _said = True
        try:
            os.write(2, _LINE)
        except OSError:
            pass  # nobody listens
    end_by_signal(number)


def clean_up_on_interrupt() -> None:
    """From now on, and where the terminal is closed or the process told to end.

    What is ignored, as Ctrl-C in the background of a script or the closing by nohup, stays so.
    """
    for number in (signal.SIGINT, signal.SIGTERM, signal.SIGHUP):
        if signal.getsignal(number) is not signal.SIG_IGN:
            signal.signal(number, _end)
