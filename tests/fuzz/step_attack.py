#!/usr/bin/python3
"""Changed STEP files through `spotblue look`.

mutations: what is not refused says the same as the file written anew by another reader of the text,
           has all solids that are declared and no cylinder but those written, unless a note says
           otherwise.
numbers:   one wrong byte in a number: refused, noted, or the facts are those of the number now there.
rewrites:  order, numbers of entities, line ends, comments, blanks, exponents: the same facts.

SPOTBLUE_FUZZ_COUNT cases in SPOTBLUE_FUZZ_SECONDS at most, by SPOTBLUE_FUZZ_SEED; SPOTBLUE_FUZZ_KEEP is a folder for what goes wrong.
"""

from __future__ import annotations

import math
import sys
import tempfile
from collections.abc import Callable
from pathlib import Path
from random import Random
from typing import Any

from attack import Attack, Ended, fault_of_end, main, spotblue
from part21 import NoPart21, Step, Token, canonical, parse, with_exponent, write
from sources import step_texts
from step_mutations import mutated, places

SOLIDS = ("MANIFOLD_SOLID_BREP", "BREP_WITH_VOIDS", "FACETED_BREP")


def look(folder: Path, name: str, data: bytes) -> Ended:
    """Looks at a file with these bytes."""
    (folder / name).write_bytes(data)
    return spotblue(folder, "look", name, "--json", "--seconds", "20", seconds=40.0)


def facts(found: Any) -> Any:
    """What a look says of the parts themselves: no times, names of files and numbers of entities."""
    kept = {k: v for k, v in found.items() if k not in ("seconds", "settings", "file")}
    kept["unit"] = found["file"].get("unit")
    kept["protocol"] = found["file"].get("protocol")
    kept["semantic_sizes"] = [
        {k: v for k, v in size.items() if k != "entity"} for size in found["semantic_sizes"]
    ]
    return kept


def difference(a: Any, b: Any, place: str = "") -> str:
    """Where two facts differ; empty where they are the same but for the last digits."""
    if isinstance(a, dict) and isinstance(b, dict):
        if a.keys() != b.keys():
            return f"{place}: {sorted(a.keys() ^ b.keys())}"
        pairs = [(a[key], b[key], f"{place}/{key}") for key in a]
    elif isinstance(a, list) and isinstance(b, list):
        if len(a) != len(b):
            return f"{place}: {len(a)} and {len(b)} of them"
        pairs = [(x, y, f"{place}/{i}") for i, (x, y) in enumerate(zip(a, b))]
    elif isinstance(a, (int, float)) and isinstance(b, (int, float)):
        near = place.endswith("volume_error_mm3") or math.isclose(a, b, rel_tol=1e-9, abs_tol=1e-7)
        return "" if near else f"{place}: {a} and {b}"
    else:
        return "" if a == b else f"{place}: {a!r} and {b!r}"
    return next((told for x, y, at in pairs if (told := difference(x, y, at))), "")


def rough(found: Any) -> str:
    """Facts as a text to sort by: near numbers are one."""
    if isinstance(found, dict):
        return "{" + ", ".join(f"{key}: {rough(found[key])}" for key in sorted(found)) + "}"
    if isinstance(found, list):
        return "[" + ", ".join(map(rough, found)) + "]"
    return f"{round(found, 4) + 0.0:.4f}" if isinstance(found, float | int) else str(found)


def ordered(found: Any) -> Any:
    """The same facts in an order that does not hang on that of the entities."""
    if isinstance(found, dict):
        found = {key: ordered(value) for key, value in found.items() if key != "centre_line"}
        if "centre line" in str(found.get("id")):
            del found["id"]  # they are counted as they are met
        if {"a", "b"} <= found.keys():
            found["a"], found["b"] = sorted((found["a"], found["b"]), key=rough)
    elif isinstance(found, list):
        found = [ordered(value) for value in found]
        if all(isinstance(value, dict | str) for value in found):
            found.sort(key=rough)
    return found


def judged(attack: Attack, number: int, data: bytes, folder: Path) -> tuple[str, Any]:
    """How a look at `data` ends, in a word, and what it says where it has a result."""
    ended = look(folder, "case.step", data)
    fault = fault_of_end(ended, "case.step", (0, 3))
    if fault:
        attack.find(number, fault, data)
        return "wrong", None
    if ended.code == 2:
        return "refused", None
    try:
        found = ended.json()
    except ValueError as error:
        attack.find(number, f"no JSON: {error}", data)
        return "wrong", None
    return ("noted" if found["notes"] or found["not_looked_at"] else "result"), found


def fault_of_bores(step: Step, found: Any) -> str:
    """A cylinder that no surface of the text has the radius of."""
    factor = {"mm": 1.0, "cm": 10.0, "metre": 1000.0, "inch": 25.4}.get(found["file"].get("unit"))
    surfaces = [e.tokens for e in step.entities if e.word == "CYLINDRICAL_SURFACE"]
    written = [float(tokens[-2].text) for tokens in surfaces if tokens[-2].kind == "number"]
    for product in found["products"] if factor else []:
        for one in product["features"]:
            if one.get("recognised_from") == "cylinder" and "sizes_mm" not in one:
                radius = one["diameter_mm"] / 2.0
                if not any(math.isclose(radius, r * factor, abs_tol=2e-5) for r in written):
                    return f"{one['id']}: no surface has a radius of {radius} mm"
    return ""


