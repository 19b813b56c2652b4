"""Cholesky factors and solves by LAPACK through scipy.

stdin:  {"matrices": [[[entry]]]}
stdout: [{"lower": [[entry]] | null, "failingRow": row | null, "solution": [entry] | null}], right hand sides all 1
"""
import json
import sys

import numpy
from scipy.linalg import lapack


def answer(rows):
    matrix = numpy.array(rows)
    lower, info = lapack.dpotrf(matrix, lower=1, clean=1)
    if info != 0:
        return {"lower": None, "failingRow": int(info) - 1, "solution": None}
    solution, _ = lapack.dpotrs(lower, numpy.ones(len(matrix)), lower=1)
    return {"lower": lower.tolist(), "failingRow": None, "solution": solution.ravel().tolist()}


print(json.dumps([answer(rows) for rows in json.load(sys.stdin)["matrices"]]))
