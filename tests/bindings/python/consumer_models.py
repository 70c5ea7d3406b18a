"""A program that uses the models' half of the package; checked by mypy --strict, never run."""

from __future__ import annotations

from pathlib import Path

import spotblue


def tightest(model: Path) -> tuple[str, float]:
    look = spotblue.look(model, accept_partial=True)
    seat = min(look.seats.radial, key=lambda one: one.clearance_mm)
    return look.feature_id(seat.hole), seat.clearance_mm


def worst_margin(job: str) -> dict[str, float | str]:
    result: spotblue.CheckResult = spotblue.check(job)
    bad = [one for one in result.findings if one.outcome == "nonconforming"]
    return bad[0].margin if bad else {}


def bush(bore_mm: float) -> spotblue.Mockup:
    step = spotblue.Step(length_mm=20.0, diameter_mm=bore_mm, end_diameter_mm=bore_mm)
    part = spotblue.MockupPart(name="Bush", shape=spotblue.TurnedPart(outside=[step]))
    return spotblue.Mockup(title="bush", parts=[part])


def with_fit(job: spotblue.Job, hole: str, shaft: str) -> spotblue.Job:
    want = spotblue.FitWant(hole=hole, shaft=shaft, rule=spotblue.ClassFit(text="H7/s6"))
    job.fits = (*job.fits, want)
    job.settings.completeness = spotblue.Completeness.ACCEPT_PARTIAL
    return job


def best(plans: list[Path]) -> int | None:
    comparison = spotblue.compare(plans)
    text: str = comparison.to_text(unit="in")
    return comparison.best if text else None


def clearances(look: spotblue.Look) -> list[float]:
    return [float(value) for value in look.radial_seats_array()["clearance_mm"]]
