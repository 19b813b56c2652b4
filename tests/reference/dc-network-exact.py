"""Nodal equations of direct-current networks in exact fractions; every input number is taken as the fraction that it is.

Same input and output as dc-network.py. Needs nothing but Python's own library.
"""
import json
import sys
from fractions import Fraction


def inverse(matrix):
    n = len(matrix)
    rows = [list(row) + [Fraction(int(i == j)) for j in range(n)] for i, row in enumerate(matrix)]
    for step in range(n):
        pivot = next(row for row in range(step, n) if rows[row][step] != 0)
        rows[step], rows[pivot] = rows[pivot], rows[step]
        rows[step] = [entry / rows[step][step] for entry in rows[step]]
        for row in range(n):
            factor = rows[row][step]
            if row != step and factor != 0:
                rows[row] = [entry - factor * own for entry, own in zip(rows[row], rows[step])]
    return [row[n:] for row in rows]


def solve(network):
    n = network["nodeCount"]
    branches = [(a, b, Fraction(ohm)) for a, b, ohm in network["branches"]]
    nodal = [[Fraction(0)] * n for _ in range(n)]
    for a, b, ohm in branches:
        if a == b:
            continue
        for i, j, sign in ((a, a, 1), (b, b, 1), (a, b, -1), (b, a, -1)):
            nodal[i][j] += sign / ohm
    at = network["electrodes"]
    earth = inverse([[Fraction(ohm) for ohm in row] for row in network["earth"]])
    for i, a in enumerate(at):
        for j, b in enumerate(at):
            nodal[a][b] += earth[i][j]
    found = inverse(nodal)
    volts = [row[network["into"]] for row in found]
    a, b = network["pair"]
    return {
        "potentials": [float(v) for v in volts],
        "branches": [float((volts[i] - volts[j]) / ohm) for i, j, ohm in branches],
        "electrodes": [float(sum(g * volts[j] for g, j in zip(row, at))) for row in earth],
        "toEarth": [float(found[i][i]) for i in range(n)],
        "between": float(found[a][a] + found[b][b] - 2 * found[a][b]),
    }


print(json.dumps([solve(network) for network in json.load(sys.stdin)["networks"]]))
