# Sums of independent errors whose scales are known only roughly: chance outside limits. numpy, scipy; no characteristic
# function of a mixture and no Gauss-Hermite points: the law of each error given its scale is averaged over its scale by adaptive
# quadrature, and two errors by a second one. Seven errors: inversion with lognormal scales on 801 even points.
# Run: python3 rough.py > rough.csv
import numpy as np
from scipy import integrate, stats, special
UP = {'n': lambda x, s: stats.norm.sf(x / s),
      'r': lambda x, a: np.clip(.5 - .5 * x / a, 0, 1),
      't': lambda x, a: np.where(x >= 0, .5 * np.clip(1 - x / a, 0, 1)**2, 1 - .5 * np.clip(1 + x / a, 0, 1)**2),
      'a': lambda x, a: .5 - np.arcsin(np.clip(x / a, -1, 1)) / np.pi}
def lone(law, a, tau, x, nu=None):                            # chance above x of one error with a rough scale
    if nu: return stats.t.sf(x / a, nu)
    if not tau: return float(UP[law](x, a))
    z0 = np.log(abs(x) / a) / tau if x else 0.                # where its edge passes x
    f = lambda z: float(UP[law](x, a * np.exp(tau * z))) * stats.norm.pdf(z)
    lo, hi = -9., 9.; m = min(max(z0, lo), hi)
    return integrate.quad(f, lo, m, epsabs=1e-14, epsrel=1e-12, limit=400)[0] + integrate.quad(f, m, hi, epsabs=1e-14, epsrel=1e-12, limit=400)[0]
def two(law, a, tau, nu, half, lo, hi):                       # the same plus a known rectangle: mean of the tail over it
    def mean(g):
        e = sorted({-half, half, 0.})
        return sum(integrate.quad(g, p, q, epsabs=1e-13, epsrel=1e-11, limit=400)[0] for p, q in zip(e, e[1:])) / (2 * half)
    return mean(lambda b: lone(law, a, tau, hi - b, nu)) + mean(lambda b: lone(law, a, tau, b - lo, nu))
def students(nu1, s1, nu2, s2, lo, hi):
    f = lambda y: stats.t.pdf(y / s1, nu1) / s1 * (stats.t.sf((hi - y) / s2, nu2) + stats.t.cdf((lo - y) / s2, nu2))
    e = [-np.inf, -50 * s1, -5 * s1, lo, 0., hi, 5 * s1, 50 * s1, np.inf] + [x + k * s2 for x in (lo, hi) for k in (-12, -3, 3, 12)]; e = sorted(set(e))
    return sum(integrate.quad(f, p, q, epsabs=1e-14, epsrel=1e-12, limit=400)[0] for p, q in zip(e, e[1:]))
PARTS = [('t', 5.236291, .06), ('t', 6.236291, .06), ('r', .9480687, .05), ('r', 1.9480687, .05), ('n', 1, .06), ('r', .9480687, .08), ('r', 1.9480687, .08)]
CF = {'n': lambda a: np.exp(-a * a / 2), 'r': lambda a: np.sinc(a / np.pi), 't': lambda a: np.sinc(a / 2 / np.pi)**2}
Z = np.linspace(-9, 9, 801); W = stats.norm.pdf(Z); W /= W.sum()
def line(lim, own, common):
    SD = {'n': 1, 'r': 3**-.5, 't': 6**-.5}; S = sum((c * w * SD[l])**2 for l, c, w in PARTS)**.5
    def once(f):
        h = 2 * np.pi / (2 * lim / f + 45 * S * np.exp(5.5 * own)); n = int(40 / S / h); T = np.arange(n) + .5; v = np.ones(n)
        for l, c, w in PARTS: v = v * ((W[:, None] * CF[l](c * w * np.exp(own * Z)[:, None] * (T * h)[None, :])).sum(0) if own else CF[l](c * w * T * h))
        return v / T / np.pi, T * h
    if not common: q, t = once(1.); return 1 - 2 * (q * np.sin(t * lim)).sum()
    z = np.linspace(-7.5, 7.5, 601); w = stats.norm.pdf(z); w /= w.sum(); q, t = once(np.exp(common * z[0]))
    return (w * (1 - 2 * (q[None, :] * np.sin(t[None, :] * lim / np.exp(common * z)[:, None])).sum(1))).sum()
print('# made by rough.py with numpy and scipy: quadrature; errors written law:scale:own log deviation:degrees of freedom, - for none')
print('# laws: n normal, r rectangular, t triangular, a arcsine; line: string line of the octave mandolin, own and common log deviation')
print('errors,low,high,outside')
def p(name, lo, hi, v): print('%s,%.10g,%.10g,%.13g' % (name, lo, hi, v))
for law, a in (('n', .5), ('r', 1.), ('t', 1.2), ('a', .8)):
    for tau in (.05, .177, .25, .64):
        for lo, hi in ((-.8, 1.2), (-1.7, 1.7), (-2.5, 3.)):
            p('%s:%g:%g:-' % (law, a, tau), lo, hi, lone(law, a, tau, hi) + lone(law, a, tau, -lo))
for law, a, tau, nu in (('n', .3, .25, None), ('r', 1., .25, None), ('t', .7, .177, None), ('a', .5, .4, None), ('n', .2, 0, 2), ('n', .2, 0, 4), ('n', .3, 0, 12), ('r', 1., 0, None), ('a', .9, 0, None)):
    for lo, hi in ((-.8, .9), (-1.5, 1.4), (-.2, 2.5)):
        p('%s:%g:%g:%s r:0.5:0:-' % (law, a, tau, nu or '-'), lo, hi, two(law, a, tau, nu, .5, lo, hi))
for nu1, s1, nu2, s2 in ((2, .2, 5, .3), (1, .1, 1, .2), (8, .3, 28, .2), (3, 1., 50, .01)):
    for lo, hi in ((-1., 1.), (-1.5, 4.), (-20., 15.)):
        p('n:%g:0:%g n:%g:0:%g' % (s1, nu1, s2, nu2), lo, hi, students(nu1, s1, nu2, s2, lo, hi))
for own, common in ((.15, 0), (.25, 0), (.4, 0), (.64, 0), (0, .15), (0, .25), (0, .4), (.25, .25), (.17677669529663687, .17677669529663687)):
    for lim in (.5, 1.): p('line %.17g %.17g' % (own, common), -lim, lim, line(lim, own, common))
