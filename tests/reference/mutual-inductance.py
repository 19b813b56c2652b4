#!/usr/bin/python3
"""Mutual inductance (henry) of two straight filaments in any position, by Neumann's integral.

Another hand than the program's: scipy's adaptive quadrature along the first, the integral of 1 / distance along the second as
a difference of two inverse hyperbolic sines, no case taken apart by angle. Reads a JSON list of [from, to, from, to,
thicknessM] (thicknessM is added in squares to every distance), prints a list of henries.
"""
import json
import sys

import numpy as np
from scipy.integrate import quad


def neumann(a0, a1, b0, b1, thickness):
    a0, a1, b0, b1 = (np.array(p, dtype=np.longdouble) for p in (a0, a1, b0, b1))
    la, lb = np.sqrt(((a1 - a0) ** 2).sum()), np.sqrt(((b1 - b0) ** 2).sum())
    ua, ub = (a1 - a0) / la, (b1 - b0) / lb

    def seen(s):
        p = a0 + s * ua - b0
        t = p @ ub
        off = np.sqrt(((p - t * ub) ** 2).sum() + np.longdouble(thickness) ** 2)
        return np.arcsinh((lb - t) / off) + np.arcsinh(t / off)

    # where the ends and the nearest place of the second show along the first, and closer and closer to them
    marks = [float((b0 - a0) @ ua), float((b1 - a0) @ ua)]
    grid = np.linspace(0, float(la), 2001)
    p = np.array([np.asarray(a0 + s * ua - b0, dtype=float) for s in grid])
    t = np.clip(p @ np.asarray(ub, dtype=float), 0, float(lb))
    gaps = np.sqrt(((p - t[:, None] * np.asarray(ub, dtype=float)) ** 2).sum(axis=1))
    marks += [float(grid[gaps.argmin()]), 0.0, float(la)]
    edges = {0.0, float(la)}
    for mark in marks:
        for k in range(22):
            for edge in (mark, mark - float(la) / 2**k, mark + float(la) / 2**k):
                if 0 < edge < la:
                    edges.add(edge)
    edges = sorted(edges)
    total = sum(quad(seen, s, e, epsabs=0, epsrel=1e-12)[0] for s, e in zip(edges, edges[1:]))
    return 1e-7 * float(ua @ ub) * total


if __name__ == "__main__":
    print(json.dumps([neumann(*case) for case in json.load(sys.stdin)]))
