# Shares and quantiles of the distributions that fits are judged by, by scipy, each worked out again with mpmath.
#
#   python3 distributions.py     writes distributions.csv
#
# The value written is mpmath's, from 50 digits; scipy's must agree to 1e-9 or the script stops. Nothing of it came
# from Swardsink.
import csv
import itertools
import mpmath as mp
from scipy import stats

mp.mp.dps = 50
AGREE = 1e-9
rows = []


def keep(kind, x, a, b, exact, quick):
    assert abs(mp.mpf(quick) / exact - 1) < AGREE, (kind, x, a, b, mp.nstr(exact, 17), quick)
    rows.append([kind, repr(float(x)), a, b, mp.nstr(exact, 17)])


def normal_below(x):
    return mp.erfc(-x / mp.sqrt(2)) / 2


def t_below(t, d):
    t, d = mp.mpf(t), mp.mpf(d)
    tail = mp.betainc(d / 2, mp.mpf(1) / 2, 0, d / (d + t * t), regularized=True) / 2
    return tail if t < 0 else 1 - tail


def f_below(f, a, b):
    f, a, b = mp.mpf(f), mp.mpf(a), mp.mpf(b)
    return mp.betainc(a / 2, b / 2, 0, a * f / (a * f + b), regularized=True)


def f_above(f, a, b):
    f, a, b = mp.mpf(f), mp.mpf(a), mp.mpf(b)
    return mp.betainc(b / 2, a / 2, 0, b / (a * f + b), regularized=True)


for x in (-8, -3, -1.96, -0.5, -1e-3, 0.25, 1, 1.645, 2.576, 5):
    keep("normal.cdf", x, "", "", normal_below(mp.mpf(x)), stats.norm.cdf(x))
for q in (1e-12, 1e-4, 0.025, 0.3, 0.55, 0.9, 0.975, 0.995, 0.99999):
    x = stats.norm.ppf(q)
    keep("normal.quantile", q, "", "", mp.findroot(lambda v: normal_below(v) - mp.mpf(q), x), x)
for t, d in itertools.product((-30, -4, -1, -0.01, 0.3, 2, 2.776, 12), (1, 2, 3, 7.5, 29, 120, 5000)):
    keep("studentT.cdf", t, d, "", t_below(t, d), stats.t.cdf(t, d))
for q, d in itertools.product((1e-6, 0.005, 0.025, 0.2, 0.49, 0.6, 0.95, 0.975, 0.9995), (1, 2, 3, 4.2, 11, 57, 1000)):
    x = stats.t.ppf(q, d)
    keep("studentT.quantile", q, d, "", mp.findroot(lambda v: t_below(v, d) - mp.mpf(q), x), x)
for f, (a, b) in itertools.product((0.02, 0.7, 1, 3.2, 11), ((1, 1), (1, 9), (2, 5), (5, 30), (12, 7.5), (60, 400))):
    keep("fDistribution.cdf", f, a, b, f_below(f, a, b), stats.f.cdf(f, a, b))
    keep("fDistribution.survival", f, a, b, f_above(f, a, b), stats.f.sf(f, a, b))
for x, d in itertools.product((0.1, 2, 9.5, 60, 130), (1, 2, 5, 24, 101)):
    keep("chiSquared.cdf", x, d, "", mp.gammainc(mp.mpf(d) / 2, 0, mp.mpf(x) / 2, regularized=True), stats.chi2.cdf(x, d))
    keep("chiSquared.survival", x, d, "", mp.gammainc(mp.mpf(d) / 2, mp.mpf(x) / 2, regularized=True), stats.chi2.sf(x, d))

with open("distributions.csv", "w", newline="") as file:
    out = csv.writer(file, lineterminator="\n")
    out.writerow(["kind", "at", "a", "b", "value"])
    out.writerows(rows)
