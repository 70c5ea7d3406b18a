"""Classes of tolerance as claims and questions write them: sizes, clearances, and whose they are."""

from __future__ import annotations

import spotblue
from spotblue import standards
from spotblue.errors import BadInputError


def is_of_both(text: str) -> bool:
    """Whether it is a class of ANSI B4.1, which says hole and shaft at once: "RC4"."""
    return standards.has_b4_1_letters(text) and "/" not in text


def size_limits(nominal_mm: float, text: str, *, hole: bool) -> tuple[float, float]:
    """Limits of an ISO 286 class, or of one side of an ANSI B4.1 fit; mm."""
    if is_of_both(text):
        fit = standards.b4_1_fit(nominal_mm, text)
        limits = fit.hole if hole else fit.shaft
    else:
        limits = standards.limits(nominal_mm, text)
    return limits.lower_mm, limits.upper_mm


def fit_clearance(nominal_mm: float, text: str) -> tuple[float, float]:
    """Least and greatest clearance of "H7/g6" or "RC4"; mm, negative is interference."""
    of_class = standards.b4_1_fit if is_of_both(text) else standards.fit
    fit = of_class(nominal_mm, text)
    return fit.least_clearance_mm, fit.greatest_clearance_mm


def class_fit(text: str, nominal_mm: float | None) -> spotblue.ClassFit:
    """The rule of a fit by its class; without a nominal that of the features."""
    system = spotblue.FitSystem.ANSI_B4_1 if is_of_both(text) else spotblue.FitSystem.ISO_286
    return spotblue.ClassFit(system=system, text=text, nominal_mm=nominal_mm)


def refuse_other_side(tolerance_class: str, *, hole: bool, what: str) -> None:
    """BadInputError for a shaft's class of ISO 286 on a hole, or a hole's on a shaft."""
    if is_of_both(tolerance_class):
        return
    side, other = ("hole", "shaft") if hole else ("shaft", "hole")
    if standards.size_kind(tolerance_class) == side:
        return
    own = tolerance_class.upper() if hole else tolerance_class.lower()
    rule = f"{tolerance_class} is a {other}'s class, and {what} is a {side}"
    cure = f"write a {side}'s, like {own}, or name the {other}"
    if what == f"a {side}":
        rule = f"{tolerance_class} is a {other}'s class and says nothing of a {side}"
    raise BadInputError(f"{rule}; {cure}", rule=rule, cure=cure)
