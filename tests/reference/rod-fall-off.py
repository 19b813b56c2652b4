"""Potential of the surface round an upright rod that is driven flush into even soil, from scratch.

The rod is a solid cylinder with a flat foot. Its current leaves through rings: bands of its side and annuli of its foot,
finer towards every edge; each with its mirror above the ground. The potential of a ring is exact (complete elliptic integral
of the first kind), integrated across the band by adaptive quadrature where the band is near, and the metal is held to one
potential at the middle of every ring (collocation). Nothing is taken to leave evenly, and nothing lies on the axis.

Reads JSON: rods [[length, radius, [distances]], ...]; writes for each the resistance per ohm metre of the soil and the
potential at each distance over that of the rod: as solved, and with even leakage along the axis and the potential of the rod
by rho / (2 pi L) (ln(4 L / a) - 1).
"""

import json
import math
import sys

import numpy as np
from scipy.integrate import quad
from scipy.special import ellipkm1

# three times as many move no figure by more than 1e-5, the resistance by 1e-4
SIDE, FOOT = 48, 8


def ring(r, z, b, w):
    """Potential at (r, z), per ampere and ohm metre, of a ring of radius b at depth w with its mirror."""
    total = 0.0
    for depth in (w, -w):
        squared = (r + b) ** 2 + (z - depth) ** 2
        apart = ((r - b) ** 2 + (z - depth) ** 2) / squared
        total = total + 2 / math.pi * ellipkm1(apart) / np.sqrt(squared)
    return total / (4 * math.pi)


def graded(start, end, count):
    """Edges that lie closer together towards both ends."""
    even = np.linspace(0, 1, count + 1)
    return start + (end - start) * (1 - np.cos(math.pi * even)) / 2


def bands(length, radius):
    """Each band as a function of 0 to 1 (a point of it, and how much of it lies there), and its middle."""
    z = graded(0, length, SIDE)
    # the foot from its edge, where it is fine, to its middle
    r = radius * np.sin(math.pi / 2 * np.linspace(1, 0, FOOT + 1))
    side = [((radius, z[i]), (radius, z[i + 1])) for i in range(SIDE)]
    foot = [((r[i], length), (r[i + 1], length)) for i in range(FOOT)]
    return side + foot


NODES, WEIGHTS = np.polynomial.legendre.leggauss(12)


def mean_of(band, r, z):
    """Mean potential at a point of an ampere that leaves a band evenly."""
    (r1, z1), (r2, z2) = band
    size = math.hypot(r2 - r1, z2 - z1)
    area = (r1 + r2) / 2

    def at(t):
        b, w = r1 + (r2 - r1) * t, z1 + (z2 - z1) * t
        return ring(r, z, b, w) * b / area

    middle = ((r1 + r2) / 2, (z1 + z2) / 2)
    far = min(math.hypot(r - middle[0], z - middle[1]), math.hypot(r - middle[0], z + middle[1]))
    if far > 4 * size:
        t = (NODES + 1) / 2
        return float(np.sum(WEIGHTS / 2 * at(t)))
    return quad(at, 0, 0.5, limit=200)[0] + quad(at, 0.5, 1, limit=200)[0]


def solve(length, radius, distances):
    all_bands = bands(length, radius)
    middles = [((a[0] + b[0]) / 2, (a[1] + b[1]) / 2) for a, b in all_bands]
    matrix = np.array([[mean_of(band, r, z) for band in all_bands] for r, z in middles])
    current = np.linalg.solve(matrix, np.ones(len(all_bands)))
    shares = [float(sum(c * mean_of(b, x, 0.0) for c, b in zip(current, all_bands))) for x in distances]
    even = math.log(4 * length / radius) - 1
    return {
        "ohm_per_ohm_m": 1 / float(current.sum()),
        "shares": shares,
        "even_ohm_per_ohm_m": even / (2 * math.pi * length),
        "even_shares": [math.asinh(length / x) / even for x in distances],
    }


if __name__ == "__main__":
    asked = json.load(sys.stdin)
    json.dump([solve(*rod) for rod in asked["rods"]], sys.stdout)
