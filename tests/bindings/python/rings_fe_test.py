"""Finite elements by SciPy judge rings in rings, and the two plain rings that bound a grooved bush.

No closed formula of a thick ring stands here: rings are axisymmetric elements, contact is the one
set of touching joints whose pressures and gaps are none below 0. SPOTBLUE_FE_CASES random cases.
"""

from __future__ import annotations

import itertools
import os
import random
import unittest
from typing import Any

from spotblue import mechanics

try:
    import numpy as np
    from scipy.sparse import coo_matrix
    from scipy.sparse.linalg import splu
except ImportError:  # told by the skip below
    np = None  # type: ignore[assignment]

CASES = int(os.environ.get("SPOTBLUE_FE_CASES", "60"))
MATERIALS = ((205000.0, 0.29, 11.7e-6), (100000.0, 0.34, 18e-6), (69000.0, 0.33, 23.6e-6),
             (105000.0, 0.26, 10.5e-6), (1400.0, 0.4, 80e-6))  # fmt: skip
GAUSS = (-(3**-0.5), 3**-0.5)


def elastic(values: tuple[float, float, float]) -> mechanics.Elastic:
    modulus, poisson, expansion = values
    return mechanics.Elastic(
        youngs_modulus_mpa=modulus, poisson_ratio=poisson, expansion_per_k=expansion
    )


class FlatRing:
    """One ring in plane stress, radii in mm, per radian and mm of length."""

    def __init__(self, ring: mechanics.ChainRing, elements: int = 200) -> None:
        free = ring.free
        of = free.material
        self.r = np.linspace(0.5 * free.inner_mm, 0.5 * free.outer_mm, elements + 1)
        stiff = np.array([[1.0, of.poisson_ratio], [of.poisson_ratio, 1.0]])
        stiff *= of.youngs_modulus_mpa / (1.0 - of.poisson_ratio**2)
        strain = of.expansion_per_k * (ring.temperature_c - 20.0) * np.ones(2)
        length = np.diff(self.r)
        matrix = np.zeros((elements, 2, 2))
        warm = np.zeros((elements, 2))
        for x in GAUSS:
            shape = np.array([0.5 * (1.0 - x), 0.5 * (1.0 + x)])
            radius = self.r[:-1] * shape[0] + self.r[1:] * shape[1]
            b = np.empty((elements, 2, 2))
            b[:, 0, :] = np.stack([-1.0 / length, 1.0 / length], axis=1)
            b[:, 1, :] = shape / radius[:, None]
            weight = 0.5 * radius * length
            matrix += np.einsum("eji,jk,ekl,e->eil", b, stiff, b, weight)
            warm += np.einsum("eji,jk,k,e->ei", b, stiff, strain, weight)
        nodes = np.stack([np.arange(elements), np.arange(elements) + 1], axis=1)
        self.matrix = sparse(matrix, nodes, elements + 1)
        self.load = np.zeros(elements + 1)
        np.add.at(self.load, nodes, warm)
        self.solid = free.inner_mm == 0.0
        self.solver = splu(self.held(self.matrix))

    def held(self, matrix: Any) -> Any:
        if not self.solid:
            return matrix.tocsc()
        fixed = matrix.tolil()
        fixed[0, :] = 0.0
        fixed[:, 0] = 0.0
        fixed[0, 0] = 1.0
        return fixed.tocsc()

    def moved(self, inside: float, outside: float, warm: float) -> Any:
        """Radial displacement of bore and outside under pressures, warmed or not."""
        force = warm * self.load
        force[0] += inside * self.r[0]
        force[-1] -= outside * self.r[-1]
        if self.solid:
            force[0] = 0.0
        u = self.solver.solve(force)
        return np.array([u[0], u[-1]])


def sparse(matrices: Any, nodes: Any, size: int) -> Any:
    count = nodes.shape[1]
    rows = np.repeat(nodes, count, axis=1).ravel()
    columns = np.tile(nodes, (1, count)).ravel()
    return coo_matrix((matrices.ravel(), (rows, columns)), shape=(size, size))


