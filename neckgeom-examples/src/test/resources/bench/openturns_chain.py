"""The exact chain of the benchmarks by OpenTURNS' RandomMixture, timed: prints name and value, a line each.

Run by the benchmarks where a python3 has OpenTURNS; never part of the tests. "cold" is the whole job: build, two
quantiles, the chance of keeping limits; "high" is the upper quantile, which must be ours.
"""

import time

import openturns as ot

NORMALS = (0.05, 0.03, 0.02, 0.04, 0.01)
RECTANGLES = (0.08, 0.05, 0.1, 0.03)
TRIANGLES = (0.06, 0.09, 0.04)


def cold():
    law = ot.RandomMixture(
        [ot.Normal(0.0, x) for x in NORMALS]
        + [ot.Uniform(-x, x) for x in RECTANGLES]
        + [ot.Triangular(-x, 0.0, x) for x in TRIANGLES]
    )
    low = law.computeQuantile(0.025)[0]
    high = law.computeQuantile(0.975)[0]
    return low, high, law.computeProbability(ot.Interval(-0.2, 0.2))


if __name__ == "__main__":
    least = float("inf")
    for _ in range(400):
        start = time.perf_counter_ns()
        low, high, chance = cold()
        least = min(least, time.perf_counter_ns() - start)
    print("openturns", ot.__version__)
    print("cold", least)
    print("high", high)
