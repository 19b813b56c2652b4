#!/usr/bin/python3
"""Resistance (ohm) of an upright rod with its top at grade in one or two level layers, by boundary elements.

Another hand than the program's: numpy, the endless series of images of a point in two layers (E. D. Sunde, from memory) in
place of a fitted sum, its own grading of segments, LAPACK in place of an own factorisation. Reads a JSON list of
[lengthM, radiusM, upperOhmM, lowerOhmM, boundaryM] (boundaryM 0: uniform soil of lowerOhmM), prints a list of ohms.
"""
import json
import sys

import numpy as np


def beside(u, a):
    return u * np.arcsinh(u / a) - np.hypot(u, a)


def mean(top, foot, sources_top, sources_foot, a):
    """Mean over each [top, foot] of the potential of lines of one ampere (rows: receivers), times 4 pi / rho."""
    t, f = top[:, None], foot[:, None]
    s, e = sources_top[None, :], sources_foot[None, :]
    total = beside(f - s, a) - beside(t - s, a) - beside(f - e, a) + beside(t - e, a)
    return total / ((f - t) * (e - s))


def graded(length, count):
    """Edges that crowd towards both ends."""
    return length * (1 - np.cos(np.pi * np.arange(count + 1) / count)) / 2


def edges_of(length, boundary, radius, count):
    least = 3 * radius
    if not 0 < boundary < length:
        parts = [(0, length)]
    else:
        parts = [(0, boundary), (boundary, length)]
    edges = [0.0]
    for start, end in parts:
        n = max(1, min(count, int((end - start) / least)))
        part = start + graded(end - start, n)
        # none shorter than the thin-wire kernel carries
        kept = [part[0]]
        for edge in part[1:-1]:
            if edge - kept[-1] >= least and end - edge >= least:
                kept.append(edge)
        edges += kept[1:] + [end]
    return np.array(edges)


def resistance(length, radius, upper, lower, boundary, count=30):
    edges = edges_of(length, boundary, radius, count)
    top, foot = edges[:-1], edges[1:]
    if boundary <= 0:
        z = lower / (4 * np.pi) * (mean(top, foot, top, foot, radius) + mean(top, foot, -foot, -top, radius))
    else:
        z = two_layers(top, foot, radius, upper, lower, boundary)
    z = (z + z.T) / 2
    return 1 / np.linalg.solve(z, np.ones(len(top))).sum()


def two_layers(top, foot, a, upper, lower, h):
    k = (lower - upper) / (lower + upper)
    terms = 1 if k == 0 else min(20000, int(np.log(1e-8) / np.log(abs(k))) + 2)
    up = (top + foot) / 2 < h
    n = len(top)
    z = np.zeros((n, n))
    u, d = np.where(up)[0], np.where(~up)[0]
    for m in range(-terms, terms + 1):
        s = upper / (4 * np.pi) * k ** abs(m)
        for t, f in ((top, foot), (-foot, -top)):
            z[np.ix_(u, u)] += s * mean(top[u], foot[u], t[u] + 2 * m * h, f[u] + 2 * m * h, a)
    if len(d) == 0:
        return z
    for m in range(terms + 1):
        s = upper * (1 + k) / (4 * np.pi) * k**m
        for t, f in ((top, foot), (-foot, -top)):
            # receiver below, source above and further up by 2 m h
            block = s * mean(top[d], foot[d], t[u] - 2 * m * h, f[u] - 2 * m * h, a)
            z[np.ix_(d, u)] += block
            z[np.ix_(u, d)] += block.T
        s = lower / (4 * np.pi) * (1 - k * k) * k**m
        z[np.ix_(d, d)] += s * mean(top[d], foot[d], -foot[d] - 2 * m * h, -top[d] - 2 * m * h, a)
    z[np.ix_(d, d)] += lower / (4 * np.pi) * mean(top[d], foot[d], top[d], foot[d], a)
    z[np.ix_(d, d)] -= lower * k / (4 * np.pi) * mean(top[d], foot[d], 2 * h - foot[d], 2 * h - top[d], a)
    return z


if __name__ == "__main__":
    print(json.dumps([float(resistance(*case)) for case in json.load(sys.stdin)]))
