#!/usr/bin/python3
"""Runs what README.md, the READMEs beside the code and every --help show, in their order, after
./models/demo, and fails on the first that does not do what is printed.

    tests/readme_commands.py                in a checkout, after ./models/demo
    tests/readme_commands.py --stage DIR --build BUILD
                                            in DIR, on models made there with the program of BUILD
    tests/readme_commands.py --wheel        the wheel by README's own command too

A block of indented lines is commands, Python or Tcl, or else what the commands before it print.
"""

from __future__ import annotations

import argparse
import doctest
import os
import re
import shutil
import subprocess
import sys
import tempfile
from pathlib import Path

TOP = Path(__file__).resolve().parents[1]
READMES = ("README.md", "bindings/python/README.md", "bindings/python/spotblue/shelf/README.md")
ANSWERS = {0, 1, 3}  # what a check may end with; 2 is bad input
COMMAND = re.compile(r"(build/bin/spotblue|PYTHONPATH=) ?")
# Shown for another place: the two commands that come first, what the harness is told, a manifest.
NOT_HERE = re.compile(r"\./models/demo|\./tests/run|cmake --install|source ~|file,feature")


class Wrong(Exception):
    """What is shown does not hold."""


def blocks(text: str) -> list[list[str]]:
    """The indented blocks of a Markdown text, without their indent; an empty line ends one."""
    found: list[list[str]] = [[]]
    for line in text.splitlines():
        if line.startswith("    "):
            found[-1].append(line[4:])
        elif found[-1]:
            found.append([])
    return [block for block in found if block]


def run(command: str, folder: Path, answers: set[int]) -> str:
    print(f"   {command}", flush=True)
    done = subprocess.run(["bash", "-c", command], cwd=folder, capture_output=True, text=True,
                          check=False, env=os.environ | {"PYTHONPATH": str(folder / "build/python")})
    if done.returncode not in answers or "Traceback" in done.stderr:
        raise Wrong(f"{command}\nended with {done.returncode}:\n{done.stdout}{done.stderr}")
    return done.stdout


def words_of(text: str) -> str:
    return " ".join(text.split())


def require_printed(block: list[str], printed: list[str]) -> None:
    """Each line of the block, but for "...", is in what some command printed; columns may shift."""
    lines = {words_of(line) for text in printed for line in text.splitlines()}
    for line in block:
        if words_of(line) not in lines | {"...", ""}:
            raise Wrong(f"nothing prints this line: {line}")


def read_python(name: str, text: str, folder: Path) -> None:
    code = ("import doctest, sys\n"
            "test = doctest.DocTestParser().get_doctest(sys.stdin.read(), {}, 'README', None, 0)\n"
            "sys.exit(doctest.DocTestRunner().run(test).failed != 0)\n")
    done = subprocess.run(["/usr/bin/python3", "-c", code], input=text, cwd=folder, text=True,
                          capture_output=True, check=False,
                          env=os.environ | {"PYTHONPATH": str(folder / "build/python")})
    if done.returncode != 0:
        raise Wrong(f"{name}, Python:\n{done.stdout}{done.stderr}")


def run_readme(name: str, folder: Path) -> None:
    text = (TOP / name).read_text(encoding="utf-8")
    print(f"== {name}")
    printed: list[str] = []
    commands = 0
    for block in blocks(text):
        if NOT_HERE.match(block[0]) or block[0].startswith(">>>"):
            continue
        if COMMAND.match(block[0]):
            printed += [run(command, folder, ANSWERS) for command in block]
            commands += len(block)
        elif block[0].startswith("import "):
            read = "\n".join(block)
            subprocess.run(["/usr/bin/python3", "-c", read], cwd=folder, check=True,
                           stdout=subprocess.DEVNULL,
                           env=os.environ | {"PYTHONPATH": str(folder / "build/python")})
        elif printed:
            require_printed(block, printed)
    if doctest.DocTestParser().get_examples(text):
        print("   its Python examples")
        read_python(name, text, folder)
    elif commands == 0:
        raise Wrong(f"{name} shows no command")


