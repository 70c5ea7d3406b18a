"""Changes to STEP text that know what it is made of."""

from __future__ import annotations

from collections.abc import Callable
from random import Random

from part21 import Step, Token, parse, write

NUMBERS = ("0.", "-0.", "-1.", "1.E400", "1.E300", "-1.E-300", "1.E12", "nan", "INF", "'1.'", "$",
           "*", "#1", "5.5.5", "0x10", "1,5", "(1.)", ".T.", "123456789012345678901234567890.",
           "1.E-30", "3", "--1.", "1.e1", "")  # fmt: skip
TEXTS = ("''", "'it''s'", "'" + "n" * 20000 + "'", "'a\\X2\\00E400DF\\X0\\'", "'\\X2\\D800\\X0\\'",
         "'\\X4\\0001F600\\X0\\'", "'\\X\\00'", "'\\X\\0A'", "'\\X2\\202E\\X0\\x'", "'=1+1'",
         "'\\S\\'", "'\\\\'", "'/'", "'../..'", "'a\tb'", "'caf\u00e9'", "$", "5.", "'%s%n{}'",
         "'Stand/Bush: bore 44 @ 12 #2'", "'#1'", "' '", "'\u202eab'")  # fmt: skip
UNITS = ("$", ".MILLI.", ".KILO.", ".MICRO.", ".EXA.", ".ATTO.", ".X.", "''", "1.")


def places(step: Step, kind: str) -> list[tuple[int, int]]:
    """Where tokens of a kind stand: entity and token."""
    return [
        (e, t)
        for e, entity in enumerate(step.entities)
        for t, token in enumerate(entity.tokens)
        if token.kind == kind
    ]


def put(step: Step, place: tuple[int, int], text: str) -> None:
    """Writes `text` in place of a token."""
    step.entities[place[0]].tokens[place[1]] = Token("changed", text)


def change_token(step: Step, chance: Random, kind: str, texts: tuple[str, ...]) -> None:
    """One token of a kind becomes one of the texts."""
    found = places(step, kind)
    if found:
        put(step, chance.choice(found), chance.choice(texts))


def change_reference(step: Step, chance: Random) -> None:
    """A reference leads to another entity, of any kind, or of none."""
    found = places(step, "reference")
    other = chance.choice([*(f"#{entity.id}" for entity in step.entities), "#0", "#99999999999"])
    if found:
        put(step, chance.choice(found), other)


def same_kind_reference(step: Step, chance: Random) -> None:
    """A reference leads to another entity of the same name."""
    by_id = {entity.id: entity for entity in step.entities}
    found = places(step, "reference")
    if found:
        place = chance.choice(found)
        target = by_id.get(int(step.entities[place[0]].tokens[place[1]].text[1:]))
        alike = [e.id for e in step.entities if target and e.word == target.word]
        if alike:
            put(step, place, f"#{chance.choice(alike)}")


def drop_entity(step: Step, chance: Random) -> None:
    """An entity is gone; references to it stay."""
    del step.entities[chance.randrange(len(step.entities))]


def copy_entity(step: Step, chance: Random) -> None:
    """An entity is there twice, under its own number or a new one."""
    entity = chance.choice(step.entities)
    number = chance.choice([entity.id, max(e.id for e in step.entities) + 1, 2147483647])
    step.entities.insert(
        chance.randrange(len(step.entities)), type(entity)(number, list(entity.tokens))
    )


def swap_entities(step: Step, chance: Random) -> None:
    """Two entities change their numbers."""
    one, other = chance.choice(step.entities), chance.choice(step.entities)
    one.id, other.id = other.id, one.id


def change_word(step: Step, chance: Random) -> None:
    """An entity takes the name of another."""
    found = places(step, "word")
    names = sorted({entity.word for entity in step.entities if entity.word})
    put(step, chance.choice(found), chance.choice([*names, "FACETED_BREP", "", "!MINE", "x"]))


def drop_token(step: Step, chance: Random) -> None:
    """A token is gone."""
    tokens = chance.choice(step.entities).tokens
    del tokens[chance.randrange(len(tokens))]


def repeat_token(step: Step, chance: Random) -> None:
    """A token is there twice, or a thousand times."""
    tokens = chance.choice(step.entities).tokens
    at = chance.randrange(len(tokens))
    tokens[at:at] = [tokens[at]] * chance.choice([1, 1, 1, 1000])


def lengthen_list(step: Step, chance: Random) -> None:
    """The items of a list are there many times."""
    entity = chance.choice(step.entities)
    opens = [i for i, t in enumerate(entity.tokens) if t.text == "("]
    if opens:
        at = chance.choice(opens)
        close = next((i for i in range(at, len(entity.tokens)) if entity.tokens[i].text == ")"), at)
        items = entity.tokens[at + 1 : close]
        for _ in range(chance.choice([1, 3, 2000]) if items else 0):
            entity.tokens[close:close] = [Token("mark", ","), *items]


def empty_list(step: Step, chance: Random) -> None:
    """A list loses its items, or is nested."""
    entity = chance.choice(step.entities)
    opens = [i for i, t in enumerate(entity.tokens) if t.text == "("]
    if opens:
        at = chance.choice(opens)
        close = next((i for i in range(at, len(entity.tokens)) if entity.tokens[i].text == ")"), at)
        deep = chance.choice([0, 1, 600])
        entity.tokens[at + 1 : close] = [Token("mark", "(" * deep + ")" * deep)]


def contain_itself(step: Step, chance: Random) -> None:
    """An assembly has a component that is, or holds, itself."""
    usages = [e for e in step.entities if e.word == "NEXT_ASSEMBLY_USAGE_OCCURRENCE"]
    if usages:
        entity = chance.choice(usages)
        at = [i for i, t in enumerate(entity.tokens) if t.kind == "reference"]
        if len(at) > 1:
            entity.tokens[at[1]] = entity.tokens[at[0]]


OF_ENTITIES: tuple[Callable[[Step, Random], None], ...] = (
    lambda s, c: change_token(s, c, "number", NUMBERS),
    lambda s, c: change_token(s, c, "text", TEXTS),
    lambda s, c: change_token(s, c, "choice", (*UNITS, ".T.", ".F.", ".U.", ".UNSPECIFIED.")),
    change_reference, same_kind_reference, drop_entity, copy_entity, swap_entities, change_word,
    drop_token, repeat_token, lengthen_list, empty_list, contain_itself,
)  # fmt: skip


def change_bytes(data: bytes, chance: Random) -> bytes:
    """A byte, a span or the end is other or gone."""
    at = chance.randrange(len(data))
    kind = chance.randrange(5)
    if kind == 0:
        return data[:at] + bytes([chance.randrange(256)]) + data[at + 1 :]
    if kind == 1:
        return data[:at] + data[at + chance.randint(1, 60) :]
    if kind == 2:
        return data[:at]
    if kind == 3:
        odd = (b"\x00", b"\xff\xfe", b"/*", b"'", b"(", b"&SCOPE", b"ENDSEC;", b"\r", b"\xe2\x80\xae")
        return data[:at] + chance.choice(odd) + data[at:]
    end = min(len(data), at + chance.randint(1, 200))
    to = chance.randrange(len(data))
    return data[:to] + data[at:end] + data[to:]


def mutated(text: str, chance: Random) -> bytes:
    """The text with one to three changes."""
    step = parse(text)
    for _ in range(chance.choice([1, 1, 2, 3])):
        chance.choice(OF_ENTITIES)(step, chance)
        if not step.entities:
            break
    data = write(step).encode("utf-8")
    return change_bytes(data, chance) if chance.random() < 0.3 else data
