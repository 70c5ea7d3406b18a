"""Runs spotblue on changed files and judges how it ends: with a result, or with one clear line."""

from __future__ import annotations

import base64
import json
import os
import random
import re
import subprocess
import sys
import tempfile
import time
from collections import Counter
from collections.abc import Callable
from concurrent.futures import ThreadPoolExecutor
from dataclasses import dataclass
from pathlib import Path
from typing import Any

ROOT = Path(__file__).resolve().parents[2]
PROGRAM = os.environ.get("SPOTBLUE_PROGRAM", str(ROOT / "build/bin/spotblue"))
MOST_MESSAGE = 2000  # bytes
MEMORY = 4 << 30  # bytes of address space; what reads in a child bounds that by itself


@dataclass(frozen=True)
class Ended:
    """How one run ended."""

    code: int
    out: bytes
    err: bytes
    seconds: float

    def json(self) -> Any:
        """What it wrote, as JSON without infinity and NaN, which are none."""

        def refuse(name: str) -> float:
            raise ValueError(f"{name} in JSON")

        return json.loads(self.out.decode("utf-8"), parse_constant=refuse)


def spotblue(folder: Path, *words: str, seconds: float = 30.0) -> Ended:
    """Runs the program in a folder; a run that takes longer ends with 124."""
    start = time.monotonic()
    try:
        run = subprocess.run(
            ["prlimit", "--core=0", f"--as={MEMORY}:", PROGRAM, *words],
            cwd=folder,
            stdin=subprocess.DEVNULL,
            capture_output=True,
            timeout=seconds,
            check=False,
        )
    except subprocess.TimeoutExpired:
        return Ended(124, b"", b"", time.monotonic() - start)
    return Ended(run.returncode, run.stdout, run.stderr, time.monotonic() - start)


def fault_of_end(ended: Ended, name: str, results: tuple[int, ...]) -> str:
    """What is wrong with how a run on file `name` ended; empty when nothing is."""
    if ended.code == 124:
        return f"no end after {ended.seconds:.0f} s"
    if ended.code in results:
        return "a traceback" if b"Traceback" in ended.err else ""
    if ended.code != 2:
        return f"ended with {ended.code}: {ended.err[-300:]!r}"
    text = ended.err.decode("utf-8", "replace")
    if ended.out:
        return "refused, yet something was written"
    if not text.startswith("spotblue: ") or not text.endswith("\n"):
        return f"no clear line: {text[:300]!r}"
    if len(ended.err) > MOST_MESSAGE + len("spotblue: \n"):
        return f"a line of {len(ended.err)} bytes"
    if re.search(r"[\x00-\x1f\x7f-\x9f\u2028\u2029\u202a-\u202e\u2066-\u2069]", text[:-1]):
        return f"more than one line, or control letters: {text[:300]!r}"
    if name not in text:
        return f"the file is not named: {text[:300]!r}"
    return ""


class Attack:
    """Many cases of one kind, each by its own seed; counts how they ended and keeps what is wrong."""

    def __init__(self, name: str, count: int) -> None:
        self.name = name
        self.count = int(os.environ.get("SPOTBLUE_FUZZ_COUNT", count))
        self.seed = int(os.environ.get("SPOTBLUE_FUZZ_SEED", "1"))
        self.ends: Counter[str] = Counter()
        self.finds: list[str] = []

    def random(self, number: int) -> random.Random:
        """What chance there is in one case, the same on every run."""
        return random.Random(f"{self.name} {self.seed} {number}")

    def find(self, number: int, what: str, content: bytes) -> None:
        """Keeps a case that went wrong."""
        self.finds.append(f"case {number}: {what}")
        kept = os.environ.get("SPOTBLUE_FUZZ_KEEP")
        if kept:
            Path(kept).mkdir(parents=True, exist_ok=True)
            (Path(kept) / f"{self.name}-{self.seed}-{number}").write_bytes(content)
        elif len(content) < 4000:
            self.finds[-1] += f"\n  base64: {base64.b64encode(content).decode()}"

    def run(self, case: Callable[[int, Path], str]) -> int:
        """Runs `case(number, folder)`, which says in a word how it ended, and sums up."""
        jobs = int(os.environ.get("SPOTBLUE_FUZZ_JOBS", os.cpu_count() or 1))
        most = float(os.environ.get("SPOTBLUE_FUZZ_SECONDS", "inf"))
        start = time.monotonic()

        def one(number: int) -> None:
            if time.monotonic() - start > most:
                return
            with tempfile.TemporaryDirectory(prefix="spotblue-attack-") as folder:
                try:
                    self.ends[case(number, Path(folder))] += 1
                except (LookupError, TypeError, ValueError) as error:
                    self.find(number, f"can't be judged: {error!r}", b"")

        with ThreadPoolExecutor(jobs) as pool:
            for case_done in [pool.submit(one, number) for number in range(self.count)]:
                case_done.result()
        ends = ", ".join(f"{count} {end}" for end, count in sorted(self.ends.items()))
        done = sum(self.ends.values())
        print(f"{self.name}: {done} of {self.count} cases, seed {self.seed}: {ends}; "
              f"{len(self.finds)} wrong; {time.monotonic() - start:.0f} s")  # fmt: skip
        for find in self.finds[:20]:
            print(find)
        return 1 if self.finds or not done else 0


def main(attacks: dict[str, Callable[[], int]]) -> None:
    """Runs the attack that the command line names."""
    if len(sys.argv) != 2 or sys.argv[1] not in attacks:
        sys.exit(f"Use: {sys.argv[0]} {'|'.join(attacks)}")
    sys.exit(attacks[sys.argv[1]]())
