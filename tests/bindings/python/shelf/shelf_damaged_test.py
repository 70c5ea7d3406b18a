"""A damaged database: nothing wrong is believed, what is sound survives. A read-only one: it is shown."""

from __future__ import annotations

import logging
import os
import random
import sqlite3
import tempfile
import unittest
from collections.abc import Iterator
from contextlib import closing, contextmanager
from pathlib import Path

import spotblue
from spotblue.shelf.claim import Examined, Row
from spotblue.shelf.salvage import sound_rows
from spotblue.shelf.store import Key, Stamp, Store

RESULTS = 60
FLIPS = int(os.environ.get("SPOTBLUE_SHELF_FLIPS", "60"))
NOBODY = 65534


def written() -> dict[Key, list[Row]]:
    """Results of every length: some with pages of their own, as a file with many claims has."""
    return {
        (f"{number:064x}", "r" * 64): [
            Row("size", "conforming", f"{number} H7", "x" * (number**2 * 7), 0.001 * number, claim=0)
        ]
        for number in range(RESULTS)
    }


def features(number: int) -> list[dict[str, object]]:
    return [
        {"id": f"bore {each}", "part": "", "word": "bore", "size_mm": each + 0.5 * (number % 2), "at": (0, 0, 0),
         "along": (0, 0, 1), "ends": (0, 9), "coverage_deg": 360.0}
        for each in range(number % 4)
    ]  # fmt: skip


class InAFolder(unittest.TestCase):
    def setUp(self) -> None:
        folder = tempfile.TemporaryDirectory()
        self.addCleanup(folder.cleanup)
        self.folder = Path(folder.name)
        self.folder.chmod(0o755)
        self.path = self.folder / "shelf.db"
        self.salvaged = self.folder / "shelf.salvaged.db"
        self.results = written()
        store = Store(self.path, "1")
        store.keep_stamps({"a.step": Stamp(1, 2, 3, 4, "a")})
        store.keep([(key, self.examined(key, rows)) for key, rows in self.results.items()])
        store.close()

    @staticmethod
    def examined(key: Key, rows: list[Row]) -> Examined:
        return Examined(key[0], rows, features(int(key[0], 16)), seconds=float(len(rows)))

    def read(self, path: Path) -> dict[Key, list[Row]]:
        store = Store(path, "1")
        self.addCleanup(store.close)
        return store.results()

    def refused(self) -> str:
        with self.assertRaises(spotblue.FileAccessError) as caught:
            self.read(self.path)
        said = str(caught.exception)
        self.assertNotIn("\n", said)
        self.assertIn(str(self.path), said)
        return said

    @contextmanager
    def changed(self) -> Iterator[sqlite3.Connection]:
        with closing(sqlite3.connect(self.path)) as base, base:
            yield base

    def told_anew(self, number: int) -> dict[Key, list[Row]]:
        with self.assertLogs("spotblue.shelf", "WARNING") as told:
            found = self.read(self.path)
        self.assertEqual(len(told.output), 1)
        self.assertIn(f"{number} damaged rows are not believed", told.output[0])
        with self.assertNoLogs("spotblue.shelf"):
            self.assertEqual(self.read(self.path), found)
        return found


