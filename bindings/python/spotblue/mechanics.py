"""Mechanics of machine parts: press fits, bearings, shafts, gears, stacks and making to suit.

Elastic theory of textbooks in mm, N, MPa and degrees C: to compare and to warn, not to prove
strength.
"""

from spotblue._numbers.mechanics import *  # noqa: F403

__all__ = [name for name in dir() if not name.startswith("_")]
