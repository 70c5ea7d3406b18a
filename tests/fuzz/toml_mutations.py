"""Changes to TOML and CSV text that know what it is made of."""

from __future__ import annotations

import re
from random import Random

# What may stand behind a key; some of it is TOML, some nearly.
VALUES = ("0", "-0.0", "-1", "1", "2", "1e308", "1e-308", "1e400", "inf", "-inf", "nan", "0x1F",
          "1_000", "9223372036854775807", "99999999999999999999", "2147483648", '""', '" "', '"a"',
          '"1 5/16"', '"1/0"', '"0/0"', '"1e300/1e-300"', '"-1/2"', '"5 mm"', '"5 furlong"', '"1,5"',
          "true", "false", "[]", "[1]", "[1, 2]", "[1, 2, 3]", "[[1], [2]]", '["a", "b"]', "{}",
          "{ a = 1 }", "{ diameter = 1, length = 1 }", "[{}]", "1979-05-27", "07:32:00",
          "1979-05-27T07:32:00Z", '"\\u0000"', '"\\u202E"', '"a\\nb"', '"\u00e9\u00df\u4e2d"',
          '"\\U0001F600"', "'''a\nb'''", '"' + "n" * 3000 + '"', "[" * 40 + "]" * 40, "é", "",
          '"../x"', '"/dev/zero"', '"pair.step"', '"case.toml"', '"H7/s6"', '"FN2"', '"H99/zz1"',
          '"Plate: bore 16"', '"Plate: bore 16 @ 4 #2"', '"bore"', '": bore 1"', '"Nobody"',
          '"=1+1"', '"{}%s"', "0.1", "16", "1e9", "1e15")  # fmt: skip
CELLS = ("", "0", "-1", "nan", "inf", "1e400", "1e300", "1/0", "1 5/16 in", "1,5", "=1+1", "@x", "-",
         "a\nb", "\u202eab", "n" * 3000, "pair.step", "../pair.step", "/dev/zero", ".", "no.step",
         "Plate: bore 16", "bore 16", "bore", "Stud: outside 9.97 @ 1 #2", "taper 1/2", "length 3",
         "H7", "s6", "FN2", "H7/s6", "RC99", "+0.1/-0.1", "+-0.1", "0.1/0.2/0.3", "\u00b2", "\u00b5",
         "9" * 400, "1e-320", "a with b", "Plate: bore 16 with Bush: outside 16.03", "steel", "\x00",
         "#", ";", "'", "\u2028", "caf\u00e9")  # fmt: skip


def change_bytes(text: str, chance: Random) -> bytes:
    """A byte, a span or the end is other or gone."""
    data = text.encode("utf-8", "surrogatepass")
    at = chance.randrange(len(data))
    kind = chance.randrange(5)
    if kind == 0:
        return data[:at] + bytes([chance.randrange(256)]) + data[at + 1 :]
    if kind == 1:
        return data[:at] + data[at + chance.randint(1, 30) :]
    if kind == 2:
        return data[:at]
    odd = (b"\x00", b"\xff", b"\xef\xbb\xbf", b"[", b"]]", b'"', b"'''", b"\r", b"\n", b"=", b",", b"{",
           b"#", b".", b"\\", b"\xc2\x85", b"\xe2\x80\xae", b";", b"\t")  # fmt: skip
    return data[:at] + chance.choice(odd) + data[at:]


def change_line(lines: list[str], chance: Random) -> None:
    """A line is gone, there twice, elsewhere, or part of another."""
    at = chance.randrange(len(lines))
    kind = chance.randrange(4)
    if kind == 0 and len(lines) > 1:
        del lines[at]
    elif kind == 1:
        lines.insert(chance.randrange(len(lines) + 1), lines[at])
    elif kind == 2:
        lines.insert(chance.randrange(len(lines)), lines.pop(at))
    else:
        lines[at] = lines[at][: chance.randint(0, len(lines[at]))]


def change_pair(lines: list[str], chance: Random) -> None:
    """A key takes another value, or another key's; or a value another key."""
    pairs = [i for i, line in enumerate(lines) if re.match(r"\s*[\w.\"-]+\s*=", line)]
    if not pairs:
        return
    at, other = chance.choice(pairs), chance.choice(pairs)
    key, value = lines[at].split("=", 1)
    kind = chance.randrange(5)
    if kind < 2:
        lines[at] = f"{key}= {chance.choice(VALUES)}"
    elif kind == 2:
        lines[at] = f"{key}={lines[other].split('=', 1)[1]}"
    elif kind == 3:
        lines[at] = f"{lines[other].split('=', 1)[0]}={value}"
    else:
        inner = list(re.finditer(r'(?<![\w."])(-?[0-9][\w.+-]*|"[^"]*"|true|false)', value))
        if inner:
            found = chance.choice(inner)
            value = value[: found.start()] + chance.choice(VALUES) + value[found.end() :]
            lines[at] = f"{key}={value}"


