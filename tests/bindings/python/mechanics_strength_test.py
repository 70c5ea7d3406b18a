"""Press fits, rings, loosening, bearings and shaft sections as Python calls them.

Printed values carry their source key of tests/reference/SOURCES.md; the rest is worked by hand.
"""

from __future__ import annotations

import math
import pickle
import random
import unittest

import scipy.linalg

from spotblue import base, errors, mechanics, standards

INCH = 25.4
POUND = 0.45359237 * 9.80665  # exact by definition
PSI = POUND / (INCH * INCH)
FT_MIN = 0.3048 / 60


def steel() -> mechanics.Elastic:
    return mechanics.Elastic(
        name="steel",
        youngs_modulus_mpa=205000.0,
        poisson_ratio=0.29,
        expansion_per_k=11.7e-6,
        yield_mpa=530.0,
    )


def bronze() -> mechanics.Elastic:
    return mechanics.Elastic(
        name="leaded bronze",
        youngs_modulus_mpa=100000.0,
        poisson_ratio=0.34,
        expansion_per_k=18e-6,
        yield_mpa=138.0,
    )


def bush_in_hub() -> mechanics.BushInHub:
    return mechanics.BushInHub(
        bore_mm=30.0,
        joint_mm=44.0,
        hub_outside_mm=160.0,
        interference_mm=0.044,
        bush=bronze(),
        hub=steel(),
    )


class Elastic(unittest.TestCase):
    def test_values_of_the_table_come_in_the_units_of_the_formulas(self) -> None:
        found = standards.find_material("carbon steel A36")
        assert found is not None
        elastic = mechanics.elastic_of(found)
        # materials.csv [PHILPOT]: E 200 GPa, 11.7e-6, yield 250 MPa.
        self.assertAlmostEqual(elastic.youngs_modulus_mpa, 200000.0)
        self.assertAlmostEqual(elastic.expansion_per_k, 11.7e-6)
        self.assertEqual(elastic.yield_mpa, 250.0)
        iron = standards.find_material("grey iron")
        assert iron is not None
        self.assertEqual(mechanics.elastic_of(iron).gives_way, mechanics.GivesWay.BRITTLE)

    def test_impossible_values_are_refused_by_the_argument_s_name(self) -> None:
        mechanics.require_elastic(steel(), "hub")
        with self.assertRaisesRegex(errors.BadInputError, "hub"):
            mechanics.require_elastic(mechanics.Elastic(), "hub")


class Rings(unittest.TestCase):
    def test_a_pressed_ring_keeps_lames_sums(self) -> None:
        ring = mechanics.Ring(inner_mm=30.0, outer_mm=60.0, material=steel())
        state = mechanics.loaded_ring(ring, mechanics.RingLoad(inside_mpa=30.0))
        # By hand: hoop at the bore p (b2 + a2)/(b2 - a2) = 30 x 4500/2700 = 50, outside 20.
        self.assertAlmostEqual(state.bore.hoop_mpa, 50.0)
        self.assertAlmostEqual(state.outside.hoop_mpa, 20.0)
        self.assertAlmostEqual(state.bore.radial_mpa, -30.0)
        share = mechanics.utilisation(state.bore, steel())
        no_strength = steel()
        no_strength.yield_mpa = None
        assert share is not None
        self.assertAlmostEqual(share, 70.0 / 530.0)  # sqrt(50^2 + 50 x 30 + 30^2) = 70
        self.assertIsNone(mechanics.utilisation(state.bore, no_strength))

    def test_a_shaft_runs_in_the_bore_that_pressing_leaves(self) -> None:
        def ring(inner: float, outer: float, of: mechanics.Elastic) -> mechanics.ChainRing:
            return mechanics.ChainRing(
                free=mechanics.Ring(inner_mm=inner, outer_mm=outer, material=of)
            )

        chain = [ring(0, 29.9, steel()), ring(30, 44.05, bronze()), ring(44, 90, steel())]
        state = mechanics.sleeve_chain(chain)
        self.assertEqual(state.interfaces[0].pressure_mpa, 0.0)
        self.assertAlmostEqual(state.interfaces[1].interference_mm, 0.05)
        self.assertAlmostEqual(state.interfaces[0].gap_mm, state.rings[1].bore_mm - 29.9)
        self.assertLess(state.rings[1].bore_mm, 30.0)
        with self.assertRaises(errors.BadInputError):
            mechanics.sleeve_chain([])


