"""Plays over nets of stops, judged by SciPy's linprog on the same constraints at every corner of the
lengths: SPOTBLUE_PLAY_NETS random nets (300 by default) by SPOTBLUE_PLAY_SEED."""

from __future__ import annotations

import itertools
import os
import random
import unittest

import numpy as np
from scipy.optimize import linprog

from spotblue import base, errors, mechanics
from spotblue.mechanics import GoTogether, PlayNet, PlayStop, PlayTerm, PlayWant, StackDimension

NETS = int(os.environ.get("SPOTBLUE_PLAY_NETS", "300"))
SEED = int(os.environ.get("SPOTBLUE_PLAY_SEED", "1"))
NEAR = 1e-9


def limits(lower_mm: float, upper_mm: float) -> base.Limits:
    return base.Limits(lower_mm=lower_mm, upper_mm=upper_mm)


def length(name: str, low: float, high: float) -> StackDimension:
    return StackDimension(name=name, nominal_mm=0.5 * (low + high), limits=limits(low, high))


def stop(a: int, b: int, *signed: int) -> PlayStop:
    """A gap of lengths by number from 1, negative where a longer one closes it."""
    counts: dict[int, int] = {}
    for number in signed:
        at = abs(number) - 1
        counts[at] = counts.get(at, 0) + (1 if number > 0 else -1)
    return PlayStop(a=a, b=b, gap=[PlayTerm(length=at, count=count)
                                   for at, count in counts.items() if count != 0])


def box(net: PlayNet) -> list[tuple[float, float]]:
    return [(one.limits.lower_mm, one.limits.upper_mm) for one in net.lengths]


class Judge:
    """The net's constraints as a linear programme over places of all bodies, twice, and lengths."""

    def __init__(self, net: PlayNet, of: int, on: int):
        self.net, self.of, self.on = net, of, on
        self.bodies, self.lengths = len(net.bodies), len(net.lengths)
        # Places while `of` is as far ahead as it goes, and while it is as far back; lengths.
        self.rows = np.zeros((2 * len(net.stops), 2 * self.bodies + self.lengths))
        for i, one in enumerate(net.stops):
            for copy in range(2):
                row = self.rows[2 * i + copy]
                row[copy * self.bodies + one.a] += 1.0
                row[copy * self.bodies + one.b] -= 1.0
                for term in one.gap:
                    row[2 * self.bodies + term.length] -= term.count
        self.play = np.zeros(self.rows.shape[1])
        self.play[of], self.play[on] = 1.0, -1.0
        self.play[self.bodies + of], self.play[self.bodies + on] = -1.0, 1.0

    def solve(self, within: list[tuple[float, float]], least_play: float | None = None,
              cost: np.ndarray | None = None):
        free = [(None, None)] * (2 * self.bodies)
        for body in (self.on, self.bodies + self.on):
            free[body] = (0.0, 0.0)
        rows, sums = self.rows, np.zeros(len(self.rows))
        if least_play is not None:
            rows, sums = np.vstack([rows, -self.play]), np.append(sums, -least_play)
        return linprog(-self.play if cost is None else cost, A_ub=rows, b_ub=sums,
                       bounds=free + within, method="highs")

    def at(self, lengths) -> float | None:
        """The play at these lengths; None where they do not go together."""
        found = self.solve([(one, one) for one in lengths])
        return -found.fun if found.status == 0 else None

    def corners(self, within: list[tuple[float, float]]):
        return itertools.product(*({low, high} for low, high in within))


def tightest_by_every_way(net: PlayNet, of: int, on: int, lengths) -> float:
    """The tightest loop through both, each way without coming to a body twice, one by one."""
    arcs: dict[int, list[tuple[int, float]]] = {}
    for one in net.stops:
        gap = sum(term.count * lengths[term.length] for term in one.gap)
        arcs.setdefault(one.b, []).append((one.a, gap))

    def shortest(at: int, to: int, been: frozenset[int]) -> float:
        if at == to:
            return 0.0
        return min((gap + shortest(body, to, been | {body})
                    for body, gap in arcs.get(at, []) if body not in been), default=np.inf)

    return shortest(on, of, frozenset({on})) + shortest(of, on, frozenset({of}))


