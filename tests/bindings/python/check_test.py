"""A job judged from Python comes out as the program judges it."""

from __future__ import annotations

import json
import math
import tempfile
import unittest
from pathlib import Path

import demo
import spotblue

PLAN = "ink-disc-plan-b"


class CheckTest(unittest.TestCase):
    result: spotblue.CheckResult

    @classmethod
    def setUpClass(cls) -> None:
        cls.result = spotblue.check(demo.job(PLAN))

    def test_json_is_the_programs_own(self) -> None:
        program = demo.without_seconds(demo.said("check", "--json", demo.job(PLAN)))
        self.assertEqual(demo.without_seconds(self.result.to_json()), program)

    def test_text_is_the_programs_own(self) -> None:
        self.assertEqual(self.result.to_text(), demo.said("check", demo.job(PLAN)))

    def test_the_group_is_what_the_program_shows(self) -> None:
        shown = demo.said("check", "--group", demo.job(PLAN))
        self.assertTrue(shown.startswith(self.result.group_text()))
        self.assertTrue(shown.endswith(self.result.to_text()))
        listed = json.loads(self.result.to_json())
        group = self.result.group
        assert group is not None
        self.assertEqual(len(group.bodies), len(listed["bodies"]))
        self.assertGreater(len(group.stops), 0)
        for stop, row in zip(group.stops, listed["stops"], strict=True):
            self.assertEqual(stop.gap_mm, row["gap_mm"])
            self.assertEqual(stop.play_mm, tuple(row["play_mm"]) if "play_mm" in row else None)
        for seat, row in zip(group.seats, listed["seat_states"], strict=True):
            self.assertEqual(list(seat.hole_size.free_mm), row["hole_size"]["free_mm"])
            self.assertEqual(seat.pressing, row["pressing"])
        for joint, row in zip(group.joints, listed["joints"], strict=True):
            self.assertEqual(joint.kind, row["kind"])
            self.assertEqual(joint.why, row["why"])
            self.assertEqual(len(joint.by), len(row["by"]))
        for bearing, row in zip(group.bearings, listed["bearings"], strict=True):
            self.assertEqual(bearing.load_n, row.get("load_n"))
            self.assertEqual(bearing.station_mm, row["station_mm"])
        self.assertEqual([body.rpm for body in group.turning], [40.0, 60.0, 80.0])
        self.assertEqual(len(group.thrust_faces), len(listed["thrust_faces"]))

    def test_a_group_is_worked_out_of_a_job_and_a_look(self) -> None:
        group = spotblue.make_group(self.result.job, self.result.look)
        self.assertEqual(group, self.result.group)
        self.assertEqual(
            sum(len(body.parts) for body in group.bodies), len(self.result.look.model.occurrences)
        )

    def test_findings_carry_numbers_and_texts(self) -> None:
        listed = json.loads(self.result.to_json())["findings"]
        for finding, row in zip(self.result.findings, listed):
            self.assertEqual(finding.outcome, row["outcome"])
            self.assertEqual(finding.wanted, row.get("wanted", {}))
            self.assertEqual(finding.found, row.get("found", {}))
            self.assertEqual(finding.margin, row.get("margin", {}))
        count = self.result.outcomes
        self.assertEqual(
            count.conforming + count.nonconforming + count.undecided, len(self.result.findings)
        )

    def test_a_look_is_judged_by_a_job(self) -> None:
        job = spotblue.read_job(demo.job(PLAN))
        judged = spotblue.judge(job, spotblue.look(job.model))
        self.assertEqual(judged.findings, self.result.findings)
        self.assertEqual(spotblue.check(job).findings, self.result.findings)

    def test_the_array_has_a_row_a_finding(self) -> None:
        rows = self.result.findings_array()
        self.assertEqual(rows["outcome"].tolist(), [one.outcome for one in self.result.findings])
        self.assertTrue(any(not math.isnan(margin) for margin in rows["margin_mm"]))

    def test_html_says_the_outcome_as_a_word(self) -> None:
        self.assertIn("<td>nonconforming</td>", self.result._repr_html_())
        count = self.result.outcomes
        self.assertIn(f": {count.conforming} conforming, ", self.result._repr_html_())
        self.assertRegex(repr(self.result), r"\d+ conforming, \d+ nonconforming, \d+ undecided")

    def test_a_draft_is_a_job_that_can_be_judged(self) -> None:
        file = demo.folder() / "drafted.job.toml"
        file.write_text(spotblue.draft(self.result.look, demo.step(PLAN), unit="mm"))
        self.assertEqual(file.read_text(), demo.said("draft", "--unit", "mm", demo.step(PLAN)))
        self.assertGreater(spotblue.check(file).outcomes.undecided, 0)

    def test_plans_are_compared_as_the_program_does(self) -> None:
        jobs = [demo.job(f"ink-disc-plan-{plan}") for plan in "abc"]
        comparison = spotblue.compare([jobs[0], self.result, jobs[2]])
        self.assertEqual(comparison.to_text(), demo.said("compare", *jobs))
        self.assertEqual(len(comparison.costs), 3)
        self.assertEqual(json.loads(comparison.to_json())["best"], comparison.best)
        self.assertIn("<table>", comparison._repr_html_())

    def test_a_step_file_is_judged_by_the_sizes_that_it_states(self) -> None:
        job = spotblue.read_job(demo.job(PLAN))
        sized = demo.folder() / "out" / "sized.step"
        sizes = spotblue.decided_sizes(job, self.result.look).sizes
        spotblue.write_semantic_sizes(job.model, sized, sizes)
        for model in (sized, demo.step(PLAN)):
            self.assertTrue(spotblue.is_model_file(model))
            program = demo.without_seconds(demo.said("check", "--json", model))
            for judged in (spotblue.check(model), spotblue.check(str(model))):
                self.assertEqual(demo.without_seconds(judged.to_json()), program)
        self.assertIn(spotblue.Outcome.CONFORMING, {one.outcome for one in
                                                    spotblue.check(sized).findings})  # fmt: skip

    def test_the_share_of_a_margin_is_that_of_the_comparison(self) -> None:
        comparison = spotblue.compare([self.result, self.result])
        least = comparison.costs[0].least_margin
        assert least is not None
        self.assertEqual(spotblue.margin_share(self.result.findings[least.finding]), least.share)
        foul = next(one for one in self.result.findings if one.kind == "foul")
        self.assertIsNone(spotblue.margin_share(foul))

    def test_a_model_outside_the_jobs_folder_is_read_only_where_that_is_allowed(self) -> None:
        with tempfile.TemporaryDirectory() as folder:
            model = Path(folder) / "m.step"
            model.write_bytes(demo.step(PLAN).read_bytes())
            (Path(folder) / "jobs").mkdir()
            job = Path(folder) / "jobs" / "job.toml"
            job.write_text('schema = 1\nmodel = "../m.step"\nunit = "mm"\n')
            for call in (
                lambda **how: spotblue.read_job(job, **how),
                lambda **how: spotblue.look(job, **how),
                lambda **how: spotblue.check(job, **how),
                lambda **how: spotblue.compare([job, job], **how),
            ):
                with self.assertRaisesRegex(spotblue.BadInputError, "allow_outside=True"):
                    call()
                call(allow_outside=True)

    def test_what_time_did_not_reach_is_undecided_and_such_a_plan_does_not_stand(self) -> None:
        self.assertTrue(self.result.whole)
        late = spotblue.check(demo.job(PLAN), seconds=1e-6)
        self.assertFalse(late.whole)
        self.assertEqual(late.outcomes.conforming + late.outcomes.nonconforming, 0)
        compared = spotblue.compare([demo.job(PLAN), demo.job(PLAN)], seconds=1e-6)
        self.assertIsNone(compared.best)
        self.assertFalse(compared.costs[0].whole)
        enough = spotblue.compare([demo.job(PLAN), demo.job(PLAN)], seconds=300, memory_mb=3000)
        self.assertTrue(all(cost.whole for cost in enough.costs))

    def test_one_plan_is_no_comparison(self) -> None:
        with self.assertRaises(spotblue.BadInputError):
            spotblue.compare([self.result])


