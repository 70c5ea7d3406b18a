"""Who is at work for a run, so that a test can see that nobody is left."""

from __future__ import annotations

from pathlib import Path


def processes_in(folder: Path) -> dict[int, str]:
    """Living processes whose temp folder is this one or below it: a run, its workers and theirs."""
    found = {}
    for process in Path("/proc").glob("[0-9]*"):
        try:
            environment = (process / "environ").read_bytes()
            state = (process / "stat").read_text().rpartition(")")[2].split()[0]
            words = (process / "cmdline").read_text().replace("\0", " ")
        except OSError:  # it ended in the meantime
            continue
        if f"TMPDIR={folder}".encode() in environment and state != "Z":
            found[int(process.name)] = words
    return found
