"""`python3 -m spotblue.shelf library ...` and `... which ...`, as the program's verbs call them."""

import sys

from spotblue.shelf.command import main

sys.exit(main(sys.argv[1:]))
