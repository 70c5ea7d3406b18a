"""Tables and rules of the standards: fits, general tolerances, keys, threads, materials.

Lengths are mm; values of the tables are typical and printed: where work can hurt someone, use the
licensed standard, the drawing and a certificate.
"""

from spotblue._numbers.standards import *  # noqa: F403

__all__ = [name for name in dir() if not name.startswith("_")]