def pressures(rings: list[mechanics.ChainRing]) -> Any:
    """Of every joint, by the one choice of touching ones that has no pull and no overlap."""
    parts = [FlatRing(ring) for ring in rings]
    joints = len(rings) - 1
    warm = [part.moved(0.0, 0.0, 1.0) for part in parts]
    gap = np.array([(parts[i + 1].r[0] + warm[i + 1][0]) - (parts[i].r[-1] + warm[i][1])
                    for i in range(joints)])  # fmt: skip
    give = np.zeros((joints, joints))
    for i in range(joints):
        inner = parts[i].moved(0.0, 1.0, 0.0)
        outer = parts[i + 1].moved(1.0, 0.0, 0.0)
        give[i, i] = outer[0] - inner[1]
        if i > 0:
            give[i - 1, i] += inner[0]
        if i + 1 < joints:
            give[i + 1, i] -= outer[1]
    for touch in itertools.product((False, True), repeat=joints):
        on = np.array(touch)
        found = np.zeros(joints)
        if on.any():
            found[on] = np.linalg.solve(give[np.ix_(on, on)], -gap[on])
        if (found >= -1e-9).all() and (gap + give @ found >= -1e-9).all():
            return found
    raise AssertionError("no choice of touching joints does")


def random_chain(lot: random.Random) -> list[mechanics.ChainRing]:
    rings = []
    inner = lot.choice([0.0, lot.uniform(10.0, 30.0)])
    for _ in range(lot.randint(3, 5)):
        outer = max(inner, 10.0) * lot.uniform(1.1, 1.8)
        free = mechanics.Ring(inner_mm=inner, outer_mm=outer,
                              material=elastic(lot.choice(MATERIALS)))  # fmt: skip
        rings.append(mechanics.ChainRing(free=free, temperature_c=lot.uniform(-40.0, 150.0)))
        inner = outer * (1.0 - lot.uniform(-0.0005, 0.002))
    return rings


class GroovedBush:
    """A quarter turn's worth of bush in its own plane, a groove round its bore, free at both ends."""

    def __init__(self, lot: random.Random) -> None:
        self.inner = lot.uniform(10.0, 30.0)
        self.outer = self.inner * lot.uniform(1.15, 1.6)
        self.bottom = self.inner + lot.uniform(0.2, 0.7) * (self.outer - self.inner)
        self.length = lot.uniform(0.5, 2.0) * self.outer
        self.material = lot.choice(MATERIALS)
        middle, half = lot.uniform(0.3, 0.7), lot.uniform(0.05, 0.25)
        self.across, self.along = 16, 40
        z = np.linspace(0.0, 1.0, self.along + 1)
        mid = 0.5 * (z[:-1] + z[1:])
        r = np.concatenate([np.linspace(self.inner, self.bottom, 9),
                            np.linspace(self.bottom, self.outer, 9)[1:]])  # fmt: skip
        self.r, self.z = r, z * self.length
        cut = np.abs(mid - middle) < half
        self.metal = np.ones((self.across, self.along), dtype=bool)
        self.metal[:8, cut] = False

    def outside_moved(self) -> float:
        """Mean radial displacement of the outside under 1 MPa there."""
        row, column = np.nonzero(self.metal)
        node = lambda i, j: i * (self.along + 1) + j  # noqa: E731
        nodes = np.stack([node(row, column), node(row + 1, column), node(row + 1, column + 1),
                          node(row, column + 1)], axis=1)  # fmt: skip
        r = np.stack([self.r[row], self.r[row + 1], self.r[row + 1], self.r[row]], axis=1)
        dr, dz = self.r[row + 1] - self.r[row], self.z[column + 1] - self.z[column]
        modulus, nu, _ = self.material
        stiff = np.array([[1 - nu, nu, nu, 0], [nu, 1 - nu, nu, 0], [nu, nu, 1 - nu, 0],
                          [0, 0, 0, 0.5 - nu]]) * modulus / ((1 + nu) * (1 - 2 * nu))  # fmt: skip
        matrix = np.zeros((len(row), 8, 8))
        for x, y in itertools.product(GAUSS, GAUSS):
            shape = 0.25 * np.array([(1 - x) * (1 - y), (1 + x) * (1 - y), (1 + x) * (1 + y),
                                     (1 - x) * (1 + y)])  # fmt: skip
            by_x = 0.25 * np.array([-(1 - y), 1 - y, 1 + y, -(1 + y)])
            by_y = 0.25 * np.array([-(1 - x), -(1 + x), 1 + x, 1 - x])
            radius = r @ shape
            b = np.zeros((len(row), 4, 8))  # radial, hoop, axial, shear
            b[:, 0, 0::2] = by_x * (2.0 / dr)[:, None]
            b[:, 1, 0::2] = shape / radius[:, None]
            b[:, 2, 1::2] = by_y * (2.0 / dz)[:, None]
            b[:, 3, 0::2] = by_y * (2.0 / dz)[:, None]
            b[:, 3, 1::2] = by_x * (2.0 / dr)[:, None]
            matrix += np.einsum("eji,jk,ekl,e->eil", b, stiff, b, 0.25 * radius * dr * dz)
        freedoms = np.stack([2 * nodes, 2 * nodes + 1], axis=2).reshape(len(row), 8)
        size = 2 * (self.across + 1) * (self.along + 1)
        whole = sparse(matrix, freedoms, size).tocsr()
        ends = np.arange(self.along + 1) + node(self.across, 0)
        share = np.zeros(self.along + 1)
        share[:-1] += 0.5 * np.diff(self.z)
        share[1:] += 0.5 * np.diff(self.z)
        force = np.zeros(size)
        force[2 * ends] = -self.outer * share
        free = np.setdiff1d(np.unique(freedoms), [2 * node(self.across, 0) + 1])  # held along
        moved = np.zeros(size)
        moved[free] = splu(whole[free][:, free].tocsc()).solve(force[free])
        return float(moved[2 * ends] @ share / share.sum())