def random_net(chance: random.Random) -> PlayNet:
    """Bodies with faces at sums of their own lengths, stopped both ways by their neighbours, and more
    stops anywhere; tight enough that some do not go together."""
    bodies = chance.randint(2, 5)
    spread = chance.choice([0.002, 0.05, 0.4])
    lengths: list[StackDimension] = []
    faces: list[list[tuple[int, ...]]] = []
    for body in range(bodies):
        own: list[tuple[int, ...]] = [()]
        for _ in range(chance.randint(1, 3 if bodies < 4 else 2)):
            size = chance.uniform(1.0, 60.0)
            width = 0.0 if chance.random() < 0.1 else spread * chance.uniform(0.1, 1.0)
            lengths.append(length(f"length {len(lengths) + 1}", size, size + width))
            own.append(chance.choice(own) + (chance.choice([-1, 1]) * len(lengths),))
        faces.append(own)

    def place(face):
        return sum(np.sign(one) * lengths[abs(one) - 1].nominal_mm for one in face)

    at = [chance.uniform(-5.0, 5.0) for _ in range(bodies)]
    pairs = [(i, (i + 1) % bodies) for i in range(bodies)] if bodies > 2 else [(0, 1)]
    pairs += [(chance.randrange(bodies), chance.randrange(bodies)) for _ in range(3)]
    stops = []
    for a, b in pairs + [(b, a) for a, b in pairs]:
        if a == b or chance.random() < 0.05:
            continue
        own, other = chance.choice(faces[a]), chance.choice(faces[b])
        gap = at[b] + place(other) - at[a] - place(own)
        # What is left over becomes a length of its own, so that the gap is small.
        room = chance.choice([0.001, 0.1, 1.0]) * chance.uniform(-0.05, 1.0)
        off = gap - room
        lengths.append(length(f"room {len(lengths) + 1}", off, off))
        stops.append(stop(a, b, *other, *[-one for one in own], -len(lengths)))
    return PlayNet(bodies=[f"body {i}" for i in range(bodies)], lengths=lengths, stops=stops)