class PressFits(unittest.TestCase):
    def fit(self) -> mechanics.PressFit:
        return mechanics.PressFit(
            joint_mm=44.0,
            interference_mm=0.05,
            hub=steel(),
            inner=bronze(),
            stretches=[
                mechanics.PressStretch(length_mm=20.0, hub_outside_mm=80.0, inner_bore_mm=30.0)
            ],
        )

    def test_roughness_is_taken_off_by_its_share(self) -> None:
        # By hand: 0.8 x (6.3 + 6.3) um = 10.08 um.
        left = mechanics.effective_interference_mm(
            0.05, 6.3, rz_inner_um=6.3, loss=mechanics.GREAT_ROUGHNESS_LOSS
        )
        self.assertAlmostEqual(left, 0.03992)

    def test_force_and_hold_follow_from_pressure_area_and_friction(self) -> None:
        state = mechanics.press_fit(self.fit())
        pressed = state.least_pressure_mpa * math.pi * 44.0 * 20.0
        self.assertAlmostEqual(state.force_to_press_n, 0.2 * pressed, 6)
        self.assertAlmostEqual(state.holding_torque_nm, 0.08 * pressed * 0.022, 9)
        self.assertEqual(state.inner.surface, mechanics.PressSurface.INNER_BORE)
        self.assertEqual(state.hub.surface, mechanics.PressSurface.HUB_BORE)

    def test_a_fit_and_its_state_survive_pickling(self) -> None:
        for value in (self.fit(), mechanics.press_fit(self.fit())):
            self.assertEqual(pickle.loads(pickle.dumps(value)), value)

    def test_an_impossible_fit_is_refused(self) -> None:
        with self.assertRaises(errors.BadInputError) as caught:
            mechanics.press_fit(mechanics.PressFit())
        self.assertTrue(caught.exception.rule)

    def test_a_hub_is_warmed_by_interference_over_expansion_and_diameter(self) -> None:
        slip = mechanics.slip_in(
            steel(), bronze(), joint_mm=44.0, interference_mm=0.05, clearance_mm=0.02, bench_c=20.0,
            bounds=mechanics.SlipBounds(),
        )
        assert slip.heat_hub_to_c is not None and slip.chill_inner_to_c is not None
        # By hand: 20 + 0.07 / (11.7e-6 x 44) and 20 - 0.07 / (18e-6 x 44.05): the inner
        # part is the larger by the interference.
        self.assertAlmostEqual(slip.heat_hub_to_c, 20 + 0.07 / (11.7e-6 * 44))
        self.assertAlmostEqual(slip.chill_inner_to_c, 20 - 0.07 / (18e-6 * 44.05))
        self.assertFalse(slip.may_soften_hub)

    def test_no_temperature_past_the_yield_of_the_other_part_is_named(self) -> None:
        fit = self.fit()
        bounds = mechanics.slip_bounds(fit, 20.0)
        assert bounds.hottest_c is not None
        slip = mechanics.slip_in(
            steel(), bronze(), joint_mm=44.0, interference_mm=0.05, clearance_mm=0.02, bench_c=20.0,
            bounds=mechanics.SlipBounds(hottest_c=150.0),
        )  # fmt: skip
        self.assertIsNone(slip.heat_hub_to_c)  # 156 C by hand
        self.assertIsNotNone(slip.chill_inner_to_c)

    def test_a_bush_works_loose_at_the_temperatures_worked_by_hand(self) -> None:
        # tests/reference/hand-checks.md, "A bush warmed until it comes back loose".
        found = mechanics.loosening(bush_in_hub(), 400.0)
        assert found.first_yield_c is not None and found.loose_c is not None
        self.assertAlmostEqual(found.first_yield_c, 43.3, delta=0.05)
        self.assertAlmostEqual(found.loose_c, 236.5, delta=0.05)
        self.assertIsNone(found.lets_go_c)
        cold = mechanics.warmed_bush(bush_in_hub(), 20.0)
        self.assertAlmostEqual(cold.pressure_mpa, 32.19, delta=0.005)


