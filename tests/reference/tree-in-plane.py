"""Short trees in the plane round convex buildings, by trying places to branch at on a grid.

Reads a JSON list of layouts {"ends": [[e, n]], "buildings": [[[e, n]]], "trench": [[e, n], [e, n], factor] or null},
buildings convex and counterclockwise, the trench clear of them; writes a list of costs: lengths, a metre of trench times its
factor. The trench is a row of places close together. Nodes are ends, corners and a grid over all of them; two are joined where the straight piece between them
enters no building. Least sums over all subsets of ends (dynamic programming, all splits), then twice again on finer grids
round the places where the tree found branches. The last grid is 1/25 of the first: a tree found is too long by the square
of what a junction is off, over the length of its ways.
"""

import json
import sys

import numpy as np
from scipy.sparse.csgraph import floyd_warshall

GRID = 17
FINE = 5
ON_TRENCH = 150
EPS = 1e-9


def enters(a, b, building):
    """Whether straight pieces a-b (arrays) enter a convex building by more than EPS."""
    low = np.zeros(len(a))
    high = np.ones(len(a))
    gone = np.zeros(len(a), dtype=bool)
    corners = np.array(building)
    for p, q in zip(corners, np.roll(corners, -1, axis=0)):
        side = q - p
        normal = np.array([side[1], -side[0]]) / np.hypot(*side)
        at_a = (a - p) @ normal + EPS
        at_b = (b - p) @ normal + EPS
        gone |= (at_a >= 0) & (at_b >= 0)
        with np.errstate(divide="ignore", invalid="ignore"):
            share = at_a / (at_a - at_b)
        low = np.where((at_a >= 0) & (at_b < 0), np.maximum(low, share), low)
        high = np.where((at_a < 0) & (at_b >= 0), np.minimum(high, share), high)
    return ~gone & (low < high)


def lengths(nodes, buildings, trench, count):
    i, j = np.triu_indices(len(nodes), 1)
    a, b = nodes[i], nodes[j]
    length = np.hypot(*(b - a).T)
    blocked = np.zeros(len(i), dtype=bool)
    for building in buildings:
        blocked |= enters(a, b, building)
    graph = np.full((len(nodes), len(nodes)), np.inf)
    graph[i, j] = graph[j, i] = np.where(blocked, np.inf, np.maximum(length, 1e-12))
    if trench is not None:
        graph[:count, :count] *= trench[2]
    return floyd_warshall(graph, directed=False)


def best_tree(nodes, k, buildings, trench, count):
    """Cost of the best tree over k nodes after the `count` of the trench, and the nodes where its parts join."""
    far = lengths(nodes, buildings, trench, count)
    sums, joins, via = {}, {}, {}
    full = (1 << (k - 1)) - 1
    for s in range(1, full + 1):
        if s & (s - 1) == 0:
            sums[s] = far[count + s.bit_length()]
            continue
        joined = np.full(len(nodes), np.inf)
        split = np.zeros(len(nodes), dtype=int)
        part = (s - 1) & s
        while part:
            both = sums[part] + sums[s ^ part]
            split = np.where(both < joined, part, split)
            joined = np.minimum(joined, both)
            part = (part - 1) & s
        joins[s] = split
        via[s] = np.argmin(far + joined[None, :], axis=1)
        sums[s] = (far + joined[None, :]).min(axis=1)
    found, stack = [], [(full, count)]
    while stack:
        s, node = stack.pop()
        if s & (s - 1):
            at = via[s][node]
            found.append(at)
            part = joins[s][at]
            stack += [(part, at), (s ^ part, at)]
    return sums[full][count], nodes[np.array(found, dtype=int)]


def answer(layout):
    ends = np.array(layout["ends"], dtype=float)
    buildings = layout["buildings"]
    fixed = np.vstack([ends] + [np.array(b, dtype=float).reshape(-1, 2) for b in buildings])
    trench = layout.get("trench")
    row = np.linspace(trench[0], trench[1], ON_TRENCH) if trench else np.empty((0, 2))
    low, high = fixed.min(axis=0), fixed.max(axis=0)
    step = (high - low) / (GRID - 1)
    axis = np.arange(GRID)
    grid = np.array([low + step * [x, y] for x in axis for y in axis])
    length, at = best_tree(np.vstack([row, fixed, grid]), len(ends), buildings, trench, len(row))
    for _ in range(2):
        local = np.arange(-FINE, FINE + 1) / FINE
        grid = np.array([p + step * [x, y] for p in at for x in local for y in local]).reshape(-1, 2)
        finer, found = best_tree(np.vstack([row, fixed, at, grid]), len(ends), buildings, trench, len(row))
        if finer < length:
            length, at = finer, found
        step = step / FINE
    return length


json.dump([answer(layout) for layout in json.load(sys.stdin)], sys.stdout)
