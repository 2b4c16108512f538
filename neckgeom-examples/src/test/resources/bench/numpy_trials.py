"""The trials and the plain scan of the benchmarks in numpy, timed: prints name and nanoseconds, a line each.

Run by the benchmarks where python3 has numpy; never part of the tests. "plain" is what one writes first, "best" the
fastest form found: blocks that stay in the cache, buffers used again, the fastest generator numpy has (SFC64).
"""

import time

import numpy as np

NORMALS = (0.05, 0.03, 0.02, 0.04, 0.01)
RECTANGLES = (0.08, 0.05, 0.1, 0.03)
TRIANGLES = (0.06, 0.09, 0.04)
TRIALS = 1_000_000
BLOCK = 4096
MEANS = np.array([648.0, 2.5, 9.0, 4.0, 6.5, 1.2, 0.5, 2.3])


def job(total):
    """Mean, deviation, yield and both ends of the 95 % interval."""
    inside = np.count_nonzero(np.abs(total) <= 0.2) / total.size
    low, high = (int(0.025 * total.size), int(0.975 * total.size) - 1)
    part = np.partition(total, (low, high))
    return total.mean() + total.std() + inside + part[low] + part[high]


def plain():
    rng = np.random.default_rng(1)
    total = np.zeros(TRIALS)
    for sd in NORMALS:
        total += rng.normal(0.0, sd, TRIALS)
    for half in RECTANGLES:
        total += rng.uniform(-half, half, TRIALS)
    for half in TRIANGLES:
        total += rng.triangular(-half, 0.0, half, TRIALS)
    return job(total)


def best():
    rng = np.random.Generator(np.random.SFC64(1))
    total = np.zeros(TRIALS)
    draw = np.empty(BLOCK)
    for start in range(0, TRIALS, BLOCK):
        out = total[start : start + BLOCK]
        some = draw[: out.size]
        for sd in NORMALS:
            rng.standard_normal(out=some)
            some *= sd
            out += some
        for half in RECTANGLES:
            rng.random(out=some)
            some -= 0.5
            some *= 2.0 * half
            out += some
        for half in TRIANGLES:
            rng.random(out=some)
            some *= half
            out += some
            rng.random(out=some)
            some *= half
            out -= some
    return job(total)


def nonlinear():
    rng = np.random.Generator(np.random.SFC64(1))
    v = [mean + rng.normal(0.0, 0.1, TRIALS) for mean in MEANS]
    reach = 0.5 * v[0] + v[1]
    rise = v[2] + v[3] - (v[4] + v[5])
    action = v[6] + (v[7] - v[6]) * (v[0] + v[1]) / (0.5 * v[0])
    return (np.arcsin(rise / np.hypot(reach, action)) - np.arctan2(action, reach)).std()


def scan():
    """Half ellipse and flat board at 1,000 stations, slot, trapezoids, strings alone on the straight neck."""
    n = 1000
    h = 311.0 / n
    x = np.arange(n + 1) * h
    half = 17 + x * (6 / 311.0)
    depth = 14.25 + x * 0.008
    back = 11_600 * np.pi / 2 * half * depth
    board = 12_300 * 2 * half * 6
    slot = np.where(x < 300, 11_600 * 6 * 9.2, 0.0)
    ea = back + board - slot
    eq = -back * 4 * depth / (3 * np.pi) + board * 3 + slot * 4.6
    ej = back * depth * depth / 4 + board * 12 - slot * 9.2 * 9.2 / 3
    axis = eq / ea
    bend = 760 * (7.5 + x * (2.4 / 560) - axis) / (ej - axis * eq)
    slope = np.concatenate(([0.0], np.cumsum((bend[:-1] + bend[1:]) * (h / 2))))
    rise = np.concatenate(([0.0], np.cumsum(h * slope[:-1] + h * h * (2 * bend[:-1] + bend[1:]) / 6)))
    start = n // 10
    chord = rise[start] + (rise[n] - rise[start]) * (np.arange(start, n + 1) - start) / (n - start)
    return (chord - rise[start:]).max()


def timed(work, rounds):
    least = float("inf")
    for _ in range(rounds):
        start = time.perf_counter_ns()
        work()
        least = min(least, time.perf_counter_ns() - start)
    return least


if __name__ == "__main__":
    print("version", np.__version__)
    print("plain", timed(plain, 12) / TRIALS)
    print("best", timed(best, 12) / TRIALS)
    print("nonlinear", timed(nonlinear, 12) / TRIALS)
    print("scan", timed(scan, 2000))
