#!/usr/bin/env python3
"""Makes the reference tables of the set-up tests with mpmath 1.3.0, 50 digits, each by another way than the library's.

Run it in this folder: python3 make-setup-reference.py
"""
import mpmath as mp

mp.mp.dps = 50
HEAD = "# made by make-setup-reference.py, mpmath %s, 50 digits, printed to 25; exact mathematics, tolerance 1e-12\n" % mp.__version__


def s(x):
    return mp.nstr(x, 25, strip_zeros=False)


def write(name, what, columns, rows):
    with open(name, "w") as out:
        out.write("# " + what + "\n" + HEAD + ",".join(columns) + "\n")
        for row in rows:
            out.write(",".join(str(v) for v in row) + "\n")


# Bend of a stepped cantilever by virtual work: the integral of M(x) m(x) / (E I(x)), not the closed form.
def bend(force, modulus, free, d_free, root, d_root):
    i = lambda d: mp.pi * mp.mpf(d) ** 4 / 64
    f = lambda x: force * x * x / modulus
    return mp.quad(f, [0, free]) / i(d_free) + mp.quad(f, [free, free + root]) / i(d_root)


cases = [
    (20, 210000, 25, "6", 15, "8"),
    (15, 600000, 16, "4.8", 12, "6.35"),
    ("3.5", 600000, 22, "4.8", 8, "12.7"),
    (40, 200000, 30, "9.6", 0, "12"),
]
write(
    "stepped-cantilever.csv",
    "tip bend of a cutter as a stepped cantilever: N, MPa, mm, mm, mm, mm, mm",
    ["force", "modulus", "free", "free_diameter", "root", "root_diameter", "bend"],
    [c + (s(bend(mp.mpf(c[0]), mp.mpf(c[1]), mp.mpf(c[2]), c[3], mp.mpf(c[4]), c[5])),) for c in cases],
)


# Arched floor: the circle through three points by its general equation x^2 + y^2 + A x + B y + C = 0.
def arch(length, end, middle, x):
    length, end, middle, x = (mp.mpf(v) for v in (length, end, middle, x))
    pts = [(mp.mpf(0), end), (length / 2, middle), (length, end)]
    m = mp.matrix([[p[0], p[1], 1] for p in pts])
    r = mp.matrix([-(p[0] ** 2 + p[1] ** 2) for p in pts])
    a, b, c = mp.lu_solve(m, r)
    root = mp.sqrt(b * b / 4 - (x * x + a * x + c))
    return -b / 2 + root if middle > end else -b / 2 - root


rows = []
for length, end, middle in [("400", "9", "15"), ("355", "9.5", "9.6"), ("300", "12", "6"), ("450", "8.25", "14.6")]:
    for i in range(0, 9):
        x = mp.mpf(length) * i / 8
        rows.append((length, end, middle, s(x), s(arch(length, end, middle, x))))
write(
    "arched-floor.csv",
    "depth of an arched channel floor, all in mm",
    ["length", "end_depth", "middle_depth", "from_start", "depth"],
    rows,
)


# Head swung sideways, the swing measured in plan: the tip's corner turned as a complex number in the head's own face by psi,
# tan psi = cos(pitch) tan(swing), then tilted back, which shortens what lies along; the skew as the argument of the contact line.
def swung(swing_deg, pitch_deg, length, tip, shaft, shaft_length):
    swing, pitch = mp.radians(mp.mpf(swing_deg)), mp.radians(mp.mpf(pitch_deg))
    in_face = mp.mpc(mp.mpf(length), mp.mpf(tip) / 2) * mp.expj(mp.atan(mp.cos(pitch) * mp.tan(swing)))
    corner = mp.mpc(in_face.real * mp.cos(pitch), in_face.imag)
    edge = mp.mpf(shaft) / 2
    contact = corner - mp.mpc(-mp.mpf(shaft_length), edge)
    return corner.imag - edge, mp.degrees(mp.arg(contact))


rows = []
for c in [("0.6", "13", "185", "76", "61", "640"), ("2", "0", "170", "60", "60", "450"), ("5", "15", "200", "70", "56", "380")]:
    proud, skew = swung(*c)
    for x in (0, 100, 250):
        shift = (mp.mpf(c[5]) - x) * mp.tan(mp.radians(skew))
        rows.append(c + (x, s(proud), s(skew), s(shift)))
write(
    "swung-head.csv",
    "a head swung sideways at a fence that reaches everywhere: deg, deg, mm, mm, mm, mm, mm, mm, deg, mm",
    ["swing", "pitch", "head_length", "tip_width", "shaft_width", "shaft_length", "station", "proud", "skew", "shift"],
    rows,
)
