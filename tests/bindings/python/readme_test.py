"""The READMEs' Python examples print what the README says they print."""

from __future__ import annotations

import contextlib
import doctest
import unittest

import demo


class ReadmeTest(unittest.TestCase):
    def test_every_example_prints_what_stands_beneath_it(self) -> None:
        for plan in "abc":
            demo.step(f"ink-disc-plan-{plan}")
        for name in ("README.md", "bindings/python/README.md"):
            with self.subTest(name=name), contextlib.chdir(demo.folder().parent):
                readme = demo.SOURCE / name
                examples = doctest.DocTestParser().get_doctest(
                    readme.read_text(encoding="utf-8"), {}, name, str(readme), 0
                )
                self.assertGreater(len(examples.examples), 0)
                said: list[str] = []
                result = doctest.DocTestRunner(verbose=False).run(examples, out=said.append)
                self.assertEqual(result.failed, 0, "".join(said))


if __name__ == "__main__":
    unittest.main()
