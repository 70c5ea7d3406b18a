"""Every source is named so that a reader can find it: author, title, edition, page."""

import re
import unittest
from pathlib import Path

import source_rules as rules

TOP = Path(__file__).resolve().parents[2]
REFERENCE = TOP / "tests" / "reference"
TEXT = (REFERENCE / "SOURCES.md").read_text()
# What findings and tables show as sources.
SHOWN = ["kernel/standards/bearing_materials.cpp", "kernel/standards/materials.cpp"]
SUFFIXES = (".hpp", ".cpp", ".py")


def commented():
    for folder in ("kernel", "bindings", "plugin", "tests", "models"):
        for path in sorted((TOP / folder).rglob("*")):
            inside = path.relative_to(TOP)
            if path.suffix in SUFFIXES and inside.parts[:2] != ("tests", "layers"):
                yield inside, path.read_text()


class Sources(unittest.TestCase):
    def RulesCatchWhatTheyShould(self):
        for wrong in ("seen at some-site.com", "https://x", "0.5 to 2 by 56215233", "scribd 376176518"):
            with self.subTest(wrong=wrong):
                self.assertNotEqual(rules.address_problems("a", wrong), [])
        for right in ("Jones, Turning and Boring, 1914", "5,954,575 mm4", "0.0149043839", "75 000 psi"):
            with self.subTest(right=right):
                self.assertEqual(rules.address_problems("a", right), [])
        self.assertEqual(len(rules.title_problems("| ABC | a chart that somebody made | all |")), 1)
        self.assertEqual(len(rules.cited_problems("a", "// Source: [ABCD], seen", {"EFG"})), 1)
        self.assertEqual(rules.cited_problems("a", "// Source: [EFG], seen", {"EFG"}), [])
        self.assertEqual(len(rules.column_problems("a", [{"source": "ABCD; EFG"}], {"EFG"})), 1)
        self.assertEqual(len(rules.shown_problems("a", '"DEFG (3000 psi)"')), 1)
        self.assertEqual(rules.shown_problems("a", '"ASTM B505, C93200, ISO 286-1"'), [])

    def EveryTitleHasItsEdition(self):
        self.assertGreater(len(rules.known_keys(TEXT)), 40)
        self.assertEqual("\n".join(rules.title_problems(TEXT)), "")

    def EveryKeyInDataAndCommentsIsExplained(self):
        known = rules.known_keys(TEXT)
        found = []
        for path in sorted(REFERENCE.glob("*.csv")):
            if path.name == "materials.csv":  # in words, as a user reads it
                continue
            found += rules.column_problems(path.name, rules.read_rows(path), known)
        for path, text in commented():
            found += rules.cited_problems(path, text, known)
        self.assertEqual("\n".join(found), "")

    def EveryExplainedKeyIsUsed(self):
        used = " ".join(text for _, text in commented())
        used += " ".join(path.read_text() for path in REFERENCE.glob("*.csv"))
        title = {key: row for keys, row in rules.table_rows(TEXT) for key in keys}
        words = set(re.findall(r"(?<![\w.-])\w+(?:[.-]\w+)*(?![\w-])", used))
        idle = [key for key in title if not words & {key, key.title()}
                and not re.search(rf"(?<![\w.-])(?:{re.escape(key)}|{key.title()})(?![\w-])", used)]
        self.assertEqual(idle, [])

    def NoAddressOrUploadNumberStandsForATitle(self):
        found = []
        found += rules.address_problems("SOURCES.md", TEXT)
        for path in sorted(REFERENCE.glob("*.csv")):
            for row in rules.read_rows(path):
                words = row["source"] + " " + row.get("remarks", "")
                found += rules.address_problems(path.name, words)
        for path, text in commented():
            if path.parts[0] != "tests" and path.suffix in (".cpp", ".hpp"):
                said = " ".join(re.findall(r'"[^"]*"|//.*', text))
                found += rules.address_problems(path, said, digits=7)
        self.assertEqual("\n".join(found), "")

    def WhatAUserReadsAsASourceHasNoCodes(self):
        found = []
        for name in SHOWN:
            found += rules.shown_problems(name, (TOP / name).read_text())
        self.assertEqual("\n".join(found), "")


if __name__ == "__main__":
    unittest.main()
