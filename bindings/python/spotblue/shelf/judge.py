"""Judging one file by what a manifest claims of it: one look, then one row a claim.

The kernel judges (ISO 14253-1); here a claim's words are matched to features, and what is wrong
with the file itself becomes rows of its own.
"""

from __future__ import annotations

from dataclasses import replace
from itertools import chain
from pathlib import Path

import spotblue
from spotblue import standards
from spotblue._kernel import shelf as kernel
from spotblue.base import likely_word, path_of_shown
from spotblue.shelf.claim import (
    CONFORMING,
    NONCONFORMING,
    UNDECIDED,
    WORST_FIRST,
    Claim,
    Examined,
    Row,
    Task,
    bad_file,
    outcome_of,
    passing,
)
from spotblue.shelf.classes import class_fit, refuse_other_side, size_limits
from spotblue.shelf.content import CHANGED, sha256_of, state_of
from spotblue.shelf.faults import foul_rows, unsound_rows
from spotblue.shelf.features import (
    HOLES,
    SHAFTS,
    Feature,
    Found,
    Named,
    axis_offset,
    features_of,
    find_features,
    parse_name,
)
from spotblue.shelf.materials import material_name, stated_materials
from spotblue.shelf.words import number_text, quantities, range_text, same_features

DECIDES = "ISO 14253-1"
# What these tell of is the disk, a folder for temporary files or a process, and not the file.
OF_THE_MACHINE = (
    spotblue.FileAccessError,
    spotblue.MachineError,
    spotblue.StoppedError,
    spotblue.OpenCascadeError,
)
OF_LOOK = 0.8  # of a file's memory: the worker's own bound is a hard one, and judging takes some
FIT_KEYS = ("fit", "clearance", "offset", "tilt")


def _named(text: str, claim: Claim) -> Named:
    named = parse_name(text, claim.unit)
    if named is None:  # the manifest's reader lets nothing else through
        raise spotblue.BadInputError(f"{text} is no feature's name")
    return named


def _badness(finding: spotblue.Finding) -> int:
    return WORST_FIRST.index(finding.outcome)


