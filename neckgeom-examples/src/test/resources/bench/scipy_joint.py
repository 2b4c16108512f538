"""The chance that limits hold together, in SciPy, timed: prints name and figure, a line each.

Run by the benchmarks where python3 has scipy; never part of the tests. Given: how many limits, their covariances row by
row, their half-widths about 0, the error allowed. The integral of a normal law over a box, by lattice points (A. Genz).
"""

import sys
import time

import numpy as np
import scipy
from scipy.stats import multivariate_normal

ROUNDS = 20

given = [float(word) for word in sys.argv[1:]]
n = int(given[0])
covariance = np.array(given[1 : 1 + n * n]).reshape(n, n)
half = np.array(given[1 + n * n : 1 + n * n + n])
error = given[-1]


def joint():
    return multivariate_normal.cdf(
        half,
        cov=covariance,
        allow_singular=True,
        lower_limit=-half,
        abseps=error,
        releps=0.0,
        maxpts=10_000_000,
    )


if __name__ == "__main__":
    print("version", scipy.__version__)
    print("probability", joint())
    least = float("inf")
    for _ in range(ROUNDS):
        start = time.perf_counter_ns()
        joint()
        least = min(least, time.perf_counter_ns() - start)
    print("joint", least)