class Bearings(unittest.TestCase):
    def test_load_and_speed_are_those_printed(self) -> None:
        # [MOTT16] example 16-1: 150 lb on 1.5 x 1.5 in at 500 rpm: 66.7 psi, 196 ft/min.
        size = 1.5 * INCH
        pressure = mechanics.projected_pressure_mpa(150 * POUND, size, length_mm=size)
        self.assertAlmostEqual(pressure / PSI, 66.7, delta=0.05)
        self.assertAlmostEqual(mechanics.surface_speed_m_s(size, 500) / FT_MIN, 196, delta=0.5)
        load = mechanics.bearing_load(size, size, rpm=500, load_n=150 * POUND)
        assert load.pressure_speed_mpa_m_s is not None
        self.assertAlmostEqual(load.pressure_speed_mpa_m_s / PSI / FT_MIN, 13100, delta=50)
        self.assertIsNone(mechanics.bearing_load(size, size, rpm=500).pressure_mpa)

    def test_a_partial_or_tilted_bearing_is_pressed_harder(self) -> None:
        # By hand: sin 60 = 0.8660254; 500 + 6 x 15,000/20 = 5000.
        self.assertAlmostEqual(mechanics.projected_width(40.0, 120.0), 34.641016, places=6)
        self.assertAlmostEqual(mechanics.edge_load_n(500.0, 15.0, length_mm=20.0), 5000.0)
        half = mechanics.bearing_load(40.0, 25.0, rpm=60, load_n=866.0254, covered_deg=120.0)
        assert half.pressure_mpa is not None
        self.assertAlmostEqual(half.pressure_mpa, 1.0, places=6)

    def test_ratios_are_per_diameter(self) -> None:
        sizes = mechanics.BearingSizes(
            diameter_mm=40.0,
            length_mm=60.0,
            clearance=base.Limits(lower_mm=0.04, upper_mm=0.08),
            wall_mm=4.0,
        )
        ratios = mechanics.bearing_ratios(sizes)
        self.assertAlmostEqual(ratios.length, 1.5)
        self.assertAlmostEqual(ratios.clearance_greatest, 0.002)
        self.assertEqual(ratios.wall, 0.1)
        with self.assertRaises(errors.BadInputError):
            mechanics.bearing_ratios(mechanics.BearingSizes())

    def test_intermittent_work_averages_the_heat(self) -> None:
        duty = mechanics.RunningDuty.INTERMITTENT
        counts = mechanics.counting_limits(duty)
        self.assertEqual(counts.pressure_speed, mechanics.LimitCounts.AS_AVERAGE)
        load = mechanics.RunningLoad(speed_m_s=1.0, pressure_mpa=2.0, pressure_speed_mpa_m_s=2.0)
        limits = standards.BearingLimits(
            pressure_mpa=4.0, speed_m_s=2.0, pressure_speed_mpa_m_s=1.0
        )
        shares = mechanics.limit_shares(load, limits, duty=duty)
        self.assertEqual((shares.pressure, shares.running_time), (0.5, 0.5))

    def test_a_thrust_face_by_hand(self) -> None:
        ring = mechanics.ThrustRing(inner_mm=20.0, outer_mm=40.0)
        self.assertAlmostEqual(mechanics.full_area_mm2(ring), 300 * math.pi)
        # 2/3 (20^3 - 10^3)/(20^2 - 10^2) = 140/9.
        self.assertAlmostEqual(mechanics.mean_radius(ring), 140 / 9)
        self.assertAlmostEqual(mechanics.worn_mean_radius(ring), 15.0)
        self.assertAlmostEqual(mechanics.radial_width(ring), 10.0)
        self.assertAlmostEqual(mechanics.least_band(ring), 2.0)
        load = mechanics.thrust_load(ring, 300.0, rpm=60.0, thrust_n=600.0)
        self.assertEqual(load.pressure_mpa, 2.0)
        self.assertAlmostEqual(load.speed_m_s, 2 * math.pi * 140 / 9 / 1000)


class BearingLoads(unittest.TestCase):
    def test_an_overhung_load_lifts_the_far_bearing(self) -> None:
        # By hand: 900 x 60/180 = 300.
        force = mechanics.StationForce(at_mm=240.0, force_n=900.0)
        loads = mechanics.bearing_loads([force], [0.0, 180.0])
        self.assertAlmostEqual(loads.loads_n[0], -300.0)
        self.assertAlmostEqual(loads.loads_n[1], 1200.0)
        self.assertEqual(loads.moment_nm, 0.0)

    def test_three_bearings_share_by_declaration_only(self) -> None:
        force = mechanics.StationForce(at_mm=10.0, force_n=90.0)
        places = [0.0, 20.0, 60.0]
        self.assertIn("3 bearings", mechanics.bearing_loads([force], places).unknown)
        evenly = mechanics.bearing_loads([force], places, sharing="evenly")
        self.assertEqual(list(evenly.loads_n), [30.0, 30.0, 30.0])

    def test_no_number_is_refused_by_its_name(self) -> None:
        force = mechanics.StationForce(at_mm=math.nan, force_n=1.0)
        with self.assertRaises(errors.BadInputError) as caught:
            mechanics.bearing_loads([force], [0.0, 1.0])
        self.assertIn("forces[0].at_mm", str(caught.exception))

    def test_loads_are_those_of_least_squares_on_the_equations_of_balance(self) -> None:
        draw = random.Random(20261201)
        for _ in range(1000):
            places = [draw.uniform(-500, 500), draw.uniform(-500, 500)]
            if abs(places[0] - places[1]) < 1.0:
                continue
            forces = [
                mechanics.StationForce(at_mm=draw.uniform(-500, 500), force_n=draw.uniform(-1e4, 1e4))
                for _ in range(draw.randint(1, 6))
            ]
            sums = [sum(f.force_n for f in forces), sum(f.force_n * f.at_mm for f in forces)]
            solved, *_ = scipy.linalg.lstsq([[1.0, 1.0], places], sums)
            loads = mechanics.bearing_loads(forces, places).loads_n
            scale = 1.0 + max(abs(load) for load in solved)
            for got, expected in zip(loads, solved):
                self.assertAlmostEqual(got / scale, expected / scale, places=9)


