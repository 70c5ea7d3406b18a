"""Numbers and findings of the kernel as one line of text."""

from __future__ import annotations

from typing import Any


def number_text(value: float) -> str:
    """With at most four decimals, and none that say nothing."""
    text = f"{value:.4f}".rstrip("0").rstrip(".")
    return "0" if text == "-0" else text


def range_text(lower: float, upper: float) -> str:
    """ "44 to 44.025 mm"."""
    return f"{number_text(lower)} to {number_text(upper)} mm"


def same_features(about: list[str], pair: tuple[str, str]) -> bool:
    """Whether a finding is about both features; occurrences may stand before the names."""
    return all(any(text == name or text.endswith("/" + name) for text in about) for name in pair)


def quantities(given: dict[str, Any], wanted: tuple[str, ...] = ()) -> str:
    """A finding's quantities on one line: "clearance 0.02 to 0.05 mm"; those asked for, or all."""
    parts = []
    for key, value in given.items():
        if wanted and not key.startswith(wanted):
            continue
        if key.endswith("_max_mm") and key[:-7] + "_min_mm" in given:
            continue
        if key.endswith("_min_mm") and key[:-7] + "_max_mm" in given:
            parts.append(
                f"{key[:-7].replace('_', ' ')} {range_text(value, given[key[:-7] + '_max_mm'])}"
            )
        elif isinstance(value, float):
            name, _, unit = key.rpartition("_")
            parts.append(f"{name.replace('_', ' ')} {number_text(value)} {unit}")
        else:
            parts.append(str(value))
    return ", ".join(parts)
