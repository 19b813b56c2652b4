"""Ranges by profile likelihood of three layers fitted to noisy four-pin readings, by scipy: another hand than the program's.

Forward: the integral of K(lambda) (J0(lambda a) - J0(2 lambda a)) with K as a cubic spline of log lambda (scipy), each spline
integrated once by Gauss-Legendre rules fine enough for the swings of J0; K by the transform of O. Koefoed, Geosounding
Principles 1 (1979), from memory: T = (T' + rho tanh(lambda h)) / (1 + T' tanh(lambda h) / rho), K = (T / rho1 - 1) / 2.
Fit: scipy.optimize.least_squares (trust region, within bounds) from many starts. Profile: each parameter held, the others
fitted again, stepped outward from the best until the sum of squares is 3.8415 noise^2 above it (noise: 0.05, or what the fit
shows if more), the end by halving; a profile that runs to the bounds ends there.

Readings: the exact ones of the model times 1 + 0.05 times a normal number. Chance: mulberry32 of the seed, pairs by Box and
Muller (cosine part only), models in the order below, each from its own seed: seed + position.

stdin:  {"seed": 20260711, "trials": 100}, or nothing for these (five minutes)
stdout: for each model the width log(high / low) of each range of each trial: top, middle and last resistivity, first and
        second thickness. Kept: python3 tests/reference/sounding-profile.py </dev/null >tests/soil/sounding-profile.json
"""
import json
import math
import sys

import numpy as np
from scipy.interpolate import CubicSpline
from scipy.optimize import least_squares
from scipy.special import j0

ASKED = json.loads((sys.stdin.read() if not sys.stdin.isatty() else "") or "{}")
SEED = ASKED.get("seed", 20260711)
TRIALS = ASKED.get("trials", 100)
NOISE = 0.05
MODELS = {
    "sand over silt over clay": [1000, 200, 30, 1, 5],
    "loam over gravel over clay": [100, 600, 50, 1.5, 6],
    "dry crust over loam over rock": [400, 60, 500, 1, 4],
}
SPACINGS = [0.5 * 120 ** (i / 11) for i in range(12)]
# as the program searches: boundaries no shallower than 0.05 of the least spacing, layers no thicker than five times the
# greatest, resistivities no more than 200 times beyond the readings
THIN, THICK, BEYOND = 0.05 * SPACINGS[0], 5 * SPACINGS[-1], 200


def forward_matrix():
    grid = np.arange(math.log(1e-6), math.log(40 / THIN), 0.08)
    lam = np.exp(grid)
    values = np.zeros((len(SPACINGS), len(grid)))
    spline = CubicSpline(grid, np.eye(len(grid)))
    for left, right in zip(lam[:-1], lam[1:]):
        count = 6 + int((right - left) * 2 * SPACINGS[-1])
        x, w = np.polynomial.legendre.leggauss(min(count, 60))
        pieces = max(1, math.ceil(count / 60))
        edges = np.linspace(left, right, pieces + 1)
        half = np.diff(edges)[:, None] / 2
        at = (edges[:-1, None] + half * (1 + x)).ravel()
        weight = (half * w).ravel()
        parts = spline(np.log(at))
        for i, a in enumerate(SPACINGS):
            values[i] += (weight * (j0(at * a) - j0(2 * at * a))) @ parts
    # rho_a = 2 pi a (V(a) - V(2a)) with two current pins: rho1 (1 + 4 a integral)
    return lam, 4 * np.array(SPACINGS)[:, None] * values


LAM, MATRIX = forward_matrix()


def apparent(p):
    r1, r2, r3, h1, h2 = np.exp(p)
    t = np.tanh(LAM * h2)
    below = (r3 + r2 * t) / (1 + r3 * t / r2)
    t = np.tanh(LAM * h1)
    whole = (below + r1 * t) / (1 + below * t / r1)
    return r1 * (1 + MATRIX @ ((whole / r1 - 1) / 2))


