"""The rooms of the kernel's layers, read off their CMakeLists.txt, and who may include whom there."""

import re
from dataclasses import dataclass, field

from include_rules import PUBLIC, includes

CALL = re.compile(r"^spotblue_room\((\w+) (\w+)([^)]*)\)", re.MULTILINE)
MOST_FILES = 34


@dataclass
class Room:
    """One room as its layer's CMakeLists.txt declares it."""

    layer: str
    name: str
    occt: bool = False
    uses: list[str] = field(default_factory=list)
    sources: list[str] = field(default_factory=list)
    headers: list[str] = field(default_factory=list)


def rooms_in(text):
    """The rooms in the order in which they are written."""
    found = []
    for layer, name, rest in CALL.findall(text):
        room = Room(layer, name)
        lists = {"USES": room.uses, "SOURCES": room.sources, "HEADERS": room.headers,
                 "LIBRARIES": []}
        current = None
        for word in rest.split():
            if word == "OCCT":
                room.occt = True
            elif word in lists:
                current = lists[word]
            else:
                current.append(word)
        found.append(room)
    return found


def order_problems(rooms):
    """Rooms that use what does not stand above them."""
    found, above = [], set()
    for room in rooms:
        found += [f"{room.layer}/{room.name} uses {other}, which does not stand above it"
                  for other in room.uses if other not in above]
        above.add(room.name)
    return found


def room_of(name, layer, rooms):
    """The room of an included header, private or public; None for one of another layer."""
    parts = name.split("/")
    if parts[0] == layer and len(parts) == 3:
        return parts[1]
    if parts[:2] == ["spotblue", layer] and len(parts) == 3:
        return next((room.name for room in rooms if parts[2] in room.headers), None)
    return None


def include_problems(path, text, room, rooms):
    """What a source or header of a room includes against the rooms' order, or of Open CASCADE."""
    found = []
    for name, _ in includes(text):
        other = room_of(name, room.layer, rooms)
        if other and other != room.name and other not in room.uses:
            found.append(f"{path}: {room.layer}/{room.name} does not use {other}, yet includes {name}")
        if name.endswith(".hxx") and not room.occt:
            found.append(f"{path}: {room.layer}/{room.name} does without Open CASCADE, yet includes {name}")
    return found


def unused(layer_folder, public, room, rooms):
    """Rooms that a room says it uses and does not."""
    files = [*sorted((layer_folder / room.name).iterdir()), *(public / name for name in room.headers)]
    used = {room_of(name, room.layer, rooms) for path in files for name, _ in includes(path.read_text())}
    return [f"{room.layer}/{room.name} says that it uses {other}, and does not"
            for other in room.uses if other not in used]


def layer_problems(top, layer):
    folder = top / "kernel" / layer
    rooms = rooms_in((folder / "CMakeLists.txt").read_text())
    found = order_problems(rooms)
    by_name = {room.name: room for room in rooms}
    public = top / PUBLIC / layer
    for place in sorted(folder.iterdir()):
        if place.is_dir() and place.name not in by_name:
            found.append(f"{place.relative_to(top)} is no room of {layer}'s CMakeLists.txt")
    for room in rooms:
        for path in sorted((folder / room.name).iterdir()):
            found += include_problems(path.relative_to(top), path.read_text(), room, rooms)
            if path.suffix == ".cpp" and path.name not in room.sources:
                found.append(f"{path.relative_to(top)}: not in {layer}'s CMakeLists.txt")
        for name in room.headers:
            found += include_problems((public / name).relative_to(top), (public / name).read_text(),
                                      room, rooms)
        found += unused(folder, public, room, rooms)
    if rooms:
        of_rooms = {name for room in rooms for name in room.headers}
        found += [f"{path.relative_to(top)}: the header of no room"
                  for path in sorted(public.glob("*.hpp")) if path.name not in of_rooms]
    return found


def crowded(top, folders):
    """Folders with more sources than a person finds their way in."""
    found = []
    for start in folders:
        for folder in sorted([top / start, *(top / start).rglob("*")]):
            if folder.is_dir():
                count = sum(path.suffix in (".cpp", ".hpp", ".py") for path in folder.iterdir())
                if count > MOST_FILES:
                    found.append(f"{folder.relative_to(top)}: {count} sources, more than {MOST_FILES}")
    return found


def drawn(rooms):
    """A line a room: its name, whether it sees Open CASCADE, and what it uses."""
    return [f"{room.name:<12}{'Open CASCADE' if room.occt else '':<14}{' '.join(room.uses)}".rstrip()
            for room in rooms]
