"""The verbs `library` and `which`, as the program runs them; what is missing is one line and exit 2."""

import sys


def _main() -> int:
    try:
        if sys.version_info < (3, 11):
            raise ImportError("Python 3.11 or later is needed, this is " + sys.version.split()[0])
        from spotblue.shelf.command import main
    except ImportError as error:
        version = f"{sys.version_info.major}.{sys.version_info.minor}"
        missing = error.name or ""
        if missing.startswith("spotblue") or "spotblue._" in str(error):
            cure = f"build spotblue's Python package for Python {version}, or install it again"
        else:
            cure = f"install it for {sys.executable}"
        said = " ".join(str(error).split())
        sys.stderr.write(f"spotblue: the Python package cannot start: {said}; {cure}\n")
        return 2
    return main(sys.argv[1:])


if __name__ == "__main__":
    sys.exit(_main())
