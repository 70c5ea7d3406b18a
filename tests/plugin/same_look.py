"""Says whether two looks have the same parts, places and seats: of a document and of its file."""

from __future__ import annotations

import json
import sys
from pathlib import Path
from typing import Any

TOLERANCE_MM = 1e-7  # the document's shapes were healed by Open CASCADE's reader, the file's were not


def places(look: dict[str, Any]) -> list[tuple[str, str]]:
    return sorted((one["path"], one["product"]) for one in look["occurrences"])


def features(look: dict[str, Any]) -> list[str]:
    return sorted(one["id"] for part in look["products"] for one in part["features"])


def seats(look: dict[str, Any], kind: str) -> list[tuple[str, ...]]:
    ends = {"radial_seats": ("hole", "shaft"), "axial_seats": ("a", "b"),
            "taper_seats": ("hole", "shaft"), "width_seats": ("slot", "key"),
            "threads": ("hole", "screw")}[kind]
    found = []
    for seat in look.get(kind, []):
        # The order of two faces that look at each other is that of the parts.
        pair = [f"{seat[end]['occurrence']}: {seat[end]['feature']}" for end in ends]
        found.append((tuple(sorted(pair)), {k: v for k, v in seat.items() if k.endswith("_mm")}))
    return sorted(found, key=lambda one: (one[0], sorted(one[1].items())))


def main() -> int:
    document, file = (json.loads(Path(name).read_text(encoding="utf-8")) for name in sys.argv[1:3])
    compared = 0
    for what, of in (("places", places), ("features", features)):
        if of(document) != of(file):
            print(what, "differ:", set(map(str, of(document))) ^ set(map(str, of(file))))
            return 0
        compared += len(of(file))
    for kind in ("radial_seats", "axial_seats", "taper_seats", "width_seats", "threads"):
        ours, theirs = seats(document, kind), seats(file, kind)
        if [one[0] for one in ours] != [one[0] for one in theirs]:
            print(kind, "differ:", {one[0] for one in ours} ^ {one[0] for one in theirs})
            return 0
        for (pair, mine), (_, his) in zip(ours, theirs):
            for key, value in his.items():
                if abs(mine.get(key, float("inf")) - value) > TOLERANCE_MM:
                    print(kind, pair, key, mine.get(key), value)
                    return 0
        compared += len(ours)
    fouls = [sorted((c["a"]["occurrence"], c["b"]["occurrence"]) for c in look["fouls"])
               for look in (document, file)]
    if fouls[0] != fouls[1]:
        print("fouls differ:", *fouls)
        return 0
    print("same:", compared, "places, features and seats")
    return 0


if __name__ == "__main__":
    sys.exit(main())
