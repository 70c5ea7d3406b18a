"""The rules of who may include whom, read off the #include lines of the sources."""

import re
from pathlib import Path

LAYERS = ["base", "standards", "mechanics", "geometry", "job", "group", "check", "report"]
INCLUDE = re.compile(r'^[ \t]*#[ \t]*include[ \t]*([<"])([^>"]+)[>"]', re.MULTILINE)
PUBLIC = Path("kernel/include/spotblue")


def includes(text):
    """(name, quoted) of each #include line."""
    return [(name, bracket == '"') for bracket, name in INCLUDE.findall(text)]


def layer_of(name):
    """Layer an included name belongs to, public or private header; None for anything else."""
    parts = name.removeprefix("spotblue/").split("/")
    return parts[0] if len(parts) > 1 and parts[0] in LAYERS else None


def place_of(path):
    """(layer, public) of a kernel source, given relative to the top."""
    public = path.is_relative_to(PUBLIC)
    layer = path.parts[3 if public else 1]
    return layer, public


def is_standard(name, quoted):
    return not quoted and re.fullmatch(r"[a-z_0-9]+", name) is not None


def kernel_problems(path, text):
    layer, public = place_of(path)
    found = []
    for name, quoted in includes(text):
        other = layer_of(name)
        if other and LAYERS.index(other) > LAYERS.index(layer):
            found.append(f"{path}: {layer} comes before {other}, yet includes {name}")
        if name.endswith(".hxx") and (public or layer != "geometry"):
            found.append(f"{path}: {name} is Open CASCADE's and belongs in kernel/geometry's sources")
        elif public and not is_standard(name, quoted) and not name.startswith("spotblue/"):
            found.append(f"{path}: a public header includes only std and spotblue/, not {name}")
    return found


def private_names(text):
    return [name for name, quoted in includes(text)
            if quoted and layer_of(name) and not name.startswith("spotblue/")]


PLUGINS_TOO = ("base/error_kinds.hpp", "geometry/occt/occt_silence.hpp",
               "geometry/occt/occt_values.hpp", "geometry/occt/occt_versions.hpp",
               "geometry/part21/step_letters.hpp")


def plugin_problems(path, text):
    """The plug-in stands on the public headers, on Open CASCADE, and on what is wrong with that."""
    return [f"{path}: {name} is private to the kernel" for name in private_names(text)
            if name not in PLUGINS_TOO]


def outside_problems(path, text):
    """Bindings stand on the public headers alone."""
    found = [f"{path}: {name} is private to the kernel" for name in private_names(text)]
    for name, _ in includes(text):
        if name.endswith(".hxx"):
            found.append(f"{path}: {name} is Open CASCADE's and belongs in kernel/geometry's sources")
    return found


def unlisted_headers(top):
    """Public headers that no CMakeLists.txt installs."""
    found = []
    for header in sorted((top / PUBLIC).rglob("*.hpp")):
        layer = header.relative_to(top / PUBLIC).parts[0]
        listing = top / "kernel" / layer / "CMakeLists.txt"
        if header.name not in listing.read_text().split("HEADERS", 1)[-1]:
            found.append(f"{header.relative_to(top)}: not in {listing.relative_to(top)}")
    return found


# Sources of one header, each for a part of what it declares.
OF_ONE_HEADER = {"report": ("json_findings", "json_model", "json_seats")}


def without_own_header(files):
    """Sources of the kernel that no header of their own stem declares."""
    headers = {path.stem for path in files if path.suffix == ".hpp"}
    return [f"{path}: there is no {path.stem}.hpp" for path in files
            if path.suffix == ".cpp" and path.stem not in headers
            and path.stem not in OF_ONE_HEADER.get(path.parts[1], ())]


def bare_names(top):
    """Quoted includes without the path from the component that holds the header."""
    return [f"{path}: {name} is included without its path"
            for folder in ("kernel", "bindings", "plugin", "tests")
            for path, text in sources(top, folder)
            for name, quoted in includes(text) if quoted and "/" not in name]


def bare_tolerances(path, text):
    """Small numbers of kernel/geometry that no name says the reason of."""
    code = re.sub(r"//.*|\"(?:[^\"\\]|\\.)*\"", "", text)
    code = re.sub(r"\bconstexpr\b[^;]*;", "", code)
    return [f"{path}: {number} has no name: see geometry/model/tolerances.hpp"
            for number in re.findall(r"(?<![\w.])[\d.]+e-\d+", code)]


def versions_asked_for(top):
    """Sources that ask for the version of Open CASCADE, and tests that name its toolkits."""
    found = []
    for folder in ("kernel", "plugin", "bindings", "tests"):
        for path, text in sources(top, folder):
            if re.search(r"#.*\bOCC_VERSION_(HEX|MAJOR|MINOR)", text) and path.name != "occt_versions.hpp":
                found.append(f"{path}: differences of versions belong in geometry/occt_versions.hpp")
    for path in sorted((top / "tests").rglob("CMakeLists.txt")):
        if re.search(r"\bTK[A-Z]\w+", path.read_text()):
            found.append(f"{path.relative_to(top)}: toolkits are named in geometry/occt_toolkits.cmake")
    return found


def sources(top, folder):
    for path in sorted((top / folder).rglob("*")):
        if path.suffix in (".hpp", ".cpp"):
            yield path.relative_to(top), path.read_text()


def problems(top):
    found = []
    for path, text in sources(top, "kernel"):
        found += kernel_problems(path, text)
        if path.is_relative_to("kernel/geometry"):
            found += bare_tolerances(path, text)
    for path, text in sources(top, "bindings"):
        found += outside_problems(path, text)
    for path, text in sources(top, "plugin"):
        found += plugin_problems(path, text)
    found += without_own_header([path for path, _ in sources(top, "kernel")])
    return found + unlisted_headers(top) + bare_names(top) + versions_asked_for(top)
