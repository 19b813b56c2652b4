#!/usr/bin/python3
"""Fits of a few R-L branches side by side to the internal admittance of a round wire, (2 / z) I1(z) / I0(z) with z^2 = j x.

Made the table of src/surge/skin-ladder.ts. For each reach in x and number of branches: shares of the conductance at x = 0 and
times, by scipy's least squares in relative error, weighted again and again until the largest errors are level. Run by hand;
takes two minutes; prints JSON rows.
"""
import json

import numpy as np
from scipy.optimize import least_squares
from scipy.special import ive


def exact(x):
    z = np.sqrt(1j * x)
    return 2 / z * ive(1, z) / ive(0, z)


def fit(reach, count):
    x = np.concatenate([[1e-3], np.logspace(-1, np.log10(reach), 60 * int(np.log10(reach) + 1))])
    y = exact(x)

    def unpack(logs):
        shares = np.exp(logs[:count])
        return shares / shares.sum(), np.exp(logs[count:])

    def error(logs):
        shares, times = unpack(logs)
        return (shares[:, None] / (1 + 1j * x * times[:, None])).sum(0) / y - 1

    best = (np.inf, None)
    for start in (0.3, 0.6, 1, 1.5, 3):
        times = np.logspace(np.log10(0.17), np.log10(start / reach), count)
        logs = np.concatenate([np.log(np.sqrt(times)), np.log(times)])
        weights = np.ones(len(x))
        for _ in range(60):

            def residual(logs, weights=weights):
                e = error(logs) * np.sqrt(weights)
                return np.concatenate([e.real, e.imag])

            logs = least_squares(residual, logs, x_scale="jac").x
            off = np.abs(error(logs))
            if off.max() < best[0]:
                best = (off.max(), logs.copy())
            weights = weights * (0.3 + off / off.max())
            weights /= weights.mean()
    shares, times = unpack(best[1])
    order = np.argsort(-times)
    return best[0], shares[order], times[order]


if __name__ == "__main__":
    for decade in range(1, 10):
        worst, shares, times = fit(10.0**decade, decade + 1)
        row = {"reach": 10**decade, "error": round(float(worst), 5)}
        row["shares"] = [float(f"{v:.6g}") for v in shares]
        row["times"] = [float(f"{v:.6g}") for v in times]
        print(json.dumps(row), flush=True)