def run_wheel(folder: Path) -> None:
    text = words_of((TOP / "README.md").read_text(encoding="utf-8"))
    found = re.search(r"`(/usr/bin/python3 -m pip wheel [^`]+)`", text)
    if found is None:
        raise Wrong("README.md does not say how the wheel is built")
    with tempfile.TemporaryDirectory() as place:
        run(f"{found[1]} --wheel-dir {place}", folder, {0})
        run(f"/usr/bin/python3 -m pip install --no-deps --target {place}/in {place}/*.whl", folder, {0})
        call = "import spotblue; print(spotblue.look('models/out/ink-disc-plan-b.step'))"
        run(f'PYTHONPATH={place}/in /usr/bin/python3 -c "{call}"', folder, {0})


def prepare_examples(folder: Path, bench: Path) -> None:
    """The files that the examples of --help name."""
    shutil.copy(folder / "models/hand-pump-crank.mockup.toml", bench / "press.toml")
    shutil.copytree(folder / "models/out", bench / "out")
    for plan in "abc":
        shutil.copy(folder / f"models/ink-disc-plan-{plan}.job.toml", bench / f"plan-{plan}.toml")
    shutil.copy(folder / "models/ink-disc-shared.entries.toml", bench)
    (bench / "shelf").mkdir()
    for model in ("hand-pump-crank", "ink-disc-plan-b-mended"):
        shutil.copy(folder / f"models/out/{model}.step", bench / "shelf")


def fill_in(folder: Path, bench: Path) -> None:
    """What the user says in the draft: what each fit is for."""
    job = (folder / "models/hand-pump-crank.job.toml").read_text(encoding="utf-8")
    job = re.sub(r'^model *=.*$', 'model = "press.step"', job, count=1, flags=re.MULTILINE)
    (bench / "press-job.toml").write_text(job, encoding="utf-8")


def run_help(folder: Path) -> None:
    program = folder / "build/bin/spotblue"
    listed = run(f"{program} --help", folder, {0})
    verbs = list(dict.fromkeys(re.findall(r"^  spotblue (\w+) [A-Z]", listed, re.MULTILINE)))
    with tempfile.TemporaryDirectory() as name:
        bench = Path(name)
        prepare_examples(folder, bench)
        ran = 0
        for verb in verbs:
            text = run(f"{program} {verb} --help", folder, {0})
            for line in text.split("Examples:\n", 1)[1].splitlines():
                done = line.strip()
                if done == "spotblue draft press.step --output press-job.toml":
                    (bench / "press-job.toml").unlink(missing_ok=True)
                run(done.replace("spotblue", str(program), 1), bench, ANSWERS)
                if "--output press-job.toml" in done:
                    fill_in(folder, bench)
                ran += 1
        if len(verbs) < 7 or ran < 10:
            raise Wrong(f"only {len(verbs)} verbs and {ran} examples were found")


def make_stage(stage: Path, build: Path) -> None:
    shutil.rmtree(stage, ignore_errors=True)
    (stage / "models/out").mkdir(parents=True)
    (stage / "build").symlink_to(build)
    for file in (TOP / "models").iterdir():
        if file.suffix in (".toml", ".csv"):
            shutil.copy(file, stage / "models")
    for mockup in sorted((stage / "models").glob("*.mockup.toml")):
        out = mockup.name.replace(".mockup.toml", ".step")
        run(f"build/bin/spotblue model models/{mockup.name} models/out/{out}", stage, {0})


def main() -> int:
    parser = argparse.ArgumentParser(description=__doc__)
    parser.add_argument("--stage", type=Path)
    parser.add_argument("--build", type=Path)
    parser.add_argument("--wheel", action="store_true")
    given = parser.parse_args()
    folder = TOP
    try:
        if given.stage is not None:
            folder = given.stage.resolve()
            make_stage(folder, given.build.resolve())
        for name in READMES:
            run_readme(name, folder)
        print("== The examples of every --help")
        run_help(folder)
        if given.wheel:
            print("== The wheel")
            run_wheel(folder)
    except (Wrong, subprocess.CalledProcessError) as error:
        print(f"wrong: {error}", file=sys.stderr)
        return 1
    print("== Every command did what is printed.")
    return 0


if __name__ == "__main__":
    sys.exit(main())
