"""Open CASCADE's own files, of the demo and on a shelf, tell what their STEP file tells."""

from __future__ import annotations

import json
import os
import shutil
import subprocess
import tempfile
import unittest
from pathlib import Path
from typing import Any

import demo
import spotblue

PLAN = "ink-disc-plan-b"


def own_file(step: Path, out: Path) -> Path:
    subprocess.run([os.environ["SPOTBLUE_OWN_FILES"], step, out], check=True)
    return out


def by_size(look: spotblue.Look) -> dict[str, Any]:
    """What a look tells, features by size and place: the reader that made the document drops names."""
    names = {
        f"{product.id}: {feature.name}": f"{product.id}: {feature.sized_name}"
        for product in look.model.products
        for features in (product.cylinders, product.cones, product.planes, product.widths)
        for feature in features
    }

    def renamed(value: Any) -> Any:
        if isinstance(value, dict):
            return {key: renamed(item) for key, item in value.items()}
        if isinstance(value, list):
            return [renamed(item) for item in value]
        return names.get(value, value) if isinstance(value, str) else value

    return {key: renamed(value) for key, value in json.loads(look.to_json()).items()}


class OwnFilesTest(unittest.TestCase):
    folder: Path
    document: Path
    shapes: Path

    @classmethod
    def setUpClass(cls) -> None:
        folder = tempfile.TemporaryDirectory()
        cls.addClassCleanup(folder.cleanup)
        cls.folder = Path(folder.name)
        cls.document = own_file(demo.step(PLAN), cls.folder / "plan.xbf")
        cls.shapes = own_file(demo.step(PLAN), cls.folder / "plan.brep")

    def test_a_document_tells_what_its_step_file_tells(self) -> None:
        seen, step = spotblue.look(self.document), spotblue.look(demo.step(PLAN))
        self.assertEqual(seen.model.file.protocol, "xbf")
        ours, theirs = by_size(seen), by_size(step)
        for key, rows in theirs.items():
            if key.endswith(("_seats", "fouls", "threads")):
                self.assertEqual(ours[key], rows, key)

    def test_shapes_have_the_same_seats_by_their_numbers(self) -> None:
        self.assertEqual(spotblue.read(self.shapes).file.protocol, "brep")
        looks = (spotblue.look(self.shapes), spotblue.look(demo.step(PLAN)))
        found = [
            sorted((round(seat.clearance_mm, 6), round(seat.engaged_mm, 6)) for seat in seats)
            for seats in (look.seats.radial for look in looks)
        ]
        self.assertEqual(*found)
        self.assertGreater(len(found[0]), 0)

    def test_a_document_alone_is_checked_by_what_it_states(self) -> None:
        self.assertTrue(spotblue.is_model_file(self.document))
        judged, step = spotblue.check(self.document), spotblue.check(demo.step(PLAN))
        self.assertEqual(judged.outcomes, step.outcomes)

    def test_a_damaged_document_is_an_error_that_names_it(self) -> None:
        cut = self.folder / "cut.xbf"
        cut.write_bytes(self.document.read_bytes()[:5000])
        with self.assertRaises(spotblue.UnreadableError) as refused:
            spotblue.read(cut)
        self.assertEqual(refused.exception.file, str(cut))

    def test_a_shelf_takes_them_beside_step(self) -> None:
        shelf = self.folder / "shelf"
        shelf.mkdir()
        for file in (demo.step(PLAN), self.document, self.shapes):
            shutil.copy(file, shelf)
        damaged = shelf / "damaged.brep"
        damaged.write_bytes(self.shapes.read_bytes()[:5000])
        done = subprocess.run(
            [demo.PROGRAM, "library", shelf, "--json", self.folder / "rows.json"],
            capture_output=True, text=True, check=False)  # fmt: skip
        self.assertEqual(done.returncode, 1, done.stderr)
        rows = json.loads((self.folder / "rows.json").read_text())["rows"]
        found: dict[str, list[tuple[str, str]]] = {}
        for row in rows:
            found.setdefault(row["file"], []).append((row["kind"], row["outcome"]))
        self.assertEqual({outcome for _, outcome in found.pop("damaged.brep")}, {"nonconforming"})
        step = found.pop(f"{PLAN}.step")
        self.assertGreater(len(step), 1)
        self.assertEqual(found, {"plan.xbf": step, "plan.brep": step})


if __name__ == "__main__":
    unittest.main()