class Damaged(InAFolder):
    def test_a_sound_one_says_nothing(self) -> None:
        with self.assertNoLogs("spotblue.shelf"):
            self.assertEqual(self.read(self.path), self.results)

    def test_a_row_that_is_not_as_it_was_written_is_worked_out_anew(self) -> None:
        key = next(iter(self.results))
        for change in (
            "rows=replace(rows, 'conforming', 'nonconforming')", "seconds=9", "rules='other'",
            "version='other'", "features=7", "rows=CAST(x'FF' AS TEXT)",
        ):  # fmt: skip
            with self.subTest(change=change):
                with self.changed() as base:
                    base.execute(f"UPDATE result SET {change} WHERE sha256=?", (key[0],))
                self.assertEqual(self.told_anew(1), {k: v for k, v in self.results.items() if k != key})
                store = Store(self.path, "1")
                self.assertEqual(store.lease([key], 60.0), {key})
                store.keep([(key, self.examined(key, self.results[key]))])
                store.close()
                self.assertEqual(self.read(self.path), self.results)

    def test_a_result_that_has_lost_a_feature_is_worked_out_anew(self) -> None:
        key = list(self.results)[3]
        for change, rows in (("DELETE FROM feature", 1), ("UPDATE feature SET size_mm=77", 2)):
            with self.changed() as base:
                base.execute(f"{change} WHERE sha256=? AND id='bore 1'", (key[0],))
            self.assertNotIn(key, self.told_anew(rows))
            store = Store(self.path, "1")
            store.keep([(key, self.examined(key, self.results[key]))])
            self.assertEqual(len(store.features_of(key[0])), 3)
            store.close()

    def test_a_stamp_and_a_lease_that_are_not_as_written_are_gone(self) -> None:
        store = Store(self.path, "1")
        store.lease([("f" * 64, "r")], 1e6)
        store.base.close()
        with self.changed() as base:
            base.execute("UPDATE file SET sha256='b'")
            base.execute("UPDATE lease SET owner='no list'")
        self.assertEqual(self.told_anew(2), self.results)

    def test_flipped_bits_make_nothing_wrong_and_lose_little(self) -> None:
        whole = self.path.read_bytes()
        chance = random.Random(11)
        lines, ends = 0, [0, 0]
        for _ in range(FLIPS):
            data = bytearray(whole)
            for _ in range(chance.choice((1, 1, 3))):
                data[chance.randrange(len(data))] ^= 1 << chance.randrange(8)
            for path in (*self.folder.glob("shelf.db-*"), *self.folder.glob("shelf.salvaged*")):
                path.unlink()
            self.path.write_bytes(data)
            try:
                with self.assertLogs("spotblue.shelf", "WARNING") as told:
                    found = self.read(self.path)
                    logging.getLogger("spotblue.shelf").warning("or else it would be missed")
                lines += len(told.records) - 1
                ends[0] += 1
            except spotblue.FileAccessError as error:
                self.assertNotIn("\n", str(error))
                self.assertIn("sound results are in shelf.salvaged.db", str(error))
                found = self.read(self.salvaged)
                ends[1] += 1
            self.assertLessEqual(found.items(), self.results.items())
            self.assertGreaterEqual(len(found), RESULTS - 10)
        self.assertGreater(min(ends), 0, ends)
        self.assertGreater(lines, 0)

    def test_without_its_head_all_rows_survive_beside_it(self) -> None:
        data = self.path.read_bytes()
        self.path.write_bytes(bytes(4096) + data[4096:])
        said = self.refused()
        self.assertIn(f"its {RESULTS} sound results are in shelf.salvaged.db: name that one", said)
        self.assertEqual(self.read(self.salvaged), self.results)
        self.assertEqual(self.path.read_bytes()[4096:], data[4096:])
        self.assertEqual(self.refused(), said)  # and again the same

    def test_what_is_salvaged_has_features_and_stamps_too(self) -> None:
        with self.path.open("r+b") as stream:
            stream.write(b"no head of a database")
        self.refused()
        store = Store(self.salvaged, "1")
        self.addCleanup(store.close)
        self.assertEqual(store.stamps(), {"a.step": Stamp(1, 2, 3, 4, "a")})
        for key in self.results:
            self.assertEqual(len(store.features_of(key[0])), len(features(int(key[0], 16))))

    def test_a_torn_one_is_told_and_what_is_left_survives(self) -> None:
        data = self.path.read_bytes()
        for share in (0.3, 0.7, 0.95):
            for path in self.folder.glob("shelf.salvaged*"):
                path.unlink()
            self.path.write_bytes(data[: int(len(data) * share)])
            self.refused()
            found = self.read(self.salvaged)
            self.assertGreater(len(found), 0)
            self.assertLessEqual(found.items(), self.results.items())

    def test_what_is_only_in_the_log_survives_too(self) -> None:
        store = Store(self.path, "1")
        self.addCleanup(store.close)
        key = ("e" * 64, "r")
        store.keep([(key, Examined(key[0], [Row("size", "conforming", found="y" * 20_000)]))])
        copy = self.folder / "copy.db"
        copy.write_bytes(bytes(100) + self.path.read_bytes()[100:])
        Path(f"{copy}-wal").write_bytes(Path(f"{self.path}-wal").read_bytes())
        found = sound_rows(copy)["result"]
        self.assertIn(key, [(row[0], row[1]) for row in found])
        self.assertEqual(len(found), RESULTS + 1)

    def test_a_pipe_and_a_folder_have_no_rows_and_are_not_waited_for(self) -> None:
        pipe = self.folder / "pipe"
        os.mkfifo(pipe)
        for place in (pipe, self.folder, Path("/dev/null")):
            self.assertEqual(sound_rows(place)["result"], [])

    def test_pages_of_noise_are_no_rows_and_end(self) -> None:
        chance = random.Random(3)
        for _ in range(50):
            page = bytearray(b"\x0d\x00\x00\x00\xff\x00\x00\x00" + chance.randbytes(4088))
            self.path.write_bytes(bytes(4096) + bytes(page) * 3)
            self.assertEqual(sound_rows(self.path), {"file": [], "result": [], "feature": []})

    def test_another_format_is_told_with_both_numbers(self) -> None:
        for number in (1, 3):
            path = self.folder / f"format{number}.db"
            with closing(sqlite3.connect(path)) as base, base:
                base.execute("PRAGMA application_id=1527451662")
                base.execute(f"PRAGMA user_version={number}")
                base.execute("CREATE TABLE result (rows TEXT)")
            with self.assertRaisesRegex(
                spotblue.FileAccessError, f"has format {number} of another spotblue, this has 2; "
            ):
                Store(path, "1")

    def test_a_table_that_is_another_is_damage(self) -> None:
        with self.changed() as base:
            base.execute("ALTER TABLE result RENAME COLUMN rows TO rowz")
        self.assertIn("its tables are not those that were made; its 60 sound results", self.refused())


