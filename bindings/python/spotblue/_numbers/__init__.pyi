"""What spotblue knows without CAD; import spotblue.base, standards or mechanics instead."""

from spotblue._numbers import base, mechanics, standards

__all__ = ["base", "mechanics", "standards"]
