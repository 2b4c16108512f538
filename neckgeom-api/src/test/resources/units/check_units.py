#!/usr/bin/env python3
"""Recomputes the figures of this folder with mpmath and compares each to all its printed digits. Run it here."""
import csv
from mpmath import mp, mpf, pi

mp.dps = 40
INCH = mpf("0.0254")
FOOT = 12 * INCH
POUND = mpf("0.45359237")
LBF = POUND * mpf("9.80665")
FACTORS = {
    ("inch", "millimetre"): INCH * 1000,
    ("foot", "metre"): FOOT,
    ("yard", "metre"): 3 * FOOT,
    ("mil (thou)", "millimetre"): INCH,
    ("1/64 inch", "millimetre"): INCH * 1000 / 64,
    ("micrometre", "microinch"): 1 / INCH,
    ("pound (avoirdupois)", "kilogram"): POUND,
    ("ounce (avoirdupois)", "gram"): POUND * 1000 / 16,
    ("pound-force", "newton"): LBF,
    ("ounce-force", "newton"): LBF / 16,
    ("kilogram-force", "newton"): mpf("9.80665"),
    ("newton", "pound-force"): 1 / LBF,
    ("pound-force per square inch", "pascal"): LBF / INCH**2,
    ("pound-force per square inch", "megapascal"): LBF / INCH**2 / 10**6,
    ("ksi", "megapascal"): LBF / INCH**2 / 10**3,
    ("10^6 psi", "megapascal"): LBF / INCH**2,
    ("megapascal", "pound-force per square inch"): 10**6 * INCH**2 / LBF,
    ("pound-force inch", "newton metre"): LBF * INCH,
    ("pound-force foot", "newton metre"): LBF * FOOT,
    ("pound-force per inch", "newton per millimetre"): LBF / INCH / 1000,
    ("pound per cubic foot", "kilogram per cubic metre"): POUND / FOOT**3,
    ("pound per inch (mass per length)", "kilogram per metre"): POUND / INCH,
    ("degree", "radian"): pi / 180,
    ("radian", "degree"): 180 / pi,
    ("arc minute", "radian"): pi / 10800,
    ("arc second", "radian"): pi / 648000,
    ("foot per minute", "metre per minute"): FOOT,
    ("inch per minute", "millimetre per minute"): INCH * 1000,
    ("in^4", "mm^4"): (INCH * 1000) ** 4,
    ("in^3", "mm^3"): (INCH * 1000) ** 3,
    ("standard gravity", "metre per second squared"): mpf("9.80665"),
}
STEPS = {"C": 0, "D": 2, "E": 4, "F": 5, "G": 7, "A": 9, "B": 11}


def rows(name):
    with open(name, encoding="utf-8") as lines:
        return list(csv.DictReader(line for line in lines if not line.startswith("#")))


def agrees(printed, exact):
    digits = len(printed.replace(".", "").lstrip("0"))
    return abs(mpf(printed) / exact - 1) < mpf(10) ** (1 - digits) / 2


checked = 0
for row in rows("unit-conversions.csv"):
    key = (row["from"], row["to"])
    if key in FACTORS:
        assert agrees(row["factor"], FACTORS[key]), row
        checked += 1
for row in rows("equal-temperament.csv"):
    step = STEPS[row["note"][0]] + 12 * int(row["note"][1:]) - STEPS["A"] - 48
    hertz = 440 * mpf(2) ** (mpf(step) / 12)
    assert agrees(row["hertz"], hertz), row
    assert not row["printed"] or abs(mpf(row["printed"]) - hertz) <= mpf("0.005"), row
    checked += 1
print(checked, "figures agree")
