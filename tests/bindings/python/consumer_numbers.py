"""A user's program, for the type checker: mypy --strict must find nothing, and it must run."""

from __future__ import annotations

from spotblue import base, mechanics, standards


def worst_press(nominal_mm: float, fit_text: str) -> mechanics.PressState:
    """The pressed joint at the greatest interference that the fit allows."""
    fit: standards.Fit = standards.fit(nominal_mm, fit_text)
    steel = standards.find_material("carbon steel A36")
    if steel is None:
        raise LookupError("no such material")
    part = mechanics.elastic_of(steel)
    return mechanics.press_fit(
        mechanics.PressFit(
            joint_mm=nominal_mm,
            interference_mm=max(0.0, -fit.least_clearance_mm),
            hub=part,
            inner=part,
            stretches=[mechanics.PressStretch(length_mm=20.0, hub_outside_mm=2 * nominal_mm)],
        )
    )


def verdict(reading_mm: float, limits: base.Limits) -> str:
    """One word on a measured size."""
    return base.outcome_name(base.judge(reading_mm, 0.002, limits=limits))


def main() -> None:
    utilisation: float | None = worst_press(44.0, "H7/s6").hub.utilisation
    print(utilisation, verdict(44.01, standards.limits(44.0, "H7")))


if __name__ == "__main__":
    main()
