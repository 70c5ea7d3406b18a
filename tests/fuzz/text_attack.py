#!/usr/bin/python3
"""Changed jobs, mock-ups and manifests through the program.

job:    `spotblue check`. What is not TOML is refused; every fit that the job names is judged or told.
mockup: `spotblue model`. A file is written or none is; it has every part that the mock-up places, and
        rings and plain blocks have the volume that their numbers give.
csv, toml: `spotblue library`. Every row has a result; limits that a size lies outside are not met.

SPOTBLUE_FUZZ_COUNT cases in SPOTBLUE_FUZZ_SECONDS at most, by SPOTBLUE_FUZZ_SEED; SPOTBLUE_FUZZ_KEEP is a folder for what goes wrong.
"""

from __future__ import annotations

import csv
import io
import math
import re
import shutil
import sys
import tempfile
import tomllib
from collections.abc import Callable
from pathlib import Path
from random import Random
from typing import Any

from attack import ROOT, Attack, Ended, fault_of_end, main, spotblue
from sources import CSV, JOB, MOCKUPS, PAIR, TOML, pair
from toml_mutations import mutated_csv, mutated_toml


def toml_of(data: bytes) -> Any:
    """What another reader makes of it; None where it is no TOML."""
    try:
        return tomllib.loads(data.removeprefix(b"\xef\xbb\xbf").decode("utf-8"))
    except (ValueError, RecursionError):
        return None


def plain_mm(value: Any, unit: str) -> float | None:
    """A bare number as mm; nothing for texts, which the kernel's own tests are for."""
    if isinstance(value, bool) or not isinstance(value, float | int):
        return None
    return float(value) * (25.4 if unit in ("in", "inch") else 1.0)


def run(attack: Attack, make: Callable[[Random], bytes], judge: Callable[[bytes, Path], str],
        needs: Path | None) -> int:  # fmt: skip
    """Judges what the program makes of each case; `judge` says in a word how it ended."""

    def case(number: int, folder: Path) -> str:
        if needs:
            shutil.copy(needs, folder)
        data = make(attack.random(number))
        told = judge(data, folder)
        if " " in told:
            attack.find(number, told, data)
            return "wrong"
        return told

    return attack.run(case)


def results(ended: Ended, name: str) -> str:
    """How a run that writes JSON ended: refused, result, or what is wrong."""
    if fault := fault_of_end(ended, name, (0, 1, 3)):
        return fault
    if ended.code == 2:
        return "refused"
    try:
        ended.json()
    except ValueError as error:
        return f"no JSON: {error}"
    return "result"


def judge_job(data: bytes, folder: Path) -> str:
    """See above."""
    (folder / "case.toml").write_bytes(data)
    ended = spotblue(folder, "check", "case.toml", "--json", "--seconds", "20", seconds=40.0)
    end = results(ended, "case.toml")
    if end != "result":
        return end
    job = toml_of(data)
    if job is None:
        return "read, though it is no TOML"
    told = ended.json()["findings"]
    for fit in job.get("fits", []):
        names = {re.sub(r"\d.*", "", fit[key]).strip().split("/")[-1] for key in ("hole", "shaft")}
        if not any(all(name in str(one) for name in names) for one in told):
            return f"nothing is said of {fit}"
    counted = {"nonconforming": 0, "undecided": 0, "conforming": 0}
    for one in told:
        counted[one["outcome"]] += 1
    code = 1 if counted["nonconforming"] else 3 if counted["undecided"] or not told else 0
    return "result" if ended.code == code else f"ended with {ended.code}, found {counted}"


def volume_of(part: Any, unit: str) -> float | None:
    """mm3 of a ring or a block without anything on it."""
    def mm(key: str) -> float:
        value = plain_mm(part[key], unit)
        if value is None:
            raise KeyError(key)
        return value

    try:
        if part["kind"] == "ring" and part.keys() <= {"name", "kind", "outside", "inside", "thickness",
                                                      "note"}:
            return math.pi / 4 * (mm("outside") ** 2 - mm("inside") ** 2) * mm("thickness")
        if part["kind"] in ("block", "plate") and part.keys() <= {"name", "kind", "size", "note"}:
            sizes = [plain_mm(size, unit) for size in part["size"]]
            return math.prod(size for size in sizes if size is not None) if None not in sizes else None
    except KeyError:
        pass
    return None


def judge_mockup(data: bytes, folder: Path) -> str:
    """See above."""
    (folder / "case.toml").write_bytes(data)
    ended = spotblue(folder, "model", "case.toml", "out.step", seconds=60.0)
    if fault := fault_of_end(ended, "case.toml", (0,)):
        return fault
    if ended.code == 2:
        return "refused, yet out.step is there" if (folder / "out.step").exists() else "refused"
    mockup = toml_of(data)
    if mockup is None:
        return "made, though it is no TOML"
    seen = spotblue(folder, "look", "out.step", "--json", "--seconds", "20", seconds=60.0)
    if fault := results(seen, "out.step").replace("result", ""):
        return f"what was made is {fault}: {seen.err!r}"
    found = seen.json()
    places = mockup.get("place") or [{}]  # a part alone needs none
    placed = sum(int(place.get("circle", {}).get("count", 1)) for place in places)
    if len(found["occurrences"]) != placed:
        return f"{len(found['occurrences'])} parts where {placed} are placed"
    volumes = {product["name"]: product["volume_mm3"] for product in found["products"]}
    for part in mockup["part"]:
        wanted, made = volume_of(part, mockup.get("unit", "mm")), volumes.get(part["name"])
        if wanted and made and not math.isclose(wanted, made, rel_tol=1e-6):
            return f"{part['name']} has {made} mm3, not {wanted}"
    return "result"