class FileJudge:
    """Holds one look and gives its rows; nothing of the file is read twice."""

    def __init__(self, task: Task) -> None:
        self.task = task
        self.look = kernel.look_within(
            path_of_shown(task.path),
            seconds=task.limits.seconds,
            memory_mb=OF_LOOK * task.limits.memory_mb,
            in_child=task.apart,
        )
        self.products = self.look.model.products
        self.features = features_of(self.look)
        self.met: set[str] = set()
        """Parts that the claim in hand has led to: all, where it has led to no feature."""

    def rows(self) -> list[Row]:
        """One row a claim, in their order, then the file's own faults."""
        rows: list[Row] = []
        for index, claim in enumerate(self.task.claims):
            self.met.clear()
            try:
                row = self._claim_row(claim)
            except OF_THE_MACHINE:
                raise
            except spotblue.Error as error:
                row = Row("claim", UNDECIDED, found=error.rule or str(error), advice=error.cure)
            row = self._left_open(row) if claim.feature else row
            rows.append(replace(row, claim=index, feature=row.feature or claim.title()))
            rows += [replace(row, claim=index) for row in self._side_rows(claim)]
        return rows + self._own_faults()

    def _left_open(self, row: Row) -> Row:
        """What is measured on an unsound part, or may be missing for one, is neither good nor bad."""
        why = "; ".join(
            f"{part.id}: {part.unsound}"
            for part in self.products
            if part.unsound and part.id in self.met
        )
        return replace(row, outcome=UNDECIDED, notes=why) if why else row

    def _rivals(self, claim: Claim, named: Named) -> list[float]:
        sizes = []
        for other in self.task.claims:
            if other is claim or not other.feature or other.mate:
                continue
            name = _named(other.feature, other)
            size = other.size_mm if other.size_mm is not None else name.size_mm
            if name.word == named.word and name.part == named.part and size is not None:
                sizes.append(size)
        return sizes

    def _find(self, text: str, claim: Claim, size_mm: float | None) -> Found:
        named = _named(text, claim)
        found = find_features(named, size_mm, self.features, self._rivals(claim, named))
        self.met.update(item.part for item in found.features or self.features)
        return found

    def _claim_row(self, claim: Claim) -> Row:
        if not claim.feature:
            found = f"{len(self.products)} kinds of part, {self._solids()} solids"
            return Row("file", CONFORMING, "a readable file", found)
        if claim.mate:
            return self._fit_row(claim)
        meant = self._find(claim.feature, claim, claim.size_mm)
        if not meant.features:
            return self._not_found(claim, meant)
        if claim.coaxial_with:
            return self._coaxial_row(claim, meant.features)
        rows = [self._size_row(claim, feature) for feature in meant.features]
        return min(rows, key=lambda row: (WORST_FIRST.index(row.outcome), row.margin_mm or 0.0))

    def _not_found(self, claim: Claim, found: Found) -> Row:
        outcome = UNDECIDED if found.kind == "unclear feature" else NONCONFORMING
        return Row(found.kind, outcome, self._wanted(claim), found.reason, advice=found.cure)

    def _solids(self) -> int:
        """Of all occurrences: a part placed twice counts twice."""
        return sum(self.products[item.product].solids for item in self.look.model.occurrences)

    def _wanted(self, claim: Claim) -> str:
        size = f"{number_text(claim.size_mm)} " if claim.size_mm is not None else ""
        if claim.tolerance_class:
            return f"{size}{claim.tolerance_class}"
        if claim.lower_mm is not None and claim.upper_mm is not None:
            return range_text(claim.lower_mm, claim.upper_mm)
        return f"{size}mm" if size else ""

    def _limits(self, claim: Claim, word: str) -> tuple[float, float] | None:
        if claim.lower_mm is not None and claim.upper_mm is not None:
            return claim.lower_mm, claim.upper_mm
        if claim.tolerance_class and claim.size_mm is not None:
            article = "an" if word == spotblue.FeatureWord.OUTSIDE else "a"
            if word in HOLES + SHAFTS:
                what = f"{claim.feature}, {article} {word},"
                refuse_other_side(claim.tolerance_class, hole=word in HOLES, what=what)
            return size_limits(claim.size_mm, claim.tolerance_class, hole=word in HOLES)
        return None

    def _size_row(self, claim: Claim, feature: Feature) -> Row:
        limits = self._limits(claim, feature.word)
        if feature.word == spotblue.FeatureWord.FACE and (limits or claim.size_mm is not None):
            advice = "a face is not judged by a size of its own: claim a length between two faces"
            return Row("size", UNDECIDED, self._wanted(claim), advice=advice, feature=feature.id)
        found = f"{number_text(feature.size_mm)} mm"
        if limits is None:
            if claim.size_mm is None:
                return Row("presence", CONFORMING, "to be there", found, feature=feature.id)
            return Row(
                "size",
                UNDECIDED,
                f"{number_text(claim.size_mm)} mm",
                found,
                advice="give a class, limits or a tolerance: nothing says how near it must be",
                feature=feature.id,
            )
        lower, upper = limits
        wanted = range_text(lower, upper)
        if claim.tolerance_class:
            wanted = f"{self._wanted(claim)}: {wanted}"
        if feature.word in ("bore", "outside", "slot", "width"):
            # The limits go in as limits: a fit of ANSI B4.1 has no class for one side.
            finding = self._size_finding(feature, lower, upper)
            if finding is not None:
                outcome = str(finding.outcome)
                advice = "" if outcome == CONFORMING else finding.advice
                return self._sized(claim, feature, outcome, wanted, found, limits, advice)
        outcome = outcome_of(feature.size_mm, self.task.uncertainty_mm, lower, upper)
        return self._sized(claim, feature, outcome, wanted, found, limits, "")

    def _findings(self, job: spotblue.Job) -> list[spotblue.Finding]:
        job.settings = spotblue.JobSettings(default_uncertainty_mm=self.task.uncertainty_mm)
        return kernel.findings_of(job, self.look)

    def _size_finding(self, feature: Feature, lower: float, upper: float) -> spotblue.Finding | None:
        want = spotblue.SizeWant(feature=feature.id, rule=(lower, upper))
        mine = [
            item
            for item in self._findings(spotblue.Job(sizes=[want]))
            if item.kind == "size" and list(item.about) == [feature.id]
        ]
        return min(mine, key=_badness) if mine else None

    def _sized(
        self,
        claim: Claim,
        feature: Feature,
        outcome: str,
        wanted: str,
        found: str,
        limits: tuple[float, float],
        advice: str,
    ) -> Row:
        margin = min(feature.size_mm - limits[0], limits[1] - feature.size_mm)
        margin -= self.task.uncertainty_mm
        basis = f"{self._wanted(claim)}; {DECIDES}" if claim.tolerance_class else DECIDES
        kind = "length" if feature.word == "length" else "size"
        return Row(kind, outcome, wanted, found, margin, basis, advice, feature.id)

    def _coaxial_row(self, claim: Claim, features: list[Feature]) -> Row:
        datum = self._find(claim.coaxial_with, claim, None)
        within = claim.within_mm or 0.0
        wanted = f"axis within {number_text(within)} mm of {claim.coaxial_with}"
        if not datum.features:
            return self._not_found(claim, datum)
        off, feature = max(
            ((axis_offset(item, datum.features[0]), item) for item in features),
            key=lambda pair: pair[0],
        )
        uncertainty = self.task.uncertainty_mm
        outcome = outcome_of(off, uncertainty, -within - 1.0, within)
        return Row(
            "coaxial",
            outcome,
            wanted,
            f"{number_text(off)} mm off at its worse end",
            within - off - uncertainty,
            DECIDES,
            ""
            if outcome == CONFORMING
            else "off the centre line or tilted: bore it true, or bush it",
            feature.id,
        )

    def _fit_row(self, claim: Claim) -> Row:
        ends = {}
        for side, text in (("hole", claim.feature), ("shaft", claim.mate)):
            found = self._find(text, claim, None if _named(text, claim).size_mm else claim.size_mm)
            if not found.features:
                return self._not_found(claim, found)
            ends[side] = {feature.id for feature in found.features}
        seats = self.look.seats
        met = chain(
            ((seat.hole, seat.shaft) for seat in seats.radial),
            ((seat.slot, seat.key) for seat in seats.width),
        )
        pairs = [
            pair
            for hole, shaft in met
            if (pair := (self.look.feature_id(hole), self.look.feature_id(shaft)))[0] in ends["hole"]
            and pair[1] in ends["shaft"]
        ]
        if not pairs:
            return Row(
                "fit",
                NONCONFORMING,
                self._wanted(claim),
                f"{sorted(ends['hole'])[0]} and {sorted(ends['shaft'])[0]} do not bear on each other",
                advice="see what goes with what: spotblue look FILE",
            )
        rows = [self._fit_finding(claim, pair) for pair in sorted(set(pairs))]
        return min(rows, key=lambda row: (WORST_FIRST.index(row.outcome), row.margin_mm or 0.0))

    def _fit_finding(self, claim: Claim, pair: tuple[str, str]) -> Row:
        named = (claim.lower_mm is None) and bool(claim.tolerance_class)
        if not named and claim.lower_mm is None:
            return Row(
                "fit", UNDECIDED, advice="give a class like H7/g6, or limits of the clearance"
            )
        rule: spotblue.ClassFit | spotblue.ClearanceLimits
        if named:
            rule = class_fit(claim.tolerance_class, claim.size_mm)
        else:
            least, greatest = claim.lower_mm or 0.0, claim.upper_mm or 0.0
            rule = spotblue.ClearanceLimits(least_mm=least, greatest_mm=greatest)
        want = spotblue.FitWant(hole=pair[0], shaft=pair[1], rule=rule)
        mine = [
            item
            for item in self._findings(spotblue.Job(fits=[want]))
            if item.kind in ("radial fit", "width fit") and same_features(item.about, pair)
        ]
        if not mine:
            return Row("fit", UNDECIDED, self._wanted(claim), "the kernel gave no finding")
        finding = min(mine, key=_badness)
        return Row(
            "fit",
            str(finding.outcome),
            quantities(finding.wanted, FIT_KEYS),
            quantities(finding.found, FIT_KEYS),
            next((value for value in finding.margin.values() if isinstance(value, float)), None),
            finding.basis,
            "" if finding.outcome == CONFORMING else finding.advice,
            f"{pair[0]} with {pair[1]}",
        )

    def _side_rows(self, claim: Claim) -> list[Row]:
        rows = []
        if claim.solids is not None:
            solids = self._solids()
            outcome = CONFORMING if solids == claim.solids else NONCONFORMING
            rows.append(Row("solids", outcome, str(claim.solids), str(solids)))
        if claim.material:
            rows += self._material_rows(claim.material)
        return rows

    def _material_rows(self, claimed: str) -> list[Row]:
        known = material_name(claimed)
        if not known:
            likely = likely_word(claimed, standards.material_names())
            reason = f"{claimed} is not in the table of materials"
            return [
                Row(
                    "material",
                    UNDECIDED,
                    claimed,
                    reason,
                    advice=f"did you mean {likely}?"
                    if likely
                    else "spotblue materials lists those known",
                )
            ]
        stated = stated_materials(Path(path_of_shown(self.task.path)))
        if not stated:
            return []
        alike = any(
            name.lower() == claimed.lower() or material_name(name) == known
            for name in stated
        )
        outcome = CONFORMING if alike else NONCONFORMING
        return [Row("material", outcome, claimed, "the file says " + ", ".join(stated))]

    def _own_faults(self) -> list[Row]:
        findings = self._findings(spotblue.Job()) if self.look.fouls.found else []
        return unsound_rows(self.products) + foul_rows(findings)


def _judge(task: Task) -> Examined:
    file = FileJudge(task)
    return Examined(
        file.look.model.file.sha256,
        file.rows(),
        [
            item.to_dict()
            for item in file.features
            if item.word in ("bore", "outside", "slot", "width")
        ],
    )


def judge_file(task: Task) -> Examined:
    """Looks at one file and judges it; a file that cannot be read is one row that says why.

    What comes of access to it or of the machine is passing, and so is all that was seen of a file
    that was not the same all the time.
    """
    path = Path(path_of_shown(task.path))
    refers = bool(task.beside)
    try:
        before = state_of(path, refers=refers)
        try:
            done = _judge(task)
        except OF_THE_MACHINE as error:
            return passing(task.sha256, error.rule or str(error), error.cure, error.place)
        except spotblue.Error as error:
            row = bad_file(error.rule or str(error), error.cure, error.place)
            done = Examined(sha256_of(path), [row])
        steady = before.beside == task.beside and state_of(path, refers=refers) == before
    except OSError as error:
        return passing(task.sha256, (error.strerror or str(error)).lower())
    if not steady or done.sha256 != task.sha256:
        return passing(task.sha256, CHANGED)
    return done