class JobTest(unittest.TestCase):
    def test_a_job_is_built_in_code(self) -> None:
        look = spotblue.look(demo.step(PLAN))
        seat = look.seats.radial[0]
        want = spotblue.FitWant(
            hole=look.feature_id(seat.hole),
            shaft=look.feature_id(seat.shaft),
            rule=spotblue.ClearanceLimits(
                least_mm=seat.clearance_mm - 0.01, greatest_mm=seat.clearance_mm + 0.01
            ),
        )
        job = spotblue.Job(
            model=demo.step(PLAN),
            fits=[want],
            settings=spotblue.JobSettings(default_uncertainty_mm=0.001),
        )
        judged = spotblue.judge(job, look)
        about = [finding for finding in judged.findings if want.hole in finding.about]
        self.assertEqual(about[0].outcome, "conforming")

    def test_a_job_comes_back_from_json(self) -> None:
        for file in sorted(Path(demo.folder()).glob("*.job.toml")):
            job = spotblue.read_job(file)
            self.assertEqual(spotblue.from_json(spotblue.to_json(job)), job)

    def test_limits_the_wrong_way_round_are_refused(self) -> None:
        with self.assertRaises(spotblue.BadInputError):
            spotblue.EndPlayWant(of="Wheel", gap_mm=(0.3, 0.1))

    def test_a_word_that_is_no_choice_is_refused_with_those_there_are(self) -> None:
        with self.assertRaisesRegex(spotblue.BadInputError, "to make"):
            spotblue.JobPart(part="Wheel", state="lost")

    def test_a_feature_name_is_taken_apart(self) -> None:
        name = spotblue.parse_feature_name("Wheel: bore 44 @ 12")
        assert name is not None
        self.assertEqual((name.part, name.word, name.sizes_mm), ("Wheel", "bore", (44.0,)))
        self.assertIsNone(spotblue.parse_feature_name("Wheel"))

    def test_the_size_in_a_sized_name_is_told_in_the_unit(self) -> None:
        self.assertEqual(spotblue.feature_size_text("bore 44.45 @ 12.7", "in"), "1.75")
        self.assertEqual(spotblue.feature_size_text("face 60x45 @ 12", "mm"), "60x45 at 12")
        self.assertEqual(spotblue.feature_size_text("journal", "mm"), "")

    def test_a_feature_is_found_by_its_name_a_face_s_name_and_its_size(self) -> None:
        model = spotblue.read(demo.step("ink-disc-plan-b"))
        stud = next(product for product in model.products if product.id == "Stud")
        for text in ("journal", "outside 28.97"):
            found = spotblue.features_called(stud, text)
            self.assertEqual([stud.cylinders[one.index].name for one in found], ["journal"], text)
        self.assertEqual(len(spotblue.features_called(stud, "spigot")), 0)

    def test_the_part_of_a_feature_is_what_stands_before_its_name(self) -> None:
        self.assertEqual(spotblue.part_of_feature("Wheel: left: bore"), "Wheel: left")
        self.assertEqual(spotblue.part_of_feature("Wheel"), "")

    def test_as_much_of_a_feature_name_as_was_said_is_taken_apart(self) -> None:
        name = spotblue.parse_partial_feature_name("outside 2 @ 12 #2", "inch")
        assert name is not None
        self.assertEqual((name.part, name.word, name.sizes_mm), ("", "outside", (50.8,)))
        self.assertEqual((name.position_mm, name.ordinal), (12.0, 2))
        length = spotblue.parse_partial_feature_name("length 80")
        assert length is not None
        self.assertIsNone(length.word)
        self.assertIsNone(spotblue.parse_partial_feature_name("Wheel"))

    def test_a_job_without_entries_names_its_model(self) -> None:
        self.assertEqual(spotblue.bare_job("a.step", "in").unit, "inch")

    def test_text_that_is_no_json_is_refused(self) -> None:
        with self.assertRaises(spotblue.BadInputError):
            spotblue.from_json("{")


if __name__ == "__main__":
    unittest.main()
