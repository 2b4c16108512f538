"""Makes laws.csv: chances and quantiles of the normal law and of Student's t at 40 digits, with mpmath."""
import mpmath as mp

mp.mp.dps = 60


def normal_upper(x):
    return mp.erfc(mp.mpf(x) / mp.sqrt(2)) / 2


def student_upper(t, n):
    t, n = mp.mpf(t), mp.mpf(n)
    if t < 0:
        return 1 - student_upper(-t, n)
    y = t * t / (n + t * t)
    if y > 0.9:
        return mp.betainc(n / 2, mp.mpf(1) / 2, 0, n / (n + t * t), regularized=True) / 2
    # One half less the chance between 0 and t, with digits enough for the tail.
    digits = 60 + int(min(t * t / 4, 320))
    with mp.workdps(digits):
        y = t * t / (n + t * t)
        term, total, k = mp.mpf(1), mp.mpf(1), 0
        while term > mp.mpf(10) ** -digits * total:
            term *= y * ((n + 1) / 2 + k) / (mp.mpf(3) / 2 + k)
            total += term
            k += 1
        return mp.mpf(1) / 2 - t * student_density(t, n) * total


def student_density(t, n):
    t, n = mp.mpf(t), mp.mpf(n)
    log = mp.loggamma((n + 1) / 2) - mp.loggamma(n / 2) - mp.log(n * mp.pi) / 2 - (n + 1) / 2 * mp.log1p(t * t / n)
    return mp.exp(log)


def solve(upper, density, p, start):
    """The x whose upper tail is p, by Newton's steps on the logarithm of the tail."""
    x = mp.mpf(start)
    for _ in range(100):
        f = upper(x)
        step = (mp.log(f) - mp.log(p)) * f / density(x)
        x += max(min(step, abs(x) + 1), -abs(x) / 2 - mp.mpf(1) / 4)
        if abs(step) < mp.mpf(10) ** -32 * (1 + abs(x)):
            return x
    raise ArithmeticError("no quantile for %s" % p)


def show(x):
    return mp.nstr(x, 30, min_fixed=-5, max_fixed=5)


rows = []
for x in [0.0, 1e-12, 1e-3, 0.1, 0.25, 0.66, 0.67, 0.5, 1.0, 1.5, 1.96, 2.0, 3.0, 4.0, 5.0, 5.65, 5.66, 6.5, 8.0,
          10.0, 13.37, 17.5, 25.0, 30.03, 37.0]:
    rows.append(("normal-upper", repr(x), "inf", show(normal_upper(x))))
    rows.append(("normal-upper", repr(-x), "inf", show(normal_upper(-x))))
    rows.append(("normal-density", repr(x), "inf", show(mp.npdf(mp.mpf(x)))))
for p in [0.5, 0.4999, 0.4, 0.25, 0.1, 0.0750000001, 0.0749, 0.05, 0.025, 0.01, 1e-3, 1e-6, 1.4e-11, 1.3e-11, 1e-15,
          1e-30, 1e-100, 1e-300]:
    x = solve(normal_upper, mp.npdf, mp.mpf(p), mp.sqrt(-2 * mp.log(p)) - mp.mpf(1) / 2)
    rows.append(("normal-quantile", repr(p), "inf", show(-x) if p != 0.5 else "0"))
for n in [0.05, 0.3, 1.0, 1.5, 2.0, 3.0, 4.7, 10.0, 16.75, 29.0, 100.0, 1234.5, 2999.0, 3001.0, 1e6, 1e10, 1e15]:
    for t in [1e-6, 0.1, 0.5, 1.0, 1.2, 1.3, 2.0, 3.0, 5.0, 8.0, 15.0, 30.0, 1e3, 1e6]:
        if student_density(t, n) > mp.mpf(10) ** -285:
            value = student_upper(t, n)
            rows.append(("student-upper", repr(t), repr(n), show(value)))
            rows.append(("student-density", repr(t), repr(n), show(student_density(t, n))))
    for p in [0.5 - 1e-9, 0.49, 0.3, 0.26, 0.24, 0.1, 0.025, 0.005, 1e-4, 1e-8, 1e-12]:
        start = 1 if n > 2 else mp.mpf(p) ** (-1 / mp.mpf(n)) / 4
        try:
            x = solve(lambda v: student_upper(v, n), lambda v: student_density(v, n), mp.mpf(p), start)
        except ArithmeticError as problem:
            print(n, p, problem)
            continue
        if x < mp.mpf(10) ** 300:
            rows.append(("student-quantile", repr(p), repr(n), show(-x)))

with open("laws.csv", "w") as out:
    out.write("# Normal law and Student's t at exact double arguments, 30 digits printed of 60 worked.\n")
    out.write("# Made by laws.py with mpmath %s; erfc, betainc, loggamma, quantiles by Newton's steps on them.\n"
              % mp.__version__)
    out.write("# Status: computed. Quantile rows give the value for lower chance p. Tolerances: in the tests.\n")
    out.write("quantity,argument,degrees_of_freedom,value\n")
    for row in rows:
        out.write(",".join(row) + "\n")
print(len(rows))
