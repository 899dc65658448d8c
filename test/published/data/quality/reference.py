"""Writes reference-mpmath.csv (50 digits) and reference-scipy.csv: python3 reference.py. Needs mpmath and SciPy."""

from pathlib import Path

import mpmath as mp
from scipy import stats

mp.mp.dps = 50
HERE = Path(__file__).parent


def digits(value):
    return mp.nstr(mp.mpf(value), 20)


def write(name, about, rows):
    lines = [f"# {about}", "law,arguments,value"]
    lines += [f"{law},{' '.join(repr(a) for a in arguments)},{value}" for law, arguments, value in rows]
    (HERE / name).write_text("\n".join(lines) + "\n")


def beta_below(x, a, b):
    """Whole parameters by the binomial sum, where the series of mpmath gives up."""
    if a != int(a) or b != int(b):
        return mp.betainc(a, b, 0, x, regularized=True)
    n = int(a + b - 1)
    return mp.fsum(mp.binomial(n, j) * x**j * (1 - x) ** (n - j) for j in range(int(a), n + 1))


def special():
    for z in [0.0, 0.1, 0.5, 1.0, 1.5, 2.0, 2.9, 3.0, 3.1, 4.0, 5.0, 6.0, 7.0, 8.0, 10.0, 15.0, 20.0, 30.0, 37.0]:
        yield "normal-above", [z], digits(mp.erfc(mp.mpf(z) / mp.sqrt(2)) / 2)
    for a, x in [(0.5, 0.001), (0.5, 3.0), (0.5, 50.0), (1.0, 1.0), (2.5, 0.01), (10.0, 3.0), (10.0, 10.0), (10.0, 11.5),
                 (10.0, 40.0), (100.0, 60.0), (100.0, 100.0), (100.0, 150.0), (1000.0, 1000.0), (1000.0, 1200.0),
                 (20000.0, 20000.0), (0.001, 0.5), (3.7, 700.0)]:
        yield "gamma-below", [a, x], digits(mp.gammainc(a, 0, x, regularized=True))
        yield "gamma-above", [a, x], digits(mp.gammainc(a, x, mp.inf, regularized=True))
    for x, a, b in [(0.3, 2.0, 3.0), (0.5, 0.5, 0.5), (1e-8, 0.5, 3.0), (0.99, 5.0, 2.0), (0.01, 10.0, 10.0),
                    (0.9, 40.0, 3.0), (0.1, 40.0, 3.0), (0.25, 17.0, 50.0), (0.5, 500.0, 500.0), (0.45, 500.0, 500.0),
                    (0.02, 3.0, 142.0), (0.7, 9.5, 60.25), (0.001, 0.01, 5.0), (0.21, 2000.0, 8000.0)]:
        yield "beta-below", [x, a, b], digits(beta_below(mp.mpf(x), a, b))
        # By the mirror image: 1 - I_x would lose what this is to show.
        yield "beta-above", [x, a, b], digits(beta_below(1 - mp.mpf(x), b, a))


def laws():
    for p in [1e-10, 0.001, 0.025, 0.3, 0.975]:
        yield "normal-quantile", [p], stats.norm.ppf(p)
    for p, v in [(0.05, 1), (0.95, 10), (1e-6, 1), (0.5, 3.5), (0.999, 200), (0.01, 2000)]:
        yield "chi-square-quantile", [p, v], stats.chi2.ppf(p, v)
    for p, v in [(0.975, 1), (0.975, 34), (0.95, 4.7), (1e-5, 12), (0.9, 1000)]:
        yield "t-quantile", [p, v], stats.t.ppf(p, v)
    for p, a, b in [(0.99, 9, 60), (0.95, 1, 1), (0.01, 18, 60), (0.5, 3, 7)]:
        yield "f-quantile", [p, a, b], stats.f.ppf(p, a, b)
    yield "f-above", [492.29, 9, 60], stats.f.sf(492.29, 9, 60)
    for p, a, b in [(0.05, 4, 17), (1e-6, 0.5, 3), (0.975, 82, 182), (0.5, 0.1, 0.2)]:
        yield "beta-quantile", [p, a, b], stats.beta.ppf(p, a, b)
    for k, n, p in [(0, 20, 0.05), (3, 52, 0.05), (120, 1000, 0.1), (7, 144, 0.001)]:
        yield "binomial-at", [k, n, p], stats.binom.pmf(k, n, p)
        yield "binomial-up-to", [k, n, p], stats.binom.cdf(k, n, p)
        yield "binomial-from", [k + 1, n, p], stats.binom.sf(k, n, p)
    for k, m in [(0, 3.0), (2, 3.0), (25, 25.0), (60, 25.0), (900, 1000.0)]:
        yield "poisson-at", [k, m], stats.poisson.pmf(k, m)
        yield "poisson-up-to", [k, m], stats.poisson.cdf(k, m)
        yield "poisson-from", [k + 1, m], stats.poisson.sf(k, m)
    for k, lot, bad, drawn in [(0, 144, 19, 20), (2, 144, 19, 20), (5, 1000, 12, 160), (40, 144, 70, 60)]:
        yield "hypergeometric-at", [k, lot, bad, drawn], stats.hypergeom.pmf(k, lot, bad, drawn)
        yield "hypergeometric-up-to", [k, lot, bad, drawn], stats.hypergeom.cdf(k, lot, bad, drawn)
    for t, v, shift in [(1.0, 1, 0.5), (2.0, 2, 3.0), (-1.5, 8, -2.0), (12.0, 42, 8.4), (5.0, 200, 4.0)]:
        yield "noncentral-t-below", [t, v, shift], stats.nct.cdf(t, v, shift)
    for q, means, v in [(3.5, 3, 20), (1.0, 2, 2), (4.05, 4, 16), (6.0, 10, 5), (3.63, 5, 1000)]:
        yield "range-below", [q, means, v], stats.studentized_range.cdf(q, means, v)
    for p, means, v in [(0.95, 3, 10), (0.99, 10, 5), (0.95, 4, 16), (0.9, 20, 60)]:
        yield "range-quantile", [p, means, v], stats.studentized_range.ppf(p, means, v)


write("reference-mpmath.csv", f"mpmath {mp.__version__}, 50 digits, by reference.py", special())
write("reference-scipy.csv", "SciPy 1.17.1, by reference.py",
      ((law, arguments, repr(float(value))) for law, arguments, value in laws()))
