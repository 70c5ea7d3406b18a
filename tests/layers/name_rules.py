"""Names of functions that two sources of one folder give in their unnamed namespaces.

Sources of one library are compiled several together (CMake's unity build), so that the call of one
finds the function of the other where it fits better, and nobody is told.
"""

import re
from collections import defaultdict

UNNAMED = re.compile(r"^namespace \{$(.*?)^\}  // namespace$", re.MULTILINE | re.DOTALL)
DEFINED = re.compile(r"^(?:static |inline |constexpr |template <[^>]*> )*[A-Za-z_][\w:<>,&* ]*?[ &*](\w+)\(")
NO_FUNCTION = ("class ", "struct ", "enum ", "using ", "return ", "namespace ")


def unnamed_functions(text):
    """Free functions that a source defines for itself alone."""
    found = set()
    for block in UNNAMED.findall(text):
        for line in block.split("\n"):
            match = DEFINED.match(line)
            if match and not line.startswith(NO_FUNCTION):
                found.add(match[1])
    return found


def shared_names(texts):
    """Of sources by path, those of one folder that give one name to two functions."""
    seen = defaultdict(list)
    for path, text in texts:
        for name in unnamed_functions(text):
            seen[path.parent, name].append(path.name)
    return [f"{folder}: {' and '.join(files)} both define {name} for themselves"
            for (folder, name), files in sorted(seen.items()) if len(files) > 1]