class Sections(unittest.TestCase):
    def test_moduli_and_stresses_by_hand(self) -> None:
        shaft = mechanics.RoundSection(outer_mm=40.0, inner_mm=20.0)
        fourth = math.pi * (40.0**4 - 20.0**4)
        self.assertAlmostEqual(mechanics.bending_modulus_mm3(shaft), fourth / (32 * 40))
        self.assertAlmostEqual(mechanics.polar_modulus_mm3(shaft), fourth / (16 * 40))
        self.assertAlmostEqual(mechanics.polar_moment_mm4(shaft), fourth / 32, 6)
        stress = mechanics.nominal_stress(shaft, -100.0, bending_nm=50.0)
        self.assertAlmostEqual(stress.torsion_mpa, 100e3 / (fourth / 640))
        self.assertAlmostEqual(
            mechanics.equivalent_mpa(stress),
            math.hypot(stress.bending_mpa, math.sqrt(3) * stress.torsion_mpa),
        )

    def test_strength_falls_with_the_cube_of_the_diameter(self) -> None:
        before = mechanics.RoundSection(outer_mm=40.0)
        after = mechanics.RoundSection(outer_mm=38.0)
        self.assertAlmostEqual(mechanics.strength_left(before, after), 0.95**3)
        with self.assertRaises(errors.BadInputError):
            mechanics.strength_left(before, mechanics.RoundSection())

    def test_a_small_corner_fouls_the_fillet(self) -> None:
        self.assertAlmostEqual(mechanics.corner_over_fillet_mm(1.0, 1.5), -0.5)

    def test_stress_concentration_is_that_of_the_published_curves(self) -> None:
        # kt_stepped_shaft_computed.csv, D 60, d 50, r 5: bending 1.666 [PETERSON], 1.639 [ROARK], torsion 1.357.
        step = mechanics.SteppedShaft(larger_mm=60.0, smaller_mm=50.0, fillet_mm=5.0)
        bending = mechanics.shoulder_factor(step, mechanics.ShaftLoad.BENDING).factor
        torsion = mechanics.shoulder_factor(step, mechanics.ShaftLoad.TORSION).factor
        roark = mechanics.shoulder_bending_factor_roark(step).factor
        assert bending is not None and torsion is not None and roark is not None
        self.assertAlmostEqual(bending, 1.666, delta=6e-4)
        self.assertAlmostEqual(torsion, 1.357, delta=6e-4)
        self.assertAlmostEqual(roark, 1.639, delta=6e-4)

    def test_keyseats_have_factors_or_a_reason(self) -> None:
        # Peterson, from memory: q = 0.1 d/r = 5: 1.426 + 0.1643 x 5 - 0.0019 x 25.
        found = mechanics.keyseat_factor(50.0, 1.0, load=mechanics.ShaftLoad.BENDING)
        assert found.factor is not None
        self.assertAlmostEqual(found.factor, 2.2)
        none = mechanics.keyseat_factor(50.0, 1.0, load=mechanics.ShaftLoad.TENSION)
        self.assertIsNone(none.factor)
        self.assertTrue(none.reason)
        # Shigley, table 7-1: 2.14.
        notch = mechanics.ShaftNotch.END_MILLED_KEYSEAT
        self.assertEqual(
            mechanics.first_pass_factor(notch, mechanics.ShaftLoad.BENDING).factor, 2.14
        )


if __name__ == "__main__":
    unittest.main()
