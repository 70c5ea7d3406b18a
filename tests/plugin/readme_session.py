"""Runs the session of the plug-in's README as printed and compares its output."""

from __future__ import annotations

import subprocess
import sys
from pathlib import Path

SOURCE = "source ~/spotblue/share/spotblue/plugin.tcl"


def blocks(readme: str) -> list[str]:
    """The indented blocks, without their indent."""
    found: list[list[str]] = [[]]
    for line in readme.splitlines():
        if line.startswith("    "):
            found[-1].append(line[4:])
        elif found[-1]:
            found.append([])
    return ["\n".join(block) + "\n" for block in found if block]


def main() -> int:
    readme, harness = Path(sys.argv[1]), sys.argv[2]
    found = blocks(readme.read_text(encoding="utf-8"))
    sessions = [i for i, block in enumerate(found) if block.startswith(SOURCE) and "\n" in block[:-1]]
    if len(sessions) != 1 or sessions[0] + 1 >= len(found):
        print(f"{readme}: no session and its output")
        return 1
    script, wanted = found[sessions[0]], found[sessions[0] + 1]
    Path("session.tcl").write_text(script, encoding="utf-8")
    ran = subprocess.run([harness, "-b", "-f", "session.tcl"], check=True, capture_output=True,
                         text=True, timeout=100)
    # The harness says on its first line that it has no windows.
    printed = "".join(line for line in ran.stdout.splitlines(keepends=True)
                      if "running in batch mode" not in line)
    if printed != wanted:
        print(f"the session printed:\n{printed}\nthe README says:\n{wanted}\n{ran.stderr}")
        return 1
    return 0


if __name__ == "__main__":
    sys.exit(main())
