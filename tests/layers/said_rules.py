"""The rules of the catalogue of sentences (kernel/group/words/said*.hpp)."""

import re

SAID = re.compile(r'constexpr Said (k\w+)\s*\{\s*"([^"]*)",\s*((?:"(?:[^"\\]|\\.)*"\s*)+)\}')
CODE = re.compile(r"[a-z0-9]+(?:-[a-z0-9]+)*")
# What arguments tell in the reader's unit.
UNIT = re.compile(r"\b(?:mm[23]?|k?N|Nm|MPa|psi|lbf|deg|um|uin|inch(?:es)?)\b|\d (?:m|in|C|K)\b")


STANDARD = re.compile(r"\b(?:ISO(?:/TR)?|DIN|ANSI|ASME|BS|AGMA|JIS) (?:[A-Z]?\d[\d.]*(?:-\d+)?)")


def sentences(text):
    """(constant, code, words) of each sentence of a header."""
    for name, code, literals in SAID.findall(text):
        yield name, code, "".join(re.findall(r'"((?:[^"\\]|\\.)*)"', literals))


def problems(headers, others, sources):
    """Of (path, text) of the catalogue's headers; `others` is all text that may use them, and what
    stands in no `sources` is no source."""
    found = []
    seen = {}
    for path, text in headers:
        for name, code, words in sentences(text):
            where = f"{path}: {name}"
            if not CODE.fullmatch(code):
                found.append(f"{where}: \"{code}\" is not lower-case words with dashes")
            for known in (code, name):
                if known in seen:
                    found.append(f"{where}: {known} is {seen[known]} already")
                seen[known] = where
            unit = UNIT.search(words)
            if unit:
                found.append(f"{where}: the unit \"{unit.group()}\" stands in the words")
            found += [f"{where}: {standard} is not in SOURCES.md"
                      for standard in STANDARD.findall(words) if standard not in sources]
            if not re.search(rf"\bsaid::{name}\b", others):
                found.append(f"{where}: nothing says it")
    return found