class RandomNets(unittest.TestCase):
    """Every claim about every net, by another solver."""

    def test_plays_agree_with_linprog_over_every_corner(self) -> None:
        counts = {"always": 0, "sometimes": 0, "never": 0, "open": 0}
        corners = 0
        worst = 0.0
        for number in range(NETS):
            net = random_net(random.Random(SEED * 1_000_003 + number))
            with self.subTest(net=number):
                off, looked_at, kind = self.judge(net)
                counts[kind] += 1
                corners += looked_at
                worst = max(worst, off)
        print(f"{NETS} random nets ({counts}), {corners} corners: "
              f"0 violations, greatest difference {worst:.1e} mm")
        self.assertGreater(counts["always"], NETS // 10)
        self.assertGreater(counts["sometimes"], 0)

    def judge(self, net: PlayNet) -> tuple[float, int, str]:
        of, on = 0, len(net.bodies) - 1
        play = mechanics.relative_play(net, of, on=on)
        self.assertTrue(play.settled)
        judge = Judge(net, of, on)
        within = box(net)
        if play.worst is None:
            self.assertFalse(play.stopped_ahead and play.stopped_back)
            self.assertIn(judge.solve(within).status, (2, 3, 4))  # unbounded, or does not go together
            return 0.0, 0, "open"
        plays, every = [], []
        for corner in judge.corners(within):
            plays.append(judge.at(corner))
            every.append(tightest_by_every_way(net, of, on, corner))
        kind = "always"
        if None in plays:
            kind = "never" if judge.solve(within).status != 0 else "sometimes"
        self.assertEqual(play.go_together.name.lower(), kind)
        off = abs(play.worst.lower_mm - min(every))
        if kind == "always":
            off = max(off, abs(play.worst.lower_mm - min(plays)))
        if kind != "never":
            off = max(off, abs(play.worst.upper_mm + judge.solve(within).fun))
        self.assertLess(off, NEAR)
        self.assertLess(abs(tightest_by_every_way(net, of, on, play.least_at_mm)
                            - play.worst.lower_mm), NEAR)
        for at, (low, high) in zip(play.least_at_mm, within):
            self.assertIn(at, (low, high))
        self.assertLess(abs(tightest_by_every_way(net, of, on, play.greatest_at_mm)
                            - play.worst.upper_mm), NEAR)
        if kind != "always":
            self.assertGreater(play.lacking_mm, 0.0)
        self.judge_draws(net, of, on, play)
        return off, len(plays), kind

    def judge_draws(self, net: PlayNet, of: int, on: int, play) -> None:
        drawn = mechanics.draw_plays(net, of, on=on, wanted=play.worst,
                                     draw=mechanics.StackDraw(samples=500, seed=SEED))
        if play.go_together == GoTogether.ALWAYS:
            self.assertEqual(drawn.share_apart, 0.0)
        if drawn.plays is not None:
            self.assertGreater(drawn.plays.least_mm, play.worst.lower_mm - NEAR)
            self.assertLess(drawn.plays.greatest_mm, play.worst.upper_mm + NEAR)


class RandomSettings(unittest.TestCase):
    """Where a length may be set: inside every want holds at every corner, outside one does not."""

    def test_windows_hold_at_every_corner_and_nothing_outside_does(self) -> None:
        found = {"one": 0, "several": 0, "none": 0}
        tried = 0
        for number in range(NETS):
            chance = random.Random(SEED * 7_000_003 + number)
            net = random_net(chance)
            with self.subTest(net=number):
                asked = self.asked(net, chance)
                if asked is None:
                    continue
                at, wants = asked
                setting = mechanics.setting_windows(net, at, wants=wants)
                self.assertTrue(setting.settled)
                windows = [(one.lower_mm, one.upper_mm) for one in setting.windows]
                key = "none" if not windows else "one" if len(windows) == 1 else "several"
                found[key] += 1
                tried += self.judge(net, at, wants, windows, chance)
                self.assertEqual(bool(setting.contradict), not windows)
        print(f"settings of {sum(found.values())} random nets ({found}), {tried} tried: 0 violations")
        self.assertGreater(found["one"], 0)
        self.assertGreater(found["none"], 0)

    def asked(self, net: PlayNet, chance: random.Random):
        """A length that becomes free, and wants about where the plays are; of nets that always go
        together."""
        on = len(net.bodies) - 1
        pairs = [(of, on) for of in range(on)]
        plays = [mechanics.relative_play(net, of, on=on) for of, _ in pairs]
        if any(play.worst is None or play.go_together != GoTogether.ALWAYS for play in plays):
            return None
        at = chance.randrange(len(net.lengths))
        middle = net.lengths[at].nominal_mm
        net.lengths = [length(one.name, middle - 0.5, middle + 0.5) if i == at else one
                       for i, one in enumerate(net.lengths)]
        wants = []
        for (of, _), play in zip(pairs, plays):
            if chance.random() < 0.7 or not wants:
                low = max(0.0, play.worst.lower_mm - chance.uniform(-0.05, 0.3))
                high = play.worst.upper_mm + chance.uniform(-0.05, 0.3)
                wants.append(PlayWant(of=of, on=on, wanted=limits(low, max(low, high))))
        return at, wants

    def judge(self, net: PlayNet, at: int, wants, windows, chance: random.Random) -> int:
        low, high = box(net)[at]
        trials = [chance.uniform(low, high) for _ in range(4)]
        for start, end in windows:
            trials += [start, end, 0.5 * (start + end), start - 1e-3, end + 1e-3]
        for setting in trials:
            if not low <= setting <= high:
                continue
            inside = any(start <= setting <= end for start, end in windows)
            self.assertEqual(inside, self.holds(net, at, setting, wants), setting)
        return len(trials)

    def holds(self, net: PlayNet, at: int, setting: float, wants) -> bool:
        within = [(setting, setting) if i == at else one for i, one in enumerate(box(net))]
        for want in wants:
            judge = Judge(net, want.of, want.on)
            plays = [judge.at(corner) for corner in judge.corners(within)]
            if None in plays or min(plays) < want.wanted.lower_mm - 1e-7:
                return False
            if -judge.solve(within).fun > want.wanted.upper_mm + 1e-7:
                return False
        return True


class OneByOne(unittest.TestCase):
    """Nets worked by hand."""

    def shaft_and_hub(self) -> PlayNet:
        """A shaft in a frame 100 wide, 99.5 long over its faces; a hub of 30 on 30.2 of journal."""
        return PlayNet(
            bodies=["Frame", "Shaft", "Hub"],
            lengths=[length("frame", 99.98, 100.02), length("shaft", 99.45, 99.55),
                     length("journal", 30.15, 30.25), length("hub", 29.95, 30.05),
                     length("to the journal", 20.0, 20.2)],
            stops=[stop(1, 0, 1, -2), stop(0, 1), stop(2, 1, 5, 3, -4), stop(1, 2, -5)])

    def test_a_hub_on_a_floating_shaft_has_its_own_play_on_the_shaft(self) -> None:
        net = self.shaft_and_hub()
        on_shaft = mechanics.relative_play(net, 2, on=1)
        # 30.15 - 30.05 and 30.25 - 29.95; where the journal stands cancels.
        self.assertAlmostEqual(on_shaft.worst.lower_mm, 0.10, 9)
        self.assertAlmostEqual(on_shaft.worst.upper_mm, 0.30, 9)
        self.assertEqual([(one.length, one.count) for one in on_shaft.governing.lengths],
                         [(2, 1), (3, -1)])
        in_frame = mechanics.relative_play(net, 2, on=0)
        self.assertAlmostEqual(in_frame.worst.lower_mm, 0.10 + 0.43, 9)
        self.assertAlmostEqual(in_frame.worst.upper_mm, 0.30 + 0.57, 9)
        self.assertEqual(list(in_frame.governing.ahead), [2, 0])

    def test_root_sum_square_is_of_the_governing_loop(self) -> None:
        play = mechanics.relative_play(self.shaft_and_hub(), 2, on=1)
        self.assertAlmostEqual(play.root_sum_square.upper_mm, 0.2 + 0.05 * 2 ** 0.5, 9)

    def test_of_two_stops_a_micrometre_apart_each_bounds_what_it_can(self) -> None:
        net = PlayNet(bodies=["Frame", "Shaft"],
                      lengths=[length("one", 0.3, 0.31), length("other", 0.301, 0.306)],
                      stops=[stop(1, 0, 1), stop(1, 0, 2), stop(0, 1)])
        play = mechanics.relative_play(net, 1, on=0)
        self.assertAlmostEqual(play.worst.lower_mm, 0.300, 9)
        self.assertAlmostEqual(play.worst.upper_mm, 0.306, 9)

    def test_a_body_that_one_stop_lets_go_is_not_captured(self) -> None:
        net = PlayNet(bodies=["Frame", "Shaft"], lengths=[length("gap", 0.1, 0.2)],
                      stops=[stop(1, 0, 1)])
        play = mechanics.relative_play(net, 1, on=0)
        self.assertTrue(play.stopped_ahead)
        self.assertFalse(play.stopped_back)
        self.assertIsNone(play.worst)

    def test_bodies_that_never_go_together_are_told_with_what_they_lack(self) -> None:
        net = PlayNet(bodies=["Frame", "Shaft"],
                      lengths=[length("frame", 99.9, 100.1), length("shaft", 100.2, 100.3)],
                      stops=[stop(1, 0, 1, -2), stop(0, 1)])
        play = mechanics.relative_play(net, 1, on=0)
        self.assertEqual(play.go_together, GoTogether.NEVER)
        self.assertAlmostEqual(play.lacking_mm, 0.4, 9)
        self.assertAlmostEqual(play.worst.lower_mm, -0.4, 9)
        self.assertAlmostEqual(play.worst.upper_mm, -0.1, 9)

    def nut(self) -> PlayNet:
        """A nut's face at its setting on a stud, and a hub of 39.9 to 40.1 before it."""
        return PlayNet(bodies=["Stud", "Hub"],
                       lengths=[length("setting", 39.0, 42.0), length("hub", 39.9, 40.1)],
                       stops=[stop(1, 0, 1, -2), stop(0, 1)])

    def test_a_nut_is_set_so_that_the_play_holds_at_worst(self) -> None:
        setting = mechanics.setting_windows(self.nut(), 0, wants=[
            PlayWant(of=1, on=0, wanted=limits(0.1, 0.5))])
        # 40.1 + 0.1 to 39.9 + 0.5.
        self.assertEqual(len(setting.windows), 1)
        self.assertAlmostEqual(setting.windows[0].lower_mm, 40.2, 9)
        self.assertAlmostEqual(setting.windows[0].upper_mm, 40.4, 9)

    def test_wants_that_no_setting_holds_together_are_named(self) -> None:
        setting = mechanics.setting_windows(self.nut(), 0, wants=[
            PlayWant(of=1, on=0, wanted=limits(0.1, 0.5)),
            PlayWant(of=0, on=1, wanted=limits(0.0, 2.0)),
            PlayWant(of=1, on=0, wanted=limits(0.9, 1.5))])
        self.assertEqual(list(setting.windows), [])
        self.assertEqual(list(setting.contradict), [0, 2])

    def test_a_setting_between_two_loops_may_have_two_windows(self) -> None:
        # Play is the lesser of s and 2 - s: 0.5 at most up to 0.5, and from 1.5.
        net = PlayNet(bodies=["Frame", "Slide"],
                      lengths=[length("setting", 0.0, 2.0), length("two", 2.0, 2.0)],
                      stops=[stop(1, 0, 1), stop(1, 0, 2, -1), stop(0, 1)])
        setting = mechanics.setting_windows(net, 0, wants=[
            PlayWant(of=1, on=0, wanted=limits(0.0, 0.5))])
        self.assertEqual([(round(one.lower_mm, 9), round(one.upper_mm, 9))
                          for one in setting.windows], [(0.0, 0.5), (1.5, 2.0)])

    def test_the_loop_of_the_gaps_as_they_stand_is_found(self) -> None:
        loop = mechanics.loop_at(self.shaft_and_hub(), 2, on=0, gaps_mm=[0.5, 0.0, 0.1, 0.1])
        self.assertEqual((list(loop.ahead), list(loop.back)), ([2, 0], [3, 1]))
        with self.assertRaises(errors.BadInputError):
            mechanics.loop_at(self.shaft_and_hub(), 2, on=0, gaps_mm=[0.5])

    def test_nets_that_break_a_rule_are_refused_by_name(self) -> None:
        net = self.shaft_and_hub()
        mechanics.require_play_net(net)
        for broken in (PlayNet(bodies=net.bodies, lengths=net.lengths, stops=[stop(1, 7)]),
                       PlayNet(bodies=net.bodies, lengths=net.lengths, stops=[stop(1, 1)]),
                       PlayNet(bodies=net.bodies, lengths=net.lengths, stops=[stop(1, 0, 9)])):
            with self.assertRaisesRegex(errors.BadInputError, r"net\.stops\[0\]"):
                mechanics.require_play_net(broken)
        with self.assertRaises(errors.BadInputError):
            mechanics.relative_play(net, 1, on=1)

    def test_draws_by_lot_are_the_same_on_any_number_of_threads(self) -> None:
        net = self.shaft_and_hub()
        outcomes = [mechanics.draw_plays(net, 2, on=0, wanted=limits(0.6, 0.8),
                                         draw=mechanics.StackDraw(samples=9000, threads=threads))
                    for threads in (1, 3)]
        self.assertEqual(outcomes[0], outcomes[1])
        self.assertGreater(outcomes[0].plays.share_below, 0.0)


if __name__ == "__main__":
    unittest.main()
