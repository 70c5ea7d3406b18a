"""The rules of how a source is named: author, title, edition; a key stands in SOURCES.md."""

import csv
import re

KEY = re.compile(r"\b[A-Z][A-Z0-9.]*(?:-[A-Za-z0-9.]+)*\b")
ONE = r"[A-Z][A-Z0-9]+(?:[-.][A-Za-z0-9]+)*"
CITED = re.compile(rf"\[({ONE}(?:, {ONE})*)\]")
ADDRESS = re.compile(
    r"https?:|www\.|\b[a-z0-9-]+\.(?:com|org|net|edu|ac\.\w\w|co\.\w\w|info|io|cn|de|fyi|academy)\b"
)
UPLOAD = r"(?<=[A-Za-z] )\d{%d,}(?![\d.,]*\d)"
EDITION = re.compile(r"\b(?:1[89]|20)\d\d\b|\bed\.|\bISO|\bDIN|\bIS 919|\bUNI|ANSI")
CODE = re.compile(r"\b[A-Z]{2,}[A-Z0-9]*\b")
# Names of standards, alloys and units, which any reader of the trade can look up.
TRADE = {
    "AGMA", "AISI", "ANSI", "ASM", "ASME", "ASTM", "CRC", "DIN", "GB", "HT150", "HT250", "ISO", "IT",
    "JIS", "POM", "QT450", "QT500", "SAE", "SG", "TQ50", "UNC", "UNF",
}
# Words of a data file's source column that are no key.
PLAIN = {"AGMA", "ISO", "B88", "IT-IT"}


def table_rows(text):
    """(keys, title) of each row of SOURCES.md's table."""
    for line in text.splitlines():
        cells = [cell.strip() for cell in line.strip().strip("|").split("|")]
        if line.startswith("|") and len(cells) == 3 and cells[0] not in ("key", "---"):
            yield [key.strip() for key in cells[0].split(",")], cells[1]


def known_keys(text):
    return {key for keys, _ in table_rows(text) for key in keys}


def title_problems(text):
    return [f"SOURCES.md: {', '.join(keys)}: no year, edition or standard in \"{title}\""
            for keys, title in table_rows(text)
            if len(title) < 20 or not EDITION.search(title)]


def address_problems(name, text, digits=6):
    """Bare addresses, and numbers of uploads of so many digits or more."""
    return [f"{name}: \"{found.group()}\" is no author, title and page"
            for rule in (ADDRESS.pattern, UPLOAD % digits)
            for found in re.finditer(rule, text)]


def key_like(word):
    size = re.fullmatch(r"IT\d+|[A-Z]\d{1,2}|(?:RC|LC|LN|LT|FN)\d+", word)
    return word not in PLAIN and len(word) > 2 and not size


def column_problems(name, rows, known):
    """Keys of a data file's source column that SOURCES.md does not explain."""
    found = set()
    for row in rows:
        words = KEY.findall(re.sub(r"\([^)]*\)", "", row["source"]))
        found |= {word for word in words if key_like(word) and word not in known}
    return [f"{name}: SOURCES.md explains no \"{word}\"" for word in sorted(found)]


def cited_problems(name, text, known):
    """Keys in square brackets in a comment that SOURCES.md does not explain."""
    comments = "\n".join(line for line in text.splitlines()
                         if re.search(r"//|^\s*#|^\s*\*", line))
    cited = {key for group in CITED.findall(comments) for key in group.split(", ")}
    return [f"{name}: SOURCES.md explains no \"{key}\"" for key in sorted(cited - known)]


def shown_problems(name, text):
    """Codes in what a user reads as a source, which no reader could look up."""
    literals = " ".join(re.findall(r'"((?:[^"\\]|\\.)*)"', text))
    literals = re.sub(r"Z[A-Z][A-Za-z0-9]+|C\d{5}", "", literals)
    return [f"{name}: \"{code}\" is a code that no reader can look up"
            for code in sorted(set(CODE.findall(literals)) - TRADE)]


def read_rows(path):
    with path.open(newline="") as file:
        return list(csv.DictReader(file))
