"""The verbs `library` and `which`, as the program runs them; what is missing is one line and exit 2."""

# First of all: what follows takes long to import, and Ctrl-C must be no traceback in the midst of it.
# The program that starts this may hold the signal back until here.
import signal

if __name__ == "__main__":
    if signal.getsignal(signal.SIGINT) is signal.default_int_handler:
        signal.signal(signal.SIGINT, signal.SIG_DFL)
    signal.pthread_sigmask(signal.SIG_UNBLOCK, [signal.SIGINT])

import os
import struct
import sys
from pathlib import Path


def _refuse_torn_modules() -> None:
    """A module whose end is missing kills the interpreter that loads it; its last table tells."""
    for file in Path(__file__).parents[1].glob("*.so"):
        with file.open("rb") as opened:
            head = opened.read(64)
        torn = len(head) < 64
        if not torn and head[:6] == b"\x7fELF\x02\x01":  # 64 bits, little-endian
            (table,) = struct.unpack_from("<Q", head, 40)
            each, count = struct.unpack_from("<HH", head, 58)
            torn = file.stat().st_size < table + each * count
        if torn:
            raise ImportError(f"{file.name} is torn", name="spotblue")


def _main() -> int:
    try:
        if sys.version_info < (3, 11):
            raise ImportError("Python 3.11 or later is needed, this is " + sys.version.split()[0])
        _refuse_torn_modules()
        from spotblue.shelf.command import main
    except ImportError as error:
        version = f"{sys.version_info.major}.{sys.version_info.minor}"
        missing = error.name or ""
        if missing.startswith("spotblue") or "spotblue._" in str(error):
            cure = f"build spotblue's Python package for Python {version}, or install it again"
        else:
            cure = f"install it for {sys.executable}"
        said = " ".join(str(error).split())
        try:
            os.write(2, f"spotblue: the Python package cannot start: {said}; {cure}\n".encode())
        except OSError:
            pass  # nothing is left to say it with
        return 2
    return main(sys.argv[1:])


if __name__ == "__main__":
    sys.exit(_main())
