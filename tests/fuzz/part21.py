"""A reader of STEP text (ISO 10303-21:2016) that shares nothing with the kernel's, for its own tests:
entities as lists of tokens, and the text written anew from them."""

from __future__ import annotations

import re
from dataclasses import dataclass, field
from decimal import Decimal
from random import Random

# Clause 6.4 of the standard, and numbers as many programs write them: without a point, or with no
# digit before it. Both have one meaning only.
NUMBER = r"[+-]?(?:[0-9]+(?:\.[0-9]*)?|\.[0-9]+)(?:E[+-]?[0-9]+)?"
TOKEN = re.compile(
    rf"""(?P<blank>(?:\s|/\*.*?\*/)+)
    |(?P<text>'(?:[^']|'')*')
    |(?P<binary>"[0-9A-Fa-f]*")
    |(?P<choice>\.[A-Za-z_][A-Za-z_0-9]*\.)
    |(?P<reference>\#[0-9]+)
    |(?P<number>{NUMBER})(?![A-Za-z0-9_.+-])
    |(?P<word>!?[A-Za-z_][A-Za-z_0-9-]*)
    |(?P<mark>[()=,;$*])""",
    re.VERBOSE | re.DOTALL,
)


class NoPart21(Exception):
    """The text is none that the standard allows."""


@dataclass(frozen=True)
class Token:
    """A piece of the text, and where it begins."""

    kind: str
    text: str
    at: int = 0


@dataclass
class Entity:
    """What stands behind `#12=`, up to the semicolon."""

    id: int
    tokens: list[Token]

    @property
    def word(self) -> str:
        """Its name; empty for one of several kinds."""
        return self.tokens[0].text if self.tokens[0].kind == "word" else ""


@dataclass
class Step:
    """A file: what stands before its first entity, and the entities."""

    head: str
    entities: list[Entity] = field(default_factory=list)


def tokens_of(text: str, start: int = 0) -> list[Token]:
    """All tokens from `start` on; raises NoPart21 where there is none."""
    tokens = []
    at = start
    while at < len(text):
        found = TOKEN.match(text, at)
        if found is None or found.lastgroup is None:
            raise NoPart21(f"no token at {text[at:at + 30]!r}")
        if found.lastgroup != "blank":
            tokens.append(Token(found.lastgroup, found.group(), at))
        at = found.end()
    return tokens


def check_values(entity: Entity) -> None:
    """Raises NoPart21 unless brackets pair off and commas stand between values."""
    depth = 0
    before = "("
    for token in entity.tokens:
        value = token.kind not in ("mark", "word") or token.text in "$*"
        part = token.kind == "word" and not entity.word and depth == 1
        if (value or (token.kind == "word" and not part)) and before == "value" and depth:
            raise NoPart21("a comma is missing")
        if token.text in (",", ")") and before == ",":
            raise NoPart21("a value is missing")
        depth += {"(": 1, ")": -1}.get(token.text, 0) if token.kind == "mark" else 0
        if depth < 0:
            raise NoPart21("brackets")
        before = "value" if value or token.text == ")" else token.text
    if depth:
        raise NoPart21("brackets")


def parse(text: str) -> Step:
    """The file, of one DATA section."""
    data = re.search(r"\bDATA\s*;", text)
    if not data:
        raise NoPart21("no DATA")
    step = Step(text[: data.end()])
    tokens = tokens_of(text, data.end())
    at = 0
    while at < len(tokens) and tokens[at].kind == "reference":
        end = next((i for i in range(at, len(tokens)) if tokens[i].text == ";"), len(tokens) - 1)
        if tokens[end].text != ";" or end < at + 4 or tokens[at + 1].text != "=":
            raise NoPart21("no entity")
        entity = Entity(int(tokens[at].text[1:]), tokens[at + 2 : end])
        check_values(entity)
        step.entities.append(entity)
        at = end + 1
    if [token.text for token in tokens[at:]] != ["ENDSEC", ";", "END-ISO-10303-21", ";"]:
        raise NoPart21("no end")
    return step


def canonical_number(text: str) -> str:
    """The same number as the standard wants it; a whole number without point and exponent stays."""
    if re.fullmatch(r"[+-]?[0-9]+", text):
        return str(int(text))
    value = float(text)
    if value in (float("inf"), float("-inf")):
        raise NoPart21("no finite number")
    mantissa, _, exponent = repr(value).upper().partition("E")
    mantissa += "" if "." in mantissa else "."
    return mantissa + (f"E{int(exponent)}" if exponent else "")


def with_exponent(text: str, chance: Random) -> str:
    """The same number with its point elsewhere and an exponent for it."""
    if "." not in text:
        return text
    number = Decimal(text).normalize()
    if number == 0:
        return chance.choice(["0.", "0.0", "+0.", "0.E0", "0.000E+05"])
    shift = chance.randint(-3, 3)
    sign, digits, exponent = number.as_tuple()
    assert isinstance(exponent, int)
    whole = "".join(map(str, digits)) + "0" * chance.randint(0, 2)
    exponent -= len(whole) - len(digits)
    behind = min(max(len(whole) - 1 + shift, 0), len(whole) - 1)  # digits behind the point
    point = len(whole) - behind
    written = f"{whole[:point]}.{whole[point:]}E{chance.choice(['', '+'])}{exponent + behind}"
    written = written.replace("E+-", "E-")
    return ("-" if sign else chance.choice(["", "+"])) + written


def write(step: Step, line_end: str = "\n") -> str:
    """The text of the file, an entity a line."""
    lines = [step.head.strip()]
    for entity in step.entities:
        lines.append(f"#{entity.id}=" + "".join(token.text for token in entity.tokens) + ";")
    return line_end.join([*lines, "ENDSEC;", "END-ISO-10303-21;", ""])


def canonical(text: str) -> str:
    """The text with the same meaning, each number in its one form."""
    step = parse(text)
    for entity in step.entities:
        entity.tokens = [
            Token(t.kind, canonical_number(t.text)) if t.kind == "number" else t
            for t in entity.tokens
        ]
    return write(step)