@unittest.skipIf(os.geteuid() != 0, "only root can become somebody else")
class ReadOnly(InAFolder):
    @contextmanager
    def as_nobody(self) -> Iterator[None]:
        os.seteuid(NOBODY)
        try:
            yield
        finally:
            os.seteuid(0)

    def shown(self) -> None:
        before = {path.name: path.read_bytes() for path in self.folder.iterdir()}
        key = ("d" * 64, "r")
        with self.as_nobody(), self.assertLogs("spotblue.shelf", "WARNING") as told:
            store = Store(self.path, "1")
            self.assertEqual(store.results(), self.results)
            self.assertEqual(store.lease([key], 60.0), {key})
            store.keep([(key, Examined(key[0], [Row("size", "conforming")]))])
            self.assertIn(key, store.results())
            store.close()
        self.assertEqual(len(told.output), 1)
        self.assertIn("it may only be read, so nothing new is kept", told.output[0])
        after = {path.name: path.read_bytes() for path in self.folder.iterdir()}
        self.assertLessEqual(before.items(), after.items())

    def test_a_file_in_a_folder_that_may_only_be_read(self) -> None:
        self.shown()

    def test_a_file_that_may_only_be_read(self) -> None:
        self.folder.chmod(0o777)
        self.path.chmod(0o444)
        self.shown()

    def test_one_that_a_killed_run_has_left_with_a_log(self) -> None:
        store = Store(self.path, "1")
        key = ("c" * 64, "r")
        store.keep([(key, Examined(key[0], [Row("size", "conforming")]))])
        data, log = self.path.read_bytes(), Path(f"{self.path}-wal").read_bytes()
        store.close()
        self.path.write_bytes(data)
        Path(f"{self.path}-wal").write_bytes(log)
        self.results[key] = [Row("size", "conforming")]
        self.shown()

    def test_which_says_nothing_of_it(self) -> None:
        with self.as_nobody(), self.assertNoLogs("spotblue.shelf"):
            store = Store(self.path, "1", filled=True)
            self.assertGreater(len(store.features_of(f"{3:064x}")), 0)
            store.close()

    def test_a_damaged_one_is_one_line(self) -> None:
        self.path.write_bytes(self.path.read_bytes()[:50_000])
        with self.as_nobody():
            self.assertIn("malformed", self.refused())


if __name__ == "__main__":
    unittest.main()
