"""Nodal equations of direct-current networks, solved by scipy (LU with partial pivoting).

stdin:  {"networks": [{"nodeCount", "branches": [[from, to, ohm]], "electrodes": [node], "earth": [[ohm]], "into", "pair"}]}
stdout: [{"potentials": [V], "branches": [A], "electrodes": [A], "toEarth": [ohm], "between": ohm}] for 1 A into "into"
"""
import json
import sys

import numpy
import scipy.linalg


def solve(network):
    n = network["nodeCount"]
    nodal = numpy.zeros((n, n))
    for a, b, ohm in network["branches"]:
        if a == b:
            continue
        for i, j, sign in ((a, a, 1), (b, b, 1), (a, b, -1), (b, a, -1)):
            nodal[i, j] += sign / ohm
    at = network["electrodes"]
    earth = scipy.linalg.inv(numpy.array(network["earth"]))
    for i, a in enumerate(at):
        for j, b in enumerate(at):
            nodal[a, b] += earth[i, j]
    factor = scipy.linalg.lu_factor(nodal)
    inverse = scipy.linalg.lu_solve(factor, numpy.eye(n))
    volts = inverse[:, network["into"]]
    a, b = network["pair"]
    return {
        "potentials": volts.tolist(),
        "branches": [(volts[i] - volts[j]) / ohm for i, j, ohm in network["branches"]],
        "electrodes": (earth @ volts[at]).tolist(),
        "toEarth": numpy.diag(inverse).tolist(),
        "between": inverse[a, a] + inverse[b, b] - 2 * inverse[a, b],
    }


print(json.dumps([solve(network) for network in json.load(sys.stdin)["networks"]]))
