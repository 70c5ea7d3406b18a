"""What is done to the text of a STEP file so that it crashes, hangs or swells its reader."""

from __future__ import annotations

import re


def scope(text: str) -> str:
    """With an entity of a form that Open CASCADE's reader does not end on."""
    added = (
        "#900001=&SCOPE\n#900002=DIRECTION('',(0.,0.,1.));\nENDSCOPE DIRECTION('',(0.,0.,1.));\n"
    )
    return text.replace("DATA;\n", "DATA;\n" + added, 1)


def deep(text: str) -> str:
    """With brackets nested a hundred thousand deep."""
    added = "#900001=DIRECTION('',(" + "(" * 100_000 + ")" * 100_000 + "));\n"
    return text.replace("DATA;\n", "DATA;\n" + added, 1)


def doubled(text: str) -> str:
    """With an assembly that doubles thirty levels deep: a thousand million parts."""
    head = re.search(r"#(\d+) = PRODUCT_DEFINITION_SHAPE\('[^']*','[^']*',#(\d+)\)", text)
    context = re.search(r"#\d+ = PRODUCT_DEFINITION\('[^']*','[^']*',#\d+,(#\d+)\)", text)
    product = re.search(r"PRODUCT\('[^']*','[^']*','[^']*',\((#\d+)\)\)", text)
    assert head and context and product
    below, lines, number = f"#{head[2]}", [], 900_000
    for level in range(31):
        first = number
        lines += [
            f"#{first}=PRODUCT('L{level}','L{level}','',({product[1]}));",
            f"#{first + 1}=PRODUCT_DEFINITION_FORMATION('','',#{first});",
            f"#{first + 2}=PRODUCT_DEFINITION('design','',#{first + 1},{context[1]});",
            f"#{first + 3}=NEXT_ASSEMBLY_USAGE_OCCURRENCE('a','a','',#{first + 2},{below},$);",
            f"#{first + 4}=NEXT_ASSEMBLY_USAGE_OCCURRENCE('b','b','',#{first + 2},{below},$);",
        ]
        below, number = f"#{first + 2}", first + 5
    return text.replace("DATA;\n", "DATA;\n" + "\n".join(lines) + "\n", 1)


def slow(text: str) -> str:
    """With so much in it that it takes longer than the test's limit to read."""
    lines = (f"#{900_000 + number}=DIRECTION('',(0.,0.,1.));" for number in range(1_600_000))
    return text.replace("DATA;\n", "DATA;\n" + "\n".join(lines) + "\n", 1)


def crashing(text: str) -> str:
    """With a loop of edges called a direction, which Open CASCADE's reader does not survive."""
    return text.replace("EDGE_LOOP('',(", "DIRECTION('',(", 1)


BAD = {"scope": scope, "deep": deep, "doubled": doubled, "slow": slow, "crashing": crashing}


def opened(text: str, which: int = 0) -> str:
    """With one face left out of one of the shells."""
    shells = list(re.finditer(r"CLOSED_SHELL\('[^']*',\(#\d+(,#\d+)", text))
    return text[: shells[which].start(1)] + text[shells[which].end(1) :]
