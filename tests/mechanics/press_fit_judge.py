#!/usr/bin/python3
"""Solves spotblue's press fits and ring chains again, by finite elements, and compares within 1 %.

Independent of the library: the radial displacement of every ring comes from linear 1-D
axisymmetric elements (plane stress, thermal strain) assembled as a sparse stiffness and solved by
SciPy; the contact pressures from the dual quadratic programme by SciPy's non-negative least
squares. No closed thick-cylinder formula is used.
"""

import json
import subprocess
import sys

import numpy as np
from scipy.linalg import cholesky, solve_triangular
from scipy.optimize import nnls
from scipy.sparse import coo_matrix
from scipy.sparse.linalg import splu

ELEMENTS = 400
WITHIN = 0.01
REFERENCE_C = 20.0


class RingModel:
    """One ring in radii; displacement u per node, forces per radian and unit thickness."""

    def __init__(self, ring):
        self.r = np.linspace(ring["inner"] / 2, ring["outer"] / 2, ELEMENTS + 1)
        e, nu = ring["modulus"], ring["poisson"]
        self.d = e / (1 - nu**2) * np.array([[1.0, nu], [nu, 1.0]])  # radial, hoop
        self.free_strain = ring["expansion"] * (ring["temperature"] - REFERENCE_C)
        rows, cols, values = [], [], []
        self.load = np.zeros(ELEMENTS + 1)
        points = np.array([-1, 1]) / np.sqrt(3)
        for k in range(ELEMENTS):
            length = self.r[k + 1] - self.r[k]
            stiffness = np.zeros((2, 2))
            for x in points:
                shape = np.array([(1 - x) / 2, (1 + x) / 2])
                radius = shape @ self.r[k : k + 2]
                b = np.array([[-1 / length, 1 / length], shape / radius])
                weight = radius * length / 2
                stiffness += b.T @ self.d @ b * weight
                self.load[k : k + 2] += b.T @ self.d @ np.full(2, self.free_strain) * weight
            for i in range(2):
                for j in range(2):
                    rows.append(k + i)
                    cols.append(k + j)
                    values.append(stiffness[i, j])
        size = ELEMENTS + 1
        matrix = coo_matrix((values, (rows, cols)), shape=(size, size)).tolil()
        if ring["inner"] == 0.0:  # the centre stays where it is
            matrix[0, :] = 0.0
            matrix[:, 0] = 0.0
            matrix[0, 0] = 1.0
            self.load[0] = 0.0
        self.solver = splu(matrix.tocsc())

    def solve(self, force_bore=0.0, force_outside=0.0, warm=True):
        forces = self.load.copy() if warm else np.zeros(ELEMENTS + 1)
        forces[0] += force_bore if self.r[0] > 0 else 0.0
        forces[-1] += force_outside
        return self.solver.solve(forces)

    def hoop(self, u):
        """At bore and outside: stress at the middle of the elements, carried on to the surface."""
        middle = (self.r[1:] + self.r[:-1]) / 2
        strain = np.vstack([np.diff(u) / np.diff(self.r), (u[1:] + u[:-1]) / 2 / middle])
        hoop = (self.d @ (strain - self.free_strain))[1]
        return 1.5 * hoop[0] - 0.5 * hoop[1], 1.5 * hoop[-1] - 0.5 * hoop[-2]


def solve_chain(rings):
    """Pressures by least squares: least strain energy with no overlap anywhere."""
    models = [RingModel(ring) for ring in rings]
    count = len(models) - 1
    warm = [model.solve() for model in models]
    overlap = np.array(
        [
            models[i].r[-1] + warm[i][-1] - models[i + 1].r[0] - warm[i + 1][0]
            for i in range(count)
        ]
    )
    # What a unit force on each interface closes at every interface.
    give = np.zeros((count, count))
    for i in range(count):
        inner = models[i].solve(force_outside=-1.0, warm=False)
        outer = models[i + 1].solve(force_bore=1.0, warm=False)
        give[i, i] = outer[0] - inner[-1]
        if i > 0:
            give[i - 1, i] = inner[0]
        if i + 1 < count:
            give[i + 1, i] = -outer[-1]
    half = cholesky(give, lower=True)
    force, _ = nnls(half.T, solve_triangular(half, overlap, lower=True))
    states = []
    for i, model in enumerate(models):
        bore = force[i - 1] if i > 0 else 0.0
        outside = -force[i] if i < count else 0.0
        states.append(model.solve(bore, outside))
    pressures = [force[i] / models[i].r[-1] for i in range(count)]
    return models, states, pressures


def main():
    cases = json.loads(subprocess.run([sys.argv[1]], check=True, capture_output=True).stdout)
    failures = 0
    compared = 0

    def compare(case, what, ours, judged, scale):
        nonlocal failures, compared
        compared += 1
        if abs(ours - judged) > WITHIN * scale:
            failures += 1
            print(f"{case}: {what}: spotblue {ours:.6g}, judge {judged:.6g}", file=sys.stderr)

    for case in cases:
        models, states, pressures = solve_chain(case["rings"])
        greatest = max(max(pressures), 1e-3)
        for i, pressure in enumerate(pressures):
            compare(case["name"], f"pressure {i}", case["pressures"][i], pressure, greatest)
        changes = [abs(2 * u[k]) for u in states for k in (0, -1)]
        stresses = [abs(s) for m, u in zip(models, states) for s in m.hoop(u)]
        for i, (ring, model, u) in enumerate(zip(case["rings"], models, states)):
            ours = (ring["bore"] - ring["inner"], ring["outside"] - ring["outer"])
            compare(case["name"], f"bore change {i}", ours[0], 2 * u[0], max(changes))
            compare(case["name"], f"outside change {i}", ours[1], 2 * u[-1], max(changes))
            judged = model.hoop(u)
            compare(case["name"], f"bore hoop {i}", ring["bore_hoop"], judged[0], max(stresses + [1e-3]))
            compare(case["name"], f"outside hoop {i}", ring["outside_hoop"], judged[1], max(stresses + [1e-3]))
    print(f"{compared} values compared, {failures} apart by more than {WITHIN:.0%}")
    return 1 if failures else 0


if __name__ == "__main__":
    sys.exit(main())
