"""Makes superellipse.csv, strips.csv and sections.csv: section properties by direct quadrature, no closed forms.

Needs mpmath 1.3.0. Run: python3 make-sections.py
"""
from mpmath import mp, mpf, quad, sqrt, gamma, linspace, nstr, inf

mp.dps = 40


def out(value):
    return nstr(value, 20, strip_zeros=False)


def head(f, what, formula, columns):
    f.write(f"# {what}\n# Computed by make-sections.py with mpmath 1.3.0, 40 digits, printed to 20; {formula}\n")
    f.write("# Tolerance 1e-9 relative unless the test says less. Status: COMPUTED.\n" + columns + "\n")


def superellipse_row(p):
    # y(u) = (1 - u^p)^(1/p), u = 1 - v^k with k large enough to tame the end point
    def moment(k):
        return quad(lambda u: 2 * u**k * (1 - u**p) ** (1 / p), [0, mpf("0.5"), mpf("0.9"), mpf("0.99"), 1])

    a, q, j = moment(0), moment(1), moment(2)
    return [a, q / a, j, j - q * q / a]


with open("superellipse.csv", "w") as f:
    head(f, "Half superellipse |y/a|^p + |u/b|^p <= 1, u >= 0, for a = b = 1",
         "tanh-sinh quadrature of 2 u^k (1 - u^p)^(1/p)", "p,area,centroid,second_about_flat_side,second_about_centroid")
    for p in ["1", "1.25", "1.5", "1.8", "2", "2.2", "2.5", "3", "4", "6", "10", "25"]:
        f.write(",".join([p] + [out(v) for v in superellipse_row(mpf(p))]) + "\n")

with open("strips.csv", "w") as f:
    head(f, "Integral of (1 - t^p)^(k/p) from 0 to r, k = 1 to 3: strips of a half superellipse beside its middle",
         "tanh-sinh quadrature", "p,r,one,two,three")
    for p in ["1", "1.3", "2", "2.6", "5", "50"]:
        for r in ["1e-9", "0.2", "0.5", "0.7", "0.8", "0.93", "0.985", "0.9999", "1"]:
            n, end = mpf(p), mpf(r)
            # the steep end is spread out by t = 1 - s^4
            sums = [quad(lambda s: 4 * s**3 * (1 - (1 - s**4) ** n) ** (k / n),
                         linspace((1 - end) ** mpf("0.25"), 1, 9)) for k in (1, 2, 3)]
            f.write(",".join([p, r] + [out(v) for v in sums]) + "\n")

with open("gamma.csv", "w") as f:
    head(f, "Gamma function", "mpmath.gamma", "z,gamma")
    for z in ["0.02", "0.04", "0.1", "0.25", "0.4", "0.5", "0.75", "1", "1.01", "1.2", "1.4616321449683622",
              "1.5", "1.75", "1.99", "2", "2.01", "2.5", "3", "3.3", "4", "4.7", "5"]:
        f.write(z + "," + out(gamma(mpf(z))) + "\n")


# A section as layers: the breadth of each material at height z, integrated over z.
def section(p, a, b, eb, wb, t, r, et, slot_w, slot_d, strip, bars):
    p, a, b, eb, wb, t, et = map(mpf, (p, a, b, eb, wb, t, et))
    slot_w, slot_d, strip = map(mpf, (slot_w, slot_d, strip))
    bars = [tuple(map(mpf, bar)) for bar in bars]

    def back(u):
        stiff = eb * 2 * a * (1 - (u / b) ** p) ** (1 / p)
        if strip <= u < slot_d:
            stiff -= eb * slot_w
        for width, top, height, modulus in bars:
            if top <= u < top + height:
                stiff += (modulus - eb) * width
        return stiff

    cuts = sorted({mpf(0), strip, slot_d, b * mpf("0.9"), b * mpf("0.99"), b}
                  | {bar[1] for bar in bars} | {bar[1] + bar[2] for bar in bars})
    cuts = [c for c in cuts if 0 <= c <= b]

    def below(k):
        # each piece is integrated with its breadths fixed by the middle of the piece, so no jump lies inside
        total = mpf(0)
        for lo, hi in zip(cuts, cuts[1:]):
            mid = (lo + hi) / 2
            jump = back(mid) - eb * 2 * a * (1 - (mid / b) ** p) ** (1 / p)
            total += quad(lambda u: (-u) ** k * (eb * 2 * a * (1 - (u / b) ** p) ** (1 / p) + jump), [lo, hi])
        return total

    if r is None:
        top = lambda y: t
    else:
        r = mpf(r)
        top = lambda y: t - (r - sqrt(r * r - y * y))

    def above(k):
        return et * quad(lambda y: top(y) ** (k + 1) / (k + 1), linspace(-wb / 2, wb / 2, 5))

    ea, eq, ej = (below(k) + above(k) for k in range(3))
    return [ea, eq / ea, ej - eq * eq / ea]


CASES = [
    # name, p, a, b, E back, board width, thickness, radius, E board, slot width, depth, strip, bars
    ("plain half ellipse", 2, 26, 15, 12000, 52, "0.000001", None, 12000, 0, 0, 0, []),
    ("mandolin at the nut", 2, 17, "14.5", 11600, 34, 6, 400, 12300, 6, "9.2", 0, []),
    ("guitar at the seventh fret", "2.4", 24, 16, 10300, 48, 6, 304, 12300, "6.35", 10, "1.5", []),
    ("bass with two bars", "2.6", 26, 17, 12600, 52, "5.5", 254, 13000, "6.4", "9.5", 0,
     [("3.2", 1, "9.5", 130000), ("3.2", 1, "9.5", 130000)]),
    ("soft V, flat board", "1.4", 25, 18, 10900, 50, 7, None, 14000, 5, 7, 0, []),
    ("full D, nearly flat board", 4, 28, 14, 10300, 56, 6, 12000, 14000, 6, 8, 0, []),
    ("small neck, tight crown", 2, 14, 13, 9900, 28, 5, 55, 12300, 4, 6, 1, []),
    ("crown beyond the series", 2, 14, 13, 9900, 28, 8, 30, 12300, 4, 6, 1, []),
]

with open("sections.csv", "w") as f:
    head(f, "Transformed sections: fingerboard over z = 0, half superellipse below, slot as void, strip, bonded bars",
         "breadth times modulus times z^k integrated over the height; z from the glue face, up",
         "name,p,half_width,depth,back_modulus,board_width,thickness,radius,board_modulus,slot_width,slot_depth,strip,"
         "bars,bar_width,bar_top,bar_height,bar_modulus,EA,neutral_axis,EI")
    for case in CASES:
        name, p, a, b, eb, wb, t, r, et, sw, sd, st, bars = case
        values = section(*case[1:])
        bar = bars[0] if bars else (0, 0, 0, 0)
        cells = [name.replace(",", ";"), p, a, b, eb, wb, t, "" if r is None else r, et, sw, sd, st, len(bars), *bar]
        f.write(",".join(map(str, cells)) + "," + ",".join(out(v) for v in values) + "\n")
