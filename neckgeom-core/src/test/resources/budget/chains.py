"""Makes chains.csv: distribution functions and quantiles of sums of independent parts, with mpmath.

Three ways, none of them the library's own:
  closed  sums of rectangles and one normal part: signed sum of repeated integrals of the normal distribution
          function (or of powers), worked with some hundred digits against the cancellation;
  angle   the same closed form averaged over the angles of arcsine parts, or over samples, by mpmath's quadrature;
  count   many parts: inversion of the characteristic function at 40 digits, step and range halved and doubled
          until 25 digits stood.

Parts: n normal (sd), r rectangle, t triangle, a arcsine (half-widths), z trapezoid (half-base/half-top),
b bias, s samples (value/value/...).
"""
import random
import sys
import mpmath as mp


def parse(text):
    rects, arcs, samples, var, mean = [], [], [], mp.mpf(0), mp.mpf(0)
    for word in text.split():
        kind, value = word.split(":")
        v = [mp.mpf(float(x)) for x in value.split("/")]
        if kind == "n":
            var += v[0] ** 2
        elif kind == "r":
            rects.append(v[0])
        elif kind == "t":
            rects += [v[0] / 2, v[0] / 2]
        elif kind == "z":
            rects += [(v[0] + v[1]) / 2, (v[0] - v[1]) / 2]
        elif kind == "a":
            arcs.append(v[0])
        elif kind == "b":
            mean += v[0]
        elif kind == "s":
            samples.append(v)
    return [r for r in rects if r > 0], arcs, samples, var, mean


def closed(rects, var):
    """The distribution function of the rectangles and the normal part about 0."""
    p = len(rects)
    knots = {mp.mpf(0): 1}
    for a in rects:
        fresh = {}
        for s, w in knots.items():
            fresh[s + a] = fresh.get(s + a, 0) + w
            fresh[s - a] = fresh.get(s - a, 0) - w
        knots = {s: w for s, w in fresh.items() if w}
    scale = mp.mpf(1)
    for a in rects:
        scale /= 2 * a
    sigma = mp.sqrt(var)

    def g(u):
        if sigma == 0:
            if p == 0:
                return mp.mpf(1 if u >= 0 else 0)
            return u ** p / mp.factorial(p) if u > 0 else mp.mpf(0)
        x = u / sigma
        last, here = mp.npdf(x), mp.ncdf(x)
        for n in range(1, p + 1):
            last, here = here, (x * here + last) / n
        return here * sigma ** p

    return lambda y: scale * mp.fsum(w * g(y + s) for s, w in knots.items())


def angle(rects, arcs, samples, var):
    if samples:
        inner = angle(rects, arcs, samples[1:], var)
        return lambda y: mp.fsum(inner(y - x) for x in samples[0]) / len(samples[0])
    if not arcs:
        return closed(rects, var)
    inner = angle(rects, arcs[1:], samples, var)
    a = arcs[0]
    if not rects and var == 0 and len(arcs) == 1:
        return lambda y: mp.mpf(0) if y <= -a else mp.mpf(1) if y >= a else mp.mpf(1) / 2 + mp.asin(y / a) / mp.pi
    sigma = mp.sqrt(var)
    bends = {mp.mpf(0)}
    for r in rects + arcs[1:]:
        bends = {b + r for b in bends} | {b - r for b in bends}
    if sigma:
        bends = {b + k * sigma for b in bends for k in (-9, -4, 0, 4, 9)}

    def f(y):
        ends = sorted({mp.mpf(0), mp.pi} | {mp.acos((y - b) / a) for b in bends if abs(y - b) < a})
        return mp.quad(lambda t: inner(y - a * mp.cos(t)), ends) / mp.pi

    return f


def count(rects, var):
    """Inversion by the trapezoidal rule; the sum of many parts is all but normal."""
    sd = mp.sqrt(var + mp.fsum(r * r for r in rects) / 3)

    def f(y, reach=16, top=15):
        h = mp.pi / (reach * sd)
        total, k = mp.mpf(0), 1
        while k * h * sd < top:
            t = k * h
            phi = mp.exp(-var * t * t / 2)
            for r in rects:
                phi *= mp.sin(r * t) / (r * t)
            total += phi * mp.sin(t * y) / k
            k += 1
        return mp.mpf(1) / 2 + y * h / (2 * mp.pi) + total / mp.pi

    return f


