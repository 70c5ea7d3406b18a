"""Writes the stubs (.pyi) of the compiled modules from what the modules themselves say.

    make_stubs.py BUILD/python    into spotblue/_numbers and spotblue/_kernel there, and the names
                                  of _kernel into spotblue/_names.py

Fields, their types and documents, words of enumerations and signatures of functions are read from
the classes and from the signatures that pybind11 writes; nothing is declared twice. What is not
understood ends it: a type that nothing bound, a function without a signature, one name of two
enumerations.
"""

from __future__ import annotations

import ast
import importlib
import re
import sys
from collections.abc import Iterator
from pathlib import Path
from types import BuiltinFunctionType, ModuleType
from typing import Any, NoReturn

HEAD = '"""{doc}\n\nWritten by make_stubs.py when the package was built."""\n\n'
# What every record and every result has; the classes themselves have no such base.
BASES = '''\
class _Type(type):
    """The class of the kernel's classes."""

class _Result(metaclass=_Type):
    """What is only read."""

    _fields: ClassVar[tuple[str, ...]]
    __hash__: ClassVar[None]  # type: ignore[assignment]
    def __eq__(self, other: object) -> bool: ...

class _Record(_Result):
    """What has fields set by keyword, and is compared, copied and pickled by them."""

    __match_args__: ClassVar[tuple[str, ...]]
    def __copy__(self) -> Self: ...
    def __deepcopy__(self, memo: dict[int, object]) -> Self: ...
    def __getstate__(self) -> dict[str, object]: ...
    def __setstate__(self, state: dict[str, object]) -> None: ...
'''
BASES_IN = "spotblue._numbers.base"
PATH = "str | os.PathLike[str]"
SIMPLE = {"object": "object", "handle": "object", "SupportsFloat": "float", "SupportsInt": "int"}
PLAIN = {"bool", "bytes", "float", "int", "str", "numpy.typing.NDArray", "typing.Any"}
OWN_OF_BASES = set(re.findall(r"def (\w+)", BASES)) | {"__init__", "__repr__", "__setattr__"}
WIDEST = 100


def split(text: str) -> list[str]:
    """At the commas that are in no bracket and no text."""
    parts, depth, quote, start = [], 0, "", 0
    for at, letter in enumerate(text):
        if quote:
            quote = "" if letter == quote and text[at - 1] != "\\" else quote
        elif letter in "'\"":
            quote = letter
        elif letter in "([{<":
            depth += 1
        elif letter in ")]}" or (letter == ">" and text[at - 1] != "-"):
            depth -= 1
        elif letter == "," and depth == 0:
            parts.append(text[start:at].strip())
            start = at + 1
    return [*parts, text[start:].strip()] if text.strip() else []


