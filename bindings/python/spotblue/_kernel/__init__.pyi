"""The C++ kernel of spotblue; import spotblue instead."""

from pathlib import Path

class CheckResult:
    """A job, what was found, and what was judged."""

    def to_json(self) -> str: ...

class Look:
    """What was found on a STEP file."""

    def to_json(self) -> str: ...

def check(job: str | Path) -> CheckResult: ...
def look(file: str | Path) -> Look: ...