def fault_of_result(data: bytes, found: Any, folder: Path) -> str:
    """What is untrue in a result without a note, by another reader of the text."""
    try:
        text = data.decode("utf-8")
        plain = canonical(text)
    except (NoPart21, UnicodeDecodeError) as error:
        return f"read, though {error}"
    step = parse(text)
    declared = sum(entity.word in SOLIDS for entity in step.entities)
    solids = sum(product["solids"] for product in found["products"])
    if solids < declared:
        return f"{solids} solids of {declared}, and no note"
    if fault := fault_of_bores(step, found):
        return fault
    again = look(folder, "plain.step", plain.encode())
    if again.code not in (0, 3):
        return f"written anew it is refused: {again.err!r}"
    return difference(facts(found), facts(again.json()))


def with_texts(attack: Attack, case: Any, demo: bool = False) -> int:
    """Runs the attack on the sound files."""
    with tempfile.TemporaryDirectory(prefix="spotblue-attack-") as folder:
        texts = step_texts(Path(folder), demo)

    def one(number: int, folder: Path) -> str:
        chance = attack.random(number)
        told: str = case(number, folder, chance, chance.choice(texts))
        return told

    return attack.run(one)


def changed_files(attack: Attack, change: Callable[[str, Random], bytes]) -> int:
    """What is read of changed files is true, noted or refused."""

    def case(number: int, folder: Path, chance: Random, text: str) -> str:
        data = change(text, chance)
        end, found = judged(attack, number, data, folder)
        if end == "result" and (fault := fault_of_result(data, found, folder)):
            attack.find(number, fault, data)
            return "wrong"
        return end

    return with_texts(attack, case, demo=attack.count > 500)


def mutations() -> int:
    """See above."""
    return changed_files(Attack("step", 40), mutated)


def wrong_byte(text: str, chance: Random) -> bytes:
    """One byte of one number is another."""
    step = parse(text)
    numbers = places(step, "number")
    # Sizes that are stated are few: every fourth case is one of those.
    if chance.random() < 0.25:
        stated = [p for p in numbers if any("MEASURE" in t.text for t in step.entities[p[0]].tokens)]
        numbers = stated or numbers
    entity, at = chance.choice(numbers)
    token = step.entities[entity].tokens[at]
    place = token.at + chance.randrange(len(token.text))
    data = bytearray(text.encode("latin-1"))
    old = data[place]
    likely = b"0123456789.+-E,'()#$*/eD \n"
    while data[place] == old:
        data[place] = chance.choice(likely) if chance.random() < 0.8 else chance.randrange(256)
    return bytes(data)


def numbers() -> int:
    """See above."""
    return changed_files(Attack("numbers", 25), wrong_byte)


def comment(chance: Random) -> str:
    """Blanks, or a comment that looks like more than one."""
    inner = chance.choice(["", "(", ")", "'", ";", "#1=X();", "ENDSEC;", "*", " / "])
    return chance.choice([" ", "  ", "\t", "\n", f"/*{inner}*/", f" /* {inner} */ "])


def rewritten(text: str, chance: Random) -> str:
    """The same file in other words: each way of writing it is taken or not."""
    step: Step = parse(text)
    if chance.random() < 0.5:
        chance.shuffle(step.entities)
    new = {entity.id: entity.id for entity in step.entities}
    if chance.random() < 0.5:
        taken = chance.sample(range(1, chance.choice([9_000, 2_000_000_000])), len(new))
        new = dict(zip(new, taken))
    exponents, blanks = chance.random() < 0.5, chance.random() < 0.5
    for entity in step.entities:
        entity.id = new[entity.id]
        tokens = []
        for token in entity.tokens:
            words = token.text
            if token.kind == "reference":
                words = f"#{new[int(words[1:])]}"
            elif token.kind == "number" and exponents and chance.random() < 0.5:
                words = with_exponent(words, chance)
            if blanks and chance.random() < 0.3:
                words = comment(chance) + words
            if blanks and chance.random() < 0.3:
                words += comment(chance)
            tokens.append(Token(token.kind, words))
        entity.tokens = tokens
    return write(step, chance.choice(["\n", "\r\n", "", "\n\n", " \t\n"]))


def rewrites() -> int:
    """See above."""
    attack = Attack("rewrites", 20)
    known: dict[str, Any] = {}

    def case(number: int, folder: Path, chance: Random, text: str) -> str:
        if text not in known:
            known[text] = look(folder, "plain.step", text.encode()).json()
        data = rewritten(text, chance).encode()
        end, found = judged(attack, number, data, folder)
        if found is None:
            if end != "wrong":
                attack.find(number, "refused, though it means the same", data)
            return "wrong"
        if told := difference(ordered(facts(known[text])), ordered(facts(found))):
            attack.find(number, told, data)
            return "wrong"
        return "same"

    return with_texts(attack, case, demo=attack.count > 500)


if __name__ == "__main__":
    sys.dont_write_bytecode = True
    main({"mutations": mutations, "numbers": numbers, "rewrites": rewrites})
