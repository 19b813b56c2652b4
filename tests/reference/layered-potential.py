"""Potential round a point source in level layers of soil, by the layer conditions and a numerical Hankel inversion.

Another hand than the program's: no images and no reflection coefficients. At each wavenumber the amplitudes of all layers
come from the linear equations of continuity (potential and current density at every boundary, no current into the air);
the integral over the wavenumber is cut at the zeros of J0 (scipy.special) and its partial sums are carried to their limit
by Wynn's epsilon algorithm. Cutting anew with more points gives the estimate of its own error that is printed beside.

stdin:  {"cases": [{"ohmM": [...], "thickM": [...], "depthsM": [...], "distancesM": [...]}]}
stdout: {"cases": [{"ohm": [...], "errorShare": [...]}]}: by source depth, then distance, then depth of the receiver.
"""
import json
import sys

import numpy as np
from scipy.special import j0, jn_zeros

ZEROS = jn_zeros(0, 61)


def amplitudes(ohm_m, thick_m, source, source_depth, lambdas):
    """A, B of each layer (rows: wavenumbers) for the secondary part; primary: exp(-lambda |z - source|), factor 1."""
    n = len(ohm_m)
    tops = np.concatenate([[0.0], np.cumsum(thick_m)])
    size = 2 * n - 1
    m = np.zeros((len(lambdas), size, size))
    b = np.zeros((len(lambdas), size))
    decay = [np.exp(-lambdas * t) for t in thick_m]
    # no current through the surface: sum of slopes over lambda is 0
    m[:, 0, 0] = -1
    if n > 1:
        m[:, 0, 1] = decay[0]
    if source == 0:
        b[:, 0] = -np.exp(-lambdas * source_depth)
    for i in range(n - 1):
        v, c = 1 + 2 * i, 2 + 2 * i
        depth = tops[i + 1]
        here, below = 2 * i, 2 * i + 2
        # potential above the boundary less the one below it is 0; current density likewise
        m[:, v, here] = decay[i]
        m[:, v, here + 1] = 1
        m[:, v, below] = -1
        m[:, c, here] = -decay[i] / ohm_m[i]
        m[:, c, here + 1] = 1 / ohm_m[i]
        m[:, c, below] = 1 / ohm_m[i + 1]
        if i + 1 < n - 1:
            m[:, v, below + 1] = -decay[i + 1]
            m[:, c, below + 1] = -decay[i + 1] / ohm_m[i + 1]
        m[:, c] *= ohm_m[i]
        primary = np.exp(-lambdas * abs(depth - source_depth))
        if source == i:
            b[:, v] -= primary
            b[:, c] += primary
        if source == i + 1:
            b[:, v] += primary
            b[:, c] += primary * ohm_m[i] / ohm_m[i + 1]
    return np.linalg.solve(m, b[:, :, None])[:, :, 0]


def layer_of(thick_m, depth):
    """A boundary belongs to the layer above it."""
    return int(np.searchsorted(np.cumsum(thick_m), depth, side="left")) if len(thick_m) else 0


def integrand(ohm_m, thick_m, x, depth, lambdas):
    """Secondary potential at one wavenumber, without J0 and without rho / 4 pi, from the amplitudes x."""
    tops = np.concatenate([[0.0], np.cumsum(thick_m)])
    receiver = layer_of(thick_m, depth)
    f = x[:, 2 * receiver] * np.exp(-lambdas * (depth - tops[receiver]))
    if receiver < len(ohm_m) - 1:
        f = f + x[:, 2 * receiver + 1] * np.exp(-lambdas * (tops[receiver + 1] - depth))
    return f


def wynn(sums):
    """Limit of partial sums."""
    before = np.zeros(len(sums) + 1)
    row = np.array(sums)
    best = row[-1]
    for step in range(len(sums) - 1):
        gap = row[1:] - row[:-1]
        if np.any(np.abs(gap) < 1e-15 * np.abs(sums[-1])):
            return row[-1] if step % 2 == 0 else best
        row, before = before[1:-1] + 1 / gap, row
        if step % 2 == 1:
            best = row[-1]
    return best


def potentials(ohm_m, thick_m, source_depth, distance, depths, order):
    """Volt per ampere at one distance, at all depths."""
    source = layer_of(thick_m, source_depth)
    x, w = np.polynomial.legendre.leggauss(order)
    scale = max(sum(thick_m), distance, source_depth, *depths)
    first = ZEROS[0] / distance
    # the first stretch by parts of a decade, far down to where nothing happens any more
    edges = np.concatenate([[0.0], np.geomspace(min(1e-9 / scale, first / 10), first, 81), ZEROS[1:] / distance])
    lo, hi = edges[:-1, None], edges[1:, None]
    lambdas = ((lo + hi) / 2 + (hi - lo) / 2 * x[None, :]).ravel()
    weights = ((hi - lo) / 2 * w[None, :]).ravel() * j0(lambdas * distance)
    amplitude = amplitudes(ohm_m, thick_m, source, source_depth, lambdas)
    found = []
    for depth in depths:
        parts = (weights * integrand(ohm_m, thick_m, amplitude, depth, lambdas)).reshape(-1, order).sum(axis=1)
        secondary = wynn(parts[:81].sum() + np.concatenate([[0.0], np.cumsum(parts[81:])]))
        same = layer_of(thick_m, depth) == source
        primary = 1 / np.hypot(distance, depth - source_depth) if same else 0.0
        found.append(ohm_m[source] / (4 * np.pi) * (primary + secondary))
    return np.array(found)


def answer(case):
    ohm_m, thick_m = [float(v) for v in case["ohmM"]], case["thickM"]
    ohm, error_share = [], []
    for source_depth in case["depthsM"]:
        for distance in case["distancesM"]:
            coarse, fine = (
                potentials(ohm_m, thick_m, source_depth, distance, case["depthsM"], order) for order in (12, 20)
            )
            ohm += fine.tolist()
            error_share += np.abs(coarse / fine - 1).tolist()
    return {"ohm": ohm, "errorShare": error_share}


if __name__ == "__main__":
    json.dump({"cases": [answer(case) for case in json.load(sys.stdin)["cases"]]}, sys.stdout)