def plain_moved(inner: float, bush: GroovedBush) -> float:
    ring = mechanics.Ring(
        inner_mm=2 * inner, outer_mm=2 * bush.outer, material=elastic(bush.material)
    )
    load = mechanics.RingLoad(outside_mpa=1.0)
    return 0.5 * mechanics.loaded_ring(ring, load).outside_change_mm


@unittest.skipIf(np is None, "SciPy is not installed")
class FiniteElements(unittest.TestCase):
    def test_rings_in_rings_press_as_the_elements_do(self) -> None:
        lot = random.Random(20261201)
        touching = 0
        for case in range(CASES):
            rings = random_chain(lot)
            found = [one.pressure_mpa for one in mechanics.sleeve_chain(rings).interfaces]
            judge = pressures(rings)
            near = 0.01 * max(1.0, float(judge.max()))  # sizes of a joint differ by up to 0.4 %
            touching += sum(one > 0.0 for one in found)
            with self.subTest(case=case):
                for one, other in zip(found, judge, strict=True):
                    self.assertAlmostEqual(one, float(other), delta=near)
        self.assertGreater(touching, CASES)

    def test_a_grooved_bush_gives_between_the_plain_one_and_the_wall_under_its_groove(self) -> None:
        lot = random.Random(20261202)
        for case in range(CASES):
            bush = GroovedBush(lot)
            found = -bush.outside_moved()
            strong = -plain_moved(bush.inner, bush)
            weak = -plain_moved(bush.bottom, bush)
            with self.subTest(case=case):
                # Elements are a little stiffer than what they stand for.
                self.assertGreaterEqual(found, 0.995 * strong)
                self.assertLessEqual(found, weak)

    def test_the_elements_of_a_bush_without_a_groove_are_the_plain_ring(self) -> None:
        bush = GroovedBush(random.Random(1))
        bush.metal[:] = True
        self.assertAlmostEqual(bush.outside_moved() / plain_moved(bush.inner, bush), 1.0, delta=0.005)


if __name__ == "__main__":
    unittest.main()
