#!/usr/bin/env python3
"""Recomputes the figures of this folder with mpmath and compares each to all its printed digits. Run it here."""
import csv
from mpmath import mp, mpf, erf, erfinv, sqrt

mp.dps = 40


def rows(name):
    with open(name, encoding="utf-8") as lines:
        return list(csv.DictReader(line for line in lines if not line.startswith("#")))


def cdf(x):
    return (1 + erf(x / sqrt(mpf(2)))) / 2


def agrees(printed, exact):
    digits = len(printed.replace(".", "").replace("-", "").lstrip("0"))
    return exact == mpf(printed) or abs(mpf(printed) / exact - 1) < mpf(10) ** (1 - digits)


def between(y, u, low, high):
    y, u, low, high = map(mpf, (y, u, low, high))
    return cdf((high - y) / u) - cdf((low - y) / u)


CHANCES = {
    "one-sided, y = -5.47 V, u = 0.05 V, limit V <= -5.4 V: p_c": cdf(mpf("1.4")),
    "two-sided, T = 12.5 to 16.3 mm2/s, y = 13.6, u = 1.8: p_c": between("13.6", "1.8", "12.5", "16.3"),
    "p_c for y=6.02, u=0.02, T=[6.0, 6.08]": between("6.02", "0.02", "6", "6.08"),
    "p_c for y=6.0, u=0.01, T=[6.0, 6.03]": between("6", "0.01", "6", "6.03"),
    "p_c for y=25.0, u=0.05, T=[24.9, 25.1]": between("25", "0.05", "24.9", "25.1"),
    "p_c for y=25.07, u=0.02, T=[24.9, 25.1]": between("25.07", "0.02", "24.9", "25.1"),
}
SHAPES = {"rectangular": 1 / sqrt(mpf(3)), "triangular": 1 / sqrt(mpf(6)), "arcsine": 1 / sqrt(mpf(2)),
          "trapezoid": sqrt((1 + mpf("0.25")) / 6)}

checked = 0
for row in rows("conformity.csv"):
    name = row["quantity"]
    printed = row["exact"] or row["value"]
    if name in CHANCES:
        assert agrees(printed, CHANCES[name]), row
        checked += 1
    elif name.startswith("z for"):
        p = mpf(name.split("probability ")[1].split(",")[0])
        assert agrees(printed, sqrt(mpf(2)) * erfinv(2 * p - 1)), row
        checked += 1
for row in rows("gum-examples.csv"):
    if row["section"] == "4.3":
        shape = next(s for s in SHAPES if s in row["quantity"])
        assert agrees(row["value"], SHAPES[shape]), row
        checked += 1

sets = {}
for row in rows("nist-strd-data.csv"):
    sets.setdefault(row["dataset"], []).append(mpf(row["value"]))
for k, c in (("NumAcc2", 1), ("NumAcc3", 1000000), ("NumAcc4", 10000000)):
    sets[k] = [c + mpf("0.2")] + [c + mpf("0.1"), c + mpf("0.3")] * 500
for row in rows("nist-strd-univariate.csv"):
    data = sets.get(row["dataset"])
    if data is None:
        continue
    assert len(data) == int(row["n"]), row
    mean = sum(data) / len(data)
    sd = sqrt(sum((x - mean) ** 2 for x in data) / (len(data) - 1))
    exact = mean if row["statistic"] == "mean" else sd
    assert abs(mpf(row["recomputed_30_digits"]) - exact) <= abs(exact) * mpf(10) ** -28, row
    assert agrees(row["certified_value"], exact), row
    checked += 1
print(checked, "figures agree")