def normals(seed):
    state = seed & 0xFFFFFFFF

    def uniform():
        nonlocal state
        state = (state + 0x6D2B79F5) & 0xFFFFFFFF
        t = state
        t = ((t ^ (t >> 15)) * (t | 1)) & 0xFFFFFFFF
        t ^= (t + (((t ^ (t >> 7)) * (t | 61)) & 0xFFFFFFFF)) & 0xFFFFFFFF
        return (t ^ (t >> 14)) / 4294967296

    while True:
        a, b = uniform(), uniform()
        yield math.sqrt(-2 * math.log(1 - a)) * math.cos(2 * math.pi * b)


def fit(measured, start, low, high, hold=None):
    """Least sum of squares from a start; hold = (index, value)."""
    free = [i for i in range(5) if hold is None or i != hold[0]]
    full = np.array(start, float)
    if hold is not None:
        full[hold[0]] = hold[1]

    def residuals(x):
        full[free] = x
        return apparent(full) / measured - 1

    inside = np.clip(full[free], low[free] + 1e-9, high[free] - 1e-9)
    found = least_squares(residuals, inside, bounds=(low[free], high[free]), xtol=1e-10, ftol=1e-10, max_nfev=60)
    full[free] = found.x
    return 2 * found.cost, full.copy()


def profile_width(measured, best, low, high, index, limit, others):
    ends = []
    for sense, bound in ((-1, low[index]), (1, high[index])):
        start = max(others, key=lambda f: sense * f[1][index])
        here, place, step = start[1][index], start[1], 0.05
        while True:
            there = here + sense * step
            if sense * (there - bound) >= 0:
                there = bound
            found = min((fit(measured, s, low, high, (index, there)) for s in (place, best)), key=lambda f: f[0])
            if found[0] > limit:
                inner, outer, at = here, there, place
                while abs(outer - inner) > 2e-3:
                    middle = (inner + outer) / 2
                    cost, p = fit(measured, at, low, high, (index, middle))
                    inner, outer, at = (middle, outer, p) if cost <= limit else (inner, middle, at)
                ends.append(inner)
                break
            here, place, step = there, found[1], min(0.4, step * 1.5)
            if there == bound:
                ends.append(bound)
                break
    return ends[1] - ends[0]


def trial(measured, chance):
    low = np.log([measured.min() / BEYOND] * 3 + [THIN] * 2)
    high = np.log([measured.max() * BEYOND] * 3 + [THICK] * 2)
    fits = []
    for _ in range(25):
        depths = np.sort(np.exp(chance.uniform(math.log(0.3), math.log(30), 2)))
        start = [math.log(measured[0]), chance.uniform(math.log(measured.min()) - 1, math.log(measured.max()) + 1)]
        start += [math.log(measured[-1]), math.log(depths[0]), math.log(depths[1] - depths[0] + 0.1)]
        fits.append(fit(measured, start, low, high))
    least, best = min(fits, key=lambda f: f[0])
    limit = least + 3.8415 * max(NOISE ** 2, least / (len(measured) - 5))
    inside = [f for f in fits if f[0] <= limit]
    return [round(float(profile_width(measured, best, low, high, k, limit, inside)), 3) for k in range(5)]


def main():
    widths = {}
    for position, (name, figures) in enumerate(MODELS.items()):
        exact = apparent(np.log(figures))
        noise = normals(SEED + position)
        chance = np.random.default_rng(SEED)
        widths[name] = []
        for number in range(TRIALS):
            measured = exact * (1 + NOISE * np.array([next(noise) for _ in SPACINGS]))
            widths[name].append(trial(measured, chance))
            print(name, number, widths[name][-1], file=sys.stderr, flush=True)
    head = {"by": "tests/reference/sounding-profile.py, scipy", "seed": SEED, "noiseShare": NOISE}
    lines = [f'    {json.dumps(name)}: [\n      ' + ",\n      ".join(json.dumps(w) for w in rows) + "\n    ]" for name, rows in widths.items()]
    print("{\n" + "".join(f"  {json.dumps(k)}: {json.dumps(v)},\n" for k, v in head.items()) + '  "widths": {\n' + ",\n".join(lines) + "\n  }\n}")


if __name__ == "__main__":
    main()
