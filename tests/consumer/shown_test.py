"""What others may rely on, the exported symbols and the installed headers, is what the lists say."""

import argparse
import re
import subprocess
import sys
import unittest
from pathlib import Path

HERE = Path(__file__).resolve().parent
TOP = HERE.parents[1]
PUBLIC = TOP / "kernel" / "include" / "spotblue"
# Declarations at namespace level begin a line without indent.
OTHER = "namespace|struct|class|enum|template|concept|using|inline|constexpr"
FUNCTION = re.compile(rf"^(?!{OTHER})[A-Za-z\[][^;{{]*[;{{]", re.MULTILINE)
# Whoever includes it has the whole of it.
WRITTEN_OUT = re.compile(r"^(?:\[\[nodiscard\]\] )?(?:inline|constexpr) [^;{]*\{(?:[^\n]*\}$|.*?^\})",
                         re.MULTILINE | re.DOTALL)
RESULT = r"(?! |explicit |operator )(?:\[\[nodiscard\]\] )?[\w:<>&*, ]+"
MEMBER = re.compile(rf"^  {RESULT} \w+\([^;{{]*\)(?: const)?;", re.MULTILINE)
HOW = """
A name that is gone or changed breaks programs linked before: raise SPOTBLUE_SOVERSION in
CMakeLists.txt (after 1.0) and say so under Breaking in CHANGELOG.md. Then write the list anew:
    /usr/bin/python3 tests/consumer/shown_test.py --update BUILD_FOLDER
"""


def symbols(libraries):
    """Name of each library with the demangled names it exports, sorted, without their version."""
    lines = []
    for library in libraries:
        lines.append(f"# {Path(library).name.split('.so')[0]}.so")
        command = ["nm", "--dynamic", "--defined-only", "--demangle", str(library)]
        listed = subprocess.run(command, check=True, capture_output=True, text=True).stdout
        found = {line.split(" ", 2)[2].partition("@")[0] for line in listed.splitlines()}
        lines += sorted(name for name in found if not re.fullmatch(r"SPOTBLUE_\d+", name))
    return lines


def headers(folder):
    # The service's header is there or not, as the plug-ins are; tests/plugin builds with it.
    files = (one for one in folder.rglob("*") if one.is_file() and one.parent.name != "plugin")
    return sorted(str(one.relative_to(folder)) for one in files)


def unmarked(text):
    """Functions a public header declares without SPOTBLUE_EXPORT."""
    code = re.sub(r"//[^\n]*", "", text)
    _, _, code = code.partition("\nnamespace spotblue {")
    code = WRITTEN_OUT.sub("", code)
    declared = FUNCTION.findall(code) + MEMBER.findall(code)
    return [" ".join(one.split()) for one in declared if "SPOTBLUE_EXPORT" not in one]


def difference(listed, found):
    gone = [f"- {one}" for one in listed if one not in found]
    new = [f"+ {one}" for one in found if one not in listed]
    return "\n".join(gone + new)


class Shown(unittest.TestCase):
    stage = Path()
    libraries: list[str] = []

    def compare(self, name, found):
        listed = (HERE / name).read_text().splitlines()
        self.assertEqual(difference(listed, found), "", f"tests/consumer/{name} lies.{HOW}")

    def SymbolsAreThoseListed(self):
        found = symbols(self.libraries)
        self.assertGreater(len(found), 100)
        self.compare("exported-symbols.txt", found)

    def HeadersAreThoseListed(self):
        self.compare("installed-headers.txt", headers(self.stage / "include"))

    def NothingButPublicFunctionsIsExported(self):
        known = r"(typeinfo for |typeinfo name for |vtable for )?spotblue::"
        for name in symbols(self.libraries):
            self.assertRegex(name, rf"^(# |{known})")

    def PublicFunctionsAreExported(self):
        self.assertEqual(unmarked("\nnamespace spotblue {\nint f(\n  int);\n"), ["int f( int);"])
        whole = ("[[nodiscard]] inline int f() {\n  int a(1);\n  return g(a);\n}\n"
                 "constexpr int g() { return 1; }")
        self.assertEqual(unmarked(f"\nnamespace spotblue {{\n{whole}\nint h();\n"), ["int h();"])
        member = "\nnamespace spotblue {\nstruct A {\n  [[nodiscard]] int f() const;\n};\n"
        self.assertEqual(unmarked(member), ["[[nodiscard]] int f() const;"])
        for header in sorted(PUBLIC.rglob("*.hpp")):
            with self.subTest(header=str(header.relative_to(TOP))):
                self.assertEqual(unmarked(header.read_text()), [], "needs SPOTBLUE_EXPORT")


def update(build):
    libraries = [build / "kernel" / f"lib{name}.so" for name in ("spotblue_numbers", "spotblue")]
    found = headers(PUBLIC.parent) + headers(build / "generated")
    included = sorted(one for one in found if one.endswith(".hpp"))
    for name, lines in (("exported-symbols.txt", symbols(libraries)),
                        ("installed-headers.txt", included)):
        (HERE / name).write_text("\n".join(lines) + "\n")


if __name__ == "__main__":
    reader = argparse.ArgumentParser()
    reader.add_argument("--update", type=Path)
    reader.add_argument("--stage", type=Path)
    reader.add_argument("--library", action="append")
    given, rest = reader.parse_known_args()
    if given.update:
        update(given.update)
        sys.exit()
    Shown.stage, Shown.libraries = given.stage, given.library
    unittest.main(argv=sys.argv[:1] + rest)