class Stub:
    """The text of one module's stub."""

    def __init__(self, module: ModuleType, choices: dict[str, str], classes: set[str]) -> None:
        self.module = module
        self.choices = choices  # by its bare name, as signatures have it, the module of each
        self.classes = classes  # "spotblue._kernel.Look": all that there are
        self.lines: list[str] = []

    def text(self) -> str:
        for name, value in vars(self.module).items():
            if isinstance(value, type):
                self.lines += ["", *self.class_lines(value)]
            elif isinstance(value, BuiltinFunctionType):
                self.lines += ["", *self.functions(name, value.__doc__ or "", "")]
            elif isinstance(value, (float, str)) and not name.startswith("__"):
                self.lines.append(f"{name}: Final[{type(value).__name__}]")
        body = "\n".join([BASES] * (self.module.__name__ == BASES_IN) + self.lines)
        doc = (self.module.__doc__ or "").strip()
        return HEAD.format(doc=doc) + "\n".join(self.imports(body)) + "\n\n" + body + "\n"

    def imports(self, body: str) -> Iterator[str]:
        for name in ("numpy.typing", "os", "pathlib", "typing"):
            if f"{name}." in body:
                yield f"import {name}"
        for module, names in (
            ("collections.abc", ("Iterable", "Sequence")),
            ("typing", ("ClassVar", "Final", "Self", "overload")),
            ("spotblue.choice", ("Choice",)),
        ):
            used = [name for name in names if re.search(rf"\b{name}\b", body)]
            if used:
                yield f"from {module} import {', '.join(used)}"
        for module in sorted({*self.choices.values(), "spotblue._kernel", BASES_IN}):
            parent, _, last = module.rpartition(".")
            if module != self.module.__name__ and f"{last}." in body:
                yield f"from {parent} import {last}"

    def refuse(self, what: str) -> NoReturn:
        sys.exit(f"{self.module.__name__}: {what}")

    def named(self, module: str, name: str) -> str:
        return name if module == self.module.__name__ else f"{module.rpartition('.')[2]}.{name}"

    def type_text(self, said: str, *, taken: bool, field: bool = False) -> str:
        """A type of pybind11 as a caller gives it, or is given it.

        Several values in a field are given as a tuple, and taken from any iterable.
        """
        if "::" in said:
            self.refuse(f"{said}: bind this before what hands it out or takes it")
        plain = re.sub(r"<([\w.]+) object at [^>]*>", r"\1", said)
        return self.type_of(ast.parse(plain, mode="eval").body, taken, field, outer=True)

    def type_of(self, node: ast.expr, taken: bool, field: bool, *, outer: bool = False) -> str:
        if isinstance(node, ast.Constant):
            return "None"
        if isinstance(node, ast.BinOp):
            return self.union([node.left, node.right], taken, field)
        if not isinstance(node, ast.Subscript):
            return self.name_of(ast.unparse(node), taken)
        generic = ast.unparse(node.value).rpartition(".")[2].lower()
        given = node.slice
        inner = list(given.elts) if isinstance(given, ast.Tuple) else [given]
        if generic == "annotated" or isinstance(given, ast.Constant):  # a list of a fixed length
            held = inner[0] if generic == "annotated" else node.value
            return self.type_of(held, taken, field, outer=outer)
        if generic in ("optional", "union"):
            none: list[ast.expr] = [ast.Constant(None)] if generic == "optional" else []
            return self.union([*inner, *none], taken, field)
        if generic == "list":
            of = self.type_of(inner[0], taken, field)
            if taken:
                return f"{'Iterable' if field and outer else 'Sequence'}[{of}]"
            return f"tuple[{of}, ...]" if field else f"list[{of}]"
        name = generic if generic in ("tuple", "dict") else self.name_of(ast.unparse(node.value), taken)
        return f"{name}[{', '.join(self.type_of(one, taken, field) for one in inner)}]"

    def union(self, nodes: list[ast.expr], taken: bool, field: bool) -> str:
        texts = " | ".join(self.type_of(one, taken, field) for one in nodes).split(" | ")
        return " | ".join(dict.fromkeys(texts))

    def name_of(self, name: str, taken: bool) -> str:
        last = name.rpartition(".")[2]
        if last in ("PathLike", "Path"):
            return PATH if taken else "pathlib.Path"
        if name in self.choices:
            own = self.named(self.choices[name], name)
            return f"{own} | str" if taken else own
        if name in self.classes:
            return self.named(name.rpartition(".")[0], last)
        if last not in SIMPLE and name not in PLAIN:
            self.refuse(f"{name}: nothing bound is called so; bind it, or say its type by typed.hpp")
        return SIMPLE.get(last, name)

    def parameter(self, text: str) -> str:
        name, _, rest = text.partition(":")
        if not rest:
            return name
        said, default, _ = rest.partition(" = ")
        given = self.type_text(said.strip(), taken=True)
        return f"{name}: {given}" + (" = ..." if default else "")

    def functions(self, name: str, doc: str, indent: str) -> list[str]:
        """Each overload of a function or, indented, of a method."""
        pattern = rf"^(?:\d+\. )?{name}\((.*)\) -> ([^\n]*)\n?((?:(?!^\d+\. {name}\().*\n?)*)"
        found = [
            (split(one[1]), one[2], one[3].strip())
            for one in re.finditer(pattern, doc, re.MULTILINE)
            if one[1] != "*args, **kwargs"
        ]
        if not found:
            self.refuse(f"{name}: its document has no signature")
        lines = []
        for given, handed, about in found:
            own = [self.parameter(one) for one in given]
            if indent:
                own = ["self", *own[1:]]
            lines += [f"{indent}@overload"] * (len(found) > 1)
            returned = self.type_text(handed, taken=False)
            lines += written(f"{indent}def {name}", own, returned, about)
        return lines

    def class_lines(self, made: type[Any]) -> list[str]:
        doc = document(made.__doc__ or "", "    ")
        if hasattr(made, "__members__"):
            words = [f'    {one.name} = "{one.value}"' for one in made]
            return [f"class {made.__name__}(Choice):", doc, "", *words]
        base = self.named(BASES_IN, "_Record" if hasattr(made, "__match_args__") else "_Result")
        lines = [f"class {made.__name__}({base}):", doc, ""]
        own = vars(made)
        if base.endswith("_Record"):
            taken = [
                f"{name}: {self.type_text(taken_by(own[name]), taken=True, field=True)} = ..."
                for name in own["_fields"]
            ]
            lines += written("    def __init__", ["self", "*", *taken] if taken else ["self"], "None", "")
        for name, value in own.items():
            if isinstance(value, property):
                handed = self.type_text(handed_by(value), taken=False, field=True)
                if value.fset is not None:
                    lines += [f"    {name}: {handed}", document(value.__doc__ or "", "    ")]
                else:
                    lines.append("    @property")
                    lines += written(f"    def {name}", ["self"], handed, value.__doc__ or "")
            elif callable(value) and name not in OWN_OF_BASES:
                lines += self.functions(name, value.__doc__ or "", "    ")
        return lines