# One row of these stands for all claims on its file.
WHOLE_FILE = ("missing file", "bad file", "not read")


def judge_rows(data: bytes, folder: Path, name: str, claims: list[tuple[int, dict[str, Any]]] | None,
               unit: str) -> str:  # fmt: skip
    """What a shelf of these claims says, each by its line."""
    (folder / name).write_bytes(data)
    ended = spotblue(folder, "library", name, "--json", "-", "--workers", "1", seconds=90.0)
    end = results(ended, name)
    if end != "result":
        return end
    if claims is None:
        return "read, though another reader can not"
    rows = ended.json()["rows"]
    for line, claim in claims:
        own = [row for row in rows if row["line"] == line]
        of_file = [row for row in rows if row["file"] == claim.get("file") and row["kind"] in WHOLE_FILE]
        if not own and not of_file:
            return f"no row for line {line}"
        size = re.search(r": (?:bore|outside) ([0-9.]+)", str(claim.get("feature", "")))
        lower, upper = (plain_mm(claim.get(key), unit) for key in ("lower", "upper"))
        if size and lower is not None and upper is not None:
            within = lower <= float(size[1]) <= upper
            said = {row["outcome"] for row in own if row["kind"] == "size"}
            if said == {"conforming"} and not within:
                return f"line {line} conforms, though {size[1]} is not in {lower} to {upper}"
    return "result"


def number_or_text(cell: str) -> Any:
    """A cell that is a plain number as one."""
    return float(cell) if re.fullmatch(r"-?[0-9]+(\.[0-9]+)?", cell) else cell


def csv_claims(data: bytes) -> list[tuple[int, dict[str, Any]]] | None:
    """Rows of a CSV manifest and the lines that they begin on."""
    try:
        text = data.decode("utf-8").removeprefix("\ufeff")
        head = text.split("\n", 1)[0]
        mark = ";" if head.count(";") > head.count(",") else ","
        reader = csv.reader(io.StringIO(text, newline=""), delimiter=mark, strict=True)
        claims, header, before = [], None, 0
        for row in reader:
            line, before = before + 1, reader.line_num
            cells = [cell.strip() for cell in row]
            if not any(cells) or cells[0].startswith("#"):
                continue
            if header is None:
                header = [cell.lower() for cell in cells]
            else:
                claims.append((line, dict(zip(header, map(number_or_text, cells)))))
        return claims
    except (UnicodeDecodeError, csv.Error):
        return None


def toml_claims(data: bytes) -> list[tuple[int, dict[str, Any]]] | None:
    """Claims of a TOML manifest written as [[claim]] tables, with the lines of these."""
    manifest = toml_of(data)
    if manifest is None:
        return None
    lines = [i for i, line in enumerate(data.decode().splitlines(), 1) if line == "[[claim]]"]
    claims = manifest.get("claim", [])
    if len(lines) != len(claims) or '"""' in data.decode() or "'''" in data.decode():
        return []  # written in another way, so that it can't be told where
    return list(zip(lines, claims))


def attack_with(name: str, count: int, make: Callable[[Random], bytes],
                judge: Callable[[bytes, Path], str], needs_pair: bool) -> int:  # fmt: skip
    """Runs one kind, with pair.step beside the case where it speaks of it."""
    with tempfile.TemporaryDirectory(prefix="spotblue-attack-") as folder:
        needs = pair(Path(folder)) if needs_pair else None
        return run(Attack(name, count), make, judge, needs)


def jobs() -> int:
    """See above."""
    return attack_with("job", 25, lambda chance: mutated_toml(JOB, chance), judge_job, True)


def mockups() -> int:
    """See above."""
    texts = [PAIR.format(unit="inch", protocol="AP203"), PAIR.format(unit="mm", protocol="AP242")]
    texts += [(MOCKUPS / f"{name}.toml").read_text() for name in ("block", "key", "ring", "turned")]
    texts += [(ROOT / "models/hand-pump-crank.mockup.toml").read_text()]
    return attack_with(
        "mockup", 20, lambda chance: mutated_toml(chance.choice(texts), chance), judge_mockup, False
    )


def csvs() -> int:
    """See above."""
    rows = list(csv.reader(io.StringIO(CSV)))

    def judge(data: bytes, folder: Path) -> str:
        return judge_rows(data, folder, "case.csv", csv_claims(data), "mm")

    return attack_with("csv", 10, lambda chance: mutated_csv(rows, chance), judge, True)


def tomls() -> int:
    """See above."""

    def judge(data: bytes, folder: Path) -> str:
        unit = str((toml_of(data) or {}).get("unit", "mm"))
        return judge_rows(data, folder, "case.toml", toml_claims(data), unit)

    return attack_with("toml", 10, lambda chance: mutated_toml(TOML, chance), judge, True)


if __name__ == "__main__":
    sys.dont_write_bytecode = True
    main({"job": jobs, "mockup": mockups, "csv": csvs, "toml": tomls})