def cases():
    yield "twelve mixed", "n:0.05 n:0.03 n:0.02 n:0.04 n:0.01 r:0.08 r:0.05 r:0.1 r:0.03 t:0.06 t:0.09 t:0.04"
    yield "one normal", "n:0.05"
    yield "one rectangle", "r:0.05"
    yield "one triangle", "t:0.05"
    yield "one trapezoid", "z:0.08/0.03"
    yield "one arcsine", "a:0.05"
    yield "normal and bias", "n:0.05 b:0.12"
    yield "one dominates", "r:1.7320508075688772 r:1.7320508075688772 r:1.7320508075688772 r:17.320508075688775"
    for n in (2, 3, 4, 6, 12):
        yield "%d equal rectangles" % n, " ".join(["r:1"] * n)
    yield "two triangles", "t:1 t:0.5"
    yield "widths halving", " ".join("r:%r" % 2.0 ** -i for i in range(10))
    yield "widths tenfold apart", "r:1 r:0.1 r:0.01 r:0.001 r:0.0001"
    yield "rectangle and small normal", "r:1 n:0.001"
    yield "rectangle and tiny normal", "r:1 n:1e-07"
    yield "two rectangles far apart", "r:1 r:1e-08"
    yield "three rectangles far apart", "r:1 r:1e-05 r:3e-05"
    yield "two triangles and a small one", "t:1 t:1 t:0.0001"
    yield "normal and small rectangles", "n:1 r:0.001 t:0.002"
    yield "trapezoids and bias", "z:0.3/0.1 z:0.2/0.15 n:0.01 b:-0.25"
    yield "arcsine and normal", "a:1 n:0.3"
    yield "arcsine and small normal", "a:1 n:0.0001"
    yield "arcsine and rectangle", "a:1 r:0.4"
    yield "arcsine and small rectangle", "a:1 r:0.001"
    yield "arcsine and large rectangle", "a:0.01 r:1"
    yield "two arcsines", "a:1 a:0.7"
    yield "two arcsines and rectangle", "a:1 a:0.3 r:0.2"
    yield "arcsine, triangle, normal", "a:0.5 t:0.3 n:0.05"
    yield "samples and normal", "s:-0.05/-0.01/0/0.02/0.07/0.01 n:0.02"
    yield "samples and rectangle", "s:-0.05/-0.01/0/0.02/0.07/0.01 r:0.03"
    yield "two sets of samples", "s:-1/0/0.5/2 s:-0.3/0.1/0.7 t:0.2"
    dice = random.Random(20260101)
    for i in range(60):
        words = []
        for _ in range(dice.randint(1, 6)):
            size = float("%.3g" % 10 ** dice.uniform(-3, 1))
            words.append("%s:%r" % (dice.choice("nrrt"), size))
        yield "random %d" % i, " ".join(words)


def sd_of(rects, arcs, samples, var):
    total = var + sum(r * r for r in rects) / 3 + sum(a * a for a in arcs) / 2
    for s in samples:
        m = mp.fsum(s) / len(s)
        total += mp.fsum((x - m) ** 2 for x in s) / len(s)
    return mp.sqrt(total)


def solve(f, p, sd):
    """Regula falsi with Illinois' halving, to 30 digits."""
    low, high = -9 * sd, 9 * sd
    below, above = f(low) - p, f(high) - p
    for _ in range(300):
        x = (low * above - high * below) / (above - below)
        value = f(x) - p
        if abs(value) < mp.mpf(10) ** -28 or high - low < mp.mpf(10) ** -30 * sd:
            return x
        if value > 0:
            high, above, below = x, value, below / 2
        else:
            low, below, above = x, value, above / 2
    raise ArithmeticError("no quantile")


def main():
    out = open("chains.csv", "w")
    out.write("# Sums of independent parts: distribution function and quantiles about the mean. Status: computed.\n")
    out.write("# Made by chains.py with mpmath %s; ways and parts are explained there. 25 digits printed.\n"
              % mp.__version__)
    out.write("# Tolerances: in the tests. Argument: a double, counted from 0 (bias and means of samples included).\n")
    out.write("name;parts;quantity;argument;value\n")
    for name, text in cases():
        rects, arcs, samples, var, mean = parse(text)
        mp.mp.dps = 40 if arcs or samples else 120
        rects, arcs, samples, var, mean = parse(text)
        sd = sd_of(rects, arcs, samples, var)
        centre = mean + sum(mp.fsum(s) / len(s) for s in samples)
        f = angle(rects, arcs, samples, var)
        if arcs:
            mp.mp.dps = 25
        for z in (-4.5, -2.7, -1.9, -1.1, -0.4, 0.0, 0.7, 1.6, 2.4, 3.3):
            x = float("%.6g" % (centre + z * sd))
            out.write("%s;%s;cdf;%r;%s\n" % (name, text, x, mp.nstr(f(mp.mpf(x) - mean), 25)))
        if not arcs and (len(rects) or var) and not samples:
            mp.mp.dps = 60
            for p in (0.00005, 0.025, 0.3, 0.9, 0.975, 0.99995):
                out.write("%s;%s;quantile;%r;%s\n" % (name, text, p, mp.nstr(solve(f, mp.mpf(p), sd) + mean, 25)))
        print(name, file=sys.stderr)
    mp.mp.dps = 40
    dice = random.Random(7)
    widths = [float("%.3g" % (0.001 * (1 + 9 * dice.random()))) for _ in range(2000)]
    text = " ".join("r:%r" % w for w in widths)
    rects = [mp.mpf(w) for w in widths]
    f = count(rects, mp.mpf(0))
    sd = sd_of(rects, [], [], mp.mpf(0))
    for z in (-3.5, -1.9, -0.6, 1.2):
        x = float("%.6g" % (z * sd))
        out.write("2000 parts;%s;cdf;%r;%s\n" % (text, x, mp.nstr(f(mp.mpf(x)), 25)))
    out.close()


main()