def handed_by(field: property) -> str:
    """The type in the getter's signature; the last one, since a tuple is made of the list's."""
    return str(re.findall(r"\) -> ([^\n]*)", field.fget.__doc__ or "")[-1])


def taken_by(field: property) -> str:
    return str(re.findall(r"\(.*?, \w+: ([^\n]*)\) -> None", field.fset.__doc__ or "")[-1])


def written(start: str, parameters: list[str], returned: str, about: str) -> list[str]:
    """A declaration, on one line where it fits, with its document."""
    end = f") -> {returned}:"
    line = f"{start}({', '.join(parameters)}{end}"
    indent = start[: len(start) - len(start.lstrip())]
    lines = [line]
    if len(line) > WIDEST:
        lines = [f"{start}(", *(f"{indent}    {one}," for one in parameters), f"{indent}{end}"]
    if not about:
        return [*lines[:-1], f"{lines[-1]} ..."]
    return [*lines, document(about, indent + "    ")]


def document(text: str, indent: str) -> str:
    held = re.sub(r'"(?="|$)', r'\\"', text.replace("\\", "\\\\"))
    return "\n".join(f"{indent}{line}".rstrip() for line in f'"""{held}"""'.splitlines())


def write(file: Path, text: str) -> None:
    """Whole, and in place of whatever was there: an older build left links into the sources."""
    file.parent.mkdir(exist_ok=True)
    draft = file.with_suffix(".draft")
    draft.write_text(text, encoding="utf-8")
    draft.replace(file)


def is_public(name: str, value: object) -> bool:
    return not (name.startswith("_") or isinstance(value, ModuleType))


def modules(top: ModuleType) -> Iterator[ModuleType]:
    yield top
    for value in list(vars(top).values()):
        if isinstance(value, ModuleType):
            yield from modules(value)


def choices_of(found: list[ModuleType]) -> dict[str, str]:
    """The module of each enumeration by its name, by which alone signatures call it."""
    choices: dict[str, str] = {}
    for module in found:
        for name, value in vars(module).items():
            if hasattr(value, "__members__"):
                if name in choices:
                    sys.exit(f"{module.__name__}: {name}: {choices[name]} has an enumeration of that name")
                choices[name] = module.__name__
    return choices


def classes_of(found: list[ModuleType]) -> set[str]:
    return {
        f"{module.__name__}.{name}"
        for module in found
        for name, value in vars(module).items()
        if isinstance(value, type)
    }


def main(package: Path) -> None:
    sys.path.insert(0, str(package))
    names = sys.modules["spotblue._names"] = ModuleType("_names")  # which is made here
    vars(names)["KERNEL"] = ()
    tops = [importlib.import_module(f"spotblue.{name}") for name in ("_numbers", "_kernel")]
    found = [one for top in tops for one in modules(top)]
    choices, classes = choices_of(found), classes_of(found)
    for module in found:
        _, top, *last = module.__name__.split(".")
        file = package / "spotblue" / top / f"{'.'.join(last) or '__init__'}.pyi"
        write(file, Stub(module, choices, classes).text())
    rows = "".join(f'    "{one}",\n' for one, value in vars(tops[1]).items() if is_public(one, value))
    text = f'"""The names of _kernel, for who does not load it."""\n\nKERNEL = (\n{rows})\n'
    write(package / "spotblue" / "_names.py", text)


if __name__ == "__main__":
    main(Path(sys.argv[1]))