def change_key(lines: list[str], chance: Random) -> None:
    """A key is misspelt, dotted, quoted or new."""
    pairs = [i for i, line in enumerate(lines) if re.match(r"\s*[\w.\"-]+\s*=", line)]
    if pairs:
        at = chance.choice(pairs)
        key, value = lines[at].split("=", 1)
        key = key.strip()
        odd = (key[:-1], key + "s", f"{key}.{key}", f'"{key}"', "x" * 2000, '""', f"a.{key}",
               ".".join("a" * 20), key.upper(), '"a\\u202Eb"')  # fmt: skip
        lines[at] = f"{chance.choice(odd)} ={value}"


def change_header(lines: list[str], chance: Random) -> None:
    """A table is of another kind, or inside another."""
    tables = [i for i, line in enumerate(lines) if line.startswith("[")]
    if tables:
        at = chance.choice(tables)
        name = lines[at].strip("[] ")
        odd = (f"[{name}]", f"[[{name}]]", f"[[{name}s]]", f"[{name}.{name}]", "[settings]", "[[fits]]",
               "[[part]]", f"[[{name}]", "[]", f'["{name}"]', f"[a.b.c.{name}]")  # fmt: skip
        lines[at] = chance.choice(odd)


def tweak_number(lines: list[str], chance: Random) -> None:
    """A number is a little or much larger or smaller, or written in another way."""
    found = [
        (i, number)
        for i, line in enumerate(lines)
        if "=" in line and not line.startswith("schema")
        for number in re.finditer(r'(?<![\w."-])-?[0-9]+(?:\.[0-9]+)?(?![\w."/])', line)
    ]
    if found:
        at, number = chance.choice(found)
        value = float(number[0])
        odd = (value * chance.uniform(0.5, 2.0), value + chance.choice([-1, 1, 0.01, -0.01]), value * 10,
               value + 1e-9, value / 10)  # fmt: skip
        words = (f"{chance.choice(odd):.6g}", f"{value:e}", f"+{value}", f'"{value} mm"', f"{value}0")
        lines[at] = lines[at][: number.start()] + chance.choice(words) + lines[at][number.end() :]


def move_table(lines: list[str], chance: Random) -> None:
    """A whole table is elsewhere, gone, or there twice."""
    starts = [i for i, line in enumerate(lines) if line.startswith("[")] + [len(lines)]
    if len(starts) > 1:
        which = chance.randrange(len(starts) - 1)
        table = lines[starts[which] : starts[which + 1]]
        kind = chance.randrange(3)
        if kind < 2:
            del lines[starts[which] : starts[which + 1]]
        if kind > 0:
            tables = [i for i, line in enumerate(lines) if line.startswith("[")] + [len(lines)]
            at = chance.choice(tables)
            lines[at:at] = table


def add_remark(lines: list[str], chance: Random) -> None:
    """A comment or blanks, which mean nothing."""
    at = chance.randrange(len(lines))
    lines[at] += chance.choice(["  ", ' # [x] = "', "\t#"])
    lines.insert(chance.randrange(len(lines)), chance.choice(["", "# a = 1", "\t"]))


def mutated_toml(text: str, chance: Random) -> bytes:
    """The text with one to three changes."""
    lines = text.splitlines()
    mild = (tweak_number, tweak_number, move_table, add_remark)
    changes = (change_line, change_pair, change_pair, change_pair, change_key, change_header, *mild)
    if chance.random() < 0.4:
        for _ in range(chance.randint(1, 4)):
            chance.choice(mild)(lines, chance)
        return ("\n".join(lines) + "\n").encode()
    for _ in range(chance.choice([1, 1, 2, 3])):
        chance.choice(changes)(lines, chance)
    text = chance.choice(["\n", "\n", "\n", "\r\n"]).join(lines) + "\n"
    return change_bytes(text, chance) if chance.random() < 0.25 else text.encode()


def quoted(cell: str) -> str:
    """A cell as CSV wants it."""
    return '"' + cell.replace('"', '""') + '"' if re.search('[,;"\r\n]', cell) else cell


def mutated_csv(rows: list[list[str]], chance: Random) -> bytes:
    """The rows as text, with one to three changes."""
    rows = [list(row) for row in rows]
    mark = chance.choice([",", ",", ",", ";"])
    for _ in range(chance.choice([1, 1, 2, 3])):
        row = chance.randrange(len(rows))
        column = chance.randrange(len(rows[0]))
        kind = chance.randrange(9)
        if kind < 4:
            rows[row][column : column + 1] = [chance.choice(CELLS)]
        elif kind == 4 and len(rows) > 1:
            rows.insert(chance.randrange(len(rows)), rows.pop(row))
        elif kind == 5:
            rows.insert(chance.randrange(len(rows) + 1), list(rows[row]))
        elif kind == 6:
            rows[row] += [chance.choice(CELLS)] * chance.choice([1, 3])
        elif kind == 7:
            rows[row] = rows[row][:column]
        else:
            for other in rows:
                other[column : column + 1] = []
        if not rows[0]:
            rows[0] = ["file"]
    text = chance.choice(["\n", "\n", "\r\n", "\r"]).join(mark.join(map(quoted, r)) for r in rows)
    return change_bytes(text + "\n", chance) if chance.random() < 0.25 else (text + "\n").encode()
